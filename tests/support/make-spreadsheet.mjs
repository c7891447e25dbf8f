// Spreadsheets as office programs write them (Office Open XML, ISO/IEC 29500), made of what a test says is in their cells.

import { zipped } from "../../web/building/zipped.mjs";

const escaped = (text) => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll('"', "&quot;");

export const letterOf = (column) => String.fromCharCode(65 + column);

/** A cell from a text, a number, true or false; null is none. `{ day }` is a serial number shown as a day. */
function cellMarkup(value, place, strings) {
  if (value === null) return "";
  if (typeof value === "number") return `<c r="${place}"><v>${value}</v></c>`;
  if (typeof value === "boolean") return `<c r="${place}" t="b"><v>${Number(value)}</v></c>`;
  if (value.day !== undefined) return `<c r="${place}" s="1"><v>${value.day}</v></c>`;
  if (value.inline !== undefined)
    return `<c r="${place}" t="inlineStr"><is><t>${escaped(value.inline)}</t></is></c>`;
  if (value.formula !== undefined) return `<c r="${place}"><f>SUM(A1:A2)</f><v>${value.formula}</v></c>`;
  return `<c r="${place}" t="s"><v>${strings.push(value) - 1}</v></c>`;
}

/** The parts of a spreadsheet with these sheets, each a list of rows; a row of null is none at all. */
export function spreadsheetParts(...sheets) {
  const strings = [];
  const bodies = sheets.map((rows) =>
    rows
      .map((row, y) =>
        row === null
          ? ""
          : `<row r="${y + 1}">${row.map((value, x) => cellMarkup(value, `${letterOf(x)}${y + 1}`, strings)).join("")}</row>`,
      )
      .join(""),
  );
  const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>';
  const main = 'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"';
  const relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  const relation = (id, type, target) =>
    `<Relationship Id="${id}" Type="${relations}/${type}" Target="${target}"/>`;
  return {
    "[Content_Types].xml": `${head}<Types/>`,
    "xl/workbook.xml": `${head}<workbook ${main} xmlns:r="${relations}"><sheets>${bodies
      .map((_, place) => `<sheet name="Sheet ${place + 1}" sheetId="${place + 1}" r:id="rId${place + 1}"/>`)
      .join("")}</sheets></workbook>`,
    "xl/_rels/workbook.xml.rels": `${head}<Relationships>${bodies
      .map((_, place) => relation(`rId${place + 1}`, "worksheet", `worksheets/sheet${place + 1}.xml`))
      .join(
        "",
      )}${relation("rIdS", "sharedStrings", "sharedStrings.xml")}${relation("rIdT", "styles", "/xl/styles.xml")}</Relationships>`,
    "xl/styles.xml": `${head}<styleSheet ${main}><numFmts count="1"><numFmt numFmtId="164" formatCode="dd\\.mm\\.yyyy"/></numFmts><cellStyleXfs><xf numFmtId="14"/></cellStyleXfs><cellXfs><xf numFmtId="0"/><xf numFmtId="164"/></cellXfs></styleSheet>`,
    // Parts of a text in letters of their own, as programs write them after an edit.
    "xl/sharedStrings.xml": `${head}<sst ${main}>${strings
      .map(
        (text) =>
          `<si><r><t>${escaped(text.slice(0, 2))}</t></r><r><t>${escaped(text.slice(2))}</t></r><rPh><t>no</t></rPh></si>`,
      )
      .join("")}</sst>`,
    ...Object.fromEntries(
      bodies.map((body, place) => [
        `xl/worksheets/sheet${place + 1}.xml`,
        `${head}<worksheet ${main}><sheetData>${body}</sheetData></worksheet>`,
      ]),
    ),
  };
}

export const spreadsheet = (...sheets) => zipped(spreadsheetParts(...sheets));
