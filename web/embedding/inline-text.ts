// A list between an element's tags as editors of websites leave it: with paragraphs and line breaks put in, quotes made curly,
// marks written out, or its <script> taken away. What can be read is read; what was done is named for the webmaster.

export interface InlineText {
  text: string;
  /** What the editor did to it, in English. */
  done: string[];
  /** It can be read, or was not touched at all, and then whoever reads it says what is wrong with it. */
  usable: boolean;
}

interface Repair {
  done: string;
  from: RegExp;
  to: string;
}

/** In this order: each may be enough, and none changes more than it has to. */
const repairs: Repair[] = [
  {
    done: "put marks around it",
    from: /<\/?script\b[^>]*>|\/\/\s*(?=<!\[CDATA\[|\]\]>)|<!\[CDATA\[|\]\]>|<!--|-->/gi,
    to: " ",
  },
  { done: "put paragraphs or line breaks into it", from: /<\/?(?:p|br|div|span)\b[^>]*>/gi, to: " " },
  { done: "put fixed spaces into it", from: /&nbsp;|&#160;|\u00a0/gi, to: " " },
  { done: "wrote its quotes as marks of HTML", from: /&quot;|&#0?34;/gi, to: '"' },
  {
    done: "made its quotes curly",
    from: /[“”„‟″]|&[lrb]dquo;|&Prime;|&#(?:8220|8221|8222|8243);/gi,
    to: '"',
  },
];

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

export function mended(written: string): InlineText {
  if (isJson(written)) return { text: written, done: [], usable: true };
  const done: string[] = [];
  let text = written;
  for (const repair of repairs) {
    const next = text.replace(repair.from, repair.to);
    if (next === text) continue;
    text = next;
    done.push(repair.done);
    if (isJson(text)) return { text, done, usable: true };
  }
  return { text: written, done, usable: done.length === 0 };
}

/** A list that is no longer in a <script>: from its first brace to the last one. */
export function listIn(words: string): string | null {
  const [text = ""] = /\{[^]*\}/.exec(words) ?? [];
  return /["“”″;]bikes["“”″&]/.test(text) ? text : null;
}
