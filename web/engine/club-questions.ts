// The questions of a club's morning: what a table of riders says, and who rides which bike.
import type { Question } from "../state/answers";
import { planQuestion, tableQuestion, tableRead, tableRefused } from "../state/club-steps";
import type { ReadRidersAnswer } from "./wire";

const table: Question<ReadRidersAnswer> = {
  name: "riders",
  engine: "rack",
  pose: ({ club, today }) =>
    club.coming && {
      request: { do: "read_riders", today, text: club.coming.text, units: club.coming.units },
    },
  receive: (answer) => tableRead(answer),
  refused: tableRefused,
};

export const clubQuestions = [table, planQuestion, tableQuestion];
