// The list to work from: what to set on which bike, a box to tick, and what may happen to a pair while the morning runs.
import { usePage } from "../../page/page-context";
import { Switch } from "../../parts/choices";
import { TickField } from "../../parts/fields";
import { Fold } from "../../parts/fold";
import { LongList } from "../../parts/long-list";
import { useOnPaper } from "../../parts/on-paper";
import { unlessSame } from "../../parts/unless-same";
import { VerdictSign } from "../../parts/verdict-sign";
import type { ClubDayAnswer, ClubPair } from "../../engine/wire";
import {
  bikeGone,
  bikeSet,
  measuredAgain,
  numbersShown,
  pairFixed,
  pairFreed,
  pairRuledOut,
  riderGone,
  seenByBike,
  setKey,
} from "../../state/club-steps";
import type { FixedPair } from "../../state/club-day";
import type { PageState } from "../../state/page-state";
import { bikeName, riderCalled } from "./club-names";

export function PairList({ state, plan }: { state: PageState; plan: ClubDayAnswer }) {
  const { texts, change, print } = usePage();
  const onPaper = useOnPaper();
  const { club } = state;
  const words = texts.club;
  const saddle = (pair: ClubPair): number => pair.saddle_mm ?? Infinity;
  const pairs = club.byBike
    ? [...plan.pairs].sort((a, b) => saddle(a) - saddle(b) || (a.bike < b.bike ? -1 : 1))
    : plan.pairs;
  if (pairs.length === 0) return null;
  return (
    <section class="stack club-pairs">
      <h3>{words.pairs}</h3>
      <Switch
        name="club-by"
        legend={words.order}
        small
        chosen={club.byBike}
        onChoose={(byBike) => change(seenByBike(byBike))}
        options={[
          { value: false, label: words.byRider },
          { value: true, label: words.byBike },
        ]}
      />
      <LongList
        label={words.pairs}
        length={pairs.length}
        look={String(club.byBike)}
        itemAt={(place) => pairs[place] ?? null}
        keyOf={(pair) => pair.rider}
        whole={onPaper}
      >
        {(pair) =>
          pair && (
            <PairRow
              plan={plan}
              pair={pair}
              rider={riderCalled(club, pair.rider)}
              byBike={club.byBike}
              rounds={club.rounds}
              isSet={club.set.includes(setKey(pair))}
              fixed={club.fixed.find(({ rider, bike }) => rider === pair.rider && bike === pair.bike)}
            />
          )
        }
      </LongList>
      <TickField
        label={words.numbersOnly}
        ticked={club.numbersOnly}
        onTick={(on) => change(numbersShown(on))}
      />
      <button type="button" class="button wide" onClick={print}>
        {words.print}
      </button>
    </section>
  );
}

interface PairRowProps {
  plan: ClubDayAnswer;
  pair: ClubPair;
  /** As the rider is to be called. */
  rider: string;
  byBike: boolean;
  rounds: number;
  isSet: boolean;
  fixed: FixedPair | undefined;
}

const PairRow = unlessSame(function PairRow({
  plan,
  pair,
  rider,
  byBike,
  rounds,
  isSet,
  fixed,
}: PairRowProps) {
  const { texts, figures, change } = usePage();
  const words = texts.club;
  const bike = bikeName(plan, pair.bike);
  const setting =
    pair.saddle_mm === null
      ? words.noSetting
      : words.setting({
          height: figures.length(pair.saddle_mm),
          above: pair.above_lowest_mm === null ? null : figures.length(pair.above_lowest_mm),
        });
  const act = (label: string, onPress: (button: HTMLButtonElement) => void) => (
    <button type="button" class="button" onClick={({ currentTarget }) => onPress(currentTarget)}>
      {label}
    </button>
  );
  return (
    <div class={fixed?.out === true ? "club-row out" : "club-row"}>
      <label class="club-tick">
        <input
          type="checkbox"
          checked={isSet}
          aria-label={words.isSet({ rider, bike })}
          onChange={(event) => change(bikeSet(setKey(pair), event.currentTarget.checked))}
        />
      </label>
      <div class="club-what">
        <p class="club-names">
          <strong>{byBike ? bike : rider}</strong>
          <span>{byBike ? rider : bike}</span>
        </p>
        <p class="club-setting">{setting}</p>
        <p class="soft">
          <VerdictSign verdict={pair.verdict} /> {texts.rack.verdicts[pair.verdict]}
          {rounds > 1 && ` · ${words.round({ round: pair.round })}`}
          {pair.looks > 0 && ` · ${words.looks({ number: pair.looks })}`}
          {fixed !== undefined && <em class="tag">{fixed.out ? words.isOut : words.isKept}</em>}
        </p>
        {plan.riders.some(({ id, stage_assumed: assumed }) => id === pair.rider && assumed === true) && (
          <p class="soft">{words.stageAssumed}.</p>
        )}
        <Fold title={words.change}>
          <div class="buttons">
            {fixed?.out === true
              ? act(words.back, () => change(pairFreed(pair.rider)))
              : act(words.out, () => change(pairFixed(pair, true)))}
            {fixed === undefined && act(words.keepPair, () => change(pairFixed(pair, false)))}
            {fixed?.out === false && act(words.freePair, () => change(pairFreed(pair.rider)))}
            {act(words.notThis, () => change(pairRuledOut(pair)))}
            {act(words.broken, () => change(bikeGone(pair.bike)))}
            {act(words.leaves, () => change(riderGone(pair.rider)))}
            {act(words.again, (button) => {
              change(measuredAgain(pair.rider));
              (button.getRootNode() as ShadowRoot).getElementById("club-inseam")?.focus();
            })}
          </div>
        </Fold>
      </div>
    </div>
  );
});
