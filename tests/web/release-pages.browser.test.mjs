// The release as a webmaster unpacks it: the zips hold what the folders hold, and the club's pages and the form for media libraries work
// from any folder of any host, with nothing to edit.

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { createRequire } from "node:module";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import test, { after, before } from "node:test";
import { releaseFiles } from "../../web/building/release.mjs";
import { root, pageWasmFile } from "../support/built-engine.mjs";
import { clubPage, clubSite } from "../support/club-site.mjs";
import { eventually as soon } from "../support/eventually.mjs";
import { launchBrowser, screens } from "../support/open-page.mjs";

const { unzipSync } = createRequire(join(root, "web/package.json"))("fflate");

/** Browsers of a busy machine take their time. */
const eventually = (check) => soon(check, { tries: 200 });

const release = await releaseFiles({ engine: pageWasmFile });
const guide = release["README.md"].toString();

/** The frame as the guide has it, with other addresses. */
const frameOf = (address) =>
  /<iframe\n[^]*?<\/iframe\s*>/.exec(guide)[0].replaceAll("/fit/#list=../bikes.json", address);

let browser;
let site;
let folder;
before(async () => {
  browser = await launchBrowser();
  const inFolder = Object.entries(release).map(([name, content]) => [`/files of the club/${name}`, content]);
  site = await clubSite(
    {
      ...Object.fromEntries(inFolder),
      "/files of the club/site/": release["site/index.html"],
      "/club.css": "",
      ...Object.fromEntries(
        Object.entries(release)
          .filter(([name]) => name.startsWith("site/"))
          .map(([name, content]) => [
            `/changed/${name.slice(5)}`,
            name.endsWith(".js") ? `${content}\n// a host's own` : content,
          ]),
      ),
      "/media": clubPage(frameOf("/files of the club/media-library/saddlerule-fit.html#list=bikes.csv")),
      "/media-german": clubPage(
        frameOf("/files of the club/media-library/saddlerule-fit.html#list=bikes.csv&language=de"),
      ),
    },
    { policy: null },
  );
  folder = `${site.address}/files of the club`;
});
after(async () => {
  await browser.close();
  site.close();
});

async function open(test, address) {
  const context = await browser.newContext({ viewport: screens.laptop, locale: "en-GB" });
  test.after(() => context.close());
  const page = await context.newPage();
  const problems = [];
  page.on("pageerror", (error) => problems.push(error.message));
  page.on("console", (message) => problems.push(message.text()));
  page.on("requestfailed", (request) => problems.push(request.url()));
  await page.goto(address);
  return { page, problems };
}

test("each zip holds its folder, a README and the licences", () => {
  const folders = {
    "saddlerule-site.zip": ["site/", "fit/"],
    "saddlerule-element.zip": ["element/", "saddlerule/"],
    "saddlerule-media-library.zip": ["media-library/", ""],
  };
  for (const [zip, [from, to]] of Object.entries(folders)) {
    const inZip = unzipSync(release[zip]);
    const expected = Object.keys(release).filter(
      (name) => name.startsWith(from) && name !== "element/LICENCES.txt",
    );
    for (const name of expected)
      assert.ok(Buffer.from(inZip[to + name.slice(from.length)]).equals(Buffer.from(release[name])), name);
    for (const name of ["README.txt", "LICENSE", "LICENCES.txt"]) assert.ok(inZip[name].length > 100, name);
    assert.equal(Object.keys(inZip).length, expected.length + 3);
    assert.match(Buffer.from(inZip["README.txt"]).toString(), /^Saddlerule: /);
  }
});

test("a zip has the same bytes in whatever time zone it is made, and another reader finds no fault", () => {
  const made = (zone) =>
    execFileSync(
      process.execPath,
      [
        ...["--input-type=module", "-e"],
        `import { zipped } from ${JSON.stringify(pathToFileURL(join(root, "web/building/zipped.mjs")).href)};
         process.stdout.write(zipped({ "b/c.txt": "words", a: Buffer.alloc(5000, "x") }));`,
      ],
      { env: { ...process.env, TZ: zone } },
    );
  const [here, there] = [made("UTC"), made("Pacific/Auckland")];
  const hash = (bytes) => createHash("sha256").update(bytes).digest("hex");
  assert.equal(hash(here), hash(there));
  const said = execFileSync(
    "python3",
    [
      "-c",
      "import sys,io,zipfile; z=zipfile.ZipFile(io.BytesIO(sys.stdin.buffer.read())); print(z.testzip(), z.namelist())",
    ],
    { input: here, encoding: "utf8" },
  );
  assert.equal(said, "None ['a', 'b/c.txt']\n");
});

test("the club's page leads to its bikes on the site", async (test) => {
  const { page, problems } = await open(test, `${folder}/club-page/index.html`);
  await page.getByRole("link", { name: "Check our bikes on your phone" }).click();
  await page.getByRole("button", { name: "Bikes", exact: true }).click();
  await page.getByText("Loan 02, 14 in, two hand brakes").first().waitFor();
  assert.deepEqual(problems, []);
});

test("the club's page with the element in it works where it is", async (test) => {
  const { page, problems } = await open(test, `${folder}/club-page/element.html`);
  await page.getByRole("textbox", { name: "Inside leg" }).fill("49.5");
  await page.getByText("Loan 02, 14 in, two hand brakes").first().waitFor();
  assert.deepEqual(problems, []);
});

for (const [what, address] of [
  ["the club's page with a frame", () => `${folder}/club-page/frame.html`],
  ["the guide's frame around the form for a media library", () => `${site.address}/media`],
])
  test(`${what} has its bikes, and becomes as high as what is in it without a script`, async (test) => {
    const { page, problems } = await open(test, address());
    const frame = page.frameLocator("iframe");
    await frame.getByText("Loan 02, 14 in, two hand brakes").first().waitFor();
    const height = () => page.locator("iframe").evaluate((element) => element.getBoundingClientRect().height);
    await eventually(async () => assert.ok((await height()) > 700, `${await height()}`));
    assert.equal(
      await page.locator("iframe").evaluate((element) => getComputedStyle(element).display),
      "block",
    );
    assert.deepEqual(problems, []);
  });

test("a media library's file takes settings, and fetches no list from another host", async (test) => {
  const german = await open(test, `${site.address}/media-german`);
  await german.page.frameLocator("iframe").getByRole("button", { name: "Räder", exact: true }).waitFor();
  const other = `${site.otherAddress}/files%20of%20the%20club/media-library/bikes.csv`;
  const { page } = await open(test, `${folder}/media-library/saddlerule-fit.html#view=rack&list=${other}`);
  await page
    .getByRole("alert")
    .getByText(/has to name .* under connect-src/)
    .waitFor();
});

test("a site whose scripts a host has changed says so in every language, once it had time to start", async (test) => {
  const { page, problems } = await open(test, `${site.address}/changed/index.html`);
  const words = page.getByText("Saddlerule has not started.");
  assert.equal(await words.isVisible(), false);
  await page.evaluate(() => document.getAnimations().forEach((animation) => animation.finish()));
  await words.waitFor();
  assert.equal(await page.locator("main > p:visible").count(), 5);
  assert.ok(problems.some((problem) => /integrity/.test(problem)));
});
