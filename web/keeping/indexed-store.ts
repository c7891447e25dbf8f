// The device store in the browser's IndexedDB. It is opened for each piece of work and closed again, so that no page
// keeps another one from clearing it.
import { StillHeld } from "./device-store";
import type { DeviceStore, Stored } from "./device-store";
import type { ListFile } from "./family-form";

const name = "saddlerule";
const room = "kept";

/** Some browsers never answer where pages may keep nothing. */
const patience = 3000;

/** null: there is no database, and `create` is not wanted. */
function openDatabase(create: boolean): Promise<IDBDatabase | null> {
  return new Promise((resolve, reject) => {
    setTimeout(() => reject(new Error("the device does not answer")), patience);
    const opening = indexedDB.open(name, 1);
    opening.onupgradeneeded = () => {
      // Looking must leave nothing behind: what was made by opening is taken back.
      if (create) opening.result.createObjectStore(room);
      else opening.transaction?.abort();
    };
    opening.onsuccess = () => resolve(opening.result);
    opening.onerror = () => {
      if (opening.error?.name === "AbortError" && !create) resolve(null);
      else reject(opening.error ?? new Error("not opened"));
    };
  });
}

/** One transaction: `work` is given the room in it, and the way to tell what is told once everything is written. */
async function within<Told>(
  mode: IDBTransactionMode,
  create: boolean,
  work: (kept: IDBObjectStore, tell: (told: Told) => void) => void,
): Promise<Told | null> {
  const database = await openDatabase(create);
  if (database === null) return null;
  try {
    return await new Promise<Told | null>((resolve, reject) => {
      const transaction = database.transaction(room, mode);
      let told: Told | null = null;
      work(transaction.objectStore(room), (known) => (told = known));
      transaction.oncomplete = () => resolve(told);
      transaction.onabort = () => reject(transaction.error ?? new Error("not written"));
    });
  } finally {
    database.close();
  }
}

/** Bytes that are on the device, with their key. Under one key are the same bytes for ever, so none are written twice. */
const keyOf = new WeakMap<Uint8Array, string>();

/** Begins with what sorts before the other keys. */
const newKey = (): string => `bytes ${Date.now()} ${Math.random()}`;

/** The record as it is told: each list with its bytes, which are beside it. It may be anything, and is checked later. */
function stored(kept: Map<IDBValidKey, unknown>): Stored | null {
  const record = kept.get("record") as Omit<Stored, "lists"> | undefined;
  const lists = kept.get("lists");
  if (record === undefined) return null;
  const withBytes = (list: unknown): unknown => {
    const { bytes: key } = Object(list) as { bytes?: unknown };
    if (typeof key !== "string") return list;
    const bytes = kept.get(key);
    if (bytes instanceof Uint8Array) keyOf.set(bytes, key);
    return { ...(list as object), bytes };
  };
  return { ...record, lists: Array.isArray(lists) ? lists.map(withBytes) : lists };
}

/** Writes what is not there yet, and takes away what no list has any more. */
function writeLists(kept: IDBObjectStore, lists: ListFile[], there: IDBValidKey[]): void {
  const written = lists.map((list) => {
    const known = keyOf.get(list.bytes);
    const key = known !== undefined && there.includes(known) ? known : newKey();
    if (key !== known) kept.put(list.bytes, key);
    keyOf.set(list.bytes, key);
    return { ...list, bytes: key };
  });
  kept.put(written, "lists");
  const used = new Set<IDBValidKey>(["record", "lists", ...written.map(({ bytes }) => bytes)]);
  for (const key of there) if (!used.has(key)) kept.delete(key);
}

const indexedStore: DeviceStore = {
  read: () =>
    within<Stored | null>("readonly", false, (kept, tell) => {
      const keys = kept.getAllKeys();
      const values = kept.getAll();
      values.onsuccess = () => {
        tell(stored(new Map(keys.result.map((key, place) => [key, values.result[place]]))));
      };
    }),
  write: (over, value, lists) =>
    within<number>("readwrite", over === 0 || over === null, (kept, tell) => {
      const keys = kept.getAllKeys();
      const found = kept.get("record");
      found.onsuccess = () => {
        const before = (found.result as Stored | undefined)?.revision ?? 0;
        if (over !== null && over !== before) return;
        kept.put({ revision: before + 1, value }, "record");
        if (lists !== undefined || before === 0) writeLists(kept, lists ?? [], keys.result);
        tell(before + 1);
      };
    }),
  clear: () =>
    new Promise((resolve, reject) => {
      const clearing = indexedDB.deleteDatabase(name);
      clearing.onsuccess = () => resolve();
      // Most often another page is writing just now, and is done in a moment.
      clearing.onblocked = () => setTimeout(() => reject(new StillHeld()), patience);
      clearing.onerror = () => reject(clearing.error ?? new Error("not cleared"));
    }),
};

/** null: this browser has no place for a page to keep anything. */
export function deviceStore(): DeviceStore | null {
  return typeof indexedDB === "undefined" ? null : indexedStore;
}
