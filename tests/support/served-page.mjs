// The page file on a server of this machine: there it has an origin of its own, and may save on the device.

import { once } from "node:events";
import { readFile } from "node:fs/promises";
import { createServer } from "node:http";

let serving = null;

/** Its address; the server ends with the tests that use it. */
export function servedAddress(file) {
  serving ??= serve(file);
  return serving;
}

async function serve(file) {
  const server = createServer(async (request, response) => {
    const isPage = new URL(request.url, "http://localhost").pathname === "/saddlerule.html";
    response.writeHead(isPage ? 200 : 404, { "content-type": "text/html; charset=utf-8" });
    response.end(isPage ? await readFile(file) : "");
  });
  server.listen(0, "127.0.0.1");
  await once(server, "listening");
  server.unref();
  return `http://127.0.0.1:${server.address().port}/saddlerule.html`;
}
