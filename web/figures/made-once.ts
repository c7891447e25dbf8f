// Forms of figures and words from the browser's Intl: making one is slow, above all the first, and using it is not.

/** Makes a form when it is wanted first. */
export function madeOnce<Value>(make: () => { format: (value: Value) => string }): (value: Value) => string {
  let form: { format: (value: Value) => string } | null = null;
  return (value) => (form ??= make()).format(value);
}
