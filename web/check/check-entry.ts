// The script of check.html, which tells a webmaster what is wrong with a host. It is beside the site, and beside the element.
import { engine, files, form } from "checked-files";
import { compiledFrom } from "../engine/inflating";
import { checkFiles } from "./check-files";
import { checkKeeping } from "./check-keeping";
import { checkList } from "./check-list";
import { checkPolicies } from "./check-policy";
import { checkPage } from "./check-element";
import { good, note, reason, wrong } from "./findings";
import type { Finding } from "./findings";

const compiled = async (): Promise<WebAssembly.Module> => {
  const response = await fetch(engine);
  if (!response.ok || response.body === null) throw new Error(`${engine}: ${response.status}`);
  return form === "element" ? compiledFrom(response.body) : WebAssembly.compile(await response.arrayBuffer());
};

const given = new URLSearchParams(location.search);

function field(name: string): string {
  const input = document.querySelector<HTMLInputElement>(`input[name=${name}]`);
  const said = given.get(name) ?? "";
  if (input !== null) input.value = said;
  return said.trim();
}

function address(text: string): URL | null {
  return URL.canParse(text, document.baseURI) ? new URL(text, document.baseURI) : null;
}

async function listOfSettings(): Promise<string> {
  try {
    const settings = (await (await fetch("site-settings.json", { cache: "no-store" })).json()) as {
      list?: unknown;
    };
    return typeof settings.list === "string" ? settings.list : "";
  } catch {
    return "";
  }
}

async function lists(addresses: (URL | null)[]): Promise<Finding[]> {
  const findings: Finding[] = [];
  for (const one of addresses)
    findings.push(
      ...(one === null
        ? [wrong("What is given as the list is not an address.")]
        : await checkList(one, compiled)),
    );
  return findings;
}

/** Named above, in the settings of the site, or in the page around the element. */
async function* checks(): AsyncGenerator<Finding[]> {
  yield [
    isSecureContext
      ? good("The host uses https, or is this machine.")
      : wrong("The host does not use https: browsers save nothing for offline use."),
  ];
  yield await checkFiles(files);
  const said = field("list");
  if (form === "site") {
    const { headers } = await fetch("./", { cache: "no-store" });
    yield checkPolicies([headers.get("content-security-policy") ?? ""], "the host");
    yield await checkKeeping();
    const list = said || (await listOfSettings());
    yield list === ""
      ? [note("No list is named in site-settings.json. Enter the one that your links name.")]
      : await lists([address(list)]);
    return;
  }
  const page = address(field("page"));
  const seen = given.get("page") && page !== null ? await checkPage(page) : null;
  yield seen?.findings ?? [note("Enter the address of the page that the element is in.")];
  yield await lists(said === "" ? (seen?.lists ?? []) : [address(said)]);
}

const marks = { good: "Good", note: "Note", wrong: "Wrong" };

async function tell(): Promise<void> {
  const place = document.getElementById("findings");
  const show = ({ kind, what }: Finding): void => {
    const item = document.createElement("li");
    item.className = kind;
    const mark = document.createElement("strong");
    mark.textContent = marks[kind];
    item.append(mark, ` ${what}`);
    place?.append(item);
  };
  try {
    for await (const findings of checks()) findings.forEach(show);
  } catch (failure) {
    show(wrong(`The check stopped: ${reason(failure)}.`));
  }
  const end = document.getElementById("end");
  const faults = place?.querySelectorAll(".wrong").length ?? 0;
  if (end !== null) end.textContent = faults === 0 ? "Nothing is wrong." : `Wrong: ${faults}.`;
}

// Sent by the browser itself, a host's policy may refuse it.
document.querySelector("form")?.addEventListener("submit", (event) => {
  event.preventDefault();
  const fields = [...document.querySelectorAll("input")].map(({ name, value }) => [name, value.trim()]);
  location.search = new URLSearchParams(fields).toString();
});

void tell();
