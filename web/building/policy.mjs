// Content-Security-Policies, and the hashes by which they know a script or a style.
import { createHash } from "node:crypto";

const sha = (algorithm, content) => `${algorithm}-${createHash(algorithm).update(content).digest("base64")}`;

/** What a policy calls an inline script or style. */
export const hashOf = (text) => `'${sha("sha256", text)}'`;

/** Scripts are loaded from addresses alone that web/page/trusted-scripts.ts let pass. */
export const trustedTypes = {
  "require-trusted-types-for": ["'script'"],
  "trusted-types": ["saddlerule"],
};

/** Directives by name, each with its sources or tokens, as one line. */
export function policyText(directives) {
  return Object.entries(directives)
    .map(([name, values]) => [name, ...values].join(" "))
    .join("; ");
}
