// The code on a bike's tag: the address of the page that is open, which opens it at that bike.
import { correction, generate } from "lean-qr/nano";

export interface TagCode {
  /** Modules along a side. */
  size: number;
  /** The dark ones, as a path in a square of that size. */
  path: string;
}

/** null: the page has no address that a phone could open. */
export type TagCodes = (id: string) => TagCode | null;

const plain = (value: string): string => encodeURIComponent(value).replaceAll("%2F", "/");

/** @param kept what the page's own address says behind its # and has to say again, such as where the list is */
export function tagAddress(address: string, id: string, kept: readonly string[]): string {
  const [page = "", hash = ""] = address.split("#");
  const said = new URLSearchParams(hash);
  const parts = [...kept.map((name) => [name, said.get(name)]), ["bike", id]];
  return `${page}#${parts.flatMap(([name, value]) => (value ? `${name}=${plain(value)}` : [])).join("&")}`;
}

export function tagCodes(kept: readonly string[]): TagCodes {
  return (id) => {
    if (!/^https?:$/.test(location.protocol)) return null;
    try {
      const code = generate(tagAddress(location.href, id, kept), { minCorrectionLevel: correction.M });
      return { size: code.size, path: darkPath(code) };
    } catch {
      // Longer than any code can be.
      return null;
    }
  };
}

function darkPath({ size, get }: { size: number; get: (x: number, y: number) => boolean }): string {
  let path = "";
  for (let y = 0; y < size; ++y)
    for (let x = 0; x < size; ++x) {
      if (!get(x, y)) continue;
      const from = x;
      while (get(x + 1, y)) ++x;
      path += `M${from} ${y}h${x + 1 - from}v1h${from - x - 1}z`;
    }
  return path;
}
