// Problems in words that parents read, where those of wasm-bindings/english.json are for people who write lists and requests; and
// problems that the page itself has. The build leaves those sentences out for which there is one here (building/scripts.mjs).
export const forParents = {
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
  bike_highest_below_lowest: "The highest saddle, {value}, is below the lowest, {lowest}. Were they swapped?",
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
  riders_name_twice: "“{id}” is in row {first} already.",
  json_not_json: "This is not JSON: it starts with {text}.",
  bike_field_without_name: "{value} is in a column without a name.",
  bike_figure_without_unit: "{field}: {value} has no unit, and the list gives none.",
  file_not_an_object: "The file has {found}, and no field called bikes.",
  request_not_utf8: "Byte {byte} of the request is not UTF-8.",
  request_field_unknown: "The field “{field}” is not known here.",
  request_field_twice: "The field “{field}” is given twice.",
  request_bike_unknown: "There is no bike “{id}” in the list.",
  request_given_twice: "“{value}” is given twice.",
  club_too_many_riders: "There are {count} children; a plan takes {limit}.",
  club_rider_twice: "The child “{id}” is here twice.",
  club_rider_unknown: "There is no child “{id}” here.",
  club_rider_locked_twice: "The child “{id}” is fixed to two bikes.",
  club_bike_locked_too_often:
    "Bike “{id}” is fixed to {count} children, and the number of rounds is {rounds}.",
  club_round_locked_twice: "Bike “{id}” is fixed to two children in round {round}.",
  club_pair_locked_and_not: "The child “{rider}” and bike “{bike}” are fixed, and ruled out as well.",
  club_bike_locked_and_absent: "Bike “{id}” is absent, and fixed to the child “{rider}”.",
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
  bike_without_saddle: "The bike has neither its lowest nor its highest saddle height. It needs one of them.",
  list_field_unknown:
    "The field “{field}” is not known, so it is left as it is.{known? Did you mean “{known}”?|}",
} as const;
