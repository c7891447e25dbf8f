// Texts with figures in braces: how they are read, and the types of the figures that they ask for.
//
//   {low}                      a figure; numbers are put in the reader's form, lists are joined as the language joins them
//   {bikes#bike|bikes}         the form that goes with a number: as many as the language has, in the order zero, one, two,
//                              few, many, other; what is missing is said with the last
//   {better?than {better}|}    the first where the figure is given, the second where it is null or an empty list
//
// Forms may hold braces again.

/** What may be put into a text. */
export type Figure = string | number | readonly string[];

/** The figures of a text by their names. */
export type GivenFigures = Readonly<Record<string, Figure | null | undefined>>;

/** How a language puts figures into words. */
export interface Grammar {
  number: (value: number) => string;
  list: (words: readonly string[]) => string;
  /** Which form goes with a number: the place among those that the language has. */
  form: (value: number) => number;
}

// Types: the names in a text as written, each with what marks it.

type MarkOf<Head extends string> = Head extends `${infer Name}#${string}`
  ? Name extends `${infer Outer}?${string}`
    ? [Outer, "?"]
    : [Name, "#"]
  : Head extends `${infer Name}?${string}`
    ? [Name, "?"]
    : [Head, ""];

type Marks<Text extends string> = Text extends `${string}{${infer Rest}`
  ? (Rest extends `${infer Head}}${string}` ? MarkOf<Head> : never) | Marks<Rest>
  : never;

type FigureOf<All, Name> =
  ([Name, "#"] extends All ? number : Figure) | ([Name, "?"] extends All ? null : never);

/** What a text asks for; never where it is plain. */
export type FiguresOf<Text extends string> = [Marks<Text>] extends [never]
  ? never
  : { readonly [Name in Marks<Text>[0]]: FigureOf<Marks<Text>, Name> };

// Reading and filling.

interface Mark {
  name: string;
  kind: string;
  forms: Part[][];
}

type Part = string | Mark;

export type Template = readonly Part[];

/** Throws where the text's braces are wrong: the tests read every text of every language. */
export function readTemplate(text: string): Template {
  const tokens = text.split(/([{}|])/);
  const parts = readParts(tokens);
  if (tokens.length > 0) throw new Error(`a brace or bar too many: ${text}`);
  return parts;
}

/** Up to the bar or the brace that ends a form. */
function readParts(tokens: string[]): Part[] {
  const parts: Part[] = [];
  for (let token = tokens[0]; token !== undefined && token !== "|" && token !== "}"; token = tokens[0]) {
    tokens.shift();
    parts.push(token === "{" ? readMark(tokens) : token);
  }
  return parts;
}

function readMark(tokens: string[]): Mark {
  const [, name, kind, rest] = /^(\w+)([#?]?)(.*)$/s.exec(tokens.shift() ?? "") ?? [];
  if (name === undefined || kind === undefined || rest === undefined)
    throw new Error("a brace without a name");
  const forms: Part[][] = [];
  if (kind !== "") {
    tokens.unshift("|", rest);
    while (tokens[0] === "|") {
      tokens.shift();
      forms.push(readParts(tokens));
    }
  }
  if (tokens.shift() !== "}") throw new Error(`the brace of ${name} is not closed`);
  return { name, kind, forms };
}

export function filled(template: Template, figures: GivenFigures, grammar: Grammar): string {
  return template.map((part) => (typeof part === "string" ? part : said(part, figures, grammar))).join("");
}

function said({ name, kind, forms }: Mark, figures: GivenFigures, grammar: Grammar): string {
  const figure = figures[name] ?? null;
  if (kind === "#") {
    const place = Math.min(grammar.form(Number(figure)), forms.length - 1);
    return filled(forms[place] ?? [], figures, grammar);
  }
  if (kind === "?") return filled(forms[isGiven(figure) ? 0 : 1] ?? [], figures, grammar);
  if (typeof figure === "number") return grammar.number(figure);
  return typeof figure === "string" ? apart(figure) : figure === null ? "" : grammar.list(figure.map(apart));
}

/** Letters from right to left, and characters that turn the direction or break the line. */
const turning = /[\u0590-\u08ff\u200e\u200f\u202a-\u202e\u2066-\u2069\ufb1d-\ufdff\ufe70-\ufefc]/;

/** A name from somebody's list must not turn the words after it around, nor begin a line of its own. */
function apart(name: string): string {
  const line = name.replace(/[\n\r\u0085\u2028\u2029]+/g, " ");
  return turning.test(line) ? `\u2068${line}\u2069` : line;
}

function isGiven(figure: Figure | null): boolean {
  return figure !== null && (typeof figure !== "object" || figure.length > 0);
}
