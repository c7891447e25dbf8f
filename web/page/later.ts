// Parts of Saddlerule that may come after the rest of it. The element loads them; its other forms have them from the start.

export type LaterParts = typeof import("../screens/later-parts");

export interface Later {
  /** null: they are not here yet. */
  now: () => LaterParts | null;
  /** Rejects where they do not come. Whoever asks again has them tried again. */
  load: () => Promise<LaterParts>;
}

export function hereAlready(parts: LaterParts): Later {
  return { now: () => parts, load: () => Promise.resolve(parts) };
}

/** `fetched` is told how many times it was tried in vain before. */
export function fetchedLater(fetched: (failures: number) => Promise<LaterParts>): Later {
  let here: LaterParts | null = null;
  let coming: Promise<LaterParts> | null = null;
  let failures = 0;
  return {
    now: () => here,
    load() {
      coming ??= fetched(failures).then(
        (parts) => (here = parts),
        (failure: unknown) => {
          failures += 1;
          coming = null;
          throw failure;
        },
      );
      return coming;
    },
  };
}
