// The texts of one language as the page uses them: plain ones as they are, those with figures as functions.
import { madeOnce } from "../figures/made-once";
import { english } from "./en";
import type { Language } from "./languages";
import { lengthened } from "./packed-texts";
import { filled, readTemplate } from "./templates";
import type { FiguresOf, GivenFigures, Grammar } from "./templates";

type Said<Node> = Node extends string
  ? [FiguresOf<Node>] extends [never]
    ? string
    : (figures: FiguresOf<Node>) => string
  : Node extends readonly string[]
    ? readonly string[]
    : { readonly [Key in keyof Node]: Said<Node[Key]> };

/** Every word of the page, in one language. */
export type Texts = Said<typeof english>;

const categories = ["zero", "one", "two", "few", "many", "other"] as const;

function grammarOf(language: Language, locale: string): Grammar {
  const plural = new Intl.PluralRules(language);
  const known: string[] = plural.resolvedOptions().pluralCategories;
  const inOrder: string[] = categories.filter((category) => known.includes(category));
  return {
    number: madeOnce(() => new Intl.NumberFormat(locale)),
    list: madeOnce(() => new Intl.ListFormat(locale, { type: "conjunction" })),
    form: (value) => inOrder.indexOf(plural.select(value)),
  };
}

/**
 * `locale` is the reader's own form of the language, such as de-AT; `packed` are its texts as they are packed, in the order of
 * `inEnglish`. What was not translated is said in English.
 */
export function textsIn(language: Language, locale: string, packed = "", inEnglish: object = english): Texts {
  const grammar = grammarOf(language, locale);

  function sentence(text: string): (figures: GivenFigures) => string {
    let template: ReturnType<typeof readTemplate> | null = null;
    return (figures) => filled((template ??= readTemplate(text)), figures, grammar);
  }

  const lines = packed.split("\n");
  let place = 0;
  const next = (english: string): string => {
    const line = lines[place++] ?? "";
    return line === "" ? english : lengthened(line, english);
  };
  function said(node: unknown): unknown {
    if (typeof node === "string") {
      const own = next(node);
      return own.includes("{") || node.includes("{") ? sentence(own) : own;
    }
    if (Array.isArray(node)) return (node as string[]).map(next);
    return Object.fromEntries(
      Object.entries(node as Record<string, unknown>).map(([key, branch]) => [key, said(branch)]),
    );
  }
  return said(inEnglish) as Texts;
}

/** Texts that come in two parts, of which a section may have some in each. */
export function withMore(texts: Texts, more: object): Texts {
  return merged(texts, more) as Texts;
}

function merged(one: object, other: object): object {
  const both = Object.entries(other).map(([key, text]: [string, unknown]) => {
    const own = (one as Record<string, unknown>)[key];
    return [key, isSection(own) && isSection(text) ? merged(own, text) : text];
  });
  return { ...one, ...(Object.fromEntries(both) as object) };
}

const isSection = (text: unknown): text is object => typeof text === "object" && !Array.isArray(text);

/** The text for a code of the engine, where the table has one. */
export function byCode(table: object, code: string, figures: GivenFigures = {}): string | undefined {
  const text: unknown = Object.hasOwn(table, code) ? (table as Record<string, unknown>)[code] : "";
  if (typeof text === "function") return (text as (figures: GivenFigures) => string)(figures);
  return text === "" ? undefined : (text as string);
}
