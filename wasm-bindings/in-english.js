// The engine answers in codes and figures; this puts English sentences beside them, for those who read answers as they are.
// The sentences are in english.json. `{name}` in one is a figure of the check, or else a limit by its name.

/** How many decimals are worth saying, by unit. */
const decimals = {
  mm: 0,
  metres: 2,
  gear_inches: 0,
  kg: 1,
  degrees: 0,
  km_h: 0,
  turns_per_minute: 0,
  ratio: 2,
};
const units = Object.keys(decimals);

/** Rounded half away from zero, without trailing zeros. */
function rounded(value, places) {
  const size = Math.round(Math.abs(value) * 10 ** places) / 10 ** places;
  return String(value < 0 && size > 0 ? -size : size);
}

/**
 * @param {object} english what english.json holds
 * @param {{ name: string, value: unknown, unit: string }[]} constants those that `about` lists
 * @returns {(answer: object) => object} the same answer with `why` behind each code that has a sentence
 */
export function inEnglish(english, constants) {
  const figureText = (value, unit) => rounded(value, decimals[unit]) + english.units[unit];
  const limits = new Map(
    constants
      .filter(({ name }) => name.startsWith("check."))
      .map(({ name, value, unit }) => [name.slice("check.".length), figureText(value, unit)]),
  );

  /** A field whose name ends in its unit. */
  function figureNamed(fields, name) {
    const unit = units.find((one) => `${name}_${one}` in fields);
    return unit && figureText(fields[`${name}_${unit}`], unit);
  }

  function textOf(check, name) {
    if (name === "missing") return check.to_measure.map((field) => english.measures[field]).join(", ");
    if (name === "at_least") return figureNamed(check, "limit_low") ?? figureNamed(check, "limit");
    if (name === "at_most") return figureNamed(check, "limit_high") ?? figureNamed(check, "limit");
    return figureNamed(check, name) ?? figureNamed(check.figures, name) ?? limits.get(name) ?? "";
  }

  const sentenceOf = (check) =>
    english.checks[check.code].replace(/\{(\w+)\}/g, (_, name) => textOf(check, name)) +
    (english.rests_on[check.basis] ?? "");

  /** The object with `why` behind its field `code`. */
  const withWhy = (object, code, why) =>
    Object.fromEntries(
      Object.entries(object).flatMap(([name, value]) =>
        name === code
          ? [
              [name, value],
              ["why", why],
            ]
          : [[name, value]],
      ),
    );

  const worded = {
    checks: (checks) => checks.map((check) => withWhy(check, "code", sentenceOf(check))),
    worth: (reasons) => reasons.map((one) => withWhy(one, "code", english.worth[one.code])),
    not_offered: (reason) => reason && withWhy(reason, "code", english.not_offered[reason.code]),
    wheel_sizes: (sizes) => sizes.map((one) => withWhy(one, "reason", english.wheel_sizes[one.reason])),
  };

  /** Goes where sentences are wanted: bikes and their standing, riders and their stretches. */
  function put(value) {
    if (Array.isArray(value)) return value.map(put);
    if (typeof value !== "object" || value === null) return value;
    return Object.fromEntries(
      Object.entries(value).map(([name, field]) => [
        name,
        Object.hasOwn(worded, name) ? worded[name](field) : put(field),
      ]),
    );
  }

  return put;
}
