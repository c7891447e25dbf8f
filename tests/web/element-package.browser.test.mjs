// The element as a package for developers: bundled by Vite into a plain page and into apps of React, Vue and Svelte; its types; its
// manifest; and an import on a server.

import assert from "node:assert/strict";
import { execFileSync, spawnSync } from "node:child_process";
import { existsSync, readFileSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import test, { after, before } from "node:test";
import { attributes } from "../../web/building/element-package.mjs";
import { launchChromium } from "../support/chromium.mjs";
import { root, sample } from "../support/built-engine.mjs";
import { clubSite, elementFolder } from "../support/club-site.mjs";
import { apps, bundledApp, installed } from "../support/element-apps.mjs";
import { eventually as soon } from "../support/eventually.mjs";
import { jsonList } from "../support/list-desk.mjs";

/** Browsers of a busy machine take their time. */
const eventually = (check) => soon(check, { tries: 400 });

const description = JSON.parse(readFileSync(join(elementFolder, "package.json"), "utf8"));

let browser;
before(async () => {
  browser = await launchChromium("--js-flags=--expose-gc");
});
after(() => browser.close());

/** What a page needs in its policy once a bundler has put the engine's thread into a script. */
const policy =
  "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; worker-src blob:; connect-src 'self'; style-src 'self'; img-src data:";

for (const [name, files] of Object.entries(apps)) {
  test(`${name}: the list is switched, and fifty times mounted and unmounted leaves nothing behind`, async (test) => {
    const few = jsonList([
      { id: "H1", name: "Hall 1", kind: "pedal", saddle_lowest: 48, saddle_highest: 60 },
    ]);
    const site = await clubSite(
      {
        ...(await bundledApp(files)),
        "/bikes.json": readFileSync(sample("loan-shed.json")),
        "/few.json": few,
      },
      { policy },
    );
    const context = await browser.newContext({ locale: "en-GB" });
    test.after(async () => {
      await context.close();
      site.close();
    });
    const page = await context.newPage();
    const problems = [];
    page.on("console", (message) => problems.push(message.text()));
    page.on("pageerror", (error) => problems.push(error.message));
    await page.goto(`${site.address}/`);
    const told = () => page.evaluate(() => window.told);
    await eventually(async () => assert.equal((await told()).at(-1)?.bikes, 40));
    const given = await page.evaluate(() => {
      const { list, units, headingLevel, browserBack } = document.querySelector("saddlerule-fit");
      return { list, units, headingLevel, browserBack };
    });
    assert.deepEqual(given, { list: "/bikes.json", units: "cm", headingLevel: "2", browserBack: false });
    // Strict mode mounts twice, and one of both is gone again.
    assert.equal(await page.locator("saddlerule-fit").count(), 1);
    assert.equal(page.workers().length, 1);

    await page.evaluate(() => window.setList("/few.json"));
    await eventually(async () => assert.deepEqual((await told()).at(-1), { title: "Hall list", bikes: 1 }));

    const inMemory = jsonList(
      [
        { id: "M1", name: "Memory 1", saddle_lowest: 48, saddle_highest: 60 },
        { id: "M2", name: "Memory 2", saddle_lowest: 50, saddle_highest: 62 },
      ],
      { title: "Held by a script" },
    );
    await page.evaluate((list) => window.setList(list), JSON.parse(inMemory));
    const held = { title: "Held by a script", bikes: 2 };
    await eventually(async () => assert.deepEqual((await told()).at(-1), held));
    const state = await page.evaluate(() => {
      const element = document.querySelector("saddlerule-fit");
      return { list: element.list, told: element.told, address: element.getAttribute("list") };
    });
    const list = JSON.parse(inMemory);
    assert.deepEqual(state, { list, told: { list: { ...held, set_aside: 0 } }, address: null });
    await page.evaluate(() => window.setList("/few.json"));
    await eventually(async () => assert.deepEqual((await told()).at(-1), { title: "Hall list", bikes: 1 }));

    const session = await context.newCDPSession(page);
    await session.send("Performance.enable");
    const measured = async () => {
      await session.send("HeapProfiler.collectGarbage");
      const { metrics } = await session.send("Performance.getMetrics");
      const of = (name) => metrics.find((metric) => metric.name === name).value;
      return { heap: of("JSHeapUsedSize"), nodes: of("Nodes"), listeners: of("JSEventListeners") };
    };
    const round = async () => {
      await page.evaluate(() => window.show(false));
      await eventually(() => assert.equal(page.workers().length, 0));
      const before = await page.evaluate(() => (window.told = []).length);
      await page.evaluate(() => window.show(true));
      await eventually(async () => assert.ok((await told()).length > before));
    };
    for (let turn = 0; turn < 10; ++turn) await round();
    const tenth = await measured();
    for (let turn = 10; turn < 50; ++turn) await round();
    let fiftieth;
    await eventually(async () => {
      fiftieth = await measured();
      assert.ok(fiftieth.heap < tenth.heap * 1.1, `${fiftieth.heap} bytes, ${tenth.heap} after ten`);
      assert.ok(fiftieth.nodes <= tenth.nodes * 1.1, `${fiftieth.nodes} nodes, ${tenth.nodes} after ten`);
      assert.ok(
        fiftieth.listeners < tenth.listeners + 10,
        `${fiftieth.listeners} listeners, ${tenth.listeners} after ten`,
      );
    });
    test.diagnostic(`after 10: ${JSON.stringify(tenth)}; after 50: ${JSON.stringify(fiftieth)}`);
    assert.deepEqual(problems, []);
  });
}

test("types: attributes, properties and events are known, and what makes no sense is refused", () => {
  const { folder, remove } = installed({
    "react.tsx": apps["React 19"]["main.tsx"],
    "wrong.tsx": `import type {} from "saddlerule-fit/react";
// @ts-expect-error: no such unit
export const units = <saddlerule-fit units="furlongs" />;
// @ts-expect-error: no such detail
export const detail = <saddlerule-fit onsaddlerule-list={({ detail }) => detail.wheels} />;`,
    "plain.ts": `import "saddlerule-fit";
const element = document.querySelector("saddlerule-fit")!;
element.list = null;
element.list = { bikes: [{ id: "H1" }] };
element.told.verdict?.window_mm.low.toFixed(1);
// @ts-expect-error: what was told is read only
element.told.verdict = undefined;
// @ts-expect-error: a list has bikes
element.list = { title: "Hall list" };
element.headingLevel = 3;
element.addEventListener("saddlerule-verdict", ({ detail }) => detail.window_mm.low.toFixed(1));
// @ts-expect-error: a detail of another event
element.addEventListener("saddlerule-list", ({ detail }) => detail.window_mm);`,
    "vue.ts": `import type {} from "saddlerule-fit/vue";
import type { GlobalComponents } from "vue";
export const units: InstanceType<GlobalComponents["saddlerule-fit"]>["$props"]["units"] = "cm";`,
    "svelte.ts": `import type {} from "saddlerule-fit/svelte";
import type { SvelteHTMLElements } from "svelte/elements";
export const given: SvelteHTMLElements["saddlerule-fit"] = { list: "/bikes.json", "heading-level": 2 };
// @ts-expect-error: no such view
export const wrong: SvelteHTMLElements["saddlerule-fit"] = { view: "moon" };`,
  });
  try {
    const options = {
      compilerOptions: {
        ...{ strict: true, noEmit: true, target: "ES2022", module: "ESNext", moduleResolution: "Bundler" },
        ...{ jsx: "react-jsx", lib: ["ES2022", "DOM", "DOM.Iterable"], types: [], skipLibCheck: true },
      },
      include: ["*.ts", "*.tsx"],
    };
    writeFileSync(join(folder, "tsconfig.json"), JSON.stringify(options));
    // React itself, and no types of its renderer.
    writeFileSync(
      join(folder, "renderer.d.ts"),
      'declare module "react-dom/client" { export function createRoot(at: Element): { render(what: unknown): void } }',
    );
    const { stdout, status } = spawnSync(join(root, "web/node_modules/.bin/tsc"), ["-p", folder], {
      encoding: "utf8",
    });
    assert.equal(status, 0, stdout);
  } finally {
    remove();
  }
});

test("everything that the package exports is there, it has no dependencies, and its manifest names every attribute", () => {
  const exported = Object.values(description.exports).flatMap((target) =>
    typeof target === "string" ? [target] : Object.values(target),
  );
  for (const file of [...exported, description.types, description.customElements])
    assert.ok(existsSync(join(elementFolder, file)), file);
  assert.equal(description.dependencies, undefined);
  assert.equal(description.license, "Apache-2.0");
  assert.match(description.version, /^\d+\.\d+\.\d+$/);
  assert.ok(readdirSync(elementFolder).includes("LICENSE"));
  const manifest = JSON.parse(readFileSync(join(elementFolder, "custom-elements.json"), "utf8"));
  const [{ declarations }] = manifest.modules;
  const observed = Object.keys(attributes);
  assert.deepEqual(
    declarations[0].attributes.map(({ name }) => name),
    observed,
  );
  const script = readFileSync(join(elementFolder, "index.js"), "utf8");
  const guide = readFileSync(join(root, "web/site/README.md"), "utf8");
  const types = readFileSync(join(elementFolder, "index.d.ts"), "utf8");
  for (const name of observed) {
    assert.ok(script.includes(`"${name}"`), name);
    assert.match(guide, new RegExp(`^\\| \`${name}\``, "m"), name);
    assert.match(types, new RegExp(`^  "?${name}"?\\?:`, "m"), name);
  }
});

test("on a server, the package and the plain script are imported, and do nothing", () => {
  for (const file of ["index.js", "saddlerule-fit.js"]) {
    const said = execFileSync(
      process.execPath,
      [
        "--input-type=module",
        "-e",
        `await import(${JSON.stringify(join(elementFolder, file))}); console.log("there")`,
      ],
      { encoding: "utf8" },
    );
    assert.equal(said, "there\n", file);
  }
});
