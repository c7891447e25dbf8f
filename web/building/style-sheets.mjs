// The page's style sheets, each as one text.
import path from "node:path";
import { build } from "esbuild";
import { browsers } from "./browsers.mjs";
import { web } from "./places.mjs";

/** A style sheet of web/style as one minified text, its imports put in place. */
export async function sheetText(name) {
  const sheet = await build({
    entryPoints: [path.join(web, "style", name)],
    bundle: true,
    minify: true,
    write: false,
    target: browsers,
    charset: "utf8",
  });
  return sheet.outputFiles[0].text.trim();
}
