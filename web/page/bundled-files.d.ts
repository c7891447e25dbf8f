// What the bundler hands over for files that are no scripts (see build.mjs).

declare module "*.css" {
  const sheet: string;
  export default sheet;
}

declare module "*.json" {
  const text: string;
  export default text;
}

/** The engine's wasm, compressed as gzip. */
declare module "packed-engine" {
  const bytes: Uint8Array<ArrayBuffer>;
  export default bytes;
}
