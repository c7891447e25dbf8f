// nginx as a club's host might run it, on a port of this machine, from a folder of its own and as whoever runs the tests.

import { spawn } from "node:child_process";
import { once } from "node:events";
import { cpSync, mkdtempSync, mkdirSync, rmSync, symlinkSync, unlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { until } from "./eventually.mjs";
import { freePort } from "./free-port.mjs";

/** Everything it writes stays in `folder`. */
function configuration({ folder, port, locations }) {
  const temporary = ["client_body", "proxy", "fastcgi", "uwsgi", "scgi"].map(
    (name) => `  ${name}_temp_path ${folder}/temp/${name};`,
  );
  return `daemon off;
master_process off;
pid ${folder}/nginx.pid;
error_log ${folder}/error.log;
events { worker_connections 256; }
http {
  include /etc/nginx/mime.types;
  access_log ${folder}/access.log;
${temporary.join("\n")}
  server {
    listen 127.0.0.1:${port};
    root ${folder}/served;
    ${locations}
  }
}
`;
}

export class Nginx {
  #folder = mkdtempSync(join(tmpdir(), "saddlerule-nginx-"));
  #process = null;
  #port = 0;
  #locations = "";

  /**
   * @param how `root`: what is at the root, of which it serves a copy; `folders`: others by their name there, such as
   *   { fit: "/…/build/site" }; `locations`: what is said of them
   */
  static async serve({ root, folders, locations = "" }) {
    const nginx = new Nginx();
    nginx.#port = await freePort();
    nginx.#locations = locations;
    mkdirSync(join(nginx.#folder, "temp"));
    cpSync(root, nginx.fileAt(""), { recursive: true });
    for (const [name, folder] of Object.entries(folders)) nginx.serves(name, folder);
    await nginx.start();
    return nginx;
  }

  /** Where on the disk the file is that is served at `path`. */
  fileAt(path) {
    return join(this.#folder, "served", path);
  }

  get accessLog() {
    return join(this.#folder, "access.log");
  }

  get origin() {
    return `http://127.0.0.1:${this.#port}`;
  }

  /** Another folder in the place of the one that was served there. */
  serves(name, folder) {
    const place = this.fileAt(name);
    try {
      unlinkSync(place);
    } catch (error) {
      if (error.code !== "ENOENT") throw error;
    }
    symlinkSync(folder, place);
  }

  /** Starts it, or starts it anew with further locations. */
  async start(more = "") {
    await this.stop();
    const file = join(this.#folder, "nginx.conf");
    const locations = this.#locations + more;
    writeFileSync(file, configuration({ folder: this.#folder, port: this.#port, locations }));
    this.#process = spawn("nginx", ["-c", file, "-p", this.#folder, "-e", join(this.#folder, "error.log")], {
      stdio: ["ignore", "ignore", "inherit"],
    });
    const answers = () => {
      if (this.#process.exitCode !== null) throw new Error("nginx ended at once");
      return fetch(this.origin).catch(() => null);
    };
    const late = () => {
      throw new Error("no answer from nginx");
    };
    await until(answers, { late });
  }

  async stop() {
    if (this.#process === null || this.#process.exitCode !== null || this.#process.signalCode !== null)
      return;
    this.#process.kill();
    await once(this.#process, "exit");
  }

  async close() {
    await this.stop();
    rmSync(this.#folder, { recursive: true });
  }
}
