// The script that <saddlerule-fit> loads once it is near the screen, and the way to the one that comes after it. Nothing else is in
// here: what both need is bundled into a file that names neither.
import type { App } from "./define-element";
import { startWith } from "./element-app";

export const start: App["start"] = (host, engineAhead) =>
  startWith(host, () => import("./element-later").then(({ loadedParts }) => loadedParts), engineAhead);
