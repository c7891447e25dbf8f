// <saddlerule-fit> in templates of Vue 3:  import type {} from "saddlerule-fit/vue";
import type { DefineComponent } from "vue";
import type { SaddleruleAttributes, SaddleruleEvents } from "./index.js";

type Listeners = {
  [Name in keyof SaddleruleEvents as `on${Capitalize<Name>}`]?: (event: SaddleruleEvents[Name]) => void;
};

declare module "vue" {
  interface GlobalComponents {
    "saddlerule-fit": DefineComponent<SaddleruleAttributes & Listeners>;
  }
}
