// Serves build/page, or another folder such as build/site, on a loopback port, for looking at the page in a browser on the same
// machine:
//
//   node serve.mjs [--port NUMBER] [--folder FOLDER]      port 0: any that is free

import { createReadStream } from "node:fs";
import { readdir, stat } from "node:fs/promises";
import { createServer } from "node:http";
import { extname, join, normalize, resolve, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";

const { values } = parseArgs({
  options: {
    port: { type: "string", default: "8317" },
    folder: { type: "string", default: fileURLToPath(new URL("../../build/page", import.meta.url)) },
  },
});
const root = resolve(values.folder) + sep;
const types = {
  ".html": "text/html; charset=utf-8",
  ".json": "application/json",
  ".js": "text/javascript",
  ".css": "text/css",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".txt": "text/plain; charset=utf-8",
  ".wasm": "application/wasm",
  ".webmanifest": "application/manifest+json",
};

/** A site has an index, and the folder of the single file has that file. */
const front = (await readdir(root).catch(() => [])).includes("index.html")
  ? "/index.html"
  : "/saddlerule.html";

const server = createServer(async (request, response) => {
  const path = decodeURIComponent(new URL(request.url, "http://localhost").pathname);
  const file = join(root, normalize(path === "/" ? front : path));
  const found = file.startsWith(root) && (await stat(file).catch(() => null))?.isFile();
  if (!found) {
    response.writeHead(404, { "content-type": "text/plain" }).end("not found\n");
    return;
  }
  response.writeHead(200, {
    "content-type": types[extname(file)] ?? "application/octet-stream",
    "x-content-type-options": "nosniff",
    "referrer-policy": "no-referrer",
  });
  createReadStream(file).pipe(response);
});

server.on("error", (error) => {
  console.error(`serve.mjs: ${error.message}`);
  process.exit(1);
});
server.listen(Number(values.port), "127.0.0.1", () => {
  console.log(`serving http://127.0.0.1:${server.address().port}/ (stop with Ctrl-C)`);
});
