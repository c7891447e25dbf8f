// The site as the build makes it, and a later version of it, served by nginx beside an invented club's page.

import { execFileSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, readdirSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { nginxExample } from "../../web/building/hosting.mjs";
import { root, pageWasmFile } from "./built-engine.mjs";
import { Nginx } from "./nginx.mjs";

/** The engine with a section of its own that nothing reads (WebAssembly core specification, "Custom Section"): other bytes. */
function otherEngine(file) {
  const name = "later";
  const section = Buffer.from([0, name.length + 1, name.length, ...Buffer.from(name)]);
  writeFileSync(file, Buffer.concat([readFileSync(pageWasmFile), section]));
  return file;
}

/** Builds sites into a folder of their own, which `done` takes away. */
export function siteBuilder() {
  const folder = mkdtempSync(join(tmpdir(), "saddlerule-site-"));
  const build = (name, ...more) => {
    const out = join(folder, name);
    execFileSync(process.execPath, [join(root, "web/build.mjs"), "site", "--out", out, ...more]);
    return out;
  };
  return {
    folder,
    first: () => build("first"),
    /** The same with another engine. */
    later() {
      const out = build("later", "--engine", otherEngine(join(folder, "later.wasm")));
      // nginx tells files of one length apart by their second, and both sites may be built within one.
      const uploaded = Date.now() / 1000 - 3600;
      for (const file of readdirSync(out, { recursive: true }))
        utimesSync(join(out, file), uploaded, uploaded);
      return out;
    },
    /** `site` with the end of its engine missing. */
    cut(site) {
      const out = `${site}-cut`;
      cpSync(site, out, { recursive: true });
      const engine = join(out, engineIn(site));
      writeFileSync(engine, readFileSync(engine).subarray(0, 1000));
      return out;
    },
    done: () => rmSync(folder, { recursive: true }),
  };
}

/** The path of the engine in a site's folder: it tells versions apart. */
export function engineIn(site) {
  return `files/${readdirSync(join(site, "files")).find((name) => name.endsWith(".wasm"))}`;
}

/** As the guide says of the element's folder. */
const packedElement =
  "location /saddlerule/ { gzip on; gzip_types text/javascript application/javascript text/plain; }";

/**
 * The club's website: its page, its list, and Saddlerule in /fit/ under the headers that the guide gives; the element's folder in
 * /saddlerule/ where it is given.
 */
export async function serveClub(site, { element } = {}) {
  const nginx = await Nginx.serve({
    root: join(root, "web/club-page"),
    folders: { fit: site, ...(element !== undefined && { saddlerule: element }) },
    locations: nginxExample() + (element === undefined ? "" : packedElement),
  });
  return {
    nginx,
    list: nginx.fileAt("bikes.json"),
    /** Saddlerule with the club's list, as the club's page links to it. */
    address: `${nginx.origin}/fit/#list=../bikes.json`,
    listAddress: `${nginx.origin}/bikes.json`,
    close: () => nginx.close(),
  };
}
