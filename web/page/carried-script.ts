// What the page file ends with: unpacks the page's own script and has it run. Its policy still holds the script to its hash.
import { carriedText } from "./carried-blocks";

/** What the page's Content-Security-Policy calls this in `trusted-types`. */
const policyName = "saddlerule-script";

/** As browsers have it that know Trusted Types (https://www.w3.org/TR/trusted-types/); the compiler does not yet. */
interface TrustedTypes {
  createPolicy: (
    name: string,
    rules: { createScript: (text: string) => string },
  ) => { createScript: (text: string) => string };
}

async function runCarriedScript(after: HTMLOrSVGScriptElement | null): Promise<void> {
  const text = await carriedText("script");
  const { trustedTypes } = globalThis as { trustedTypes?: TrustedTypes };
  const policy = trustedTypes?.createPolicy(policyName, { createScript: (whole) => whole });
  const script = document.createElement("script");
  script.textContent = policy?.createScript(text) ?? text;
  after?.after(script);
}

// A browser that cannot unpack has been told so at the beginning of the file.
if ("DecompressionStream" in globalThis) void runCarriedScript(document.currentScript);
