// Lint rules of the page: TypeScript's strict set, the rules of hooks, and the page's own promises.
import js from "@eslint/js";
import hooks from "eslint-plugin-react-hooks";
import { defineConfig } from "eslint/config";
import tseslint from "typescript-eslint";

/** What the page promises its readers: no network, nothing stored unasked, no markup made from text. */
const promises = {
  "no-restricted-globals": [
    "error",
    { name: "fetch", message: "The page asks nothing of the network." },
    { name: "XMLHttpRequest", message: "The page asks nothing of the network." },
    { name: "localStorage", message: "What is kept goes through web/keeping." },
    { name: "sessionStorage", message: "What is kept goes through web/keeping." },
    { name: "indexedDB", message: "What is kept goes through web/keeping." },
  ],
  "no-restricted-properties": [
    "error",
    { property: "innerHTML", message: "Text reaches the page as text nodes only." },
    { property: "outerHTML", message: "Text reaches the page as text nodes only." },
    { property: "insertAdjacentHTML", message: "Text reaches the page as text nodes only." },
    { object: "document", property: "title", message: "The component does not own the document." },
    { object: "document", property: "body", message: "The component does not own the document." },
  ],
  "no-restricted-syntax": [
    "error",
    {
      selector: "JSXAttribute[name.name='dangerouslySetInnerHTML']",
      message: "Text reaches the page as text nodes only.",
    },
    {
      selector: "CallExpression[callee.property.name=/^toLocale(Date|Time)?String$/]",
      message: "Figures are formatted in figures/ alone.",
    },
  ],
  "no-eval": "error",
  "no-implied-eval": "error",
  "no-console": "error",
};

export default defineConfig(
  // Types for other projects, whose packages are not here.
  { ignores: ["node_modules/", "embedding/package/"] },
  js.configs.recommended,
  {
    files: ["**/*.ts", "**/*.tsx"],
    extends: [tseslint.configs.strictTypeChecked, tseslint.configs.stylisticTypeChecked],
    plugins: { "react-hooks": hooks },
    languageOptions: { parserOptions: { projectService: true } },
    rules: {
      ...promises,
      "@typescript-eslint/method-signature-style": "error",
      "react-hooks/rules-of-hooks": "error",
      "react-hooks/exhaustive-deps": "error",
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true }],
      "@typescript-eslint/no-confusing-void-expression": ["error", { ignoreArrowShorthand: true }],
    },
  },
  { files: ["keeping/indexed-store.ts"], rules: { "no-restricted-globals": "off" } },
  {
    files: ["engine/list-address.ts", "embedding/element-app.ts", "embedding/element-loader.ts"],
    rules: { "no-restricted-globals": "off" },
  },
  // A check page asks a host for all that it has.
  { files: ["check/*.ts"], rules: { "no-restricted-globals": "off" } },
  // The site is the one form of the page that fetches its own files.
  {
    files: ["service-worker/*.ts", "site/served-files.ts", "site/early-files.ts"],
    rules: { "no-restricted-globals": "off" },
  },
  { files: ["embedding/tell-webmaster.ts", "embedding/define-element.ts"], rules: { "no-console": "off" } },
  {
    // Tools, tests and the engine's client: Node, and where a test runs inside the page, a browser.
    files: ["**/*.mjs", "**/*.js"],
    languageOptions: {
      globals: Object.fromEntries(
        [
          ...[
            "AbortController",
            "Blob",
            "Buffer",
            "Image",
            "OffscreenCanvas",
            "Worker",
            "atob",
            "createImageBitmap",
            "URL",
            "caches",
            "console",
            "performance",
            "process",
          ],
          ...["clearInterval", "clearTimeout", "setImmediate", "setInterval", "setTimeout"],
          ...["TextDecoder", "TextEncoder", "WebAssembly", "fetch", "structuredClone"],
          ...[
            "DOMException",
            "Element",
            "File",
            "IDBDatabase",
            "IDBFactory",
            "IDBObjectStore",
            "IDBRequest",
            "IDBTransaction",
            "MessageChannel",
            "Navigator",
            "history",
          ],
          ...[
            "addEventListener",
            "dispatchEvent",
            "indexedDB",
            "localStorage",
            "navigator",
            "sessionStorage",
          ],
          ...["innerHeight", "innerWidth", "outerHeight", "outerWidth", "scrollTo"],
          ...["EventTarget", "Node", "SVGElement", "SVGTextElement"],
          ...["CustomEvent", "Event", "InputEvent", "KeyboardEvent", "document", "getComputedStyle"],
          ...["MutationObserver", "PerformanceObserver", "requestAnimationFrame", "self", "window"],
        ].map((name) => [name, "readonly"]),
      ),
    },
  },
);
