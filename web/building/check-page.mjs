// check.html: says to a webmaster what is wrong with a host. It brings no policy, so that it meets the host's own alone; it is asked of the
// network each time, and is no part of what browsers keep.
import { text } from "./bundled-parts.mjs";
import { integrityOf } from "./policy.mjs";
import { scriptText } from "./scripts.mjs";

const fields = {
  site: `<label>List <input name="list" placeholder="../bikes.json"></label>`,
  element: `<label>Page <input name="page" placeholder="/bikes.html"></label>
<label>List <input name="list" placeholder="as the page names it"></label>`,
};

const page = (form) => `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta name="robots" content="noindex">
<title>Saddlerule: check of this host</title>
<link rel="icon" href="data:,">
<link rel="stylesheet" href="check.css">
<script src="check.js" defer></script>
</head>
<body>
<main>
<h1>Check of this host</h1>
<form>
${fields[form]}
<button>Check</button>
</form>
<ul id="findings"></ul>
<p id="end" role="status">It has not started if this stays: check.js is missing, was changed, or is refused.</p>
</main>
</body>
</html>
`;

const style = `body { margin: 0; font: 1.125rem/1.5 system-ui, sans-serif }
main { max-width: 45rem; margin: 0 auto; padding: 1rem }
h1 { margin: 0.5rem 0; font-size: 1.5rem }
form { display: flex; flex-wrap: wrap; gap: 1rem; align-items: end }
label { flex: 1 1 12rem; display: grid }
input, button { box-sizing: border-box; min-height: 44px; min-width: 44px; width: 100%; padding: 0 0.75rem; font: inherit }
button { width: auto }
#findings { padding: 0; list-style: none }
#findings li { padding: 0.5rem 0.75rem; border-left: 0.375rem solid; margin: 0.5rem 0; overflow-wrap: anywhere }
#findings .good { border-color: #2c7a3f }
#findings .note { border-color: #8a6d00 }
#findings .wrong { border-color: #c0341d }
`;

/**
 * @param {"site" | "element"} form
 * @param {Record<string, string | Buffer>} files what is checked, by its path
 * @param {string} engine the path of the engine
 */
export async function checkPage(form, files, engine) {
  const checked = Object.entries(files).map(([path, content]) => ({ path, integrity: integrityOf(content) }));
  const constants = Object.entries({ form, files: checked, engine }).map(
    ([name, value]) => `export const ${name} = ${JSON.stringify(value)};`,
  );
  const parts = [text("checked-files", constants.join("\n"))];
  return {
    "check.html": page(form),
    "check.css": style,
    "check.js": await scriptText("check/check-entry.ts", { parts }),
  };
}
