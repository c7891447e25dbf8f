// Unpacking what travels deflated, by what every browser has for it.

/** @param packed raw deflate data (RFC 1951), as building/packing.mjs makes it; damaged data fail where the answer is read */
export function inflated(packed: ReadableStream<BufferSource>): Response {
  return new Response(packed.pipeThrough(new DecompressionStream("deflate-raw")));
}

/** The engine, compiled off the page's own thread. */
export async function compiledFrom(packed: ReadableStream<BufferSource>): Promise<WebAssembly.Module> {
  return WebAssembly.compile(await inflated(packed).arrayBuffer());
}
