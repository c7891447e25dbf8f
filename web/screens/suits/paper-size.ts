// The size of the sheets that are printed on, while something is on screen that needs one.
import { useEffect } from "preact/hooks";

export type Paper = "a4" | "letter";

export const papers: Paper[] = ["a4", "letter"];
export const paperNames: Record<Paper, string> = { a4: "A4", letter: "US Letter" };

/** What is left of a sheet within margins of 10 mm, in millimetres. */
export const paperRoom: Record<Paper, { width: number; height: number }> = {
  a4: { width: 190, height: 277 },
  letter: { width: 195.9, height: 259.4 },
};

/** Sheets are a matter of the document: no rule for them works inside the component. */
export function usePaper(paper: Paper): void {
  useEffect(() => {
    if (!("adoptedStyleSheets" in document)) return undefined;
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(`@page { size: ${paper}; margin: 10mm }`);
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((other) => other !== sheet);
    };
  }, [paper]);
}
