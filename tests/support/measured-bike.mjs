// A made-up bike on which every figure was measured that a check looks at.

export const measuredBike = {
  wheel: "47-305",
  saddle_lowest: 47,
  saddle_highest: 61,
  standover: 41,
  mass_kg: 6.4,
  brakes: ["front hand", "coaster"],
  lever_reach: 5.5,
  gears: 1,
  chainring: 32,
  sprocket: 16,
  crank: 10.2,
  bottom_bracket_height: 21.5,
  seat_tube_angle_deg: 70,
};
