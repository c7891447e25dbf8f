// The later parts where they come with the script.
import { laterParts } from "./later-parts";
import type { Later, LaterSource } from "./later-parts";

export const laterHere: LaterSource = (_, arrived) => {
  arrived(laterParts);
  const here = Promise.resolve(laterParts);
  const now: Later = { parts: laterParts, lost: false, fetch: () => undefined, Waiting: () => null };
  return { now: () => now, whenHere: () => here, firstHere: here };
};
