// Draws the site's icons from web/site/icons/app-icon.svg, in headless Chromium:
//
//   node tests/support/draw-icons.mjs [FOLDER]      the folder is web/site/icons unless told otherwise

import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { root } from "./built-engine.mjs";
import { launchBrowser } from "./open-page.mjs";

export const iconFolder = join(root, "web/site/icons");

/** In pixels, with the part of its side by which a corner is rounded: systems cut the others to their own shape. */
export const icons = {
  "icon-192.png": { side: 192, round: 0.18 },
  "icon-512.png": { side: 512, round: 0.18 },
  "icon-maskable-512.png": { side: 512, round: 0 },
  "icon-apple-180.png": { side: 180, round: 0 },
};

/** PNGs by file name. */
export async function drawnIcons() {
  const drawing = readFileSync(join(iconFolder, "app-icon.svg"), "utf8");
  const browser = await launchBrowser();
  try {
    const drawn = {};
    for (const [name, { side, round }] of Object.entries(icons)) {
      const page = await browser.newPage({
        viewport: { width: side, height: side },
      });
      await page.setContent(
        `<style>html { background: none } body { margin: 0 } svg { display: block; border-radius: ${100 * round}% }</style>` +
          drawing.replace("<svg ", `<svg width="${side}" height="${side}" `),
      );
      drawn[name] = await page.screenshot({ omitBackground: true });
      await page.close();
    }
    return drawn;
  } finally {
    await browser.close();
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const folder = process.argv[2] ?? iconFolder;
  for (const [name, png] of Object.entries(await drawnIcons())) writeFileSync(join(folder, name), png);
}
