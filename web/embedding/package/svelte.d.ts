// <saddlerule-fit> in components of Svelte 5:  import type {} from "saddlerule-fit/svelte";
import type { HTMLAttributes } from "svelte/elements";
import type { SaddleruleAttributes, SaddleruleEvents, SaddleruleFit } from "./index.js";

type Listeners = {
  [Name in keyof SaddleruleEvents as `on${Name}`]?: (event: SaddleruleEvents[Name]) => void;
};

declare module "svelte/elements" {
  interface SvelteHTMLElements {
    "saddlerule-fit": HTMLAttributes<SaddleruleFit> & SaddleruleAttributes & Listeners;
  }
}
