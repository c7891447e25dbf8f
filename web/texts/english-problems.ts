// Problems and questions in English, by code and figures. What is not here is said in the engine's own sentence.

type Wording = (figures: Record<string, string>) => string;

export const problemWording: Partial<Record<string, Wording>> = {
  figure_empty: () => "Please type a figure, such as 49.5 or 19 1/2.",
  figure_not_a_number: ({ text = "" }) => `“${text}” is not a figure. Try one like 49.5 or 19 1/2.`,
  figure_fraction_malformed: ({ text = "" }) =>
    `The fraction in “${text}” cannot be read. Type it like 19 1/2.`,
  figure_unit_unknown: ({ unit = "" }) => `“${unit}” is not a unit known here. Use cm or in.`,
  figure_negative: ({ text = "" }) => `“${text}” is below zero.`,
  figure_too_large: ({ text = "" }) => `“${text}” is far too large for a child or a bike.`,
  reading_outside_plausible: ({ inseam = "", slip = "" }) =>
    `An inside leg of ${inseam} is hard to believe: ${slip}. Please measure again.`,
  readings_spread: ({ spread = "" }) => `These readings lie ${spread} apart. Please take one more.`,
  reading_below_earlier: ({ difference = "" }) =>
    `This is ${difference} less than the reading before it, and legs do not shrink. Please measure again.`,
  reading_grown_too_fast: ({ difference = "" }) =>
    `This is ${difference} more than the reading before it: legs do not grow that fast. Please measure again.`,
  bike_highest_below_lowest: ({ value = "", lowest = "" }) =>
    `Highest saddle: ${value} is below the lowest, ${lowest}. Were they swapped?`,
  bike_figure_out_of_range: ({ value = "", low = "", high = "" }) =>
    `${value} cannot be right here: between ${low} and ${high} was expected.`,
  rider_without_measure: () => "Type the inside leg, the height or the month of birth to begin.",
  internal: () => "Something went wrong inside Saddlerule. Your figures are fine; please try once more.",
  file_not_given: () => "The device could not read this file. Choose it once more.",
};
