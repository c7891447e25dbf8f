// The engine answers in codes and figures; this puts English sentences beside them, for those who read answers as they are.
// The sentences are in english.json. `{name}` in one is a figure of the problem or the check, or else a limit by its name;
// `{count#once|{count} times}` is chosen by whether the figure is 1.

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

/** Fields that hold what is somebody's own, whatever the names in it. */
const ofTheList = ["cells", "set", "undo"];

const filled = (sentence, textOf) => sentence.replace(/\{(\w+)\}/g, (_, name) => textOf(name));

/** Problems in words. */
function problemsInEnglish({ problems, problem_words, request_words, known_names, units }) {
  function figureText(figure) {
    if (figure === undefined) return "";
    if (typeof figure !== "object" || figure === null) return String(figure ?? "?");
    const { text, value, unit, word, date, names, are, problem } = figure;
    if (unit !== undefined) return (text ?? figureText(value)) + units[unit];
    if (word !== undefined) return problem_words[word] ?? request_words[word];
    if (names !== undefined)
      return filled(known_names[are], () => names.join(are === "either" ? " or " : ", "));
    return date ?? sentence(problem);
  }

  function sentence({ code, figures, ...place }) {
    const form = problems[code].problem.replace(
      /\{(\w+)#((?:[^{}|]|\{\w+\})*)\|((?:[^{}|]|\{\w+\})*)\}/g,
      (_, name, one, many) => (figures[name] === 1 ? one : many),
    );
    return placeText(place, form.startsWith("{field}: ")) + filled(form, (name) => figureText(figures[name]));
  }

  /** `named`: the sentence begins with the field. */
  function placeText({ line, column, row, column_name: name }, named) {
    if (line !== undefined) return `line ${line}, column ${column}: `;
    if (row === undefined) return "";
    return `row ${row}, ${named ? "" : `${name}: `}`.replace(", : ", ": ");
  }

  /** The problem with `problem` and `expected` before its figures. */
  function inWords(problem) {
    const { code, figures } = problem;
    const expected = filled(problems[code].expected, (name) => figureText(figures[name]));
    return Object.fromEntries(
      Object.entries(problem).flatMap(([name, value]) =>
        name === "figures"
          ? [
              ["problem", sentence(problem)],
              ["expected", expected],
              [name, value],
            ]
          : [[name, value]],
      ),
    );
  }

  return {
    isProblem: ({ code, where, figures }) =>
      Object.hasOwn(problems, code) && where !== undefined && figures !== undefined,
    inWords,
    /** As `about` lists it. */
    listed: ({ code }) => ({
      code,
      sentence: problems[code].problem,
      expected: problems[code].expected,
    }),
  };
}

/**
 * @param {object} english what english.json holds
 * @param {{ name: string, value: unknown, unit: string }[]} constants those that `about` lists
 * @returns {(answer: object) => object} the same answer with `why` behind each code of a check or a choice, and in each problem
 *   the sentence `problem` and what is `expected`
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
    filled(english.checks[check.code], (name) => textOf(check, name)) + (english.rests_on[check.basis] ?? "");

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

  const problems = problemsInEnglish(english);
  const worded = {
    checks: (checks) => checks.map((check) => withWhy(check, "code", sentenceOf(check))),
    worth: (reasons) => reasons.map((one) => withWhy(one, "code", english.worth[one.code])),
    not_offered: (reason) => reason && withWhy(reason, "code", english.not_offered[reason.code]),
    wheel_sizes: (sizes) => sizes.map((one) => withWhy(one, "reason", english.wheel_sizes[one.reason])),
  };

  /** Goes where sentences are wanted: problems of all kinds, bikes and their standing, riders and their stretches. */
  function put(value) {
    if (Array.isArray(value)) return value.map(put);
    if (typeof value !== "object" || value === null) return value;
    if (problems.isProblem(value)) return problems.inWords(value);
    return Object.fromEntries(
      Object.entries(value).map(([name, field]) => {
        if (ofTheList.includes(name)) return [name, field];
        return [name, Object.hasOwn(worded, name) ? worded[name](field) : put(field)];
      }),
    );
  }

  return (answer) =>
    Array.isArray(answer.requests)
      ? { ...answer, problems: answer.problems.map(problems.listed) }
      : put(answer);
}
