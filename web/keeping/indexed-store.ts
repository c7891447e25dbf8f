// The device store in the browser's IndexedDB. It is opened for each piece of work and closed again, so that no page
// keeps another one from clearing it.
import type { DeviceStore, Stored } from "./device-store";

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

/** One transaction: `work` gets the room and the record in it, and gives what is told once everything is written. */
async function within<Told>(
  mode: IDBTransactionMode,
  create: boolean,
  work: (kept: IDBObjectStore, stored: Stored | null) => Told,
): Promise<Told | null> {
  const database = await openDatabase(create);
  if (database === null) return null;
  try {
    return await new Promise<Told | null>((resolve, reject) => {
      const transaction = database.transaction(room, mode);
      const kept = transaction.objectStore(room);
      const found = kept.getAll(IDBKeyRange.bound("lists", "record"));
      let told: Told | null = null;
      found.onsuccess = () => {
        const [lists, record] = found.result as [unknown, Omit<Stored, "lists"> | undefined];
        told = work(kept, record === undefined ? null : { ...record, lists });
      };
      transaction.oncomplete = () => resolve(told);
      transaction.onabort = () => reject(transaction.error ?? new Error("not written"));
    });
  } finally {
    database.close();
  }
}

const indexedStore: DeviceStore = {
  read: () => within("readonly", false, (_, stored) => stored),
  write: (over, value, lists) =>
    within("readwrite", over === 0 || over === null, (kept, stored) => {
      if (over !== null && over !== (stored?.revision ?? 0)) return null;
      const revision = (stored?.revision ?? 0) + 1;
      kept.put({ revision, value }, "record");
      if (lists !== undefined || stored === null) kept.put(lists ?? [], "lists");
      return revision;
    }),
  clear: () =>
    new Promise((resolve, reject) => {
      const clearing = indexedDB.deleteDatabase(name);
      clearing.onsuccess = () => resolve();
      clearing.onerror = () => reject(clearing.error ?? new Error("not cleared"));
    }),
};

/** null: this browser has no place for a page to keep anything. */
export function deviceStore(): DeviceStore | null {
  return typeof indexedDB === "undefined" ? null : indexedStore;
}
