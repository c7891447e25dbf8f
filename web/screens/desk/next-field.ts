// Enter goes on to the next field, as a measurer does, and from the last one to the button that goes on.

export function toNextField(event: KeyboardEvent & { currentTarget: HTMLElement }): void {
  const { target, currentTarget } = event;
  if (event.key !== "Enter" || !(target instanceof HTMLInputElement)) return;
  event.preventDefault();
  const stops = [...currentTarget.querySelectorAll<HTMLElement>("input, select, .onward-field")].filter(
    (stop) => stop.closest("details:not([open])") === null,
  );
  stops[stops.indexOf(target) + 1]?.focus();
}
