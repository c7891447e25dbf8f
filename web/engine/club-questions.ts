// The questions of a club's morning: what a table of riders says, and who rides which bike.
import { planned, planRefused, tableRead, tableRefused } from "../state/club-day";
import type { Posed, Question } from "./questions";
import { isRefusal } from "./wire-answers";
import type { ClubDayAnswer, ReadRidersAnswer } from "./wire-club";

const table: Question = {
  engine: "rack",
  pose: ({ club, today }) =>
    club.coming && {
      request: { do: "read_riders", today, text: club.coming.text, units: club.coming.units },
    },
  receive: (answer) =>
    isRefusal(answer) ? tableRefused(answer.error) : tableRead(answer as ReadRidersAnswer),
};

const plan: Question = {
  engine: "rack",
  pose: (state): Posed | null => {
    const { club, today, screen, list } = state;
    if (screen.name !== "club" || club.riders.length === 0) return null;
    const here = club.riders.filter(({ id }) => !club.gone.includes(id));
    return {
      request: {
        do: "club_day",
        today,
        riders: here.map(({ id, rider }) => ({ id, rider })),
        absent: club.absent,
        available_only: true,
        locked: club.fixed.map(({ rider, bike }) => ({ rider, bike })),
        not: club.never.filter(({ rider }) => here.some(({ id }) => id === rider)),
        before: club.before,
        rounds: club.rounds,
      },
      edition: list.edition,
    };
  },
  receive: (answer) => (isRefusal(answer) ? planRefused(answer.error) : planned(answer as ClubDayAnswer)),
};

export const clubQuestions: Question[] = [table, plan];
