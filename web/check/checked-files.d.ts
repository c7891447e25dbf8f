// What the build hands over about the folder that a check page is in (see building/check-page.mjs).

declare module "checked-files" {
  export const form: "site" | "element";
  /** The files of the folder, with what subresource integrity calls them. */
  export const files: { path: string; integrity: string }[];
  export const engine: string;
}
