// The files of <saddlerule-fit>, each by the name that the build gave it after its content (see building/element.mjs).

/** The script with element-app.ts in it. */
declare module "element-app-file" {
  export const app: string;
  /** What its one function is called in it. */
  export const start: "start";
}

declare module "element-files" {
  /** The script with element-later.ts in it. */
  export const later: string;
  /** The engine, packed as compile-engine.ts has it, and the wasm that unpacks. */
  export const engine: string;
  export const unpacker: string;
  /** The script of the engine's worker. */
  export const thread: string;
  /** The words of a language as packed-texts.ts has them, packed for unpacking.ts. */
  export const words: Record<import("../texts/languages").OtherLanguage, string>;
}
