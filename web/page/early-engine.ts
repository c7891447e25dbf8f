// The engine of the page file, which is compiled while the browser still reads the page's own script. file-start.ts begins it.

const onPage = globalThis as { saddleruleEngine?: Promise<WebAssembly.Module> };

/** @param engine being compiled; whoever asks for it is told where that fails */
export function engineBegun(engine: Promise<WebAssembly.Module>): void {
  engine.catch(() => undefined);
  onPage.saddleruleEngine = engine;
}

/** undefined: this browser cannot run Saddlerule, and its reader has been told. */
export function earlyEngine(): Promise<WebAssembly.Module> | undefined {
  return onPage.saddleruleEngine;
}
