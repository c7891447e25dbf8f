// A visit to the page in any browser, told as its reader would: what is pressed, typed and chosen, and what words appear.
// A browser brings only its pointer, its keys and its way to run a function in the page.

import assert from "node:assert/strict";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import { root } from "../built-engine.mjs";
import { keepStageChosen, usualStage } from "../choose-stage.mjs";
import { until } from "../eventually.mjs";

const { build } = createRequire(`${root}web/package.json`)("esbuild");
const inPage = await build({
  entryPoints: [fileURLToPath(new URL("in-page.js", import.meta.url))],
  bundle: true,
  write: false,
  format: "iife",
});
const finder = inPage.outputFiles[0].text;

/** A pattern as the page can take it. */
const wire = (name) => (name instanceof RegExp ? { pattern: name.source } : (name ?? null));

const spaces = (text) => text.replace(/[\u00a0\u202f]/g, " ");

export class Visit {
  #browser;

  constructor(browser) {
    this.#browser = browser;
  }

  /** The visit ends with its test. */
  static async to(address, { test, browser, size }) {
    const visit = new Visit(await browser.open(size));
    test.after(() => visit.#browser.close());
    await visit.opens(address);
    return visit;
  }

  /** Opens the page, or opens it anew: what the browser keeps is kept. */
  async opens(address) {
    await this.#browser.goTo(address);
    await this.run(finder);
    await this.run(keepStageChosen, usualStage);
    await this.sees("navigation");
  }

  /** Runs a function in the page and hands back what it gives, if JSON can carry it. */
  run(code, ...given) {
    return this.#browser.run(code, ...given);
  }

  /** Asks until the answer is not null. */
  #until(what, ask) {
    const late = async () => {
      const fields = (await this.all("textbox")).map(({ name, value }) => `${name}: ${value}`);
      assert.fail(
        `${what} did not come; fields: ${fields.join(", ")}; on the screen:\n${(await this.words()).slice(0, 3000)}`,
      );
    };
    return until(ask, { late });
  }

  /** Waits for an element and gives what an assistive technology would hear about it. */
  sees(role, name, place = 0) {
    return this.#until(`${role} ${name ?? ""}`, () =>
      this.run(
        (role, name, place) => {
          const element = window.inPage.all(role, name)[place];
          return element === undefined ? null : window.inPage.facts(element);
        },
        role,
        wire(name),
        place,
      ),
    );
  }

  /** All that are there now. */
  all(role, name) {
    return this.run((role, name) => window.inPage.all(role, name).map(window.inPage.facts), role, wire(name));
  }

  async press(role, name, place = 0) {
    const point = await this.#until(`${role} ${name} to press`, () =>
      this.run(
        (role, name, place) => {
          const element = window.inPage.all(role, name)[place];
          return element === undefined ? null : window.inPage.pointOf(element);
        },
        role,
        wire(name),
        place,
      ),
    );
    await this.#browser.click(point);
  }

  /** Goes to a screen by the page's own navigation. */
  goTo(screen) {
    return this.press("button", screen);
  }

  /** Puts a text in the place of what is in a field. */
  async types(name, text) {
    // The page may still scroll to where somebody arrived, and the press go amiss.
    await this.#until(`the focus in ${name}`, async () => {
      await this.press("textbox", name);
      return (await this.sees("textbox", name)).focused;
    });
    await this.key("Control+a");
    await (text === "" ? this.key("Delete") : this.#browser.type(text));
    await this.#until(`${text} in ${name}`, async () => (await this.sees("textbox", name)).value === text);
  }

  /** "Tab", "Shift+Tab", "Enter", "Space", "ArrowDown" and such, or a letter. */
  key(combination) {
    return this.#browser.key(combination);
  }

  /** Chooses from a list that unfolds. */
  async picks(name, option) {
    await this.sees("combobox", name);
    assert.ok(
      await this.run(
        (name, option) => window.inPage.pick(window.inPage.all("combobox", name)[0], option),
        wire(name),
        option,
      ),
      `no option ${option} in ${name}`,
    );
  }

  async opensFile(file, label = /^Open (a|another) list/) {
    await this.sees("file", label);
    await this.#browser.chooseFile(wire(label), file);
  }

  /** Waits for words on the screen; gives the match of a pattern. */
  reads(words) {
    return this.#until(String(words), async () => {
      const shown = await this.words();
      return typeof words === "string" ? shown.includes(words) : words.exec(shown);
    });
  }

  /** Waits until words are gone. */
  readsNoMore(words) {
    return this.#until(`the end of ${words}`, async () => !(await this.words()).includes(words));
  }

  async words() {
    return spaces(await this.run(() => window.inPage.words()));
  }

  /** Where the keyboard is. */
  focused() {
    return this.run(() => {
      const element = window.inPage.focused();
      return element === null ? null : window.inPage.facts(element);
    });
  }

  screenshot() {
    return this.#browser.screenshot();
  }

  /** What must stay empty: script errors, messages on the console, refusals by the page's policy, requests. */
  async faults() {
    const within = await this.run(() => [
      ...window.inPage.faults,
      ...window.inPage.requests().map((name) => `request: ${name}`),
    ]);
    return [...this.#browser.faults, ...within];
  }
}
