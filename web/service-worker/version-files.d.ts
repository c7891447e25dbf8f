// What the build hands over about the version that a service worker belongs to (see building/site.mjs).

declare module "version-files" {
  /** Another one for any other content of any file. */
  export const version: string;
  /** All files of the version by their path in the site's folder, with what subresource integrity calls them. */
  export const files: { path: string; integrity: string }[];
}
