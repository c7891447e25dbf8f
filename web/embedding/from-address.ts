// Settings in the address of the page, behind its #: list=bikes.json&language=de. A server never sees them.
import { misunderstoodWords, readSettings, settingNames } from "./settings";
import type { Settings } from "./settings";
import { tellWebmaster } from "./tell-webmaster";

export interface AddressSettings extends Settings {
  /** The origin of the page that shows this one in a frame, and is told how high it is. */
  host: string | null;
}

/** An origin as browsers write it, such as https://club.example; null: it is none. */
export function originFrom(text: string): string | null {
  try {
    const { origin, protocol, href } = new URL(text);
    const isServed = protocol === "http:" || protocol === "https:";
    return isServed && (href === text || href === `${text}/`) && href === `${origin}/` ? origin : null;
  } catch {
    return null;
  }
}

/** An address may hold thousands of names, and none is worth waiting for. */
const mostTold = 20;

/** @param hash the part of an address from its # on; what nobody knows in it is left out, and the console says so */
export function settingsFromAddress(hash: string): AddressSettings {
  const given = new URLSearchParams(hash.replace(/^#/, ""));
  const told = (name: string, value: string, expected: string): void =>
    tellWebmaster(misunderstoodWords({ name: `#${name}`, value, expected }));
  const settings = readSettings(
    (name) => given.get(name),
    ({ name, value, expected }) => told(name, value, expected),
  );
  const known: string[] = [...settingNames, "host"];
  const unknown = [...given].filter(([name]) => !known.includes(name));
  for (const [name, value] of unknown.slice(0, mostTold))
    told(name, value, `one of ${known.join(", ")} as its name`);
  if (unknown.length > mostTold) tellWebmaster(`${unknown.length - mostTold} more are left out.`);
  const text = given.get("host");
  const host = text === null ? null : originFrom(text);
  if (text !== null && host === null) told("host", text, "an origin such as https://club.example");
  return { ...settings, host };
}

/** The part of an address from its # on, with another screen in it; all else in it stays as it was written. */
export function hashWith(hash: string, { view, bike }: Pick<Settings, "view" | "bike">): string {
  const kept = hash
    .replace(/^#/, "")
    .split("&")
    .filter((part) => part !== "" && !/^(view|bike)=/.test(part));
  const said = Object.entries({ view, bike }).flatMap(([name, value]) =>
    value === null ? [] : [`${name}=${encodeURIComponent(value)}`],
  );
  return `#${[...kept, ...said].join("&")}`;
}
