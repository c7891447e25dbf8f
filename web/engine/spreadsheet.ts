// Spreadsheets as clubs have them (Office Open XML, ISO/IEC 29500): the first sheet that holds a table, as the text of a table
// in which every cell keeps its row and column. The browser unpacks; the marks of XML are taken apart here, for parsing XML in the
// browser would need a policy of Trusted Types that lets any markup pass. Entities of the file's own are never expanded.
import { inflated } from "./inflating";
import { refused } from "./refusal";
import type { Refusal } from "./refusal";

const mebibyte = 1024 * 1024;

/** Unpacked, of all parts together: a list of 20,000 bikes takes a third of it. */
const mostUnpacked = 48 * mebibyte;
/** Of the table: the engine takes 8 MiB. */
const mostText = 16 * mebibyte;
const mostRows = 1_048_576;

class CannotRead extends Error {}
const damaged = "damaged_spreadsheet";
const locked = "a_locked_spreadsheet";
const tooLarge = "large_spreadsheet";

/**
 * The table of a spreadsheet, its cells apart by tabs; null where the bytes are no spreadsheet of this kind, which may well be
 * a list in another form.
 */
export async function spreadsheetTable(bytes: Uint8Array<ArrayBuffer>): Promise<string | Refusal | null> {
  if (!(bytes[0] === 0x50 && bytes[1] === 0x4b && bytes[2] === 3 && bytes[3] === 4)) return null;
  try {
    const parts = new Archive(bytes);
    const book = parts.names().find((name) => /(^|\/)workbook\.xml$/.test(name));
    return book === undefined ? null : await tableOf(parts, book);
  } catch (failure) {
    const found = failure instanceof CannotRead ? failure.message : damaged;
    // What is cut off may be anything that is packed in this way.
    const isBook = found !== damaged || new TextDecoder("latin1").decode(bytes).includes("xl/work");
    return isBook ? refused("file_is_spreadsheet", { found: { word: found } }) : null;
  }
}

/** The same as a file, with the line that names what is between its cells; as they are where they are no spreadsheet. */
export async function unpackedBytes(bytes: Uint8Array): Promise<Uint8Array | Refusal> {
  const table = await spreadsheetTable(new Uint8Array(bytes));
  return typeof table === "string" ? new TextEncoder().encode(`sep=\t\n${table}`) : (table ?? bytes);
}

/** The text of a file that holds a table: a spreadsheet's, or its own. */
export async function fileTable(file: File | undefined): Promise<string | Refusal> {
  const bytes = new Uint8Array((await file?.arrayBuffer()) ?? []);
  return (await spreadsheetTable(bytes)) ?? new TextDecoder().decode(bytes);
}

/** The parts of a ZIP archive (APPNOTE.TXT 6.3), found by the directory at its end. */
class Archive {
  private readonly view: DataView;
  private readonly places = new Map<string, number>();
  private left = mostUnpacked;

  constructor(private readonly bytes: Uint8Array<ArrayBuffer>) {
    const view = (this.view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length));
    let end = bytes.length - 22;
    while (view.getUint32(end, true) !== 0x06054b50) --end;
    let at = view.getUint32(end + 16, true);
    for (let count = view.getUint16(end + 10, true); count > 0; --count) {
      if (view.getUint32(at, true) !== 0x02014b50) throw new CannotRead(damaged);
      const length = view.getUint16(at + 28, true);
      const name = new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + length));
      this.places.set(name, at);
      at += 46 + length + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
    }
  }

  names(): string[] {
    return [...this.places.keys()];
  }

  /** Its text; empty where there is no such part. */
  async text(name: string): Promise<string> {
    const at = this.places.get(name);
    if (at === undefined) return "";
    const { view } = this;
    if (view.getUint16(at + 8, true) & 1) throw new CannotRead(locked);
    const packing = view.getUint16(at + 10, true);
    const local = view.getUint32(at + 42, true);
    const begin = local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
    const packed = new Blob([this.bytes.subarray(begin, begin + view.getUint32(at + 20, true))]);
    if (packing !== 0 && packing !== 8) throw new CannotRead(damaged);
    const stream = packed.stream();
    const reader = (packing === 8 ? (inflated(stream).body ?? stream) : stream).getReader();
    const decoder = new TextDecoder();
    let text = "";
    for (;;) {
      const { done, value } = await reader.read();
      if (done) return text + decoder.decode();
      this.left -= value.length;
      if (this.left < 0) {
        void reader.cancel();
        throw new CannotRead(tooLarge);
      }
      text += decoder.decode(value, { stream: true });
    }
  }
}

/** One mark of XML after another: its name, `/` before it where it closes, its attributes, and the text up to the next one. */
function* marks(xml: string): Generator<{ name: string; rest: string; text: string }> {
  for (const piece of xml.split("<").slice(1)) {
    const end = piece.indexOf(">");
    if (end < 0) throw new CannotRead(damaged);
    const mark = piece.slice(0, end);
    const [, closes = "", name = ""] = /^(\/?)(?:[\w.-]+:)?([\w.-]*)/.exec(mark) ?? [];
    const asItIs = mark.startsWith("![CDATA[") ? mark.slice(8, -2) : "";
    yield { name: closes + name, rest: mark, text: asItIs + plain(piece.slice(end + 1)) };
  }
}

const named: Record<string, string> = { lt: "<", gt: ">", amp: "&", quot: '"', apos: "'" };

function plain(text: string): string {
  if (!text.includes("&")) return text;
  return text.replace(
    /&(?:#(\d{1,7})|#x([\da-f]{1,6})|(\w{2,4}));/gi,
    (whole, decimal?: string, hex?: string, name = "") => {
      if (name !== "") return named[name as string] ?? whole;
      const code = hex === undefined ? Number(decimal) : parseInt(hex, 16);
      return code > 0x10ffff ? whole : String.fromCodePoint(code);
    },
  );
}

function attribute(mark: string, name: string): string | null {
  const found = new RegExp(`\\s(?:\\w+:)?${name}=(?:"([^"]*)|'([^']*))`).exec(mark);
  return found === null ? null : plain(found[1] ?? found[2] ?? "");
}

async function tableOf(parts: Archive, book: string): Promise<string> {
  const folder = book.slice(0, -"workbook.xml".length);
  const targets = new Map<string, string>();
  let strings: string[] = [];
  let days: boolean[] = [];
  for (const { name, rest } of marks(await parts.text(`${folder}_rels/workbook.xml.rels`))) {
    if (name !== "Relationship") continue;
    const target = attribute(rest, "Target") ?? "";
    const path = target.startsWith("/") ? target.slice(1) : folder + target;
    const type = attribute(rest, "Type") ?? "";
    targets.set(attribute(rest, "Id") ?? "", path);
    if (type.endsWith("/sharedStrings")) strings = sharedStrings(await parts.text(path));
    if (type.endsWith("/styles")) days = daysOfStyles(await parts.text(path));
  }
  let firstDay = Date.UTC(1899, 11, 30);
  const sheets: string[] = [];
  for (const { name, rest } of marks(await parts.text(book))) {
    if (name === "workbookPr" && /^(1|true)$/.test(attribute(rest, "date1904") ?? ""))
      firstDay = Date.UTC(1904, 0, 1);
    if (name === "sheet") sheets.push(targets.get(attribute(rest, "id") ?? "") ?? "");
  }
  if (sheets.length === 0) throw new CannotRead(damaged);
  let first = "";
  for (const path of sheets) {
    const rows = rowsOf(await parts.text(path), strings, days, firstDay);
    const table = rows.join("\n");
    if (first === "") first = table;
    // Not a sheet of explanations before it.
    if (rows.filter((row) => /[^\t]\t+[^\t]/.test(row)).length > 1) return table;
  }
  return first;
}

function sharedStrings(xml: string): string[] {
  const strings: string[] = [];
  let reading = true;
  for (const { name, text } of marks(xml)) {
    if (name === "si") strings.push("");
    // How a name is pronounced is no part of it.
    if (name === "rPh" || name === "/rPh") reading = name !== "rPh";
    if (name === "t" && reading) strings.push((strings.pop() ?? "") + text);
  }
  return strings;
}

/** Of each style of cells, whether its numbers are days. */
function daysOfStyles(xml: string): boolean[] {
  const own = new Map<number, boolean>();
  const days: boolean[] = [];
  let inCells = false;
  for (const { name, rest } of marks(xml)) {
    const number = Number(attribute(rest, "numFmtId"));
    if (name === "numFmt") {
      const form = (attribute(rest, "formatCode") ?? "").replace(/"[^"]*"|\[[^\]]*\]|\\./g, "");
      own.set(number, /[dy]/i.test(form));
    }
    if (name === "cellXfs" || name === "/cellXfs") inCells = name === "cellXfs";
    const usual =
      (number >= 14 && number <= 17) ||
      number === 22 ||
      (number >= 27 && number <= 36) ||
      (number >= 50 && number <= 58);
    if (inCells && name === "xf") days.push(own.get(number) ?? usual);
  }
  return days;
}

function rowsOf(xml: string, strings: string[], days: boolean[], firstDay: number): string[] {
  const rows: string[] = [];
  let cells: string[] = [];
  let length = 0;
  let column = 0;
  let kind = "";
  let isDay = false;
  let value = "";
  const take = (more: number): void => {
    length += more;
    if (length > mostText) throw new CannotRead(tooLarge);
  };
  for (const { name, rest, text } of marks(xml)) {
    if (name === "row") {
      const row = Number(attribute(rest, "r") ?? rows.length + 1);
      if (!(row > rows.length && row <= mostRows)) throw new CannotRead(damaged);
      while (rows.length < row) rows.push("");
      cells = [];
    } else if (name === "c") {
      // Three letters are no more than 18,278 columns.
      const letters = /^[A-Z]{1,3}/.exec(attribute(rest, "r") ?? "")?.[0];
      column = letters === undefined ? cells.length : columnOf(letters);
      kind = attribute(rest, "t") ?? "";
      isDay = days[Number(attribute(rest, "s"))] ?? false;
      value = "";
    } else if (name === "v" || name === "t") {
      value += text;
    } else if (name === "/c" && value !== "") {
      while (cells.length < column) cells.push("");
      const cell = cellText(kind, value, strings, isDay ? firstDay : null);
      cells[column] = /["\t\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
      take(cell.length);
    } else if (name === "/row") {
      take(cells.length);
      rows[rows.length - 1] = cells.join("\t");
    }
  }
  return rows;
}

/** A is 0, AA is 26. */
function columnOf(letters: string): number {
  let column = 0;
  for (const letter of letters) column = column * 26 + letter.charCodeAt(0) - 64;
  return column - 1;
}

function cellText(kind: string, value: string, strings: string[], firstDay: number | null): string {
  if (kind === "s") return strings[Number(value)] ?? "";
  if (kind === "b") return value === "1" ? "true" : "false";
  if (kind === "d") return value.slice(0, 10);
  if (kind !== "" && kind !== "n") return value;
  const number = Number(value);
  const day = new Date(firstDay === null ? NaN : firstDay + number * 86_400_000);
  if (!isNaN(day.getTime())) return day.toISOString().slice(0, 10);
  // What programs calculate with has two digits more than what people typed: 0.30000000000000004.
  return isNaN(number) ? value : String(Number(number.toPrecision(15)));
}
