// Reading what a file or a record holds, when it may hold anything: every value is checked before it is used.

/** Thrown where a value is not what it has to be; `where` is its place, such as `riders[1].stage`. */
export class Unexpected extends Error {
  constructor(readonly where: string) {
    super(`unexpected at ${where}`);
  }
}

export type Reader<Value> = (value: unknown, where: string) => Value;

const must = (so: boolean, where: string): void => {
  if (!so) throw new Unexpected(where);
};

/** As long as a text of a list may be, for a list's ids, colours and names come into what a family keeps. */
const longestText = 2000;

export function text(longest = longestText): Reader<string> {
  return (value, where) => {
    must(typeof value === "string" && value.length <= longest, where);
    return value as string;
  };
}

export const flag: Reader<boolean> = (value, where) => {
  must(typeof value === "boolean", where);
  return value as boolean;
};

export const number: Reader<number> = (value, where) => {
  must(typeof value === "number" && Math.abs(value) < 1e9, where);
  return value as number;
};

/** A day as YYYY-MM-DD that the calendar has. */
export const day: Reader<string> = (value, where) => {
  const read = text(10)(value, where);
  const time = Date.parse(`${read}T00:00:00Z`);
  must(!Number.isNaN(time) && new Date(time).toISOString().startsWith(read), where);
  return read;
};

/** Counts and keys. */
export const whole: Reader<number> = (value, where) => {
  must(Number.isInteger(value) && number(value, where) >= 1, where);
  return value as number;
};

export function oneOf<Value>(...values: Value[]): Reader<Value> {
  return (value, where) => {
    must(values.includes(value as Value), where);
    return value as Value;
  };
}

export function orNull<Value>(read: Reader<Value>): Reader<Value | null> {
  return (value, where) => (value === null ? null : read(value, where));
}

/** For a field that older pages did not keep. */
export function whereSaid<Value>(read: Reader<Value>, otherwise: Value): Reader<Value> {
  return (value, where) => (value === undefined ? otherwise : read(value, where));
}

export function listOf<Value>(read: Reader<Value>, most: number, least = 0): Reader<Value[]> {
  return (value, where) => {
    must(Array.isArray(value) && value.length >= least && value.length <= most, where);
    return (value as unknown[]).map((item, place) => read(item, `${where}[${place}]`));
  };
}

/** Every field of `Value` has its reader; what else is there is passed over. */
export function shape<Value extends object>(fields: {
  [Key in keyof Value]: Reader<Value[Key]>;
}): Reader<Value> {
  return (value, where) => {
    must(typeof value === "object" && value !== null && !Array.isArray(value), where);
    const from = value as Record<string, unknown>;
    const read = Object.entries<Reader<unknown>>(fields).map(([key, reader]) => [
      key,
      reader(Object.hasOwn(from, key) ? from[key] : undefined, where === "" ? key : `${where}.${key}`),
    ]);
    return Object.fromEntries(read) as Value;
  };
}
