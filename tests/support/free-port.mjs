// A port of this machine for a server that has to be told which.

import { once } from "node:events";
import { createServer } from "node:net";

/** One that nobody listened on a moment ago. */
export async function freePort() {
  const listener = createServer().listen(0, "127.0.0.1");
  await once(listener, "listening");
  const { port } = listener.address();
  listener.close();
  await once(listener, "close");
  return port;
}
