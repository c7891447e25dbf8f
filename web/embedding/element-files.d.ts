// The files of <saddlerule-fit>, each by the name that the build gave it after its content (see building/element.mjs).

/** The script with element-entry.ts in it. */
declare module "element-app-file" {
  export const app: string;
  /** The one that it shares with what comes later. */
  export const shared: string;
  /** The engine, packed for web/engine/inflating.ts. */
  export const engine: string;
}

/** The same, for bundlers to follow. */
declare module "element-app" {
  export const start: import("./define-element").App["start"];
}

/** The texts in English that element-app.ts lacks (see building/element-texts.mjs). */
declare module "later-texts" {
  export const english: object;
}

/** Addresses. */
declare module "element-files" {
  /** The engine, packed for web/engine/inflating.ts. */
  export const engine: string;
  /** The script of the engine's worker. */
  export const thread: string;
  /** The words of a language as packed-texts.ts has them. */
  export const words: Record<import("../texts/languages").OtherLanguage, string>;
  /** The same for "later-texts". */
  export const laterWords: Record<import("../texts/languages").OtherLanguage, string>;
}
