// <saddlerule-fit> in JSX of React 19:  import type {} from "saddlerule-fit/react";
import type { DetailedHTMLProps, HTMLAttributes } from "react";
import type { SaddleruleAttributes, SaddleruleEvents, SaddleruleFit } from "./index.js";

type Listeners = {
  [Name in keyof SaddleruleEvents as `on${Name}`]?: (event: SaddleruleEvents[Name]) => void;
};

declare module "react" {
  namespace JSX {
    interface IntrinsicElements {
      "saddlerule-fit": DetailedHTMLProps<HTMLAttributes<SaddleruleFit>, SaddleruleFit> &
        SaddleruleAttributes &
        Listeners;
    }
  }
}
