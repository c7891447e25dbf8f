// The family's plan in sentences: what happens month by month, what it costs, and what to look for.
import type { LookFor, YearsAnswer, YearsChild, YearsStretch } from "../../engine/wire";
import type { Figures } from "../../figures/format-figures";
import { riderName } from "../../parts/rider-switch";
import { familyOf } from "../../state/family-changes";
import type { PageState } from "../../state/page-state";
import { byCode } from "../../texts/texts";
import type { Texts } from "../../texts/texts";

/** A plan and how to speak of it. */
export interface SpokenPlan {
  plan: YearsAnswer;
  texts: Texts;
  figures: Figures;
  childName: (id: string) => string;
  bikeName: (id: string) => string;
  money: (amount: number) => string;
}

/** Something that happens in a month. */
interface Happening {
  on: string;
  what: string;
}

export function spokenPlan(texts: Texts, figures: Figures, state: PageState, plan: YearsAnswer): SpokenPlan {
  const children = new Map(familyOf(state).map(({ rider }) => [String(rider.key), riderName(texts, rider)]));
  const bikes = new Map(plan.bikes.map(({ id, name }) => [id, name === "" ? id : name]));
  const currency = plan.cost.currency ?? state.currency;
  return {
    plan,
    texts,
    figures,
    childName: (id) => children.get(id) ?? id,
    bikeName: (id) => bikes.get(id) ?? id,
    money: (amount) => figures.money(Math.round(amount * 100) / 100, currency),
  };
}

const inOrder = <One extends { on: string }>(all: One[]): One[] =>
  all.sort((one, other) => one.on.localeCompare(other.on));

/** How a child comes to a bike, where its saddle goes, and what to look at. */
function begins(spoken: SpokenPlan, child: string, stretch: YearsStretch): string {
  const { plan, texts, figures, childName, bikeName, money } = spoken;
  const { bike, how, handed_from: giver, checks } = stretch;
  const [lowest = "", highest = ""] = stretch.saddle_mm.map(figures.length);
  const names = { child, bike: bikeName(bike) };
  const price = plan.purchases.find((one) => one.bike === bike && how === "bought")?.price ?? null;
  const gets =
    giver === null
      ? texts.years.got({ ...names, price: price === null ? null : money(price) })
      : texts.years.handedOn({ ...names, other: childName(giver) });
  const saddle =
    lowest === highest ? texts.verdict.setting({ height: lowest }) : texts.rack.bar({ lowest, highest });
  const doubts = checks
    .filter(({ state }) => state === "look")
    .map(({ what }) => byCode(texts.checks.names, what) ?? what);
  const look = doubts.length === 0 ? "" : ` ${texts.card.doubts}${texts.colon}${doubts.join(", ")}.`;
  return `${gets} ${saddle}.${look}`;
}

const withoutBike = ({ gaps, not_yet: notYet }: YearsChild) => (notYet === null ? gaps : [notYet, ...gaps]);

/** What happens, by its month. */
export function planMonths(spoken: SpokenPlan): { on: string; lines: string[] }[] {
  const { plan, texts, figures, childName, bikeName, money } = spoken;
  const ends = plan.riders.flatMap((child) =>
    [...child.stretches, ...withoutBike(child)].map(({ to }) => to),
  );
  const [end] = ends.sort().reverse();
  const happenings: Happening[] = [
    ...plan.riders.flatMap((one) => {
      const child = childName(one.id);
      return [
        ...withoutBike(one).map(({ from, to }) => ({
          on: from,
          what: texts.years.gap({ child, until: to === end ? null : figures.month(to) }),
        })),
        ...one.stretches.map((stretch) => ({ on: stretch.from, what: begins(spoken, child, stretch) })),
      ];
    }),
    ...plan.sales
      .filter(({ at_the_end: atEnd }) => !atEnd)
      .map(({ on, bike, back }) => ({
        on,
        what: `${texts.years.sell({ bike: bikeName(bike) })} (${money(back)}).`,
      })),
  ];
  const months = new Map<string, string[]>();
  for (const { on, what } of inOrder(happenings)) months.set(on, [...(months.get(on) ?? []), what]);
  return [...months].map(([on, lines]) => ({ on, lines }));
}

/** Purchases and sales, and what goes out or comes in. */
export function planAccounts({ plan, texts, bikeName }: SpokenPlan): (Happening & { amount: number })[] {
  return inOrder([
    ...plan.purchases.map(({ on, bike, price }) => ({ on, what: bikeName(bike), amount: -price })),
    ...plan.sales.map(({ on, bike, back }) => ({
      on,
      what: texts.years.sell({ bike: bikeName(bike) }),
      amount: back,
    })),
  ]);
}

/** What serves in place of the next purchase, and where there is no bike. */
export function planWanted({ plan, texts, figures, childName, bikeName, money }: SpokenPlan): string[] {
  const sought = (whom: string, wanted: LookFor): string => {
    const range = texts.club.range({
      lowest: figures.length(wanted.lowest_at_most_mm),
      highest: figures.length(wanted.highest_at_least_mm),
    });
    const kind = wanted.kind === "balance" ? ` ${texts.club.balance}` : "";
    const when = { by: figures.month(wanted.by), until: figures.month(wanted.until) };
    return `${texts.years.look({ whom, ...when })} ${texts.bike.fact.span}${texts.colon}${range}${kind}.`;
  };
  const [next] = plan.purchases;
  return [
    ...plan.purchases
      .filter(({ on }) => on === next?.on)
      .map(({ bike, price, look_for: wanted }) =>
        sought(texts.years.insteadOf({ bike: bikeName(bike), price: money(price) }), wanted),
      ),
    ...plan.riders.flatMap((child) =>
      withoutBike(child)
        .flatMap(({ look_for: wanted, then }) => [wanted, ...then])
        .map((wanted) => sought(childName(child.id), wanted)),
    ),
  ];
}

/** The bikes of the plan in the order in which they come. */
export function bikesInOrder({ riders }: YearsAnswer): string[] {
  const stretches = riders.flatMap((child) => child.stretches.map(({ from, bike }) => ({ on: from, bike })));
  return [...new Set(inOrder(stretches).map(({ bike }) => bike))];
}
