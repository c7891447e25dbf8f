// The engine's requests and answers, as they are on the wire.
//
// Written by web/building/interface-types.mjs from wasm-bindings/interface.schema.json: change that one.

/** A day, YYYY-MM-DD */
export type Day = string;

/** A month, YYYY-MM */
export type Month = string;

/** A day, YYYY-MM-DD, or a month, YYYY-MM, where the day is not known: the middle of it counts */
export type DayOrMonth = string;

/** The way of riding */
export type Stage = "gliding" | "side_wheels" | "starting" | "riding";

/** How sure a child on training wheels is: the surer, the higher the saddle may go */
export type Confidence = "wary" | "usual" | "bold";

/** The sex, for tables of growth */
export type Sex = "girl" | "boy";

/** Whose children the legs are guessed from where they were not measured */
export type Population = "us" | "gb" | "nl" | "any";

/** What a typed length without a unit counts in */
export type LengthUnit = "cm" | "in" | "mm";

/** What a typed weight without a unit counts in */
export type MassUnit = "kg" | "lb";

/** How a bike fits now */
export type Verdict = "fits_now" | "close_call" | "too_tall" | "outgrown" | "not_measured";

/** A bike with pedals, or one without */
export type BikeKind = "pedal" | "balance";

/** A brake, as lists name it */
export type Brake = "front hand" | "rear hand" | "coaster";

/** Where the inside leg comes from */
export type Basis = "measured" | "estimated_from_stature" | "estimated_from_age";

/** What bikes that fit are sorted by: the longest fit, cost a month, weight, or the lowest saddle nearest the target from below */
export type Order = "lasts" | "cost" | "light" | "closest";

/** The brakes that are wanted */
export type BrakeWish = "any" | "two_hand" | "coaster";

/** The gears that are wanted */
export type GearsWish = "any" | "single" | "several";

/** The kind of bike that is wanted */
export type KindWish = "any" | "pedal" | "balance";

/** A currency by its code of ISO 4217 */
export type Currency = string;

/** Which entries of a list are shown */
export type ListShow = "all" | "bikes" | "set_aside" | "slips";

/** What looks like a slip of the hand */
export type SlipCode =
  | "slip_unit"
  | "slip_swapped"
  | "slip_id_taken"
  | "slip_span_narrow"
  | "slip_span_wide"
  | "slip_unlike_others";

/** Every problem and question that the engine can name */
export type ProblemCode =
  | "internal"
  | "figure_empty"
  | "figure_not_a_number"
  | "figure_unit_unknown"
  | "figure_negative"
  | "figure_too_large"
  | "figure_fraction_malformed"
  | "request_not_utf8"
  | "request_field_unknown"
  | "request_field_missing"
  | "request_field_twice"
  | "request_field_wrong_type"
  | "request_value_unknown"
  | "request_value_out_of_range"
  | "request_date_malformed"
  | "request_bike_unknown"
  | "request_bike_kept_and_out"
  | "request_given_twice"
  | "rider_without_measure"
  | "reading_outside_plausible"
  | "readings_spread"
  | "reading_in_future"
  | "reading_old"
  | "reading_before_birth"
  | "reading_below_earlier"
  | "reading_grown_too_fast"
  | "rider_born_in_future"
  | "rider_under_one"
  | "rider_over_eighteen"
  | "rider_stature_doubtful"
  | "rider_stature_unlikely"
  | "club_too_many_riders"
  | "club_rider_twice"
  | "club_rider_unknown"
  | "club_rider_locked_twice"
  | "club_bike_locked_too_often"
  | "club_round_locked_twice"
  | "club_pair_locked_and_not"
  | "club_bike_locked_and_absent"
  | "riders_none"
  | "riders_row_of_totals"
  | "riders_name_twice"
  | "riders_word_unknown"
  | "riders_figure_out_of_range"
  | "riders_age_unreadable"
  | "riders_weight_unreadable"
  | "message_heights_unclear"
  | "file_empty"
  | "file_blank"
  | "file_too_large"
  | "file_is_spreadsheet"
  | "file_is_other"
  | "file_is_binary"
  | "file_encoding_not_read"
  | "file_not_utf8"
  | "file_utf16_broken"
  | "json_empty"
  | "json_not_json"
  | "json_cut_off"
  | "json_comma_missing"
  | "json_comma_extra"
  | "json_colon_missing"
  | "json_value_missing"
  | "json_bracket_mismatched"
  | "json_more_after_end"
  | "json_figure_malformed"
  | "json_figure_decimal_comma"
  | "json_figure_too_large"
  | "json_figure_not_finite"
  | "json_word_unknown"
  | "json_quotes_single"
  | "json_quotes_curly"
  | "json_name_without_quotes"
  | "json_comment"
  | "json_text_not_closed"
  | "json_quote_inside_text"
  | "json_text_control_character"
  | "json_escape_unknown"
  | "json_surrogate_alone"
  | "json_character_unexpected"
  | "json_too_deep"
  | "json_text_too_long"
  | "json_too_many_values"
  | "file_not_an_object"
  | "file_format_unknown"
  | "file_version_too_new"
  | "file_field_wrong_type"
  | "file_value_unknown"
  | "file_date_malformed"
  | "file_currency_malformed"
  | "file_field_twice"
  | "file_too_many_fields"
  | "file_without_bikes"
  | "file_bikes_empty"
  | "file_too_many_bikes"
  | "file_no_usable_bike"
  | "bike_not_a_group"
  | "bike_without_name"
  | "bike_without_saddle"
  | "bike_field_twice"
  | "bike_field_wrong_type"
  | "bike_value_unknown"
  | "bike_figure_out_of_range"
  | "bike_figure_not_whole"
  | "bike_figure_without_unit"
  | "bike_highest_below_lowest"
  | "bike_text_too_long"
  | "bike_too_many_fields"
  | "bike_id_taken"
  | "bike_id_given_twice"
  | "list_field_unknown"
  | "list_fields_unknown_more"
  | "list_price_without_currency"
  | "list_cell_not_read"
  | "table_quote_not_closed"
  | "table_without_header"
  | "table_column_twice"
  | "table_too_many_columns"
  | "table_without_units"
  | "table_cannot_hold"
  | "bike_figure_unreadable"
  | "bike_field_without_name"
  | "bike_id_taken_in_row"
  | "slip_unit"
  | "slip_swapped"
  | "slip_id_taken"
  | "slip_span_narrow"
  | "slip_span_wide"
  | "slip_unlike_others";

/** A check beyond the saddle */
export type CheckName =
  | "standover"
  | "bike_mass"
  | "rider_mass_limit"
  | "brake_kind"
  | "lever_reach"
  | "top_of_post"
  | "saddle_class"
  | "leg_extension"
  | "saddle_height_factor"
  | "crank"
  | "gears"
  | "first_hill";

/** What a check found: nothing to say, something to look at, a reason not to ride, or too few figures */
export type CheckState = "ok" | "look" | "stop" | "unknown";

/** Why a check came out as it did */
export type CheckCode =
  | "figure_missing"
  | "seat_tube_impossible"
  | "crank_reaches_floor"
  | "saddle_below_bottom_bracket"
  | "standover_clear"
  | "standover_tight"
  | "standover_unsettled"
  | "standover_too_high"
  | "bike_mass_easy"
  | "bike_mass_noticeable"
  | "bike_mass_heavy"
  | "rider_within_limit"
  | "rider_may_exceed_limit"
  | "rider_over_limit"
  | "leg_as_adults"
  | "leg_bent"
  | "leg_nearly_straight"
  | "leg_out_of_reach"
  | "leg_cannot_fold"
  | "height_factor_within"
  | "height_factor_over"
  | "height_factor_unsettled"
  | "crank_usual"
  | "crank_short"
  | "crank_long"
  | "crank_unsettled"
  | "lever_near"
  | "lever_far"
  | "lever_beyond_every_rule"
  | "brakes_two_systems"
  | "brakes_two_hands_only"
  | "brakes_no_front"
  | "brakes_coaster_only"
  | "brakes_front_only"
  | "brakes_rear_hand_only"
  | "brakes_none"
  | "brakes_none_on_toy"
  | "class_toy"
  | "class_young_children"
  | "class_at_both"
  | "class_young_adult"
  | "class_full_size"
  | "post_below_top"
  | "post_near_top"
  | "post_above_top"
  | "gears_single"
  | "gears_one_of_several"
  | "hill_light"
  | "hill_firm"
  | "hill_heavy";

/** A figure that is missing: a field of lists, or one of the rider */
export type Measure =
  | "saddle_lowest"
  | "saddle_highest"
  | "standover"
  | "bottom_bracket_height"
  | "seat_tube_angle_deg"
  | "crank"
  | "lever_reach"
  | "brakes"
  | "wheel"
  | "chainring"
  | "sprocket"
  | "mass_kg"
  | "rider_mass_limit_kg"
  | "rider.mass_kg";

/** A column of a table of riders */
export type RiderCell = "name" | "inseam" | "shoes" | "stage" | "age" | "born" | "weight" | "height";

/** Whether another bike that fits lasts as long, costs no more and weighs no more */
export type Standing = "unbeaten" | "beaten" | "beaten_as_far_as_known";

/** Why a bike is not what was asked for */
export type Unwanted =
  | "price_over"
  | "price_unknown"
  | "mass_over"
  | "mass_unknown"
  | "brakes"
  | "brakes_unknown"
  | "kind"
  | "not_available"
  | "wheel"
  | "colour"
  | "gears"
  | "gears_unknown";

/** How a foot meets the floor from the saddle */
export type Foot = "flat" | "ball" | "tiptoe" | "off_the_floor";

/** Why a rider has no bike */
export type LeftCode = "not_measured" | "all_taken" | "ruled_out" | "away" | "check_stops" | "none_fits";

/** One measurement of the inside leg: as a number of millimetres, or as people typed it */
export interface ReadingRequest {
  /** The day of measuring */
  on: Day;
  /** The inside leg, millimetres */
  inseam_mm?: number | null;
  /** Instead, as typed, such as 49.5 or 19 1/2 in */
  inseam?: string | null;
  /** What typed text without a unit counts in; centimetres where nothing is said */
  unit?: LengthUnit | null;
  /** Whether shoes were on; they were where nothing is said */
  shoes?: boolean | null;
}

/** What is known of a rider; at least a reading, a stature or a date of birth up to today */
export interface RiderFacts {
  /** Measurements, in any order */
  readings?: ReadingRequest[] | null;
  /** The date of birth */
  born?: DayOrMonth | null;
  /** Girl or boy */
  sex?: Sex | null;
  /** Whose children the legs are guessed from; any where nothing is said */
  population?: Population | null;
  /** The height of the body, millimetres */
  stature_mm?: number | null;
  /** Instead, as typed, such as 110 or 3 ft 7 */
  stature?: string | null;
  /** What a typed height without a unit counts in; centimetres where nothing is said */
  stature_unit?: LengthUnit | null;
  /** The weight, kilograms */
  mass_kg?: number | null;
  /** Instead, as typed, such as 40 lb */
  mass?: string | null;
  /** What a typed weight without a unit counts in; kilograms where nothing is said */
  mass_unit?: MassUnit | null;
  /** The way of riding today */
  stage?: Stage | null;
  /** How sure a child on training wheels is; usual where nothing is said */
  confidence?: Confidence | null;
  /** The day on which the stage moves on */
  riding_from?: DayOrMonth | null;
  /** The thickness of the soles, millimetres */
  sole_mm?: number | null;
  /** How far soles differ, as a standard deviation, millimetres */
  sole_sd_mm?: number | null;
  /** How far one reading may be off, as a standard deviation, millimetres */
  reading_sd_mm?: number | null;
}

/** A rider to judge */
export interface RiderRequest extends RiderFacts {
  /** The way of riding today */
  stage: Stage;
}

/** A rider of a club: starting where no stage is said, and left over where nothing tells the size */
export type ClubRiderFacts = RiderFacts;

/** What a bike should be like */
export interface WantsRequest {
  /** The budget, in the list's currency */
  max_price?: number | null;
  /** The greatest weight, kilograms */
  max_mass_kg?: number | null;
  /** Instead, as typed, such as 18 lb */
  max_mass?: string | null;
  /** What a typed weight without a unit counts in; kilograms where nothing is said */
  max_mass_unit?: MassUnit | null;
  /** Brakes; any where nothing is said */
  brakes?: BrakeWish | null;
  /** Kind of bike; any where nothing is said */
  kind?: KindWish | null;
  /** Gears; any where nothing is said */
  gears?: GearsWish | null;
  /** Without those that the list says are not available */
  available_only?: boolean | null;
  /** The nominal wheel size, inches */
  wheel?: number | null;
  /** The colour, in whatever case */
  colour?: string | null;
  /** Rough ground: more room above the top tube */
  off_road?: boolean | null;
  /** What to sort by; lasts where nothing is said */
  order?: Order | null;
}

/** A bike that somebody measured, in the form of a list's entry; one at fault is set aside in the answer */
export interface TapedBike {
  /** A short mark of its own, as on the bike's tag; no two bikes of a list have the same */
  id?: string | number | null;
  /** What people call the bike; stands in for the id where there is none */
  name?: string | null;
  /** pedal where nothing is said */
  kind?: "pedal" | "balance" | null;
  /** The marking on the tyre (ISO 5775, width and bead seat diameter in mm) or the nominal size in inches, with the tyre's width (16 x 1.75) or without; 700C too */
  wheel?: string | 10 | 12 | 14 | 16 | 18 | 20 | 24 | 26 | 27.5 | 28 | 29 | null;
  /** Floor to the top of the saddle, saddle all the way down */
  saddle_lowest?: number | string | null;
  /** Floor to the top of the saddle, post up to its minimum-insertion mark; never below saddle_lowest */
  saddle_highest?: number | string | null;
  /** Floor to the top tube where a rider stands over it */
  standover?: number | string | null;
  /** The weight of the bike in kilograms, or with its unit, such as "14 lb" */
  mass_kg?: number | string | null;
  /** The heaviest rider that its maker allows, in kilograms, or with its unit, such as "60 lb" */
  rider_mass_limit_kg?: number | string | null;
  /** An empty list for none */
  brakes?: ("front hand" | "rear hand" | "coaster")[] | null;
  /** Outside of the grip to the brake lever */
  lever_reach?: number | string | null;
  /** How many; 1 for a single speed */
  gears?: number | null;
  /** Teeth in front; the smallest of several */
  chainring?: number | null;
  /** Teeth behind; the largest of several */
  sprocket?: number | null;
  /** Middle of the crank's axle to middle of the pedal's */
  crank?: number | string | null;
  /** Floor to the middle of the crank's axle */
  bottom_bracket_height?: number | string | null;
  /** Between the seat tube and the floor, in degrees */
  seat_tube_angle_deg?: number | null;
  /** In the list's currency; without one it is left open */
  price?: number | null;
  colours?: string[] | null;
  /** New, used, needs a tyre */
  condition?: string | null;
  /** true when it can be had today */
  available?: boolean | null;
  /** Whatever else somebody should know */
  notes?: string | null;
}

/** Which rows to tell about */
export interface RowsRequest {
  /** The first place, from 0 */
  from?: number | null;
  /** How many rows */
  count: number;
}

/** What bikes are judged for */
export interface JudgingRequest {
  /** The day to judge on; the engine has no clock */
  today: Day;
  /** Who is to ride */
  rider: RiderRequest;
  /** What a bike should be like */
  wants?: WantsRequest | null;
  /** The share of its price that a bike brings when it is sold on */
  resale_share?: number | null;
  /** Bikes beside the list */
  taped?: TapedBike[] | null;
  /** What bare lengths of taped bikes count in; centimetres where nothing is said */
  taped_units?: LengthUnit | null;
}

/** The part of a list that an answer tells about; without rows, all of every bike is told */
export interface ListWindow {
  /** Which of the entries that are let through */
  rows?: RowsRequest | null;
  /** Which entries are let through; all where nothing is said */
  show?: ListShow | null;
  /** Only entries that this text occurs in, in whatever case */
  find?: string | null;
}

/** How the file beside the request is read */
export interface FileReading {
  /** UTF-8 and UTF-16 need no word */
  encoding?: "windows-1252" | null;
  /** What bare lengths of a table count in where it names no unit */
  table_units?: LengthUnit | null;
  /** What the columns of a table hold where its headings do not say it: fields of a bike, each with its column's place from 1, or null for none */
  columns?: Record<string, number | null> | null;
  /** A list is opened though nothing in it can be used */
  to_mend?: boolean | null;
}

/** What is seen of a table where a needed column (id or name, lowest, highest saddle) is not understood and another may have it */
export interface TableSketch {
  /** The row of the headings */
  heading_row: number;
  /** Its columns, in their order */
  columns: {
    /** As the table has it */
    heading: string;
    /** The field that it is taken for */
    field: string | null;
    /** What is in the first rows below, with commas between */
    values: string;
  }[];
}

/** What a list says of itself; null or an empty text takes a field out */
export interface ListHead {
  /** What the list is called */
  title?: string | null;
  /** The day of measuring */
  measured_on?: string | null;
  /** What bare lengths count in */
  units?: "mm" | "cm" | "in" | "" | null;
  /** The currency of the prices */
  currency?: string | null;
}

/** Fields of an entry by name, as people type them; an empty text or null takes a field out */
export type Cells = Record<string, string | null>;

/** What a list is to say of itself; null or an empty text takes a field out. What cannot be read is kept and noted: an undo may bring it back */
export interface ChangedHead {
  /** What the list is called */
  title?: unknown;
  /** The day of measuring, YYYY-MM-DD */
  measured_on?: unknown;
  /** What bare lengths count in */
  units?: "mm" | "cm" | "in" | "" | null;
  /** The currency of the prices, a code of ISO 4217 */
  currency?: unknown;
}

/** One step of an edit */
export type EntryChange =
  | {
      /** The new cells */
      set: Cells;
      /** The entry's place, from 1 */
      number: number;
    }
  | {
      /** Its cells */
      add: Cells;
      /** The place it gets, from 1; the end where nothing is said */
      before?: number | null;
    }
  | {
      /** The entry's place, from 1 */
      copy: number;
    }
  | {
      /** The entry's place, from 1 */
      remove: number;
    }
  | {
      /** The entry as JSON text */
      put: string;
      /** The place, from 1 */
      number: number;
      /** Which entry of the file it was */
      origin?: number | null;
    }
  | {
      /** The entry as JSON text */
      insert: string;
      /** The place it gets, from 1; the end where nothing is said */
      before?: number | null;
      /** Which entry of the file it was */
      origin?: number | null;
    }
  | {
      /** The fields to change */
      list: ChangedHead;
    }
  | {
      /** The kind */
      repair_all: SlipCode;
    };

/** A row of a table of riders, as people type it */
export interface RiderCells {
  /** Name or number */
  name?: string | null;
  /** Inside leg */
  inseam?: string | null;
  /** Whether shoes were on */
  shoes?: string | null;
  /** Way of riding */
  stage?: string | null;
  /** Age, years */
  age?: string | null;
  /** Date of birth */
  born?: string | null;
  /** Weight */
  weight?: string | null;
  /** Height of the body */
  height?: string | null;
}

/** A rider of a club's morning */
export interface ClubRiderRequest {
  /** A name or number of the rider's own */
  id: string;
  /** What is known of the rider */
  rider?: ClubRiderFacts | null;
}

/** A rider and a bike */
export interface ClubPairRequest {
  /** The rider's id */
  rider: string;
  /** The bike's id */
  bike: string;
  /** The round, from 1; any where nothing is said */
  round?: number | null;
}

/** A child of a family */
export interface FamilyRiderRequest {
  /** A name or number of the child's own */
  id: string;
  /** What is known of the child */
  rider: RiderRequest;
  /** When a child who glides gets pedals */
  pedals_from?: DayOrMonth | null;
}

/** Opens the file whose bytes come beside the request; one that is refused leaves the list as it was */
export interface LoadRequest extends ListWindow, FileReading {
  /** The task */
  do: "load";
}

/** Begins an empty list */
export interface NewListRequest extends ListHead, ListWindow {
  /** The task */
  do: "new_list";
}

/** Tells about the list */
export interface ListRequest extends ListWindow {
  /** The task */
  do: "list";
}

/** Tells all about one entry, by its number or by its id */
export interface EntryRequest {
  /** The task */
  do: "entry";
  /** The entry's place, from 1 */
  number?: number | null;
  /** Instead: its id */
  id?: string | null;
  /** Whether an id for one more bike is wanted */
  next_id?: boolean | null;
}

/** Judges cells before they are in the list; nothing is changed */
export interface CheckEntryRequest {
  /** The task */
  do: "check_entry";
  /** The cells that are given or changed */
  cells: Cells;
  /** The entry that they would change, from 1; a new one where nothing is said */
  number?: number | null;
}

/** Makes all changes, or none */
export interface EditRequest extends ListWindow {
  /** The task */
  do: "edit";
  /** The steps, in their order */
  changes: EntryChange[];
}

/** Compares the list with the file beside the request */
export interface CompareRequest extends FileReading {
  /** The task */
  do: "compare";
}

/** Takes the file beside the request into the list */
export interface MergeRequest extends FileReading, ListWindow {
  /** The task */
  do: "merge";
  /** Of each conflict by its id, which to keep; here where nothing is said. newer: the one measured later, or here where nobody knows; of the older one stay a name, notes and fields of the list's own which it lacks. fill: here, with the fields which it lacks */
  take?: Record<string, "here" | "there" | "both" | "newer" | "fill" | null> | null;
  /** Whether bikes that only the file has come in; they do where nothing is said */
  add?: boolean | null;
}

/** Gives the list as the text of a file */
export interface SaveRequest {
  /** The task */
  do: "save";
  /** The form */
  form: "json" | "csv";
  /** Between the cells of a table; a comma where nothing is said */
  separator?: "," | ";" | "tab" | null;
  /** The decimal mark of a table; a point where nothing is said */
  decimal?: "." | "," | null;
  /** Only entries that cannot be used */
  only?: "set_aside" | null;
}

/** Judges every bike for one rider */
export interface AssessRequest extends JudgingRequest {
  /** The task */
  do: "assess";
  /** How much is said of each bike; full where nothing is said */
  detail?: "full" | "brief" | "spans" | null;
  /** The ids of the bikes to tell about; all are weighed against each other */
  only?: string[] | null;
  /** Which places of the order to tell about */
  rows?: RowsRequest | null;
}

/** Asks for the smallest changes that put another bike first */
export interface ChangesRequest extends JudgingRequest {
  /** The task */
  do: "changes";
}

/** Asks for the inside leg in the months ahead */
export interface ForecastRequest {
  /** The task */
  do: "forecast";
  /** The day to count from */
  today: Day;
  /** Whose leg */
  rider: RiderRequest;
  /** How many months ahead */
  months: number;
  /** The id of a bike: then each month has the chance that it fits */
  bike?: string | null;
  /** Whether to answer with the readings among those of other children */
  centiles?: boolean | null;
  /** Bikes beside the list */
  taped?: TapedBike[] | null;
  /** What bare lengths of taped bikes count in; centimetres where nothing is said */
  taped_units?: LengthUnit | null;
}

/** Asks for the points that a drawing of rider and bike needs */
export interface SideViewRequest {
  /** The task */
  do: "side_view";
  /** The day to judge on */
  today: Day;
  /** Who is to ride */
  rider: RiderRequest;
  /** The bike's id */
  bike: string;
  /** Bikes beside the list */
  taped?: TapedBike[] | null;
  /** What bare lengths of taped bikes count in; centimetres where nothing is said */
  taped_units?: LengthUnit | null;
}

/** Reads what a message says of one bike */
export interface ReadBikeRequest {
  /** The task */
  do: "read_bike";
  /** The message, in English, German, French, Spanish or Dutch */
  text: string;
  /** What bare lengths count in; centimetres where nothing is said */
  units?: LengthUnit | null;
}

/** Reads a table of riders */
export interface ReadRidersRequest {
  /** The task */
  do: "read_riders";
  /** The day that readings and ages count from */
  today: Day;
  /** The table: cells separated by tabs, semicolons or commas */
  text: string;
  /** What bare lengths count in; centimetres where nothing is said */
  units?: LengthUnit | null;
}

/** Writes a table of riders that reads as the same */
export interface WriteRidersRequest {
  /** The task */
  do: "write_riders";
  /** The rows */
  riders: RiderCells[];
}

/** Asks who rides which bike on a club's morning */
export interface ClubDayRequest {
  /** The task */
  do: "club_day";
  /** The day to judge on */
  today: Day;
  /** The riders */
  riders: ClubRiderRequest[];
  /** How often bikes change hands; 1 where nothing is said */
  rounds?: number | null;
  /** Rough ground: more room above the top tube */
  off_road?: boolean | null;
  /** Without bikes that the list says are not available */
  available_only?: boolean | null;
  /** The ids of bikes that are not there */
  absent?: string[] | null;
  /** Pairs that are settled */
  locked?: ClubPairRequest[] | null;
  /** Pairs that must not be */
  not?: ClubPairRequest[] | null;
  /** Pairs of last time, kept where that costs nobody a bike */
  before?: ClubPairRequest[] | null;
}

/** Asks for the inside legs that each bike and each wheel size fits */
export interface SuitsRequest {
  /** The task */
  do: "suits";
  /** Which places of the order to tell about */
  rows?: RowsRequest | null;
  /** The ids of the bikes to tell about */
  only?: string[] | null;
  /** How far a reading may be off, as a standard deviation, millimetres */
  reading_sd_mm?: number | null;
  /** csv: all of it as one table */
  form?: "json" | "csv" | null;
}

/** Asks for a plan of bikes for a family's years ahead */
export interface YearsRequest {
  /** The task */
  do: "years_ahead";
  /** The day to plan from */
  today: Day;
  /** The children */
  riders: FamilyRiderRequest[];
  /** How many months to plan; 72 where nothing is said */
  horizon_months?: number | null;
  /** The ids of bikes that the family has */
  owned?: string[] | null;
  /** The ids of bikes that it does not sell */
  keep?: string[] | null;
  /** The ids of bikes that it does not want */
  not?: string[] | null;
  /** Prices by the ids of bikes, in the plan's currency */
  prices?: Record<string, number | null> | null;
  /** What the plan counts in; the list's where nothing is said */
  currency?: Currency | null;
  /** Bikes beside the list */
  taped?: TapedBike[] | null;
  /** What bare lengths of taped bikes count in; centimetres where nothing is said */
  taped_units?: LengthUnit | null;
  /** The share of its price that a bike brings when it is sold on */
  resale_share?: number | null;
  /** The least chance that a bike fits in each month; 0.8 where nothing is said */
  min_probability?: number | null;
  /** The most to spend in a calendar year, in the plan's currency */
  max_per_year?: number | null;
  /** The most bikes to have at a time */
  max_bikes?: number | null;
  /** Nothing is bought before */
  buy_from?: DayOrMonth | null;
  /** The time after which the best plan so far is given, milliseconds */
  limit_ms?: number | null;
  /** Marks of bikes that are not here are passed over */
  skip_unknown?: boolean | null;
}

/** Asks what the engine is and judges with */
export interface AboutRequest {
  /** The task */
  do: "about";
}

/** A problem or a question: a stable code, where it is, and the figures of this case */
export interface NoteFields {
  /** The stable code */
  code: ProblemCode;
  /** The field it is about, as a path; empty for the whole */
  where: string;
  /** The line in the text that was read, from 1 */
  line?: number;
  /** The character in that line, from 1 */
  column?: number;
  /** The row of the table, as a spreadsheet counts, from 1 */
  row?: number;
  /** The column as its heading has it; empty for the whole row */
  column_name?: string;
  /** What is wrong, as an English sentence; ask.mjs adds it */
  problem?: string;
  /** What would be right, in English; empty where the sentence says it all; ask.mjs adds it */
  expected?: string;
  /** The parts of the sentence by name */
  figures: Record<string, ProblemFigure>;
}

/** A part of what a problem says: a quote as a text, a count as a number (null: too large), and all else as an object */
export type ProblemFigure =
  | string
  | number
  | null
  | {
      /** A number as somebody wrote it */
      text: string;
      /** What it counts in */
      unit: FigureUnit;
    }
  | {
      /** How many; null where that is too large to be told */
      value: number | null;
      /** The unit that it is told in */
      unit: FigureUnit;
    }
  | {
      /** What a file has or a field should hold, and the like */
      word: ProblemWord;
    }
  | {
      /** A day */
      date: Day;
    }
  | {
      /** Names of fields or values */
      names: string[];
      /** all: there are no others; either: one of them and not the other; guess: perhaps it was meant */
      are: "all" | "either" | "guess";
    }
  | {
      /** The cause, a problem of its own */
      problem: Note;
    };

/** What figures of problems count in */
export type FigureUnit = "mm" | "cm" | "m" | "in" | "ft" | "kg" | "degrees" | "riders" | "kept_bikes";

/** Every word that a problem can have among its figures */
export type ProblemWord =
  | "a_number"
  | "a_text"
  | "a_list"
  | "a_group_of_fields"
  | "an_empty_cell"
  | "a_bike_without_fields"
  | "a_field_twice"
  | "too_many_columns"
  | "a_byte_not_utf_8"
  | "a_nul_character"
  | "a_pdf"
  | "a_png"
  | "a_jpeg"
  | "a_gif"
  | "a_webp"
  | "a_picture_or_film"
  | "a_gzip"
  | "a_7z"
  | "a_rar"
  | "an_xls"
  | "a_sqlite"
  | "an_rtf"
  | "an_xlsx"
  | "an_ods"
  | "a_locked_spreadsheet"
  | "a_text_document"
  | "a_zip"
  | "markup"
  | "utf_32"
  | "utf_16_without_mark"
  | "utf_8_cut_off"
  | "windows_1252"
  | "windows_1252_or_latin_1"
  | "a_value"
  | "a_name_in_quotes"
  | "a_comma_or_bracket"
  | "utf_8"
  | "plain_text"
  | "text_in_quotes"
  | "text_or_whole_number"
  | "length_or_text"
  | "number_without_quotes"
  | "yes_or_no"
  | "wheel_text"
  | "brakes_list"
  | "texts_list"
  | "tyre_marking"
  | "bikes_list"
  | "list_units"
  | "the_number_1"
  | "mm_as_cm"
  | "cm_as_mm"
  | "cm_as_inches"
  | "inches_as_cm"
  | "shoes_off"
  | "shoes_on"
  | "trouser_seam"
  | "digits_swapped"
  | "misread"
  | "length_example"
  | "mass_example"
  | "length_units"
  | "mass_units"
  | "group_in_braces"
  | "text_in_double_quotes"
  | "list_of_texts"
  | "list_of_riders"
  | "list_of_pairs"
  | "list_of_bikes"
  | "list_of_readings"
  | "list_of_changes"
  | "some_changes"
  | "cells_in_braces"
  | "cell_or_null"
  | "cells_of_entry"
  | "true_or_false"
  | "number_of_millimetres"
  | "number_of_rows"
  | "number_of_entry"
  | "number_or_id"
  | "whole_months"
  | "id_of_rider"
  | "id_of_bike"
  | "own_name"
  | "day"
  | "day_form"
  | "day_or_month_form"
  | "stages"
  | "json_or_csv"
  | "message"
  | "rider_table"
  | "currency_codes"
  | "other_requests"
  | "first_change_only"
  | "the_number"
  | "none_in_empty_list";

/** A problem or a question */
export type Note = NoteFields;

/** An entry that cannot be used, and why */
export interface SetAside extends NoteFields {
  /** The entry's place, from 1 */
  number: number;
  /** Its id as far as it could be read */
  id: string | null;
  /** Its name as far as it could be read */
  name: string | null;
  /** The entry as JSON text */
  source: string;
}

/** An entry that a table cannot hold, and why */
export interface LeftOutEntry extends NoteFields {
  /** The entry's place, from 1 */
  number: number;
  /** Its id as far as it could be read */
  id: string | null;
  /** Its name as far as it could be read */
  name: string | null;
}

/** The change that would mend a slip */
export interface Repair {
  /** The new cells */
  set: Record<string, string>;
  /** The entry's place, from 1; 0 for one that is not in the list */
  number: number;
}

/** What looks like a slip of the hand */
export interface Slip extends NoteFields {
  /** The kind */
  code: SlipCode;
  /** The entry's place, from 1; 0 for one that is not in the list */
  number: number;
  /** The edit that would mend it; none where only a tape measure can tell */
  changes: Repair[];
}

/** A wheel */
export interface Wheel {
  /** As the list has it */
  text: string;
  /** The nominal size, inches */
  nominal_in: number | null;
  /** The diameter of the bead seat, millimetres */
  bead_seat_mm: number | null;
  /** The width of the tyre, millimetres */
  tyre_mm: number | null;
}

/** What the list says of a bike */
export interface BikeFacts {
  /** Its id, or its name where it has none */
  id: string;
  /** What people call it; empty where it has no name */
  name: string;
  /** With pedals or without */
  kind: BikeKind;
  /** The wheel */
  wheel: Wheel | null;
  /** Floor to the top of the saddle at its lowest, millimetres */
  saddle_lowest_mm: number | null;
  /** Floor to the top of the saddle at its highest, millimetres */
  saddle_highest_mm: number | null;
  /** Floor to the top tube where a rider stands over it, millimetres */
  standover_mm: number | null;
  /** Outside of the grip to the brake lever, millimetres */
  lever_reach_mm: number | null;
  /** Middle of the crank's axle to the middle of the pedal's, millimetres */
  crank_mm: number | null;
  /** Floor to the middle of the crank's axle, millimetres */
  bottom_bracket_height_mm: number | null;
  /** Between the seat tube and the floor, degrees */
  seat_tube_angle_deg: number | null;
  /** The weight, kilograms */
  mass_kg: number | null;
  /** The heaviest rider that its maker allows, kilograms */
  rider_mass_limit_kg: number | null;
  /** The brakes fitted; none where the list is empty */
  brakes: Brake[] | null;
  /** How many gears; 1 for a single speed */
  gears: number | null;
  /** Teeth on the front chainring; the smallest of several */
  chainring: number | null;
  /** Teeth on the rear sprocket; the largest of several */
  sprocket: number | null;
  /** The price, in units of its currency */
  price: number | null;
  /** The price's currency */
  currency: Currency | null;
  /** Its colours */
  colours: string[];
  /** New, used and the like */
  condition: string | null;
  /** Whether it is there today */
  available: boolean | null;
  /** Anything else worth knowing */
  notes: string | null;
}

/** What a list says of itself */
export interface ListFacts {
  /** What it is called */
  title: string | null;
  /** The day of measuring */
  measured_on: Day | null;
  /** What bare lengths count in */
  units: LengthUnit | null;
  /** The currency of its prices */
  currency: Currency | null;
  /** How many bikes can be used */
  bikes: number;
  /** How many entries it has, usable or not */
  entries: number;
  /** The form it was read from */
  form: "json" | "table";
}

/** How many entries */
export interface ListCounts {
  /** All entries */
  entries: number;
  /** Those that can be used */
  bikes: number;
  /** Those that cannot */
  set_aside: number;
  /** Those with a likely slip */
  slips: number;
  /** Those that show and find let through */
  shown: number;
}

/** What there is to choose from */
export interface ListOffers {
  /** Wheel sizes, the smallest first */
  wheels: {
    /** The nominal size, inches */
    nominal_in: number;
    /** How many bikes have it */
    count: number;
  }[];
  /** Colours, the most frequent first */
  colours: {
    /** The colour */
    colour: string;
    /** How many bikes have it */
    count: number;
  }[];
}

/** From a lowest to a highest saddle */
export interface HeightSpan {
  /** Floor to the top of the saddle at its lowest, millimetres */
  lowest: number | null;
  /** Floor to the top of the saddle at its highest, millimetres */
  highest: number | null;
}

/** An entry in a row */
export interface ListedEntry {
  /** The entry's place, from 1 */
  number: number;
  /** Its id as far as it could be read */
  id: string | null;
  /** Its name as far as it could be read */
  name: string | null;
  /** With pedals or without */
  kind: BikeKind | null;
  /** The wheel */
  wheel: Wheel | null;
  /** Floor to the top of the saddle at its lowest, millimetres */
  saddle_lowest_mm: number | null;
  /** Floor to the top of the saddle at its highest, millimetres */
  saddle_highest_mm: number | null;
  /** The price, in units of its currency */
  price: number | null;
  /** The price's currency */
  currency: Currency | null;
  /** The weight, kilograms */
  mass_kg: number | null;
  /** Why it cannot be used */
  problem: Note | null;
  /** The cell that has to be typed anew; null where the fault is in no cell alone */
  to_mend: {
    /** Its field */
    field: string;
    /** What it says, as people type it */
    text: string;
  } | null;
  /** What looks like a slip */
  slips: Slip[];
}

/** The list that was opened */
export interface LoadAnswer {
  /** What it says of itself */
  list: ListFacts;
  /** What cannot be used */
  set_aside: SetAside[];
  /** Questions about it */
  notes: Note[];
  /** In a table whose columns need a word */
  table?: TableSketch;
}

/** The list, with the facts of every bike */
export interface ListAnswer {
  /** What it says of itself; null while there is none */
  list: ListFacts | null;
  /** How many entries */
  counts: {
    /** All entries */
    entries: number;
    /** Those that can be used */
    bikes: number;
    /** Those that cannot */
    set_aside: number;
    /** Those with a likely slip */
    slips: number;
  };
  /** What there is to choose from */
  offers: ListOffers;
  /** The bikes that can be used */
  bikes: BikeFacts[];
  /** What cannot be used */
  set_aside: SetAside[];
  /** Questions about it */
  notes: Note[];
}

/** Rows of the list, and what is true of all of it */
export interface ListRows {
  /** What it says of itself; null while there is none */
  list: ListFacts | null;
  /** How many entries */
  counts: ListCounts;
  /** What there is to choose from */
  offers: ListOffers;
  /** From the lowest saddle of all to the highest */
  heights_mm: HeightSpan;
  /** Questions about the list */
  notes: Note[];
  /** The kinds of slips that there are */
  slip_kinds: {
    /** The kind */
    code: SlipCode;
    /** How many entries have it */
    count: number;
  }[];
  /** The rows that were asked for */
  entries: ListedEntry[];
}

/** Rows of the list, and what is true of all of it */
export interface ListRowsAnswer extends ListRows {
  /** In a table that was just opened and whose columns need a word */
  table?: TableSketch;
}

/** The list after an edit */
export interface EditAnswer extends ListRows {
  /** The changes that bring it back exactly */
  undo: EntryChange[];
}

/** All about one entry */
export interface EntryAnswer {
  /** The entry's place, from 1 */
  number: number;
  /** Its id as far as it could be read */
  id: string | null;
  /** Its name as far as it could be read */
  name: string | null;
  /** Its fields as people type them */
  cells: Record<string, string>;
  /** The bike; null where it cannot be used */
  bike: BikeFacts | null;
  /** Why it cannot be used */
  problem: Note | null;
  /** What looks like a slip */
  slips: Slip[];
  /** The entry as JSON text */
  source: string;
  /** Where that was wanted: an id for one more bike, counted on from this one's; null where that ends in no number */
  next_id?: string | null;
}

/** What cells would make of an entry */
export interface CheckEntryAnswer {
  /** The bike; null where it cannot be used */
  bike: BikeFacts | null;
  /** Why it cannot be used */
  problem: Note | null;
  /** What looks like a slip */
  slips: Slip[];
}

/** The same bike with other figures in either list */
export interface Conflict {
  /** Its id */
  id: string;
  /** As the list has it */
  here: {
    /** The entry's place there, from 1 */
    number: number;
    /** The day of measuring, its own or else its list's */
    measured_on: Day | null;
    /** Its fields as people type them */
    cells: Record<string, string>;
  };
  /** As the file has it, in the list's units */
  there: {
    /** The entry's place there, from 1 */
    number: number;
    /** The day of measuring, its own or else its list's */
    measured_on: Day | null;
    /** Its fields as people type them */
    cells: Record<string, string>;
  };
  /** The fields that differ */
  differs: string[];
  /** Which was measured later; null where a day is missing or both are the same */
  newer: "here" | "there" | null;
  /** The fields that the list's entry lacks and would get from the file's */
  fills: string[];
}

/** The list beside a file */
export interface CompareAnswer {
  /** What the file says of itself */
  there: {
    /** What it is called */
    title: string | null;
    /** What its bare lengths count in */
    units: LengthUnit;
    /** The currency of its prices */
    currency: Currency | null;
    /** How many entries it has */
    entries: number;
  };
  /** How many entries are the same in both */
  same: number;
  /** How many the file lacks */
  only_here: number;
  /** Those that the list lacks */
  only_there: {
    /** The entry's place, from 1 */
    number: number;
    /** Its id as far as it could be read */
    id: string | null;
    /** Its name as far as it could be read */
    name: string | null;
  }[];
  /** Those that differ */
  conflicts: Conflict[];
  /** How many entries of the file cannot be used */
  set_aside: number;
}

/** The list as the text of a file */
export interface SaveAnswer {
  /** The file's text */
  text: string;
  /** How many entries it holds */
  entries: number;
  /** What a table cannot hold */
  left_out: LeftOutEntry[];
}

/** The saddle heights that suit, floor to the top of the saddle */
export interface SaddleWindow {
  /** The lowest, millimetres */
  low: number;
  /** The best, millimetres */
  target: number;
  /** The highest, millimetres */
  high: number;
}

/** Where 8 children in 10 like this one are, floor to the top of the saddle */
export interface LikelyHeights {
  /** The lower end, millimetres */
  low: number;
  /** The upper end, millimetres */
  high: number;
}

/** The inside leg in shoes */
export interface Inseam {
  /** The mean, millimetres */
  mean: number;
  /** Its standard deviation, millimetres */
  sd: number;
}

/** A day of the forecast; null beyond its horizon */
export interface DateRange {
  /** In 1 case of 10 it is earlier */
  p10: Day | null;
  /** In 5 cases of 10 it is earlier */
  p50: Day | null;
  /** In 9 cases of 10 it is earlier */
  p90: Day | null;
}

/** How long a bike fits, without its pauses */
export interface MonthsOfFit {
  /** The mean, months */
  mean: number;
  /** In 1 case of 10 it is less, months */
  p10: number;
  /** In 5 cases of 10 it is less, months */
  p50: number;
  /** In 9 cases of 10 it is less, months */
  p90: number;
}

/** A wheel size that suits */
export interface WheelSize {
  /** The nominal size, inches */
  nominal_in: number;
  /** The open list, or what is usual */
  from: "list" | "common_practice";
  /** How many bikes of the list have it; null by common practice */
  bikes: number | null;
  /** How many of them fit now */
  fit_now: number | null;
  /** How many of them are close calls */
  close_calls: number | null;
  /** Why it is named */
  reason: "only_one" | "most_fit" | "largest_that_suits" | "also";
  /** The same as an English sentence; ask.mjs adds it */
  why?: string;
}

/** What a check beyond the saddle found. The figure and its limits have their unit at the end of their names: value_mm, limit_low_ratio */
export interface Check {
  /** The check */
  what: CheckName;
  /** What it found */
  state: CheckState;
  /** What it rests on beside measured figures */
  basis: "measured" | "estimated_rider_mass" | "estimated_stature" | "estimated_inseam";
  /** Why */
  code: CheckCode;
  /** The same as an English sentence; ask.mjs adds it */
  why?: string;
  /** Where its limits come from */
  source: string;
  /** Further figures, with their unit at the end of their names */
  figures: Record<string, number>;
  /** The figures that are missing */
  to_measure: Measure[];
  /** The figure that was judged */
  [name: `value_${string}`]: number;
  /** What it was held against: the one limit, or the two ends */
  [name: `limit_${string}`]: number;
}

/** A step of the saddle */
export interface Raise {
  /** When; tell readers the month */
  on: Day;
  /** Floor to the top of the saddle, millimetres */
  saddle_mm: number;
  /** Only once the rider has come to that stage */
  stage?: "starting" | "riding";
}

/** A time between the first fit and the last in which a bike does not fit */
export interface Pause {
  /** The first day on which it does not */
  from: Day;
  /** The first day on which it does again, or is outgrown */
  to: Day;
  /** Why it does not */
  code: "too_tall" | "outgrown";
}

/** Why a bike is worth a look */
export interface Worth {
  /** The reason */
  code: "lasts_longest" | "cheapest" | "lightest" | "balance" | "nothing_to_compare";
  /** The same as an English sentence; ask.mjs adds it */
  why?: string;
}

/** A bike among those that fit, by length of use, price and weight at once */
export interface StandingAnswer {
  /** Whether another beats it */
  code: Standing;
  /** What it is best at */
  worth: Worth[];
  /** The id of one that does */
  beaten_by?: string;
  /** Its name */
  beaten_by_name?: string;
}

/** Why a bike is not the one to try first */
export interface NotOffered {
  /** The reason */
  code:
    | "not_wanted"
    | "wrong_stage"
    | "too_tall"
    | "outgrown"
    | "not_measured"
    | "check_stops"
    | "not_available"
    | "close_call"
    | "beaten"
    | "behind_in_order";
  /** The same as an English sentence; ask.mjs adds it */
  why?: string;
}

/** A bike and how it fits */
export interface JudgedBike {
  /** Its id */
  id: string;
  /** What people call it; empty where it has no name */
  name: string;
  /** Whether it came with the request */
  taped: boolean;
  /** Of a taped bike: figures that look like a slip */
  notes?: Note[];
  /** With pedals or without */
  kind: BikeKind;
  /** A balance bike is nothing for a rider who pedals, nor the other way round */
  suits_stage: boolean;
  /** The nominal wheel size, inches */
  wheel_nominal_in: number | null;
  /** How low and how high the saddle goes */
  span_mm: HeightSpan;
  /** The price, in units of its currency */
  price: number | null;
  /** The price's currency */
  currency: Currency | null;
  /** The weight, kilograms */
  mass_kg: number | null;
  /** How it fits now */
  verdict: Verdict;
  /** The chance that it fits now */
  fits_probability: number | null;
  /** How far within the window the better end of its span is; below zero outside, millimetres */
  margin_mm: number | null;
  /** The best setting, floor to the top of the saddle, millimetres */
  saddle_mm: number | null;
  /** How far that is above the lowest, millimetres */
  above_lowest_mm: number | null;
  /** How far that is below the highest, millimetres */
  below_highest_mm: number | null;
  /** Of a rider whom nobody measured: where the best setting is */
  saddle_likely_mm?: LikelyHeights;
  /** Which ends of the span are missing */
  to_measure: ("saddle_lowest" | "saddle_highest")[];
  /** The first day on which it is low enough */
  fits_from: DateRange | null;
  /** The day after the last on which it is high enough */
  outgrown: DateRange | null;
  /** The times in between in which it does not fit */
  pauses: Pause[];
  /** How long it fits */
  months_of_fit: MonthsOfFit | null;
  /** What a month of fit costs, in units of its currency */
  cost_per_month: number | null;
  /** From short use to long use */
  cost_per_month_range?: {
    /** The least, in units of its currency */
    low: number;
    /** The most, in units of its currency; null where it may not fit at all */
    high: number | null;
  };
  /** Why there is no cost */
  cost_gap?: "no_price" | "no_forecast" | "fits_too_briefly" | "resale_share_out_of_range";
  /** Among the bikes that fit */
  standing: StandingAnswer | null;
  /** Why it is not the one to try first; null for that one */
  not_offered: NotOffered | null;
  /** How many checks say stop */
  stops: number;
  /** How many checks say look */
  looks: number;
  /** In full detail: the steps of the saddle ahead */
  raise?: Raise[];
  /** In full detail: every check that applies */
  checks?: Check[];
}

/** Where a bike's saddle goes, and when that fits */
export interface BikeSpan {
  /** How low and how high the saddle goes */
  span_mm: HeightSpan;
  /** From which month from today and before which it fits, more likely than not, up to 96; none for a bike for another way of riding, null where an end of its span is unknown */
  fits_months: number[][] | null;
}

/** The rider as judged */
export interface JudgedRider {
  /** The inside leg today */
  inseam_mm: Inseam;
  /** Where it comes from */
  basis: Basis;
  /** Whose children it would be guessed from */
  population: Population;
  /** The way of riding */
  stage: Stage;
  /** The saddle heights that suit */
  window_mm: SaddleWindow;
  /** The window with the doubt about the leg in it */
  window_likely_mm: LikelyHeights;
  /** Wheel sizes that suit, the best first */
  wheel_sizes: WheelSize[];
  /** Questions about the figures */
  notes: Note[];
  /** The weight that stands in for one that was not given, kilograms */
  assumed_mass_kg: number | null;
}

/** Bikes that follow each other in the order */
export interface BikeGroup {
  /** Their verdict */
  verdict: Verdict;
  /** Whether they suit the stage */
  suits_stage: boolean;
  /** How many */
  bikes: number;
}

/** A round limit, and how many bikes are within it */
export interface LimitCount {
  /** The limit */
  limit: number;
  /** Bikes within it */
  bikes: number;
}

/** For each value of each wish, how many bikes would be left if it were chosen: beside the other wishes, instead of what is chosen in the same one */
export interface FilterCounts {
  /** The budget */
  max_price: {
    /** Bikes left without this wish */
    any: number;
    /** Round limits among the list's prices, the lowest first */
    limits: LimitCount[];
  };
  /** The greatest weight */
  max_mass: {
    /** Bikes left without this wish */
    any: number;
    /** Round limits in kilograms, the lowest first */
    limits_kg: LimitCount[];
    /** The same in pounds */
    limits_lb: LimitCount[];
  };
  /** Brakes */
  brakes: {
    /** Bikes left without this wish */
    any: number;
    /** Bikes left with two hand brakes */
    two_hand: number;
    /** Bikes left with a coaster brake */
    coaster: number;
  };
  /** Kind of bike */
  kind: {
    /** Bikes left without this wish */
    any: number;
    /** Bikes left with pedals */
    pedal: number;
    /** Balance bikes left */
    balance: number;
  };
  /** Gears */
  gears: {
    /** Bikes left without this wish */
    any: number;
    /** Bikes left with a single speed */
    single: number;
    /** Bikes left with gears */
    several: number;
  };
  /** Available bikes */
  available_only: {
    /** Bikes left without this wish */
    any: number;
    /** Bikes left that are available */
    available: number;
  };
  /** Wheel sizes of the list, and the one that is wanted */
  wheel: {
    /** Bikes left without this wish */
    any: number;
    /** The smallest first */
    sizes: {
      /** The nominal size, inches */
      nominal_in: number;
      /** Bikes left with it */
      bikes: number;
    }[];
  };
  /** Colours of the list, and the one that is wanted */
  colour: {
    /** Bikes left without this wish */
    any: number;
    /** The most frequent first */
    colours: {
      /** The colour, as it is wanted or as the first bike has it */
      colour: string;
      /** Bikes left with it */
      bikes: number;
    }[];
    /** Rarer colours that are not among them */
    more_colours: number;
  };
}

/** What is true of all bikes */
export interface Assessment {
  /** The rider as judged */
  rider: JudgedRider;
  /** How many bikes have each verdict */
  counts: {
    /** Bikes that fit now */
    fits_now: number;
    /** Bikes too close to call */
    close_call: number;
    /** Bikes that do not go low enough yet */
    too_tall: number;
    /** Bikes that do not go high enough any more */
    outgrown: number;
    /** Bikes whose deciding end was not measured */
    not_measured: number;
  };
  /** All bikes in their order, by verdict and stage */
  groups: BikeGroup[];
  /** From the lowest saddle of all to the highest */
  heights_mm: HeightSpan;
  /** Bikes that are not what was asked for; only counted beside rows */
  left_out?: {
    /** The bike's id */
    id: string;
    /** Its name */
    name: string;
    /** Every reason */
    because: Unwanted[];
  }[];
  /** The same, counted */
  left_out_counts: {
    /** How many bikes are left out */
    bikes: number;
    /** For how many each reason holds */
    because: Partial<Record<Unwanted, number>>;
  };
  /** How many bikes each wish would leave */
  filter_counts: FilterCounts;
  /** What cannot be used: of the list, then of the taped bikes; beside rows only these */
  set_aside: SetAside[];
}

/** Every bike for one rider, best first */
export interface AssessAnswer extends Assessment {
  /** The bikes that were asked about */
  bikes: JudgedBike[];
}

/** The same, of each bike only where its saddle goes and when that fits */
export interface SpansAnswer extends Assessment {
  /** The bikes that were asked about */
  bikes: BikeSpan[];
}

/** A bike by name */
export interface NamedBike {
  /** Its id */
  id: string;
  /** What people call it */
  name: string;
}

/** The smallest change of one thing that puts another bike first */
export type AnswerChange =
  | {
      /** What changes */
      kind: "longer_reading" | "shorter_reading";
      /** How much longer the inside leg would be; below zero shorter, millimetres */
      reading_shift_mm: number;
      /** The bike that would be first then */
      first: NamedBike | null;
    }
  | {
      /** What changes */
      kind: "next_stage";
      /** The stage that would come next */
      stage: Stage;
      /** The bike that would be first then */
      first: NamedBike | null;
    }
  | {
      /** What changes */
      kind: "higher_budget" | "lower_budget";
      /** The budget that it takes, in the list's currency */
      budget: number;
      /** The bike that would be first then */
      first: NamedBike | null;
    };

/** What would change the answer */
export interface ChangesAnswer {
  /** The bike that is first */
  first: NamedBike | null;
  /** What puts another first */
  changes: AnswerChange[];
}

/** A height with its doubt */
export interface HeightRange {
  /** In 1 case of 10 it is less, millimetres */
  p10: number;
  /** In 5 cases of 10 it is less, millimetres */
  p50: number;
  /** In 9 cases of 10 it is less, millimetres */
  p90: number;
}

/** The inside leg in shoes on a day */
export interface ForecastMonth {
  /** The day */
  on: Day;
  /** In 1 case of 10 it is less, millimetres */
  p10: number;
  /** In 5 cases of 10 it is less, millimetres */
  p50: number;
  /** In 9 cases of 10 it is less, millimetres */
  p90: number;
  /** The mean, millimetres */
  mean: number;
  /** Its standard deviation, millimetres */
  sd: number;
  /** The chance that the bike fits; null where an end of its span is unknown */
  fits_probability?: number | null;
}

/** The saddle heights that will suit on a day; the day on which a stage begins is there with either stage */
export interface WindowAhead {
  /** The day */
  on: Day;
  /** The lowest that suits */
  low: HeightRange;
  /** The best */
  target: HeightRange;
  /** The highest that suits */
  high: HeightRange;
}

/** All readings of one day as one, in shoes */
export interface DayReading {
  /** The day */
  on: Day;
  /** The inside leg, millimetres */
  inseam_mm: number;
  /** Its standard deviation, millimetres */
  sd_mm: number;
  /** How many readings */
  count: number;
}

/** A stage, and where its saddle goes above the inside leg in shoes */
export interface StageWindow {
  /** Its first day */
  from: Day;
  /** The way of riding */
  stage: Stage;
  /** The lowest, millimetres */
  low_mm: number;
  /** The best, millimetres */
  target_mm: number;
  /** The highest, millimetres */
  high_mm: number;
}

/** The inside leg in the months ahead */
export interface ForecastAnswer {
  /** A month after today, and so on */
  months: ForecastMonth[];
  /** Today */
  today: ForecastMonth;
  /** The saddle heights that suit, today and each month */
  windows: WindowAhead[];
  /** Where the inside leg comes from */
  basis: Basis;
  /** Whose children it would be guessed from */
  population: Population;
  /** Tables of growth are rough under 2 */
  less_certain_for_young_child: boolean;
  /** What was measured */
  readings: DayReading[];
  /** The ways of riding ahead */
  stages: StageWindow[];
  /** The readings among those of other children; null where nobody asked for it, and where the age or every reading is unknown */
  centiles: Centiles | null;
}

/** Inside legs in shoes by age: of a population's children of the rider's sex, and the rider's own */
export interface Centiles {
  /** The share of children that each line leaves below it, 0 to 1, rising */
  shares: number[];
  /** Every quarter of a year, from before the first reading to beyond today */
  rows: CentileRow[];
  /** What was measured, oldest first */
  readings: CentileReading[];
}

/** The inside legs of children of one age */
export interface CentileRow {
  /** The age, years */
  age_years: number;
  /** One for each share */
  inseams_mm: number[];
}

/** A day's reading among those of children of its age */
export interface CentileReading {
  /** The day */
  on: Day;
  /** The age on it, years */
  age_years: number;
  /** The inside leg in shoes */
  inseam_mm: number;
  /** The share of children of that age with shorter legs, 0 to 1 */
  share_shorter: number;
}

/** A point of the drawing */
export interface Point {
  /** Forward from the rear axle, millimetres */
  x: number;
  /** Up from the floor, millimetres */
  y: number;
}

/** A wheel of the drawing */
export interface WheelDrawing {
  /** Forward from the rear axle, millimetres */
  x: number;
  /** Up from the floor, millimetres */
  y: number;
  /** With its tyre, millimetres */
  radius: number;
  /** The radius of the rim, millimetres */
  rim: number;
}

/** The leg at one place of the crank */
export interface LegPose {
  /** The turn of the crank, degrees; 0 with the pedal at its highest */
  crank_deg: number;
  /** The hip */
  hip: Point;
  /** The knee */
  knee: Point;
  /** The ankle */
  ankle: Point;
  /** The pedal */
  pedal: Point;
  /** How far the knee is bent, degrees */
  knee_flexion_deg: number;
}

/** The leg over one turn of the crank, with an adult's proportions */
export interface LegTurn {
  /** Place after place */
  poses: LegPose[];
  /** The least bend of the knee, degrees */
  least_flexion_deg: number;
  /** The greatest, degrees */
  greatest_flexion_deg: number;
  /** Whether the height of the body is a guess */
  stature_assumed: boolean;
}

/** Why the leg cannot follow the pedal */
export interface LegBlocked {
  /** What is in the way */
  obstacle:
    | "figure_impossible"
    | "crank_reaches_floor"
    | "saddle_below_bottom_bracket"
    | "pedal_out_of_reach"
    | "leg_cannot_fold";
}

/** A bike seen from its right side */
export interface SideViewAnswer {
  /** The rear wheel */
  rear_wheel: WheelDrawing;
  /** The front wheel */
  front_wheel: WheelDrawing;
  /** The crank's axle */
  bottom_bracket: Point;
  /** The crank, millimetres */
  crank_mm: number;
  /** The seat tube */
  seat_tube: {
    /** One end */
    bottom: Point;
    /** The other end */
    top: Point;
  };
  /** The middle of the saddle's top */
  saddle: {
    /** At its lowest */
    lowest: Point | null;
    /** At its highest */
    highest: Point | null;
    /** Where it goes for this rider */
    setting: Point | null;
  };
  /** The head tube */
  head: {
    /** One end */
    bottom: Point;
    /** The other end */
    top: Point;
  };
  /** The grip */
  grip: Point;
  /** The top tube */
  top_tube: {
    /** One end */
    rear: Point;
    /** The other end */
    front: Point;
  };
  /** The inside leg in shoes, millimetres */
  inseam_mm: number;
  /** The saddle heights that suit */
  window_mm: SaddleWindow;
  /** How a foot meets the floor; null without a setting */
  foot: Foot | null;
  /** The leg on the pedal; null where there is no crank or no setting */
  leg: LegTurn | LegBlocked | null;
  /** The fields of the bike that were assumed for the drawing */
  assumed: string[];
}

/** A rider in the form in which requests take one */
export interface ReadRider {
  /** Measurements */
  readings: {
    /** The day of measuring */
    on: Day;
    /** The inside leg, millimetres */
    inseam_mm: number;
    /** Whether shoes were on */
    shoes: boolean;
  }[];
  /** The date of birth */
  born: Day | null;
  /** The height of the body, millimetres */
  stature_mm: number | null;
  /** The weight, kilograms */
  mass_kg: number | null;
  /** The way of riding */
  stage: Stage | null;
}

/** A row of a table of riders */
export interface TableRow {
  /** As a spreadsheet counts, from 1 */
  row: number;
  /** The name or number; that of the row where there is none */
  id: string;
  /** Whether anything tells the size */
  measured: boolean;
  /** What its cells hold */
  cells: {
    /** Name or number */
    name: string;
    /** Inside leg */
    inseam: string;
    /** Whether shoes were on */
    shoes: string;
    /** Way of riding */
    stage: string;
    /** Age */
    age: string;
    /** Date of birth */
    born: string;
    /** Weight */
    weight: string;
    /** Height of the body */
    height: string;
  };
  /** What was read */
  rider: ReadRider;
  /** Cells that could not be read, and questions */
  problems: Note[];
}

/** What a message says of one bike */
export interface ReadBikeAnswer {
  /** Each as people type it into a cell; empty where the message does not say it */
  cells: {
    /** What is between # and a colon */
    id: string;
    /** The word balance where a word for such a bike is in the message */
    kind: string;
    /** The figure beside a word for wheel or tyre */
    wheel: string;
    /** The lowest saddle height, with its unit */
    saddle_lowest: string;
    /** The highest saddle height, with its unit */
    saddle_highest: string;
    /** The figure beside a currency */
    price: string;
  };
}

/** The riders of a table */
export interface ReadRidersAnswer {
  /** The riders */
  riders: TableRow[];
  /** Rows that are no riders */
  set_aside: Note[];
  /** The columns that were found */
  columns: RiderCell[];
  /** Headings that say nothing known here */
  unknown_columns: string[];
  /** The row of the headings; null where there are none */
  heading_row: number | null;
}

/** A table as the text of a file */
export interface TextAnswer {
  /** The file's text */
  text: string;
}

/** A rider on a bike */
export interface ClubPair {
  /** The rider's id */
  rider: string;
  /** The bike's id */
  bike: string;
  /** The round, from 1 */
  round: number;
  /** Whether the request settled it */
  locked: boolean;
  /** How it fits now */
  verdict: Verdict;
  /** The chance that it fits now */
  fits_probability: number | null;
  /** How far within the window the better end of its span is; below zero outside, millimetres */
  margin_mm: number | null;
  /** The best setting, floor to the top of the saddle, millimetres */
  saddle_mm: number | null;
  /** How far that is above the lowest, millimetres */
  above_lowest_mm: number | null;
  /** How far that is below the highest, millimetres */
  below_highest_mm: number | null;
  /** How many checks say stop */
  stops: number;
  /** How many checks say look */
  looks: number;
}

/** A rider without a bike */
export interface LeftRider {
  /** The rider's id */
  rider: string;
  /** Why */
  code: LeftCode;
  /** Bikes that would fit */
  bikes?: {
    /** The bike's id */
    bike: string;
    /** The ids of those who ride it */
    by: string[];
  }[];
  /** Where none fits: the id of the one that comes nearest */
  nearest?: string | null;
  /** How far it misses, millimetres */
  by_mm?: number | null;
  /** How it misses */
  verdict?: Verdict | null;
  /** The ids of bikes that may fit once measured */
  to_measure?: string[];
}

/** A bike that would seat riders who have none */
export interface BikeToGet {
  /** With pedals or without */
  kind: BikeKind;
  /** How low its saddle has to go, millimetres */
  lowest_at_most_mm: number;
  /** How high its saddle has to go, millimetres */
  highest_at_least_mm: number;
  /** The ids of the riders */
  seats: string[];
  /** How many such bikes */
  bikes: number;
}

/** A rider as judged */
export interface ClubRiderToday {
  /** The rider's id */
  id: string;
  /** Whether anything tells the size; only then the rest */
  measured: boolean;
  /** The inside leg today */
  inseam_mm?: Inseam;
  /** Where it comes from */
  basis?: Basis;
  /** The way of riding */
  stage?: Stage;
  /** Whether nobody said it */
  stage_assumed?: boolean;
  /** The saddle heights that suit */
  window_mm?: SaddleWindow;
  /** Questions about the figures */
  notes?: Note[];
}

/** A bike that the answer names */
export interface ClubBike {
  /** Its id */
  id: string;
  /** What people call it */
  name: string;
  /** With pedals or without */
  kind: BikeKind;
  /** The nominal wheel size, inches */
  wheel_nominal_in: number | null;
  /** How low and how high the saddle goes */
  span_mm: HeightSpan;
}

/** Who rides which bike */
export interface ClubDayAnswer {
  /** Riders on bikes */
  pairs: ClubPair[];
  /** Riders without one, the youngest first */
  left: LeftRider[];
  /** The ids of bikes that nobody rides */
  spare: string[];
  /** Whom spare bikes would fit */
  would_fit: {
    /** The spare bike's id */
    bike: string;
    /** The ids of riders whom it fits */
    riders: string[];
  }[];
  /** Bikes to get for those without one */
  to_get: BikeToGet[];
  /** The riders as judged */
  riders: ClubRiderToday[];
  /** The bikes that the answer names */
  bikes: ClubBike[];
  /** How many */
  counts: {
    /** All riders */
    riders: number;
    /** Pairs of riders and bikes */
    seated: number;
    /** Riders without a bike */
    left: number;
    /** Bikes of the list */
    bikes: number;
    /** Bikes that are not there */
    absent: number;
    /** Bikes that nobody rides */
    spare: number;
  };
}

/** From and to; null where an end is not known */
export type Ends = [number | null, number | null];

/** The inside legs that a bike fits */
export interface SuitedLegs {
  /** From and to, in shoes, millimetres; null where an end was not measured */
  inseam_mm: Ends;
  /** Where an end is null: the legs that fit for sure, millimetres */
  surely_mm?: Ends;
  /** The ages of middle children with such legs, years */
  typical_years: Ends | null;
}

/** A bike and whom it suits */
export interface SuitsBike {
  /** Its id */
  id: string;
  /** What people call it */
  name: string;
  /** With pedals or without */
  kind: BikeKind;
  /** The nominal wheel size, inches */
  wheel_nominal_in: number | null;
  /** How low and how high the saddle goes */
  span_mm: HeightSpan;
  /** The inside legs, by way of riding */
  stages: Partial<Record<Stage, SuitedLegs>>;
}

/** The inside legs that bikes fit together */
export interface SharedLegs {
  /** From and to, in shoes, millimetres */
  inseam_mm: [number, number];
  /** Between them, where fewer bikes fit, millimetres */
  gaps_mm: [number, number][];
  /** The ages of middle children with such legs, years */
  typical_years: Ends | null;
}

/** The bikes of a wheel size in one way of riding */
export interface SuitsWheelStage {
  /** Bikes made for it */
  bikes: number;
  /** Those with both ends measured; only they count */
  measured: number;
  /** Where at least one fits */
  any: SharedLegs | null;
  /** Where at least half of them fit */
  half: SharedLegs | null;
}

/** A wheel size and whom it suits */
export interface SuitsWheel {
  /** The nominal size, inches */
  nominal_in: number;
  /** By way of riding */
  stages: Partial<Record<Stage, SuitsWheelStage>>;
}

/** Whom the bikes suit */
export interface SuitsAnswer {
  /** The bikes that were asked about, by wheel size and lowest saddle */
  bikes: SuitsBike[];
  /** All wheel sizes */
  wheels: SuitsWheel[];
  /** How many bikes the list has */
  count: number;
}

/** What a bike has to be like to serve from one month to another */
export interface LookFor {
  /** How low its saddle has to go, millimetres */
  lowest_at_most_mm: number;
  /** How high its saddle has to go, millimetres */
  highest_at_least_mm: number;
  /** When it is needed */
  by: Month;
  /** The month after the last */
  until: Month;
  /** With pedals or without */
  kind: BikeKind;
}

/** A child on a bike */
export interface YearsStretch {
  /** The first month */
  from: Month;
  /** The month after the last */
  to: Month;
  /** The bike's id */
  bike: string;
  /** Where the bike comes from */
  how: "bought" | "owned" | "handed_on";
  /** The id of the child who had it */
  handed_from: string | null;
  /** The setting at the start and at the end, floor to the top of the saddle, millimetres */
  saddle_mm: [number, number];
  /** The least chance that it fits, of all months */
  least_probability: number;
  /** Checks that say look, or lack a figure */
  checks: Check[];
}

/** A time without a bike */
export interface YearsGap {
  /** The first month */
  from: Month;
  /** The month after the last */
  to: Month;
  /** A bike that would close it */
  look_for: LookFor;
  /** Where one cannot: those after it */
  then: LookFor[];
}

/** A child's years */
export interface YearsChild {
  /** The child's id */
  id: string;
  /** On bikes */
  stretches: YearsStretch[];
  /** Without one */
  gaps: YearsGap[];
  /** The time before any bike here could fit */
  not_yet: YearsGap | null;
  /** The child's share of the cost, in the plan's currency */
  net: number;
  /** The same for each month on a bike */
  net_a_month: number | null;
}

/** A plan of bikes */
export interface YearsAnswer {
  /** Child by child */
  riders: YearsChild[];
  /** What to buy */
  purchases: {
    /** The bike's id */
    bike: string;
    /** When */
    on: Month;
    /** Its price, in the plan's currency */
    price: number;
    /** What another would have to be like */
    look_for: LookFor;
  }[];
  /** What to sell */
  sales: {
    /** The bike's id */
    bike: string;
    /** When */
    on: Month;
    /** What it brings, in the plan's currency */
    back: number;
    /** Whether that is the end of the plan */
    at_the_end: boolean;
  }[];
  /** What it costs */
  cost: {
    /** What is spent less what comes back, in units of the currency */
    net: number;
    /** What the plan counts in; null where nothing has a price */
    currency: Currency | null;
  };
  /** Months without a bike, of all children */
  gap_months: number;
  /** Months on a bike, of all children */
  months_with_bike: number;
  /** How often a child changes bikes */
  changes: number;
  /** The sum of the chances that a bike fits, over all months */
  chance_months: number;
  /** How good it is */
  proof: {
    /** Whether no plan is better */
    exact: boolean;
    /** No plan has fewer months without a bike */
    least_gap_months: number;
    /** No plan with so few costs less, in the plan's currency */
    least_net: number;
  };
  /** How long it holds */
  doubt: {
    /** The first month in which it may well not hold; null where it holds to the end */
    holds_until: Month | null;
    /** How often it holds before that, as a share */
    share: number;
    /** Year by year */
    by_year: {
      /** The month */
      month: Month;
      /** How often it holds until then, as a share */
      share: number;
    }[];
    /** When to measure again */
    measure_again: Month;
  };
  /** The ids of bikes whose span is not known */
  not_measured: string[];
  /** The ids of bikes priced in another currency */
  other_currency: string[];
  /** The bikes of the plan, and those that the request marks */
  bikes: {
    /** Its id */
    id: string;
    /** What people call it */
    name: string;
    /** Its price, in the plan's currency */
    price: number | null;
  }[];
  /** Taped bikes that cannot be used */
  set_aside: SetAside[];
}

/** What the engine is and judges with */
export interface AboutAnswer {
  /** The engine's version */
  version: string;
  /** Every constant */
  constants: {
    /** Its name */
    name: string;
    /** A figure, a column of a table, or a range */
    value: number | number[] | SaddleWindow | HeightSpan;
    /** What the value counts in */
    unit: string;
    /** Where it comes from */
    source: string;
    /** What it is for */
    why: string;
  }[];
  /** The works that sources name */
  references: string[];
  /** Every task */
  requests: string[];
  /** Every problem code */
  problems: {
    /** The stable code */
    code: ProblemCode;
    /** What is wrong, with {name} for each figure; ask.mjs adds it */
    sentence?: string;
    /** What would be right; empty where the sentence says it all; ask.mjs adds it */
    expected?: string;
  }[];
  /** Every word that a problem can have among its figures */
  problem_words: ProblemWord[];
}

/** A request that was refused */
export interface ErrorAnswer {
  /** Why */
  error: Note;
}

/** A file that was refused */
export interface LoadRefusal {
  /** Why */
  error: Note;
  /** What cannot be used in it; of rows the first hundred */
  set_aside: SetAside[];
  /** In a table whose columns need a word */
  table?: TableSketch;
}

/** Every request */
export type EngineRequest =
  | LoadRequest
  | NewListRequest
  | ListRequest
  | EntryRequest
  | CheckEntryRequest
  | EditRequest
  | CompareRequest
  | MergeRequest
  | SaveRequest
  | AssessRequest
  | ChangesRequest
  | ForecastRequest
  | SideViewRequest
  | ReadBikeRequest
  | ReadRidersRequest
  | WriteRidersRequest
  | ClubDayRequest
  | SuitsRequest
  | YearsRequest
  | AboutRequest;
