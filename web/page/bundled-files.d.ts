// What the bundler hands over for files that are no scripts (see build.mjs).

declare module "*.css" {
  const sheet: string;
  export default sheet;
}

declare module "*.json" {
  const text: string;
  export default text;
}

/** The engine's wasm, compressed as gzip, in base64. */
declare module "packed-engine" {
  const text: string;
  export default text;
}
