// How the parts of later-parts.tsx come: with the script, or afterwards from a file that may not come.
import type { laterParts } from "./later-parts";
import type { ReadWords, SpokenWords } from "./spoken-words";

export type LaterParts = typeof laterParts;

/** What a form of the page leaves out of its first script, to be loaded. */
export interface LoadedParts {
  parts: LaterParts;
  /** The style of what is in them. */
  sheet: string;
  /** Their texts in English. */
  english: object;
}

export interface LaterLoad {
  load: () => Promise<LoadedParts>;
  /** The words of a language for their texts, as packed-texts.ts has them. */
  words: ReadWords;
}

export type LaterSource = LaterParts | LaterLoad;

export interface Later {
  /** null: they are not here yet. */
  parts: LaterParts | null;
  /** They were asked for, and did not come. */
  lost: boolean;
  /** Asks for them, where they are neither here nor on their way. */
  fetch: () => void;
}

export interface LaterLoading {
  now: () => Later;
  /** Asks for them as well; rejects where they do not come. */
  whenHere: () => Promise<LaterParts>;
  /** Asks for nothing, and never rejects. */
  firstHere: Promise<LaterParts>;
}

/**
 * @param arrived called before anybody is told that they are here
 * @param changed called whenever they came, or did not
 */
export function laterLoading(
  source: LaterSource,
  words: SpokenWords,
  arrived: (parts: LaterParts, sheet?: string) => void,
  changed: () => void,
): LaterLoading {
  if (!("load" in source)) {
    arrived(source);
    const here = Promise.resolve(source);
    const now = { parts: source, lost: false, fetch: () => undefined };
    return { now: () => now, whenHere: () => here, firstHere: here };
  }

  let coming: Promise<LaterParts> | null = null;
  let tell: (parts: LaterParts) => void = () => undefined;
  const firstHere = new Promise<LaterParts>((resolve) => (tell = resolve));
  let now: Later = {
    parts: null,
    lost: false,
    fetch: () => void (now.parts ?? whenHere().catch(() => undefined)),
  };

  function put(next: Partial<Later>): void {
    now = { ...now, ...next };
    changed();
  }

  async function loaded({ load, words: read }: LaterLoad): Promise<LaterParts> {
    const { parts, sheet, english } = await load();
    await words.extend(english, read);
    arrived(parts, sheet);
    tell(parts);
    return parts;
  }

  function whenHere(): Promise<LaterParts> {
    if (coming === null) {
      if (now.lost) put({ lost: false });
      coming = loaded(source as LaterLoad);
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
}
