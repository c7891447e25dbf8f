// Checks beyond the saddle in English, by code and figures. What is not here is said in the engine's own sentence.
import type { CheckFigures } from "../figures/check-figures";

type Wording = (figures: CheckFigures) => string;

export const checkWording: Partial<Record<string, Wording>> = {
  standover_clear: ({ value = "" }) => `Standing over the frame, there is ${value} of room.`,
  standover_tight: ({ value = "", limit = "" }) =>
    `Standing over the frame, there is only ${value} of room. ${limit} would be good.`,
  standover_too_high: ({ over = "" }) =>
    `The frame is ${over} too high to stand over it with both feet flat.`,

  bike_mass_easy: ({ bike = "", value = "" }) => `It weighs ${bike}, ${value} of what the rider weighs.`,
  bike_mass_noticeable: ({ bike = "", value = "" }) =>
    `It weighs ${bike}, ${value} of what the rider weighs: starting and steering take effort.`,
  bike_mass_heavy: ({ bike = "", value = "" }) =>
    `It weighs ${bike}, ${value} of what the rider weighs: hard to hold when it tips.`,

  rider_within_limit: ({ value = "", limit = "" }) =>
    `The maker allows a rider of ${limit}; yours weighs ${value}.`,
  rider_may_exceed_limit: ({ value = "", limit = "" }) =>
    `The maker allows a rider of ${limit}. Children of this age weigh about ${value}, and many weigh more.`,
  rider_over_limit: ({ value = "", limit = "" }) =>
    `The rider weighs ${value}, and the maker allows only ${limit}.`,

  leg_as_adults: ({ value = "" }) => `Pedal down, the knee stays bent by ${value}, as trained adults ride.`,
  leg_bent: ({ value = "" }) =>
    `Pedal down, the knee stays bent by ${value}, more than trained adults ride with. That is the price of feet on the floor.`,
  leg_nearly_straight: ({ value = "" }) =>
    `Pedal down, the knee is bent by only ${value}. Look whether the hips rock from side to side.`,
  leg_out_of_reach: () => "The pedal at its lowest seems out of reach for the leg. Try a lower saddle.",
  leg_cannot_fold: () => "With the pedal up there seems to be no room for the leg.",

  height_factor_within: ({ saddle_to_pedal = "" }) =>
    `From the saddle down to the pedal it is ${saddle_to_pedal}, no more than adults are set up with.`,
  height_factor_over: ({ saddle_to_pedal = "" }) =>
    `From the saddle down to the pedal it is ${saddle_to_pedal}, more than adults are set up with.`,

  crank_usual: ({ crank = "", value = "" }) => `The crank, ${crank}, is ${value} of the inside leg: usual.`,
  crank_short: ({ crank = "", value = "" }) =>
    `The crank, ${crank}, is ${value} of the inside leg: shorter than usual.`,
  crank_long: ({ crank = "", value = "" }) =>
    `The crank, ${crank}, is ${value} of the inside leg, longer than usual: the knees come up high.`,

  lever_near: ({ value = "" }) => `The brake lever is ${value} from the grip, near enough for small hands.`,
  lever_far: ({ value = "", limit = "" }) =>
    `The brake lever is ${value} from the grip, where ${limit} is the most for young children. Adjust it, or see whether the child can pull it.`,
  lever_beyond_every_rule: ({ value = "" }) =>
    `The brake lever is ${value} from the grip, farther than any rule allows: a child cannot pull it safely.`,

  brakes_two_systems: () => "Two brakes that work on their own, one of them in front.",
  brakes_two_hands_only: () =>
    "Two hand brakes. In the US a bike of this size needs a back-pedal brake as well.",
  brakes_no_front: () => "No brake in front. The international rule wants one in front and one behind.",
  brakes_coaster_only: () =>
    "Only a back-pedal brake. The international rule wants a second one in front; a US rule is content with it.",
  brakes_front_only: () => "Only a front brake. No rule is content with that.",
  brakes_none: () => "No brake at all, and it has pedals.",
  brakes_none_on_toy: () =>
    "No brake. By its saddle it is a ride-on toy, which needs none: keep it off slopes and roads.",

  class_toy: ({ value = "" }) =>
    `With its saddle at ${value} at most, it counts as a toy and is not made for traffic.`,
  class_young_children: () => "By its highest saddle it is made to the rules for young children.",
  class_at_both: ({ value = "" }) =>
    `Its highest saddle, ${value}, is where two rules meet: one for young children, one for grown hands. Look at the levers.`,
  class_young_adult: ({ value = "" }) =>
    `By its highest saddle, ${value}, it is made to a rule for grown hands. Look at the levers.`,
  class_full_size: ({ value = "" }) =>
    `By its highest saddle, ${value}, it is a full-size bicycle, made for grown hands. Look at the levers.`,

  post_below_top: ({ value = "" }) => `The saddle stands ${value} below its highest.`,
  post_near_top: ({ value = "" }) =>
    `The saddle stands only ${value} below its highest. The minimum-insertion mark must stay inside the frame.`,
  post_above_top: ({ over = "" }) =>
    `The saddle would stand ${over} above its highest, past the minimum-insertion mark.`,

  gears_single: ({ value = "", easy_speed = "", brisk_speed = "" }) =>
    `One turn of the pedals goes ${value}: about ${easy_speed} at ease, ${brisk_speed} when pedalling fast.`,
  gears_one_of_several: ({ value = "", easy_speed = "", brisk_speed = "" }) =>
    `In the gear that was counted, one turn of the pedals goes ${value}: about ${easy_speed} at ease, ${brisk_speed} when pedalling fast. It has others.`,

  hill_light: ({ slope = "" }) => `A gentle hill (${slope}) will feel light.`,
  hill_firm: ({ slope = "", value = "" }) =>
    `A gentle hill (${slope}) takes a firm push: ${value} of the rider’s weight.`,
  hill_heavy: ({ slope = "", value = "" }) =>
    `A gentle hill (${slope}) is heavy: a push of ${value} of the rider’s weight. Expect to walk it.`,
};

/** What each check is about. */
export const checkNames: Partial<Record<string, string>> = {
  standover: "Standing over it",
  bike_mass: "Weight of the bike",
  rider_mass_limit: "Weight of the rider",
  brake_kind: "Brakes",
  lever_reach: "Reach to the brake lever",
  top_of_post: "Seat post",
  saddle_class: "What it is made for",
  leg_extension: "Leg on the pedal",
  saddle_height_factor: "Saddle over pedal",
  crank: "Crank length",
  gears: "Gear",
  first_hill: "First hill",
};

/** Whose figures the limits of a check are, where they are no limits for a child. */
export const checkLimitNames: Partial<Record<string, string>> = {
  saddle_class: "Its class",
  leg_extension: "Trained adults",
  saddle_height_factor: "Adults",
};

/** What to measure, by its field. */
export const measureNames: Partial<Record<string, string>> = {
  saddle_lowest: "lowest saddle",
  saddle_highest: "highest saddle",
  standover: "top tube height",
  bottom_bracket_height: "bottom bracket height",
  seat_tube_angle_deg: "seat tube angle",
  crank: "crank length",
  lever_reach: "reach from grip to brake lever",
  brakes: "which brakes it has",
  wheel: "marking on the tyre",
  chainring: "teeth of the chainring",
  sprocket: "teeth of the sprocket",
  mass_kg: "weight of the bike",
  rider_mass_limit_kg: "weight of rider that the maker allows",
  "rider.mass_kg": "weight of your rider",
};
