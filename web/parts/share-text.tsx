// Sends a text on: through the device's own share sheet, else by way of the clipboard, else by hand.
import { useState } from "preact/hooks";
import { usePage } from "../page/page-context";

type Told = "nothing" | "copied" | "by hand";

export function ShareText({ title, text }: { title: string; text: string }) {
  const { texts } = usePage();
  const [told, tell] = useState<Told>("nothing");
  const shares = "share" in navigator;

  async function send(): Promise<void> {
    try {
      if (shares) {
        await navigator.share({ title, text });
        return;
      }
      await navigator.clipboard.writeText(text);
      tell("copied");
    } catch (cause) {
      // Somebody thought better of it.
      if (cause instanceof DOMException && cause.name === "AbortError") return;
      tell("by hand");
    }
  }

  return (
    <>
      <button type="button" class="button" onClick={() => void send()}>
        {shares ? texts.card.share : texts.card.copy}
      </button>
      <p class="told" role="status">
        {told === "copied" && texts.card.copied}
        {told === "by hand" && texts.card.copyThis}
      </p>
      {told === "by hand" && <pre tabIndex={0}>{text}</pre>}
    </>
  );
}
