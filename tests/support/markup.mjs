// The rules of HTML (html-validate, from the WHATWG's living standard) over a document.

import { HtmlValidate } from "html-validate";

const validator = new HtmlValidate({
  extends: ["html-validate:standard", "html-validate:a11y", "html-validate:document"],
  rules: {
    // The file is packed into few lines for its size.
    "no-trailing-whitespace": "off",
    // Drawings are where their figures put them.
    "no-inline-style": "off",
    // Every element with a role that ARIA lets have a name may have one: a list too.
    "aria-label-misuse": ["error", { allowAnyNamable: true }],
    // A list of which only the rows near the screen are drawn keeps room for the others, which <ul> may not hold.
    "prefer-native-element": ["error", { exclude: ["list", "listitem"] }],
  },
});

/** A line for each rule that is broken. */
export async function markupFaults(html) {
  const { results } = await validator.validateString(html);
  return results
    .flatMap(({ messages }) => messages)
    .map(({ ruleId, message, selector }) => `${ruleId}: ${message} (${selector ?? "document"})`);
}

/** The document as it is, with what is in the shadow root put where it is seen, and without screens out of sight. */
export function renderedDocument(page) {
  return page.evaluate(() => {
    const room = document.querySelector("#saddlerule").shadowRoot.querySelector(".room");
    const copy = room.cloneNode(true);
    const copies = [...copy.querySelectorAll("*")];
    [...room.querySelectorAll("*")].forEach((element, place) => {
      if (element.matches(".screen") && !element.checkVisibility()) copies[place].remove();
    });
    const inside = copy.outerHTML;
    return (
      `<!doctype html>\n<html lang="en"><head><meta charset="utf-8"><title>${document.title}</title></head>` +
      `<body><main>${inside}</main></body></html>`
    );
  });
}
