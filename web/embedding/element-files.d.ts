// The files of <saddlerule-fit>, each by the name that the build gave it after its content (see building/element.mjs).

/** The script with element-app.ts in it. */
declare module "element-app-file" {
  export const app: string;
}

/** The same, for bundlers to follow. */
declare module "element-app" {
  export const start: import("./define-element").App["start"];
}

/** Addresses. */
declare module "element-files" {
  /** The engine, packed for web/engine/inflating.ts. */
  export const engine: string;
  /** The script of the engine's worker. */
  export const thread: string;
  /** The words of a language as packed-texts.ts has them. */
  export const words: Record<import("../texts/languages").OtherLanguage, string>;
}
