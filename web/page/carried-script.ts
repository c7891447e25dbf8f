// What the page file ends with: unpacks the page's own script and has it run. Its policy still holds the script to its hash.
import { carriedText } from "./carried-blocks";
import { trustedPolicy } from "./trusted-types";

async function runCarriedScript(after: HTMLOrSVGScriptElement | null): Promise<void> {
  const policy = trustedPolicy("saddlerule-script", { createScript: (whole: string) => whole });
  const script = document.createElement("script");
  script.textContent = policy.createScript(await carriedText("script"));
  after?.after(script);
  // It has run, and a copy of the page (page-with-list.ts) has no use for it.
  script.remove();
}

// A browser that cannot unpack has been told so at the beginning of the file.
if ("DecompressionStream" in globalThis) void runCarriedScript(document.currentScript);
