// Who has no bike and why, which bikes would have been needed, and what is spare or away.
import type { ClubDayAnswer, LeftRider } from "../../engine/wire";
import type { Figures } from "../../figures/format-figures";
import { usePage } from "../../page/page-context";
import { Fold } from "../../parts/fold";
import { LongList } from "../../parts/long-list";
import { useOnPaper } from "../../parts/on-paper";
import { bikeBack, bikeGone, riderBack, riderGone } from "../../state/club-steps";
import type { ClubState } from "../../state/club-day";
import type { PageState } from "../../state/page-state";
import type { Texts } from "../../texts/texts";
import { bikeName, riderCalled } from "./club-names";

function because(
  texts: Texts,
  figures: Figures,
  club: ClubState,
  plan: ClubDayAnswer,
  left: LeftRider,
): string {
  const words = texts.club.because;
  const bikes = (left.bikes ?? []).slice(0, 3).map(({ bike }) => bike);
  const listed = bikes.join(", ");
  switch (left.code) {
    case "not_measured":
      return words.not_measured;
    case "all_taken":
      return words.all_taken({
        pairs: (left.bikes ?? [])
          .slice(0, 3)
          .map(({ bike, by }) => `${bike} (${by.map((id) => riderCalled(club, id)).join(", ")})`)
          .join(", "),
      });
    case "ruled_out":
      return words.ruled_out({ bikes: listed });
    case "away":
      return words.away({ bikes: listed });
    case "check_stops":
      return words.check_stops({ bikes: listed });
    case "none_fits":
      break;
  }
  const { nearest = null, by_mm: by = null, verdict = null } = left;
  if (nearest === null || by === null) return words.none_there;
  const bike = bikeName(plan, nearest);
  const miss = figures.shift(by);
  if (verdict === "too_tall") return words.too_tall({ bike, miss });
  return verdict === "outgrown" ? words.outgrown({ bike, miss }) : words.narrow({ bike });
}

export function RidersLeft({ state, plan }: { state: PageState; plan: ClubDayAnswer }) {
  const { texts, figures, change } = usePage();
  const onPaper = useOnPaper();
  const { club } = state;
  const words = texts.club;
  return (
    <>
      {plan.left.length > 0 && (
        <section class="stack">
          <h3>{words.left({ number: plan.left.length })}</h3>
          <LongList
            label={words.left({ number: plan.left.length })}
            length={plan.left.length}
            itemAt={(place) => plan.left[place] ?? null}
            whole={onPaper}
          >
            {(left) =>
              left && (
                <div class="club-row">
                  <div class="club-what">
                    <p>
                      <strong>{riderCalled(club, left.rider)}</strong>
                    </p>
                    <p>{because(texts, figures, club, plan, left)}</p>
                    <button type="button" class="plain-link" onClick={() => change(riderGone(left.rider))}>
                      {words.leaves}
                    </button>
                  </div>
                </div>
              )
            }
          </LongList>
        </section>
      )}
      {plan.to_get.length > 0 && (
        <section class="stack">
          <h3>{words.toGet}</h3>
          <ul class="club-wanted">
            {plan.to_get.map((range, place) => (
              <li key={place}>
                <strong>
                  {words.range({
                    lowest: figures.length(range.lowest_at_most_mm),
                    highest: figures.length(range.highest_at_least_mm),
                  })}
                </strong>
                {range.kind === "balance" && ` ${words.balance}`}{" "}
                {words.wouldSeat({ bikes: range.bikes, riders: range.seats.length, all: plan.left.length })}
              </li>
            ))}
          </ul>
        </section>
      )}
      {plan.spare.length > 0 && (
        <Fold title={words.spare({ number: plan.spare.length })}>
          <ul class="club-rows">
            {plan.spare.map((id) => {
              const riders = plan.would_fit.find(({ bike }) => bike === id)?.riders ?? [];
              return (
                <li key={id} class="club-row">
                  <div class="club-what">
                    <p>
                      <strong>{bikeName(plan, id)}</strong>{" "}
                      {riders.length > 0
                        ? words.wouldFit({ riders: riders.map((one) => riderCalled(club, one)).join(", ") })
                        : words.fitsNobody}
                    </p>
                    <button type="button" class="plain-link" onClick={() => change(bikeGone(id))}>
                      {words.notHere}
                    </button>
                  </div>
                </li>
              );
            })}
          </ul>
        </Fold>
      )}
      {club.absent.length + club.gone.length > 0 && (
        <section class="stack">
          <h3>{words.away}</h3>
          <div class="buttons">
            {club.absent.map((id) => (
              <button key={`b${id}`} type="button" class="button" onClick={() => change(bikeBack(id))}>
                {words.bikeIsBack({ bike: id })}
              </button>
            ))}
            {club.gone.map((id) => (
              <button key={`r${id}`} type="button" class="button" onClick={() => change(riderBack(id))}>
                {words.riderIsBack({ rider: riderCalled(club, id) })}
              </button>
            ))}
          </div>
        </section>
      )}
    </>
  );
}
