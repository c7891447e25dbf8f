// The page file's script as a browser takes it that enforces Trusted Types (https://www.w3.org/TR/trusted-types/). A policy of
// its own, so that nothing that runs later makes scripts of texts: a policy of that name cannot be made again.

/** What the file's Content-Security-Policy calls this in `trusted-types`. */
const policyName = "saddlerule-start";

interface TrustedTypes {
  createPolicy: (
    name: string,
    rules: { createScript: (text: string) => string },
  ) => { createScript: (text: string) => string };
}

/** @param text of a script whose hash the Content-Security-Policy knows */
export function scriptText(text: string): string {
  const { trustedTypes } = globalThis as { trustedTypes?: TrustedTypes };
  const rules = { createScript: (given: string) => given };
  return (trustedTypes?.createPolicy(policyName, rules) ?? rules).createScript(text);
}
