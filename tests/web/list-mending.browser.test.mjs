// A list with mistakes: what was set aside is found with its place and mended, slips are repaired by a tap and taken back.

import assert from "node:assert/strict";
import test, { after, before } from "node:test";
import { eventually } from "../support/eventually.mjs";
import {
  choice,
  entry,
  field,
  fileFolder,
  focused,
  jsonList,
  openDesk,
  press,
  tall,
} from "../support/list-desk.mjs";
import { goTo, launchBrowser, openList, screens, shownText } from "../support/open-page.mjs";

const folder = fileFolder();
let browser;
before(async () => (browser = await launchBrowser()));
after(async () => {
  await browser.close();
  folder.done();
});

const hall = folder.file(
  "hall.csv",
  [
    "# title: Hall list",
    "# units: cm",
    "id;name;saddle lowest;saddle highest;shelf",
    "L01;Loan 01;49,5;63;a",
    "L02;Loan 02;63;49,5;b",
    "L03;Loan 03;forty;60;c",
    "L04;Loan 04;52;66;d",
  ].join("\n"),
);

test("a row that cannot be used is named by row and column, and mended in its own field", async () => {
  const { page, faults, close } = await openDesk(browser, screens.phone, [hall]);
  await page.getByRole("heading", { name: "2 bikes left out" }).waitFor();
  await press(page, "Show: 2 bikes left out");
  assert.equal((await focused(page)).text, "Bikes in the list");
  const odd = entry(page, "Loan 03");
  await odd.getByText(/row 6, saddle.lowest/i).waitFor();
  assert.match(await odd.textContent(), /forty/);
  await odd.getByRole("button", { name: "Edit Loan 03" }).click();
  await page.getByRole("heading", { name: "Edit Loan 03" }).waitFor();
  const lowest = field(page, "Saddle at its lowest (cm)");
  assert.equal(await lowest.inputValue(), "forty");
  assert.equal(await field(page, "shelf").inputValue(), "c");
  await eventually(async () => assert.equal(await lowest.getAttribute("aria-invalid"), "true"));
  await page.getByText("As it is, this bike is left out until it is fixed.").waitFor();
  await lowest.fill("40,5");
  await page.getByText("As it is, this bike is").waitFor({ state: "detached" });
  assert.equal(await lowest.getAttribute("aria-invalid"), "false");
  await lowest.press("Enter");
  assert.equal((await focused(page)).id, "desk-saddle_highest");
  await press(page, "Save this bike");
  await page.getByText("Changed Loan 03.").waitFor();
  await page.getByRole("heading", { name: "1 bike left out" }).waitFor();
  await page.getByRole("radio", { name: "All 4" }).check();
  await entry(page, "Loan 03")
    .getByText(/Saddle 40.5.cm to 60.cm/)
    .waitFor();
  await press(page, "Undo");
  await page.getByRole("heading", { name: "2 bikes left out" }).waitFor();
  await press(page, "Redo");
  await page.getByRole("heading", { name: "1 bike left out" }).waitFor();
  assert.deepEqual(faults, []);
  await close();
});

const fair = folder.file(
  "fair.csv",
  [
    "# title: Fair list",
    "# units: cm",
    "id;name;saddle lowest;saddle highest;gears;shelf",
    "F01;Fair 01;forty;60;many;a",
    "F02;Fair 02;49,5;63;6;b",
    "F03;Fair 03;52;sixty;6;c",
    "F04;Fair 04;;;6;d",
  ].join("\n"),
);

test("faulty cells are mended in their rows, one bike after the other, by keyboard alone, and taken back", async () => {
  const { page, faults, close } = await openDesk(browser, screens.phone, [fair]);
  await page.getByRole("heading", { name: "3 bikes left out" }).waitFor();
  const [first, third, last] = ["Fair 01", "Fair 03", "Fair 04"].map((name) => entry(page, name));
  const cell = first.getByRole("textbox", { name: "Saddle at its lowest (cm)", exact: true });
  assert.equal(await cell.inputValue(), "forty");
  assert.equal(await first.getByRole("textbox").count(), 1);
  const described = await cell.getAttribute("aria-describedby");
  assert.match(await page.locator(`#${described}`).textContent(), /row 4, saddle.lowest/i);
  await cell.focus();
  await page.keyboard.press("Control+a");
  await page.keyboard.type("fifty");
  await page.keyboard.press("Enter");
  const bar = page.getByRole("status").filter({ hasText: "Changed Fair 01." });
  await bar.getByText("Changed Fair 01. 3 bikes left out.").waitFor();
  await eventually(async () => assert.equal((await focused(page)).id, "mend-1"));
  assert.equal(await cell.inputValue(), "fifty", "still faulty: the same row has the focus");
  await page.keyboard.press("Control+a");
  await page.keyboard.type("40,5");
  await page.keyboard.press("Enter");
  const next = first.getByRole("textbox", { name: "Gears", exact: true });
  const goes = async (id) => eventually(async () => assert.equal((await focused(page)).id, id));
  if (await next.count()) {
    await goes("mend-1");
    await page.keyboard.press("Control+a");
    await page.keyboard.type("7");
    await page.keyboard.press("Enter");
  }
  await bar.getByText("Changed Fair 01. 2 bikes left out.").waitFor();
  await goes("mend-3");
  const highest = third.getByRole("textbox", { name: "Saddle at its highest (cm)", exact: true });
  await highest.fill("66");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  await page.getByText("Changed Fair 03. 1 bike left out.").waitFor();
  // No single cell is at fault there: the row has what opens the whole form.
  await eventually(async () => assert.equal((await focused(page)).text, "Fix it"));
  assert.equal(await last.getByRole("textbox").count(), 0);
  await third.getByText(/Saddle 52.cm to 66.cm/).waitFor();
  await press(page, "Undo");
  await page.getByText("Undone: Changed Fair 03. 2 bikes left out.").waitFor();
  assert.equal(await highest.inputValue(), "sixty");
  await third.getByRole("button", { name: "Edit Fair 03" }).click();
  await page.getByRole("heading", { name: "Edit Fair 03" }).waitFor();
  assert.deepEqual(faults, []);
  await close();
});

test("the next bike to be mended is found though it is far down the list", async () => {
  const many = folder.file(
    "many.json",
    jsonList(
      Array.from({ length: 300 }, (_, place) => ({
        id: `B${place + 1}`,
        saddle_lowest: place === 1 || place === 280 ? "low" : 50,
      })),
    ),
  );
  const { page, faults, close } = await openDesk(browser, screens.phone, [many]);
  const first = entry(page, "B2").getByRole("textbox");
  await first.fill("51");
  await first.press("Enter");
  await eventually(async () => assert.equal((await focused(page)).id, "mend-281"));
  await entry(page, "B281").getByRole("textbox").fill("52");
  await page.keyboard.press("Enter");
  await page.getByText("Changed B281. 0 bikes left out.").waitFor();
  await eventually(async () => assert.equal((await focused(page)).text, "Bikes in the list"));
  assert.deepEqual(faults, []);
  await close();
});

test("swapped heights are repaired by a tap, never unasked, and taken back", async () => {
  const { page, faults, close } = await openDesk(browser, screens.phone, [hall]);
  const odd = entry(page, "Loan 02");
  await odd.getByText(/look swapped/).waitFor();
  await odd.getByText("left out").waitFor();
  await odd.getByRole("button", { name: "Swap them" }).click();
  await odd.getByText(/Saddle 49.5.cm to 63.cm/).waitFor();
  await page.getByText("Fixed Loan 02.").waitFor();
  await eventually(async () => assert.match((await focused(page)).text, /Loan 02/));
  await press(page, "Undo");
  await odd.getByText(/look swapped/).waitFor();
  await page.getByText("Undone: Fixed Loan 02.").waitFor();
  assert.equal(await page.getByText("not saved").count(), 0, "as it was opened");
  assert.deepEqual(faults, []);
  await close();
});

test("Ctrl+Z takes a step back and Ctrl+Shift+Z does it again; in a field it is the browser's", async () => {
  const { page, faults, close } = await openDesk(browser, screens.phone, [hall]);
  await entry(page, "Loan 02").getByRole("button", { name: "Swap them" }).click();
  await page.getByText("Fixed Loan 02.", { exact: true }).waitFor();
  await eventually(async () => assert.match((await focused(page)).text, /Loan 02/));
  await page.keyboard.press("Control+z");
  await page.getByText("Undone: Fixed Loan 02.").waitFor();
  await page.keyboard.press("Control+z"); // there is no more to take back
  await page.keyboard.press("Control+Shift+z");
  await page.getByText("Fixed Loan 02.", { exact: true }).waitFor();
  await field(page, "Find a bike").fill("Loan");
  await page.keyboard.press("Control+z");
  await eventually(async () => assert.equal(await field(page, "Find a bike").inputValue(), ""));
  await page.getByText("Fixed Loan 02.", { exact: true }).waitFor();
  assert.deepEqual(faults, []);
  await close();
});

test("inches typed as centimetres are repaired all at once, and all taken back at once", async () => {
  const bikes = ["A", "B", "C"].map((id) => ({ id, saddle_lowest: 17.5, saddle_highest: 24.5 }));
  const list = folder.file(
    "inches.json",
    jsonList([...bikes, { id: "D", saddle_lowest: 45, saddle_highest: 60 }]),
  );
  const { page, close } = await openDesk(browser, screens.laptop, [list]);
  await entry(page, "A")
    .getByRole("button", { name: /^Read .* 17.5 in$/ })
    .waitFor();
  await page.getByRole("button", { name: /Fix all/ }).click();
  await page.getByText(/Fixed \d+ bikes/).waitFor();
  await entry(page, "B")
    .getByText(/Saddle 44.5.cm to 62.2.cm/)
    .waitFor();
  await press(page, "Undo");
  await entry(page, "B")
    .getByRole("button", { name: /^Read / })
    .first()
    .waitFor();
  await close();
});

test("search and the four views show what they say, and none of it loses the place", async () => {
  const { page, close } = await openDesk(browser, screens.phone, [hall]);
  await field(page, "Find a bike").fill("loan 04");
  await entry(page, "Loan 01").waitFor({ state: "detached" });
  assert.equal(await page.getByRole("article").count(), 1);
  await field(page, "Find a bike").fill("nothing like this");
  await page.getByText("Nothing here.").waitFor();
  await field(page, "Find a bike").fill("");
  await page.getByRole("radio", { name: "OK 2" }).check();
  await entry(page, "Loan 03").waitFor({ state: "detached" });
  assert.equal(await page.getByRole("article").count(), 2);
  await entry(page, "Loan 04").getByRole("button").first().click();
  await press(page, "Discard changes");
  await eventually(async () =>
    assert.match((await focused(page)).text, /Loan 04/, "back on the row that was opened"),
  );
  await close();
});

test("a file in Windows-1252 is refused, and read so by a tap", async () => {
  const list = Buffer.from(jsonList([{ name: "Gr\u00fcn, 16 in", saddle_lowest: 48 }]), "latin1");
  const file = folder.file("older.json", Buffer.concat([list.subarray(0, -1), Buffer.from(" }")]));
  const { page, close } = await openDesk(browser, screens.phone);
  await openList(page, file);
  await page.getByText("“older.json” could not be opened.").waitFor();
  await press(page, "Read it as Windows-1252");
  await entry(page, "Gr\u00fcn, 16 in").waitFor();
  await close();
});

test("an empty file is refused in words, and the way to a new list stays", async () => {
  const { page, close } = await openDesk(browser, screens.phone);
  await openList(page, folder.file("empty.csv", ""));
  await page.getByText("“empty.csv” could not be opened.").waitFor();
  assert.match(await shownText(page), /empty/i);
  await press(page, "Start a new list");
  await field(page, "Title of the list").fill("Shed");
  await press(page, "Save this bike");
  await page.getByRole("heading", { name: "Shed" }).waitFor();
  await page.getByText("No bikes in this list yet.").waitFor();
  await close();
});

test("a bike is added, copied and removed, and the focus goes along", async () => {
  const { page, faults, close } = await openDesk(browser, tall, [hall]);
  await press(page, "Add a bike");
  assert.equal(await field(page, "Number on its tag").inputValue(), "L05", "the next mark by the pattern");
  await field(page, "Name").fill("Loan 05");
  await field(page, "Saddle at its lowest (cm)").fill("19 1/2 in");
  await choice(page, "Brakes").selectOption({ label: "two hand brakes" });
  await press(page, "Save this bike");
  await page.getByText("Added Loan 05.").waitFor();
  await eventually(async () => assert.match((await focused(page)).text, /Undo/));
  await entry(page, "Loan 05").getByRole("button").first().click();
  await page.getByRole("heading", { name: "Edit Loan 05" }).waitFor();
  assert.equal(await field(page, "Saddle at its lowest (cm)").inputValue(), "19 1/2 in");
  await press(page, "Copy this bike");
  await page.getByText("Copied Loan 05.").waitFor();
  await eventually(async () => assert.notEqual(await field(page, "Number on its tag").inputValue(), "L05"));
  await press(page, "Remove this bike");
  await page.getByText("Removed Loan 05.").waitFor();
  await press(page, "Undo");
  await page.getByText("Undone: Removed Loan 05.").waitFor();
  await goTo(page, "Bikes");
  await page.getByRole("heading", { name: "Bikes", exact: true }).waitFor();
  await page.getByText("Loan 05").first().waitFor();
  assert.deepEqual(faults, []);
  await close();
});

test("what a list says of itself is typed, checked and taken back", async () => {
  const { page, faults, close } = await openDesk(browser, screens.phone, [hall]);
  await press(page, "Title, date, units");
  assert.equal(await field(page, "Title of the list").inputValue(), "Hall list");
  await field(page, "Title of the list").fill("Village hall");
  const day = field(page, "Measured on (for example 2026-10-03)");
  await day.fill("yesterday");
  await press(page, "Save this bike");
  await page.getByText(/“yesterday” is not a date/).waitFor();
  assert.equal(await day.getAttribute("aria-invalid"), "true");
  await day.fill("2026-10-03");
  await field(page, "Currency (for example EUR)").fill("EUR");
  await press(page, "Save this bike");
  await page.getByRole("heading", { name: "Village hall" }).waitFor();
  await page.getByText("Measured on 3 October 2026").waitFor();
  await press(page, "Undo");
  await press(page, "Undo");
  await page.getByRole("heading", { name: "Hall list" }).waitFor();
  assert.deepEqual(faults, []);
  await close();
});

test("a table that names no unit is read by the one that is tapped, and says so from then on", async () => {
  const bare = folder.file("bare.csv", "id,saddle lowest,saddle highest\nL1,19.5,25\nL2,17,21\n");
  const { page, faults, close } = await openDesk(browser, screens.phone, []);
  await openList(page, bare);
  await page.getByText("Which unit are its lengths in?").waitFor();
  assert.doesNotMatch(await shownText(page), /As written in the file/);
  await press(page, "in");
  await page.getByText("Which unit are its lengths in?").waitFor({ state: "detached" });
  await entry(page, "L1").waitFor();
  await press(page, "Title, date, units");
  const unit = choice(page, "Numbers without a unit are in").locator("option:checked");
  await eventually(async () => assert.equal(await unit.textContent(), "inches"));
  assert.deepEqual(faults, []);
  await close();
});

test("a list of which nothing can be used is opened to be mended", async () => {
  const swapped = folder.file(
    "swapped.csv",
    "# units: cm\nid,saddle lowest,saddle highest\nL1,63,49.5\nL2,55,44\n",
  );
  const { page, faults, close } = await openDesk(browser, screens.phone, []);
  await openList(page, swapped);
  await press(page, "Open it to fix it");
  await page.getByRole("button", { name: "Fix all 2" }).click();
  await page.getByText("2 bikes").first().waitFor();
  await page.getByRole("button", { name: "See the bikes" }).waitFor();
  assert.deepEqual(faults, []);
  await close();
});
