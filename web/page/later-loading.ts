// The later parts where they come afterwards, from a file that may not come.
import type { Later, LaterParts, LaterSource } from "./later-parts";
import { Waiting } from "./later-waiting";
import type { ReadWords } from "./spoken-words";

/** What is not in the first script. */
export interface LoadedParts {
  parts: LaterParts;
  /** The style of what is in them. */
  sheet: string;
  /** Their texts in English. */
  english: object;
}

/** @param read gives the words of a language for their texts, as packed-texts.ts has them */
export function laterLoaded(load: () => Promise<LoadedParts>, read: ReadWords): LaterSource {
  return (words, arrived, changed) => {
    let coming: Promise<LaterParts> | null = null;
    let tell: (parts: LaterParts) => void = () => undefined;
    const firstHere = new Promise<LaterParts>((resolve) => (tell = resolve));
    const fetch = (): void => {
      if (now.parts === null) whenHere().catch(() => undefined);
    };
    let now: Later = { parts: null, lost: false, fetch, Waiting };

    function put(next: Partial<Later>): void {
      now = { ...now, ...next };
      changed();
    }

    async function loaded(): Promise<LaterParts> {
      const { parts, sheet, english } = await load();
      await words.extend(english, read);
      arrived(parts, sheet);
      tell(parts);
      return parts;
    }

    function whenHere(): Promise<LaterParts> {
      if (coming === null) {
        if (now.lost) put({ lost: false });
        coming = loaded();
        coming.then(
          (parts) => put({ parts }),
          () => {
            coming = null;
            put({ lost: true });
          },
        );
      }
      return coming;
    }

    return { now: () => now, whenHere, firstHere };
  };
}
