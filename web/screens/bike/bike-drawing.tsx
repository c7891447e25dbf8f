// The bike from the side, the leg on the ground or on the pedal, and what was assumed to draw it.
import { useState } from "preact/hooks";
import { SideView } from "../../drawings/side-view";
import { spanWords } from "../../drawings/span-bar";
import type { Check, LegTurn, SideViewAnswer } from "../../engine/wire";
import { checkFigures } from "../../figures/check-figures";
import { usePage } from "../../page/page-context";
import { Switch } from "../../parts/choices";
import { byCode } from "../../texts/texts";
import type { Texts } from "../../texts/texts";
import type { Figures } from "../../figures/format-figures";

/** The pedal at its lowest, halfway round. */
const lowestPedal = 180;

interface BikeDrawingProps {
  view: SideViewAnswer;
  checks: Check[];
  /** Nobody measured the leg: what is drawn is the middle of a guess, and bears no figure. */
  guess: boolean;
}

export function BikeDrawing({ view, checks, guess }: BikeDrawingProps) {
  const { texts, figures } = usePage();
  const [onPedal, putOnPedal] = useState(false);
  const [crank, turnCrank] = useState(lowestPedal);
  const { setting, lowest, highest } = view.saddle;
  const { leg } = view;
  const turn = leg !== null && "poses" in leg ? leg : null;
  const pose = onPedal ? (turn?.poses.find(({ crank_deg }) => crank_deg === crank) ?? null) : null;
  const assumed = view.assumed.map((what) => byCode(texts.bike.assumedNames, what) ?? what);
  return (
    <section class="sheet stack">
      <h3>{texts.bike.drawingTitle}</h3>
      {turn !== null && (
        <div class="foot-choice">
          <Switch
            name="foot"
            legend={texts.leg.where}
            chosen={onPedal}
            onChoose={putOnPedal}
            options={[
              { value: false, label: texts.leg.onGround },
              { value: true, label: texts.leg.onPedal },
            ]}
          />
        </div>
      )}
      {guess && <p>{texts.guess.drawn}</p>}
      <SideView
        view={view}
        pose={pose}
        guess={guess}
        label={`${drawingWords(texts, figures, view, guess)} ${spanWords(texts, figures, { lowest: lowest?.y ?? null, highest: highest?.y ?? null })}.`}
      />
      {turn !== null && pose !== null ? (
        <>
          <Crank turn={turn} crank={crank} onTurn={turnCrank} />
          <KneeWords turn={turn} knee={pose.knee_flexion_deg} checks={checks} />
        </>
      ) : (
        view.foot !== null && setting !== null && <p>{texts.bike.foot[view.foot]}</p>
      )}
      {leg !== null && "obstacle" in leg && (
        <p>{byCode(texts.leg.obstacles, leg.obstacle) ?? texts.leg.obstacle}</p>
      )}
      <p class="soft">
        {assumed.length > 0 && `${texts.bike.assumed({ what: assumed.join(", ") })} `}
        {texts.bike.assumedRest}
      </p>
    </section>
  );
}

function drawingWords(
  texts: Texts,
  figures: Figures,
  { saddle: { setting }, inseam_mm }: SideViewAnswer,
  guess: boolean,
): string {
  if (guess) return texts.guess.sideView;
  return texts.bike.drawing({
    setting: setting === null ? null : figures.length(setting.y),
    inseam: figures.length(inseam_mm),
  });
}

interface CrankProps {
  turn: LegTurn;
  crank: number;
  onTurn: (crank: number) => void;
}

/** The slider that turns the crank; its steps are those of the engine's poses. */
function Crank({ turn, crank, onTurn }: CrankProps) {
  const { texts, figures } = usePage();
  const [first, second] = turn.poses;
  const last = turn.poses.at(-1);
  if (first === undefined || second === undefined || last === undefined) return null;
  const pose = turn.poses.find(({ crank_deg }) => crank_deg === crank);
  return (
    <label class="field crank-slider">
      <span class="label">{texts.leg.turn}</span>
      <input
        type="range"
        min={first.crank_deg}
        max={last.crank_deg}
        step={second.crank_deg - first.crank_deg}
        value={crank}
        aria-valuetext={texts.leg.turned({
          crank: figures.angle(crank),
          knee: figures.angle(pose?.knee_flexion_deg ?? 0),
        })}
        onInput={(event) => onTurn(event.currentTarget.valueAsNumber)}
      />
    </label>
  );
}

/** The knee here and over the whole turn, and how far to trust it. */
function KneeWords({ turn, knee, checks }: { turn: LegTurn; knee: number; checks: Check[] }) {
  const { texts, figures } = usePage();
  const judged = checks.find(({ what }) => what === "leg_extension");
  const { limit_low: low, limit_high: high } = judged === undefined ? {} : checkFigures(figures, judged);
  return (
    <>
      <p>
        <strong>{texts.leg.knee({ knee: figures.angle(knee) })}</strong>{" "}
        {texts.leg.whole({
          least: figures.angle(turn.least_flexion_deg),
          greatest: figures.angle(turn.greatest_flexion_deg),
        })}
      </p>
      <p class="soft">
        {low !== undefined && high !== undefined && `${texts.leg.adults({ low, high })} `}
        {texts.leg.adultShares}
        {turn.stature_assumed && ` ${texts.leg.statureAssumed}`}
      </p>
    </>
  );
}
