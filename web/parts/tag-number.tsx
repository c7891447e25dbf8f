// The number on a bike's tag: by it somebody finds the bike in the shed.
import type { JudgedBike } from "../engine/wire";

type Named = Pick<JudgedBike, "id" | "name"> & { taped?: boolean };

/** null where the list gives none: such a bike has its name as id, numbered where several share it. */
export function tagNumber({ id, name, taped = false }: Named): string | null {
  const isName = name === "" || name.startsWith(id) || (id.startsWith(`${name} (`) && id.endsWith(")"));
  return taped || isName ? null : id;
}

/** "L07 Loan 07", where a text has no room for more. */
export function nameWithTag(bike: Named): string {
  return [tagNumber(bike), bike.name || bike.id].filter(Boolean).join(" ");
}

export function TagNumber({ bike }: { bike: Named }) {
  const tag = tagNumber(bike);
  return tag === null ? null : <strong class="tag-number">{tag}</strong>;
}
