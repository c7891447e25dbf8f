// Reading what a file or a record holds, when it may hold anything: every value is checked before it is used.
import { longestText } from "../state/limits";

/** Thrown where a value is not what it has to be; `where` is its place, such as `riders[1].stage`. */
export class Unexpected extends Error {
  constructor(readonly where: string) {
    super(`unexpected at ${where}`);
  }
}

/** Thrown where a value is of the right kind and yet of no use, such as a day that is none: the rest is read without it. */
export class OutOfBounds extends Unexpected {}

/** `lost` is told the places of what had to be left out or cut. */
export type Reader<Value> = (value: unknown, where: string, lost: string[]) => Value;

function must(so: boolean, where: string): void {
  if (!so) throw new Unexpected(where);
}

function within(bounds: boolean, where: string): void {
  if (!bounds) throw new OutOfBounds(where);
}

/** As the engine counts: a character outside of Unicode's first plane is one, and not two. */
function isLonger(text: string, longest: number): boolean {
  return text.length > longest && Array.from(text).length > longest;
}

/** What is longer is cut. */
export function text(longest = longestText): Reader<string> {
  return (value, where, lost) => {
    must(typeof value === "string", where);
    if (!isLonger(value as string, longest)) return value as string;
    lost.push(where);
    return Array.from(value as string)
      .slice(0, longest)
      .join("");
  };
}

/** A text that tells one thing from another, and is no other once it is cut. */
export function mark(longest = longestText): Reader<string> {
  return (value, where) => {
    must(typeof value === "string", where);
    within(!isLonger(value as string, longest), where);
    return value as string;
  };
}

export const flag: Reader<boolean> = (value, where) => {
  must(typeof value === "boolean", where);
  return value as boolean;
};

export const number: Reader<number> = (value, where) => {
  must(typeof value === "number", where);
  within(Math.abs(value as number) < 1e9, where);
  return value as number;
};

/** A day as YYYY-MM-DD that the calendar has. */
export const day: Reader<string> = (value, where) => {
  must(typeof value === "string", where);
  const read = value as string;
  const time = Date.parse(`${read}T00:00:00Z`);
  within(read.length === 10 && !Number.isNaN(time) && new Date(time).toISOString().startsWith(read), where);
  return read;
};

/** Counts. */
export const whole: Reader<number> = (value, where, lost) => {
  must(Number.isInteger(value) && (value as number) >= 1, where);
  return number(value, where, lost);
};

/** Numbers that tell things apart; families number theirs anew. */
export const key: Reader<number> = (value, where) => {
  must(Number.isSafeInteger(value) && (value as number) >= 1, where);
  return value as number;
};

export function oneOf<Value>(...values: Value[]): Reader<Value> {
  return (value, where) => {
    must(values.includes(value as Value), where);
    return value as Value;
  };
}

export function orNull<Value>(read: Reader<Value>): Reader<Value | null> {
  return (value, where, lost) => (value === null ? null : read(value, where, lost));
}

/** For a field without which all else can be read. */
export function orElse<Value>(read: Reader<Value>, otherwise: Value): Reader<Value> {
  return (value, where, lost) => readOr(read, value, where, lost) ?? otherwise;
}

/** undefined: it is out of bounds, and its place has been told. */
function readOr<Value>(
  read: Reader<Value>,
  value: unknown,
  where: string,
  lost: string[],
): Value | undefined {
  try {
    return read(value, where, lost);
  } catch (cause) {
    if (!(cause instanceof OutOfBounds)) throw cause;
    lost.push(cause.where);
    return undefined;
  }
}

/** For a field that older pages did not keep. */
export function whereSaid<Value>(read: Reader<Value>, otherwise: Value): Reader<Value> {
  return (value, where, lost) => (value === undefined ? otherwise : read(value, where, lost));
}

/** What is out of bounds, and what is more than `most`, is left out. */
export function listOf<Value>(read: Reader<Value>, most = Infinity, least = 0): Reader<Value[]> {
  return (value, where, lost) => {
    must(Array.isArray(value), where);
    const items = value as unknown[];
    if (items.length > most) lost.push(`${where}[${most}]`);
    const kept = items
      .slice(0, most)
      .map((item, place) => readOr(read, item, `${where}[${place}]`, lost))
      .filter((item) => item !== undefined);
    must(kept.length >= least, where);
    return kept;
  };
}

/** Every field of `Value` has its reader; what else is there is passed over. */
export function shape<Value extends object>(fields: {
  [Key in keyof Value]: Reader<Value[Key]>;
}): Reader<Value> {
  return (value, where, lost) => {
    must(typeof value === "object" && value !== null && !Array.isArray(value), where);
    const from = value as Record<string, unknown>;
    const read = Object.entries<Reader<unknown>>(fields).map(([key, reader]) => [
      key,
      reader(Object.hasOwn(from, key) ? from[key] : undefined, where === "" ? key : `${where}.${key}`, lost),
    ]);
    return Object.fromEntries(read) as Value;
  };
}
