// A place on the device for one record: written whole or not at all, and gone without a trace when it is cleared.
import type { ListFile } from "./family-form";

export interface Stored {
  /** Counts the writes, so that a page sees whether another one has written since. */
  revision: number;
  value: unknown;
  lists: unknown;
}

export interface DeviceStore {
  read: () => Promise<Stored | null>;
  /**
   * Puts a record in place of the one with revision `over` (0: of none; null: of any) and gives its revision. null: another
   * record is there, and it was left as it is. Lists that are left out stay as they were.
   */
  write: (over: number | null, value: unknown, lists?: ListFile[]) => Promise<number | null>;
  /** @throws StillHeld where another page goes on using it: it is cleared as soon as that page is closed */
  clear: () => Promise<void>;
}

export class StillHeld extends Error {}

/** Forgets everything with the page; for tests, and for pages that must not touch the device. */
export function memoryStore(): DeviceStore {
  let stored: Stored | null = null;
  return {
    read: () => Promise.resolve(stored),
    write(over, value, lists) {
      if (over !== null && over !== (stored?.revision ?? 0)) return Promise.resolve(null);
      stored = structuredClone({
        revision: (stored?.revision ?? 0) + 1,
        value,
        lists: lists ?? stored?.lists ?? [],
      });
      return Promise.resolve(stored.revision);
    },
    clear() {
      stored = null;
      return Promise.resolve();
    },
  };
}
