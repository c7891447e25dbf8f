// Apache as a club's host might run it, on a port of this machine, from a folder of its own: with the modules that it is given, and with
// whatever a .htaccess says.

import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { until } from "./eventually.mjs";
import { freePort } from "./free-port.mjs";

/** What Debian's apache2 has turned on that matters to plain files; mod_headers is not among it. */
export const debianModules = ["mime", "dir", "filter", "deflate"];

const program = "/usr/sbin/apache2";

function configuration({ folder, root, port, modules }) {
  const loaded = ["mpm_prefork", "authz_core", ...modules].map(
    (name) => `LoadModule ${name}_module /usr/lib/apache2/modules/mod_${name}.so`,
  );
  return `${loaded.join("\n")}
ServerRoot ${folder}
ServerName localhost
Listen 127.0.0.1:${port}
PidFile ${folder}/apache.pid
ErrorLog ${folder}/error.log
StartServers 2
DocumentRoot ${root}
${process.getuid() === 0 ? "User www-data\nGroup www-data" : ""}
<Directory ${root}>
  AllowOverride FileInfo
  Require all granted
</Directory>
<IfModule mod_mime.c>
  TypesConfig /etc/mime.types
</IfModule>
<IfModule mod_dir.c>
  DirectoryIndex index.html
</IfModule>
`;
}

/** Serves the folder `root`. */
export async function apache(root, modules = debianModules) {
  const folder = mkdtempSync(join(tmpdir(), "saddlerule-apache-"));
  const port = await freePort();
  const file = join(folder, "apache.conf");
  writeFileSync(file, configuration({ folder, root, port, modules }));
  // In a group of its own: at its end it ends every process of its group.
  const running = spawn(program, ["-f", file, "-DFOREGROUND"], {
    detached: true,
    stdio: ["ignore", "ignore", "inherit"],
  });
  const origin = `http://127.0.0.1:${port}`;
  const answers = () => {
    if (running.exitCode !== null) throw new Error("Apache ended at once");
    return fetch(origin).catch(() => null);
  };
  const late = () => {
    throw new Error("no answer from Apache");
  };
  await until(answers, { late });
  return {
    origin,
    errors: () => readFileSync(join(folder, "error.log"), "utf8"),
    async close() {
      running.kill();
      await once(running, "exit");
      rmSync(folder, { recursive: true });
    },
  };
}
