// What the element loads after its first verdict, or when it is first asked for: see page/later-parts.tsx.
import { english } from "later-texts";
import { laterParts } from "../page/later-parts";
import type { LoadedParts } from "../page/later-loading";
import sheet from "../style/element-later.css";

// Named here so that the bundler keeps all of it in the one file that both scripts share.
export { startWith } from "./element-app";

export const loadedParts: LoadedParts = { parts: laterParts, sheet, english };
