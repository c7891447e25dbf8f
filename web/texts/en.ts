// Every word of the page, in English. Other languages say the same things in a file of the same shape.
// Figures arrive here already in the reader's form; these functions only put sentences around them.
import type { BikeKind, Brake, DateRange, Foot, MonthsOfFit, Stage, Verdict } from "../engine/wire-answers";
import type { CheckFigures } from "../figures/check-figures";
import type { BrakeWish, Confidence, Order, TypedUnit } from "../engine/wire-requests";
import { lengthOfUse } from "./english-durations";
import { checkLimitNames, checkNames, checkWording, measureNames } from "./english-checks";
import { problemWording } from "./english-problems";

const grouped = new Intl.NumberFormat("en");

const count = (number: number, one: string, many: string): string =>
  `${grouped.format(number)} ${number === 1 ? one : many}`;

const bikes = (number: number): string => count(number, "bike", "bikes");

const upperFirst = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const english = {
  language: "en",
  name: "Saddlerule",
  units: { cm: "cm", in: "in", kg: "kg", mm: "mm", m: "m", km_h: "km/h" },
  unitNames: { cm: "centimetres", in: "inches" } satisfies Record<TypedUnit, string>,

  navigation: {
    label: "Screens",
    rider: "Rider",
    rack: "Rack",
    tape: "Tape one",
    list: "The list",
  },
  shownIn: "Lengths in",
  optional: "optional",

  rider: {
    title: "The rider",
    inseam: "Inside leg",
    inseamAgain: (number: number): string => `Inside leg, reading ${number}`,
    inseamExample: { cm: "e.g. 49.5", in: "e.g. 19 1/2" } satisfies Record<TypedUnit, string>,
    unit: "Unit",
    shoes: "Shoes",
    shoesOn: "On",
    shoesOff: "Off",
    again: "Measure again",
    againWhy: "Two readings are worth more than one.",
    remove: "Remove",
    removeReading: (figure: string, on: string): string => `Remove the reading ${figure} of ${on}`,
    earlier: "Earlier readings",
    earlierWhy: "Readings from weeks or months ago show how this child grows.",
    addEarlier: "Add an earlier reading",
    readOn: "Measured on",
    withShoes: "Shoes were on",

    stage: "How does your rider ride?",
    stages: {
      gliding: { title: "Pushes with both feet", more: "A balance bike, no pedals" },
      side_wheels: { title: "Pedals with training wheels", more: "Small wheels at the back hold it up" },
      starting: { title: "Rides alone, new to it", more: "Wants both feet flat on the ground" },
      riding: { title: "Rides with confidence", more: "Starts, brakes and stops without help" },
    } satisfies Record<Stage, { title: string; more: string }>,
    confidence: "On training wheels your rider is",
    confidences: { wary: "Wary", usual: "At ease", bold: "Bold" } satisfies Record<Confidence, string>,

    more: "Age, height and weight",
    moreWhy: "Not needed. With them, Saddlerule can tell how long a bike will last.",
    born: "Month of birth",
    month: "Month",
    year: "Year",
    notSaid: "not said",
    sex: "Girl or boy",
    sexWhy: "Only used because girls and boys grow at different times.",
    girl: "Girl",
    boy: "Boy",
    stature: "Height, standing",
    mass: "Weight (kg)",
    massWhy: "For how heavy a bike may be. Left open, it is guessed from the age.",
    ridingFrom: {
      starting: "Will ride with confidence from",
      side_wheels: "Training wheels come off in",
    } satisfies Partial<Record<Stage, string>>,
    ridingFromWhy: "Left open, six months from now.",
  },

  measuring: {
    title: "How to measure",
    steps: [
      "Stand with the back to a wall, in the shoes worn for riding.",
      "Slide a thin book up between the legs, spine to the wall, until it sits snug.",
      "Keep the book level. Mark its top edge on the wall.",
      "Tape from the floor to the mark. Then do it all once more.",
    ],
    notTrousers: "Do not use a trouser size: it is shorter.",
    drawing:
      "Drawing: a child stands with the back to a wall and holds a book level between the legs. " +
      "A tape runs up the wall from the floor to the top edge of the book.",
  },

  window: {
    title: "Saddle height to look for",
    range: (low: string, high: string): string => `${low} to ${high}`,
    best: (target: string): string => `Best: ${target}`,
    how: {
      gliding: "Low enough to push with bent knees.",
      side_wheels: "From floor to the top of the saddle, with the training wheels on.",
      starting: "Floor to the top of the saddle. Both feet reach the ground flat.",
      riding: "Floor to the top of the saddle. Tiptoes reach the ground.",
    } satisfies Record<Stage, string>,
    estimated: {
      estimated_from_stature: "Worked out from the height, not measured. Measure the inside leg to be sure.",
      estimated_from_age:
        "Guessed from the age alone. Children of one age differ a lot: measure the inside leg.",
    },
    readingWorth: (inseam: string, sd: string): string =>
      `Inside leg in shoes: ${inseam}, give or take ${sd}.`,
    drawing: (low: string, high: string, target: string): string =>
      `A piece of tape measure: the saddle should stand between ${low} and ${high}, best at ${target}.`,
    wheels: (first: string, others: string[]): string =>
      others.length === 0
        ? `Look at ${first} inch wheels first.`
        : `Look at ${first} inch wheels first: more room to grow. ${others.join(" and ")} inch can fit too.`,
    wheelsCommon: "By common practice; the saddle decides, not the wheel.",
    wheelsList: (fitting: number): string => `In the open list, ${bikes(fitting)} of that size fit now.`,
    noWheels: "No usual wheel size suits this reading. Tape single bikes to find out.",
    stale: "These figures are for the last reading that could be read.",
    toRack: "See the bikes",
    toTape: "Tape a bike here",
    measureFirst: "Type the inside leg, and the saddle height to look for stands here.",
  },

  rack: {
    title: "The rack",
    verdicts: {
      fits_now: "Fits now",
      close_call: "Close call",
      too_tall: "Too tall today",
      outgrown: "Outgrown",
      not_measured: "Not measured yet",
    } satisfies Record<Verdict, string>,
    counts: {
      fits_now: (number: number): string => (number === 1 ? "1 fits now" : `${number} fit now`),
      close_call: (number: number): string => count(number, "close call", "close calls"),
      too_tall: (number: number): string => `${number} too tall`,
      outgrown: (number: number): string => `${number} outgrown`,
      not_measured: (number: number): string => `${number} not measured`,
    } satisfies Record<Verdict, (number: number) => string>,
    announced: (counts: string): string => `The rack: ${counts}.`,
    key: "Yellow is the bike’s saddle range. Blue is your rider. Where they meet, it fits.",
    scale: (low: string, high: string): string =>
      `Heights from the floor, ${low} to ${high}. Your rider’s window is drawn across all bikes.`,
    bar: (lowest: string | null, highest: string | null): string =>
      lowest === null
        ? `Saddle up to ${highest ?? "?"}; lowest not measured`
        : highest === null
          ? `Saddle from ${lowest}; highest not measured`
          : `Saddle ${lowest} to ${highest}`,
    wheel: (nominal: string): string => `${nominal} inch`,
    taped: "taped by you",
    empty: "No bikes here yet",
    emptyWhy: "Open your club’s list, tape a bike, or look round with invented ones.",
    openList: "Open a list",
    noReading: "Type the inside leg, and you will see which of these fit.",
    toRider: "To the rider",
    noneLeft: "Your wishes hide every bike.",
    listLabel: "Bikes, best first",
  },

  verdict: {
    setting: (height: string): string => `Saddle at ${height}`,
    atLowest: "its lowest position",
    atHighest: "as high as it may go",
    aboveLowest: (height: string): string => `${height} above its lowest`,
    room: (height: string): string => `${height} left to raise`,
    noRoom: "no room left to raise",
    roomUnknown: "room to raise not known",
    tryIt: "Too close to tell by tape: try it with the child.",
    missesBelow: (by: string): string => `Even at its lowest it is ${by} too tall.`,
    missesAbove: (by: string): string => `Even at its highest it is ${by} too low.`,
    measure: (what: string[]): string => `Measure the ${what.join(" and the ")} to know.`,
    toMeasure: {
      saddle_lowest: "lowest saddle height",
      saddle_highest: "highest saddle height",
    } as Partial<Record<string, string>>,
    lasts: (months: MonthsOfFit): string => `Lasts ${lengthOfUse(months)}`,
    fitsFrom: (range: DateRange, month: (date: string) => string): string =>
      range.p50 === null ? "Not within eight years" : `Fits from about ${month(range.p50)}`,
    lastsThen: (months: MonthsOfFit): string => `then lasts ${lengthOfUse(months)}`,
    costPerMonth: (amount: string): string => `About ${amount} a month.`,
    costRange: (low: string, high: string | null): string =>
      high === null
        ? `It may be as little as ${low} a month, or much more if it is outgrown soon.`
        : `From ${low} if it lasts long to ${high} if it is outgrown early.`,
    otherKind: {
      balance: "It has no pedals.",
      pedal: "It has pedals: for later.",
    } satisfies Record<BikeKind, string>,
  },

  choosing: {
    /** Of a bike that no other beats. */
    worthALook: "Worth a look",
    worth: {
      lasts_longest: "none lasts longer",
      cheapest: "none costs less",
      lightest: "none weighs less",
      balance: "what lasts longer costs or weighs more",
      nothing_to_compare: "too little is known to compare it",
    } as Partial<Record<string, string>>,
    stops: (number: number): string => count(number, "warning", "warnings"),
    looks: (number: number): string => count(number, "thing to look at", "things to look at"),
    /** Why a bike is not put forward, where its verdict does not say it already. */
    notOffered: {
      check_stops: () => "Not put forward without a look at its warning.",
      beaten: (better: string | null) =>
        `Not put forward: ${better ?? "another bike"} lasts as long, costs no more and weighs no more.`,
      behind_in_order: () => "Fits, but others come first in the order you chose.",
    } as Partial<Record<string, (better: string | null) => string>>,
  },

  whatIf: {
    title: "What would change the answer",
    busy: "Working it out …",
    now: (first: string | null): string =>
      first === null ? "No bike comes first as things are." : `As things are, ${first} stands first.`,
    nothing: "Small changes of the reading or the budget change nothing.",
    suppose: {
      longer_reading: (by: string): string => `If the inside leg were ${by} longer`,
      shorter_reading: (by: string): string => `If the inside leg were ${by} shorter`,
      next_stage: {
        gliding: "If your rider pushed with both feet",
        side_wheels: "If your rider rode with training wheels",
        starting: "If your rider rode alone",
        riding: "If your rider rode with confidence",
      } satisfies Record<Stage, string>,
      higher_budget: (amount: string): string => `With up to ${amount} to spend`,
      lower_budget: (amount: string): string => `With less than ${amount} to spend`,
    },
    /** The words before and after the name of the bike. */
    otherFirst: (supposed: string): [string, string] => [`${supposed}, `, " would stand first."],
    noneFirst: (supposed: string): string => `${supposed}, no bike would fit.`,
  },

  wishes: {
    title: "Filter and order",
    order: "Bikes that fit come first; among them",
    orders: {
      lasts: "what lasts longest",
      cost: "what costs least a month",
      light: "the lightest",
      closest: "the saddle nearest the best height",
    } satisfies Record<Order, string>,
    maxPrice: "Price up to",
    maxMass: "Weight up to (kg)",
    brakes: "Brakes",
    brakeWishes: {
      any: "any brakes",
      two_hand: "two hand brakes",
      coaster: "coaster brake (back-pedal)",
    } satisfies Record<BrakeWish, string>,
    kind: "Kind of bike",
    kinds: { any: "any kind", pedal: "with pedals", balance: "balance bikes" } satisfies Record<
      BikeKind | "any",
      string
    >,
    wheel: "Wheels",
    anyWheel: "any wheels",
    colour: "Colour",
    anyColour: "any colour",
    availableOnly: "Only bikes that are free",
    offRoad: "Also for rough ground: more room above the frame",
    resale: "Share of the price you get back later (%)",
    resaleWhy: "An assumption, for the cost a month. Change it as you see fit.",
    notAPercentage: "Please type a percentage from 0 to 100.",
    hidden: (number: number): string => `${upperFirst(bikes(number))} hidden by your wishes`,
    because: {
      price_over: (number: number): string => count(number, "costs more", "cost more"),
      price_unknown: (number: number): string => count(number, "has no price", "have no price"),
      mass_over: (number: number): string => count(number, "is heavier", "are heavier"),
      mass_unknown: (number: number): string => count(number, "was never weighed", "were never weighed"),
      brakes: (number: number): string => count(number, "has other brakes", "have other brakes"),
      brakes_unknown: (number: number): string => count(number, "has unknown brakes", "have unknown brakes"),
      kind: (number: number): string => count(number, "is of the other kind", "are of the other kind"),
      not_available: (number: number): string => count(number, "is not free", "are not free"),
      wheel: (number: number): string => count(number, "has other wheels", "have other wheels"),
      colour: (number: number): string => count(number, "has another colour", "have another colour"),
    } as Partial<Record<string, (number: number) => string>>,
    showAll: "Show all bikes",
    notANumber: "Please type a plain number.",
  },

  bike: {
    back: "Back to the rack",
    setting: "Saddle setting",
    aboveFloor: "above the floor",
    aboveLowest: "above its lowest",
    belowHighest: "below its highest",
    resale: (share: string): string =>
      `Counted with ${share} of the price coming back when you sell it. That is an assumption: change it under “Filter and order”.`,
    costGaps: {
      no_price: "No cost a month: its price is not known.",
      no_forecast: "No cost a month: nobody can say how long it lasts.",
      fits_too_briefly: "No cost a month: it fits for too short a time.",
    } as Partial<Record<string, string>>,
    foot: {
      flat: "Both feet reach the ground flat.",
      ball: "The balls of both feet reach the ground.",
      tiptoe: "Tiptoes reach the ground.",
      off_the_floor: "The feet do not reach the ground.",
    } satisfies Record<Foot, string>,
    drawingTitle: "Seen from the side, to scale",
    drawing: (setting: string | null, inseam: string): string =>
      `Side view of the bike, to scale. ${
        setting === null ? "The saddle cannot be set for this rider" : `The saddle stands at ${setting}`
      }; the rider’s inside leg is ${inseam}.`,
    inseam: "Inside leg",
    saddle: "Saddle",
    lowest: "lowest",
    highest: "highest",
    assumed: (what: string[]): string =>
      `Not measured on this bike, drawn with usual figures: ${what.join(", ")}.`,
    assumedNames: {
      wheel: "wheel size",
      bottom_bracket_height: "bottom bracket height",
      seat_tube_angle_deg: "seat tube angle",
      crank: "crank length",
      standover: "top tube height",
      saddle_lowest: "lowest saddle",
      saddle_highest: "highest saddle",
    } as Partial<Record<string, string>>,
    assumedRest: "The rest of the frame is a sketch.",
    facts: "What the list says",
    fact: {
      wheel: "Wheels",
      span: "Saddle range",
      standover: "Top tube (standover)",
      mass: "Weight",
      brakes: "Brakes",
      gears: "Gears",
      price: "Price",
      colours: "Colour",
      condition: "Condition",
      available: "Free",
      riderLimit: "Rider up to",
      notes: "Notes",
    },
    brakes: {
      "front hand": "front hand brake",
      "rear hand": "rear hand brake",
      coaster: "coaster brake (back-pedal)",
    } satisfies Record<Brake, string>,
    yes: "yes",
    no: "no",
    unknown: "not known",
    hidden: "Your wishes hide this bike from the rack.",
    gone: "This bike is no longer on the rack.",
  },

  /** The leg on the pedal. */
  leg: {
    where: "Foot",
    onGround: "On the ground",
    onPedal: "On the pedal",
    turn: "Turn the crank",
    /** For those who hear the slider: where the pedal is, and the knee with it. */
    turned: (crank: string, knee: string): string => `Crank ${crank} from the top, knee bent by ${knee}`,
    knee: (knee: string): string => `Knee bent by ${knee} here.`,
    whole: (least: string, greatest: string): string => `Over a whole turn: from ${least} to ${greatest}.`,
    adults: (low: string, high: string): string =>
      `Trained adults ride with ${low} to ${high} at the lowest pedal. Only to give an idea: a new rider sits lower, feet on the ground.`,
    adultShares: "Thigh and shin are drawn with an adult’s proportions.",
    statureAssumed: "Your rider’s height is guessed from the inside leg.",
    obstacles: {
      figure_impossible: "The leg on the pedal cannot be drawn: one of the bike’s figures cannot be right.",
      crank_reaches_floor:
        "The leg on the pedal cannot be drawn: by the figures of this bike its crank would strike the floor.",
      saddle_below_bottom_bracket:
        "The leg on the pedal cannot be drawn: the saddle would stand below the pedals’ axle.",
      pedal_out_of_reach: "At this saddle height the leg does not reach the pedal at its lowest.",
      leg_cannot_fold: "At this saddle height there is no room for the leg with the pedal at its highest.",
    } as Partial<Record<string, string>>,
    obstacle: "The leg on the pedal cannot be drawn for this bike.",
  },

  checks: {
    title: "Beyond the saddle",
    noDoubts: "Nothing speaks against it, as far as it was measured.",
    fine: (number: number): string => (number === 1 ? "1 check is fine" : `${number} checks are fine`),
    notMeasured: "Not measured:",
    wouldTell: (what: string, checks: string[]): string => `${upperFirst(what)}, for: ${checks.join(", ")}.`,
    states: { ok: "fine", look: "look closer", stop: "stop and think", unknown: "not known" },
    names: checkNames,
    measure: measureNames,
    wording: checkWording,
    fallback: (why: string): string => `${upperFirst(why)}.`,
    basis: {
      measured: null,
      estimated_rider_mass: "The rider’s weight is a guess from the age.",
      estimated_stature: "The rider’s height is a guess from the inside leg.",
    },
    limits: (what: string, { limit, limit_low, limit_high }: CheckFigures): string | null => {
      const of = checkLimitNames[what];
      if (limit !== undefined) return `${of ?? "Limit"}: ${limit}.`;
      return limit_low === undefined || limit_high === undefined
        ? null
        : `${of ?? "Usual"}: ${limit_low} to ${limit_high}.`;
    },
    source: (source: string): string => `Source: ${source}.`,
    riderMassGuessed: "Your rider’s weight is not known here.",
    typeRiderMass: "Type your rider’s weight",
  },

  growth: {
    title: "How long it lasts",
    needsForecast: "With the inside leg typed, the years ahead are drawn here.",
    drawing:
      "Picture: the saddle height your rider needs over the coming years, against the range of this bike.",
    keyNeed: "Blue: the saddle height your rider will need. Pale blue: how far it may differ.",
    keyBike: "Yellow: what this bike’s saddle can do.",
    today: "today",
    start: "fits",
    end: "outgrown",
    fitsFrom: (month: string, range: string | null): string =>
      `Begins to fit about ${month}${range === null ? "" : ` (${range})`}.`,
    fitsAlready: "Fits today.",
    outgrown: (month: string, range: string | null): string =>
      `Outgrown about ${month}${range === null ? "" : ` (${range})`}.`,
    notOutgrown: "Not outgrown within eight years.",
    neverFits: "Does not come to fit within eight years.",
    alreadyOutgrown: "Already outgrown.",
    highestUnknown: "Its highest saddle was not measured, so nobody can say how long it lasts.",
    somewhere: (from: string | null, to: string | null): string =>
      from === null
        ? `before ${to ?? "?"} in 9 of 10 children`
        : to === null
          ? `perhaps as early as ${from}, perhaps years later`
          : from === to
            ? `within that month for 8 of 10 children`
            : `${from} to ${to} for 8 of 10 children`,
    stageMoves: (month: string): string =>
      `From ${month} the picture counts on a surer rider, who sits higher.`,
    lessCertain: "For a child this young the growth figures are less certain.",
    raises: "When to raise the saddle",
    raiseOn: (day: string, height: string): string => `${day}: ${height}`,
    raiseMore: (number: number): string => `${number} more steps`,
    table: "The same as figures",
    tableWhen: "When",
    tableLow: "Low end",
    tableMiddle: "Middle",
    tableHigh: "High end",
    tableCaption: "Inside leg in shoes: the middle of the forecast, and where 8 of 10 children will be",
    about: "What the picture means",
    explanation: [
      "The blue band is the saddle height that will suit this rider, month by month. Pale blue shows where 8 of 10 children like this one will be. One in ten grows faster, one in ten slower.",
      "It starts from your own readings. From there it follows published growth references for leg length. Each new reading moves the band to where your child really is.",
      "Children differ, and for those under eight the reference is less certain. Measure every few months.",
      "This is no medical judgement. It says nothing about whether a child grows well.",
    ],
  },

  tape: {
    title: "Tape one",
    lead: "A bike in front of you that is in no list? Tape two heights, from the floor to the top of the saddle.",
    lowest: "Saddle at its lowest",
    highest: "Saddle at its highest",
    highestHow: "Up to the minimum-insertion mark on the seat post, never past it.",
    more: "More about this bike",
    name: "What is it?",
    namePlaceholder: "Green 16 in, bell",
    kind: "Kind of bike",
    kinds: { pedal: "With pedals", balance: "Balance bike" } satisfies Record<BikeKind, string>,
    standover: "Top of the frame where the rider stands over it",
    wheel: "Wheels, inch or marking on the tyre",
    mass: "Weight (kg)",
    price: "Price",
    keep: "Keep it on the rack",
    kept: "Kept on the rack",
    unnamed: (number: number): string => `Taped bike ${number}`,
    removeKept: (name: string): string => `Remove ${name}`,
    waiting: "Type one height and the verdict stands here.",
    mend: "The verdict stands here once these two heights make sense.",
    needRider: "For a verdict, type the rider’s inside leg first.",
  },

  list: {
    title: "The list",
    lead: "A file of measured bikes, from your club or your own. It stays on this device.",
    choose: "Open a list from this device",
    chooseOther: "Open another list",
    busy: "Reading the list …",
    samples: "Or look round with invented bikes",
    samplesWhy: "None of these exist. They show what a list can do.",
    loanShed: "Loan shed, in cm",
    swapMorning: "Swap morning, in inches",
    sampleMark: "Invented sample",
    untitled: "A list without a title",
    measuredOn: (day: string): string => `Measured on ${day}`,
    bikes,
    setAside: (number: number): string => `${upperFirst(bikes(number))} set aside`,
    setAsideWhy: "These could not be used. The rest of the list is on the rack.",
    setAsideName: (number: number): string => `Entry ${number}`,
    asWritten: "As it stands in the file",
    noneSetAside: "Every bike in it could be used.",
    notes: "Worth a look",
    refused: (fileName: string): string => `“${fileName}” could not be opened.`,
    keptOld: (title: string): string => `“${title}” is still open.`,
    keptNone: "No list is open.",
    toRack: "See the bikes",
    link: (number: number): string => `${upperFirst(bikes(number))} set aside: see why`,
    taped: "Taped by you",
  },

  cautions: {
    title: "Before the first ride",
    all: [
      "A fit estimate is not a safety check.",
      "Helmet on, every ride.",
      "Never raise the post past its minimum-insertion mark.",
      "Bought second-hand or put together at home? Have a mechanic look it over.",
      "A rider who cannot stop the bike is not ready for it.",
      "Local rules and the maker’s manual come first.",
    ],
  },

  problems: {
    wording: problemWording,
    inFile: (line: number, column: number, sentence: string): string =>
      `Line ${line}, column ${column}: ${sentence}`,
    /** The engine's own sentence, made to stand alone. */
    fallback: (problem: string, expected: string): string =>
      `${upperFirst(problem)}.` + (expected === "" ? "" : ` Expected: ${expected}.`),
  },
};

export type Texts = typeof english;
