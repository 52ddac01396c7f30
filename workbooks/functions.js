// THE CANDLE FUNCTIONS IN A WEB SPREADSHEET
// made by candlecalc 0.2.0
//
// How to put them into a sheet (Google Sheets; nothing is installed, no account but the one you have):
//
// 1  Copy all of this text: click into it, press Ctrl+A, then Ctrl+C (on a Mac Command+A, Command+C).
// 2  Open your sheet in the browser. In its menu choose Extensions, then Apps Script. A new page opens: the script
//    editor, with a few lines such as "function myFunction() {".
// 3  Click into those lines, press Ctrl+A, then Ctrl+V: what was there is gone, and this text stands there.
// 4  Press the disk over the text (Save project). You need not press Run, and nothing asks for a permission.
// 5  Go back to the page with your sheet and reload it. Type into an empty cell:  =CANDLE_OIL_FOR_WAX(500, 8%)
//    It shows 40. Where your sheet writes 0,5 for a half, type a semicolon for each comma between values.
// 6  Type =CANDLE_ and the list shows all functions. A cell that shows #ERROR! has no answer: point at it to read why.
//    =CANDLE_WHY("oil_for_wax", 500, 8) writes it into a cell.
//
// What can go wrong: #NAME? means that step 4 was left out, or that it is another sheet: each takes the text anew.
// If the editor held a script of your own, press + beside Files, Script, and put this text there instead (step 3).
// A day that is off by one: in the editor, Project Settings, choose the time zone that your sheet has (File, Settings).
// Many cells at once are quicker as one formula: =CANDLE_OIL_FOR_WAX(B2:B200, 8%) fills the column below it. One cell
// in it that has no answer stops all of them; the message says which row of the range it is.
// The steps are from the program's documentation. The functions were run in V8, the engine that it names; not there.
//
// These functions do sums. Suppliers' data sheets and certificates, local rules and codes, your own burn tests and
// licensed practice decide what may be done. Hot wax burns skin, and wax that overheats catches fire: never leave it,
// never put water on it, keep a lid and a fire blanket within reach.
//
// Not in the script, but in the other ways of candlecalc:
// it adds up the chance of every number: season_profit_poisson
// it counts up to the number: season_stock_poisson
// it looks a table up: coin_digits
// it looks at what is left after each week: level_rate, lots_cost, plan_cost
// it reads the maker's own week and days off: pour_by_own_days
// its answer is several cells: batch_test, best_break, burn_rate_between, burn_time_from_log, burn_verdict,
//   cooling_forecast, cost_of_goods_schedule, entries_out_of_balance, fair_split, figure_height_metric,
//   figure_height_us, fire_statements, follow_demand, hazard_cautions, hazard_lines, hazard_of_candle,
//   hazard_of_mixture, hours_left_between, issue_costs, label_of_candle, label_of_classes, level_or_follow, lot_sizes,
//   lot_test_us, lots_left, lots_to_use, melt_cautions, net_requirements, net_weight_us, next_wick, oil_parts,
//   period_entries, pool_forecast, rates_of_candles, recipe_verdict, split_charge, stock_from_count, stock_from_log,
//   stock_from_lots, stock_left, tax_by_line, trial_balance, variation_us, wax_parts
// its answer is words: highest_load_decided_by, net_weight_metric

const FUNCTIONS_ = {};

// -----------------------------------------------------------------------------------------------------------------
// Vessels: what they hold, by size or by water, and the fill that goes in

/**
 * Volume of a straight round vessel, from inside measures. Gives 0 or more ml. Answer in ml; CANDLE_CONVERT puts it in
 * another unit.
 * Source: elementary geometry; OpenStax, Prealgebra 2e (cylinder) and Calculus (solids cut across)
 * @param {number} diameter an inside length of the vessel: 10 to 2000 mm
 * @param {number} height an inside length of the vessel: 10 to 2000 mm
 * @param {number} [base] how high the floor is pushed up at its middle; minus where it bulges down: -200 to 200 mm; 0
 *   if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_CYLINDER_VOLUME(diameter, height, base) {
  return answer_("cylinder_volume", arguments);
}
FUNCTIONS_.cylinder_volume = {
  takes: { diameter: "10 to 2000 mm", height: "10 to 2000 mm", base: "-200 to 200 mm" },
  left_out: {"base": 0.0},
  asks: [
    [(diameter, height, base) => base < height, "the floor cannot rise above the fill", "base", "height"],
  ],
  answer: (diameter, height, base) => (Math.PI / 4 * diameter ** 2 * height - Math.PI / 6 * base * (0.75 * diameter ** 2 + base ** 2)) / 1000,
  gives: "0 or more ml",
};

/**
 * Volume of a round vessel that widens or narrows evenly, from inside diameters. Gives 0 or more ml. Answer in ml;
 * CANDLE_CONVERT puts it in another unit.
 * Source: elementary geometry; OpenStax, Prealgebra 2e (cylinder) and Calculus (solids cut across)
 * @param {number} top an inside length of the vessel: 10 to 2000 mm
 * @param {number} bottom an inside length of the vessel: 10 to 2000 mm
 * @param {number} height an inside length of the vessel: 10 to 2000 mm
 * @param {number} [base] how high the floor is pushed up at its middle; minus where it bulges down: -200 to 200 mm; 0
 *   if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_TAPERED_VOLUME(top, bottom, height, base) {
  return answer_("tapered_volume", arguments);
}
FUNCTIONS_.tapered_volume = {
  takes: { top: "10 to 2000 mm", bottom: "10 to 2000 mm", height: "10 to 2000 mm", base: "-200 to 200 mm" },
  left_out: {"base": 0.0},
  asks: [
    [(top, bottom, height, base) => base < height, "the floor cannot rise above the fill", "base", "height"],
  ],
  answer: (top, bottom, height, base) => (Math.PI / 12 * height * (top ** 2 + top * bottom + bottom ** 2) - Math.PI / 6 * base * (0.75 * bottom ** 2 + base ** 2)) / 1000,
  gives: "0 or more ml",
};

/**
 * Volume of a square or oblong vessel with upright sides, from inside measures. Gives 0 or more ml. Answer in ml;
 * CANDLE_CONVERT puts it in another unit.
 * Source: elementary geometry; OpenStax, Prealgebra 2e (cylinder) and Calculus (solids cut across)
 * @param {number} length an inside length of the vessel: 10 to 2000 mm
 * @param {number} width an inside length of the vessel: 10 to 2000 mm
 * @param {number} height an inside length of the vessel: 10 to 2000 mm
 * @param {number} [base] how high the floor is pushed up at its middle; minus where it bulges down: -200 to 200 mm; 0
 *   if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_BOX_VOLUME(length, width, height, base) {
  return answer_("box_volume", arguments);
}
FUNCTIONS_.box_volume = {
  takes: { length: "10 to 2000 mm", width: "10 to 2000 mm", height: "10 to 2000 mm", base: "-200 to 200 mm" },
  left_out: {"base": 0.0},
  asks: [
    [(length, width, height, base) => base < height, "the floor cannot rise above the fill", "base", "height"],
  ],
  answer: (length, width, height, base) => (length * width * height - Math.PI / 6 * base * (0.75 * Math.min(length, width) ** 2 + base ** 2)) / 1000,
  gives: "0 or more ml",
};

/**
 * Volume of an upright vessel of equal sides: six for a hexagon jar. Gives 0 or more ml. Answer in ml; CANDLE_CONVERT
 * puts it in another unit.
 * Source: elementary geometry; OpenStax, Prealgebra 2e (cylinder) and Calculus (solids cut across)
 * @param {number} sides how many equal sides the vessel has: whole numbers 3 to 100
 * @param {number} side inside length of one of its sides: 5 to 2000 mm
 * @param {number} height an inside length of the vessel: 10 to 2000 mm
 * @param {number} [base] how high the floor is pushed up at its middle; minus where it bulges down: -200 to 200 mm; 0
 *   if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_PRISM_VOLUME(sides, side, height, base) {
  return answer_("prism_volume", arguments);
}
FUNCTIONS_.prism_volume = {
  takes: { sides: "whole numbers 3 to 100", side: "5 to 2000 mm", height: "10 to 2000 mm", base: "-200 to 200 mm" },
  left_out: {"base": 0.0},
  asks: [
    [(sides, side, height, base) => base < height, "the floor cannot rise above the fill", "base", "height"],
  ],
  answer: (sides, side, height, base) => (ratio_(sides * side ** 2 * height, 4 * Math.tan(ratio_(Math.PI, sides))) - Math.PI / 6 * base * (0.75 * ratio_(side, Math.tan(ratio_(Math.PI, sides))) ** 2 + base ** 2)) / 1000,
  gives: "0 or more ml",
};

/**
 * Volume of a vessel from the water that fills it to the brim, as the scale shows it. Gives 0 or more ml. Answer in
 * ml; CANDLE_CONVERT puts it in another unit.
 * Source: water's density: Tanaka et al., Metrologia 38 (2001) 301, from memory, checked against IAPWS-95; weighing in
 * air: the buoyancy correction of the conventional mass (air 0.0012, weights 8.0 g/ml), from memory
 * @param {number} water the water the vessel holds to the brim, as weighed on a scale in air: 10 or more g
 * @param {number} [temperature] temperature of the water: 0 to 40 C; 20 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_VOLUME_FROM_WATER(water, temperature) {
  return answer_("volume_from_water", arguments);
}
FUNCTIONS_.volume_from_water = {
  takes: { water: "10 or more g", temperature: "0 to 40 C" },
  left_out: {"temperature": 20.0},
  answer: (water, temperature) => ratio_(water * (1 - 0.0012 / 8), 0.99997495 * (1 - ratio_((temperature - 3.983035) ** 2 * (temperature + 301.797), 522528.9 * (temperature + 69.34881))) - 0.0012),
  gives: "0 or more ml",
};

/**
 * Weight of wax and oil that fills a vessel up to its headspace. Gives 0 or more g. Answer in g; CANDLE_CONVERT puts
 * it in another unit.
 * Source: algebra from the definitions
 * @param {number} volume what the vessel holds to the brim: 10 to 1000000 ml
 * @param {number} headspace share of the vessel left empty above the wax: 0 to 0.9 of the brimful volume
 * @param {number} density weight of a millilitre of the wax, at the temperature it is filled: 0.5 to 1.5 g/ml
 * @return {number}
 * @customfunction
 */
function CANDLE_FILL_WEIGHT(volume, headspace, density) {
  return answer_("fill_weight", arguments);
}
FUNCTIONS_.fill_weight = {
  takes: { volume: "10 to 1000000 ml", headspace: "0 to 0.9 of the brimful volume", density: "0.5 to 1.5 g/ml" },
  answer: (volume, headspace, density) => volume * (1 - headspace) * density,
  gives: "0 or more g",
};

/**
 * Vessels that a weight of wax fills, once its oil is in. Gives whole numbers 0 to 1000000.
 * Source: common practice, no source
 * @param {number} wax wax in the melt, before any oil: 0 or more g
 * @param {number} fill wax and oil together, as poured into a vessel or a batch: 0 or more g
 * @param {number} [load] fragrance load: oil as a share of wax weight (8% is 0.08): 0 to 0.5 of wax weight; 0 if left
 *   out
 * @return {number}
 * @customfunction
 */
function CANDLE_VESSELS_FILLED(wax, fill, load) {
  return answer_("vessels_filled", arguments);
}
FUNCTIONS_.vessels_filled = {
  takes: { wax: "0 or more g", fill: "0 or more g", load: "0 to 0.5 of wax weight" },
  left_out: {"load": 0.0},
  asks: [
    [(wax, fill, load) => fill > 0, "fill must be more than 0", "fill"],
  ],
  answer: (wax, fill, load) => Math.floor(round_(ratio_(wax * (1 + load), fill), 6)),
  gives: "whole numbers 0 to 1000000",
};

// -----------------------------------------------------------------------------------------------------------------
// Fragrance: oil and wax by load, blends of oils, and the highest load that is allowed

/**
 * Fragrance oil to weigh out for a weight of wax. Gives 0 or more g. Answer in g; CANDLE_CONVERT puts it in another
 * unit.
 * Source: common practice, no source
 * @param {number} wax wax in the melt, before any oil: 0 or more g
 * @param {number} load fragrance load: oil as a share of wax weight (8% is 0.08): 0 to 0.5 of wax weight
 * @return {number}
 * @customfunction
 */
function CANDLE_OIL_FOR_WAX(wax, load) {
  return answer_("oil_for_wax", arguments);
}
FUNCTIONS_.oil_for_wax = {
  takes: { wax: "0 or more g", load: "0 to 0.5 of wax weight" },
  answer: (wax, load) => wax * load,
  gives: "0 or more g",
};

/**
 * Wax that a weight of oil is enough for, to use a bottle up. Gives 0 or more g. Answer in g; CANDLE_CONVERT puts it
 * in another unit.
 * Source: common practice, no source
 * @param {number} oil fragrance oil to weigh out: 0 or more g
 * @param {number} load fragrance load: oil as a share of wax weight (8% is 0.08): 0 to 0.5 of wax weight
 * @return {number}
 * @customfunction
 */
function CANDLE_WAX_FOR_OIL(oil, load) {
  return answer_("wax_for_oil", arguments);
}
FUNCTIONS_.wax_for_oil = {
  takes: { oil: "0 or more g", load: "0 to 0.5 of wax weight" },
  asks: [
    [(oil, load) => load > 0, "load must be more than 0", "load"],
  ],
  answer: (oil, load) => ratio_(oil, load),
  gives: "0 or more g",
};

/**
 * Fragrance oil in a finished fill of wax and oil together. Gives 0 or more g. Answer in g; CANDLE_CONVERT puts it in
 * another unit.
 * Source: percent by mass: OpenStax, Chemistry 2e, section on other units for solution concentrations
 * @param {number} fill wax and oil together, as poured into a vessel or a batch: 0 or more g
 * @param {number} load fragrance load: oil as a share of wax weight (8% is 0.08): 0 to 0.5 of wax weight
 * @return {number}
 * @customfunction
 */
function CANDLE_OIL_FOR_FILL(fill, load) {
  return answer_("oil_for_fill", arguments);
}
FUNCTIONS_.oil_for_fill = {
  takes: { fill: "0 or more g", load: "0 to 0.5 of wax weight" },
  answer: (fill, load) => ratio_(fill * load, 1 + load),
  gives: "0 or more g",
};

/**
 * Wax in a finished fill of wax and oil together. Gives 0 or more g. Answer in g; CANDLE_CONVERT puts it in another
 * unit.
 * Source: percent by mass: OpenStax, Chemistry 2e, section on other units for solution concentrations
 * @param {number} fill wax and oil together, as poured into a vessel or a batch: 0 or more g
 * @param {number} load fragrance load: oil as a share of wax weight (8% is 0.08): 0 to 0.5 of wax weight
 * @return {number}
 * @customfunction
 */
function CANDLE_WAX_FOR_FILL(fill, load) {
  return answer_("wax_for_fill", arguments);
}
FUNCTIONS_.wax_for_fill = {
  takes: { fill: "0 or more g", load: "0 to 0.5 of wax weight" },
  answer: (fill, load) => ratio_(fill, 1 + load),
  gives: "0 or more g",
};

/**
 * Share of the finished candle that a load on wax comes to. Gives 0 to 0.333333 of total weight.
 * Source: percent by mass: OpenStax, Chemistry 2e, section on other units for solution concentrations
 * @param {number} load fragrance load: oil as a share of wax weight (8% is 0.08): 0 to 0.5 of wax weight
 * @return {number}
 * @customfunction
 */
function CANDLE_SHARE_OF_TOTAL(load) {
  return answer_("share_of_total", arguments);
}
FUNCTIONS_.share_of_total = {
  takes: { load: "0 to 0.5 of wax weight" },
  answer: (load) => ratio_(load, 1 + load),
  gives: "0 to 0.333333 of total weight",
};

/**
 * Load on wax that a share of the finished candle comes to. Gives 0 to 0.5 of wax weight.
 * Source: percent by mass: OpenStax, Chemistry 2e, section on other units for solution concentrations
 * @param {number} share fragrance oil as a share of wax and oil together: 0 to 0.333333 of total weight
 * @return {number}
 * @customfunction
 */
function CANDLE_LOAD_FROM_SHARE(share) {
  return answer_("load_from_share", arguments);
}
FUNCTIONS_.load_from_share = {
  takes: { share: "0 to 0.333333 of total weight" },
  answer: (share) => ratio_(share, 1 - share),
  gives: "0 to 0.5 of wax weight",
};

/**
 * Load that a pot of wax really got, from the two weighings. Gives 0 to 0.5 of wax weight.
 * Source: common practice, no source
 * @param {number} wax wax in the melt, before any oil: 0 or more g
 * @param {number} oil fragrance oil to weigh out: 0 or more g
 * @return {number}
 * @customfunction
 */
function CANDLE_LOAD_MEASURED(wax, oil) {
  return answer_("load_measured", arguments);
}
FUNCTIONS_.load_measured = {
  takes: { wax: "0 or more g", oil: "0 or more g" },
  asks: [
    [(wax, oil) => wax > 0, "wax must be more than 0", "wax"],
  ],
  answer: (wax, oil) => ratio_(oil, wax),
  gives: "0 to 0.5 of wax weight",
};

/**
 * How far the scale's step can move the load: both readings half a step off, the worst way. Gives 0 or more of wax
 * weight.
 * Source: limit of error of half a step for each reading; GUM, from memory
 * @param {number} wax wax in the melt, before any oil: 0 or more g
 * @param {number} oil fragrance oil to weigh out: 0 or more g
 * @param {number} step the smallest step the scale shows: more than 0, at most 100 g
 * @return {number}
 * @customfunction
 */
function CANDLE_LOAD_SWING(wax, oil, step) {
  return answer_("load_swing", arguments);
}
FUNCTIONS_.load_swing = {
  takes: { wax: "0 or more g", oil: "0 or more g", step: "more than 0, at most 100 g" },
  asks: [
    [(wax, oil, step) => wax > step, "the wax must weigh more than one step of the scale", "wax", "step"],
  ],
  answer: (wax, oil, step) => ratio_(oil + step / 2, wax - step / 2) - ratio_(oil, wax),
  gives: "0 or more of wax weight",
};

/**
 * Load that a pot gets when wax and oil are weighed to the scale's step. Gives 0 to 0.5 of wax weight.
 * Source: common practice, no source
 * @param {number} wax wax in the melt, before any oil: 0 or more g
 * @param {number} load fragrance load: oil as a share of wax weight (8% is 0.08): 0 to 0.5 of wax weight
 * @param {number} step the smallest step the scale shows: more than 0, at most 100 g
 * @return {number}
 * @customfunction
 */
function CANDLE_LOAD_AFTER_ROUNDING(wax, load, step) {
  return answer_("load_after_rounding", arguments);
}
FUNCTIONS_.load_after_rounding = {
  takes: { wax: "0 or more g", load: "0 to 0.5 of wax weight", step: "more than 0, at most 100 g" },
  asks: [
    [(wax, load, step) => wax >= step, "the wax must weigh at least one step of the scale", "wax", "step"],
  ],
  answer: (wax, load, step) => ratio_(round_(round_(ratio_(wax * load, step), 6), 0), round_(round_(ratio_(wax, step), 6), 0)),
  gives: "0 to 0.5 of wax weight",
};

/**
 * One oil out of a blend, by its share of the blend. Gives 0 or more g. Answer in g; CANDLE_CONVERT puts it in another
 * unit.
 * Source: common practice, no source
 * @param {number} oil fragrance oil to weigh out: 0 or more g
 * @param {number} share share of one oil, or of one wax, in a blend: 0 to 1 of the blend
 * @return {number}
 * @customfunction
 */
function CANDLE_OIL_PART(oil, share) {
  return answer_("oil_part", arguments);
}
FUNCTIONS_.oil_part = {
  takes: { oil: "0 or more g", share: "0 to 1 of the blend" },
  answer: (oil, share) => oil * share,
  gives: "0 or more g",
};

/**
 * The supplier's highest load as a load on wax, whichever way it was stated. Gives 0 to 0.5 of wax weight.
 * Source: percent by mass: OpenStax, Chemistry 2e, section on other units for solution concentrations
 * @param {number} highest the supplier's highest load for this oil or wax: 0 to 0.5 of the stated basis
 * @param {string} [basis] what the supplier's highest load is a share of: "of wax" or "of total"; of wax if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_HIGHEST_ON_WAX(highest, basis) {
  return answer_("highest_on_wax", arguments);
}
FUNCTIONS_.highest_on_wax = {
  takes: { highest: "0 to 0.5 of the stated basis", basis: "\"of wax\" or \"of total\"" },
  left_out: {"basis": "of wax"},
  answer: (highest, basis) => ratio_(highest, 1 - highest * (basis === "of total")),
  gives: "0 to 0.5 of wax weight (2)",
};

/**
 * The supplier's highest load as a share of the finished candle, whichever way it was stated. Gives 0 to 1 of the
 * finished candle.
 * Source: percent by mass: OpenStax, Chemistry 2e, section on other units for solution concentrations
 * @param {number} highest the supplier's highest load for this oil or wax: 0 to 0.5 of the stated basis
 * @param {string} [basis] what the supplier's highest load is a share of: "of wax" or "of total"; of wax if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_HIGHEST_OF_TOTAL(highest, basis) {
  return answer_("highest_of_total", arguments);
}
FUNCTIONS_.highest_of_total = {
  takes: { highest: "0 to 0.5 of the stated basis", basis: "\"of wax\" or \"of total\"" },
  left_out: {"basis": "of wax"},
  answer: (highest, basis) => ratio_(highest, 1 + highest * (basis !== "of total")),
  gives: "0 to 1 of the finished candle",
};

/**
 * Load on wax at which a certified limit in the finished candle is reached, counted up to 0.5. Gives 0 to 0.5 of wax
 * weight.
 * Source: derived: a material's share in an oil is at most its own limit over that oil's certified limit
 * @param {number} limit highest share of this oil in the finished candle by its certificate; 1 where it sets none:
 *   more than 0, at most 1 of the finished candle
 * @return {number}
 * @customfunction
 */
function CANDLE_LOAD_AT_LIMIT(limit) {
  return answer_("load_at_limit", arguments);
}
FUNCTIONS_.load_at_limit = {
  takes: { limit: "more than 0, at most 1 of the finished candle" },
  answer: (limit) => ratio_(Math.min(limit, 1 / 3), 1 - Math.min(limit, 1 / 3)),
  gives: "0 to 0.5 of wax weight (2)",
};

/**
 * Highest load on wax by what is stated for the wax, for the oil and in the oil's certificate: the lowest of them.
 * Gives 0 to 0.5 of wax weight.
 * Source: common practice, no source
 * @param {number} wax the highest load that the wax's supplier states: 0 to 0.5 of the stated basis
 * @param {number} oil the highest load that the oil's supplier states: 0 to 0.5 of the stated basis
 * @param {number} limit highest share of this oil in the finished candle by its certificate; 1 where it sets none:
 *   more than 0, at most 1 of the finished candle
 * @param {string} [wax_basis] what the supplier's highest load is a share of: "of wax" or "of total"; of wax if left
 *   out
 * @param {string} [oil_basis] what the supplier's highest load is a share of: "of wax" or "of total"; of wax if left
 *   out
 * @return {number}
 * @customfunction
 */
function CANDLE_HIGHEST_LOAD(wax, oil, limit, wax_basis, oil_basis) {
  return answer_("highest_load", arguments);
}
FUNCTIONS_.highest_load = {
  takes: { wax: "0 to 0.5 of the stated basis", oil: "0 to 0.5 of the stated basis", limit: "more than 0, at most 1 of the finished candle", wax_basis: "\"of wax\" or \"of total\"", oil_basis: "\"of wax\" or \"of total\"" },
  left_out: {"wax_basis": "of wax", "oil_basis": "of wax"},
  answer: (wax, oil, limit, wax_basis, oil_basis) => Math.min(ratio_(wax, 1 - wax * (wax_basis === "of total")), ratio_(oil, 1 - oil * (oil_basis === "of total")), ratio_(Math.min(limit, 1 / 3), 1 - Math.min(limit, 1 / 3)), 0.5),
  gives: "0 to 0.5 of wax weight (2)",
};

/**
 * Highest share of a blend of oils in the finished candle, by each oil's certified limit. Gives more than 0, at most 1
 * of the finished candle.
 * Source: derived: a material's share in an oil is at most its own limit over that oil's certified limit
 * @param {Array} shares share of each oil in the blend; together 1: list, each 0 to 1 of the blend
 * @param {Array} limits highest share of each oil in the finished candle by its certificate; 1 where it sets none:
 *   list, each more than 0, at most 1 of the finished candle
 * @return {number}
 * @customfunction
 */
function CANDLE_LIMIT_OF_BLEND(shares, limits) {
  return answer_("limit_of_blend", arguments);
}
FUNCTIONS_.limit_of_blend = {
  takes: { shares: "list, each 0 to 1 of the blend", limits: "list, each more than 0, at most 1 of the finished candle" },
  asks: [
    [(shares, limits) => round_(sum_(shares), 6) === 1, "the shares must add up to 1", "shares"],
  ],
  answer: (shares, limits) => Math.min(1, ratio_(1, sum_(each_([shares, limits], (each_shares, each_limits) => ratio_(each_shares, each_limits))))),
  gives: "more than 0, at most 1 of the finished candle",
};

/**
 * Oil to add to wax that is already scented, to bring it up to a higher load. Gives 0 or more g. Answer in g;
 * CANDLE_CONVERT puts it in another unit.
 * Source: mass balance of a mixture; OpenStax, Intermediate Algebra 2e, mixture applications
 * @param {number} scented wax and oil together, as poured into a vessel or a batch: 0 or more g
 * @param {number} load fragrance load: oil as a share of wax weight (8% is 0.08): 0 to 0.5 of wax weight
 * @param {number} wanted fragrance load: oil as a share of wax weight (8% is 0.08): 0 to 0.5 of wax weight
 * @return {number}
 * @customfunction
 */
function CANDLE_OIL_TO_RAISE_LOAD(scented, load, wanted) {
  return answer_("oil_to_raise_load", arguments);
}
FUNCTIONS_.oil_to_raise_load = {
  takes: { scented: "0 or more g", load: "0 to 0.5 of wax weight", wanted: "0 to 0.5 of wax weight" },
  asks: [
    [(scented, load, wanted) => wanted >= load, "the wanted load must not be below the load it has; to lower it use wax_to_lower_load", "wanted", "load"],
  ],
  answer: (scented, load, wanted) => ratio_(scented * (wanted - load), 1 + load),
  gives: "0 or more g",
};

/**
 * Plain wax to add to wax that is already scented, to bring it down to a lower load. Gives 0 or more g. Answer in g;
 * CANDLE_CONVERT puts it in another unit.
 * Source: mass balance of a mixture; OpenStax, Intermediate Algebra 2e, mixture applications
 * @param {number} scented wax and oil together, as poured into a vessel or a batch: 0 or more g
 * @param {number} load fragrance load: oil as a share of wax weight (8% is 0.08): 0 to 0.5 of wax weight
 * @param {number} wanted fragrance load: oil as a share of wax weight (8% is 0.08): 0 to 0.5 of wax weight
 * @return {number}
 * @customfunction
 */
function CANDLE_WAX_TO_LOWER_LOAD(scented, load, wanted) {
  return answer_("wax_to_lower_load", arguments);
}
FUNCTIONS_.wax_to_lower_load = {
  takes: { scented: "0 or more g", load: "0 to 0.5 of wax weight", wanted: "0 to 0.5 of wax weight" },
  asks: [
    [(scented, load, wanted) => wanted > 0, "the wanted load must be more than 0", "wanted"],
    [(scented, load, wanted) => wanted <= load, "the wanted load must not be above the load it has; to raise it use oil_to_raise_load", "wanted", "load"],
  ],
  answer: (scented, load, wanted) => ratio_(scented, 1 + load) * (ratio_(load, wanted) - 1),
  gives: "0 or more g",
};

// -----------------------------------------------------------------------------------------------------------------
// Wax: blends, dye, and how it draws together as it sets

/**
 * Density of two waxes mixed by weight; `share` is the second wax's. Gives 0.5 to 1.5 g/ml. Answer in g/ml;
 * CANDLE_CONVERT puts it in another unit.
 * Source: mass balance of a mixture; OpenStax, Intermediate Algebra 2e, mixture applications
 * @param {number} first weight of a millilitre of the wax, at the temperature it is filled: 0.5 to 1.5 g/ml
 * @param {number} second weight of a millilitre of the wax, at the temperature it is filled: 0.5 to 1.5 g/ml
 * @param {number} share share of one oil, or of one wax, in a blend: 0 to 1 of the blend
 * @return {number}
 * @customfunction
 */
function CANDLE_BLEND_DENSITY(first, second, share) {
  return answer_("blend_density", arguments);
}
FUNCTIONS_.blend_density = {
  takes: { first: "0.5 to 1.5 g/ml", second: "0.5 to 1.5 g/ml", share: "0 to 1 of the blend" },
  answer: (first, second, share) => ratio_(1, ratio_(1 - share, first) + ratio_(share, second)),
  gives: "0.5 to 1.5 g/ml",
};

/**
 * The first of two waxes in a blend; `share` is the second wax's. Gives 0 or more g. Answer in g; CANDLE_CONVERT puts
 * it in another unit.
 * Source: common practice, no source
 * @param {number} wax wax in the melt, before any oil: 0 or more g
 * @param {number} [share] share of one oil, or of one wax, in a blend: 0 to 1 of the blend; 0 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_FIRST_WAX(wax, share) {
  return answer_("first_wax", arguments);
}
FUNCTIONS_.first_wax = {
  takes: { wax: "0 or more g", share: "0 to 1 of the blend" },
  left_out: {"share": 0.0},
  answer: (wax, share) => wax * (1 - share),
  gives: "0 or more g",
};

/**
 * The second of two waxes in a blend, by its share. Gives 0 or more g. Answer in g; CANDLE_CONVERT puts it in another
 * unit.
 * Source: common practice, no source
 * @param {number} wax wax in the melt, before any oil: 0 or more g
 * @param {number} share share of one oil, or of one wax, in a blend: 0 to 1 of the blend
 * @return {number}
 * @customfunction
 */
function CANDLE_SECOND_WAX(wax, share) {
  return answer_("second_wax", arguments);
}
FUNCTIONS_.second_wax = {
  takes: { wax: "0 or more g", share: "0 to 1 of the blend" },
  answer: (wax, share) => wax * share,
  gives: "0 or more g",
};

/**
 * Dye to weigh out for a weight of wax. Gives 0 or more g. Answer in g; CANDLE_CONVERT puts it in another unit.
 * Source: common practice, no source
 * @param {number} wax wax in the melt, before any oil: 0 or more g
 * @param {number} share dye as a share of wax weight: 0 to 0.1 of wax weight
 * @return {number}
 * @customfunction
 */
function CANDLE_DYE_FOR_WAX(wax, share) {
  return answer_("dye_for_wax", arguments);
}
FUNCTIONS_.dye_for_wax = {
  takes: { wax: "0 or more g", share: "0 to 0.1 of wax weight" },
  answer: (wax, share) => wax * share,
  gives: "0 or more g",
};

/**
 * Density of several waxes and additives mixed by weight; the shares must add up to 1. Gives 0.5 to 1.5 g/ml. Answer
 * in g/ml; CANDLE_CONVERT puts it in another unit.
 * Source: mass balance of a mixture; OpenStax, Intermediate Algebra 2e, mixture applications
 * @param {Array} shares share of each wax or additive in the blend; together 1: list, each 0 to 1 of the blend
 * @param {Array} densities density of each, all at one temperature: list, each 0.5 to 1.5 g/ml
 * @return {number}
 * @customfunction
 */
function CANDLE_MIXED_DENSITY(shares, densities) {
  return answer_("mixed_density", arguments);
}
FUNCTIONS_.mixed_density = {
  takes: { shares: "list, each 0 to 1 of the blend", densities: "list, each 0.5 to 1.5 g/ml" },
  asks: [
    [(shares, densities) => round_(sum_(shares), 6) === 1, "the shares must add up to 1", "shares"],
  ],
  answer: (shares, densities) => ratio_(1, sum_(each_([shares, densities], (each_shares, each_densities) => ratio_(each_shares, each_densities)))),
  gives: "0.5 to 1.5 g/ml",
};

/**
 * Specific heat of several waxes and additives mixed by weight, all set or all melted. Gives more than 0, at most 10
 * kJ/(kg C). Answer in kJ/(kg C); CANDLE_CONVERT puts it in another unit.
 * Source: heat lost is heat gained: OpenStax, College Physics 2e, heat capacity; melted wax 2.2 second-hand, oil taken
 * to warm as wax does, no source
 * @param {Array} shares share of each wax or additive in the blend; together 1: list, each 0 to 1 of the blend
 * @param {Array} heats specific heat of each, all set or all melted: list, each more than 0, at most 10 kJ/(kg C)
 * @return {number}
 * @customfunction
 */
function CANDLE_MIXED_SPECIFIC_HEAT(shares, heats) {
  return answer_("mixed_specific_heat", arguments);
}
FUNCTIONS_.mixed_specific_heat = {
  takes: { shares: "list, each 0 to 1 of the blend", heats: "list, each more than 0, at most 10 kJ/(kg C)" },
  asks: [
    [(shares, heats) => round_(sum_(shares), 6) === 1, "the shares must add up to 1", "shares"],
  ],
  answer: (shares, heats) => sum_(each_([shares, heats], (each_shares, each_heats) => each_shares * each_heats)),
  gives: "more than 0, at most 10 kJ/(kg C)",
};

/**
 * Heat that melts a kilogram of a blend, from each wax's own. Gives 0 to 1000 kJ/kg. Answer in kJ/kg; CANDLE_CONVERT
 * puts it in another unit.
 * Source: heat lost is heat gained: OpenStax, College Physics 2e, heat capacity; melted wax 2.2 second-hand, oil taken
 * to warm as wax does, no source
 * @param {Array} shares share of each wax or additive in the blend; together 1: list, each 0 to 1 of the blend
 * @param {Array} heats latent heat of each: list, each 0 to 1000 kJ/kg
 * @return {number}
 * @customfunction
 */
function CANDLE_MIXED_LATENT_HEAT(shares, heats) {
  return answer_("mixed_latent_heat", arguments);
}
FUNCTIONS_.mixed_latent_heat = {
  takes: { shares: "list, each 0 to 1 of the blend", heats: "list, each 0 to 1000 kJ/kg" },
  asks: [
    [(shares, heats) => round_(sum_(shares), 6) === 1, "the shares must add up to 1", "shares"],
  ],
  answer: (shares, heats) => sum_(each_([shares, heats], (each_shares, each_heats) => each_shares * each_heats)),
  gives: "0 to 1000 kJ/kg",
};

/**
 * Density of melted wax at another temperature than the one it was measured at. Gives 0.5 to 1.5 g/ml. Answer in g/ml;
 * CANDLE_CONVERT puts it in another unit.
 * Source: thermal expansion: OpenStax, College Physics 2e, thermal expansion of solids and liquids; 0.00085 per C for
 * melted wax worked from alkanes in a reference library
 * @param {number} density weight of a millilitre of the wax, at the temperature it is filled: 0.5 to 1.5 g/ml
 * @param {number} measured a temperature: -50 to 160 C
 * @param {number} temperature a temperature: -50 to 160 C
 * @param {number} [expansion] how much a melted wax swells for each degree C, as a share of its volume: 0 to 0.002 per
 *   C; 0.00085 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_LIQUID_DENSITY(density, measured, temperature, expansion) {
  return answer_("liquid_density", arguments);
}
FUNCTIONS_.liquid_density = {
  takes: { density: "0.5 to 1.5 g/ml", measured: "-50 to 160 C", temperature: "-50 to 160 C", expansion: "0 to 0.002 per C" },
  left_out: {"expansion": 0.00085},
  answer: (density, measured, temperature, expansion) => ratio_(density, 1 + expansion * (temperature - measured)),
  gives: "0.5 to 1.5 g/ml",
};

/**
 * How much a wax draws together from the pour until it has set and cooled, from two densities. Gives 0 to 0.5 of the
 * volume poured.
 * Source: derived from the two densities; wax draws together by 5 to 15 %, second-hand, texts disagree
 * @param {number} hot density of the melted wax as it is poured: 0.5 to 1.5 g/ml
 * @param {number} cold density of the wax once it has set and cooled: 0.5 to 1.5 g/ml
 * @return {number}
 * @customfunction
 */
function CANDLE_SETTING_SHRINKAGE(hot, cold) {
  return answer_("setting_shrinkage", arguments);
}
FUNCTIONS_.setting_shrinkage = {
  takes: { hot: "0.5 to 1.5 g/ml", cold: "0.5 to 1.5 g/ml" },
  asks: [
    [(hot, cold) => hot <= cold, "set wax cannot be lighter than melted wax", "hot", "cold"],
  ],
  answer: (hot, cold) => 1 - ratio_(hot, cold),
  gives: "0 to 0.5 of the volume poured",
};

/**
 * Scented wax to keep back for a second pour that brings a vessel up to its first level again. Gives 0 or more g.
 * Answer in g; CANDLE_CONVERT puts it in another unit.
 * Source: derived from the two densities; wax draws together by 5 to 15 %, second-hand, texts disagree
 * @param {number} fill wax and oil together, as poured into a vessel or a batch: 0 or more g
 * @param {number} [shrinkage] how much the wax draws together as it sets: 0 to 0.5 of the volume poured; 0.1 if left
 *   out
 * @return {number}
 * @customfunction
 */
function CANDLE_TOP_UP_POUR(fill, shrinkage) {
  return answer_("top_up_pour", arguments);
}
FUNCTIONS_.top_up_pour = {
  takes: { fill: "0 or more g", shrinkage: "0 to 0.5 of the volume poured" },
  left_out: {"shrinkage": 0.1},
  answer: (fill, shrinkage) => fill * shrinkage,
  gives: "0 or more g",
};

// -----------------------------------------------------------------------------------------------------------------
// Heat: temperatures in both scales, heat and time to melt, oil going in, and what to mind

/**
 * A temperature in degrees Celsius, from one in Fahrenheit. Gives -273.15 to 1000000 C. Answer in C; CANDLE_CONVERT
 * puts it in another unit.
 * Source: NIST SP 811 (2008), appendix B.8
 * @param {number} fahrenheit a temperature in degrees Fahrenheit: -459.67 to 2000000 F
 * @return {number}
 * @customfunction
 */
function CANDLE_CELSIUS(fahrenheit) {
  return answer_("celsius", arguments);
}
FUNCTIONS_.celsius = {
  takes: { fahrenheit: "-459.67 to 2000000 F" },
  answer: (fahrenheit) => (fahrenheit - 32) / 1.8,
  gives: "-273.15 to 1000000 C",
};

/**
 * A temperature in degrees Fahrenheit, from one in Celsius. Gives -459.67 to 2000000 F. Answer in F; CANDLE_CONVERT
 * puts it in another unit.
 * Source: NIST SP 811 (2008), appendix B.8
 * @param {number} celsius a temperature in degrees Celsius: -273.15 to 1000000 C
 * @return {number}
 * @customfunction
 */
function CANDLE_FAHRENHEIT(celsius) {
  return answer_("fahrenheit", arguments);
}
FUNCTIONS_.fahrenheit = {
  takes: { celsius: "-273.15 to 1000000 C" },
  answer: (celsius) => celsius * 1.8 + 32,
  gives: "-459.67 to 2000000 F",
};

/**
 * How many degrees Celsius a rise, a fall or a margin in Fahrenheit is; not a temperature. Gives -1000000 to 1000000 C
 * difference. Answer in C difference; CANDLE_CONVERT puts it in another unit.
 * Source: NIST SP 811 (2008), appendix B.8
 * @param {number} difference how far two temperatures are apart, in degrees Fahrenheit: -2000000 to 2000000 F
 *   difference
 * @return {number}
 * @customfunction
 */
function CANDLE_CELSIUS_DIFFERENCE(difference) {
  return answer_("celsius_difference", arguments);
}
FUNCTIONS_.celsius_difference = {
  takes: { difference: "-2000000 to 2000000 F difference" },
  answer: (difference) => difference / 1.8,
  gives: "-1000000 to 1000000 C difference",
};

/**
 * How many degrees Fahrenheit a rise, a fall or a margin in Celsius is; not a temperature. Gives -2000000 to 2000000 F
 * difference. Answer in F difference; CANDLE_CONVERT puts it in another unit.
 * Source: NIST SP 811 (2008), appendix B.8
 * @param {number} difference how far two temperatures are apart, in degrees Celsius: -1000000 to 1000000 C difference
 * @return {number}
 * @customfunction
 */
function CANDLE_FAHRENHEIT_DIFFERENCE(difference) {
  return answer_("fahrenheit_difference", arguments);
}
FUNCTIONS_.fahrenheit_difference = {
  takes: { difference: "-1000000 to 1000000 C difference" },
  answer: (difference) => difference * 1.8,
  gives: "-2000000 to 2000000 F difference",
};

/**
 * Heat to warm something that does not melt on the way: a pot, a water bath, wax already melted. Gives 0 or more kJ.
 * Answer in kJ; CANDLE_CONVERT puts it in another unit.
 * Source: heat to warm and to melt: OpenStax, College Physics 2e, temperature change and heat capacity, phase change;
 * defaults for paraffin second-hand: 2.1 set, 2.2 melted, 190 (150 to 220) to melt: put in your data sheet's
 * @param {number} weight weight of what is heated: a wax, a pot, the water of a bath: 0 or more g
 * @param {number} start temperature before it is heated: -50 to 160 C
 * @param {number} end temperature it is brought to: -50 to 160 C
 * @param {number} specific_heat heat that warms a kilogram of it by one degree C: more than 0, at most 10 kJ/(kg C)
 * @return {number}
 * @customfunction
 */
function CANDLE_HEAT_TO_WARM(weight, start, end, specific_heat) {
  return answer_("heat_to_warm", arguments);
}
FUNCTIONS_.heat_to_warm = {
  takes: { weight: "0 or more g", start: "-50 to 160 C", end: "-50 to 160 C", specific_heat: "more than 0, at most 10 kJ/(kg C)" },
  asks: [
    [(weight, start, end, specific_heat) => end >= start, "the end must not be colder than the start", "end", "start"],
  ],
  answer: (weight, start, end, specific_heat) => weight / 1000 * specific_heat * (end - start),
  gives: "0 or more kJ",
};

/**
 * Heat that goes into melting alone, with the wax no warmer for it. Gives 0 or more kJ. Answer in kJ; CANDLE_CONVERT
 * puts it in another unit.
 * Source: heat to warm and to melt: OpenStax, College Physics 2e, temperature change and heat capacity, phase change;
 * defaults for paraffin second-hand: 2.1 set, 2.2 melted, 190 (150 to 220) to melt: put in your data sheet's
 * @param {number} weight weight of what is heated: a wax, a pot, the water of a bath: 0 or more g
 * @param {number} [latent_heat] heat that melts a kilogram of it once it is warm enough: 0 to 1000 kJ/kg; 190 if left
 *   out
 * @return {number}
 * @customfunction
 */
function CANDLE_HEAT_TO_MELT(weight, latent_heat) {
  return answer_("heat_to_melt", arguments);
}
FUNCTIONS_.heat_to_melt = {
  takes: { weight: "0 or more g", latent_heat: "0 to 1000 kJ/kg" },
  left_out: {"latent_heat": 190.0},
  answer: (weight, latent_heat) => weight / 1000 * latent_heat,
  gives: "0 or more kJ",
};

/**
 * Heat to warm set wax, melt it and bring it to a temperature. Gives 0 or more kJ. Answer in kJ; CANDLE_CONVERT puts
 * it in another unit.
 * Source: heat to warm and to melt: OpenStax, College Physics 2e, temperature change and heat capacity, phase change;
 * defaults for paraffin second-hand: 2.1 set, 2.2 melted, 190 (150 to 220) to melt: put in your data sheet's
 * @param {number} wax wax in the melt, before any oil: 0 or more g
 * @param {number} start temperature before it is heated: -50 to 160 C
 * @param {number} end temperature it is brought to: -50 to 160 C
 * @param {number} melting temperature at which the last of the wax is melted: the upper end of its melting range: -50
 *   to 160 C
 * @param {number} [latent_heat] heat that melts a kilogram of it once it is warm enough: 0 to 1000 kJ/kg; 190 if left
 *   out
 * @param {number} [solid] heat that warms a kilogram of set wax by one degree C: more than 0, at most 10 kJ/(kg C);
 *   2.1 if left out
 * @param {number} [liquid] heat that warms a kilogram of melted wax by one degree C: more than 0, at most 10 kJ/(kg
 *   C); 2.2 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_HEAT_FOR_WAX(wax, start, end, melting, latent_heat, solid, liquid) {
  return answer_("heat_for_wax", arguments);
}
FUNCTIONS_.heat_for_wax = {
  takes: { wax: "0 or more g", start: "-50 to 160 C", end: "-50 to 160 C", melting: "-50 to 160 C", latent_heat: "0 to 1000 kJ/kg", solid: "more than 0, at most 10 kJ/(kg C)", liquid: "more than 0, at most 10 kJ/(kg C)" },
  left_out: {"latent_heat": 190.0, "solid": 2.1, "liquid": 2.2},
  asks: [
    [(wax, start, end, melting, latent_heat, solid, liquid) => start <= melting, "wax that starts above its melting range is melted already: use heat_to_warm", "start", "melting"],
    [(wax, start, end, melting, latent_heat, solid, liquid) => end >= melting, "the end must not be below the melting range", "end", "melting"],
  ],
  answer: (wax, start, end, melting, latent_heat, solid, liquid) => wax / 1000 * (solid * (melting - start) + latent_heat + liquid * (end - melting)),
  gives: "0 or more kJ",
};

/**
 * Minutes that a heater takes to put an amount of heat into the pot. Gives 0 or more min. Answer in min;
 * CANDLE_CONVERT puts it in another unit.
 * Source: power times time: OpenStax, College Physics 2e, phase change; Cengel, heat transfer, example 1-2,
 * second-hand
 * @param {number} heat heat that has to get into it: 0 or more kJ
 * @param {number} power power of the heater, as its plate states it: 10 to 100000 W
 * @param {number} efficiency share of the power that gets into the wax: more than 0, at most 1 of the heater's power
 * @return {number}
 * @customfunction
 */
function CANDLE_MELT_TIME(heat, power, efficiency) {
  return answer_("melt_time", arguments);
}
FUNCTIONS_.melt_time = {
  takes: { heat: "0 or more kJ", power: "10 to 100000 W", efficiency: "more than 0, at most 1 of the heater's power" },
  answer: (heat, power, efficiency) => ratio_(heat * 1000, power * efficiency) / 60,
  gives: "0 or more min",
};

/**
 * Share of a heater's power that got into the wax, from one melt with a clock. Gives more than 0, at most 1 of the
 * heater's power.
 * Source: power times time: OpenStax, College Physics 2e, phase change; Cengel, heat transfer, example 1-2,
 * second-hand
 * @param {number} heat heat that has to get into it: 0 or more kJ
 * @param {number} power power of the heater, as its plate states it: 10 to 100000 W
 * @param {number} minutes how long the heater was on: more than 0, at most 1000000 min
 * @return {number}
 * @customfunction
 */
function CANDLE_HEATER_EFFICIENCY(heat, power, minutes) {
  return answer_("heater_efficiency", arguments);
}
FUNCTIONS_.heater_efficiency = {
  takes: { heat: "0 or more kJ", power: "10 to 100000 W", minutes: "more than 0, at most 1000000 min" },
  answer: (heat, power, minutes) => ratio_(heat * 1000, power * minutes * 60),
  gives: "more than 0, at most 1 of the heater's power",
};

/**
 * Temperature once oil has gone into melted wax, before the pot loses any heat. Gives -50 to 160 C. Answer in C;
 * CANDLE_CONVERT puts it in another unit.
 * Source: heat lost is heat gained: OpenStax, College Physics 2e, heat capacity; melted wax 2.2 second-hand, oil taken
 * to warm as wax does, no source
 * @param {number} wax wax in the melt, before any oil: 0 or more g
 * @param {number} oil fragrance oil to weigh out: 0 or more g
 * @param {number} hot temperature of the melted wax before the oil goes in: -50 to 160 C
 * @param {number} room temperature of the oil before it goes in: -50 to 100 C
 * @param {number} melting temperature at which the last of the wax is melted: the upper end of its melting range: -50
 *   to 160 C
 * @param {number} [liquid] heat that warms a kilogram of melted wax by one degree C: more than 0, at most 10 kJ/(kg
 *   C); 2.2 if left out
 * @param {number} [oil_heat] heat that warms a kilogram of oil by one degree C: more than 0, at most 10 kJ/(kg C); 2.2
 *   if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_TEMPERATURE_AFTER_OIL(wax, oil, hot, room, melting, liquid, oil_heat) {
  return answer_("temperature_after_oil", arguments);
}
FUNCTIONS_.temperature_after_oil = {
  takes: { wax: "0 or more g", oil: "0 or more g", hot: "-50 to 160 C", room: "-50 to 100 C", melting: "-50 to 160 C", liquid: "more than 0, at most 10 kJ/(kg C)", oil_heat: "more than 0, at most 10 kJ/(kg C)" },
  left_out: {"liquid": 2.2, "oil_heat": 2.2},
  asks: [
    [(wax, oil, hot, room, melting, liquid, oil_heat) => wax > 0, "wax must be more than 0", "wax"],
    [(wax, oil, hot, room, melting, liquid, oil_heat) => round_(wax * liquid * (hot - melting) - oil * oil_heat * (melting - room), 6) >= 0, "the wax would begin to set: warm it more, or warm the oil", "wax", "liquid", "hot", "melting", "oil", "oil_heat", "room"],
  ],
  answer: (wax, oil, hot, room, melting, liquid, oil_heat) => ratio_(wax * liquid * hot + oil * oil_heat * room, wax * liquid + oil * oil_heat),
  gives: "-50 to 160 C",
};

/**
 * Temperature to bring the wax to, so that it is as warm as wanted once the oil is in. Gives -50 to 160 C. Answer in
 * C; CANDLE_CONVERT puts it in another unit.
 * Source: heat lost is heat gained: OpenStax, College Physics 2e, heat capacity; melted wax 2.2 second-hand, oil taken
 * to warm as wax does, no source
 * @param {number} wax wax in the melt, before any oil: 0 or more g
 * @param {number} oil fragrance oil to weigh out: 0 or more g
 * @param {number} wanted temperature of wax and oil together: -50 to 160 C
 * @param {number} room temperature of the oil before it goes in: -50 to 100 C
 * @param {number} melting temperature at which the last of the wax is melted: the upper end of its melting range: -50
 *   to 160 C
 * @param {number} [liquid] heat that warms a kilogram of melted wax by one degree C: more than 0, at most 10 kJ/(kg
 *   C); 2.2 if left out
 * @param {number} [oil_heat] heat that warms a kilogram of oil by one degree C: more than 0, at most 10 kJ/(kg C); 2.2
 *   if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_TEMPERATURE_BEFORE_OIL(wax, oil, wanted, room, melting, liquid, oil_heat) {
  return answer_("temperature_before_oil", arguments);
}
FUNCTIONS_.temperature_before_oil = {
  takes: { wax: "0 or more g", oil: "0 or more g", wanted: "-50 to 160 C", room: "-50 to 100 C", melting: "-50 to 160 C", liquid: "more than 0, at most 10 kJ/(kg C)", oil_heat: "more than 0, at most 10 kJ/(kg C)" },
  left_out: {"liquid": 2.2, "oil_heat": 2.2},
  asks: [
    [(wax, oil, wanted, room, melting, liquid, oil_heat) => wax > 0, "wax must be more than 0", "wax"],
    [(wax, oil, wanted, room, melting, liquid, oil_heat) => wanted >= melting, "the wax would begin to set: warm it more, or warm the oil", "wanted", "melting"],
  ],
  answer: (wax, oil, wanted, room, melting, liquid, oil_heat) => wanted + ratio_(oil * oil_heat, wax * liquid) * (wanted - room),
  gives: "-50 to 160 C",
};

// -----------------------------------------------------------------------------------------------------------------
// Cooling of a stirred pot, between two readings and above the melting range

/**
 * How quickly a stirred pot of melted wax cools, from two readings. Gives more than 0 per min.
 * Source: Newton's law of cooling: OpenStax, Calculus volume 2, exponential growth and decay
 * @param {number} first first reading of the stirred pot: 0 to 160 C
 * @param {number} second second reading of the stirred pot: 0 to 160 C
 * @param {number} minutes minutes from the first reading to the second: more than 0, at most 100000 min
 * @param {number} room temperature of the room: -20 to 45 C
 * @param {number} melting temperature at which the last of the wax is melted: the upper end of its melting range: -50
 *   to 160 C
 * @return {number}
 * @customfunction
 */
function CANDLE_COOLING_CONSTANT(first, second, minutes, room, melting) {
  return answer_("cooling_constant", arguments);
}
FUNCTIONS_.cooling_constant = {
  takes: { first: "0 to 160 C", second: "0 to 160 C", minutes: "more than 0, at most 100000 min", room: "-20 to 45 C", melting: "-50 to 160 C" },
  asks: [
    [(first, second, minutes, room, melting) => first > second, "the first reading must be the warmer one", "first", "second"],
    [(first, second, minutes, room, melting) => second > room, "both readings must be above the room", "second", "room"],
    [(first, second, minutes, room, melting) => second >= melting, "both readings must lie above the melting range: wax that sets gives up heat of its own", "second", "melting"],
  ],
  answer: (first, second, minutes, room, melting) => ratio_(ln_(ratio_(first - room, second - room)), minutes),
  gives: "more than 0 per min",
};

/**
 * Minutes after the first reading at which a stirred pot came down to a temperature between the two. Gives 0 or more
 * min. Answer in min; CANDLE_CONVERT puts it in another unit.
 * Source: Newton's law of cooling: OpenStax, Calculus volume 2, exponential growth and decay
 * @param {number} first first reading of the stirred pot: 0 to 160 C
 * @param {number} second second reading of the stirred pot: 0 to 160 C
 * @param {number} minutes minutes from the first reading to the second: more than 0, at most 100000 min
 * @param {number} room temperature of the room: -20 to 45 C
 * @param {number} melting temperature at which the last of the wax is melted: the upper end of its melting range: -50
 *   to 160 C
 * @param {number} temperature a temperature between the two readings: 0 to 160 C
 * @return {number}
 * @customfunction
 */
function CANDLE_COOLING_TIME(first, second, minutes, room, melting, temperature) {
  return answer_("cooling_time", arguments);
}
FUNCTIONS_.cooling_time = {
  takes: { first: "0 to 160 C", second: "0 to 160 C", minutes: "more than 0, at most 100000 min", room: "-20 to 45 C", melting: "-50 to 160 C", temperature: "0 to 160 C" },
  asks: [
    [(first, second, minutes, room, melting, temperature) => first > second, "the first reading must be the warmer one", "first", "second"],
    [(first, second, minutes, room, melting, temperature) => second > room, "both readings must be above the room", "second", "room"],
    [(first, second, minutes, room, melting, temperature) => second >= melting, "both readings must lie above the melting range: wax that sets gives up heat of its own", "second", "melting"],
    [(first, second, minutes, room, melting, temperature) => temperature <= first, "it holds between the two readings only: the temperature is above the first", "temperature", "first"],
    [(first, second, minutes, room, melting, temperature) => temperature >= second, "it holds between two readings: for a cooler one to come use cooling_forecast", "temperature", "second"],
  ],
  answer: (first, second, minutes, room, melting, temperature) => ratio_(minutes * ln_(ratio_(first - room, temperature - room)), ln_(ratio_(first - room, second - room))),
  gives: "0 or more min",
};

/**
 * Temperature of a stirred pot at a time between two readings. Gives 0 to 160 C. Answer in C; CANDLE_CONVERT puts it
 * in another unit.
 * Source: Newton's law of cooling: OpenStax, Calculus volume 2, exponential growth and decay
 * @param {number} first first reading of the stirred pot: 0 to 160 C
 * @param {number} second second reading of the stirred pot: 0 to 160 C
 * @param {number} minutes minutes from the first reading to the second: more than 0, at most 100000 min
 * @param {number} room temperature of the room: -20 to 45 C
 * @param {number} melting temperature at which the last of the wax is melted: the upper end of its melting range: -50
 *   to 160 C
 * @param {number} after minutes after the first reading: 0 to 100000 min
 * @return {number}
 * @customfunction
 */
function CANDLE_COOLING_TEMPERATURE(first, second, minutes, room, melting, after) {
  return answer_("cooling_temperature", arguments);
}
FUNCTIONS_.cooling_temperature = {
  takes: { first: "0 to 160 C", second: "0 to 160 C", minutes: "more than 0, at most 100000 min", room: "-20 to 45 C", melting: "-50 to 160 C", after: "0 to 100000 min" },
  asks: [
    [(first, second, minutes, room, melting, after) => first > second, "the first reading must be the warmer one", "first", "second"],
    [(first, second, minutes, room, melting, after) => second > room, "both readings must be above the room", "second", "room"],
    [(first, second, minutes, room, melting, after) => second >= melting, "both readings must lie above the melting range: wax that sets gives up heat of its own", "second", "melting"],
    [(first, second, minutes, room, melting, after) => after <= minutes, "it holds between the two readings only: the time is after the second", "after", "minutes"],
  ],
  answer: (first, second, minutes, room, melting, after) => room + (first - room) * power_(ratio_(second - room, first - room), ratio_(after, minutes)),
  gives: "0 to 160 C",
};

// -----------------------------------------------------------------------------------------------------------------
// Burning: how fast, from the maker's own weighings, with the interval that they deserve

/**
 * Rate of burning from one pair of weighings; it comes without an interval. Gives more than 0, at most 1000000 g/h.
 * Answer in g/h; CANDLE_CONVERT puts it in another unit.
 * Source: algebra from the definitions
 * @param {number} before what the candle weighed before the burn, jar and all: 0 or more g
 * @param {number} after what it weighed after the burn, jar and all: 0 or more g
 * @param {number} hours hours of burning: more than 0, at most 1000000 h
 * @return {number}
 * @customfunction
 */
function CANDLE_RATE_OF_ONE_BURN(before, after, hours) {
  return answer_("rate_of_one_burn", arguments);
}
FUNCTIONS_.rate_of_one_burn = {
  takes: { before: "0 or more g", after: "0 or more g", hours: "more than 0, at most 1000000 h" },
  asks: [
    [(before, after, hours) => after < before, "it must weigh less after the burn than before", "after", "before"],
  ],
  answer: (before, after, hours) => ratio_(before - after, hours),
  gives: "more than 0, at most 1000000 g/h",
};

/**
 * Rate of burning from a log of weighings: the slope of the straight line through them. Gives more than 0, at most
 * 1000000 g/h. Answer in g/h; CANDLE_CONVERT puts it in another unit.
 * Source: straight line by least squares, interval of its slope: NIST StRD (Norris), ISO/TS 28037 by its examples
 * @param {Array} hours hours burnt up to each weighing, all burns of this candle counted together: list, each 0 to
 *   10000 h
 * @param {Array} weights what the candle weighed then, jar and all: list, each 0 to 100000 g
 * @return {number}
 * @customfunction
 */
function CANDLE_BURN_RATE(hours, weights) {
  return answer_("burn_rate", arguments);
}
FUNCTIONS_.burn_rate = {
  takes: { hours: "list, each 0 to 10000 h", weights: "list, each 0 to 100000 g" },
  asks: [
    [(hours, weights) => max_(hours) > min_(hours), "two weighings at different hours, at least, are wanted", "hours"],
    [(hours, weights) => sum_(each_([hours, weights], (each_hours, each_weights) => each_hours * each_weights)) * count_(hours) < sum_(hours) * sum_(weights) * 0.999999999999, "the weights must fall as the hours grow", "hours", "weights"],
  ],
  answer: (hours, weights) => -slope_(weights, hours),
  gives: "more than 0, at most 1000000 g/h",
};

/**
 * Low end of the interval that the rate of burning of this candle lies in. Gives any amount g/h. Answer in g/h;
 * CANDLE_CONVERT puts it in another unit.
 * Source: straight line by least squares, interval of its slope: NIST StRD (Norris), ISO/TS 28037 by its examples
 * @param {Array} hours hours burnt up to each weighing, all burns of this candle counted together: list, each 0 to
 *   10000 h
 * @param {Array} weights what the candle weighed then, jar and all: list, each 0 to 100000 g
 * @param {number} [confidence] how often such an interval is to be right: 0.5 to 0.999 of the time; 0.95 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_BURN_RATE_LOW(hours, weights, confidence) {
  return answer_("burn_rate_low", arguments);
}
FUNCTIONS_.burn_rate_low = {
  takes: { hours: "list, each 0 to 10000 h", weights: "list, each 0 to 100000 g", confidence: "0.5 to 0.999 of the time" },
  left_out: {"confidence": 0.95},
  asks: [
    [(hours, weights, confidence) => max_(hours) > min_(hours), "two weighings at different hours, at least, are wanted", "hours"],
    [(hours, weights, confidence) => sum_(each_([hours, weights], (each_hours, each_weights) => each_hours * each_weights)) * count_(hours) < sum_(hours) * sum_(weights) * 0.999999999999, "the weights must fall as the hours grow", "hours", "weights"],
    [(hours, weights, confidence) => count_(hours) >= 3, "an interval takes three weighings at least", "hours"],
  ],
  answer: (hours, weights, confidence) => -slope_(weights, hours) - ratio_(tQuantile_(1 - confidence, count_(hours) - 2) * scatter_(weights, hours), root_(squaresAboutMean_(hours))),
  gives: "any amount g/h",
};

/**
 * High end of the interval that the rate of burning of this candle lies in. Gives any amount g/h. Answer in g/h;
 * CANDLE_CONVERT puts it in another unit.
 * Source: straight line by least squares, interval of its slope: NIST StRD (Norris), ISO/TS 28037 by its examples
 * @param {Array} hours hours burnt up to each weighing, all burns of this candle counted together: list, each 0 to
 *   10000 h
 * @param {Array} weights what the candle weighed then, jar and all: list, each 0 to 100000 g
 * @param {number} [confidence] how often such an interval is to be right: 0.5 to 0.999 of the time; 0.95 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_BURN_RATE_HIGH(hours, weights, confidence) {
  return answer_("burn_rate_high", arguments);
}
FUNCTIONS_.burn_rate_high = {
  takes: { hours: "list, each 0 to 10000 h", weights: "list, each 0 to 100000 g", confidence: "0.5 to 0.999 of the time" },
  left_out: {"confidence": 0.95},
  asks: [
    [(hours, weights, confidence) => max_(hours) > min_(hours), "two weighings at different hours, at least, are wanted", "hours"],
    [(hours, weights, confidence) => sum_(each_([hours, weights], (each_hours, each_weights) => each_hours * each_weights)) * count_(hours) < sum_(hours) * sum_(weights) * 0.999999999999, "the weights must fall as the hours grow", "hours", "weights"],
    [(hours, weights, confidence) => count_(hours) >= 3, "an interval takes three weighings at least", "hours"],
  ],
  answer: (hours, weights, confidence) => -slope_(weights, hours) + ratio_(tQuantile_(1 - confidence, count_(hours) - 2) * scatter_(weights, hours), root_(squaresAboutMean_(hours))),
  gives: "any amount g/h",
};

/**
 * How fast the next candle of a recipe may burn, from the rates of those tested. Gives more than 0, at most 1000000
 * g/h. Answer in g/h; CANDLE_CONVERT puts it in another unit.
 * Source: interval of a mean: OpenStax, Introductory Statistics 2e, confidence intervals; of one more, from memory
 * @param {Array} rates rate of burning of each candle of one recipe: list, each more than 0, at most 1000000 g/h
 * @param {number} [confidence] how often such an interval is to be right: 0.5 to 0.999 of the time; 0.95 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_FASTEST_CANDLE(rates, confidence) {
  return answer_("fastest_candle", arguments);
}
FUNCTIONS_.fastest_candle = {
  takes: { rates: "list, each more than 0, at most 1000000 g/h", confidence: "0.5 to 0.999 of the time" },
  left_out: {"confidence": 0.95},
  asks: [
    [(rates, confidence) => count_(rates) >= 2, "the rates of two candles at least are wanted", "rates"],
  ],
  answer: (rates, confidence) => mean_(rates) + tQuantile_(1 - confidence, count_(rates) - 1) * deviation_(rates) * root_(1 + ratio_(1, count_(rates))),
  gives: "more than 0, at most 1000000 g/h",
};

// -----------------------------------------------------------------------------------------------------------------
// Burning time: how long a fill burns, how many hours are left, and what an hour costs and warms

/**
 * Wax that stays in a round vessel when burning has to stop, by the depth that is left. Gives 0 or more g. Answer in
 * g; CANDLE_CONVERT puts it in another unit.
 * Source: elementary geometry; OpenStax, Prealgebra 2e (cylinder) and Calculus (solids cut across); the depth: common
 * practice, no source
 * @param {number} diameter an inside length of the vessel: 10 to 2000 mm
 * @param {number} density weight of a millilitre of the wax, at the temperature it is filled: 0.5 to 1.5 g/ml
 * @param {number} [depth] depth of wax at which burning stops: 0 to 500 mm; 13 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_WAX_THAT_STAYS(diameter, density, depth) {
  return answer_("wax_that_stays", arguments);
}
FUNCTIONS_.wax_that_stays = {
  takes: { diameter: "10 to 2000 mm", density: "0.5 to 1.5 g/ml", depth: "0 to 500 mm" },
  left_out: {"depth": 13.0},
  answer: (diameter, density, depth) => Math.PI / 4 * diameter ** 2 * depth / 1000 * density,
  gives: "0 or more g",
};

/**
 * Hours that a fill burns at a rate; `stays` is the wax left when burning has to stop. Gives 0 to 1000000 h. Answer in
 * h; CANDLE_CONVERT puts it in another unit.
 * Source: algebra from the definitions
 * @param {number} fill wax and oil together, as poured into a vessel or a batch: 0 or more g
 * @param {number} rate wax burnt in an hour: 1 to 500 g/h
 * @param {number} [stays] wax that stays in the vessel when burning stops: 0 or more g; 0 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_BURN_TIME(fill, rate, stays) {
  return answer_("burn_time", arguments);
}
FUNCTIONS_.burn_time = {
  takes: { fill: "0 or more g", rate: "1 to 500 g/h", stays: "0 or more g" },
  left_out: {"stays": 0.0},
  asks: [
    [(fill, rate, stays) => stays <= fill, "more wax cannot stay than was poured", "stays", "fill"],
  ],
  answer: (fill, rate, stays) => ratio_(fill - stays, rate),
  gives: "0 to 1000000 h",
};

/**
 * Hours of burning for a label: at the fastest rate, rounded down to whole hours. Gives whole numbers 0 to 1000000 h.
 * Answer in h; CANDLE_CONVERT puts it in another unit.
 * Source: algebra from the definitions
 * @param {number} fill wax and oil together, as poured into a vessel or a batch: 0 or more g
 * @param {number} fastest the fastest it may burn: the high end of the rate's interval: 1 to 500 g/h
 * @param {number} [stays] wax that stays in the vessel when burning stops: 0 or more g; 0 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_LABEL_HOURS(fill, fastest, stays) {
  return answer_("label_hours", arguments);
}
FUNCTIONS_.label_hours = {
  takes: { fill: "0 or more g", fastest: "1 to 500 g/h", stays: "0 or more g" },
  left_out: {"stays": 0.0},
  asks: [
    [(fill, fastest, stays) => stays <= fill, "more wax cannot stay than was poured", "stays", "fill"],
  ],
  answer: (fill, fastest, stays) => Math.floor(round_(ratio_(fill - stays, fastest), 6)),
  gives: "whole numbers 0 to 1000000 h",
};

/**
 * Hours left after the last weighing until the candle weighs what it must not go below. Gives 0 to 1000000 h. Answer
 * in h; CANDLE_CONVERT puts it in another unit.
 * Source: straight line by least squares, interval of its slope: NIST StRD (Norris), ISO/TS 28037 by its examples
 * @param {Array} hours hours burnt up to each weighing, all burns of this candle counted together: list, each 0 to
 *   10000 h
 * @param {Array} weights what the candle weighed then, jar and all: list, each 0 to 100000 g
 * @param {number} end what it weighs when burning has to stop: the jar, the wick and the wax that stays: 0 or more g
 * @return {number}
 * @customfunction
 */
function CANDLE_HOURS_LEFT(hours, weights, end) {
  return answer_("hours_left", arguments);
}
FUNCTIONS_.hours_left = {
  takes: { hours: "list, each 0 to 10000 h", weights: "list, each 0 to 100000 g", end: "0 or more g" },
  asks: [
    [(hours, weights, end) => max_(hours) > min_(hours), "two weighings at different hours, at least, are wanted", "hours"],
    [(hours, weights, end) => sum_(each_([hours, weights], (each_hours, each_weights) => each_hours * each_weights)) * count_(hours) < sum_(hours) * sum_(weights) * 0.999999999999, "the weights must fall as the hours grow", "hours", "weights"],
  ],
  answer: (hours, weights, end) => mean_(hours) - max_(hours) + ratio_(mean_(weights) - end, -slope_(weights, hours)),
  gives: "0 to 1000000 h",
};

/**
 * The fewest hours that may be left, as far as the log can tell; below 0 the end may be reached already. Gives any
 * amount h. Answer in h; CANDLE_CONVERT puts it in another unit.
 * Source: exact (Fieller) interval of a calibration line: Graybill and Iyer, Regression Analysis, 6, second-hand
 * @param {Array} hours hours burnt up to each weighing, all burns of this candle counted together: list, each 0 to
 *   10000 h
 * @param {Array} weights what the candle weighed then, jar and all: list, each 0 to 100000 g
 * @param {number} end what it weighs when burning has to stop: the jar, the wick and the wax that stays: 0 or more g
 * @param {number} [confidence] how often such an interval is to be right: 0.5 to 0.999 of the time; 0.95 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_HOURS_LEFT_LOW(hours, weights, end, confidence) {
  return answer_("hours_left_low", arguments);
}
FUNCTIONS_.hours_left_low = {
  takes: { hours: "list, each 0 to 10000 h", weights: "list, each 0 to 100000 g", end: "0 or more g", confidence: "0.5 to 0.999 of the time" },
  left_out: {"confidence": 0.95},
  asks: [
    [(hours, weights, end, confidence) => max_(hours) > min_(hours), "two weighings at different hours, at least, are wanted", "hours"],
    [(hours, weights, end, confidence) => sum_(each_([hours, weights], (each_hours, each_weights) => each_hours * each_weights)) * count_(hours) < sum_(hours) * sum_(weights) * 0.999999999999, "the weights must fall as the hours grow", "hours", "weights"],
    [(hours, weights, end, confidence) => count_(hours) >= 3, "an interval takes three weighings at least", "hours"],
  ],
  answer: (hours, weights, end, confidence) => (ratio_(ratio_(tQuantile_(1 - confidence, count_(hours) - 2) * scatter_(weights, hours), slope_(weights, hours)) ** 2, squaresAboutMean_(hours)) < 1 ? mean_(hours) - max_(hours) + ratio_(ratio_(mean_(weights) - end, -slope_(weights, hours)) - Math.abs(ratio_(tQuantile_(1 - confidence, count_(hours) - 2) * scatter_(weights, hours), slope_(weights, hours))) * root_((1 + ratio_(1, count_(hours))) * (1 - ratio_(ratio_(tQuantile_(1 - confidence, count_(hours) - 2) * scatter_(weights, hours), slope_(weights, hours)) ** 2, squaresAboutMean_(hours))) + ratio_(ratio_(mean_(weights) - end, -slope_(weights, hours)) ** 2, squaresAboutMean_(hours))), 1 - ratio_(ratio_(tQuantile_(1 - confidence, count_(hours) - 2) * scatter_(weights, hours), slope_(weights, hours)) ** 2, squaresAboutMean_(hours))) : none_()),
  gives: "any amount h",
};

/**
 * The most hours that may be left, as far as the log can tell. Gives any amount h. Answer in h; CANDLE_CONVERT puts it
 * in another unit.
 * Source: exact (Fieller) interval of a calibration line: Graybill and Iyer, Regression Analysis, 6, second-hand
 * @param {Array} hours hours burnt up to each weighing, all burns of this candle counted together: list, each 0 to
 *   10000 h
 * @param {Array} weights what the candle weighed then, jar and all: list, each 0 to 100000 g
 * @param {number} end what it weighs when burning has to stop: the jar, the wick and the wax that stays: 0 or more g
 * @param {number} [confidence] how often such an interval is to be right: 0.5 to 0.999 of the time; 0.95 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_HOURS_LEFT_HIGH(hours, weights, end, confidence) {
  return answer_("hours_left_high", arguments);
}
FUNCTIONS_.hours_left_high = {
  takes: { hours: "list, each 0 to 10000 h", weights: "list, each 0 to 100000 g", end: "0 or more g", confidence: "0.5 to 0.999 of the time" },
  left_out: {"confidence": 0.95},
  asks: [
    [(hours, weights, end, confidence) => max_(hours) > min_(hours), "two weighings at different hours, at least, are wanted", "hours"],
    [(hours, weights, end, confidence) => sum_(each_([hours, weights], (each_hours, each_weights) => each_hours * each_weights)) * count_(hours) < sum_(hours) * sum_(weights) * 0.999999999999, "the weights must fall as the hours grow", "hours", "weights"],
    [(hours, weights, end, confidence) => count_(hours) >= 3, "an interval takes three weighings at least", "hours"],
  ],
  answer: (hours, weights, end, confidence) => (ratio_(ratio_(tQuantile_(1 - confidence, count_(hours) - 2) * scatter_(weights, hours), slope_(weights, hours)) ** 2, squaresAboutMean_(hours)) < 1 ? mean_(hours) - max_(hours) + ratio_(ratio_(mean_(weights) - end, -slope_(weights, hours)) + Math.abs(ratio_(tQuantile_(1 - confidence, count_(hours) - 2) * scatter_(weights, hours), slope_(weights, hours))) * root_((1 + ratio_(1, count_(hours))) * (1 - ratio_(ratio_(tQuantile_(1 - confidence, count_(hours) - 2) * scatter_(weights, hours), slope_(weights, hours)) ** 2, squaresAboutMean_(hours))) + ratio_(ratio_(mean_(weights) - end, -slope_(weights, hours)) ** 2, squaresAboutMean_(hours))), 1 - ratio_(ratio_(tQuantile_(1 - confidence, count_(hours) - 2) * scatter_(weights, hours), slope_(weights, hours)) ** 2, squaresAboutMean_(hours))) : none_()),
  gives: "any amount h",
};

/**
 * What an hour of burning costs. Gives 0 or more money per h.
 * Source: algebra from the definitions
 * @param {number} cost what the candle costs: 0 or more
 * @param {number} hours hours of burning: more than 0, at most 1000000 h
 * @return {number}
 * @customfunction
 */
function CANDLE_COST_PER_BURN_HOUR(cost, hours) {
  return answer_("cost_per_burn_hour", arguments);
}
FUNCTIONS_.cost_per_burn_hour = {
  takes: { cost: "0 or more", hours: "more than 0, at most 1000000 h" },
  answer: (cost, hours) => ratio_(cost, hours),
  gives: "0 or more money per h",
};

/**
 * Heat that a candle gives to the room: some 12 W for each gram of paraffin an hour. Gives 0 or more W. Answer in W;
 * CANDLE_CONVERT puts it in another unit.
 * Source: lower heating values worked from heats of formation in a reference library: paraffin 43.5, stearic acid
 * 36.9; put in your data sheet's
 * @param {number} rate wax burnt in an hour: more than 0, at most 1000000 g/h
 * @param {number} [heat] heat that a kilogram of it gives as it burns (lower heating value): more than 0, at most 60
 *   MJ/kg; 43.5 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_BURN_HEAT(rate, heat) {
  return answer_("burn_heat", arguments);
}
FUNCTIONS_.burn_heat = {
  takes: { rate: "more than 0, at most 1000000 g/h", heat: "more than 0, at most 60 MJ/kg" },
  left_out: {"heat": 43.5},
  answer: (rate, heat) => rate * heat / 3.6,
  gives: "0 or more W",
};

// -----------------------------------------------------------------------------------------------------------------
// Melt pool and flame: how the pool grows to the wall, and how high the flame stands at a rate of burning

/**
 * How much wider the melt pool gets in an hour, from readings of one burn on its way to the wall. Gives more than 0
 * mm/h. Answer in mm/h; CANDLE_CONVERT puts it in another unit.
 * Source: straight line by least squares, interval of its slope: NIST StRD (Norris), ISO/TS 28037 by its examples
 * @param {Array} hours hours since lighting, at each reading: list, each 0 to 1000 h
 * @param {Array} widths how wide the melt pool was then, up to the wall: list, each 0 to 1000 mm
 * @return {number}
 * @customfunction
 */
function CANDLE_POOL_GROWTH(hours, widths) {
  return answer_("pool_growth", arguments);
}
FUNCTIONS_.pool_growth = {
  takes: { hours: "list, each 0 to 1000 h", widths: "list, each 0 to 1000 mm" },
  asks: [
    [(hours, widths) => max_(hours) > min_(hours), "two readings at different hours, at least, are wanted", "hours"],
    [(hours, widths) => sum_(each_([hours, widths], (each_hours, each_widths) => each_hours * each_widths)) * count_(hours) * 0.999999999999 > sum_(hours) * sum_(widths), "the pool must grow as the hours do: leave out readings taken once it had reached the wall", "hours", "widths"],
  ],
  answer: (hours, widths) => slope_(widths, hours),
  gives: "more than 0 mm/h",
};

/**
 * Hours from lighting until the melt pool reaches the wall, on the straight line through the readings. Gives 0 or more
 * h. Answer in h; CANDLE_CONVERT puts it in another unit.
 * Source: straight line by least squares, interval of its slope: NIST StRD (Norris), ISO/TS 28037 by its examples
 * @param {Array} hours hours since lighting, at each reading: list, each 0 to 1000 h
 * @param {Array} widths how wide the melt pool was then, up to the wall: list, each 0 to 1000 mm
 * @param {number} diameter an inside length of the vessel: 10 to 2000 mm
 * @return {number}
 * @customfunction
 */
function CANDLE_POOL_TIME(hours, widths, diameter) {
  return answer_("pool_time", arguments);
}
FUNCTIONS_.pool_time = {
  takes: { hours: "list, each 0 to 1000 h", widths: "list, each 0 to 1000 mm", diameter: "10 to 2000 mm" },
  asks: [
    [(hours, widths, diameter) => max_(hours) > min_(hours), "two readings at different hours, at least, are wanted", "hours"],
    [(hours, widths, diameter) => sum_(each_([hours, widths], (each_hours, each_widths) => each_hours * each_widths)) * count_(hours) * 0.999999999999 > sum_(hours) * sum_(widths), "the pool must grow as the hours do: leave out readings taken once it had reached the wall", "hours", "widths"],
    [(hours, widths, diameter) => max_(widths) <= diameter, "the pool cannot be wider than the vessel", "widths", "diameter"],
  ],
  answer: (hours, widths, diameter) => mean_(hours) + ratio_(diameter - mean_(widths), slope_(widths, hours)),
  gives: "0 or more h",
};

/**
 * Hours that makers usually expect the melt pool to take to the wall: one for each inch across. Gives 0 or more h.
 * Answer in h; CANDLE_CONVERT puts it in another unit.
 * Source: common practice, no source
 * @param {number} diameter an inside length of the vessel: 10 to 2000 mm
 * @return {number}
 * @customfunction
 */
function CANDLE_USUAL_POOL_TIME(diameter) {
  return answer_("usual_pool_time", arguments);
}
FUNCTIONS_.usual_pool_time = {
  takes: { diameter: "10 to 2000 mm" },
  answer: (diameter) => diameter / 25.4,
  gives: "0 or more h",
};

/**
 * Height of the flame to expect at a rate of burning, from the maker's own readings. Gives 0 or more mm. Answer in mm;
 * CANDLE_CONVERT puts it in another unit.
 * Source: line through the origin: NIST StRD (NoInt1); a candle's flame grows with its fuel: Sunderland et al.,
 * Proceedings of the Combustion Institute 33 (2011) 2489, second-hand
 * @param {number} rate wax burnt in an hour: more than 0, at most 1000000 g/h
 * @param {Array} rates rate of burning of each candle of one recipe: list, each more than 0, at most 1000000 g/h
 * @param {Array} heights how high the flame was at each of these rates: list, each 4 to 300 mm
 * @return {number}
 * @customfunction
 */
function CANDLE_FLAME_HEIGHT(rate, rates, heights) {
  return answer_("flame_height", arguments);
}
FUNCTIONS_.flame_height = {
  takes: { rate: "more than 0, at most 1000000 g/h", rates: "list, each more than 0, at most 1000000 g/h", heights: "list, each 4 to 300 mm" },
  asks: [
    [(rate, rates, heights) => count_(rates) >= 2, "readings at two rates at least are wanted", "rates"],
  ],
  answer: (rate, rates, heights) => ratio_(rate * sum_(each_([rates, heights], (each_rates, each_heights) => each_rates * each_heights)), sum_(each_([rates], (each_rates) => each_rates * each_rates))),
  gives: "0 or more mm",
};

/**
 * How tall the flame may get at a rate of burning, as far as the maker's own readings can tell. Gives 0 or more mm.
 * Answer in mm; CANDLE_CONVERT puts it in another unit.
 * Source: line through the origin: NIST StRD (NoInt1); a candle's flame grows with its fuel: Sunderland et al.,
 * Proceedings of the Combustion Institute 33 (2011) 2489, second-hand
 * @param {number} rate wax burnt in an hour: more than 0, at most 1000000 g/h
 * @param {Array} rates rate of burning of each candle of one recipe: list, each more than 0, at most 1000000 g/h
 * @param {Array} heights how high the flame was at each of these rates: list, each 4 to 300 mm
 * @param {number} [confidence] how often such an interval is to be right: 0.5 to 0.999 of the time; 0.95 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_FLAME_HEIGHT_HIGH(rate, rates, heights, confidence) {
  return answer_("flame_height_high", arguments);
}
FUNCTIONS_.flame_height_high = {
  takes: { rate: "more than 0, at most 1000000 g/h", rates: "list, each more than 0, at most 1000000 g/h", heights: "list, each 4 to 300 mm", confidence: "0.5 to 0.999 of the time" },
  left_out: {"confidence": 0.95},
  asks: [
    [(rate, rates, heights, confidence) => count_(rates) >= 2, "readings at two rates at least are wanted", "rates"],
  ],
  answer: (rate, rates, heights, confidence) => ratio_(rate * sum_(each_([rates, heights], (each_rates, each_heights) => each_rates * each_heights)), sum_(each_([rates], (each_rates) => each_rates * each_rates))) + tQuantile_(1 - confidence, count_(rates) - 1) * root_(ratio_(sum_(each_([heights, rates], (each_heights, each_rates) => (each_heights - ratio_(each_rates * sum_(each_([rates, heights], (each_rates, each_heights) => each_rates * each_heights)), sum_(each_([rates], (each_rates) => each_rates * each_rates)))) ** 2)), count_(rates) - 1) * (1 + ratio_(rate ** 2, sum_(each_([rates], (each_rates) => each_rates * each_rates))))),
  gives: "0 or more mm",
};

// -----------------------------------------------------------------------------------------------------------------
// Batch: weighing out to the scale's step, pots, pieces, and what is on hand

/**
 * A weight as the scale can show it: the nearest whole number of steps. Gives 0 or more g. Answer in g; CANDLE_CONVERT
 * puts it in another unit.
 * Source: common practice, no source
 * @param {number} weight a weight, in any unit; the answer is in the same unit: 0 or more g
 * @param {number} step a weight, in any unit; the answer is in the same unit: 0 or more g
 * @return {number}
 * @customfunction
 */
function CANDLE_TO_SCALE_STEP(weight, step) {
  return answer_("to_scale_step", arguments);
}
FUNCTIONS_.to_scale_step = {
  takes: { weight: "0 or more g", step: "0 or more g" },
  asks: [
    [(weight, step) => step > 0, "step must be more than 0", "step"],
  ],
  answer: (weight, step) => round_(round_(ratio_(weight, step), 6), 0) * step,
  gives: "0 or more g",
};

/**
 * What to weigh out for a batch, to the scale's step. Gives 0 or more g. Answer in g; CANDLE_CONVERT puts it in
 * another unit.
 * Source: common practice, no source
 * @param {number} each a weight, in any unit; the answer is in the same unit: 0 or more g
 * @param {number} count how many, a whole number: whole numbers 0 to 1000000
 * @param {number} step a weight, in any unit; the answer is in the same unit: 0 or more g
 * @return {number}
 * @customfunction
 */
function CANDLE_WEIGH_OUT(each, count, step) {
  return answer_("weigh_out", arguments);
}
FUNCTIONS_.weigh_out = {
  takes: { each: "0 or more g", count: "whole numbers 0 to 1000000", step: "0 or more g" },
  asks: [
    [(each, count, step) => step > 0, "step must be more than 0", "step"],
  ],
  answer: (each, count, step) => round_(round_(ratio_(each * count, step), 6), 0) * step,
  gives: "0 or more g",
};

/**
 * Full pots in a melt, where a pot holds so much at most. Gives whole numbers 0 to 1000000.
 * Source: common practice, no source
 * @param {number} melt a weight, in any unit; the answer is in the same unit: 0 or more g
 * @param {number} pot a weight, in any unit; the answer is in the same unit: 0 or more g
 * @return {number}
 * @customfunction
 */
function CANDLE_FULL_POTS(melt, pot) {
  return answer_("full_pots", arguments);
}
FUNCTIONS_.full_pots = {
  takes: { melt: "0 or more g", pot: "0 or more g" },
  asks: [
    [(melt, pot) => pot > 0, "the pot must hold more than 0", "pot"],
  ],
  answer: (melt, pot) => Math.floor(round_(ratio_(melt, pot), 6)),
  gives: "whole numbers 0 to 1000000",
};

/**
 * What is left for the last pot after the full ones; nothing where they take it all. Gives 0 or more g. Answer in g;
 * CANDLE_CONVERT puts it in another unit.
 * Source: common practice, no source
 * @param {number} melt a weight, in any unit; the answer is in the same unit: 0 or more g
 * @param {number} pots how many, a whole number: whole numbers 0 to 1000000
 * @param {number} pot a weight, in any unit; the answer is in the same unit: 0 or more g
 * @return {number}
 * @customfunction
 */
function CANDLE_LAST_POT(melt, pots, pot) {
  return answer_("last_pot", arguments);
}
FUNCTIONS_.last_pot = {
  takes: { melt: "0 or more g", pots: "whole numbers 0 to 1000000", pot: "0 or more g" },
  answer: (melt, pots, pot) => Math.max(0, round_(melt - pots * pot, 6)),
  gives: "0 or more g",
};

/**
 * What of one part goes into a pot, to the scale's step, where a candle takes `each` of `melt` in all. Gives 0 or more
 * g. Answer in g; CANDLE_CONVERT puts it in another unit.
 * Source: common practice, no source
 * @param {number} each a weight, in any unit; the answer is in the same unit: 0 or more g
 * @param {number} pot a weight, in any unit; the answer is in the same unit: 0 or more g
 * @param {number} melt a weight, in any unit; the answer is in the same unit: 0 or more g
 * @param {number} step a weight, in any unit; the answer is in the same unit: 0 or more g
 * @return {number}
 * @customfunction
 */
function CANDLE_WEIGH_FOR_POT(each, pot, melt, step) {
  return answer_("weigh_for_pot", arguments);
}
FUNCTIONS_.weigh_for_pot = {
  takes: { each: "0 or more g", pot: "0 or more g", melt: "0 or more g", step: "0 or more g" },
  asks: [
    [(each, pot, melt, step) => step > 0, "step must be more than 0", "step"],
    [(each, pot, melt, step) => melt > 0, "melt must be more than 0", "melt"],
  ],
  answer: (each, pot, melt, step) => round_(round_(ratio_(ratio_(each * pot, melt), step), 6), 0) * step,
  gives: "0 or more g",
};

/**
 * Pieces to count out for a batch. Gives whole numbers 0 to 1000000.
 * Source: algebra from the definitions
 * @param {number} each how many, a whole number: whole numbers 0 to 1000000
 * @param {number} count how many, a whole number: whole numbers 0 to 1000000
 * @return {number}
 * @customfunction
 */
function CANDLE_PIECES_FOR(each, count) {
  return answer_("pieces_for", arguments);
}
FUNCTIONS_.pieces_for = {
  takes: { each: "whole numbers 0 to 1000000", count: "whole numbers 0 to 1000000" },
  answer: (each, count) => each * count,
  gives: "whole numbers 0 to 1000000",
};

/**
 * How much is missing; nothing where there is enough. Gives 0 or more.
 * Source: algebra from the definitions
 * @param {number} needed how much of the material, in the unit that its cost is per: 0 or more
 * @param {number} on_hand how much of the material, in the unit that its cost is per: 0 or more
 * @return {number}
 * @customfunction
 */
function CANDLE_SHORT_BY(needed, on_hand) {
  return answer_("short_by", arguments);
}
FUNCTIONS_.short_by = {
  takes: { needed: "0 or more (2)", on_hand: "0 or more (2)" },
  answer: (needed, on_hand) => Math.max(0, needed - on_hand),
  gives: "0 or more (2)",
};

/**
 * Candles that what is on hand is enough for, where each takes the same weight. Gives whole numbers 0 to 1000000.
 * Source: common practice, no source
 * @param {number} available a weight, in any unit; the answer is in the same unit: 0 or more g
 * @param {number} each a weight, in any unit; the answer is in the same unit: 0 or more g
 * @return {number}
 * @customfunction
 */
function CANDLE_ENOUGH_FOR(available, each) {
  return answer_("enough_for", arguments);
}
FUNCTIONS_.enough_for = {
  takes: { available: "0 or more g", each: "0 or more g" },
  asks: [
    [(available, each) => each > 0, "each must be more than 0", "each"],
  ],
  answer: (available, each) => Math.floor(round_(ratio_(available, each), 6)),
  gives: "whole numbers 0 to 1000000",
};

// -----------------------------------------------------------------------------------------------------------------
// Cost: what a unit of material, a batch and a candle cost

/**
 * Cost of one unit out of a pack, with its share of shipping and the tax you cannot claim back. Gives 0 or more money
 * per unit.
 * Source: cost of purchase, freight and tax not recovered in it: IAS 2, from summaries; OpenStax, Financial Accounting
 * 6
 * @param {number} price price of the pack: 0 or more
 * @param {number} size what the pack holds: a weight, or how many pieces: more than 0
 * @param {number} [shipping] an amount of money: 0 or more; 0 if left out
 * @param {number} [tax] an amount of money: 0 or more; 0 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_UNIT_COST(price, size, shipping, tax) {
  return answer_("unit_cost", arguments);
}
FUNCTIONS_.unit_cost = {
  takes: { price: "0 or more", size: "more than 0", shipping: "0 or more", tax: "0 or more" },
  left_out: {"shipping": 0.0, "tax": 0.0},
  answer: (price, size, shipping, tax) => ratio_(price + shipping + tax, size),
  gives: "0 or more money per unit",
};

/**
 * Cost of an amount of material at its unit cost. Gives 0 or more.
 * Source: job cost: OpenStax, Managerial Accounting, chapter 4
 * @param {number} amount how much of the material, in the unit that its cost is per: 0 or more
 * @param {number} cost cost of one unit of the material: a piece, or a unit of weight: 0 or more money per unit
 * @return {number}
 * @customfunction
 */
function CANDLE_MATERIAL_COST(amount, cost) {
  return answer_("material_cost", arguments);
}
FUNCTIONS_.material_cost = {
  takes: { amount: "0 or more (2)", cost: "0 or more money per unit" },
  answer: (amount, cost) => amount * cost,
  gives: "0 or more",
};

/**
 * A quantity in another unit, by how many of that unit make one. Gives 0 or more.
 * Source: algebra from the definitions
 * @param {number} size how much of the material, in the unit that its cost is per: 0 or more
 * @param {number} factor how many of the other unit make one of this: more than 0
 * @return {number}
 * @customfunction
 */
function CANDLE_IN_UNIT(size, factor) {
  return answer_("in_unit", arguments);
}
FUNCTIONS_.in_unit = {
  takes: { size: "0 or more (2)", factor: "more than 0" },
  answer: (size, factor) => size * factor,
  gives: "0 or more (2)",
};

/**
 * Cost of several parts: how much of each, at its unit cost. Gives 0 or more.
 * Source: job cost: OpenStax, Managerial Accounting, chapter 4
 * @param {Array} amounts how much of each part, in the unit its cost is per: list, each 0 or more
 * @param {Array} costs cost of one unit of each part: list, each 0 or more money per unit
 * @return {number}
 * @customfunction
 */
function CANDLE_PARTS_COST(amounts, costs) {
  return answer_("parts_cost", arguments);
}
FUNCTIONS_.parts_cost = {
  takes: { amounts: "list, each 0 or more", costs: "list, each 0 or more money per unit" },
  answer: (amounts, costs) => sum_(each_([amounts, costs], (each_amounts, each_costs) => each_amounts * each_costs)),
  gives: "0 or more",
};

/**
 * What to weigh out so that a wanted amount is left after waste. Gives 0 or more g. Answer in g; CANDLE_CONVERT puts
 * it in another unit.
 * Source: common practice, no source
 * @param {number} amount a weight, in any unit; the answer is in the same unit: 0 or more g
 * @param {number} waste share lost in pots, jugs, wicks dipped and spills: 0 to 0.5 of what is weighed out
 * @return {number}
 * @customfunction
 */
function CANDLE_BEFORE_WASTE(amount, waste) {
  return answer_("before_waste", arguments);
}
FUNCTIONS_.before_waste = {
  takes: { amount: "0 or more g", waste: "0 to 0.5 of what is weighed out" },
  answer: (amount, waste) => ratio_(amount, 1 - waste),
  gives: "0 or more g",
};

/**
 * Yield of a batch: the share that came out good enough to sell. Gives 0 to 1 of what was made.
 * Source: common practice, no source
 * @param {number} good how many, a whole number: whole numbers 0 to 1000000
 * @param {number} made how many, a whole number: whole numbers 0 to 1000000
 * @return {number}
 * @customfunction
 */
function CANDLE_YIELD_OF(good, made) {
  return answer_("yield_of", arguments);
}
FUNCTIONS_.yield_of = {
  takes: { good: "whole numbers 0 to 1000000", made: "whole numbers 0 to 1000000" },
  asks: [
    [(good, made) => good <= made, "there cannot be more good ones than were made", "good", "made"],
    [(good, made) => made > 0, "made must be more than 0", "made"],
  ],
  answer: (good, made) => ratio_(good, made),
  gives: "0 to 1 of what was made",
};

/**
 * Working minutes a candle, with its share of the time to set up and clean. Gives 0 to 1000000 min. Answer in min;
 * CANDLE_CONVERT puts it in another unit.
 * Source: common practice, no source
 * @param {number} each working time: 0 to 1000000 min
 * @param {number} setup working time: 0 to 1000000 min
 * @param {number} batch how many candles are made together: whole numbers 1 to 1000000
 * @return {number}
 * @customfunction
 */
function CANDLE_MINUTES_EACH(each, setup, batch) {
  return answer_("minutes_each", arguments);
}
FUNCTIONS_.minutes_each = {
  takes: { each: "0 to 1000000 min", setup: "0 to 1000000 min", batch: "whole numbers 1 to 1000000" },
  answer: (each, setup, batch) => each + ratio_(setup, batch),
  gives: "0 to 1000000 min",
};

/**
 * Working minutes that are paid help, by their share of the time. Gives 0 to 1000000 min. Answer in min;
 * CANDLE_CONVERT puts it in another unit.
 * Source: algebra from the definitions
 * @param {number} minutes working time: 0 to 1000000 min
 * @param {number} share share of the working time that is paid help: 0 to 1 of the time
 * @return {number}
 * @customfunction
 */
function CANDLE_PAID_MINUTES(minutes, share) {
  return answer_("paid_minutes", arguments);
}
FUNCTIONS_.paid_minutes = {
  takes: { minutes: "0 to 1000000 min", share: "0 to 1 of the time" },
  answer: (minutes, share) => minutes * share,
  gives: "0 to 1000000 min",
};

/**
 * Working minutes of the maker's own, where `share` of the time is paid help. Gives 0 to 1000000 min. Answer in min;
 * CANDLE_CONVERT puts it in another unit.
 * Source: algebra from the definitions
 * @param {number} minutes working time: 0 to 1000000 min
 * @param {number} share share of the working time that is paid help: 0 to 1 of the time
 * @return {number}
 * @customfunction
 */
function CANDLE_OWN_MINUTES(minutes, share) {
  return answer_("own_minutes", arguments);
}
FUNCTIONS_.own_minutes = {
  takes: { minutes: "0 to 1000000 min", share: "0 to 1 of the time" },
  answer: (minutes, share) => minutes * (1 - share),
  gives: "0 to 1000000 min",
};

/**
 * Cost of working time at an hourly rate: paid help or the maker's own. Gives 0 or more.
 * Source: job cost: OpenStax, Managerial Accounting, chapter 4
 * @param {number} minutes working time: 0 to 1000000 min
 * @param {number} rate money for an hour of work: 0 or more money per h
 * @param {number} [people] how many people work at it: 0 to 1000; 1 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_LABOUR_COST(minutes, rate, people) {
  return answer_("labour_cost", arguments);
}
FUNCTIONS_.labour_cost = {
  takes: { minutes: "0 to 1000000 min", rate: "0 or more money per h", people: "0 to 1000" },
  left_out: {"people": 1.0},
  answer: (minutes, rate, people) => minutes / 60 * people * rate,
  gives: "0 or more",
};

/**
 * Overhead for each hour of work, from a budget for the season and the hours it is spread over. Gives 0 or more money
 * per h.
 * Source: predetermined overhead rate: OpenStax, Managerial Accounting 4.4
 * @param {number} overhead an amount of money: 0 or more
 * @param {number} activity hours of work over the same time: more than 0, at most 1000000 h
 * @return {number}
 * @customfunction
 */
function CANDLE_OVERHEAD_RATE(overhead, activity) {
  return answer_("overhead_rate", arguments);
}
FUNCTIONS_.overhead_rate = {
  takes: { overhead: "0 or more", activity: "more than 0, at most 1000000 h" },
  answer: (overhead, activity) => ratio_(overhead, activity),
  gives: "0 or more money per h",
};

/**
 * Overhead that working time carries at a rate for the hour. Gives 0 or more.
 * Source: predetermined overhead rate: OpenStax, Managerial Accounting 4.4
 * @param {number} minutes working time: 0 to 1000000 min
 * @param {number} rate money for an hour of work: 0 or more money per h
 * @return {number}
 * @customfunction
 */
function CANDLE_OVERHEAD_COST(minutes, rate) {
  return answer_("overhead_cost", arguments);
}
FUNCTIONS_.overhead_cost = {
  takes: { minutes: "0 to 1000000 min", rate: "0 or more money per h" },
  answer: (minutes, rate) => minutes / 60 * rate,
  gives: "0 or more",
};

/**
 * Making cost of a batch or a candle: materials, paid labour, production overhead. Gives 0 or more.
 * Source: job cost: OpenStax, Managerial Accounting, chapter 4
 * @param {number} materials an amount of money: 0 or more
 * @param {number} labour an amount of money: 0 or more
 * @param {number} overhead an amount of money: 0 or more
 * @return {number}
 * @customfunction
 */
function CANDLE_MAKING_COST(materials, labour, overhead) {
  return answer_("making_cost", arguments);
}
FUNCTIONS_.making_cost = {
  takes: { materials: "0 or more", labour: "0 or more", overhead: "0 or more" },
  answer: (materials, labour, overhead) => materials + labour + overhead,
  gives: "0 or more",
};

/**
 * Full cost of a batch or a candle: making cost, the maker's own time, costs of running. Gives 0 or more.
 * Source: common practice, no source
 * @param {number} making what the candle costs: 0 or more
 * @param {number} own_time an amount of money: 0 or more
 * @param {number} running an amount of money: 0 or more
 * @return {number}
 * @customfunction
 */
function CANDLE_FULL_COST(making, own_time, running) {
  return answer_("full_cost", arguments);
}
FUNCTIONS_.full_cost = {
  takes: { making: "0 or more", own_time: "0 or more", running: "0 or more" },
  answer: (making, own_time, running) => making + own_time + running,
  gives: "0 or more",
};

/**
 * Cost of one candle out of a batch. Gives 0 or more.
 * Source: algebra from the definitions
 * @param {number} cost what the candle costs: 0 or more
 * @param {number} batch how many candles are made together: whole numbers 1 to 1000000
 * @return {number}
 * @customfunction
 */
function CANDLE_COST_EACH(cost, batch) {
  return answer_("cost_each", arguments);
}
FUNCTIONS_.cost_each = {
  takes: { cost: "0 or more", batch: "whole numbers 1 to 1000000" },
  answer: (cost, batch) => ratio_(cost, batch),
  gives: "0 or more",
};

/**
 * Cost of a candle at another batch size: what it costs at the usual one, its set-up spread anew. Gives 0 or more.
 * Source: algebra from the definitions
 * @param {number} cost what the candle costs: 0 or more
 * @param {number} setup an amount of money: 0 or more
 * @param {number} usual how many candles are made together: whole numbers 1 to 1000000
 * @param {number} batch how many candles are made together: whole numbers 1 to 1000000
 * @return {number}
 * @customfunction
 */
function CANDLE_COST_AT_BATCH(cost, setup, usual, batch) {
  return answer_("cost_at_batch", arguments);
}
FUNCTIONS_.cost_at_batch = {
  takes: { cost: "0 or more", setup: "0 or more", usual: "whole numbers 1 to 1000000", batch: "whole numbers 1 to 1000000" },
  answer: (cost, setup, usual, batch) => cost + ratio_(setup, batch) - ratio_(setup, usual),
  gives: "0 or more",
};

/**
 * A cost after the price of the materials in it rises (or falls, with a minus) by a share. Gives 0 or more.
 * Source: algebra from the definitions
 * @param {number} cost what the candle costs: 0 or more
 * @param {number} materials an amount of money: 0 or more
 * @param {number} rise how far prices rise; minus for a fall: -0.9 to 2 of today's cost
 * @return {number}
 * @customfunction
 */
function CANDLE_COST_WITH_RISE(cost, materials, rise) {
  return answer_("cost_with_rise", arguments);
}
FUNCTIONS_.cost_with_rise = {
  takes: { cost: "0 or more", materials: "0 or more", rise: "-0.9 to 2 of today's cost" },
  answer: (cost, materials, rise) => cost + materials * rise,
  gives: "0 or more",
};

/**
 * Cost of so many candles alike. Gives 0 or more.
 * Source: algebra from the definitions
 * @param {number} cost what the candle costs: 0 or more
 * @param {number} count how many, a whole number: whole numbers 0 to 1000000
 * @return {number}
 * @customfunction
 */
function CANDLE_COST_OF_ALL(cost, count) {
  return answer_("cost_of_all", arguments);
}
FUNCTIONS_.cost_of_all = {
  takes: { cost: "0 or more", count: "whole numbers 0 to 1000000" },
  answer: (cost, count) => cost * count,
  gives: "0 or more",
};

// -----------------------------------------------------------------------------------------------------------------
// Price: from cost to a price in each place, and what is left of it

/**
 * Margin on the price that a markup on cost comes to: 100 % markup is 50 % margin. Gives 0 to 0.99 of the price.
 * Source: markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2
 * @param {number} markup what is added to the cost, as a share of the cost: 0 to 10 of cost
 * @return {number}
 * @customfunction
 */
function CANDLE_MARGIN_FROM_MARKUP(markup) {
  return answer_("margin_from_markup", arguments);
}
FUNCTIONS_.margin_from_markup = {
  takes: { markup: "0 to 10 of cost" },
  answer: (markup) => ratio_(markup, 1 + markup),
  gives: "0 to 0.99 of the price",
};

/**
 * Markup on cost that a margin on the price comes to. Gives 0 to 1000 of cost.
 * Source: markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2
 * @param {number} margin profit as a share of the price before tax: 0 to 0.99 of the price
 * @return {number}
 * @customfunction
 */
function CANDLE_MARKUP_FROM_MARGIN(margin) {
  return answer_("markup_from_margin", arguments);
}
FUNCTIONS_.markup_from_margin = {
  takes: { margin: "0 to 0.99 of the price" },
  answer: (margin) => ratio_(margin, 1 - margin),
  gives: "0 to 1000 of cost",
};

/**
 * Price before tax from a markup on cost. Gives 0 or more.
 * Source: markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2
 * @param {number} cost what the candle costs: 0 or more
 * @param {number} markup what is added to the cost, as a share of the cost: 0 to 10 of cost
 * @return {number}
 * @customfunction
 */
function CANDLE_PRICE_FROM_MARKUP(cost, markup) {
  return answer_("price_from_markup", arguments);
}
FUNCTIONS_.price_from_markup = {
  takes: { cost: "0 or more", markup: "0 to 10 of cost" },
  answer: (cost, markup) => cost * (1 + markup),
  gives: "0 or more",
};

/**
 * What an order costs the maker besides its candles, less the postage the buyer pays. Gives any amount.
 * Source: algebra from the definitions
 * @param {number} [fee] an amount of money: 0 or more; 0 if left out
 * @param {number} [postage] an amount of money: 0 or more; 0 if left out
 * @param {number} [packing] an amount of money: 0 or more; 0 if left out
 * @param {number} [charged] an amount of money: 0 or more; 0 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_ORDER_COST(fee, postage, packing, charged) {
  return answer_("order_cost", arguments);
}
FUNCTIONS_.order_cost = {
  takes: { fee: "0 or more", postage: "0 or more", packing: "0 or more", charged: "0 or more" },
  left_out: {"fee": 0.0, "postage": 0.0, "packing": 0.0, "charged": 0.0},
  answer: (fee, postage, packing, charged) => fee + postage + packing - charged,
  gives: "any amount",
};

/**
 * The smallest fee of an order, as each candle's part of it. Gives 0 or more.
 * Source: algebra from the definitions
 * @param {number} least an amount of money: 0 or more
 * @param {number} per_order how many candles an order holds on average: 1 to 1000000
 * @return {number}
 * @customfunction
 */
function CANDLE_LEAST_EACH(least, per_order) {
  return answer_("least_each", arguments);
}
FUNCTIONS_.least_each = {
  takes: { least: "0 or more", per_order: "1 to 1000000" },
  answer: (least, per_order) => ratio_(least, per_order),
  gives: "0 or more",
};

/**
 * What a place costs over the season, from its cost a day or a month. Gives 0 or more.
 * Source: algebra from the definitions
 * @param {number} cost an amount of money: 0 or more
 * @param {number} times how many days or months of it there are: 0 to 1000000
 * @return {number}
 * @customfunction
 */
function CANDLE_FIXED_FOR_SEASON(cost, times) {
  return answer_("fixed_for_season", arguments);
}
FUNCTIONS_.fixed_for_season = {
  takes: { cost: "0 or more", times: "0 to 1000000" },
  answer: (cost, times) => cost * times,
  gives: "0 or more",
};

/**
 * What a sale costs each candle in fixed sums: those of every item, and its part of those of an order. Gives any
 * amount.
 * Source: algebra from the definitions
 * @param {number} item an amount of money: 0 or more
 * @param {number} order an amount of money; minus for a credit or a loss: any amount
 * @param {number} per_order how many candles an order holds on average: 1 to 1000000
 * @return {number}
 * @customfunction
 */
function CANDLE_FIXED_EACH(item, order, per_order) {
  return answer_("fixed_each", arguments);
}
FUNCTIONS_.fixed_each = {
  takes: { item: "0 or more", order: "any amount", per_order: "1 to 1000000" },
  answer: (item, order, per_order) => item + ratio_(order, per_order),
  gives: "any amount",
};

/**
 * The tax rate that a buyer is charged: the rate, or nothing where nobody collects tax. Gives 0 to 1 of the price
 * before tax.
 * Source: common practice, no source
 * @param {number} rate rate of sales tax or VAT: 0 to 1 of the price before tax
 * @param {string} collector who charges the buyer sales tax or VAT and pays it over: "maker" or "place" or "nobody"
 * @return {number}
 * @customfunction
 */
function CANDLE_TAX_CHARGED(rate, collector) {
  return answer_("tax_charged", arguments);
}
FUNCTIONS_.tax_charged = {
  takes: { rate: "0 to 1 of the price before tax", collector: "\"maker\" or \"place\" or \"nobody\"" },
  answer: (rate, collector) => rate * (collector !== "nobody"),
  gives: "0 to 1 of the price before tax",
};

/**
 * Price before tax that leaves a wanted margin after the place has taken its fees. Gives 0 or more.
 * Source: algebra from the definitions
 * @param {number} cost what the candle costs: 0 or more
 * @param {number} margin profit as a share of the price before tax: 0 to 0.99 of the price
 * @param {number} [fee] what the place keeps of the price: 0 to 0.95 of the price; 0 if left out
 * @param {number} [fixed] an amount of money; minus for a credit or a loss: any amount; 0 if left out
 * @param {number} [tax] rate of sales tax or VAT: 0 to 1 of the price before tax; 0 if left out
 * @param {string} [basis] what the fee is a share of: the price before tax (net) or with tax (gross): "net" or
 *   "gross"; net if left out
 * @param {number} [least] an amount of money: 0 or more; 0 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_PRICE_FOR_MARGIN(cost, margin, fee, fixed, tax, basis, least) {
  return answer_("price_for_margin", arguments);
}
FUNCTIONS_.price_for_margin = {
  takes: { cost: "0 or more", margin: "0 to 0.99 of the price", fee: "0 to 0.95 of the price", fixed: "any amount", tax: "0 to 1 of the price before tax", basis: "\"net\" or \"gross\"", least: "0 or more" },
  left_out: {"fee": 0.0, "fixed": 0.0, "tax": 0.0, "basis": "net", "least": 0.0},
  asks: [
    [(cost, margin, fee, fixed, tax, basis, least) => margin + fee * (1 + tax * (basis === "gross")) < 1, "margin and fee together must stay below 1", "margin", "fee", "tax", "basis"],
    [(cost, margin, fee, fixed, tax, basis, least) => round_(cost + fixed - 0, 9) >= 0, "what the buyer pays for postage must not be more than the cost", "cost", "fixed"],
  ],
  answer: (cost, margin, fee, fixed, tax, basis, least) => Math.max(ratio_(cost + fixed, 1 - margin - fee * (1 + tax * (basis === "gross"))), ratio_(cost + fixed + least, 1 - margin)),
  gives: "0 or more",
};

/**
 * Lowest price before tax that still covers the materials and the place's fees. Gives 0 or more.
 * Source: algebra from the definitions
 * @param {number} materials what the candle costs: 0 or more
 * @param {number} [fee] what the place keeps of the price: 0 to 0.95 of the price; 0 if left out
 * @param {number} [fixed] an amount of money; minus for a credit or a loss: any amount; 0 if left out
 * @param {number} [tax] rate of sales tax or VAT: 0 to 1 of the price before tax; 0 if left out
 * @param {string} [basis] what the fee is a share of: the price before tax (net) or with tax (gross): "net" or
 *   "gross"; net if left out
 * @param {number} [least] an amount of money: 0 or more; 0 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_LOWEST_PRICE(materials, fee, fixed, tax, basis, least) {
  return answer_("lowest_price", arguments);
}
FUNCTIONS_.lowest_price = {
  takes: { materials: "0 or more", fee: "0 to 0.95 of the price", fixed: "any amount", tax: "0 to 1 of the price before tax", basis: "\"net\" or \"gross\"", least: "0 or more" },
  left_out: {"fee": 0.0, "fixed": 0.0, "tax": 0.0, "basis": "net", "least": 0.0},
  asks: [
    [(materials, fee, fixed, tax, basis, least) => fee * (1 + tax * (basis === "gross")) < 1, "the fee must leave something of the price", "fee", "tax", "basis"],
    [(materials, fee, fixed, tax, basis, least) => round_(materials + fixed - 0, 9) >= 0, "what the buyer pays for postage must not be more than the cost", "materials", "fixed"],
  ],
  answer: (materials, fee, fixed, tax, basis, least) => Math.max(ratio_(materials + fixed, 1 - fee * (1 + tax * (basis === "gross"))), materials + fixed + least),
  gives: "0 or more",
};

/**
 * What the place takes of a price by its percentage, and at least its smallest fee. Gives 0 or more.
 * Source: algebra from the definitions
 * @param {number} price price before tax: 0 or more
 * @param {number} fee what the place keeps of the price: 0 to 0.95 of the price
 * @param {number} [tax] rate of sales tax or VAT: 0 to 1 of the price before tax; 0 if left out
 * @param {string} [basis] what the fee is a share of: the price before tax (net) or with tax (gross): "net" or
 *   "gross"; net if left out
 * @param {number} [least] an amount of money: 0 or more; 0 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_FEE_AT(price, fee, tax, basis, least) {
  return answer_("fee_at", arguments);
}
FUNCTIONS_.fee_at = {
  takes: { price: "0 or more", fee: "0 to 0.95 of the price", tax: "0 to 1 of the price before tax", basis: "\"net\" or \"gross\"", least: "0 or more" },
  left_out: {"tax": 0.0, "basis": "net", "least": 0.0},
  answer: (price, fee, tax, basis, least) => Math.max(price * fee * (1 + tax * (basis === "gross")), least),
  gives: "0 or more",
};

/**
 * Profit on a candle at a price before tax, after its cost and all the place's fees. Gives any amount.
 * Source: algebra from the definitions
 * @param {number} price price before tax: 0 or more
 * @param {number} cost what the candle costs: 0 or more
 * @param {number} [fees] an amount of money; minus for a credit or a loss: any amount; 0 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_PROFIT_AT(price, cost, fees) {
  return answer_("profit_at", arguments);
}
FUNCTIONS_.profit_at = {
  takes: { price: "0 or more", cost: "0 or more", fees: "any amount" },
  left_out: {"fees": 0.0},
  answer: (price, cost, fees) => price - cost - fees,
  gives: "any amount",
};

/**
 * Margin that a profit is of the price before tax. Gives any amount of the price.
 * Source: markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2
 * @param {number} profit an amount of money; minus for a credit or a loss: any amount
 * @param {number} price price before tax: 0 or more
 * @return {number}
 * @customfunction
 */
function CANDLE_MARGIN_AT(profit, price) {
  return answer_("margin_at", arguments);
}
FUNCTIONS_.margin_at = {
  takes: { profit: "any amount", price: "0 or more" },
  asks: [
    [(profit, price) => price > 0, "price must be more than 0", "price"],
  ],
  answer: (profit, price) => ratio_(profit, price),
  gives: "any amount of the price",
};

/**
 * Price with tax from the price before tax. Gives 0 or more.
 * Source: markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2
 * @param {number} price price before tax: 0 or more
 * @param {number} tax rate of sales tax or VAT: 0 to 1 of the price before tax
 * @return {number}
 * @customfunction
 */
function CANDLE_ADD_TAX(price, tax) {
  return answer_("add_tax", arguments);
}
FUNCTIONS_.add_tax = {
  takes: { price: "0 or more", tax: "0 to 1 of the price before tax" },
  answer: (price, tax) => price * (1 + tax),
  gives: "0 or more",
};

/**
 * Price before tax from a price with tax in it. Gives 0 or more.
 * Source: markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2
 * @param {number} price price with tax in it: 0 or more
 * @param {number} tax rate of sales tax or VAT: 0 to 1 of the price before tax
 * @return {number}
 * @customfunction
 */
function CANDLE_TAKE_OUT_TAX(price, tax) {
  return answer_("take_out_tax", arguments);
}
FUNCTIONS_.take_out_tax = {
  takes: { price: "0 or more", tax: "0 to 1 of the price before tax" },
  answer: (price, tax) => ratio_(price, 1 + tax),
  gives: "0 or more",
};

/**
 * The tax that comes on a price before tax. Gives 0 or more.
 * Source: markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2
 * @param {number} price price before tax: 0 or more
 * @param {number} tax rate of sales tax or VAT: 0 to 1 of the price before tax
 * @return {number}
 * @customfunction
 */
function CANDLE_TAX_ON(price, tax) {
  return answer_("tax_on", arguments);
}
FUNCTIONS_.tax_on = {
  takes: { price: "0 or more", tax: "0 to 1 of the price before tax" },
  answer: (price, tax) => price * tax,
  gives: "0 or more",
};

/**
 * The tax that a price with tax holds. Gives 0 or more.
 * Source: markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2
 * @param {number} price price with tax in it: 0 or more
 * @param {number} tax rate of sales tax or VAT: 0 to 1 of the price before tax
 * @return {number}
 * @customfunction
 */
function CANDLE_TAX_IN_PRICE(price, tax) {
  return answer_("tax_in_price", arguments);
}
FUNCTIONS_.tax_in_price = {
  takes: { price: "0 or more", tax: "0 to 1 of the price before tax" },
  answer: (price, tax) => ratio_(price * tax, 1 + tax),
  gives: "0 or more",
};

/**
 * Price after discounts in a row: each is taken off what the one before left. Gives 0 or more.
 * Source: markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2
 * @param {number} price price as the place states it, with tax in it or not: 0 or more
 * @param {number} first what is taken off the price: 0 to 0.99 of the price
 * @param {number} [second] what is taken off the price: 0 to 0.99 of the price; 0 if left out
 * @param {number} [third] what is taken off the price: 0 to 0.99 of the price; 0 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_AFTER_DISCOUNTS(price, first, second, third) {
  return answer_("after_discounts", arguments);
}
FUNCTIONS_.after_discounts = {
  takes: { price: "0 or more", first: "0 to 0.99 of the price", second: "0 to 0.99 of the price", third: "0 to 0.99 of the price" },
  left_out: {"second": 0.0, "third": 0.0},
  answer: (price, first, second, third) => price * (1 - first) * (1 - second) * (1 - third),
  gives: "0 or more",
};

/**
 * Price to a shop, from the retail price and the shop's discount. Gives 0 or more.
 * Source: markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2
 * @param {number} retail price as the place states it, with tax in it or not: 0 or more
 * @param {number} discount what is taken off the price: 0 to 0.99 of the price
 * @return {number}
 * @customfunction
 */
function CANDLE_WHOLESALE_PRICE(retail, discount) {
  return answer_("wholesale_price", arguments);
}
FUNCTIONS_.wholesale_price = {
  takes: { retail: "0 or more", discount: "0 to 0.99 of the price" },
  answer: (retail, discount) => retail * (1 - discount),
  gives: "0 or more",
};

/**
 * Price before tax that a stated price leaves: less the discount, less the tax if it is in it. Gives 0 or more.
 * Source: markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2
 * @param {number} shelf price as the place states it, with tax in it or not: 0 or more
 * @param {number} discount what is taken off the price: 0 to 0.99 of the price
 * @param {number} tax rate of sales tax or VAT: 0 to 1 of the price before tax
 * @param {string} stated whether the place states its prices with tax in them: "with tax" or "before tax"
 * @return {number}
 * @customfunction
 */
function CANDLE_PRICE_RECEIVED(shelf, discount, tax, stated) {
  return answer_("price_received", arguments);
}
FUNCTIONS_.price_received = {
  takes: { shelf: "0 or more", discount: "0 to 0.99 of the price", tax: "0 to 1 of the price before tax", stated: "\"with tax\" or \"before tax\"" },
  answer: (shelf, discount, tax, stated) => ratio_(shelf * (1 - discount), 1 + tax * (stated === "with tax")),
  gives: "0 or more",
};

/**
 * Price to state so that a wanted price before tax is received: the inverse of `price_received`. Gives 0 or more.
 * Source: markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2
 * @param {number} price price before tax: 0 or more
 * @param {number} discount what is taken off the price: 0 to 0.99 of the price
 * @param {number} tax rate of sales tax or VAT: 0 to 1 of the price before tax
 * @param {string} stated whether the place states its prices with tax in them: "with tax" or "before tax"
 * @return {number}
 * @customfunction
 */
function CANDLE_PRICE_TO_STATE(price, discount, tax, stated) {
  return answer_("price_to_state", arguments);
}
FUNCTIONS_.price_to_state = {
  takes: { price: "0 or more", discount: "0 to 0.99 of the price", tax: "0 to 1 of the price before tax", stated: "\"with tax\" or \"before tax\"" },
  answer: (price, discount, tax, stated) => ratio_(price * (1 + tax * (stated === "with tax")), 1 - discount),
  gives: "0 or more",
};

/**
 * The next price up that the maker uses: a whole number of steps, plus the ending. Gives 0 or more.
 * Source: common practice, no source
 * @param {number} price price as the place states it, with tax in it or not: 0 or more
 * @param {number} step the step between the prices the maker uses: more than 0
 * @param {number} [ending] what prices end in, below the step: 0.95 for 17.95: 0 or more; 0 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_ROUND_UP_PRICE(price, step, ending) {
  return answer_("round_up_price", arguments);
}
FUNCTIONS_.round_up_price = {
  takes: { price: "0 or more", step: "more than 0 (2)", ending: "0 or more" },
  left_out: {"ending": 0.0},
  asks: [
    [(price, step, ending) => ending < step, "the ending must be below the step", "ending", "step"],
  ],
  answer: (price, step, ending) => round_(Math.max(0, 0 - Math.floor(round_(ratio_(ending - price, step), 6))) * step + ending, 6),
  gives: "0 or more",
};

/**
 * An amount rounded to the currency's smallest coin, half away from zero. Gives any amount.
 * Source: half away from zero: sales tax rules of US Streamlined states, HMRC
 * @param {number} amount an amount of money; minus for a credit or a loss: any amount
 * @param {number} [digits] decimals of the currency's smallest coin: whole numbers 0 to 4; 2 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_ROUND_MONEY(amount, digits) {
  return answer_("round_money", arguments);
}
FUNCTIONS_.round_money = {
  takes: { amount: "any amount", digits: "whole numbers 0 to 4" },
  left_out: {"digits": 2},
  answer: (amount, digits) => round_(amount, digits),
  gives: "any amount",
};

/**
 * Candles to sell to cover fixed costs, and a wanted profit if given: rounded up to whole ones. Gives whole numbers 0
 * to 1000000.
 * Source: cost, volume and profit: OpenStax, Managerial Accounting, chapter 3
 * @param {number} fixed an amount of money: 0 or more
 * @param {number} price price before tax: 0 or more
 * @param {number} cost what the candle costs: 0 or more
 * @param {number} [profit] an amount of money: 0 or more; 0 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_BREAK_EVEN_UNITS(fixed, price, cost, profit) {
  return answer_("break_even_units", arguments);
}
FUNCTIONS_.break_even_units = {
  takes: { fixed: "0 or more", price: "0 or more", cost: "0 or more", profit: "0 or more" },
  left_out: {"profit": 0.0},
  asks: [
    [(fixed, price, cost, profit) => price > cost, "the price must be above what each one costs", "price", "cost"],
  ],
  answer: (fixed, price, cost, profit) => 0 - Math.floor(0 - round_(ratio_(fixed + profit, price - cost), 6)),
  gives: "whole numbers 0 to 1000000",
};

/**
 * Sales in money that cover fixed costs, and a wanted profit if given. Gives 0 or more.
 * Source: cost, volume and profit: OpenStax, Managerial Accounting, chapter 3
 * @param {number} fixed an amount of money: 0 or more
 * @param {number} price price before tax: 0 or more
 * @param {number} cost what the candle costs: 0 or more
 * @param {number} [profit] an amount of money: 0 or more; 0 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_BREAK_EVEN_SALES(fixed, price, cost, profit) {
  return answer_("break_even_sales", arguments);
}
FUNCTIONS_.break_even_sales = {
  takes: { fixed: "0 or more", price: "0 or more", cost: "0 or more", profit: "0 or more" },
  left_out: {"profit": 0.0},
  asks: [
    [(fixed, price, cost, profit) => price > cost, "the price must be above what each one costs", "price", "cost"],
  ],
  answer: (fixed, price, cost, profit) => ratio_((fixed + profit) * price, price - cost),
  gives: "0 or more",
};

/**
 * Lots of a mix of products to sell to cover fixed costs. Gives 0 or more.
 * Source: cost, volume and profit: OpenStax, Managerial Accounting, chapter 3
 * @param {number} fixed an amount of money: 0 or more
 * @param {Array} mix how many of each product sell together: list, each 0 or more
 * @param {Array} prices price of each product, before tax: list, each 0 or more
 * @param {Array} costs cost of each product that comes and goes with it: list, each 0 or more
 * @return {number}
 * @customfunction
 */
function CANDLE_BREAK_EVEN_MIX(fixed, mix, prices, costs) {
  return answer_("break_even_mix", arguments);
}
FUNCTIONS_.break_even_mix = {
  takes: { fixed: "0 or more", mix: "list, each 0 or more", prices: "list, each 0 or more (2)", costs: "list, each 0 or more (2)" },
  answer: (fixed, mix, prices, costs) => ratio_(fixed, sum_(each_([mix, prices], (each_mix, each_prices) => each_mix * each_prices)) - sum_(each_([mix, costs], (each_mix, each_costs) => each_mix * each_costs))),
  gives: "0 or more",
};

// -----------------------------------------------------------------------------------------------------------------
// Plan: how much to buy at a time, when to order again, and how much of it everyone gets

/**
 * How much to order at a time so that ordering and keeping cost least together. Gives 0 or more.
 * Source: economic order quantity: the library stockpyl, after Snyder and Shen, example 3.1
 * @param {number} demand how much is used or sold over the time planned for: a year, a season: 0 or more
 * @param {number} ordering what an order costs whatever its size: delivery, handling, the time it takes: 0 or more
 * @param {number} holding cost to keep one unit for the whole of that time: money tied up, room, losses: more than 0
 *   money per unit
 * @return {number}
 * @customfunction
 */
function CANDLE_ORDER_QUANTITY(demand, ordering, holding) {
  return answer_("order_quantity", arguments);
}
FUNCTIONS_.order_quantity = {
  takes: { demand: "0 or more (2)", ordering: "0 or more", holding: "more than 0 money per unit" },
  answer: (demand, ordering, holding) => root_(ratio_(2 * demand * ordering, holding)),
  gives: "0 or more (2)",
};

/**
 * What ordering and keeping cost over the time planned for, where so much is ordered at a time. Gives 0 or more.
 * Source: economic order quantity: the library stockpyl, after Snyder and Shen, example 3.1
 * @param {number} quantity how much is ordered at a time, in the unit that demand is in: more than 0
 * @param {number} demand how much is used or sold over the time planned for: a year, a season: 0 or more
 * @param {number} ordering what an order costs whatever its size: delivery, handling, the time it takes: 0 or more
 * @param {number} holding cost to keep one unit for the whole of that time: money tied up, room, losses: more than 0
 *   money per unit
 * @return {number}
 * @customfunction
 */
function CANDLE_ORDERING_COST(quantity, demand, ordering, holding) {
  return answer_("ordering_cost", arguments);
}
FUNCTIONS_.ordering_cost = {
  takes: { quantity: "more than 0", demand: "0 or more (2)", ordering: "0 or more", holding: "more than 0 money per unit" },
  answer: (quantity, demand, ordering, holding) => ratio_(demand, quantity) * ordering + quantity / 2 * holding,
  gives: "0 or more",
};

/**
 * What goods, ordering and keeping cost together, where so much is bought at a time at this price. Gives 0 or more.
 * Source: order quantity with a price on all units: the library stockpyl, after Snyder and Shen, chapter 3
 * @param {number} quantity how much is ordered at a time, in the unit that demand is in: more than 0
 * @param {number} demand how much is used or sold over the time planned for: a year, a season: 0 or more
 * @param {number} ordering what an order costs whatever its size: delivery, handling, the time it takes: 0 or more
 * @param {number} holding_share cost to keep a unit for the whole of that time, as a share of its price: more than 0,
 *   at most 1 of the price
 * @param {number} price price of one unit at that quantity: 0 or more money per unit
 * @return {number}
 * @customfunction
 */
function CANDLE_BUYING_COST(quantity, demand, ordering, holding_share, price) {
  return answer_("buying_cost", arguments);
}
FUNCTIONS_.buying_cost = {
  takes: { quantity: "more than 0", demand: "0 or more (2)", ordering: "0 or more", holding_share: "more than 0, at most 1 of the price", price: "0 or more money per unit" },
  answer: (quantity, demand, ordering, holding_share, price) => demand * price + ratio_(demand, quantity) * ordering + quantity / 2 * holding_share * price,
  gives: "0 or more",
};

/**
 * How much to keep beyond what an order's time uses up, against uneven demand and late deliveries. Gives 0 or more.
 * Source: reorder point with demand and lead time normal: Stevenson, Operations Management, 14th edition, chapter 12
 * @param {number} demand how much is used or sold in a day or a week on average: 0 or more
 * @param {number} lead_time days or weeks from ordering to having it, in the unit of demand: 0 to 10000
 * @param {number} risk share of orders during which running out is accepted: more than 0, at most 0.5 of the orders
 * @param {number} [spread] standard deviation of what is used or sold in a day or a week; 0 if it is steady: 0 or
 *   more; 0 if left out
 * @param {number} [lead_spread] standard deviation of the days or weeks that an order takes; 0 if they are always the
 *   same: 0 or more; 0 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_BUFFER_STOCK(demand, lead_time, risk, spread, lead_spread) {
  return answer_("buffer_stock", arguments);
}
FUNCTIONS_.buffer_stock = {
  takes: { demand: "0 or more (2)", lead_time: "0 to 10000", risk: "more than 0, at most 0.5 of the orders", spread: "0 or more (2)", lead_spread: "0 or more (2)" },
  left_out: {"spread": 0.0, "lead_spread": 0.0},
  answer: (demand, lead_time, risk, spread, lead_spread) => (0 - normalQuantile_(risk)) * root_(lead_time * spread ** 2 + demand ** 2 * lead_spread ** 2),
  gives: "0 or more (2)",
};

/**
 * Order again when this much is left: what is used until the order comes, and the buffer. Gives 0 or more.
 * Source: reorder point with demand and lead time normal: Stevenson, Operations Management, 14th edition, chapter 12
 * @param {number} demand how much is used or sold in a day or a week on average: 0 or more
 * @param {number} lead_time days or weeks from ordering to having it, in the unit of demand: 0 to 10000
 * @param {number} risk share of orders during which running out is accepted: more than 0, at most 0.5 of the orders
 * @param {number} [spread] standard deviation of what is used or sold in a day or a week; 0 if it is steady: 0 or
 *   more; 0 if left out
 * @param {number} [lead_spread] standard deviation of the days or weeks that an order takes; 0 if they are always the
 *   same: 0 or more; 0 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_REORDER_POINT(demand, lead_time, risk, spread, lead_spread) {
  return answer_("reorder_point", arguments);
}
FUNCTIONS_.reorder_point = {
  takes: { demand: "0 or more (2)", lead_time: "0 to 10000", risk: "more than 0, at most 0.5 of the orders", spread: "0 or more (2)", lead_spread: "0 or more (2)" },
  left_out: {"spread": 0.0, "lead_spread": 0.0},
  answer: (demand, lead_time, risk, spread, lead_spread) => demand * lead_time + (0 - normalQuantile_(risk)) * root_(lead_time * spread ** 2 + demand ** 2 * lead_spread ** 2),
  gives: "0 or more (2)",
};

/**
 * Whole packs to buy for what is needed and not on hand. Gives whole numbers 0 to 1000000.
 * Source: common practice, no source
 * @param {number} needed how much is needed: 0 or more
 * @param {number} pack how much a pack holds, in the same unit: more than 0
 * @param {number} [on_hand] how much is on hand: 0 or more; 0 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_PACKS_TO_BUY(needed, pack, on_hand) {
  return answer_("packs_to_buy", arguments);
}
FUNCTIONS_.packs_to_buy = {
  takes: { needed: "0 or more (2)", pack: "more than 0", on_hand: "0 or more (2)" },
  left_out: {"on_hand": 0.0},
  answer: (needed, pack, on_hand) => Math.max(0, roundUp_(round_(ratio_(needed - on_hand, pack), 6), 0)),
  gives: "whole numbers 0 to 1000000",
};

// -----------------------------------------------------------------------------------------------------------------
// One season: how many to make of a scent that will not sell after it

/**
 * How many to make for one season, where demand varies as a normal distribution does. Gives 0 or more.
 * Source: one-season stock (newsvendor): the library stockpyl, after Snyder and Shen, examples 4.1 to 4.7
 * @param {number} price what one brings while the season lasts, after fees: 0 or more
 * @param {number} cost what one costs to make: 0 or more
 * @param {number} leftover what one still brings after the season; minus if it costs money to be rid of: any amount
 * @param {number} demand how many people will want in the season, on average: 0 or more
 * @param {number} spread standard deviation of how many people want, from season to season: more than 0
 * @return {number}
 * @customfunction
 */
function CANDLE_SEASON_STOCK(price, cost, leftover, demand, spread) {
  return answer_("season_stock", arguments);
}
FUNCTIONS_.season_stock = {
  takes: { price: "0 or more", cost: "0 or more", leftover: "any amount", demand: "0 or more (2)", spread: "more than 0" },
  asks: [
    [(price, cost, leftover, demand, spread) => price > cost, "the price must be above what one costs, or none should be made", "price", "cost"],
    [(price, cost, leftover, demand, spread) => price - cost < price - leftover, "what one left over brings must be below its cost, or there is no risk to weigh", "price", "cost", "leftover"],
  ],
  answer: (price, cost, leftover, demand, spread) => Math.max(0, demand + spread * normalQuantile_(ratio_(price - cost, price - leftover))),
  gives: "0 or more (2)",
};

/**
 * How many to make for one season, by what people wanted in seasons like it. Gives 0 or more.
 * Source: one-season stock (newsvendor): the library stockpyl, after Snyder and Shen, examples 4.1 to 4.7
 * @param {number} price what one brings while the season lasts, after fees: 0 or more
 * @param {number} cost what one costs to make: 0 or more
 * @param {number} leftover what one still brings after the season; minus if it costs money to be rid of: any amount
 * @param {Array} sales how many people wanted in each season like it; one that sold out says less than was wanted:
 *   list, each 0 or more
 * @return {number}
 * @customfunction
 */
function CANDLE_SEASON_STOCK_OF_RECORDS(price, cost, leftover, sales) {
  return answer_("season_stock_of_records", arguments);
}
FUNCTIONS_.season_stock_of_records = {
  takes: { price: "0 or more", cost: "0 or more", leftover: "any amount", sales: "list, each 0 or more" },
  asks: [
    [(price, cost, leftover, sales) => price > cost, "the price must be above what one costs, or none should be made", "price", "cost"],
    [(price, cost, leftover, sales) => price - cost < price - leftover, "what one left over brings must be below its cost, or there is no risk to weigh", "price", "cost", "leftover"],
  ],
  answer: (price, cost, leftover, sales) => small_(sales, Math.max(1, 0 - Math.floor(0 - round_(ratio_(price - cost, price - leftover) * count_(sales), 6)))),
  gives: "0 or more (2)",
};

/**
 * Profit to expect from so many made for one season, where demand varies as a normal distribution does. Gives any
 * amount.
 * Source: one-season stock (newsvendor): the library stockpyl, after Snyder and Shen, examples 4.1 to 4.7
 * @param {number} stock how many to have when the season starts: 0 or more
 * @param {number} price what one brings while the season lasts, after fees: 0 or more
 * @param {number} cost what one costs to make: 0 or more
 * @param {number} leftover what one still brings after the season; minus if it costs money to be rid of: any amount
 * @param {number} demand how many people will want in the season, on average: 0 or more
 * @param {number} spread standard deviation of how many people want, from season to season: more than 0
 * @return {number}
 * @customfunction
 */
function CANDLE_SEASON_PROFIT(stock, price, cost, leftover, demand, spread) {
  return answer_("season_profit", arguments);
}
FUNCTIONS_.season_profit = {
  takes: { stock: "0 or more (2)", price: "0 or more", cost: "0 or more", leftover: "any amount", demand: "0 or more (2)", spread: "more than 0" },
  answer: (stock, price, cost, leftover, demand, spread) => (price - cost) * stock - (price - leftover) * ((stock - demand) * normalBelow_(ratio_(stock - demand, spread)) + ratio_(spread * exp_(0 - ratio_(stock - demand, spread) ** 2 / 2), root_(2 * Math.PI))),
  gives: "any amount",
};

/**
 * Profit to expect from so many made for one season, had it been each of the seasons on record. Gives any amount.
 * Source: one-season stock (newsvendor): the library stockpyl, after Snyder and Shen, examples 4.1 to 4.7
 * @param {number} stock how many to have when the season starts: 0 or more
 * @param {number} price what one brings while the season lasts, after fees: 0 or more
 * @param {number} cost what one costs to make: 0 or more
 * @param {number} leftover what one still brings after the season; minus if it costs money to be rid of: any amount
 * @param {Array} sales how many people wanted in each season like it; one that sold out says less than was wanted:
 *   list, each 0 or more
 * @return {number}
 * @customfunction
 */
function CANDLE_SEASON_PROFIT_OF_RECORDS(stock, price, cost, leftover, sales) {
  return answer_("season_profit_of_records", arguments);
}
FUNCTIONS_.season_profit_of_records = {
  takes: { stock: "0 or more (2)", price: "0 or more", cost: "0 or more", leftover: "any amount", sales: "list, each 0 or more" },
  answer: (stock, price, cost, leftover, sales) => (price - cost) * stock - ratio_((price - leftover) * sum_(each_([sales], (each_sales) => (each_sales < stock) * (stock - each_sales))), count_(sales)),
  gives: "any amount",
};

// -----------------------------------------------------------------------------------------------------------------
// Schedule: when to pour, how many evenings it takes, and how much to make in each week

/**
 * The last day to start pouring for a market or an order, working Monday to Friday. Gives a date such as "2026-03-14".
 * Source: days of the calendar
 * @param {Date} sale the day it is to be sold or sent: a date such as "2026-03-14"
 * @param {number} cure days that candles rest between pouring and finishing: whole numbers 0 to 365 days
 * @param {number} [evenings] working days or evenings that the pouring takes: whole numbers 1 to 365; 1 if left out
 * @param {number} [finishing] working days to label, pack and carry before that day: whole numbers 0 to 365 days; 0 if
 *   left out
 * @return {Date}
 * @customfunction
 */
function CANDLE_POUR_BY(sale, cure, evenings, finishing) {
  return answer_("pour_by", arguments);
}
FUNCTIONS_.pour_by = {
  takes: { sale: "a date such as \"2026-03-14\"", cure: "whole numbers 0 to 365 days", evenings: "whole numbers 1 to 365", finishing: "whole numbers 0 to 365 days" },
  left_out: {"evenings": 1.0, "finishing": 0.0},
  answer: (sale, cure, evenings, finishing) => workday_(workday_(sale, 0 - finishing) - cure + 1, 0 - evenings),
  gives: "a date such as \"2026-03-14\"",
};

/**
 * Pots that a melt takes, where a pot holds so much at most; the last may not be full. Gives whole numbers 0 to
 * 1000000.
 * Source: common practice, no source
 * @param {number} melt a weight, in any unit; the answer is in the same unit: 0 or more g
 * @param {number} pot a weight, in any unit; the answer is in the same unit: 0 or more g
 * @return {number}
 * @customfunction
 */
function CANDLE_POTS_NEEDED(melt, pot) {
  return answer_("pots_needed", arguments);
}
FUNCTIONS_.pots_needed = {
  takes: { melt: "0 or more g", pot: "0 or more g" },
  asks: [
    [(melt, pot) => pot > 0, "the pot must hold more than 0", "pot"],
  ],
  answer: (melt, pot) => roundUp_(round_(ratio_(melt, pot), 6), 0),
  gives: "whole numbers 0 to 1000000",
};

/**
 * Evenings that so many pots take. Gives whole numbers 0 to 1000000.
 * Source: common practice, no source
 * @param {number} pots how many, a whole number: whole numbers 0 to 1000000
 * @param {number} an_evening how many pots can be poured in an evening: whole numbers 1 to 10000
 * @return {number}
 * @customfunction
 */
function CANDLE_EVENINGS_NEEDED(pots, an_evening) {
  return answer_("evenings_needed", arguments);
}
FUNCTIONS_.evenings_needed = {
  takes: { pots: "whole numbers 0 to 1000000", an_evening: "whole numbers 1 to 10000" },
  answer: (pots, an_evening) => roundUp_(round_(ratio_(pots, an_evening), 6), 0),
  gives: "whole numbers 0 to 1000000",
};

/**
 * How much to make in a month, or to buy for it: what goes, what is to be left, less what is there. Gives 0 or more.
 * Source: production and materials budgets: OpenStax, Managerial Accounting 7.2
 * @param {number} sales how much is used or sold over the time planned for: a year, a season: 0 or more
 * @param {number} closing how much is to be left at the end: 0 or more
 * @param {number} opening how much is there at the start: 0 or more
 * @return {number}
 * @customfunction
 */
function CANDLE_TO_MAKE(sales, closing, opening) {
  return answer_("to_make", arguments);
}
FUNCTIONS_.to_make = {
  takes: { sales: "0 or more (2)", closing: "0 or more (2)", opening: "0 or more (2)" },
  answer: (sales, closing, opening) => Math.max(0, sales + closing - opening),
  gives: "0 or more (2)",
};

// -----------------------------------------------------------------------------------------------------------------
// Stock: what went out cost, and what is left is worth, by first in first out or by an average

/**
 * Average cost of one unit over all lots: the periodic average. Not rounded, so round what it is multiplied to. Gives
 * 0 or more money per unit.
 * Source: FIFO, average and LIFO, periodic and perpetual: OpenStax, Financial Accounting 10.1 to 10.3
 * @param {Array} bought how much of each lot: what was there at the start first, then each receipt: list, each 0 or
 *   more
 * @param {Array} costs cost of one unit of each lot: list, each 0 or more money per unit
 * @return {number}
 * @customfunction
 */
function CANDLE_AVERAGE_COST(bought, costs) {
  return answer_("average_cost", arguments);
}
FUNCTIONS_.average_cost = {
  takes: { bought: "list, each 0 or more", costs: "list, each 0 or more money per unit" },
  asks: [
    [(bought, costs) => sum_(bought) > 0, "something must have been bought", "bought"],
  ],
  answer: (bought, costs) => ratio_(sum_(each_([bought, costs], (each_bought, each_costs) => each_bought * each_costs)), sum_(bought)),
  gives: "0 or more money per unit",
};

// -----------------------------------------------------------------------------------------------------------------
// Stocktake: what a count finds, what stock may be worth at most, how fast it goes, and which lot to use first

/**
 * What a count finds more than the books say; minus where it finds less. Gives any amount.
 * Source: adjusting to a count: OpenStax, Financial Accounting 6.3
 * @param {number} counted how much the count finds: 0 or more
 * @param {number} booked how much the books or the log say there is: 0 or more
 * @return {number}
 * @customfunction
 */
function CANDLE_COUNT_DIFFERENCE(counted, booked) {
  return answer_("count_difference", arguments);
}
FUNCTIONS_.count_difference = {
  takes: { counted: "0 or more (2)", booked: "0 or more (2)" },
  answer: (counted, booked) => counted - booked,
  gives: "any amount (2)",
};

/**
 * What the difference of a count is worth at cost; a minus is a loss to be booked. Gives any amount.
 * Source: adjusting to a count: OpenStax, Financial Accounting 6.3
 * @param {number} counted how much the count finds: 0 or more
 * @param {number} booked how much the books or the log say there is: 0 or more
 * @param {number} cost cost of one unit of the material: a piece, or a unit of weight: 0 or more money per unit
 * @return {number}
 * @customfunction
 */
function CANDLE_COUNT_DIFFERENCE_COST(counted, booked, cost) {
  return answer_("count_difference_cost", arguments);
}
FUNCTIONS_.count_difference_cost = {
  takes: { counted: "0 or more (2)", booked: "0 or more (2)", cost: "0 or more money per unit" },
  answer: (counted, booked, cost) => (counted - booked) * cost,
  gives: "any amount",
};

/**
 * What one brings after what it still costs to finish and to sell it; nothing where that is a loss. Gives 0 or more
 * money per unit.
 * Source: lower of cost and net realisable value: IAS 2, from summaries; OpenStax, Financial Accounting 10.1
 * @param {number} price what one is expected to sell for: 0 or more
 * @param {number} [finishing] what it still costs to finish one: 0 or more; 0 if left out
 * @param {number} [selling] what it costs to sell one: fees, packing, postage paid by the maker: 0 or more; 0 if left
 *   out
 * @return {number}
 * @customfunction
 */
function CANDLE_NET_REALISABLE(price, finishing, selling) {
  return answer_("net_realisable", arguments);
}
FUNCTIONS_.net_realisable = {
  takes: { price: "0 or more", finishing: "0 or more", selling: "0 or more" },
  left_out: {"finishing": 0.0, "selling": 0.0},
  answer: (price, finishing, selling) => Math.max(0, price - finishing - selling),
  gives: "0 or more money per unit",
};

/**
 * What stock is carried at: the lower of cost and net realisable value, item by item. Gives 0 or more.
 * Source: lower of cost and net realisable value: IAS 2, from summaries; OpenStax, Financial Accounting 10.1
 * @param {Array} amounts how much there is of each item: list, each 0 or more
 * @param {Array} costs what one of each item cost: list, each 0 or more money per unit
 * @param {Array} worth what one of each item brings after the costs to finish and to sell it: list, each 0 or more
 *   money per unit
 * @return {number}
 * @customfunction
 */
function CANDLE_LOWER_OF_COST(amounts, costs, worth) {
  return answer_("lower_of_cost", arguments);
}
FUNCTIONS_.lower_of_cost = {
  takes: { amounts: "list, each 0 or more", costs: "list, each 0 or more money per unit", worth: "list, each 0 or more money per unit" },
  answer: (amounts, costs, worth) => sum_(each_([amounts, costs, worth], (each_amounts, each_costs, each_worth) => each_amounts * ((each_costs <= each_worth) * each_costs + (each_costs > each_worth) * each_worth))),
  gives: "0 or more",
};

/**
 * What is written off stock at the lower of cost and net realisable value: an expense of the period. Gives 0 or more.
 * Source: lower of cost and net realisable value: IAS 2, from summaries; OpenStax, Financial Accounting 10.1
 * @param {Array} amounts how much there is of each item: list, each 0 or more
 * @param {Array} costs what one of each item cost: list, each 0 or more money per unit
 * @param {Array} worth what one of each item brings after the costs to finish and to sell it: list, each 0 or more
 *   money per unit
 * @return {number}
 * @customfunction
 */
function CANDLE_WRITE_DOWN(amounts, costs, worth) {
  return answer_("write_down", arguments);
}
FUNCTIONS_.write_down = {
  takes: { amounts: "list, each 0 or more", costs: "list, each 0 or more money per unit", worth: "list, each 0 or more money per unit" },
  answer: (amounts, costs, worth) => sum_(each_([amounts, costs, worth], (each_amounts, each_costs, each_worth) => each_amounts * (each_costs > each_worth) * (each_costs - each_worth))),
  gives: "0 or more",
};

/**
 * How often the average stock was sold or used over the time, all at cost. Gives 0 or more times.
 * Source: inventory turnover and days: OpenStax, Financial Accounting 10.5
 * @param {number} goods cost of the goods sold or used over the time: 0 or more
 * @param {number} opening what stock was worth at the start, at cost: 0 or more
 * @param {number} closing what stock was worth at the end, at cost: 0 or more
 * @return {number}
 * @customfunction
 */
function CANDLE_STOCK_TURNS(goods, opening, closing) {
  return answer_("stock_turns", arguments);
}
FUNCTIONS_.stock_turns = {
  takes: { goods: "0 or more", opening: "0 or more", closing: "0 or more" },
  asks: [
    [(goods, opening, closing) => opening + closing > 0, "there must have been stock at the start or the end", "opening", "closing"],
  ],
  answer: (goods, opening, closing) => ratio_(goods, (opening + closing) / 2),
  gives: "0 or more times",
};

/**
 * How many days goods stay in stock on average, from what was sold or used over so many days. Gives 0 or more days.
 * Answer in days; CANDLE_CONVERT puts it in another unit.
 * Source: inventory turnover and days: OpenStax, Financial Accounting 10.5
 * @param {number} goods cost of the goods sold or used over the time: 0 or more
 * @param {number} opening what stock was worth at the start, at cost: 0 or more
 * @param {number} closing what stock was worth at the end, at cost: 0 or more
 * @param {number} [days] how many days the time has: more than 0, at most 3660 days; 365 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_DAYS_IN_STOCK(goods, opening, closing, days) {
  return answer_("days_in_stock", arguments);
}
FUNCTIONS_.days_in_stock = {
  takes: { goods: "0 or more", opening: "0 or more", closing: "0 or more", days: "more than 0, at most 3660 days" },
  left_out: {"days": 365.0},
  asks: [
    [(goods, opening, closing, days) => goods > 0, "goods must be more than 0", "goods"],
  ],
  answer: (goods, opening, closing, days) => ratio_((opening + closing) / 2, ratio_(goods, days)),
  gives: "0 or more days",
};

/**
 * How many days what is on hand lasts, where so much goes in a day. Gives 0 or more days. Answer in days;
 * CANDLE_CONVERT puts it in another unit.
 * Source: algebra from the definitions
 * @param {number} on_hand how much is on hand: 0 or more
 * @param {number} a_day how much is used or sold in a day: more than 0
 * @return {number}
 * @customfunction
 */
function CANDLE_DAYS_COVERED(on_hand, a_day) {
  return answer_("days_covered", arguments);
}
FUNCTIONS_.days_covered = {
  takes: { on_hand: "0 or more (2)", a_day: "more than 0" },
  answer: (on_hand, a_day) => ratio_(on_hand, a_day),
  gives: "0 or more days",
};

/**
 * The last day on which to use a lot, from the day it was made and how long it keeps. Gives a date such as
 * "2026-03-14".
 * Source: days of the calendar
 * @param {Date} made the day the lot was made, or came in: a date such as "2026-03-14"
 * @param {number} shelf_life how long it keeps, by the supplier's data sheet or the maker's own tests: whole numbers 0
 *   to 36500 days
 * @return {Date}
 * @customfunction
 */
function CANDLE_USE_BY(made, shelf_life) {
  return answer_("use_by", arguments);
}
FUNCTIONS_.use_by = {
  takes: { made: "a date such as \"2026-03-14\"", shelf_life: "whole numbers 0 to 36500 days" },
  answer: (made, shelf_life) => Math.floor(made) + shelf_life,
  gives: "a date such as \"2026-03-14\"",
};

/**
 * Days that a lot still keeps; minus where it is past. Gives any amount days. Answer in days; CANDLE_CONVERT puts it
 * in another unit.
 * Source: days of the calendar
 * @param {Date} made the day the lot was made, or came in: a date such as "2026-03-14"
 * @param {number} shelf_life how long it keeps, by the supplier's data sheet or the maker's own tests: whole numbers 0
 *   to 36500 days
 * @param {Date} as_of the day it is counted from: today, or the day of use: a date such as "2026-03-14"
 * @return {number}
 * @customfunction
 */
function CANDLE_SHELF_DAYS_LEFT(made, shelf_life, as_of) {
  return answer_("shelf_days_left", arguments);
}
FUNCTIONS_.shelf_days_left = {
  takes: { made: "a date such as \"2026-03-14\"", shelf_life: "whole numbers 0 to 36500 days", as_of: "a date such as \"2026-03-14\"" },
  answer: (made, shelf_life, as_of) => Math.floor(made) + shelf_life - Math.floor(as_of),
  gives: "any amount days",
};

// -----------------------------------------------------------------------------------------------------------------
// Label: the net weight as it may be declared, the height of its figures, fire-safety statements

/**
 * Grams that a label with both declarations is held to: the larger of the two. Gives 0 to 25000 g. Answer in g;
 * CANDLE_CONVERT puts it in another unit.
 * Source: NIST Handbook 133 (2026), 2.3.3; factor of 16 CFR 500.19(a)
 * @param {number} ounces the declaration in ounces: 16 for 1 lb: 0 to 1000
 * @param {number} grams the declaration in grams: 0 to 25000 g
 * @return {number}
 * @customfunction
 */
function CANDLE_BINDING_WEIGHT(ounces, grams) {
  return answer_("binding_weight", arguments);
}
FUNCTIONS_.binding_weight = {
  takes: { ounces: "0 to 1000", grams: "0 to 25000 g" },
  answer: (ounces, grams) => Math.max(ounces * 28.3495, grams),
  gives: "0 to 25000 g",
};

/**
 * How far under its declared weight a single candle may be in the EU and GB, by the average system. Gives 0 or more g.
 * Answer in g; CANDLE_CONVERT puts it in another unit.
 * Source: Council Directive 76/211/EEC, Annex I, 2.4; rounding: GOV.UK, Packaged goods
 * @param {number} net net weight to declare: wax and oil, no vessel, lid or wick tab: 5 to 25000 g
 * @return {number}
 * @customfunction
 */
function CANDLE_TOLERABLE_NEGATIVE_ERROR(net) {
  return answer_("tolerable_negative_error", arguments);
}
FUNCTIONS_.tolerable_negative_error = {
  takes: { net: "5 to 25000 g" },
  answer: (net) => (net <= 50 ? roundUp_(round_(net * 0.09, 6), 1) : (net <= 100 ? 4.5 : (net <= 200 ? roundUp_(round_(net * 0.045, 6), 1) : (net <= 300 ? 9 : (net <= 500 ? roundUp_(round_(net * 0.03, 6), 1) : (net <= 1000 ? 15 : (net <= 10000 ? roundUp_(round_(net * 0.015, 6), 1) : (net <= 15000 ? 150 : roundUp_(round_(net * 0.01, 6), 1))))))))),
  gives: "0 or more g",
};

/**
 * Content under which a candle counts as short in the reference test of the EU and GB. Gives 0 to 25000 g. Answer in
 * g; CANDLE_CONVERT puts it in another unit.
 * Source: Council Directive 76/211/EEC, Annex I, 2.4; rounding: GOV.UK, Packaged goods
 * @param {number} net net weight to declare: wax and oil, no vessel, lid or wick tab: 5 to 25000 g
 * @return {number}
 * @customfunction
 */
function CANDLE_SHORT_UNDER(net) {
  return answer_("short_under", arguments);
}
FUNCTIONS_.short_under = {
  takes: { net: "5 to 25000 g" },
  answer: (net) => net - (net <= 50 ? roundUp_(round_(net * 0.09, 6), 1) : (net <= 100 ? 4.5 : (net <= 200 ? roundUp_(round_(net * 0.045, 6), 1) : (net <= 300 ? 9 : (net <= 500 ? roundUp_(round_(net * 0.03, 6), 1) : (net <= 1000 ? 15 : (net <= 10000 ? roundUp_(round_(net * 0.015, 6), 1) : (net <= 15000 ? 150 : roundUp_(round_(net * 0.01, 6), 1))))))))),
  gives: "0 to 25000 g",
};

/**
 * Content that no candle with the e mark may be under. Gives 0 to 25000 g. Answer in g; CANDLE_CONVERT puts it in
 * another unit.
 * Source: Council Directive 76/211/EEC, Annex I, 2.4; rounding: GOV.UK, Packaged goods
 * @param {number} net net weight to declare: wax and oil, no vessel, lid or wick tab: 5 to 25000 g
 * @return {number}
 * @customfunction
 */
function CANDLE_NEVER_UNDER(net) {
  return answer_("never_under", arguments);
}
FUNCTIONS_.never_under = {
  takes: { net: "5 to 25000 g" },
  answer: (net) => net - 2 * (net <= 50 ? roundUp_(round_(net * 0.09, 6), 1) : (net <= 100 ? 4.5 : (net <= 200 ? roundUp_(round_(net * 0.045, 6), 1) : (net <= 300 ? 9 : (net <= 500 ? roundUp_(round_(net * 0.03, 6), 1) : (net <= 1000 ? 15 : (net <= 10000 ? roundUp_(round_(net * 0.015, 6), 1) : (net <= 15000 ? 150 : roundUp_(round_(net * 0.01, 6), 1))))))))),
  gives: "0 to 25000 g",
};

/**
 * Area of the principal display panel: the whole of a flat side, two fifths of the side of a round package. Gives 0 to
 * 1000000 cm2. Answer in cm2; CANDLE_CONVERT puts it in another unit.
 * Source: 16 CFR 500.21(a)
 * @param {number} height height of the side that is shown; of a lid how far it is across: 10 to 2000 mm
 * @param {number} around width of a flat side; of a round package all the way around; of a lid how far it is across
 *   the other way: 15 to 5000 mm
 * @param {string} [shape] a flat side or lid of the package, the side of a round one, or a round lid that the buyer
 *   sees first: "flat" or "round" or "round lid"; round if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_PANEL_AREA(height, around, shape) {
  return answer_("panel_area", arguments);
}
FUNCTIONS_.panel_area = {
  takes: { height: "10 to 2000 mm", around: "15 to 5000 mm", shape: "\"flat\" or \"round\" or \"round lid\"" },
  left_out: {"shape": "round"},
  answer: (height, around, shape) => height * around * (shape === "flat" ? 1 : (shape === "round" ? 0.4 : Math.PI / 4)) / 100,
  gives: "0 to 1000000 cm2",
};

// -----------------------------------------------------------------------------------------------------------------
// Measure: tare, whether a scale is fine enough, and what the weighings of a batch say

/**
 * Average weight of what is not sold by weight: vessel, lid, wick and label together. Gives 0 or more g. Answer in g;
 * CANDLE_CONVERT puts it in another unit.
 * Source: NIST Handbook 133 (2026), 2.3.5 and 2.3.6
 * @param {Array} tares weights of empty vessels with all that belongs to them: list, each 0 or more g
 * @return {number}
 * @customfunction
 */
function CANDLE_AVERAGE_TARE(tares) {
  return answer_("average_tare", arguments);
}
FUNCTIONS_.average_tare = {
  takes: { tares: "list, each 0 or more g" },
  answer: (tares) => mean_(tares),
  gives: "0 or more g",
};

/**
 * What a whole package must weigh to hold its declared net weight. Gives 0 or more g. Answer in g; CANDLE_CONVERT puts
 * it in another unit.
 * Source: NIST Handbook 133 (2026), 2.3.5 and 2.3.6
 * @param {number} net net weight to declare: wax and oil, no vessel, lid or wick tab: 5 to 25000 g
 * @param {number} tare vessel, lid, wick, label: all that is not sold by weight: 0 or more g
 * @return {number}
 * @customfunction
 */
function CANDLE_GROSS_WEIGHT(net, tare) {
  return answer_("gross_weight", arguments);
}
FUNCTIONS_.gross_weight = {
  takes: { net: "5 to 25000 g", tare: "0 or more g" },
  answer: (net, tare) => net + tare,
  gives: "0 or more g",
};

/**
 * Error that the weighing of a package may have at most, in the EU and GB: a fifth of the tolerable one. Gives 0 or
 * more g. Answer in g; CANDLE_CONVERT puts it in another unit.
 * Source: SR (NI) 2011/331, Schedule 2, 1.3; WELMEC Guide 6.9
 * @param {number} net net weight to declare: wax and oil, no vessel, lid or wick tab: 5 to 25000 g
 * @return {number}
 * @customfunction
 */
function CANDLE_WEIGHING_ERROR_ALLOWED(net) {
  return answer_("weighing_error_allowed", arguments);
}
FUNCTIONS_.weighing_error_allowed = {
  takes: { net: "5 to 25000 g" },
  answer: (net) => (net <= 50 ? roundUp_(round_(net * 0.09, 6), 1) : (net <= 100 ? 4.5 : (net <= 200 ? roundUp_(round_(net * 0.045, 6), 1) : (net <= 300 ? 9 : (net <= 500 ? roundUp_(round_(net * 0.03, 6), 1) : (net <= 1000 ? 15 : (net <= 10000 ? roundUp_(round_(net * 0.015, 6), 1) : (net <= 15000 ? 150 : roundUp_(round_(net * 0.01, 6), 1))))))))) / 5,
  gives: "0 or more g",
};

/**
 * How many standard deviations the mean of a sample may lie under the declared weight (EU and GB test). Gives 0 or
 * more.
 * Source: UK SI 2006/659, Schedule 2, 3 and 4; Directive 76/211/EEC, Annex II
 * @param {number} count how many packages were weighed: whole numbers 1 to 1000
 * @return {number}
 * @customfunction
 */
function CANDLE_MEAN_FACTOR(count) {
  return answer_("mean_factor", arguments);
}
FUNCTIONS_.mean_factor = {
  takes: { count: "whole numbers 1 to 1000" },
  asks: [
    [(count) => count > 1, "one weighing has no spread", "count"],
  ],
  answer: (count) => ratio_(tQuantile_(0.01, count - 1), root_(count)),
  gives: "0 or more (2)",
};

/**
 * How many packages of a batch the EU and GB test weighs without opening them; all of a small batch. Gives whole
 * numbers 1 to 1000000.
 * Source: UK SI 2006/659, Schedule 2, 3 and 4; Directive 76/211/EEC, Annex II
 * @param {number} batch how many packages the batch has: whole numbers 1 to 1000000
 * @return {number}
 * @customfunction
 */
function CANDLE_PACKAGES_TO_WEIGH(batch) {
  return answer_("packages_to_weigh", arguments);
}
FUNCTIONS_.packages_to_weigh = {
  takes: { batch: "whole numbers 1 to 1000000" },
  answer: (batch) => (batch < 100 ? batch : (batch <= 500 ? 50 : (batch <= 3200 ? 80 : 125))),
  gives: "whole numbers 1 to 1000000",
};

// -----------------------------------------------------------------------------------------------------------------
// Hazard classes of a candle from section 3 of its oils' data sheets, by the limits of the EU

/**
 * Share of the finished candle that a substance in the oil comes to. Gives 0 to 1 of the finished candle.
 * Source: percent by mass: OpenStax, Chemistry 2e, section on other units for solution concentrations
 * @param {number} concentration share of the substance in the oil, the upper end of its range: 0 to 1 of the oil
 * @param {number} load fragrance load: oil as a share of wax weight (8% is 0.08): 0 to 0.5 of wax weight
 * @return {number}
 * @customfunction
 */
function CANDLE_SUBSTANCE_IN_CANDLE(concentration, load) {
  return answer_("substance_in_candle", arguments);
}
FUNCTIONS_.substance_in_candle = {
  takes: { concentration: "0 to 1 of the oil", load: "0 to 0.5 of wax weight" },
  answer: (concentration, load) => ratio_(concentration * load, 1 + load),
  gives: "0 to 1 of the finished candle",
};

/**
 * Load on wax at which a substance reaches a limit in the candle: to stay below it, pour less. Gives 0 to 0.5 of wax
 * weight.
 * Source: percent by mass: OpenStax, Chemistry 2e, section on other units for solution concentrations
 * @param {number} concentration share of the substance in the oil, the upper end of its range: 0 to 1 of the oil
 * @param {number} limit share from which the substance counts: more than 0, at most 1 of the finished candle
 * @return {number}
 * @customfunction
 */
function CANDLE_LOAD_REACHING_LIMIT(concentration, limit) {
  return answer_("load_reaching_limit", arguments);
}
FUNCTIONS_.load_reaching_limit = {
  takes: { concentration: "0 to 1 of the oil", limit: "more than 0, at most 1 of the finished candle" },
  asks: [
    [(concentration, limit) => round_(concentration - 3 * limit, 9) >= 0, "at no load up to 0.5 of the wax does so little reach the limit", "concentration", "limit"],
  ],
  answer: (concentration, limit) => Math.min(ratio_(limit, concentration - limit), 0.5),
  gives: "0 to 0.5 of wax weight (2)",
};

/**
 * How far a substance's share may drift from what was judged before the candle must be judged anew. Gives 0 to 1 of
 * the share it had.
 * Source: Regulation (EC) No 1272/2008 (CLP), Annex I: limits as consolidated 2026-05-01, read in a transcription that
 * quotes its tables; wording of 2025-09-01; Table 1.2
 * @param {number} share share of the finished candle: 0 to 1 of the finished candle
 * @return {number}
 * @customfunction
 */
function CANDLE_CHANGE_BEFORE_RECLASSIFYING(share) {
  return answer_("change_before_reclassifying", arguments);
}
FUNCTIONS_.change_before_reclassifying = {
  takes: { share: "0 to 1 of the finished candle" },
  answer: (share) => (share <= 0.025 ? 0.3 : (share <= 0.1 ? 0.2 : (share <= 0.25 ? 0.1 : 0.05))),
  gives: "0 to 1 of the share it had",
};

/**
 * M-factor of a substance from its toxicity to water life, where section 3 gives none. Gives 1 or more.
 * Source: Regulation (EC) No 1272/2008 (CLP), Annex I: limits as consolidated 2026-05-01, read in a transcription that
 * quotes its tables; wording of 2025-09-01; Table 4.1.3
 * @param {number} toxicity the lowest LC50, EC50 or NOEC in section 12 of the data sheet: more than 0, at most 1 mg/l
 * @param {string} test which test: acute (LC50, EC50), chronic (NOEC), or chronic of a rapidly degradable substance:
 *   "acute" or "chronic" or "chronic, degradable"
 * @return {number}
 * @customfunction
 */
function CANDLE_M_FACTOR(toxicity, test) {
  return answer_("m_factor", arguments);
}
FUNCTIONS_.m_factor = {
  takes: { toxicity: "more than 0, at most 1 mg/l", test: "\"acute\" or \"chronic\" or \"chronic, degradable\"" },
  asks: [
    [(toxicity, test) => round_(toxicity * (1 + 9 * (test === "chronic") + 99 * (test === "chronic, degradable")), 9) <= 1, "there is an M-factor only up to 1 mg/l (acute), 0.1 (chronic) or 0.01 (chronic, degradable)", "toxicity", "test"],
  ],
  answer: (toxicity, test) => power_(10, Math.floor(round_(0 - log10_(toxicity), 9) - (test === "chronic") - 2 * (test === "chronic, degradable"))),
  gives: "1 or more",
};

// -----------------------------------------------------------------------------------------------------------------
// Money: tax as it is booked, in the coins of a currency, and paying early

/**
 * Sales tax or VAT of an order at one rate, worked out on its total and rounded once. Gives 0 or more.
 * Source: Streamlined Sales and Use Tax Agreement 324 (US); HMRC VATREC12010 to 12030 (UK); CJEU C-484/06 (EU),
 * headline only: check against the tax office's own page
 * @param {Array} amounts the amount of each line, all at one rate of tax: list, each 0 or more
 * @param {number} tax rate of sales tax or VAT: 0 to 1 of the price before tax
 * @param {string} [stated] whether the place states its prices with tax in them: "with tax" or "before tax"; before
 *   tax if left out
 * @param {number} [digits] decimals of the currency's smallest coin: whole numbers 0 to 4; 2 if left out
 * @param {string} [rounding] to the nearest coin, half up; or down, where the tax office allows it on the total of an
 *   invoice: "nearest" or "down"; nearest if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_TAX_BY_ORDER(amounts, tax, stated, digits, rounding) {
  return answer_("tax_by_order", arguments);
}
FUNCTIONS_.tax_by_order = {
  takes: { amounts: "list, each 0 or more (2)", tax: "0 to 1 of the price before tax", stated: "\"with tax\" or \"before tax\"", digits: "whole numbers 0 to 4", rounding: "\"nearest\" or \"down\"" },
  left_out: {"stated": "before tax", "digits": 2, "rounding": "nearest"},
  answer: (amounts, tax, stated, digits, rounding) => (rounding === "down" ? roundDown_(round_(ratio_(sum_(amounts) * tax, 1 + tax * (stated === "with tax")), 6), digits) : round_(ratio_(sum_(amounts) * tax, 1 + tax * (stated === "with tax")), digits)),
  gives: "0 or more",
};

/**
 * Discount for paying an invoice early, on what is left of it after returns. Gives 0 or more.
 * Source: OpenStax, Financial Accounting 6.3; Principles of Finance 19.2
 * @param {number} invoice amount of the invoice: 0 or more
 * @param {number} discount discount for paying early: 0 to 0.5 of the invoice
 * @param {number} [returned] taken back or allowed off before it is paid: 0 or more; 0 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_EARLY_DISCOUNT(invoice, discount, returned) {
  return answer_("early_discount", arguments);
}
FUNCTIONS_.early_discount = {
  takes: { invoice: "0 or more", discount: "0 to 0.5 of the invoice", returned: "0 or more" },
  left_out: {"returned": 0.0},
  asks: [
    [(invoice, discount, returned) => invoice >= returned, "no more can be returned than was invoiced", "invoice", "returned"],
  ],
  answer: (invoice, discount, returned) => round_((invoice - returned) * discount, 2),
  gives: "0 or more",
};

/**
 * What to pay in the days of the discount. Gives 0 or more.
 * Source: OpenStax, Financial Accounting 6.3; Principles of Finance 19.2
 * @param {number} invoice amount of the invoice: 0 or more
 * @param {number} discount discount for paying early: 0 to 0.5 of the invoice
 * @param {number} [returned] taken back or allowed off before it is paid: 0 or more; 0 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_EARLY_PAYMENT(invoice, discount, returned) {
  return answer_("early_payment", arguments);
}
FUNCTIONS_.early_payment = {
  takes: { invoice: "0 or more", discount: "0 to 0.5 of the invoice", returned: "0 or more" },
  left_out: {"returned": 0.0},
  asks: [
    [(invoice, discount, returned) => invoice >= returned, "no more can be returned than was invoiced", "invoice", "returned"],
  ],
  answer: (invoice, discount, returned) => invoice - returned - round_((invoice - returned) * discount, 2),
  gives: "0 or more",
};

/**
 * What passing over an early-payment discount costs, as a simple rate a year. Gives 0 or more of the amount a year.
 * Source: OpenStax, Financial Accounting 6.3; Principles of Finance 19.2
 * @param {number} discount discount for paying early: 0 to 0.5 of the invoice
 * @param {number} early days in which the discount is given: whole numbers 0 to 365 days
 * @param {number} due days after which the whole is due: whole numbers 0 to 365 days
 * @param {number} [year] days that a year is counted as: whole numbers 360 to 366 days; 360 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_COST_OF_PAYING_LATE(discount, early, due, year) {
  return answer_("cost_of_paying_late", arguments);
}
FUNCTIONS_.cost_of_paying_late = {
  takes: { discount: "0 to 0.5 of the invoice", early: "whole numbers 0 to 365 days", due: "whole numbers 0 to 365 days", year: "whole numbers 360 to 366 days" },
  left_out: {"year": 360},
  asks: [
    [(discount, early, due, year) => early < due, "the discount must end before the whole is due", "early", "due"],
  ],
  answer: (discount, early, due, year) => ratio_(ratio_(year, due - early) * discount, 1 - discount),
  gives: "0 or more of the amount a year",
};

// -----------------------------------------------------------------------------------------------------------------
// Books: entries and their balance, cost of goods made and sold, the lines of a tax schedule

/**
 * Materials used in a period, from what was there, what was bought and what is left. Gives 0 or more.
 * Source: schedules of cost of goods: OpenStax, Managerial Accounting 2.1 and 4.3
 * @param {number} opening stock at the start of the period, at making cost: 0 or more
 * @param {number} bought bought in the period, less returns and discounts, freight in with it: 0 or more
 * @param {number} closing stock at the end of the period, at making cost: 0 or more
 * @return {number}
 * @customfunction
 */
function CANDLE_MATERIALS_USED(opening, bought, closing) {
  return answer_("materials_used", arguments);
}
FUNCTIONS_.materials_used = {
  takes: { opening: "0 or more", bought: "0 or more", closing: "0 or more" },
  asks: [
    [(opening, bought, closing) => round_(opening + bought - closing, 9) >= 0, "closing stock cannot be more than there was", "opening", "bought", "closing"],
  ],
  answer: (opening, bought, closing) => opening + bought - closing,
  gives: "0 or more",
};

/**
 * Making cost of the candles finished in a period; opening and closing are work in hand, half-made. Gives 0 or more.
 * Source: schedules of cost of goods: OpenStax, Managerial Accounting 2.1 and 4.3
 * @param {number} materials materials used in the period: 0 or more
 * @param {number} labour paid labour of making; nothing for the maker's own time: 0 or more
 * @param {number} overhead overhead of making: 0 or more
 * @param {number} [opening] stock at the start of the period, at making cost: 0 or more; 0 if left out
 * @param {number} [closing] stock at the end of the period, at making cost: 0 or more; 0 if left out
 * @return {number}
 * @customfunction
 */
function CANDLE_COST_OF_GOODS_MADE(materials, labour, overhead, opening, closing) {
  return answer_("cost_of_goods_made", arguments);
}
FUNCTIONS_.cost_of_goods_made = {
  takes: { materials: "0 or more", labour: "0 or more", overhead: "0 or more", opening: "0 or more", closing: "0 or more" },
  left_out: {"opening": 0.0, "closing": 0.0},
  asks: [
    [(materials, labour, overhead, opening, closing) => round_(opening + materials + labour + overhead - closing, 9) >= 0, "closing work in hand cannot be more than went in", "opening", "materials", "labour", "overhead", "closing"],
  ],
  answer: (materials, labour, overhead, opening, closing) => opening + materials + labour + overhead - closing,
  gives: "0 or more",
};

/**
 * Making cost of the candles sold in a period, from finished stock before, made, and left. Gives 0 or more.
 * Source: schedules of cost of goods: OpenStax, Managerial Accounting 2.1 and 4.3
 * @param {number} opening stock at the start of the period, at making cost: 0 or more
 * @param {number} made cost of goods made: 0 or more
 * @param {number} closing stock at the end of the period, at making cost: 0 or more
 * @return {number}
 * @customfunction
 */
function CANDLE_COST_OF_GOODS_SOLD(opening, made, closing) {
  return answer_("cost_of_goods_sold", arguments);
}
FUNCTIONS_.cost_of_goods_sold = {
  takes: { opening: "0 or more", made: "0 or more", closing: "0 or more" },
  asks: [
    [(opening, made, closing) => round_(opening + made - closing, 9) >= 0, "closing stock cannot be more than there was", "opening", "made", "closing"],
  ],
  answer: (opening, made, closing) => opening + made - closing,
  gives: "0 or more",
};

/**
 * Overhead that was paid and not charged to candles by its rate; minus where more was charged. Gives any amount.
 * Source: job cost: OpenStax, Managerial Accounting, chapter 4
 * @param {number} actual overhead of making: 0 or more
 * @param {number} charged overhead of making: 0 or more
 * @return {number}
 * @customfunction
 */
function CANDLE_OVERHEAD_UNCHARGED(actual, charged) {
  return answer_("overhead_uncharged", arguments);
}
FUNCTIONS_.overhead_uncharged = {
  takes: { actual: "0 or more", charged: "0 or more" },
  answer: (actual, charged) => actual - charged,
  gives: "any amount",
};

// -----------------------------------------------------------------------------------------------------------------
// Measure: a value in another unit

/**
 * A value in another unit of its kind, by exact factors: weights, volumes, lengths, temperatures, times. Gives any
 * amount.
 * Source: units are defined by exact factors (international yard and pound agreement of 1959; US customary gallon)
 * @param {number} value a value in the first unit: any amount
 * @param {string} unit a unit as you write it: g, kg, oz, lb, ml, fl oz (the US one), imp fl oz, mm, in, C, F, min, h:
 *   text
 * @param {string} to a unit as you write it: g, kg, oz, lb, ml, fl oz (the US one), imp fl oz, mm, in, C, F, min, h:
 *   text
 * @return {number}
 * @customfunction
 */
function CANDLE_CONVERT(value, unit, to) {
  return answer_("convert", arguments);
}
FUNCTIONS_.convert = {
  takes: { value: "any amount (2)", unit: "text", to: "text" },
  answer: (value, unit, to) => convert_(value, unit, to),
  gives: "any amount (2)",
};

/**
 * Why a candle function has no answer, in words: its name, then the arguments that it was given.
 * @param {string} name the function, such as "oil_for_wax"
 * @param {...*} values what the function was given, in the same order
 * @return {string}
 * @customfunction
 */
function CANDLE_WHY(name, ...values) {
  return why_(name, values);
}

// -----------------------------------------------------------------------------------------------------------------
// What the functions read by

// Ranges by their words: without a low it is 0, without a high there is none.
const RANGES_ = {
  "10 to 2000 mm": {"unit": "mm", "low": 10.0, "high": 2000.0},
  "-200 to 200 mm": {"unit": "mm", "low": -200.0, "high": 200.0},
  "0 or more ml": {"unit": "ml"},
  "whole numbers 3 to 100": {"low": 3.0, "high": 100.0, "whole": true},
  "5 to 2000 mm": {"unit": "mm", "low": 5.0, "high": 2000.0},
  "10 or more g": {"unit": "g", "low": 10.0},
  "0 to 40 C": {"unit": "C", "high": 40.0},
  "10 to 1000000 ml": {"unit": "ml", "low": 10.0, "high": 1000000.0},
  "0 to 0.9 of the brimful volume": {"unit": "of the brimful volume", "high": 0.9, "hint": "Did you mean {:g}%?"},
  "0.5 to 1.5 g/ml": {"unit": "g/ml", "low": 0.5, "high": 1.5},
  "0 or more g": {"unit": "g"},
  "0 to 0.5 of wax weight": {"unit": "of wax weight", "high": 0.5, "hint": "Did you mean {:g}%?"},
  "whole numbers 0 to 1000000": {"high": 1000000.0, "whole": true},
  "0 to 0.333333 of total weight": {"unit": "of total weight", "high": 0.3333333333333333, "hint": "Did you mean {:g}%?"},
  "more than 0, at most 100 g": {"unit": "g", "high": 100.0, "above": true},
  "0 or more of wax weight": {"unit": "of wax weight"},
  "0 to 1 of the blend": {"unit": "of the blend", "high": 1.0, "hint": "Did you mean {:g}%?"},
  "0 to 0.5 of the stated basis": {"unit": "of the stated basis", "high": 0.5, "hint": "Did you mean {:g}%?"},
  "\"of wax\" or \"of total\"": {"choices": ["of wax", "of total"]},
  "0 to 0.5 of wax weight (2)": {"unit": "of wax weight", "high": 0.5, "range": "0 to 0.5 of wax weight"},
  "0 to 1 of the finished candle": {"unit": "of the finished candle", "high": 1.0},
  "more than 0, at most 1 of the finished candle": {"unit": "of the finished candle", "high": 1.0, "above": true, "hint": "Did you mean {:g}%?"},
  "list, each 0 to 1 of the blend": {"unit": "of the blend", "high": 1.0, "hint": "Did you mean {:g}%?", "many": true},
  "list, each more than 0, at most 1 of the finished candle": {"unit": "of the finished candle", "high": 1.0, "above": true, "hint": "Did you mean {:g}%?", "many": true},
  "0 to 0.1 of wax weight": {"unit": "of wax weight", "high": 0.1, "hint": "Did you mean {:g}%?"},
  "list, each 0.5 to 1.5 g/ml": {"unit": "g/ml", "low": 0.5, "high": 1.5, "many": true},
  "list, each more than 0, at most 10 kJ/(kg C)": {"unit": "kJ/(kg C)", "high": 10.0, "above": true, "many": true},
  "more than 0, at most 10 kJ/(kg C)": {"unit": "kJ/(kg C)", "high": 10.0, "above": true},
  "list, each 0 to 1000 kJ/kg": {"unit": "kJ/kg", "high": 1000.0, "many": true},
  "0 to 1000 kJ/kg": {"unit": "kJ/kg", "high": 1000.0},
  "-50 to 160 C": {"unit": "C", "low": -50.0, "high": 160.0},
  "0 to 0.002 per C": {"unit": "per C", "high": 0.002},
  "0 to 0.5 of the volume poured": {"unit": "of the volume poured", "high": 0.5, "hint": "Did you mean {:g}%?"},
  "-459.67 to 2000000 F": {"unit": "F", "low": -459.67, "high": 2000000.0},
  "-273.15 to 1000000 C": {"unit": "C", "low": -273.15, "high": 1000000.0},
  "-2000000 to 2000000 F difference": {"unit": "F difference", "low": -2000000.0, "high": 2000000.0},
  "-1000000 to 1000000 C difference": {"unit": "C difference", "low": -1000000.0, "high": 1000000.0},
  "0 or more kJ": {"unit": "kJ"},
  "10 to 100000 W": {"unit": "W", "low": 10.0, "high": 100000.0},
  "more than 0, at most 1 of the heater's power": {"unit": "of the heater's power", "high": 1.0, "above": true, "hint": "Did you mean {:g}%?"},
  "0 or more min": {"unit": "min"},
  "more than 0, at most 1000000 min": {"unit": "min", "high": 1000000.0, "above": true},
  "-50 to 100 C": {"unit": "C", "low": -50.0, "high": 100.0},
  "0 to 160 C": {"unit": "C", "high": 160.0},
  "more than 0, at most 100000 min": {"unit": "min", "high": 100000.0, "above": true},
  "-20 to 45 C": {"unit": "C", "low": -20.0, "high": 45.0},
  "more than 0 per min": {"unit": "per min", "above": true},
  "0 to 100000 min": {"unit": "min", "high": 100000.0},
  "more than 0, at most 1000000 h": {"unit": "h", "high": 1000000.0, "above": true},
  "more than 0, at most 1000000 g/h": {"unit": "g/h", "high": 1000000.0, "above": true},
  "list, each 0 to 10000 h": {"unit": "h", "high": 10000.0, "many": true},
  "list, each 0 to 100000 g": {"unit": "g", "high": 100000.0, "many": true},
  "0.5 to 0.999 of the time": {"unit": "of the time", "low": 0.5, "high": 0.999, "hint": "Did you mean {:g}%?"},
  "any amount g/h": {"unit": "g/h", "low": -1000000000000.0},
  "list, each more than 0, at most 1000000 g/h": {"unit": "g/h", "high": 1000000.0, "above": true, "many": true},
  "0 to 500 mm": {"unit": "mm", "high": 500.0},
  "1 to 500 g/h": {"unit": "g/h", "low": 1.0, "high": 500.0},
  "0 to 1000000 h": {"unit": "h", "high": 1000000.0},
  "whole numbers 0 to 1000000 h": {"unit": "h", "high": 1000000.0, "whole": true},
  "any amount h": {"unit": "h", "low": -1000000000000.0},
  "0 or more": {"unit": "money"},
  "0 or more money per h": {"unit": "money per h"},
  "more than 0, at most 60 MJ/kg": {"unit": "MJ/kg", "high": 60.0, "above": true},
  "0 or more W": {"unit": "W"},
  "list, each 0 to 1000 h": {"unit": "h", "high": 1000.0, "many": true},
  "list, each 0 to 1000 mm": {"unit": "mm", "high": 1000.0, "many": true},
  "more than 0 mm/h": {"unit": "mm/h", "above": true},
  "0 or more h": {"unit": "h"},
  "list, each 4 to 300 mm": {"unit": "mm", "low": 4.0, "high": 300.0, "many": true},
  "0 or more mm": {"unit": "mm"},
  "0 or more (2)": {"range": "0 or more"},
  "more than 0": {"above": true},
  "0 or more money per unit": {"unit": "money per unit"},
  "list, each 0 or more": {"many": true},
  "list, each 0 or more money per unit": {"unit": "money per unit", "many": true},
  "0 to 0.5 of what is weighed out": {"unit": "of what is weighed out", "high": 0.5, "hint": "Did you mean {:g}%?"},
  "0 to 1 of what was made": {"unit": "of what was made", "high": 1.0},
  "0 to 1000000 min": {"unit": "min", "high": 1000000.0},
  "whole numbers 1 to 1000000": {"low": 1.0, "high": 1000000.0, "whole": true},
  "0 to 1 of the time": {"unit": "of the time", "high": 1.0, "hint": "Did you mean {:g}%?"},
  "0 to 1000": {"high": 1000.0},
  "-0.9 to 2 of today's cost": {"unit": "of today's cost", "low": -0.9, "high": 2.0, "hint": "Did you mean {:g}%?"},
  "0 to 10 of cost": {"unit": "of cost", "high": 10.0, "hint": "Did you mean {:g}%?"},
  "0 to 0.99 of the price": {"unit": "of the price", "high": 0.99, "hint": "Did you mean {:g}%?"},
  "0 to 1000 of cost": {"unit": "of cost", "high": 1000.0},
  "any amount": {"unit": "money", "low": -1000000000000.0},
  "1 to 1000000": {"low": 1.0, "high": 1000000.0},
  "0 to 1000000": {"high": 1000000.0},
  "0 to 1 of the price before tax": {"unit": "of the price before tax", "high": 1.0, "hint": "Did you mean {:g}%?"},
  "\"maker\" or \"place\" or \"nobody\"": {"choices": ["maker", "place", "nobody"]},
  "0 to 0.95 of the price": {"unit": "of the price", "high": 0.95, "hint": "Did you mean {:g}%?"},
  "\"net\" or \"gross\"": {"choices": ["net", "gross"]},
  "any amount of the price": {"unit": "of the price", "low": -1000000000000.0},
  "\"with tax\" or \"before tax\"": {"choices": ["with tax", "before tax"]},
  "more than 0 (2)": {"unit": "money", "above": true, "range": "more than 0"},
  "whole numbers 0 to 4": {"high": 4.0, "whole": true},
  "list, each 0 or more (2)": {"unit": "money", "many": true, "range": "0 or more"},
  "more than 0 money per unit": {"unit": "money per unit", "above": true},
  "more than 0, at most 1 of the price": {"unit": "of the price", "high": 1.0, "above": true, "hint": "Did you mean {:g}%?"},
  "0 to 10000": {"high": 10000.0},
  "more than 0, at most 0.5 of the orders": {"unit": "of the orders", "high": 0.5, "above": true, "hint": "Did you mean {:g}%?"},
  "a date such as \"2026-03-14\"": {"unit": "date"},
  "whole numbers 0 to 365 days": {"unit": "days", "high": 365.0, "whole": true},
  "whole numbers 1 to 365": {"low": 1.0, "high": 365.0, "whole": true},
  "whole numbers 1 to 10000": {"low": 1.0, "high": 10000.0, "whole": true},
  "any amount (2)": {"low": -1000000000000.0, "range": "any amount"},
  "0 or more times": {"unit": "times"},
  "more than 0, at most 3660 days": {"unit": "days", "high": 3660.0, "above": true},
  "0 or more days": {"unit": "days"},
  "whole numbers 0 to 36500 days": {"unit": "days", "high": 36500.0, "whole": true},
  "any amount days": {"unit": "days", "low": -1000000000000.0},
  "0 to 25000 g": {"unit": "g", "high": 25000.0},
  "5 to 25000 g": {"unit": "g", "low": 5.0, "high": 25000.0},
  "15 to 5000 mm": {"unit": "mm", "low": 15.0, "high": 5000.0},
  "\"flat\" or \"round\" or \"round lid\"": {"choices": ["flat", "round", "round lid"]},
  "0 to 1000000 cm2": {"unit": "cm2", "high": 1000000.0},
  "list, each 0 or more g": {"unit": "g", "many": true},
  "whole numbers 1 to 1000": {"low": 1.0, "high": 1000.0, "whole": true},
  "0 to 1 of the oil": {"unit": "of the oil", "high": 1.0, "hint": "Did you mean {:g}%?"},
  "0 to 1 of the share it had": {"unit": "of the share it had", "high": 1.0},
  "more than 0, at most 1 mg/l": {"unit": "mg/l", "high": 1.0, "above": true},
  "\"acute\" or \"chronic\" or \"chronic, degradable\"": {"choices": ["acute", "chronic", "chronic, degradable"]},
  "1 or more": {"low": 1.0},
  "\"nearest\" or \"down\"": {"choices": ["nearest", "down"]},
  "0 to 0.5 of the invoice": {"unit": "of the invoice", "high": 0.5, "hint": "Did you mean {:g}%?"},
  "whole numbers 360 to 366 days": {"unit": "days", "low": 360.0, "high": 366.0, "whole": true},
  "0 or more of the amount a year": {"unit": "of the amount a year"},
  text: {"text": true},
};

const DIMENSIONS_ = {
  g: ["a weight", "gram"],
  ml: ["a volume", "milliliter"],
  mm: ["a length", "millimeter"],
  C: ["a temperature", "degC"],
  F: ["a temperature", "degF"],
  "C difference": ["a difference in temperature", "delta_degC"],
  "F difference": ["a difference in temperature", "delta_degF"],
  s: ["a time", "second"],
  min: ["a time", "minute"],
  h: ["a time", "hour"],
  days: ["a number of days", "day"],
  cm2: ["an area", "centimeter**2"],
  "g/ml": ["a density", "gram/milliliter"],
  "mg/l": ["a concentration", "milligram/liter"],
  W: ["a power", "watt"],
  kJ: ["an amount of heat", "kilojoule"],
  "kJ/kg": ["a heat by weight", "kilojoule/kilogram"],
  "MJ/kg": ["a heat by weight", "megajoule/kilogram"],
  "kJ/(kg C)": ["a specific heat", "kilojoule/kilogram/kelvin"],
  "g/h": ["a rate of burning", "gram/hour"],
  "mm/h": ["a growth", "millimeter/hour"],
};

const EXAMPLES_ = {
  "a weight": "340 or \"12 oz\"",
  "a volume": "240 or \"8 US fl oz\"",
  "a length": "75 or \"3 in\"",
  "a temperature": "80 or \"176 F\"",
  "a difference in temperature": "10 or \"18 F\"",
  "a time": "90 or \"90 min\"",
  "a number of days": "14 or \"2 weeks\"",
  "an area": "90 or \"14 sq in\"",
  "a concentration": "0.5 or \"0.5 mg/l\"",
  "a density": "0.9 or \"0.9 g/ml\"",
  "a power": "1500 or \"1.5 kW\"",
  "an amount of heat": "320 or \"0.1 kWh\"",
  "a heat by weight": "190 or \"190 kJ/kg\"",
  "a specific heat": "2.2 or \"2.2 kJ/(kg C)\"",
  "a rate of burning": "4.5 or \"0.16 oz/h\"",
  "a growth": "25 or \"1 in/h\"",
  "a share": "0.08 or \"8%\"",
  "an amount of money": "12.50 or \"$12.50\"",
  "a number": "24",
};

const OFTEN_ = {
  mm: {"in": 25.4, "cm": 10.0},
  cm2: {"sq in": 6.4516},
  g: {"oz": 28.349523125},
  "g/h": {"oz/h": 28.349523125},
  ml: {"US fl oz": 29.5735295625},
  "g/ml": {"kg/m3": 0.001},
  W: {"kW": 1000.0},
  "kJ/(kg C)": {"J/(kg C)": 0.001},
};

const SPELLINGS_ = {"g": "gram", "gm": "gram", "gms": "gram", "gr": "gram", "gram": "gram", "grams": "gram", "gramme": "gram", "grammes": "gram", "kg": "kilogram", "kgs": "kilogram", "kilo": "kilogram", "kilos": "kilogram", "kilogram": "kilogram", "kilograms": "kilogram", "oz": "ounce", "ounce": "ounce", "ounces": "ounce", "lb": "pound", "lbs": "pound", "pound": "pound", "pounds": "pound", "ml": "milliliter", "mls": "milliliter", "cc": "milliliter", "millilitre": "milliliter", "millilitres": "milliliter", "milliliter": "milliliter", "milliliters": "milliliter", "cl": "centiliter", "centilitre": "centiliter", "centilitres": "centiliter", "centiliter": "centiliter", "centiliters": "centiliter", "l": "liter", "litre": "liter", "litres": "liter", "liter": "liter", "liters": "liter", "fl oz": "fluid_ounce", "floz": "fluid_ounce", "fluid ounce": "fluid_ounce", "fluid ounces": "fluid_ounce", "us fl oz": "fluid_ounce", "us floz": "fluid_ounce", "us fluid ounce": "fluid_ounce", "us fluid ounces": "fluid_ounce", "u s fl oz": "fluid_ounce", "u s floz": "fluid_ounce", "u s fluid ounce": "fluid_ounce", "u s fluid ounces": "fluid_ounce", "imp fl oz": "imperial_fluid_ounce", "imp floz": "imperial_fluid_ounce", "imp fluid ounce": "imperial_fluid_ounce", "imp fluid ounces": "imperial_fluid_ounce", "imperial fl oz": "imperial_fluid_ounce", "imperial floz": "imperial_fluid_ounce", "imperial fluid ounce": "imperial_fluid_ounce", "imperial fluid ounces": "imperial_fluid_ounce", "uk fl oz": "imperial_fluid_ounce", "uk floz": "imperial_fluid_ounce", "uk fluid ounce": "imperial_fluid_ounce", "uk fluid ounces": "imperial_fluid_ounce", "mm": "millimeter", "millimetre": "millimeter", "millimetres": "millimeter", "millimeter": "millimeter", "millimeters": "millimeter", "cm": "centimeter", "centimetre": "centimeter", "centimetres": "centimeter", "centimeter": "centimeter", "centimeters": "centimeter", "in": "inch", "inch": "inch", "inches": "inch", "\"": "inch", "″": "inch", "”": "inch", "''": "inch", "’’": "inch", "cm2": "centimeter**2", "cm²": "centimeter**2", "sq cm": "centimeter**2", "square centimetres": "centimeter**2", "square centimeters": "centimeter**2", "in2": "inch**2", "in²": "inch**2", "sq in": "inch**2", "sq inch": "inch**2", "sq inches": "inch**2", "square inch": "inch**2", "square inches": "inch**2", "c": "degC", "degc": "degC", "deg c": "degC", "°c": "degC", "celsius": "degC", "f": "degF", "degf": "degF", "deg f": "degF", "°f": "degF", "fahrenheit": "degF", "s": "second", "sec": "second", "secs": "second", "second": "second", "seconds": "second", "min": "minute", "mins": "minute", "minute": "minute", "minutes": "minute", "h": "hour", "hr": "hour", "hrs": "hour", "hour": "hour", "hours": "hour", "day": "day", "days": "day", "wk": "week", "wks": "week", "week": "week", "weeks": "week", "yr": "common_year", "yrs": "common_year", "year": "common_year", "years": "common_year", "g/ml": "gram/milliliter", "g/cc": "gram/milliliter", "g/cm3": "gram/milliliter", "kg/m3": "kilogram/meter**3", "mg/l": "milligram/liter", "w": "watt", "watt": "watt", "watts": "watt", "kw": "kilowatt", "kilowatt": "kilowatt", "kilowatts": "kilowatt", "kj": "kilojoule", "mj": "megajoule", "kwh": "kilowatt_hour", "kj/kg": "kilojoule/kilogram", "j/g": "kilojoule/kilogram", "mj/kg": "megajoule/kilogram", "kj/g": "megajoule/kilogram", "g/h": "gram/hour", "oz/h": "ounce/hour", "mm/h": "millimeter/hour", "in/h": "inch/hour", "%": "percent", "percent": "percent", "per cent": "percent", "kj/(kg k)": "kilojoule/kilogram/kelvin", "kj/kg k": "kilojoule/kilogram/kelvin", "kj/(kg c)": "kilojoule/kilogram/kelvin", "kj/kg c": "kilojoule/kilogram/kelvin", "kj/(kg °c)": "kilojoule/kilogram/kelvin", "kj/kg °c": "kilojoule/kilogram/kelvin", "j/(g k)": "kilojoule/kilogram/kelvin", "j/g k": "kilojoule/kilogram/kelvin", "j/(g c)": "kilojoule/kilogram/kelvin", "j/g c": "kilojoule/kilogram/kelvin", "j/(g °c)": "kilojoule/kilogram/kelvin", "j/g °c": "kilojoule/kilogram/kelvin", "j/(kg k)": "joule/kilogram/kelvin", "j/kg k": "joule/kilogram/kelvin", "j/(kg c)": "joule/kilogram/kelvin", "j/kg c": "joule/kilogram/kelvin", "j/(kg °c)": "joule/kilogram/kelvin", "j/kg °c": "joule/kilogram/kelvin"};

// What a unit measures, and how many of the first of its kind make one: so much over so much.
const UNITS_ = {
  centiliter: ["[length]3", 1n, 1n],
  centimeter: ["[length]1", 1n, 1n],
  "centimeter**2": ["[length]2", 1n, 1n],
  common_year: ["[time]1", 1n, 1n],
  day: ["[time]1", 1n, 365n],
  degC: ["[temperature]1", 1n, 1n],
  degF: ["[temperature]1", 1n, 1n],
  delta_degC: ["[temperature]1", 1n, 1n],
  delta_degF: ["[temperature]1", 5n, 9n],
  fluid_ounce: ["[length]3", 473176473n, 160000000n],
  gram: ["[mass]1", 1n, 1n],
  "gram/hour": ["[mass]1 [time]-1", 1n, 1n],
  "gram/milliliter": ["[length]-3 [mass]1", 1n, 1n],
  hour: ["[time]1", 1n, 8760n],
  imperial_fluid_ounce: ["[length]3", 454609n, 160000n],
  inch: ["[length]1", 127n, 50n],
  "inch**2": ["[length]2", 16129n, 2500n],
  "inch/hour": ["[length]1 [time]-1", 1n, 1n],
  "joule/kilogram/kelvin": ["[length]2 [temperature]-1 [time]-2", 1n, 1n],
  kilogram: ["[mass]1", 1000n, 1n],
  "kilogram/meter**3": ["[length]-3 [mass]1", 1n, 1000n],
  kilojoule: ["[length]2 [mass]1 [time]-2", 1n, 1n],
  "kilojoule/kilogram": ["[length]2 [time]-2", 1n, 1n],
  "kilojoule/kilogram/kelvin": ["[length]2 [temperature]-1 [time]-2", 1000n, 1n],
  kilowatt: ["[length]2 [mass]1 [time]-3", 1n, 1n],
  kilowatt_hour: ["[length]2 [mass]1 [time]-2", 3600n, 1n],
  liter: ["[length]3", 100n, 1n],
  megajoule: ["[length]2 [mass]1 [time]-2", 1000n, 1n],
  "megajoule/kilogram": ["[length]2 [time]-2", 1000n, 1n],
  "milligram/liter": ["[length]-3 [mass]1", 1n, 1000000n],
  milliliter: ["[length]3", 1n, 10n],
  millimeter: ["[length]1", 1n, 10n],
  "millimeter/hour": ["[length]1 [time]-1", 5n, 127n],
  minute: ["[time]1", 1n, 525600n],
  ounce: ["[mass]1", 45359237n, 1600000n],
  "ounce/hour": ["[mass]1 [time]-1", 45359237n, 1600000n],
  percent: ["percent", 1n, 1n],
  pound: ["[mass]1", 45359237n, 100000n],
  second: ["[time]1", 1n, 31536000n],
  watt: ["[length]2 [mass]1 [time]-3", 1n, 1000n],
  week: ["[time]1", 7n, 365n],
};

const CURRENCIES_ = ["USD", "GBP", "EUR", "CAD", "AUD", "BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG", "RWF", "UGX", "UYI", "VND", "VUV", "XAF", "XOF", "XPF", "BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND", "CLF", "UYW"];

const MONTHS_ = ["january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november", "december"];

// How numbers and days are written.
const FORMS_ = {
  piece: "\\s*(?<number>(?:[0-9]+ +)?[0-9]+/[0-9]+(?![0-9.,/])|[0-9][0-9.,]*|[.,][0-9]+)\\s*(?<unit>[^0-9.,+\\-\\s/][^0-9]*(?:(?<=[mn^])[23](?![0-9.,]))?)?",
  amount: "(?<minus>[-−]?)\\s*(?:(?<before>[A-Za-z]{0,2}[$£¥₠-⃏]|[A-Za-z]{3})\\s*)?(?<number>[-−]?[0-9.,](?:[0-9 .,/]*[0-9.,/])?)\\s*(?<after>[A-Za-z]{0,2}[$£¥₠-⃏]|[A-Za-z]{3})?",
  fractions: "[¼-¾⅐-⅞]",
  an_hour: "(?<!\\s)\\s*(?:/|\\bper|\\ban)\\s*(?:h|hr|hour)$",
  day_in_words: "(?:(?<first>[0-9]{1,2})[ -]+)?(?<month>[a-z]{3,9})\\.?[ -]+(?:(?<second>[0-9]{1,2})(?: *,|(?= )) *)?(?<year>[0-9]{4})",
  day_in_numbers: "([0-9]{1,2})[/.-]([0-9]{1,2})[/.-]([0-9]{4})",
  minus: "-−",
};

const MOST_PIECES_ = 3;

const FIRST_DAY_ = 61;

const LAST_DAY_ = 2958465;

const LARGEST_ = 1000000000000.0;

const CRUMB_ = 1e-09;

const LONGEST_SHOWN_ = 200;


// -----------------------------------------------------------------------------------------------------------------
// Cells: what a sheet hands over, and what it gets back.

/**
 * What a function gives for arguments as a sheet hands them over. A range where a single value is wanted is
 * gone through cell by cell, and the answer has its shape; a row of blanks stays blank. A sheet can be told of
 * one error only, so a cell that has no answer stops the whole range, and the message says which it is.
 */
function answer_(name, given) {
  const formula = FUNCTIONS_[name];
  let values = inOrder_(name, Array.from(given));
  const shape = shape_(name, values);
  if (!shape) return alone_(rows_(formula, call_(name, values)));
  values = values.map((value, place) => (isOver_(formula, value, place) ? value : once_(name, place, value)));
  const ranges = values.filter((value, place) => isOver_(formula, value, place));
  const answers = [];
  const refused = [];
  for (let row = 0; row < shape[0]; row++) {
    answers.push([]);
    for (let column = 0; column < shape[1]; column++) {
      const one = values.map((value, place) => (isOver_(formula, value, place) ? value[row][column] : value));
      try {
        const empty = !takesBlanks_(formula, values) && ranges.every((range) => isBlank_(range[row][column]));
        answers[row].push(empty ? "" : cell_(formula, call_(name, one)));
      } catch (problem) {
        refused.push(told_(problem, (reason) => place_(shape, row, column) + reason));
      }
    }
  }
  if (!refused.length) return answers;
  const more = refused.length > 1 ? ` ${refused.length - 1} more without an answer.` : "";
  throw new Refused_(refused[0].message + more);
}

/** What stands beside ranges, such as "8%", read once for all of their cells. */
function once_(name, place, value) {
  const formula = FUNCTIONS_[name];
  const [argument, range] = Object.entries(formula.takes)[place];
  try {
    return readArgument_(argument, term_(range), filled_(formula, argument, value));
  } catch (problem) {
    throw told_(problem, (reason) => `${name}: ${sentence_([reason])}`);
  }
}

/** The arguments in order: a range of one cell as that cell. */
function inOrder_(name, given) {
  const wanted = Object.values(FUNCTIONS_[name].takes);
  while (given.length > wanted.length && given[given.length - 1] === undefined) given.pop();
  if (given.length > wanted.length) {
    throw new Refused_(`${name}: takes ${wanted.length} arguments, not ${given.length}`);
  }
  return wanted.map((term, place) => {
    const value = given[place];
    return isRange_(value) && value.length === 1 && value[0].length === 1 && !term_(term).many ? value[0][0] : value;
  });
}

function isRange_(value) {
  return Array.isArray(value);
}

/** Whether a range stands where a single value is wanted. */
function isOver_(formula, value, place) {
  return isRange_(value) && !term_(Object.values(formula.takes)[place]).many;
}

function takesBlanks_(formula, values) {
  const terms = Object.values(formula.takes);
  return terms.every((term, place) => !isOver_(formula, values[place], place) || term_(term).blank);
}

function shape_(name, values) {
  const formula = FUNCTIONS_[name];
  const ranges = values.filter((value, place) => isOver_(formula, value, place));
  const shapes = new Set(ranges.map((range) => `${range.length} by ${range[0].length}`));
  if (shapes.size > 1) throw new Refused_(`${name}: ranges of one shape are wanted`);
  if (shapes.size && (formula.several || formula.fields)) {
    throw new Refused_(`${name}: its answer takes several cells; give it single values, not ranges`);
  }
  return shapes.size ? [ranges[0].length, ranges[0][0].length] : null;
}

function place_([rows, columns], row, column) {
  if (rows > 1) return columns > 1 ? `row ${row + 1}, column ${column + 1}: ` : `row ${row + 1}: `;
  return columns > 1 ? `column ${column + 1}: ` : "";
}

/** A result as rows of cells: one value, a list down a column, or a row of fields each. */
function rows_(formula, result) {
  const rows = formula.several ? result : [result];
  if (!formula.fields) return rows.map((value) => [cell_(formula, value)]);
  const fields = Object.entries(formula.fields);
  return rows.map((row) => fields.map(([field, term]) => shownDay_(term_(term), row[field])));
}

function alone_(rows) {
  if (!rows.length) return "";
  return rows.length === 1 && rows[0].length === 1 ? rows[0][0] : rows;
}

function cell_(formula, value) {
  return shownDay_(term_(formula.gives), value);
}

/** A day as a date, which the sheet shows as one. */
function shownDay_(term, value) {
  if (term.unit !== "date" || value === "") return value;
  return new Date(...isoDay_(value).split("-").map((part, place) => Number(part) - (place === 1 ? 1 : 0)));
}

/** Why a function has no answer for these arguments, in words. */
function why_(name, given) {
  const letters = String(name).toLowerCase().replace(/[^a-z0-9]/g, "");
  const known = (wanted) => Object.keys(FUNCTIONS_).find((each) => each.replace(/_/g, "") === wanted);
  const found = known(letters) || known(letters.replace(/^candle/, ""));
  if (!found) return `there is no function ${name}`;
  try {
    answer_(found, given);
    return "no error";
  } catch (problem) {
    return told_(problem, (reason) => reason).message;
  }
}

// -----------------------------------------------------------------------------------------------------------------
// Checking: what a function takes, what it gives, and what is told where it has no answer.

/** One value as a function takes it: a number in the range's own unit, a day's number, words, or "" for a blank. */
function readValue_(term, value) {
  if (isBlank_(value)) {
    if (term.blank) return "";
    throw new Refused_(`is blank; it takes ${term.range}`);
  }
  if (typeof value === "string" && CELL_ERROR_.test(value)) throw new Refused_(`is the error ${value}`);
  if (!counts_(term)) return readWords_(term, value);
  let number = value;
  let unit = "";
  if (typeof value === "string") {
    try {
      ({ value: number, unit } = readUnits_(value, term.unit));
    } catch (problem) {
      throw told_(problem, (reason) => `is ${shown_(value)}: ${reason}`);
    }
  } else if (typeof value !== "number") {
    throw new Refused_(`is ${shown_(value)}; it takes ${term.range}`);
  }
  if (!takes_(term, number)) {
    throw new Refused_(`is ${shown_(value)}; it takes ${term.range}.${unit ? "" : slip_(term, number)}`);
  }
  return number;
}

function readWords_(term, value) {
  if (term.unit === "date") {
    const day = readDay_(value);
    if (day !== null) return day;
    const meant = meantDays_(value).join(" or ");
    if (meant) throw new Refused_(`is ${shown_(value)}; it takes ${term.range}: write ${meant}`);
  } else if (term.choices) {
    // As spreadsheets compare words: "Value" is "value".
    const same = (choice) => typeof value === "string" && value.trim().toLowerCase() === choice.toLowerCase();
    const choice = term.choices.find(same);
    if (choice !== undefined) return choice;
  } else if (typeof value === "string" && value.trim()) {
    return value.trim();
  } else if (Number.isFinite(value)) {
    return general_(value, 15); // a cell makes a number of "5" by itself; it was typed as text
  }
  if (term.text && isDate_(value)) {
    const made = "a sheet makes a date of words such as 1-5; type an apostrophe before them";
    throw new Refused_(`is the date ${shown_(value)}; it takes ${term.range}: ${made}`);
  }
  throw new Refused_(`is ${shown_(value)}; it takes ${term.range}`);
}

function counts_(term) {
  return !(term.choices || term.text || term.unit === "date");
}

function takes_(term, value) {
  const inside = (term.above ? term.low < value : term.low <= value) && value <= term.high;
  return inside && (!term.whole || Number.isInteger(value));
}

/** What was likely meant: a percentage, or the number in another unit, where that would be taken. */
function slip_(term, value) {
  const plain = Number(general_(value, 10));
  if (term.hint && Math.max(term.high, 1) < value && takes_(term, value / 100)) {
    return ` ${term.hint.replace("{:g}", general_(plain, 6))}`;
  }
  const meant = term.bare ? [] : meantUnits_(value, term.unit);
  const likely = meant.filter(([, inside]) => takes_(term, inside)).map(([unit]) => `${general_(plain, 6)} ${unit}`);
  return likely.length ? ` Did you mean ${likely.join(" or ")}?` : "";
}

/** An argument as given, one value or a list. */
function readArgument_(name, term, value) {
  try {
    return term.many ? readList_(term, value) : readValue_(term, value);
  } catch (problem) {
    throw told_(problem, (reason) => `${name} ${reason}`);
  }
}

function readList_(term, value) {
  const rows = isRange_(value) ? value.map((row) => (isRange_(row) ? row : [row])) : [[value]];
  if (rows.length > 1 && rows.some((row) => row.length > 1)) {
    throw new Refused_(`is a block of ${rows.length} rows; it takes one column or one row`);
  }
  // Blanks at the end of a range are room to grow; a blank inside it is a value forgotten.
  const cells = [].concat(...rows);
  while (cells.length && isBlank_(cells[cells.length - 1])) cells.pop();
  if (!cells.length && !term.blank) throw new Refused_(`is empty; it takes a list, each ${term.range}`);
  return cells.map((cell, place) => {
    if (isBlank_(cell) && !term.blank) {
      throw new Refused_(`is blank at place ${place + 1} of ${cells.length}; only blanks at the end are passed over`);
    }
    try {
      const read = readValue_(term, cell);
      // Totals pass over a number that is text, so the maker's own sums would differ from ours.
      if (counts_(term) && typeof cell === "string" && cell && !readUnits_(cell, term.unit).unit) {
        throw new Refused_(`is the text "${cell}"; it takes a number, or one with its unit`);
      }
      return read;
    } catch (problem) {
      throw told_(problem, (reason) => `at place ${place + 1} ${reason}`);
    }
  });
}

/** A function's checked answer for its arguments in order; what is wrong with them is thrown, all of it at once. */
function call_(name, given) {
  const formula = FUNCTIONS_[name];
  const names = Object.keys(formula.takes);
  const values = [];
  const problems = [];
  names.forEach((argument, place) => {
    try {
      values.push(readArgument_(argument, term_(formula.takes[argument]), filled_(formula, argument, given[place])));
    } catch (problem) {
      problems.push(told_(problem, (reason) => reason).message);
    }
  });
  if (!problems.length) problems.push(...together_(formula, names, values));
  if (problems.length) throw new Refused_(`${name}: ${sentence_(problems)}`);
  const result = worked_(name, formula, names, values);
  return formula.several ? result.map((row) => kept_(name, row, values)) : kept_(name, result, values);
}

function filled_(formula, argument, value) {
  const optional = argument in (formula.left_out || {});
  return optional && !isRange_(value) && isBlank_(value) ? formula.left_out[argument] : value;
}

function worked_(name, formula, names, values) {
  try {
    return formula.answer(...values);
  } catch (problem) {
    const told = told_(problem, (reason) => reason.replace(/^[a-z_]+: /, "")).message;
    throw new Refused_(`${name}: ${told || `these values have no answer (${listed_(names, values)})`}`);
  }
}

/** What the arguments ask of each other and is not so. */
function together_(formula, names, values) {
  const terms = names.map((name) => term_(formula.takes[name]));
  const lists = names.map((_, place) => place).filter((place) => terms[place].many);
  const longest = Math.max(0, ...lists.map((place) => values[place].length));
  for (const place of lists.filter((each) => terms[each].blank)) {
    // Blanks at the end were passed over; where a blank is a value they come back.
    while (values[place].length < longest) values[place].push("");
  }
  if (new Set(lists.map((place) => values[place].length)).size > 1) {
    const lengths = lists.map((place) => `${names[place]} has ${values[place].length}`);
    return [`lists of one length are wanted: ${lengths.join(", ")}`];
  }
  return (formula.asks || [])
    .filter(([holds]) => !holds(...values))
    .map(([, words, ...of]) => `${words} (${listed_(of, of.map((name) => values[names.indexOf(name)]))})`);
}

/** A result in its range: what lies past an end of it by a rounding crumb is the end. */
function kept_(name, result, values) {
  const formula = FUNCTIONS_[name];
  if (!formula.fields) return inRange_(name, "the result", term_(formula.gives), result, values);
  const row = {};
  for (const [field, term] of Object.entries(formula.fields)) {
    row[field] = inRange_(name, field, term_(term), result[field], values);
  }
  return row;
}

function inRange_(name, what, term, value, values) {
  if (term.blank && isBlank_(value)) return "";
  if (counts_(term) ? takes_(term, value) : typeof value === (term.unit === "date" ? "number" : "string")) return value;
  for (const [end, past] of [[term.low, term.low - value], [term.high, value - term.high]]) {
    const taken = Math.abs(end) < LARGEST_ && takes_(term, end);
    if (counts_(term) && taken && past > 0 && past <= CRUMB_ * Math.max(1, Math.abs(end))) return end;
  }
  const given = listed_(Object.keys(FUNCTIONS_[name].takes), values);
  if (typeof value === "number" && Number.isNaN(value)) {
    throw new Refused_(`${name}: these values have no answer (${given})`);
  }
  throw new Refused_(`${name}: ${what} would be ${shown_(value)}; it must be ${term.range} (${given})`);
}

/** A range by its words, with what is usual filled in. */
function term_(range) {
  return { unit: "", low: 0, high: LARGEST_, range: range.replace(/^list, each /, ""), ...RANGES_[range] };
}

// Words about values

function told_(problem, words) {
  if (!(problem instanceof Refused_)) throw problem; // a mistake of ours is no word about the maker's values
  return new Refused_(words(problem.message));
}

function sentence_(problems) {
  const text = problems.map((problem) => problem.replace(/\.$/, "")).join("; ");
  return text.endsWith("?") ? text : `${text}.`;
}

function listed_(names, values) {
  return names.map((name, place) => `${name} ${shown_(values[place])}`).join(", ");
}

function shown_(value) {
  if (isBlank_(value)) return "blank";
  if (typeof value === "string") return `"${cut_(value)}"`;
  if (typeof value === "boolean") return String(value).toUpperCase();
  if (isDate_(value)) return isoDay_(readDay_(value));
  return typeof value === "number" ? general_(value, 10) : cut_(`[${value.map((each) => shown_(each)).join(", ")}]`);
}

function cut_(text) {
  return text.length <= LONGEST_SHOWN_ ? text : `${text.slice(0, LONGEST_SHOWN_)}...`;
}

/** A number with so many digits at most, and no zeros at its end. */
function general_(value, digits) {
  if (!Number.isFinite(value)) return Number.isNaN(value) ? "nan" : value > 0 ? "inf" : "-inf";
  const [part, exponent] = value.toExponential(digits - 1).split("e");
  const power = Number(exponent);
  const trimmed = (text) => (text.includes(".") ? text.replace(/\.?0+$/, "") : text);
  if (power >= -4 && power < digits) return trimmed(value.toFixed(Math.max(0, digits - 1 - power)));
  return `${trimmed(part)}e${power < 0 ? "-" : "+"}${String(Math.abs(power)).padStart(2, "0")}`;
}

function isBlank_(cell) {
  return cell === "" || cell === null || cell === undefined || Number.isNaN(cell);
}

// -----------------------------------------------------------------------------------------------------------------
// Reading: numbers, units and days as people write them.

/** What a function does not take, said in words. */
class Refused_ extends Error {}

const PIECE_FORM_ = new RegExp("^" + FORMS_.piece, "i");
const AMOUNT_FORM_ = new RegExp("^(?:" + FORMS_.amount + ")$");
const FRACTION_SIGNS_ = new RegExp(FORMS_.fractions, "g");
const AN_HOUR_FORM_ = new RegExp(FORMS_.an_hour, "i");
const DAY_IN_WORDS_ = new RegExp("^(?:" + FORMS_.day_in_words + ")$", "i");
const DAY_IN_NUMBERS_ = new RegExp("^(?:" + FORMS_.day_in_numbers + ")$");
const CELL_ERROR_ = /^#(N\/A|VALUE!|REF!|DIV\/0!|NUM!|NAME\?|NULL!|ERROR!)$/;

/** Text as a value in a unit: { value, unit }, where unit is "" if none was written. */
function readUnits_(text, unit) {
  const kind = kindOf_(unit);
  const such = `it takes ${kind} such as ${EXAMPLES_[kind]}`;
  const [bare, beside] = withoutOwnWords_(text, unit);
  const pieces = pieces_(bare, kind, such);
  const spelled = pieces.filter((piece) => piece.name).map((piece) => spelledFor_(piece.name, kind));
  if (!spelled.length) {
    if (pieces.length > 1) throw new Refused_(such);
    return { value: pieces[0].value, unit: beside };
  }
  if (spelled.length < pieces.length) throw new Refused_(`a unit is missing beside a number; ${such}`);
  if (spelled.length > 1 && spelled.join() !== "pound,ounce") {
    throw new Refused_('only pounds and ounces are read together ("5 lb 4 oz")');
  }
  const target = kind === "a share" ? "percent" : (DIMENSIONS_[unit] || ["", ""])[1];
  for (const name of spelled) {
    if (!target || !alike_(name, target)) throw new Refused_(otherKind_(pieces[0], name, kind));
  }
  if (kind === "a share") return { value: pieces[0].value / 100, unit: "percent" };
  const inTarget = pieces.map((piece, place) => convertUnits_(piece.value, spelled[place], target));
  return { value: inTarget.reduce((sum, value) => sum + value, 0), unit: spelled[spelled.length - 1] };
}

function kindOf_(unit) {
  if (unit in DIMENSIONS_) return DIMENSIONS_[unit][0];
  if (unit.startsWith("of ")) return "a share";
  return unit.startsWith("money") ? "an amount of money" : "a number";
}

function unitName_(spelling) {
  return spelling.toLowerCase().replace(/[.^]/g, "").split(/\s+/).filter(Boolean).join(" ");
}

/** The same words say where on the scale, and how far apart on it: what is wanted decides. */
function spelledFor_(name, kind) {
  const unit = SPELLINGS_[name];
  return kind === "a difference in temperature" && (unit === "degC" || unit === "degF") ? `delta_${unit}` : unit;
}

/** A text without the words that its range says already: "24 times", "8% of wax weight", "$15 an hour". */
function withoutOwnWords_(given, unit) {
  const text = given.trim();
  if (!unit.startsWith("money")) {
    const own = unit && !(unit in DIMENSIONS_) && text.toLowerCase().endsWith(unit.toLowerCase());
    return [own ? text.slice(0, -unit.length) : text, ""];
  }
  const amount = unit === "money per h" ? text.replace(AN_HOUR_FORM_, "") : text;
  const match = AMOUNT_FORM_.exec(amount);
  const marks = match ? [match.groups.before, match.groups.after].filter(Boolean) : [];
  const isCurrency = (mark) => !/^[a-z]+$/i.test(mark) || CURRENCIES_.includes(mark.toUpperCase());
  if (marks.length !== 1 || !isCurrency(marks[0])) return [amount, ""];
  return [match.groups.minus + match.groups.number, "money"];
}

function pieces_(text, kind, such) {
  let rest = text.replace(/[\u00a0\u202f]/g, " ");
  rest = rest.replace(FRACTION_SIGNS_, (sign) => ` ${sign.normalize("NFKC")}`).replace(/\u2044/g, "/").trim();
  if (!rest) throw new Refused_(`it is empty; ${such}`);
  const negative = FORMS_.minus.includes(rest[0]);
  if (negative) rest = rest.slice(1);
  const found = [];
  do {
    const match = PIECE_FORM_.exec(rest);
    if (!match) throw new Refused_(such);
    const name = unitName_(match.groups.unit || "");
    if (name && !(name in SPELLINGS_)) throw new Refused_(`"${name}" is no unit known here; ${such}`);
    if (found.length === MOST_PIECES_) throw new Refused_(such);
    found.push({ value: (negative ? -1 : 1) * numeral_(match.groups.number), name });
    rest = rest.slice(match[0].length).trim();
  } while (rest);
  if (negative && found.length > 1) throw new Refused_(`a minus is read before one number only; ${such}`);
  return found;
}

/** "2 7/8", "12.5" or "12,5" as a number. */
function numeral_(text) {
  if (text.includes("/")) {
    const [, whole, top, bottom] = /^(?:(.*) )?(.*)\/(.*)$/.exec(text);
    if (!Number(bottom) || (whole && Number(top) >= Number(bottom))) {
      throw new Refused_(`"${text}" is no number: a fraction is written as in 2 7/8`);
    }
    return Number(whole || 0) + Number(top) / Number(bottom);
  }
  const comma = text.indexOf(",");
  const whole = comma < 0 ? text : text.slice(0, comma);
  const decimals = comma < 0 ? "" : text.slice(comma + 1);
  if (decimals.length === 3 && /^[0-9]+$/.test(whole) && /[1-9]/.test(whole)) {
    throw new Refused_(`"${text}" can be read two ways: write ${whole}.${decimals} or ${whole}${decimals}`);
  }
  const point = text.replace(/,/g, ".");
  if (point.split(".").length > 2) {
    throw new Refused_(`"${text}" is not a plain number: leave out thousands marks, as in 1234.5`);
  }
  return Number(point);
}

function alike_(unit, other) {
  return UNITS_[unit][0] === UNITS_[other][0];
}

function convertUnits_(value, unit, to) {
  if (unit === to) return value;
  if (unit === "degF") return ((value - 32) * 5) / 9;
  if (unit === "degC") return (value * 9) / 5 + 32;
  // Whole numbers over one another, cancelled: the factors are exact by definition.
  const top = UNITS_[unit][1] * UNITS_[to][2];
  const bottom = UNITS_[unit][2] * UNITS_[to][1];
  const common = commonFactor_(top, bottom);
  return (value * Number(top / common)) / Number(bottom / common);
}

function commonFactor_(one, other) {
  return other ? commonFactor_(other, one % other) : one;
}

/** A value from one unit to another of its kind, both as makers write them. */
function convert_(value, unit, to) {
  const [from, into] = [unit, to].map((spelling) => {
    const found = SPELLINGS_[unitName_(spelling)];
    if (!found) throw new Refused_(`"${spelling}" is no unit known here; it takes a unit such as g, oz, ml or C`);
    return found;
  });
  if (!alike_(from, into)) {
    throw new Refused_(`"${unit}" is for ${kindOfUnit_(from)} and "${to}" for ${kindOfUnit_(into)}`);
  }
  return convertUnits_(value, from, into);
}

function kindOfUnit_(name) {
  if (name === "percent") return "a share";
  return Object.values(DIMENSIONS_).find(([, target]) => alike_(name, target))[0];
}

function otherKind_(piece, got, wanted) {
  const value = general_(piece.value, 6);
  const text = `"${value} ${piece.name}" is ${kindOfUnit_(got)}; it takes ${wanted} such as ${EXAMPLES_[wanted]}`;
  if (got === "ounce" && wanted === "a volume") {
    return `${text}. Did you mean ${value} US fl oz, or ${value} oz of water weighed?`;
  }
  return got === "fluid_ounce" && wanted === "a weight" ? `${text}. Did you mean ${value} oz on the scale?` : text;
}

/** A bare number as it may have been meant, in units that makers often use: each with what it is in `unit`. */
function meantUnits_(value, unit) {
  if (unit === "C") return [["F", (value - 32) / 1.8]];
  return Object.entries(OFTEN_[unit] || {}).map(([name, factor]) => [name, Number((value * factor).toFixed(9))]);
}

// Days are counted as a sheet counts them: day 46095 is 14 March 2026.

function isDate_(value) {
  return Object.prototype.toString.call(value) === "[object Date]";
}

/** A day from a cell's date or number, or from text such as "2026-03-14" or "14 Mar 2026"; null where it is none. */
function readDay_(value) {
  if (isDate_(value)) return dayNumber_(value.getFullYear(), value.getMonth() + 1, value.getDate());
  if (typeof value === "number") return value >= FIRST_DAY_ && value < LAST_DAY_ + 1 ? Math.floor(value) : null;
  if (typeof value !== "string") return null;
  const text = value.trim();
  const written = /^([0-9]{4})-([0-9]{1,2})-([0-9]{1,2})$/.exec(text);
  if (written) return dayNumber_(...written.slice(1).map(Number));
  const words = DAY_IN_WORDS_.exec(text);
  if (!words || Boolean(words.groups.first) === Boolean(words.groups.second)) return null;
  const name = words.groups.month.toLowerCase();
  // Sept is the one name that is also cut after four letters.
  const month = MONTHS_.findIndex((each) => [each, each.slice(0, 3)].includes(name === "sept" ? "sep" : name)) + 1;
  return month ? dayNumber_(Number(words.groups.year), month, Number(words.groups.first || words.groups.second)) : null;
}

function dayNumber_(year, month, day) {
  const at = new Date(0);
  at.setUTCFullYear(year, month - 1, day);
  const there = year && at.getUTCMonth() === month - 1 && at.getUTCDate() === day;
  return there ? at.getTime() / 86400000 + 25569 : null;
}

function isoDay_(number) {
  return new Date((number - 25569) * 86400000).toISOString().slice(0, 10);
}

/** The days that a text such as "5/12/2026" can mean; it is read as none of them. */
function meantDays_(value) {
  const match = typeof value === "string" ? DAY_IN_NUMBERS_.exec(value.trim()) : null;
  if (!match) return [];
  const [first, second, year] = match.slice(1).map(Number);
  const days = [dayNumber_(year, second, first), dayNumber_(year, first, second)];
  return [...new Set(days.filter((day) => day !== null))].map(isoDay_);
}

// -----------------------------------------------------------------------------------------------------------------
// Sums: the functions that formulas are made of, as spreadsheets have them.

/** What has no answer is thrown, so that no later step can make a number of it. */
function finite_(value) {
  if (!Number.isFinite(value)) throw new Refused_("");
  return value;
}

function ratio_(top, bottom) {
  return finite_(top / bottom);
}

function power_(base, exponent) {
  return finite_(base ** exponent);
}

function root_(value) {
  return finite_(Math.sqrt(value));
}

function ln_(value) {
  return finite_(Math.log(value));
}

function log10_(value) {
  return finite_(Math.log10(value));
}

function exp_(value) {
  return finite_(Math.exp(value));
}

function none_() {
  throw new Refused_("");
}

/** Half away from zero, on the fifteen digits that spreadsheets keep: 1.005 rounds to 1.01. */
function round_(value, digits) {
  return stepped_(value, digits, (scaled) => Math.floor(scaled + 0.5));
}

/** Away from zero. */
function roundUp_(value, digits) {
  return stepped_(value, digits, Math.ceil);
}

/** Towards zero. */
function roundDown_(value, digits) {
  return stepped_(value, digits, Math.floor);
}

/** The amount without its sign as so many of its last decimal, in whole numbers; written out, so that 1.005 is 100.5. */
function stepped_(value, digits, step) {
  const whole = step(shifted_(Math.abs(Number(finite_(value).toPrecision(15))), digits));
  return Math.sign(value) * shifted_(whole, -digits);
}

function shifted_(value, digits) {
  const [part, power] = value.toExponential().split("e");
  return Number(`${part}e${Number(power) + digits}`);
}

function numbers_(list) {
  return list.filter((value) => typeof value === "number");
}

function count_(list) {
  return numbers_(list).length;
}

/** A sum that loses nothing on the way (J. R. Shewchuk, Discrete & Computational Geometry 18, 1997: 305-363). */
function sum_(list) {
  let parts = [];
  for (let value of numbers_(list)) {
    const kept = [];
    for (let part of parts) {
      if (Math.abs(value) < Math.abs(part)) [value, part] = [part, value];
      const high = value + part;
      const low = part - (high - value);
      if (low) kept.push(low);
      value = high;
    }
    parts = [...kept, value];
  }
  return parts.reduceRight((sum, part) => sum + part, 0);
}

/** A list of what `work` makes of the values that stand at one place in several lists. */
function each_(lists, work) {
  return lists[0].map((_, place) => work(...lists.map((list) => list[place])));
}

function max_(list) {
  return numbers_(list).reduce((most, value) => Math.max(most, value));
}

function min_(list) {
  return numbers_(list).reduce((least, value) => Math.min(least, value));
}

/** The value at a place among a list sorted upwards. */
function small_(list, place) {
  return numbers_(list).sort((one, other) => one - other)[Math.floor(place) - 1];
}

/** The working day, Monday to Friday, so many after a day, or before it. */
function workday_(day, days) {
  let at = Math.floor(day);
  for (let left = Math.abs(Math.trunc(days)); left > 0; ) {
    at += Math.sign(days);
    if ((at - 2 + 7) % 7 < 5) left -= 1; // day 2 was a Monday
  }
  return at;
}

// -----------------------------------------------------------------------------------------------------------------
// Statistics: what spreadsheets call AVERAGE, DEVSQ, STDEV, SLOPE, STEYX, NORMSDIST, NORMSINV and TINV.

function mean_(list) {
  return ratio_(sum_(list), count_(list));
}

/** The sum of squares about the mean. */
function squaresAboutMean_(list) {
  const mean = mean_(list);
  return sum_(list.map((value) => (value - mean) ** 2));
}

function deviation_(list) {
  return root_(ratio_(squaresAboutMean_(list), count_(list) - 1));
}

/** The slope of the line by least squares through `ys` over `xs`. */
function slope_(ys, xs) {
  const [across, up] = [mean_(xs), mean_(ys)];
  return ratio_(sum_(each_([xs, ys], (x, y) => (x - across) * (y - up))), squaresAboutMean_(xs));
}

/** How far the readings scatter about that line. */
function scatter_(ys, xs) {
  const [across, up, slope] = [mean_(xs), mean_(ys), slope_(ys, xs)];
  const left = sum_(each_([xs, ys], (x, y) => (y - up - slope * (x - across)) ** 2));
  return root_(ratio_(left, count_(xs) - 2));
}

/**
 * The share of a standard normal distribution below a value: its series by odd powers near the middle
 * (Handbook of Mathematical Functions, 26.2.11), its continued fraction in the tails (26.2.14).
 */
function normalBelow_(value) {
  const away = Math.abs(value);
  const height = Math.exp((-away * away) / 2) / Math.sqrt(2 * Math.PI);
  if (away < 3) {
    let sum = away;
    let term = away;
    for (let odd = 3; Math.abs(term) > 1e-18 * sum; odd += 2) {
      term *= (away * away) / odd;
      sum += term;
    }
    return 0.5 + Math.sign(value) * height * sum;
  }
  let fraction = 0;
  for (let step = 200; step > 0; step--) fraction = step / (away + fraction);
  const tail = height / (away + fraction);
  return value < 0 ? tail : 1 - tail;
}

/** The value with a share of a standard normal distribution below it: halved in, then by Newton's steps. */
function normalQuantile_(below) {
  if (!(below > 0 && below < 1)) none_();
  if (below === 0.5) return 0;
  if (below > 0.5) return -normalQuantile_(1 - below);
  let [low, high] = [-40, 0];
  while (high - low > 1e-3) {
    const middle = (low + high) / 2;
    if (normalBelow_(middle) < below) low = middle;
    else high = middle;
  }
  let value = (low + high) / 2;
  for (let step = 0; step < 5; step++) {
    const height = Math.exp((-value * value) / 2) / Math.sqrt(2 * Math.PI);
    value += (below - normalBelow_(value)) / height;
  }
  return value;
}

/** The value that Student's t passes, on either side, with a chance `tails`: Newton's steps from below. */
function tQuantile_(tails, freedom) {
  if (!(tails > 0 && tails <= 1 && freedom >= 1)) none_();
  let t = 0;
  for (let step = 0; step < 10000; step++) {
    const next = t + (tTails_(t, freedom) - tails) / (2 * tHeight_(t, freedom));
    if (!(next > t)) break; // lost in rounding, or turned back: the last
    t = next;
  }
  return t;
}

/** The share of Student's t beyond t and -t together: an incomplete beta function. */
function tTails_(t, freedom) {
  if (t === 0) return 1;
  const [far, near, half] = [freedom / (freedom + t * t), (t * t) / (freedom + t * t), freedom / 2];
  const front = Math.exp(half * Math.log(far) + Math.log(near) / 2 - logBeta_(half));
  // The fraction comes to its end soon only on one side of the peak.
  if (far < (half + 1) / (half + 2.5)) return (front / half) * betaFraction_(far, half, 0.5);
  return 1 - 2 * front * betaFraction_(near, 0.5, half);
}

function tHeight_(t, freedom) {
  const log = (-(freedom + 1) / 2) * Math.log1p((t * t) / freedom) - logBeta_(freedom / 2);
  return Math.exp(log) / Math.sqrt(freedom);
}

/** The logarithm of the beta function of `a` and a half: up by its recurrence, then by its series for large `a`. */
function logBeta_(a) {
  let below = 0;
  let at = a;
  for (; at < 40; at += 1) below += Math.log1p(0.5 / at); // B(a, 1/2) = B(a + 1, 1/2) (a + 1/2) / a
  const series = 1 / (4 * at) - 1 / (96 * at ** 3) + 1 / (320 * at ** 5) - 17 / (7168 * at ** 7);
  return below + (Math.log(Math.PI / at) / 2 + series / 2);
}

/** The continued fraction of the incomplete beta function (NIST DLMF 8.17.22), by Lentz's method. */
function betaFraction_(x, a, b) {
  let [value, up, down] = [1, 1, 0];
  for (let step = 1; step < 10000; step++) {
    const m = Math.floor(step / 2);
    const top = step % 2 ? -(a + m) * (a + b + m) : m * (b - m);
    const part = (top * x) / ((a + step) * (a + step - 1));
    up = 1 + part / up;
    down = 1 / (1 + part * down);
    value *= up * down;
    if (Math.abs(up * down - 1) < 1e-16) break;
  }
  return 1 / value;
}
