// What the bundler hands over for files that are no scripts (see building/bundled-parts.mjs).

declare module "*.css" {
  const sheet: string;
  export default sheet;
}

/** The script of the engine's worker. */
declare module "engine-thread" {
  const text: string;
  export default text;
}
