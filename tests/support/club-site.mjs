// A small server of this machine for pages that surround Saddlerule: an invented club's website, or a stranger's.

import { createServer } from "node:http";
import { once } from "node:events";
import { readFile } from "node:fs/promises";
import { extname, join } from "node:path";
import { root } from "./built-engine.mjs";

/** `ELEMENT` names another build of the element. */
export const elementFolder = process.env.ELEMENT ?? join(root, "build/element");

/** The strictest policy that the guide gives for a page with the element in it. */
export const strictPolicy = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "img-src 'self' data:",
  "base-uri 'none'",
  "form-action 'none'",
  "require-trusted-types-for 'script'",
  "trusted-types saddlerule",
].join("; ");

const types = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript",
  ".css": "text/css",
  ".json": "application/json",
  ".csv": "text/csv",
  ".bin": "application/octet-stream",
  ".txt": "text/plain; charset=utf-8",
};

/** A club's page with `body` in it. Scripts and styles come from addresses: the policy lets in nothing else. */
export function clubPage(body, { head = "", lang = "en", dir = "ltr" } = {}) {
  return `<!doctype html>
<html lang="${lang}" dir="${dir}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Bike loans at the village hall</title>
<link rel="icon" href="data:,">
<link rel="stylesheet" href="/club.css">
${head}
</head>
<body>
<header><h1>Bike loans at the village hall</h1></header>
<main>
${body}
</main>
</body>
</html>
`;
}

/** As it is where it holds percent signs that mean nothing. */
function plainPath(address) {
  const { pathname } = new URL(address, "http://localhost");
  try {
    return decodeURIComponent(pathname);
  } catch {
    return pathname;
  }
}

/**
 * Serves `pages` (a text, bytes, or a function of request and response, by path) and, below /saddlerule/, the files of the
 * element. `requests` gathers the paths that were asked for.
 * @param {Record<string, unknown>} pages
 * @param {{ policy?: string | null, element?: string }} [how] `policy`: of all that is HTML; null: none
 */
export async function clubSite(pages, { policy = strictPolicy, element = elementFolder } = {}) {
  const requests = [];
  const server = createServer(async (request, response) => {
    const path = plainPath(request.url);
    requests.push(path);
    const page = pages[path];
    if (typeof page === "function") {
      page(request, response);
      return;
    }
    const inElement = /^\/saddlerule\/([\w.-]+)$/.exec(path)?.[1];
    const content = page ?? (inElement && (await readFile(join(element, inElement)).catch(() => undefined)));
    if (content === undefined) {
      response.writeHead(404, { "content-type": "text/plain" }).end("not found\n");
      return;
    }
    const type = types[extname(path)] ?? types[".html"];
    response.writeHead(200, {
      "content-type": type,
      "x-content-type-options": "nosniff",
      ...(policy !== null && type === types[".html"] && { "content-security-policy": policy }),
    });
    response.end(content);
  });
  server.listen(0, "127.0.0.1");
  await once(server, "listening");
  const { port } = server.address();
  return {
    requests,
    address: `http://127.0.0.1:${port}`,
    /** The same server under another name: another origin. */
    otherAddress: `http://localhost:${port}`,
    close() {
      server.closeAllConnections?.();
      server.close();
    },
  };
}
