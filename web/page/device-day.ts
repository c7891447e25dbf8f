// The day as the device's own clock and time zone have it.

/** YYYY-MM-DD of a time, of now where none is given. */
export function deviceDay(time = new Date()): string {
  const twoDigits = (number: number): string => String(number).padStart(2, "0");
  return `${time.getFullYear()}-${twoDigits(time.getMonth() + 1)}-${twoDigits(time.getDate())}`;
}
