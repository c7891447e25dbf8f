// The same small app around <saddlerule-fit>, plain and in frameworks, bundled by Vite with the element's package as npm would install it.
// Each puts into the page: `show(isShown)`, `setList(address)`, and `told`, what events said.

import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "vite";
import { compile } from "svelte/compiler";
import { root } from "./built-engine.mjs";
import { elementFolder } from "./club-site.mjs";

const react = `
import { StrictMode, useState } from "react";
import { createRoot } from "react-dom/client";
import "saddlerule-fit";
import type {} from "saddlerule-fit/react";

const page = window as unknown as { told: object[]; show: (is: boolean) => void; setList: (list: string) => void };
page.told = [];

function App() {
  const [shown, show] = useState(true);
  const [list, setList] = useState("/bikes.json");
  Object.assign(page, { show, setList });
  if (!shown) return null;
  return (
    <saddlerule-fit
      list={list}
      units="cm"
      view="rack"
      heading-level={2}
      browser-back={false}
      onsaddlerule-list={({ detail }) => page.told.push({ title: detail.title, bikes: detail.bikes })}
    />
  );
}

createRoot(document.getElementById("app")!).render(<StrictMode><App /></StrictMode>);
`;

const plain = `
import "saddlerule-fit";

const place = document.getElementById("app");
const element = () => document.querySelector("saddlerule-fit");
let list = "/bikes.json";
window.told = [];
document.addEventListener("saddlerule-list", ({ detail }) => window.told.push({ title: detail.title, bikes: detail.bikes }));
window.show = (isShown) => {
  if (!isShown) return place.replaceChildren();
  const made = document.createElement("saddlerule-fit");
  Object.assign(made, { list, units: "cm", view: "rack", headingLevel: 2, browserBack: false });
  place.append(made);
};
window.setList = (next) => {
  list = next;
  element().list = next;
};
window.show(true);
`;

const vue = `
import { createApp, h, ref } from "vue";
import "saddlerule-fit";

window.told = [];
const shown = ref(true);
const list = ref("/bikes.json");
window.show = (is) => (shown.value = is);
window.setList = (next) => (list.value = next);
createApp({
  render: () =>
    shown.value
      ? h("saddlerule-fit", {
          list: list.value,
          units: "cm",
          view: "rack",
          headingLevel: 2,
          browserBack: false,
          "onSaddlerule-list": ({ detail }) => window.told.push({ title: detail.title, bikes: detail.bikes }),
        })
      : null,
}).mount("#app");
`;

const svelte = `
<script>
  import "saddlerule-fit";
  let shown = $state(true);
  let list = $state("/bikes.json");
  window.told = [];
  window.show = (is) => (shown = is);
  window.setList = (next) => (list = next);
</script>
{#if shown}
  <saddlerule-fit
    {list}
    units="cm"
    view="rack"
    heading-level={2}
    onsaddlerule-list={({ detail }) => window.told.push({ title: detail.title, bikes: detail.bikes })}
  ></saddlerule-fit>
{/if}
`;

/** By name: the file that the page loads, and what else it is made of. */
export const apps = {
  plain: { "main.js": plain },
  "React 19": { "main.tsx": react },
  "Vue 3": { "main.js": vue },
  "Svelte 5": {
    "main.js": `import { mount } from "svelte"; import App from "./App.svelte"; mount(App, { target: document.getElementById("app") });`,
    "App.svelte": svelte,
  },
};

const svelteCompiler = {
  name: "svelte",
  transform: (text, id) =>
    id.endsWith(".svelte") ? { code: compile(text, { filename: id, generate: "client" }).js.code } : null,
};

/** A folder as npm leaves it once the package is installed. */
export function installed(files) {
  const folder = mkdtempSync(join(tmpdir(), "saddlerule-app-"));
  const modules = join(folder, "node_modules");
  mkdirSync(join(modules, "@types"), { recursive: true });
  cpSync(elementFolder, join(modules, "saddlerule-fit"), { recursive: true });
  for (const name of ["react", "react-dom", "vue", "svelte", "@types/react", "csstype"])
    symlinkSync(join(root, "tests/node_modules", name), join(modules, name));
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
  return { folder, remove: () => rmSync(folder, { recursive: true }) };
}

/** @returns {Promise<Record<string, Buffer>>} the built app's files by their path on a server */
export async function bundledApp(files) {
  const { folder, remove } = installed({
    ...files,
    "index.html": `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>App</title><link rel="icon" href="data:,"></head>
<body><div id="app"></div><script type="module" src="./${Object.keys(files)[0]}"></script></body></html>`,
  });
  try {
    const { output } = await build({
      root: folder,
      configFile: false,
      logLevel: "error",
      esbuild: { jsx: "automatic" },
      build: { write: false, target: "es2022", modulePreload: { polyfill: false } },
      plugins: [svelteCompiler],
    });
    return Object.fromEntries(
      output.map(({ fileName, code, source }) => [
        fileName === "index.html" ? "/" : `/${fileName}`,
        Buffer.from(code ?? source),
      ]),
    );
  } finally {
    remove();
  }
}
