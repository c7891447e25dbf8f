// The one place where state changes: a value, pure functions that replace it, and listeners told once a turn.

export type Change<State> = (state: State) => State;

export interface Store<State> {
  read: () => State;
  change: (by: Change<State>) => void;
  /** Calls `listener` after changes, once for all changes of the same turn. Returns the way to stop. */
  subscribe: (listener: (state: State) => void) => () => void;
}

export function createStore<State>(first: State): Store<State> {
  let current = first;
  let told = true;
  const listeners = new Set<(state: State) => void>();

  function tellOnce(): void {
    if (!told) return;
    told = false;
    queueMicrotask(() => {
      told = true;
      for (const listener of listeners) listener(current);
    });
  }

  return {
    read: () => current,
    change(by) {
      const next = by(current);
      if (next === current) return;
      current = next;
      tellOnce();
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
