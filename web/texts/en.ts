// Every word of the page, in English. Other languages say the same things in files of the same shape.
//
// To add a text: put it here, in the screen it belongs to, as a plain string, never a function. Figures stand in braces:
//   saved: "Saved {bikes} {bikes#bike|bikes} to {file}{on? on {on}|}."
// and the page says   texts.keep.saved({ bikes: 3, file: "shed.json", on: null })
// `{n#one|many}` chooses by number, `{x?given|not given}` by whether there is a figure; templates.ts has the rules. Figures with
// units come from web/figures and are put in as text; numbers and lists of words may be put in as they are. A table by codes of
// the engine is looked up with `byCode(texts.some.table, code, figures)`.
// Until another language has its words for it, it shows the English ones.
import { upperFirst } from "./upper-first";
import { problem_words, problems } from "../../wasm-bindings/english.json";

/** With the page's apostrophes, and no line that ends between a number and its unit. */
const typeset = (text: string): string =>
  text.replace(/(\w)'(\w)/g, "$1’$2").replace(/([\d}]) (cm|in|kg|lb|MiB)\b/g, "$1\u00a0$2");

/**
 * What is wrong and what is needed, for every code of the engine: the sentences that command lines print as well. Those below
 * take the place of some, for parents.
 */
const sentences = Object.fromEntries(
  Object.entries(problems).map(([code, { problem, expected }]) => [
    code,
    // A name has the page's own quotes; those beside "expected" are characters of a file.
    typeset(
      upperFirst(problem).replace(/"(\{\w+\})"/g, "“$1”") +
        (expected === "" ? "." : `. Needed: ${expected}.`),
    ),
  ]),
) as Record<keyof typeof problems, string>;

const engineWords = Object.fromEntries(
  Object.entries(problem_words).map(([word, text]) => [word, typeset(text)]),
) as Record<keyof typeof problem_words, string>;

export const english = {
  name: "Saddlerule",
  /** Of the list of languages. */
  language: "Language",
  units: { cm: "cm", in: "in", kg: "kg", mm: "mm", m: "m", km_h: "km/h" },
  unitNames: { cm: "centimetres", in: "inches" },

  navigation: {
    label: "Screens",
    rider: "Your child",
    rack: "Bikes",
    tape: "Measure",
    list: "List",
    keep: "Save",
  },
  shownIn: "Show lengths in",
  overdue: "This takes longer than usual. What is grey is not yet about what you typed.",
  /** Between what is spoken of and what is said of it. */
  colon: ": ",
  optional: "optional",

  rider: {
    title: "Your child",
    lead: "Which bikes fit, and at what saddle height?",
    inseam: "Inside leg",
    inseamAgain: "Inside leg, measurement {number}",
    inseamExample: { cm: "e.g. 49.5", in: "e.g. 19 1/2" },
    unit: "Unit",
    shoes: "Shoes",
    shoesOn: "On",
    shoesOff: "Off",
    again: "Measure again",
    remove: "Remove",
    removeReading: "Remove the measurement {figure} from {on}",
    earlier: "Earlier measurements",
    earlierWhy: "Measurements from weeks or months ago show how your child grows.",
    addEarlier: "Add an earlier measurement",
    readOn: "Measured on",
    withShoes: "Measured with shoes on",

    stage: "How does your child ride?",
    stages: {
      gliding: { title: "Pushes along with both feet", more: "A balance bike, no pedals" },
      side_wheels: {
        title: "Training wheels (stabilisers)",
        more: "Small side wheels keep the bike upright",
      },
      starting: { title: "No training wheels, still new to it", more: "Needs both feet flat on the ground" },
      riding: { title: "Rides well", more: "Starts, brakes and stops without help" },
    },
    confidence: "With training wheels, your child is",
    confidences: { wary: "Wary", usual: "At ease", bold: "Bold" },

    more: "Age, height and weight",
    moreWhy: "Optional. They help Saddlerule work out how long a bike will fit.",
    born: "Month of birth",
    month: "Month",
    year: "Year",
    notSaid: "not given",
    sex: "Girl or boy",
    sexWhy: "Girls and boys grow at different ages: this is used for nothing else.",
    population: "Grows up in",
    populationWhy: "Leg length differs from country to country. Only used for an estimate until you measure.",
    populations: { us: "United States", gb: "Great Britain", nl: "Netherlands", any: "Elsewhere" },
    girl: "Girl",
    boy: "Boy",
    stature: "Height",
    mass: "Weight ({unit})",
    massWhy: "Used to check if a bike is too heavy. If left blank, it is estimated.",
    ridingFrom: {
      starting: "Will ride well from about",
      side_wheels: "Training wheels come off in",
    },
    ridingFromWhy: "If left blank: six months from now.",
  },

  measuring: {
    title: "How to measure the inside leg (inseam)",
    steps: [
      "Stand your child with their back to a wall, in the shoes they ride in, feet a little apart.",
      "Slide a thin hardback book up between the legs: spine up, one end flat on the wall. Press it up as firmly as a saddle.",
      "Keep the book level. Draw a line on the wall along its top.",
      "Measure straight up from the floor to the line. Then do it all again.",
    ],
    notTrousers: "Do not use the leg length on a trouser label: it is shorter.",
    drawing:
      "Drawing: a child with their back to a wall and a book held level between the legs. A tape measure runs up the wall from the floor to the top of the book.",
  },

  window: {
    title: "Saddle height to look for",
    range: "{low} to {high}",
    best: "Best: {target}",
    how: {
      gliding: "From the floor to the top of the saddle. Low enough to push with bent knees.",
      side_wheels: "From the floor to the top of the saddle, with the training wheels on.",
      starting: "Straight up from the floor to the top of the saddle. Both feet are flat on the ground.",
      riding: "Straight up from the floor to the top of the saddle. The toes touch the ground.",
    },
    estimated: {
      estimated_from_stature:
        "Worked out from your child’s height, not measured. Measure the inside leg to be sure.",
      estimated_from_age:
        "An estimate from the age alone. Children of the same age vary a lot: measure the inside leg.",
    },
    estimatedFrom: {
      us: "Based on children in the United States.",
      gb: "Based on children in Great Britain.",
      nl: "Based on children in the Netherlands.",
      any: "Based on children in three countries, as we do not know which.",
    },
    readingWorth: "Inside leg in shoes: {inseam}, give or take {sd}.",
    drawing: "Drawing of a tape measure: the saddle should be between {low} and {high}, best at {target}.",
    wheels:
      "{others?Start with {first} inch wheels. {others} inch may fit too.|Start with {first} inch wheels.}",
    wheelsCommon: "A rule of thumb: what counts is the saddle height, not the wheel size.",
    wheelsList: "In the open list, the saddle height fits on {fitting} {fitting#bike|bikes} of that size.",
    noWheels: "No usual wheel size matches this. Measure bikes one by one to find out.",
    stale: "These numbers are for the last measurement that could be read.",
    toRack: "See the bikes",
    toTape: "Measure a bike here",
  },

  rack: {
    title: "Bikes",
    verdicts: {
      fits_now: "Saddle height fits",
      close_call: "Borderline: try it",
      too_tall: "Still too big",
      outgrown: "Already too small",
      not_measured: "More to measure",
    },
    counts: {
      fits_now: "{number} {number#fits|fit}",
      close_call: "{number} borderline",
      too_tall: "{number} too big",
      outgrown: "{number} too small",
      not_measured: "{number} to measure",
    },
    announced: "Bikes: {counts}.",
    key: "Yellow: saddle heights. Blue: your child.",
    scale:
      "Heights above the floor, {low} to {high}. The blue band, the heights that suit your child, runs across all bikes.",
    bar: "{lowest?{highest?Saddle {lowest} to {highest}|Saddle from {lowest}; highest not measured}|Saddle up to {highest}; lowest not measured}",
    wheel: "{nominal} inch",
    taped: "measured by you",
    fitsFor: "fits {time}",
    overview: "All at a glance",
    look: "Slide to see which bikes will fit later",
    lookSays: "{months} from now {number} of these bikes probably {number#fits|fit}.",
    emptyWhy: "Open your club’s list, measure a bike, or try it out with made-up ones.",
    noReading: "Enter the inside leg to see which of these fit.",
    toRider: "Enter the inside leg",
    listLabel: "Bikes, best first",
    print: "Print {number#this bike|these {number} bikes}",
    paperPart: "The first {told} of {all} bikes. To print all, use the button under “Filter and sort”.",
  },

  verdict: {
    setting: "Saddle at {height}",
    atLowest: "its lowest position",
    atHighest: "its highest position",
    aboveLowest: "{height} above its lowest",
    room: "can go up {height} more",
    noRoom: "cannot go higher",
    roomUnknown: "how far up it goes is not known",
    tryIt: "A tape measure cannot tell: let your child try it.",
    missesBelow: "Even at its lowest, the saddle is {by} too high.",
    missesAbove: "Even at its highest, the saddle is {by} too low.",
    measure: "To find out, measure {what}.",
    toMeasure: {
      saddle_lowest: "the lowest saddle height",
      saddle_highest: "the highest saddle height",
    },
    lasts: "Fits for {time}",
    fitsFrom: "{month?Will fit from about {month}|Will not fit within eight years}",
    lastsThen: "then for {time}",
    costPerMonth: "About {amount} a month.",
    costRange:
      "{high?From {low} if it fits for long, to {high} if your child outgrows it early.|It may be as little as {low} a month, or much more if your child outgrows it soon.}",
    otherKind: {
      balance: "It has no pedals.",
      pedal: "It has pedals: for later.",
    },
  },

  choosing: {
    /** Of a bike that no other beats. */
    worthALook: "Worth trying",
    worth: {
      lasts_longest: "none fits longer",
      cheapest: "none costs less",
      lightest: "none weighs less",
      balance: "any that fits longer costs or weighs more",
      nothing_to_compare: "too little is known to compare it",
    },
    stops: "{number} {number#warning|warnings}",
    looks: "{number} {number#thing|things} to check",
    /** Why a bike is not put forward, where its verdict does not say it already. */
    notOffered: {
      check_stops: "Not suggested: read its warning first.",
      not_available: "Not suggested: the list says it is not available.",
      beaten:
        "Not suggested: {better?{better}|another bike} fits for as long, costs no more and weighs no more.",
      behind_in_order: "The saddle height fits, but others come first in the order you chose.",
    },
  },

  whatIf: {
    title: "What if…",
    busy: "Working it out…",
    now: "{first?Right now, {first} comes first.|Right now, no bike comes first.}",
    nothing: "Small changes to the measurement or the budget make no difference.",
    suppose: {
      longer_reading: "If the inside leg were {by} longer",
      shorter_reading: "If the inside leg were {by} shorter",
      next_stage: {
        gliding: "If your child pushed along with both feet",
        side_wheels: "If your child rode with training wheels",
        starting: "If your child rode without training wheels",
        riding: "If your child rode well",
      },
      higher_budget: "With up to {amount} to spend",
      lower_budget: "With less than {amount} to spend",
    },

    otherFirst: "{supposed}, {bike} would come first.",
    noneFirst: "{supposed}, no bike would fit.",
  },

  /** The way of riding, on which every saddle height hangs. */
  riding: {
    choose: "Choose one: the saddle height depends on it.",
    chooseFirst: "Choose how your child rides to see which of these fit.",
    toChoice: "Choose how your child rides",
    /** With a verdict. */
    for: {
      gliding: "For a child who pushes along with both feet",
      side_wheels: "For a child who rides with training wheels",
      starting: "For a child who rides without training wheels, still new to it",
      riding: "For a child who starts, brakes and stops without help",
    },
  },

  /** Of a leg that nobody measured. */
  guess: {
    mark: "estimate",
    caveat: "An estimate only: the inside leg was not measured. Measure it before you buy.",
    likely: "for 8 in 10 children like yours",
    setting: "Saddle somewhere from {range}",
    aboveFloor: "saddle above the floor, for 8 in 10 children like yours",
    moves: "Measure the inside leg to find out when to move the saddle.",
    drawn: "Drawn for a child of average size. Yours may need another height.",
    sideView: "Side view of the bike, to scale, with a child of average size.",
    drawing:
      "Drawing of a tape measure: the saddle will be somewhere between {low} and {high}. The leg was not measured.",
  },

  /** Months in which a bike does not fit, between its first and its last. */
  pauses: {
    until: "Fits until about {until}",
    thenUntil: "then until about {until}",
    during: {
      too_tall: "Too high {time}, when the training wheels come off.",
      outgrown: "Too low {time}, until the training wheels come off.",
    },
    within: "in {month}",
    between: "from {from} to {to}",
    again: "{until?Then it fits again until about {until}.|Then it fits again.}",
    /** In the chart. */
    names: { too_tall: "too high", outgrown: "too low" },
    key: "Striped: the saddle does not fit in these months.",
  },

  /** How a bike has to be for its heights to be measured. */
  measuringBike: {
    how: "Tyres pumped up, bike upright on a hard floor, nobody on it. Measure straight up, not along the seat post.",
  },

  /** When the saddle has to be moved. */
  moves: {
    again: "Measure again before each step.",
    about: "About {month}: {height}",
    then: "Then: {height}",
    once: {
      starting: "once the training wheels are off",
      riding: "once your child starts, brakes and stops without help",
    },
    taken: "{condition} (perhaps about {month}):",
    chartWheelsOff: "From {month} the chart assumes that the training wheels are off.",
  },

  wishes: {
    title: "Filter and sort",
    detail: "More detail",
    order: "Bikes that fit come first. Sort them by",
    orders: {
      lasts: "how long they fit",
      cost: "cost a month",
      light: "weight",
      closest: "saddle closest to the best height",
    },
    maxPrice: "Price up to",
    maxMass: "Weight up to ({unit})",
    brakes: "Brakes",
    brakeWishes: {
      any: "any brakes",
      two_hand: "two hand brakes",
      coaster: "coaster brake (back-pedal)",
    },
    gears: "Gears",
    gearsWishes: {
      any: "any gears",
      single: "single speed",
      several: "with gears",
    },
    kind: "Kind of bike",
    kinds: { any: "any kind", pedal: "with pedals", balance: "balance bikes" },
    wheel: "Wheels",
    anyWheel: "any wheels",
    colour: "Colour",
    anyColour: "any colour",
    availableOnly: "Only available bikes",
    offRoad: "Also for rough ground: more room above the frame",
    resale: "Share of the price you get back later (%)",
    resaleWhy: "An estimate, used for the cost a month. Change it if you like.",
    notAPercentage: "Please enter a percentage from 0 to 100.",
    hidden: "{number} {number#bike|bikes} hidden by your filters",
    because: {
      price_over: "{number} {number#costs more|cost more}",
      price_unknown: "{number} {number#has no price|have no price}",
      mass_over: "{number} {number#is heavier|are heavier}",
      mass_unknown: "{number} {number#was never weighed|were never weighed}",
      brakes: "{number} {number#has other brakes|have other brakes}",
      brakes_unknown: "{number} with brakes not known",
      kind: "{number} of the other kind",
      not_available: "{number} not available",
      wheel: "{number} {number#has other wheels|have other wheels}",
      colour: "{number} {number#has another colour|have another colour}",
      gears: "{number} {number#has other gears|have other gears}",
      gears_unknown: "{number} with gears not known",
    },
    showAll: "Show all bikes",
    notANumber: "Please enter a plain number.",
  },

  bike: {
    back: "Back to the bikes",
    aboveFloor: "saddle above the floor",
    aboveLowest: "above its lowest",
    belowHighest: "below its highest",
    resale:
      "This assumes you get {share} of the price back when you sell it. Change that under “Filter and sort”.",
    costGaps: {
      no_price: "No cost a month: the price is not known.",
      no_forecast: "No cost a month: it is not known how long it will fit.",
      fits_too_briefly: "No cost a month: it fits for too short a time.",
    },
    foot: {
      flat: "Both feet are flat on the ground.",
      ball: "The balls of both feet reach the ground.",
      tiptoe: "The toes touch the ground.",
      off_the_floor: "The feet do not reach the ground.",
    },
    drawingTitle: "Seen from the side, to scale",
    drawing:
      "Side view of the bike, to scale. {setting?The saddle is at {setting}|The saddle cannot be set for your child}; the inside leg is {inseam}.",
    inseam: "Inside leg",
    saddle: "Saddle",
    assumed: "Not measured on this bike, so drawn with usual sizes: {what}.",
    assumedNames: {
      wheel: "wheel size",
      bottom_bracket_height: "bottom bracket height",
      seat_tube_angle_deg: "seat tube angle",
      crank: "crank length",
      standover: "frame height",
      saddle_lowest: "lowest saddle height",
      saddle_highest: "highest saddle height",
    },
    assumedRest: "The rest of the frame is a sketch.",
    facts: "What the list says",
    fact: {
      wheel: "Wheels",
      span: "Saddle range",
      standover: "Frame height (standover)",
      mass: "Weight",
      brakes: "Brakes",
      gears: "Gears",
      price: "Price",
      colours: "Colour",
      condition: "Condition",
      available: "Available",
      riderLimit: "Rider weight up to",
      notes: "Notes",
    },
    brakes: {
      "front hand": "front hand brake",
      "rear hand": "rear hand brake",
      coaster: "coaster brake (back-pedal)",
    },
    yes: "yes",
    no: "no",
    unknown: "not known",
    hidden: "Your filters hide this bike.",
    gone: "This bike is no longer in the list.",
  },

  /** The leg on the pedal. */
  leg: {
    where: "Foot",
    onGround: "On the ground",
    onPedal: "On the pedal",
    turn: "Turn the crank",
    /** For those who hear the slider: where the pedal is, and the knee with it. */
    turned: "Crank {crank} from the top, knee bent by {knee}",
    knee: "Knee bent by {knee} here.",
    whole: "Over a whole turn: from {least} to {greatest}.",
    adults:
      "Practised adults bend the knee by {low} to {high} with the pedal down. Use this only as a guide: a child who is new to riding sits lower, feet on the ground.",
    adultShares: "Thigh and shin are drawn with an adult’s proportions.",
    statureAssumed: "Your child’s height is estimated from the inside leg.",
    obstacles: {
      figure_impossible: "The leg on the pedal cannot be drawn: one of the bike’s sizes must be wrong.",
      crank_reaches_floor:
        "The leg on the pedal cannot be drawn: with these sizes the crank would hit the floor.",
      saddle_below_bottom_bracket:
        "The leg on the pedal cannot be drawn: the saddle would be lower than the crank’s axle.",
      pedal_out_of_reach: "At this saddle height the leg does not reach the pedal at its lowest.",
      leg_cannot_fold: "At this saddle height there is no room for the leg with the pedal at its highest.",
    },
    obstacle: "The leg on the pedal cannot be drawn for this bike.",
  },

  checks: {
    title: "Other checks",
    noDoubts: "No problems found in what was measured.",
    fine: "{number} {number#check is|checks are} fine",
    notMeasured: "Not measured:",
    wouldTell: "{what}: needed for {checks}.",
    states: { ok: "fine", look: "check this", stop: "warning", unknown: "not known" },
    names: {
      standover: "Standing over the frame",
      bike_mass: "Weight of the bike",
      rider_mass_limit: "Weight limit",
      brake_kind: "Brakes",
      lever_reach: "Reach to the brake lever",
      top_of_post: "Seat post",
      saddle_class: "Rules for its size",
      leg_extension: "Leg on the pedal",
      saddle_height_factor: "Saddle to pedal",
      crank: "Crank length",
      gears: "Gear",
      first_hill: "First hill",
    },
    measure: {
      saddle_lowest: "lowest saddle height",
      saddle_highest: "highest saddle height",
      standover: "frame height",
      bottom_bracket_height: "bottom bracket height",
      seat_tube_angle_deg: "seat tube angle",
      crank: "crank length",
      lever_reach: "reach from grip to brake lever",
      brakes: "brakes fitted",
      wheel: "numbers on the tyre",
      chainring: "teeth on the front chainring",
      sprocket: "teeth on the rear sprocket",
      mass_kg: "weight of the bike",
      rider_mass_limit_kg: "the maker’s weight limit for the rider",
      "rider.mass_kg": "your child’s weight",
    },
    wording: {
      standover_clear: "Standing over the frame, there is {value} to spare.",
      standover_tight: "Standing over the frame, there is only {value} to spare. Aim for {limit}.",
      standover_unsettled:
        "The top tube is {top_tube} above the floor. Measure the inside leg: it should be {limit} longer.",
      standover_too_high: "The frame is {over} too high to stand over with both feet flat.",

      bike_mass_easy: "It weighs {bike}, {value} of your child’s weight.",
      bike_mass_noticeable:
        "It weighs {bike}, {value} of your child’s weight: starting and steering will be hard work.",
      bike_mass_heavy: "It weighs {bike}, {value} of your child’s weight: hard to hold when it tips.",

      rider_within_limit: "The maker allows up to {limit}; your child weighs {value}.",
      rider_may_exceed_limit:
        "The maker allows up to {limit}. Children of this size weigh about {value}, and many weigh more.",
      rider_over_limit: "Your child weighs {value}, but the maker allows only {limit}.",

      leg_as_adults: "With the pedal down, the knee stays bent by {value}, as for practised adults.",
      leg_bent:
        "With the pedal down, the knee stays bent by {value}, more than for practised adults. That is normal when the feet have to reach the floor.",
      leg_nearly_straight:
        "With the pedal down, the knee is bent by only {value}. Check that the hips do not rock from side to side.",
      leg_out_of_reach: "The pedal seems out of reach at its lowest. Try a lower saddle.",
      leg_cannot_fold: "With the pedal up, the leg seems to have no room.",

      height_factor_within:
        "It is {saddle_to_pedal} from the saddle down to the pedal, no more than adults use.",
      height_factor_over: "It is {saddle_to_pedal} from the saddle down to the pedal, more than adults use.",

      height_factor_unsettled:
        "It is about {saddle_to_pedal} from the saddle down to the pedal. Measure the inside leg to see if that is too far.",
      crank_usual: "The crank, {crank}, is {value} of the inside leg, which is usual.",
      crank_short: "The crank, {crank}, is {value} of the inside leg, shorter than usual.",
      crank_long:
        "The crank, {crank}, is {value} of the inside leg, longer than usual: the knees come up high.",

      crank_unsettled:
        "The crank, {crank}, is about {value} of the inside leg. Measure the leg to see if that is usual.",
      lever_near: "The brake lever is {value} from the grip, near enough for small hands.",
      lever_far:
        "The brake lever is {value} from the grip; for young children it should be {limit} at most. Adjust it, or see if your child can pull it.",
      lever_beyond_every_rule:
        "The brake lever is {value} from the grip, farther than any rule allows: a child cannot pull it safely.",

      brakes_two_systems: "Two separate brakes, one of them at the front.",
      brakes_two_hands_only:
        "Two hand brakes. In the US a bike of this size needs a back-pedal brake as well.",
      brakes_no_front:
        "No front brake. The international standard asks for one at the front and one at the back.",
      brakes_coaster_only:
        "Only a back-pedal brake. The international standard asks for a front brake too; a US rule does not.",
      brakes_front_only: "Only a front brake. No rule allows that.",
      brakes_rear_hand_only: "Only a rear hand brake. No rule allows that on a bike for young children.",
      brakes_none: "It has pedals but no brakes at all. Do not ride it like this.",
      brakes_none_on_toy:
        "No brakes. Going by its saddle height it is a ride-on toy, which needs none: keep it off slopes and roads.",

      class_toy: "With its saddle at {value} at most, it counts as a toy and is not made for traffic.",
      class_young_children:
        "Going by its highest saddle height, the rules for young children’s bikes apply. Not checked: whether it meets them.",
      class_at_both:
        "Its highest saddle height, {value}, is where two rules meet: one for young children, one for larger hands. Check that your child can reach the brake levers.",
      class_young_adult:
        "Going by its highest saddle height, {value}, a rule for larger hands applies. Check that your child can reach the brake levers.",
      class_full_size:
        "Going by its highest saddle height, {value}, it counts as full-size, for larger hands. Check that your child can reach the brake levers.",

      post_below_top: "The saddle is {value} below its highest position.",
      post_near_top:
        "The saddle can go up only {value} more. The minimum-insertion mark must stay inside the frame.",
      post_above_top:
        "The saddle would be {over} too high, past the minimum-insertion mark. Do not ride it like that.",

      gears_single:
        "One turn of the pedals moves the bike {value}: about {easy_speed} at ease, {brisk_speed} when pedalling fast.",
      gears_one_of_several:
        "In the gear listed, one turn of the pedals moves the bike {value}: about {easy_speed} at ease, {brisk_speed} when pedalling fast. It has other gears.",

      hill_light: "A gentle hill ({slope}) will feel light.",
      hill_firm: "A gentle hill ({slope}) takes a firm push: {value} of your child’s weight.",
      hill_heavy:
        "A gentle hill ({slope}) is hard: a push of {value} of your child’s weight. Expect to walk up.",
    },
    basis: {
      estimated_rider_mass: "Your child’s weight is an estimate.",
      estimated_stature: "Your child’s height is an estimate.",
      estimated_inseam: "The inside leg is an estimate. Measure it to be sure.",
    },
    limit: "{whose?{whose}|Limit}: {limit}.",
    limits: "{whose?{whose}|Usual}: {low} to {high}.",
    /** Whose figures the limits are, where they are no limits for a child. */
    whoseLimits: {
      saddle_class: "Its class",
      leg_extension: "Practised adults",
      saddle_height_factor: "Adults",
    },
    source: "Source: {source}.",
    /** Where the limits of a check come from; the engine’s own words serve in English. */
    sources: {
      standover: "",
      bike_mass: "",
      rider_mass_limit: "",
      brake_kind: "",
      lever_reach: "",
      top_of_post: "",
      saddle_class: "",
      leg_extension: "",
      saddle_height_factor: "",
      crank: "",
      gears: "",
      first_hill: "",
    },
    riderMassGuessed: "You have not entered your child’s weight.",
    typeRiderMass: "Enter your child’s weight",
  },

  growth: {
    title: "How long it fits",
    drawing:
      "Chart: the saddle height your child needs over the coming years, against the range of this bike.",
    keyNeed: "Blue: the saddle height your child will need. Pale blue: how much that may vary.",
    keyBike: "Yellow: how low and high this bike’s saddle goes.",
    today: "today",
    look: "Look at a month",
    lookSays: "{month?In {month}|Today}: saddle at {range}.{chance? Chance that this bike fits: {chance}.|}",
    start: "fits",
    end: "too small",
    fitsFrom: "Will fit from about {month}{range? ({range})|}.",
    fitsAlready: "The saddle height fits today.",
    outgrown: "Too small from about {month}{range? ({range})|}.",
    notOutgrown: "Will not be too small within eight years.",
    neverFits: "Will not fit within eight years.",
    alreadyOutgrown: "Already too small.",
    highestUnknown: "Its highest saddle was not measured, so it is not known how long it fits.",
    somewhere:
      "{from?{to?{from} to {to} for 8 in 10 children|perhaps as early as {from}, perhaps years later}|before {to} for 9 in 10 children}",
    withinMonth: "in that month for 8 in 10 children",
    stageMoves: "From {month} the chart assumes that your child rides well and sits higher.",
    lessCertain: "For young children the forecast is less sure.",
    raises: "When to move the saddle",
    raiseMore: "{number} more {number#step|steps}",
    table: "The same in numbers",
    tableWhen: "When",
    tableLow: "Low",
    tableMiddle: "Middle",
    tableHigh: "High",
    tableCaption:
      "Inside leg in shoes, in {unit}: the middle of the forecast, and the range for 8 in 10 children",
    among: {
      title: "Your child’s legs among other children’s",
      drawing: "Chart: inside leg in shoes by age, for other children and for your child.",
      key: "Each grey line says how many children have shorter legs, by age in years. The blue circles are your measurements.",
      whose: {
        us: "The grey lines are for children in the US.",
        gb: "The grey lines are for children in Great Britain.",
        nl: "The grey lines are for children in the Netherlands.",
        any: "The grey lines mix children from the US, Great Britain and the Netherlands.",
      },
      says: "{day}: longer legs than {share} of children of that age.",
      caution:
        "A jump from line to line is often a mistake in measuring: measure again. If you wonder how your child is growing, ask a doctor or nurse.",
    },
    about: "What the chart means",
    explanation: [
      "The blue band is the saddle height that will suit your child, month by month. Pale blue shows the range for 8 in 10 children like yours. One in ten grows faster, one in ten slower.",
      "It starts from your own measurements. From there it follows published growth charts for leg length. Each new measurement moves the band to where your child really is.",
      "Children vary, and under eight the growth charts are less sure. Measure every few months.",
      "This is not medical advice. It says nothing about whether a child grows well.",
    ],
  },

  tape: {
    title: "Measure a bike",
    lead: "Is the bike in front of you not in a list? Measure two heights, straight up from the floor to the middle of the saddle’s top.",
    lowest: "Saddle at its lowest",
    highest: "Saddle at its highest",
    more: "More about this bike",
    name: "Name for this bike",
    nameExample: "Green 16 in, bell",
    kind: "Kind of bike",
    kinds: { pedal: "With pedals", balance: "Balance bike" },
    standover: "Frame height, where your child stands over it",
    wheel: "Wheel size in inches, or the numbers on the tyre",
    mass: "Weight ({unit})",
    price: "Price",
    keep: "Add it to the bikes",
    kept: "Added to the bikes",
    unnamed: "Measured bike {number}",
    removeKept: "Remove {name}",
    waiting: "Enter one height to see the result.",
    mend: "The result shows here once both heights make sense.",
    needRider: "To see the result, enter your child’s inside leg first.",
    fromMessage: "From a message or a tag’s code",
    message: "What the seller wrote, or the text of the code",
    readMessage: "Fill in",
    messageRead: "Filled in. Please check the numbers above.",
    askSeller: "Ask the seller for both heights:",
    sellerQuestion:
      "Hello! Could you measure two heights on the bike for me, straight up from the floor to the middle of the saddle’s top? Once with the saddle all the way down, once with the post up to its minimum-insertion mark. And what size are the wheels? Thank you!",
  },

  list: {
    title: "List",
    lead: "A file of measured bikes, from your club or your own. It stays on this device.",
    choose: "Open a list from this device",
    chooseOther: "Open another list",
    samples: "Or try it out with made-up bikes",
    samplesWhy: "These bikes are not real. They show how a list works.",
    loanShed: "Loan shed, in cm",
    swapMorning: "Swap morning, in inches",
    sampleMark: "Made-up example",
    untitled: "Untitled list",
    measuredOn: "Measured on {day}",
    keptCopy:
      "{measured?The list of {measured}|The list}, as saved on {kept}. A newer one could not be loaded.",
    bikes: "{number} {number#bike|bikes}",
    setAside: "{number} {number#bike|bikes} left out",
    setAsideName: "Bike {number}",
    asWritten: "As written in the file",
    noneSetAside: "Every bike in it could be used.",
    notes: "Please check",
    refused: "“{fileName}” could not be opened.",
    keptOld: "“{title}” is still open.",
    keptNone: "No list is open.",
    tryAgain: "Try again",
    toRack: "See the bikes",
    link: "{number} {number#bike|bikes} left out: see why",
    taped: "Measured by you",
  },

  opening: {
    reading: "Reading “{name}”",
    judging: "Checking which bikes in “{name}” fit",
    stop: "Stop",
    stopped: "Stopped. Your list has not changed.",
  },

  /** Lengths of time: months from one to ten, and half years from one year to eight. */
  durations: {
    months: [
      "a month",
      "two months",
      "three months",
      "four months",
      "five months",
      "six months",
      "seven months",
      "eight months",
      "nine months",
      "ten months",
    ],
    years: [
      "a year",
      "a year and a half",
      "two years",
      "two and a half years",
      "three years",
      "three and a half years",
      "four years",
      "four and a half years",
      "five years",
      "five and a half years",
      "six years",
      "six and a half years",
      "seven years",
      "seven and a half years",
      "eight years",
    ],
    counts: {
      months: ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"],
      years: [
        "one",
        "one and a half",
        "two",
        "two and a half",
        "three",
        "three and a half",
        "four",
        "four and a half",
        "five",
        "five and a half",
        "six",
        "six and a half",
        "seven",
        "seven and a half",
        "eight",
      ],
    },
    about: "about {time}",
    fewWeeks: "a few weeks at most",
    longest: "eight years or more",
    upTo: "up to {time}",
    rangeOf: { months: "{low} to {high} months", years: "{low} to {high} years" },
    range: "{low} to {high}",
    maybe: "{middle}, most likely {range}",
  },

  /** Several riders. */
  family: {
    switch: "Choose a child",
    unnamed: "Child {number}",
    add: "Add a child",
    name: "Name or nickname",
    remove: "Remove {name}",
    removed: "{name} was removed.",
    undo: "Undo",
  },

  beside: {
    title: "Side by side",
    pick: "Side by side: {bike}",
    how: "Tick two to four bikes to see them side by side.",
    picked: "{number} {number#bike|bikes} ticked.",
    pickMore: "Tick one more.",
    pickThis: "Tick for side by side",
    unpickThis: "Untick",
    open: "Side by side",
    clear: "Untick all",
    add: "Add a bike",
    needMore: "Tick at least two bikes.",
    table: "The ticked bikes, point by point",
    differences: "What differs",
    noDifferences: "No known differences.",
    same: "The same on all ({number})",
    missing:
      "{number} ticked {number#bike is|bikes are} not here: hidden by your filters, or no longer in the list.",
    verdict: "Fit",
    setting: "Saddle",
    lasting: "How long it fits",
    cost: "Cost a month",
    check: "Check: {name}",
  },

  /** The work on lists of bikes: looking through, mending, measuring, merging, saving. */
  desk: {
    lists: "Open lists",
    unsaved: "not saved",
    toList: "Back to the list",
    close: "Close {name}",
    closeShort: "Close",
    closeThis: "Close this list",
    showThem: "Show",
    closing: "“{name}” has changes that are not saved.",
    closeAnyway: "Close without saving",
    keepOpen: "Keep it open",
    start: "Start a new list",
    otherWays: "New list, or made-up bikes",
    head: "Title, date, units",
    headTitle: "Title of the list",
    measuredOn: "Measured on (for example 2026-10-03)",
    units: "Numbers without a unit are in",
    noUnits: "no set unit: each number has its own",
    currency: "Currency (for example EUR)",
    mm: "millimetres",

    measure: "Measure bikes",
    add: "Add a bike",
    find: "Find a bike",
    showing: "Show",
    show: {
      all: "All {count}",
      bikes: "OK {count}",
      set_aside: "Left out {count}",
      slips: "To check {count}",
    },
    entries: "Bikes in the list",
    nothingShown: "Nothing here.",
    noEntries: "No bikes in this list yet. Measure the first one.",
    setAside: "left out",
    mend: "Fix it",
    openToMend: "Open it to fix it",
    whichUnit: "Which unit are its lengths in?",
    asWindows: "Read it as Windows-1252",
    asWindowsWhy: "Many older spreadsheets save this way. Check the names once it is open.",

    slips: "Likely mistakes",
    slipsWhy: "These look odd. Nothing changes unless you tap.",
    repairAll: "{count#Fix it|Fix all {count}}",
    slipKinds: {
      slip_unit: "{count#1 number seems|{count} numbers seem} to be in another unit",
      slip_swapped: "{count#1 bike has|{count} bikes have} lowest and highest swapped",
      slip_id_taken: "{count#1 tag is|{count} tags are} on two bikes",
      slip_span_narrow: "{count#1 saddle hardly moves|{count} saddles hardly move}",
      slip_span_wide: "{count#1 saddle range is|{count} saddle ranges are} very wide",
      slip_unlike_others: "{count#1 bike is|{count} bikes are} unlike others with the same wheel size",
    },
    repair: {
      slip_unit: "{count#Read it as {meant}|Read all {count} in this unit, such as {meant}}",
      slip_swapped: "Swap them",
      slip_id_taken: "Call this one {free}",
      slip_span_narrow: "Leave the highest blank",
    },
    repairOther: "Fix it",

    /** The bar that takes things back. */
    done: {
      added: "Added {name}.",
      changed: "Changed {name}.",
      copied: "Copied {name}.",
      removed: "Removed {name}.",
      repaired: "Fixed {count#{name}|{count} bikes}.",
      headed: "Changed the list’s details.",
      merged: "Merged with {name}.",
    },
    back: "Undone: {done}",
    undo: "Undo",
    redo: "Redo",

    entryNew: "A new bike",
    entryTitle: "Edit {name}",
    keep: "Save this bike",
    drop: "Discard changes",
    waits: "“{name}” opens once you save or discard this bike.",
    dropNew: "Discard this bike",
    copy: "Copy this bike",
    remove: "Remove this bike",
    otherFields: "Other columns",
    groups: {
      what: "What it is",
      heights: "Heights",
      parts: "Parts",
      riding: "Brakes and gears",
      money: "Price and condition",
    },
    fields: {
      id: "Number on its tag",
      name: "Name",
      kind: "Kind",
      wheel: "Wheel size in inches, or tyre numbers",
      saddle_lowest: "Saddle at its lowest",
      saddle_highest: "Saddle at its highest",
      standover: "Frame height (standover)",
      mass_kg: "Weight (kg)",
      rider_mass_limit_kg: "Rider weight up to (kg)",
      brakes: "Brakes",
      lever_reach: "Brake lever reach",
      gears: "Gears",
      chainring: "Teeth on the front chainring",
      sprocket: "Teeth on the rear sprocket",
      crank: "Crank length",
      bottom_bracket_height: "Bottom bracket height",
      seat_tube_angle_deg: "Seat tube angle (degrees)",
      price: "Price",
      colours: "Colours",
      condition: "Condition",
      available: "Available",
      notes: "Notes",
    },
    notSaid: "not given",
    brakes: {
      "front hand, rear hand": "two hand brakes",
      "front hand, coaster": "front hand brake, coaster",
      coaster: "coaster brake (back-pedal)",
      "front hand": "front hand brake only",
      "rear hand": "rear hand brake only",
      none: "no brakes",
    },

    workshop: "Measure bikes",
    unit: "Tape measure in",
    more: "More measurements",
    next: "Next bike",
    finish: "Done measuring",
    aside: "As it is, this bike is left out until it is fixed.",
    waiting: "A bike needs a tag number or a name, and one saddle height.",
    fine: "Looks right.",

    merge: "Merge with another list",
    mergeTitle: "Merge",
    mergeWith: "Add to “{name}”:",
    mergeFile: "Choose a file",
    mergeCounts:
      "{same} the same. {here} only here. {there} only in the other. {differ} in both, but different.",
    mergeAside: "{count} in the other list cannot be used and {count#is|are} left out.",
    mergeAdd: "Add the {count#one bike that is|{count} bikes that are} only in the other list",
    sides: { here: "This list", there: "The other", both: "Take both" },
    mergeAll: "For all that differ",
    mergeOne: "Use for {name}",
    conflicts: "In both lists, but different",
    field: "Field",
    alike: "The same in both: {count}",
    nothing: "blank",
    mergeDo: "Merge them",

    save: "Save list",
    saveTitle: "Save the list",
    form: "File type",
    forms: { json: "Saddlerule (JSON)", csv: "Spreadsheet (CSV)" },
    separator: "Between columns",
    separators: { comma: "comma", semicolon: "semicolon (decimal comma)", tab: "tab" },
    only: "Include",
    onlys: { all: "The whole list", set_aside: "Only those left out ({count})" },
    leftOut: "{count} of {all} cannot go into a table and would be left out:",
    saveInto: "Save to {file}",
    saveNew: "Save as a new file",
    saveFailed: "The file could not be written. Save it as a new file.",
    saved: "Saved as {file}.",

    toDesk: "Add to the list",

    guide: "Drawing of a bike from the side. {how}",
    /** From where to where each measure goes. */
    how: {
      saddle_lowest:
        "Saddle all the way down. Measure straight up from the floor to the middle of the saddle’s top.",
      saddle_highest:
        "Post up to its minimum-insertion mark, never past it. Measure straight up from the floor to the middle of the saddle’s top.",
      standover: "From the floor to the top of the frame, where your child will stand over it.",
      bottom_bracket_height: "From the floor to the middle of the crank’s axle.",
      crank: "From the middle of the crank’s axle to the middle of the pedal’s axle.",
      lever_reach: "From the outside of the grip to the front of the lever, where the middle finger goes.",
    },
  },

  card: {
    open: "Card for the fridge",
    title: "Saddle card",
    withName: "Put the name on it",
    madeOn: "As of {day}",
    print: "Print the card",
    share: "Share as text",
    copy: "Copy as text",
    copied: "Copied. Paste it into a message.",
    copyThis: "Copy this text by hand:",
    calendar: "Save the dates for a calendar",
    date: "Measure again, then saddle of {bike} to about {height}",
    doubts: "Please check",
  },

  keep: {
    title: "Save and print",
    lead: "Nothing you type leaves this device unless you send it yourself.",
    device: "On this device",
    deviceSwitch: "Save on this device",
    deviceOff: "Off: everything is lost when you close this page.",
    deviceWhat:
      "Saves children, measurements, filters, measured bikes and open lists in this browser only. Anyone who uses it can see them. So can other pages of this website. If you turn it off, all of it is deleted here.",
    deviceBusy: "Saving…",
    deviceOn: "Saved as you type.",
    notHere:
      "This page is part of a website, so nothing is saved on this device: all is lost when you leave. Save it to a file to open it here again.",
    notFromFile:
      "You opened this page from a file, so nothing is saved on this device: other files opened in this browser could read and change it. Save it to a file to open it here again.",
    file: "In one file",
    fileWhy: "Children, filters, measured bikes and open lists. Open it here or on another device.",
    save: "Save everything to a file",
    open: "Open a saved file",
    saved: "Saved as {file}. Look in your downloads folder.",
    opened: "{file} is open. It replaced what was here.",
    undone: "Everything is back as it was.",
    leftOut: "Left out or cut short, as it cannot be read: {where}.",
    faults: {
      foreign: "“{file}” was not saved with this button. Open a list of bikes under “List”.",
      newer: "“{file}” was saved by a newer Saddlerule. Open it with that version.",
      damaged: "“{file}” is damaged{where? (at {where})|}, so nothing was loaded from it.",
    },
    stands: "Nothing here has changed.",
    paper: "On paper and by message",
    paperWhy:
      "Each bike has a card: saddle height, dates to move it, cautions. To print all bikes, use “Filter and sort”.",
    wipe: "Delete everything",
    wipeWhat: "This deletes: {what}. It cannot be undone.",
    wipes: {
      riders: "what you entered for {number#1 child|{number} children}",
      taped: "{number#1 measured bike|{number} measured bikes}",
      lists: "{number#1 open list (not its file)|{number} open lists (not their files)}",
      device: "what this browser has saved for Saddlerule",
    },
    wipeSure: "Yes, delete everything",
    wipeNot: "No, delete nothing",
    wiped: "Everything is deleted.",
    troubles: {
      missing: "This browser does not let pages save anything. Save everything to a file instead.",
      refused:
        "This browser lets the page save nothing. The window may be private, or the device full. Save to a file instead.",
      full: "This device is full, so your last changes are not saved. Save to a file instead.",
      damaged: "What was saved on this device cannot be read. It is left as it is, and nothing new is saved.",
      newer:
        "A newer Saddlerule saved something on this device. It is left as it is, and nothing new is saved.",
      elsewhere:
        "What is saved on this device differs from what you see: another tab or window may have changed it. Nothing more is saved until you choose.",
      gone: "Saving was turned off in another tab or window. Nothing is saved on this device now.",
      mended:
        "Some of what was saved on this device cannot be read. You see all the rest, and nothing new is saved until you choose.",
      left: "An older Saddlerule saved this in the browser, where other files can read and change it. Save everything to a file, then delete it from the browser.",
      held: "Another tab or window still uses what is saved here. Close it to delete all of it.",
    },
    toKeep: "Go to “Save and print”",
    stayHere: "Use what you see here",
    stayDevice: "Use what is saved on this device",
    deleteLeft: "The file is there: delete it from the browser",
  },

  cautions: {
    title: "Before the first ride",
    all: [
      "A good fit does not make a bike safe.",
      "Helmet on, every ride.",
      "Never pull the seat post up past its minimum-insertion mark (MIN or MAX). The mark must stay inside the frame.",
      "Bought second-hand or put together at home? Have a mechanic check it.",
      "Your child must be able to reach the brakes and stop the bike. If not, it is not the right bike yet.",
      "Local rules and the maker’s manual come first.",
    ],
  },

  /** Of the page as a site, which is kept for when there is no signal. */
  site: {
    title: "Using this page without a signal",
    kept: "Saved in this browser: it opens here with no signal.",
    keeping: "Getting ready to open with no signal…",
    notKept: "This browser does not save the page, so you need a signal to open it.",
    toHomeScreen: "Add it to the home screen",
    byShareMenu: "For the home screen of an iPhone or iPad: tap Share, then “Add to Home Screen”.",
    newVersion: "A new version is ready.",
    newVersionWhat: "What you have not saved will be lost.",
    openIt: "Open it",
    later: "Later",
  },

  club: {
    title: "Club day",
    lead: "Who rides which bike this morning? Names stay on this device.",
    open: "Club day: a bike for each child",
    noBikes: "Open a list of bikes first.",
    addRider: "Add a child",
    name: "Name or number",
    age: "Age in years (optional)",
    add: "Add, then the next",
    pasteTitle: "Paste or open a table",
    pasteWhy: "One row for each child, with headings such as name, inside leg, rides, age, weight.",
    paste: "Table",
    readTable: "Read the table",
    openTable: "Open a CSV file",
    saveTable: "Save the children as CSV",
    added: "{number} {number#child|children} read.",
    unknownColumns: "Not used: {names}.",
    undo: "Take the last step back",
    startAnew: "Undo all choices of pairs and bikes",
    clear: "Remove all children",
    seated: "{seated} of {riders} have a bike",
    rounds: "Groups that ride one after another",
    round: "group {round}",
    pairs: "Set the saddles",
    order: "Listed by",
    byRider: "Child",
    byBike: "Saddle",
    numbersOnly: "Numbers instead of names",
    print: "Print",
    setting: "Saddle at {height}{above?, {above} above its lowest|}",
    noSetting: "No saddle height fits",
    stageAssumed: "Way of riding not given: set as for a beginner",
    isSet: "Saddle of {bike} is set for {rider}",
    looks: "{number} to check",
    change: "Change",
    out: "Out riding",
    back: "Back again",
    isOut: "out riding",
    isKept: "fixed",
    keepPair: "Fix this pair",
    freePair: "Let this pair change",
    notThis: "Not this bike",
    broken: "Bike is broken",
    notHere: "Bike is not here",
    again: "Too low or too high? Measure again",
    leaves: "Child has left",
    left: "{number} without a bike, youngest first",
    toGet: "What to get",
    range: "Lowest at most {lowest}, highest at least {highest}",
    balance: "(balance bike)",
    wouldSeat: "{bikes} {bikes#bike|bikes} would seat {riders} of {all}",
    spare: "{number} {number#bike|bikes} to spare",
    wouldFit: "would fit {riders}",
    fitsNobody: "fits nobody here",
    away: "Not here",
    bikeIsBack: "{bike} is back",
    riderIsBack: "{rider} is back",
    board: "Children and bikes on one scale",
    boardSays: "Children on the left at their saddle height, bikes on the right, a line for each pair",
    questions: "Please check",
    caution:
      "A fit is no safety check. Try brakes, tyres and bolts, wear a helmet, and never pull a seat post up past its minimum-insertion mark.",
    because: {
      not_measured: "More to measure.",
      all_taken: "The bikes that fit are taken: {pairs}.",
      ruled_out: "You ruled out what would fit: {bikes}.",
      away: "What would fit is not here: {bikes}.",
      check_stops: "The saddle would fit, but a check says stop: {bikes}.",
      none_there: "No bike of this kind is here.",
      too_tall: "None fits. {bike} comes nearest, and is {miss} too high.",
      outgrown: "None fits. {bike} comes nearest, and is {miss} too small.",
      narrow: "None is sure to fit. Try {bike} with the child.",
    },
  },
  years: {
    title: "Years ahead",
    lead: "Which bike each child rides when, and what to buy, pass on and sell.",
    open: "Years ahead: plan the next bikes",
    left: "Not in the plan yet: {names}.",
    invent: "Try it with three made-up children",
    inventedChild: "Made-up child {number}",
    removeInvented: "Take the made-up children out",
    got: "{child} gets {bike}{price?: buy it for {price}|, which you have}.",
    handedOn: "{child} takes over {bike} from {other}.",
    gap: "{child} has no bike that fits{until?, until {until}|}.",
    money: "Money",
    sell: "Sell {bike}",
    net: "In all",
    insteadOf: "Instead of {bike} (about {price})",
    look: "{whom}: needed by {by}, good until {until}.",
    holds:
      "In {share} of families like yours, the plan holds to the end.{until? In 8 in 10, it holds until {until}.|}",
    again: "Measure again by {month}: the plan changes with the new numbers.",
    exact: "No plan with these bikes and limits is better.",
    better:
      "There may be a better plan: {months?{months} {months#month|months} fewer without a bike|{amount} cheaper} at most.",
    whatIf: "Change the plan",
    mostBikes: "Most bikes at a time",
    perYear: "Most money in a year",
    buyFrom: "Buy nothing before",
    yours: "Your own bikes",
    yoursWhy: "Without a price, a bike is planned only if you have it.",
    standings: { open: "Could be bought", owned: "You have it", keep: "Never sell it", not: "Leave it out" },
  },
  suits: {
    title: "Who each bike fits",
    lead: "The inside legs that each bike fits, measured in shoes.",
    show: "Show",
    views: { chart: "Chart", tags: "Tags", strip: "Wall strip" },
    ways: {
      gliding: "Pushes along",
      side_wheels: "Training wheels",
      starting: "New to riding",
      riding: "Rides well",
    },
    ends: "{low?{high?{low} to {high}|from {low}}|up to {high}}",
    age: "age {years}, roughly",
    rough: "Ages are rough and true of most children only. The inside leg decides.",
    any: "Some of them fit {legs}.",
    half: "At least half fit {legs}.",
    noWheel: "Wheel size not known",
    others: "{number} more {number#bike|bikes} not shown: for another way of riding, or not measured.",
    first: "Only the first {told} of {all} bikes.",
    saveTable: "Save as CSV",
    savePicture: "Save as SVG",
    paper: "Paper",
    size: "Size of a tag",
    tags: "{number} {number#tag|tags} on {sheets} {sheets#sheet|sheets}. Print, cut out, tie one to each bike.",
    codes: "The code on a tag opens this page at that bike.",
    codesAsText:
      "The code on a tag carries the bike as text: scan it, copy the text, and paste it under “Measure a bike”.",
    scan: "Scan: does it fit?",
    scanText: "Scan and copy",
    bikeAsText: "#{id}: {saddle}{wheel?, wheel {wheel}|}{kind?, {kind}|}",
    strip: "{sheets} {sheets#sheet|sheets} at true size. Print at 100%, then measure the check line first.",
    trial: "Print one sheet as a test",
    trialHow:
      "If this line is not that long, print at 100% with no scaling. Then hold the sheet against your labels.",
    check: "Check line: exactly {length}",
    how: "Cut along the dashed lines and join the sheets. The lowest edge goes on the floor. The child’s back is to the wall, with a book between the legs: look where its top edge is.",
    sheet: "Sheet {number} of {all}",
    full: "No room for {number} {number#bike|bikes}.",
    bike: "Bike {id}",
    noBike: "No bike in the open list has the tag “{id}”.",
    toBike: "See bike {id}",
  },
  problems: {
    wording: {
      ...sentences,
      slip_unit: "{value} looks like a mistake. Should it be {meant}?",
      slip_swapped: "Lowest {lowest} and highest {highest} look swapped.",
      slip_id_taken: "Two bikes have the tag “{id}”.",
      slip_span_narrow: "The saddle goes up by only {span}. Was one height read wrong?",
      slip_span_wide: "The saddle goes up by {span}, which is a lot. Was one height read wrong?",
      slip_unlike_others:
        "A lowest saddle height of {value} differs by {distance} from every other bike with {wheel} inch wheels. Measure it again?",
      figure_empty: "Please enter a number, such as 49.5 or 19 1/2.",
      figure_not_a_number: "“{text}” is not a number. Try one like 49.5 or 19 1/2.",
      figure_fraction_malformed: "The fraction in “{text}” cannot be read. Type it like 19 1/2.",
      figure_unit_unknown: "“{unit}” is not a known unit. Use cm or in.",
      figure_negative: "“{text}” is below zero.",
      figure_too_large: "“{text}” is far too large for a child or a bike.",
      reading_outside_plausible: "An inside leg of {inseam} seems wrong: {slip}. Please measure again.",
      readings_spread: "These measurements are {spread} apart. Please measure once more.",
      reading_below_earlier:
        "This is {difference} less than the one before, and legs do not shrink. Please measure again.",
      reading_grown_too_fast:
        "This is {difference} more than the one before: legs do not grow that fast. Please measure again.",
      bike_highest_below_lowest:
        "The highest saddle, {value}, is below the lowest, {lowest}. Were they swapped?",
      bike_figure_out_of_range: "{value} cannot be right here: it should be {low} to {high}.",
      rider_without_measure: "Enter the inside leg, the height or the month of birth to begin.",
      internal: "Something went wrong inside Saddlerule. Your numbers are fine; please try again.",
      file_not_given: "The device could not read this file. Choose it again.",
      address_gone:
        "There is nothing at this address any more (the server said {status}). The person who runs the page can fix it.",
      address_refused: "The server will not give out this list (it said {status}).",
      address_server: "The server of this list has a problem (it said {status}). Try again later.",
      address_slow: "The list did not arrive within {seconds} seconds. The connection or the server is slow.",
      address_no_signal: "The list could not be reached. Do you have a signal?",
      address_web_page:
        "A web page came instead of a list. Perhaps the address is that of a page that shows the list, or asks for a password first.",
      address_too_large: "This is more than {limit} MB, too much for a list of bikes.",
      address_not_allowed:
        "{host} does not share this list with other websites. For the person who runs it: the server has to answer with “Access-Control-Allow-Origin: {origin}”.",
      address_policy:
        "This page is not allowed to load anything from {host}. For the person who runs it: its Content-Security-Policy has to name {server} under connect-src.",
      inline_rewritten:
        "The editor of this website has changed the list, so it cannot be read. The person who runs the page can fix it.",
      address_offline:
        "This page never goes online, so it cannot load the list. Save the list to this device, and open it here.",
      request_field_missing: "The field “{field}” is missing.",
      request_field_wrong_type: "{found} does not belong here.",
      request_value_unknown: "“{value}” is not known here.{known? Known: {known}.|}",
      request_date_malformed: "“{value}” is not a date. Type it like 2026-10-03 or 2026-10.",
      bike_value_unknown: "{field}: “{value}” is not known here. Known: {known}.",
      reading_in_future: "The measurement is dated {date}, and today is {today}. It is taken as made today.",
      reading_before_birth: "The measurement is dated {date}, before the child was born.",
      rider_born_in_future: "The date of birth, {date}, is in the future. The age is taken as not known.",
      rider_under_one: "Your child is under 1. The growth numbers start at that age, and are rough under 2.",
      rider_over_eighteen: "Over 18: the legs are taken as fully grown.",
      rider_stature_doubtful:
        "A height of {stature} does not go with that age. Measure again, or check the month of birth.",
      message_heights_unclear: "The two saddle heights cannot be made out in this text. Please type them.",
      file_date_malformed: "“{value}” is not a date. Type it like 2026-10-03.",
      file_currency_malformed: "“{value}” is not a currency. Use its three letters, like EUR.",
      file_no_usable_bike: "No bike in the file can be used ({count} left out).",
      bike_without_name: "The bike needs a tag number (id) or a name.",
      bike_without_saddle:
        "The bike has neither its lowest nor its highest saddle height. It needs one of them.",
      list_field_unknown:
        "The field “{field}” is not known, so it is left as it is.{known? Did you mean “{known}”?|}",
    },
    /** What the engine tells by a word. */
    words: engineWords,
    inFile: "Line {line}, column {column}: {sentence}",
    inRow: "Row {row}{column?, {column}|}: {sentence}",
  },
} as const;
