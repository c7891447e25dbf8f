// The answer before any bike: which saddle heights suit this rider now, and on which wheels to look for them.
import { scaleOver } from "../../drawings/height-scale";
import { isGuess } from "../../drawings/shown-window";
import { TapeStrip } from "../../drawings/tape-strip";
import type { RefusalNote } from "../../engine/refusal";
import type { AssessAnswer, JudgedRider } from "../../engine/wire";
import { usePage } from "../../page/page-context";
import { ForWhom } from "../../parts/for-whom";
import { Notes } from "../../parts/notes";
import { aboutReadings } from "./rider-readings";
import { went } from "../../state/screen-changes";
import type { Tag } from "../../state/suits";

/** How much of the tape is shown on either side of the window. */
const tapeAround = 120;

interface WindowResultProps {
  answer: AssessAnswer;
  /** Why it is not about what is typed now. */
  refusal: RefusalNote | null;
  /** The bike whose tag was scanned. */
  tag: Tag | null;
}

export function WindowResult({ answer, refusal, tag }: WindowResultProps) {
  const { texts, figures, change } = usePage();
  const { rider } = answer;
  const window = isGuess(rider) ? { ...rider.window_likely_mm, target: null } : rider.window_mm;
  const { low, target, high } = window;
  const scale = scaleOver([low - tapeAround, high + tapeAround], { low: 0, high: 1000 });
  return (
    <section class="sheet stack told" aria-label={texts.window.title}>
      <h3>{texts.window.title}</h3>
      <p class={target === null ? "window-figures figure guess" : "window-figures figure"}>
        <strong>{texts.window.range({ low: figures.bareLength(low), high: figures.length(high) })}</strong>
        <span>
          {target === null ? texts.guess.likely : texts.window.best({ target: figures.length(target) })}
        </span>
      </p>
      <ForWhom rider={rider} />
      <TapeStrip scale={scale} window={window} />
      <p>{texts.window.how[rider.stage]}</p>
      {rider.basis === "measured" ? (
        <p class="soft">
          {texts.window.readingWorth({
            inseam: figures.length(rider.inseam_mm.mean),
            sd: figures.length(rider.inseam_mm.sd),
          })}
        </p>
      ) : (
        <p class="soft">
          {texts.window.estimated[rider.basis]} {texts.window.estimatedFrom[rider.population]}
        </p>
      )}
      <Notes notes={rider.notes.filter((note) => !aboutReadings(note))} />
      <Wheels rider={rider} />
      {refusal !== null && <p class="problem">{texts.window.stale}</p>}
      <div class="buttons onward">
        {tag !== null && (
          <button
            type="button"
            class="button main"
            onClick={() => change(went({ name: "bike", id: tag.id }))}
          >
            {texts.suits.toBike({ id: tag.id })}
          </button>
        )}
        <button
          type="button"
          class={tag === null ? "button main" : "button"}
          onClick={() => change(went({ name: "rack" }))}
        >
          {texts.window.toRack}
        </button>
        <button type="button" class="button" onClick={() => change(went({ name: "tape" }))}>
          {texts.window.toTape}
        </button>
      </div>
    </section>
  );
}

function Wheels({ rider }: { rider: JudgedRider }) {
  const { texts, figures } = usePage();
  const [first, ...others] = rider.wheel_sizes;
  if (first === undefined) return <p>{texts.window.noWheels}</p>;
  const named = texts.window.wheels({
    first: first.nominal_in,
    others: others.map((size) => figures.number(size.nominal_in)),
  });
  return (
    <div>
      <p>
        <strong>{named}</strong>
      </p>
      <p class="soft">
        {first.fit_now === null
          ? texts.window.wheelsCommon
          : texts.window.wheelsList({ fitting: first.fit_now })}
      </p>
    </div>
  );
}
