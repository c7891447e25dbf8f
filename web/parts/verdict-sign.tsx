// The verdict as a small sign: a saddle's post (yellow) against the rider's window (blue), told apart by shape alone.
import type { Verdict } from "../engine/wire";

/** Where the post is against the window, from low to high. */
const posts: Record<Exclude<Verdict, "not_measured">, { top: number; height: number }> = {
  fits_now: { top: 4, height: 16 },
  close_call: { top: 2, height: 8 },
  too_tall: { top: 1, height: 6 },
  outgrown: { top: 17, height: 6 },
};

export function VerdictSign({ verdict }: { verdict: Verdict }) {
  return (
    <svg class={`sign ${verdict}`} viewBox="0 0 24 24" aria-hidden="true">
      <rect class="sign-window" x="1" y="9" width="22" height="6" rx="1" />
      {verdict === "not_measured" ? (
        <path class="sign-open" d="M8 3.5h8M8 20.5h8M12 3.5v17" />
      ) : (
        <rect
          class="sign-post"
          x="8"
          y={posts[verdict].top}
          width="8"
          height={posts[verdict].height}
          rx="1.5"
        />
      )}
      {verdict === "fits_now" && <path class="sign-mark" d="M4.5 12h15" />}
    </svg>
  );
}
