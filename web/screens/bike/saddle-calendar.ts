// The steps of one saddle as a calendar file (RFC 5545), a day each, for whatever calendar the family uses.
import type { JudgedBike } from "../../engine/wire";
import type { Figures } from "../../figures/format-figures";
import { byCode } from "../../texts/texts";
import type { Texts } from "../../texts/texts";
import { upperFirst } from "../../texts/upper-first";

export interface CalendarOf {
  bike: JudgedBike;
  /** The child's key: the same bike may be on the cards of two. */
  rider: number;
  /** The day it is made. */
  today: string;
}

export function saddleCalendar(texts: Texts, figures: Figures, { bike, rider, today }: CalendarOf): string {
  let condition: string | undefined;
  const entries = (bike.raise ?? []).flatMap(({ on, saddle_mm, stage }) => {
    if (stage !== undefined) condition = byCode(texts.moves.once, stage);
    const says = texts.card.date({ bike: bike.name, height: figures.length(saddle_mm) });
    return [
      "BEGIN:VEVENT",
      // Opened once more, the file changes the entries that are there.
      `UID:${encodeURIComponent(bike.id)}-${rider}-${on}@saddlerule.invalid`,
      `DTSTAMP:${compact(today)}T000000Z`,
      `DTSTART;VALUE=DATE:${compact(on)}`,
      `SUMMARY:${escaped(says)}`,
      ...(condition === undefined ? [] : [`DESCRIPTION:${escaped(upperFirst(condition))}`]),
      "TRANSP:TRANSPARENT",
      "END:VEVENT",
    ];
  });
  const lines = [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//Saddlerule//Saddle dates//EN",
    ...entries,
    "END:VCALENDAR",
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join("");
}

const compact = (isoDate: string): string => isoDate.replaceAll("-", "");

const escaped = (text: string): string =>
  text.replace(/[\\;,]/g, (mark) => `\\${mark}`).replaceAll("\u00a0", " ");

const longestLine = 75;

/** In octets of UTF-8; what goes on begins with a blank. */
function folded(line: string): string {
  const encoder = new TextEncoder();
  let written = "";
  let room = longestLine;
  for (const character of line) {
    const { length } = encoder.encode(character);
    if (length > room) {
      written += "\r\n ";
      room = longestLine - 1;
    }
    written += character;
    room -= length;
  }
  return written;
}
