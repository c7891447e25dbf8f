// For a page that shows Saddlerule of another origin in a frame, built as saddlerule-frame.js: gives each <iframe data-saddlerule>
// the height of what is in it. height-told.ts is the other side.
import { frameHeight } from "./frame-height";
import type { HeightMessage, HeightQuestion } from "./height-told";

function heightIn(data: unknown): number | null {
  const { saddlerule, height } = Object(data) as Partial<HeightMessage>;
  return saddlerule === "height" && typeof height === "number" && Number.isFinite(height) ? height : null;
}

/** null: its address is none, and no message is meant to come from it. */
function originOf({ src }: HTMLIFrameElement): string | null {
  try {
    return new URL(src).origin;
  } catch {
    return null;
  }
}

const frames = (): NodeListOf<HTMLIFrameElement> => document.querySelectorAll("iframe[data-saddlerule]");

/** Only a frame's own page may say how high it is, and only while it is still the page that the frame was to show. */
addEventListener("message", ({ data, origin, source }) => {
  const height = heightIn(data);
  if (height === null || source === null) return;
  for (const frame of frames()) {
    if (frame.contentWindow !== source || originOf(frame) !== origin) continue;
    frame.style.height = frameHeight(height);
  }
});

/** This script may come after what a frame said first. There is nothing in the question that anybody might not read. */
function ask(): void {
  for (const { contentWindow } of frames())
    contentWindow?.postMessage({ saddlerule: "how high" } satisfies HeightQuestion, "*");
}

ask();
if (document.readyState === "loading") addEventListener("DOMContentLoaded", ask);
