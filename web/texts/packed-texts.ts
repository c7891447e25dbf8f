// Translations on their way into the page: the texts alone, in the order of the English ones.
import type { english } from "./en";

type Like<Node> = Node extends string
  ? string
  : Node extends readonly string[]
    ? readonly string[]
    : { readonly [Key in keyof Node]: Like<Node[Key]> };

/** What every language says, text for text. */
export type Translation = Like<typeof english>;

/** In the order of the English texts; an empty one is said in English. */
export type PackedTexts = readonly (string | readonly string[])[];

/** The texts of `translation`, where there are any, in the order in which `texts` stand. */
export function packedLike(texts: object, translation: unknown): PackedTexts {
  return Object.entries(texts).flatMap(([key, text]: [string, unknown]) => {
    const own = (translation as Record<string, unknown> | undefined)?.[key];
    return typeof text === "string" || Array.isArray(text)
      ? [(own ?? "") as PackedTexts[number]]
      : packedLike(text as object, own);
  });
}
