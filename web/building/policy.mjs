// Content-Security-Policies, and the hashes by which they know a script or a style.
import { createHash } from "node:crypto";

const sha = (algorithm, content) => `${algorithm}-${createHash(algorithm).update(content).digest("base64")}`;

/** What a policy calls an inline script or style. */
export const hashOf = (text) => `'${sha("sha256", text)}'`;

/** What subresource integrity calls a file. */
export const integrityOf = (content) => sha("sha384", content);

/** Scripts are loaded from addresses alone that web/page/trusted-scripts.ts let pass. */
export const trustedTypes = {
  "require-trusted-types-for": ["'script'"],
  "trusted-types": ["saddlerule"],
};

/** What the site may do: fetch its own files, and a list from its own origin. */
export const siteDirectives = {
  "default-src": ["'none'"],
  "script-src": ["'self'", "'wasm-unsafe-eval'"],
  "style-src": ["'self'"],
  "img-src": ["'self'", "data:"],
  "connect-src": ["'self'"],
  "worker-src": ["'self'"],
  "manifest-src": ["'self'"],
  "base-uri": ["'none'"],
  "form-action": ["'none'"],
  ...trustedTypes,
};

/** Directives by name, each with its sources or tokens, as one line. */
export function policyText(directives) {
  return Object.entries(directives)
    .map(([name, values]) => [name, ...values].join(" "))
    .join("; ");
}
