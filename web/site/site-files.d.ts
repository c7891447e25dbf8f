// The invented lists, and where the site's other files are, as the build hands it over (see building/site.mjs): paths from the folder of the page.

declare module "site-files" {
  export const engine: string;
  export const thread: string;
  /** The words of every language but English, by language. */
  export const words: Record<string, string>;
  /** The texts of the invented lists, as web/engine/samples.ts has them. */
  export const samples: readonly string[];
}
