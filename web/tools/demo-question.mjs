// Asks the built engine one question about the loan shed and prints the answer as a person would say it.

import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { openEngine } from "../../wasm-bindings/engine-client.js";

const at = (path) => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const engine = await openEngine(readFileSync(at("build/wasm/wasm-bindings/saddlerule.wasm")));
const { list } = engine.ask({ do: "load" }, readFileSync(at("catalogue-samples/loan-shed.json")));

const question = {
  do: "assess",
  today: "2026-11-25",
  rider: {
    readings: [{ on: "2026-11-25", inseam: "19 1/2", unit: "in", shoes: true }],
    born: "2021-09",
    stage: "starting",
  },
};
const { rider, bikes } = engine.ask(question);

const cm = (mm) => `${(mm / 10).toFixed(1)} cm`;
const counted = (verdict) => bikes.filter((bike) => bike.verdict === verdict).length;

console.log(
  `Question: an inside leg of 19 1/2 in with shoes on, five years old, riding alone but new to it.`,
);
console.log(`List:     ${list.title}, ${list.bikes} bikes.`);
console.log();
console.log(
  `Saddle between ${cm(rider.window_mm.low)} and ${cm(rider.window_mm.high)} above the floor, best at ${cm(rider.window_mm.target)}.`,
);
console.log(
  `${counted("fits_now")} bikes fit now, ${counted("close_call")} a close call, ${counted("too_tall")} are too tall, ${counted("outgrown")} outgrown.`,
);
for (const bike of bikes.filter((one) => one.verdict === "fits_now").slice(0, 3)) {
  const months = bike.months_of_fit
    ? `, likely to fit for ${Math.round(bike.months_of_fit.p10)} to ${Math.round(bike.months_of_fit.p90)} months`
    : "";
  console.log(`  ${bike.name}: saddle at ${cm(bike.saddle_mm)}${months}`);
}
