// The script that <saddlerule-fit> loads once it is near the screen, and the way to the one that comes after it. Nothing else is in
// here: what both need is bundled into a file that names neither.
import type { Running } from "./define-element";
import { startWith } from "./element-app";

export const start = (host: HTMLElement): Running =>
  startWith(host, () => import("./element-later").then(({ loadedParts }) => loadedParts));
