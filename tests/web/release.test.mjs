// The release: complete, with checksums and licences of what is inside, and the same bytes from wherever it is built.

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, readdirSync, rmSync, statSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import test, { after } from "node:test";
import { parts } from "../../web/building/licences.mjs";
import { root } from "../support/built-engine.mjs";

const folder = mkdtempSync(join(tmpdir(), "saddlerule-release-"));
after(() => rmSync(folder, { recursive: true }));

function built(sources, name) {
  const out = join(folder, name);
  execFileSync(process.execPath, [join(sources, "web/build.mjs"), "release", "--out", out], {
    stdio: "pipe",
  });
  return out;
}

const filesIn = (release) =>
  readdirSync(release, { recursive: true })
    .filter((name) => statSync(join(release, name)).isFile())
    .sort();

const release = built(root, "here");
const read = (name) => readFileSync(join(release, name), "utf8");

test("everything is in it, and its checksums hold", () => {
  const files = filesIn(release);
  const wanted = [
    "saddlerule.html",
    "site/index.html",
    "site/service-worker.js",
    "site/manifest.webmanifest",
    "site/site-settings.json",
    "element/saddlerule-fit.js",
    "element/saddlerule-frame.js",
    "club-page/index.html",
    "club-page/bikes.json",
    "hosting/nginx.conf",
    "hosting/apache.htaccess",
    "integrity.txt",
    "LICENSE",
    "LICENCES.txt",
  ];
  for (const file of wanted) assert.ok(files.includes(file), file);
  execFileSync("sha256sum", ["--check", "--strict", "--quiet", "SHA256SUMS"], { cwd: release });
  const summed = read("SHA256SUMS").trimEnd().split("\n");
  assert.deepEqual(
    summed.map((line) => line.slice(66)).sort(),
    files.filter((file) => file !== "SHA256SUMS"),
  );
});

test("the integrity of every script and style can be looked up", () => {
  const sha384 = (file) =>
    Buffer.from(execFileSync("sha384sum", [join(release, file)], { encoding: "utf8" }).slice(0, 96), "hex");
  const named = read("integrity.txt").trimEnd().split("\n");
  const scripts = filesIn(release).filter((file) => /^(site|element)\/.*\.(js|css)$/.test(file));
  assert.deepEqual(named.map((line) => line.split("  ")[1]).sort(), scripts);
  for (const line of named) {
    const [integrity, file] = line.split("  ");
    assert.equal(integrity, `sha384-${sha384(file).toString("base64")}`, file);
  }
});

test("the licence of everything inside is there, with its text", () => {
  const licences = read("LICENCES.txt");
  const { dependencies } = JSON.parse(readFileSync(join(root, "web/package.json"), "utf8"));
  for (const [name, version] of Object.entries(dependencies)) {
    const text = readFileSync(join(root, "web/node_modules", name, "LICENSE"), "utf8").trim();
    assert.ok(licences.includes(`${name} ${version}`), name);
    assert.ok(licences.includes(text), name);
  }
  // Names from each library's own notice.
  const holders = {
    nlohmann_json: "Niels Lohmann",
    musl: "Rich Felker",
    emscripten: "The Emscripten Authors",
  };
  for (const [library, holder] of Object.entries({
    ...holders,
    libcxx: "Howard Hinnant",
    libcxxabi: "Nick Kledzik",
  }))
    assert.ok(licences.includes(holder), library);
  for (const library of [
    "system/lib/libc/",
    "system/lib/libcxx/",
    "system/lib/libcxxabi/",
    "system/lib/compiler-rt/",
  ])
    assert.match(licences, new RegExp(`^Files:[^:]*\\n ${library}`, "m"), library);
  assert.ok(licences.includes("Permission is hereby granted, free of charge"));
  assert.ok(licences.includes("University of Illinois"));
  assert.match(read("LICENSE"), /Apache License\s+Version 2\.0/);
});

test("a licence without a text is not passed over", () => {
  const told =
    "Format: x\n\nFiles:\n *\nCopyright: a\nLicense: Known or Unknown\n\nLicense: Known\n The text.\n";
  assert.throws(() => parts(told, []), /no text of the licence unknown/);
  assert.match(parts(told.replace(" or Unknown", ""), []), /The text\./);
});

test("built from another folder, engine and all, it is the same byte for byte", () => {
  const elsewhere = join(folder, "some where/else");
  const left = ["node_modules", "build", ".git", "tests"];
  cpSync(root, elsewhere, { recursive: true, filter: (file) => !left.includes(basename(file)) });
  symlinkSync(join(root, "web/node_modules"), join(elsewhere, "web/node_modules"));
  execFileSync(join(elsewhere, ".ci/build-wasm"), { stdio: "pipe" });
  const other = built(elsewhere, "elsewhere");
  assert.deepEqual(filesIn(other), filesIn(release));
  const differing = filesIn(release).filter(
    (file) => !readFileSync(join(release, file)).equals(readFileSync(join(other, file))),
  );
  assert.deepEqual(differing, []);
});
