// The browsers that the page is tested in. BROWSERS=Firefox,WebKit names some of them only.

import * as chromium from "./chromium.mjs";
import * as firefox from "./firefox.mjs";
import * as webkit from "./webkit.mjs";

const wanted = process.env.BROWSERS?.split(",");

export const browsers = [chromium, firefox, webkit].filter(({ name }) => wanted?.includes(name) ?? true);
