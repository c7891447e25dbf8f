// A list that is fetched from an address: what comes of it when the server is well, gone, slow, wrong or endless. The server
// is a real one of this machine; what only browsers know (other origins, policies) is in element-lists.browser.test.mjs.

import assert from "node:assert/strict";
import { once } from "node:events";
import { createServer } from "node:http";
import test, { after, before } from "node:test";
import { pageModule } from "../support/page-module.mjs";

Object.assign(globalThis, { document: new EventTarget(), location: { origin: "http://127.0.0.1" } });
if (globalThis.navigator?.onLine === undefined)
  Object.defineProperty(globalThis, "navigator", { value: { onLine: true }, configurable: true });

const { addressSource, mostFetched, unreachedSource } = await pageModule("engine/list-address.ts");

const mebibyte = 1024 * 1024;
const list = '{ "bikes": [] }';
const patience = { silent: 600, whole: 1800 };

/** The rest of a list in parts is sent once the first part was noticed. */
const firstPart = {};
firstPart.arrival = new Promise((resolve) => (firstPart.arrived = resolve));

/** What the server does, by path; `sent` counts the bytes it could get rid of. */
let sent = 0;
/** Called when a reader of what has no end has hung up. */
let hungUp = () => undefined;
const answers = {
  "/bikes.json": (response) => response.end(list),
  "/parts.json": async (response) => {
    response.setHeader("content-length", list.length);
    response.write(list.slice(0, 5));
    await firstPart.arrival;
    response.end(list.slice(5));
  },
  "/gone": (response) => response.writeHead(404).end("no"),
  "/gone-for-good": (response) => response.writeHead(410).end("no"),
  "/secret": (response) => response.writeHead(403).end("no"),
  "/broken": (response) => response.writeHead(503).end("no"),
  "/silent": () => undefined,
  "/trickle": (response) => {
    response.writeHead(200);
    const timer = setInterval(() => response.write(" "), 50).unref();
    response.on("close", () => clearInterval(timer));
  },
  "/stalls": (response) => {
    response.writeHead(200, { "content-length": 100 });
    response.write("{");
  },
  "/page": (response) => response.writeHead(200, { "content-type": "text/html; charset=utf-8" }).end(list),
  "/page-as-text": (response) =>
    response.writeHead(200, { "content-type": "text/plain" }).end("\n <!DOCTYPE html><html></html>"),
  "/says-huge": (response) => response.writeHead(200, { "content-length": 9 * mebibyte }).write("{"),
  "/just-right": (response) => response.end(Buffer.alloc(mostFetched, 32)),
  "/endless": async (response) => {
    const closed = once(response, "close");
    while (!response.destroyed) {
      sent += mebibyte;
      if (!response.write(Buffer.alloc(mebibyte, 32))) await Promise.race([once(response, "drain"), closed]);
    }
    hungUp();
  },
  "/breaks-off": (response) => {
    response.writeHead(200, { "content-length": 100 });
    response.write("{");
    setTimeout(() => response.destroy(), 50);
  },
};

let server;
const connections = new Set();
before(async () => {
  server = createServer((request, response) => answers[request.url](response)).listen(0, "127.0.0.1");
  server.on("connection", (socket) => connections.add(socket));
  await once(server, "listening");
  globalThis.location.origin = `http://127.0.0.1:${server.address().port}`;
});
// Also those of which the server has read nothing yet: their readers went away at once.
after(() => {
  server.close();
  for (const socket of connections) socket.destroy();
});

const noStop = () => new AbortController().signal;

function fetched(path, { onProgress = () => undefined, stop = noStop() } = {}) {
  return addressSource(new URL(path, globalThis.location.origin), patience).bytes(onProgress, stop);
}

test("a list comes byte for byte, and how far it is is told on the way", async () => {
  assert.equal(new TextDecoder().decode(await fetched("/bikes.json")), list);
  const steps = [];
  const onProgress = (done, total) => {
    steps.push([done, total]);
    firstPart.arrived();
  };
  await fetched("/parts.json", { onProgress });
  assert.deepEqual(steps[0], [5, list.length]);
  // The whole is not said to be there: then the engine begins.
  assert.ok(steps.every(([done, total]) => done < total));
});

test("it is called after the last part of its address", () => {
  const name = (address) => addressSource(new URL(address)).name;
  assert.equal(name("https://club.example/lists/Loan%20shed.json?v=2"), "Loan shed.json");
  assert.equal(name("https://club.example/"), "club.example");
  assert.equal(name("https://club.example/100%"), "100%");
});

const refusals = {
  "/gone": ["address_gone", { status: "404" }],
  "/gone-for-good": ["address_gone", { status: "410" }],
  "/secret": ["address_refused", { status: "403" }],
  "/broken": ["address_server", { status: "503" }],
  "/page": ["address_web_page", {}],
  "/page-as-text": ["address_web_page", {}],
  "/says-huge": ["address_too_large", { limit: "8" }],
  "/endless": ["address_too_large", { limit: "8" }],
  "/silent": ["address_slow", { seconds: "0.6" }],
  "/stalls": ["address_slow", { seconds: "0.6" }],
  "/trickle": ["address_slow", { seconds: "1.8" }],
  "/breaks-off": ["address_no_signal", {}],
};
for (const [path, [code, figures]] of Object.entries(refusals)) {
  test(`${path.slice(1)} is refused as ${code}`, async () => {
    const { error } = await fetched(path);
    assert.equal(error.code, code);
    for (const [name, figure] of Object.entries(figures)) assert.equal(error.figures[name], figure);
  });
}

test("8 MiB are taken; of what is more no more than a little is read", async () => {
  assert.equal((await fetched("/just-right")).length, 8 * mebibyte);
  sent = 0;
  const end = new Promise((resolve) => (hungUp = resolve));
  await fetched("/endless");
  await end;
  assert.ok(sent < 64 * mebibyte, `${sent / mebibyte} MiB`);
});

test("where nobody answers there is no signal", async () => {
  const closed = createServer().listen(0, "127.0.0.1");
  await once(closed, "listening");
  const { port } = closed.address();
  closed.close();
  await once(closed, "close");
  const { error } = await addressSource(new URL(`http://127.0.0.1:${port}/`), patience).bytes(
    () => undefined,
    noStop(),
  );
  assert.equal(error.code, "address_no_signal");
});

test("stopped by its reader it ends at once", async () => {
  const stopping = new AbortController();
  const begun = performance.now();
  setTimeout(() => stopping.abort(), 50);
  await fetched("/trickle", { stop: stopping.signal });
  assert.ok(performance.now() - begun < 500);
});

test("a page that goes nowhere refuses every address without asking for it", async () => {
  const { error } = await unreachedSource("https://club.example/bikes.json").bytes(() => undefined, noStop());
  assert.equal(error.code, "address_offline");
});
