// What a Content-Security-Policy forbids of that which Saddlerule needs.
import { good, note, wrong } from "./findings";
import type { Finding } from "./findings";

type Directives = Map<string, string[]>;

function directivesOf(policy: string): Directives {
  const parts = policy.split(";").map((part) => part.trim().split(/\s+/));
  return new Map(parts.map(([name = "", ...sources]) => [name.toLowerCase(), sources]));
}

/** @param where whose policies they are; each of them has to allow it */
export function checkPolicies(policies: string[], where: string): Finding[] {
  // Several in one header have a comma between them, and no source has one.
  const all = policies.flatMap((policy) => policy.split(",")).filter((policy) => policy.trim() !== "");
  if (all.length === 0) return [note(`No policy comes from ${where}; none is needed.`)];
  const faults = all.flatMap((policy) => missingIn(directivesOf(policy)));
  return faults.length === 0
    ? [good(`The policy of ${where} allows all that is needed.`)]
    : [wrong(`The policy of ${where} forbids what is needed: ${[...new Set(faults)].join("; ")}.`)];
}

function missingIn(policy: Directives): string[] {
  const sources = (...names: string[]): string[] | null => {
    const name = [...names, "default-src"].find((one) => policy.has(one));
    return name === undefined ? null : (policy.get(name) ?? []);
  };
  const allows = (found: string[] | null): boolean =>
    found === null || found.some((source) => ["'self'", "*", "https:", location.origin].includes(source));
  const faults: string[] = [];
  const scripts = sources("script-src");
  if (!allows(scripts) && scripts?.includes("'strict-dynamic'") !== true)
    faults.push("script-src needs 'self'");
  if (scripts !== null && !scripts.includes("'wasm-unsafe-eval'") && !scripts.includes("'unsafe-eval'"))
    faults.push("script-src needs 'wasm-unsafe-eval'");
  if (!allows(sources("connect-src"))) faults.push("connect-src needs 'self'");
  if (!allows(sources("worker-src", "child-src", "script-src"))) faults.push("worker-src needs 'self'");
  const names = policy.get("trusted-types");
  if (names !== undefined && !names.includes("saddlerule") && !names.includes("*"))
    faults.push("trusted-types needs saddlerule");
  return faults;
}
