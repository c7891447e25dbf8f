// Translations on their way into the page: the texts alone, a line each, in the order of the English ones. Figures are named by
// their place in the English text, which is shorter.
import type { english } from "./en";

type Like<Node> = Node extends string
  ? string
  : Node extends readonly string[]
    ? readonly string[]
    : { readonly [Key in keyof Node]: Like<Node[Key]> };

/** What every language says, text for text. */
export type Translation = Like<typeof english>;

/** The names of the figures in a text, each once. */
const namesIn = (text: string): string[] => [
  ...new Set(Array.from(text.matchAll(/\{(\w+)/g), ([, name = ""]) => name)),
];

/** `text` with the names of `english` shortened to their places. */
function shortened(text: string, english: string): string {
  const names = namesIn(english);
  return text.replace(/\{(\w+)/g, (mark, name: string) =>
    names.includes(name) ? `{${names.indexOf(name)}` : mark,
  );
}

/** The text that was shortened. */
export function lengthened(text: string, english: string): string {
  const names = namesIn(english);
  return text.replace(/\{(\d+)/g, (mark, place: string) => `{${names[Number(place)] ?? mark}`);
}

/** The texts of `translation`, where there are any, in the order of `texts`; an empty line where there is none. */
export function packedLike(texts: object, translation: unknown): string {
  const lines = Object.entries(texts).map(([key, text]: [string, unknown]) => {
    const own = (translation as Record<string, unknown> | undefined)?.[key];
    if (typeof text === "string") return typeof own === "string" ? shortened(own, text) : "";
    if (Array.isArray(text))
      return text.map((_, place) => (own as string[] | undefined)?.[place] ?? "").join("\n");
    return packedLike(text as object, own);
  });
  return lines.join("\n");
}
