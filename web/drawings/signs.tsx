// The mark of the page and the signs of its screens.

/** A saddle on its post, before a tape. */
export function Mark() {
  return (
    <svg viewBox="0 0 30 30" aria-hidden="true">
      <rect class="mark-tape" x="2" y="2" width="11" height="26" rx="2" />
      <path class="mark-lines" d="M13 8H8M13 14H6M13 20H8" />
      <path class="mark-saddle" d="M13 11q8-3 15 0-3 4-7 4l-1 13" />
    </svg>
  );
}

const signs = {
  rider: "M13 8.5a4 4 0 1 0 0-.1M5 24c0-7 3-9 8-9s8 2 8 9",
  rack: "M3 7h12M9 13h14M5 19h11M3 24V3",
  tape: "M3 21V12a8 8 0 0 1 16 0v4M3 21h21M19 16h5v5M11 21v-3M15 21v-3M19 21v-3M11 10.5a1.5 1.5 0 1 0 .1 0",
  keep: "M4 9h18v13H4ZM4 9l3-5h12l3 5M10 13h6",
  list: "M5 6h2M5 13h2M5 20h2M11 6h11M11 13h11M11 20h11",
};

export function ScreenSign({ screen }: { screen: keyof typeof signs }) {
  return (
    <svg viewBox="0 0 26 26" aria-hidden="true">
      <path class="screen-sign" d={signs[screen]} />
    </svg>
  );
}
