// THE CANDLE FUNCTIONS IN A WEB SPREADSHEET
// made by candlecalc 0.2.0
//
// How to put them into a sheet of Google Sheets, on a computer. Nothing is installed; the sheet must be one you may edit.
//
// 1  Open this file with a text editor (right click, Open with, Notepad; on a Mac TextEdit). Do not double-click it. Click
//    into the text, press Ctrl+A, then Ctrl+C (on a Mac Command+A, then Command+C): all of it is copied.
// 2  Open your sheet in the browser. In its menu choose Extensions, then Apps Script. A new page opens, the script editor.
//    (No Extensions? The sheet is one you may only view, or an Excel file: File, Save as Google Sheets.)
// 3  Look first: only a few lines that begin with "function myFunction() {"? Click into them, press Ctrl+A, then Ctrl+V
//    (Command+A, Command+V). Other lines, a script of your own? Leave them: press the + beside Files, choose Script, give
//    it a name, and paste over what is in the new file. A wrong paste is undone with Ctrl+Z.
// 4  Press the disk above the text (Save project) and wait until it is grey. Press neither Run nor Deploy; if you are
//    asked for a permission, choose Cancel.
// 5  Go back to the page with your sheet and reload it. Type into an empty cell  =CANDLE_OIL_FOR_WAX(500, 8%)  or, where
//    your sheet writes 0,5 for a half,  =CANDLE_OIL_FOR_WAX(500; 8%)  After some seconds of "Loading..." it shows 40: the
//    grams of oil for 500 g of wax.
// 6  Type =CANDLE_ and a list shows the functions, each with its help; their names stand in functions.md, too. A cell that
//    shows #ERROR! has no answer: point at it to read why, or ask  =CANDLE_WHY("oil_for_wax", 500, 8)  with the
//    function's name in small letters, without CANDLE_, and the values that you gave it.
//
// A copy of the sheet takes the functions along; every other sheet needs steps 1 to 5. For a new version open the file
// with the old text in the script editor and paste over all of it: do not add a second one.
//
// What can go wrong
// - #NAME?: the text was not saved (step 4), the page was not reloaded, the name is misspelt, or the text was pasted into
//   the script editor of another sheet.
// - "Syntax error" when you save: a part of the text is missing, or other lines stand around it. Paste it again, in the
//   file of the candle functions alone.
// - A day is off by one: in the script editor choose Project Settings (the cogwheel) and set the time zone that your
//   sheet has under File, Settings.
// - It is slow: give one formula a whole range. =CANDLE_OIL_FOR_WAX(B2:B20, 8%) fills the cells under it, which must be
//   empty. A row of that range that has no answer stops all of them; the message says which row it is.
//
// The steps are from the program's documentation. The sums were tested outside it and never in it: look at the 40 first.
//
// These functions do sums. Suppliers' data sheets and certificates, local rules and codes, your own burn tests and
// licensed practice decide what may be done. Hot wax burns skin, and wax that overheats catches fire: never leave it,
// never put water on it, keep a lid and a fire blanket within reach.
//
// Not in the script, but in the other ways of candlecalc:
// it counts in exact decimals: issue_costs, lots_left, stock_from_count, stock_from_log, stock_from_lots
// it reads the wording of data sheets: hazard_lines, hazard_of_candle, hazard_of_mixture, label_of_candle,
//   label_of_classes
// its steps have no counterpart in the script: expected_season_profit, net_requirements, season_quantity
// steps of the season workbook's tabs, which a sheet of your own hardly asks for: blend_density, burn_rate_high,
//   burn_rate_low, coin_digits, cooling_constant, cost_of_all, count_difference, evenings_needed, first_wax,
//   fixed_each, fixed_for_season, full_pots, grams_to_declare, heat_to_melt, highest_of_total, highest_on_wax,
//   hours_left_high, hours_left_low, in_unit, last_pot, least_each, least_figures_metric, least_figures_us,
//   load_after_rounding, load_swing, mean_factor, never_under, oil_part, order_cost, ounces_to_declare, overhead_cost,
//   own_minutes, paid_minutes, pieces_for, pots_with_one_fewer, price_at_breaks, season_profit,
//   season_profit_of_records, season_stock, season_stock_of_records, second_wax, short_by, short_under, tax_charged,
//   to_scale_step, weigh_for_pot, weighing_error_allowed, weight_in_pots

const FUNCTIONS_ = {};

// ------------------------------------------------------------
// Vessels: what they hold, by size or by water, and the fill that goes in

/**
 * Volume of a straight round vessel, from inside measures. Gives 0 or more ml. Source 1
 * @param diameter how far the vessel is across inside: 10 to 2000 mm
 * @param height how deep the vessel is inside, up to the brim or the mark: 10 to 2000 mm
 * @param [base] how high the floor is pushed up at its middle; minus where it bulges down: -200 to 200 mm; 0 if left
 *   out
 * @customfunction
 */
function CANDLE_CYLINDER_VOLUME(diameter, height, base) { return answer_("cylinder_volume", arguments); }
FUNCTIONS_.cylinder_volume = {
  takes: { diameter: "mm", height: "mm", base: "mm 2" },
  left_out: { base: 0 },
  asks: ["base < height"],
  answer: (diameter, height, base) => (Math.PI / 4 * diameter ** 2 * height - Math.PI / 6 * base * (0.75 * diameter ** 2 + base ** 2)) / 1000,
  gives: "ml",
};

/**
 * Volume of a round vessel that widens or narrows evenly, from inside diameters. Gives 0 or more ml. Source 1
 * @param top how far it is across inside at the top: 10 to 2000 mm
 * @param bottom how far it is across inside at the bottom: 10 to 2000 mm
 * @param height how deep the vessel is inside, up to the brim or the mark: 10 to 2000 mm
 * @param [base] how high the floor is pushed up at its middle; minus where it bulges down: -200 to 200 mm; 0 if left
 *   out
 * @customfunction
 */
function CANDLE_TAPERED_VOLUME(top, bottom, height, base) { return answer_("tapered_volume", arguments); }
FUNCTIONS_.tapered_volume = {
  takes: { top: "mm", bottom: "mm", height: "mm", base: "mm 2" },
  left_out: { base: 0 },
  asks: ["base < height"],
  answer: (top, bottom, height, base) => (Math.PI / 12 * height * (top ** 2 + top * bottom + bottom ** 2) - Math.PI / 6 * base * (0.75 * bottom ** 2 + base ** 2)) / 1000,
  gives: "ml",
};

/**
 * Volume of a square or oblong vessel with upright sides, from inside measures. Gives 0 or more ml. Source 1
 * @param length length of the vessel inside: 10 to 2000 mm
 * @param width width of the vessel inside: 10 to 2000 mm
 * @param height how deep the vessel is inside, up to the brim or the mark: 10 to 2000 mm
 * @param [base] how high the floor is pushed up at its middle; minus where it bulges down: -200 to 200 mm; 0 if left
 *   out
 * @customfunction
 */
function CANDLE_BOX_VOLUME(length, width, height, base) { return answer_("box_volume", arguments); }
FUNCTIONS_.box_volume = {
  takes: { length: "mm", width: "mm", height: "mm", base: "mm 2" },
  left_out: { base: 0 },
  asks: ["base < height"],
  answer: (length, width, height, base) => (length * width * height - Math.PI / 6 * base * (0.75 * Math.min(length, width) ** 2 + base ** 2)) / 1000,
  gives: "ml",
};

/**
 * Volume of an upright vessel of equal sides: six for a hexagon jar. Gives 0 or more ml. Source 1
 * @param sides how many equal sides the vessel has: whole numbers 3 to 100
 * @param side inside length of one of its sides: 5 to 2000 mm
 * @param height how deep the vessel is inside, up to the brim or the mark: 10 to 2000 mm
 * @param [base] how high the floor is pushed up at its middle; minus where it bulges down: -200 to 200 mm; 0 if left
 *   out
 * @customfunction
 */
function CANDLE_PRISM_VOLUME(sides, side, height, base) { return answer_("prism_volume", arguments); }
FUNCTIONS_.prism_volume = {
  takes: { sides: "number", side: "mm 3", height: "mm", base: "mm 2" },
  left_out: { base: 0 },
  asks: ["base < height"],
  answer: (sides, side, height, base) => (ratio_(sides * side ** 2 * height, 4 * Math.tan(ratio_(Math.PI, sides))) - Math.PI / 6 * base * (0.75 * ratio_(side, Math.tan(ratio_(Math.PI, sides))) ** 2 + base ** 2)) / 1000,
  gives: "ml",
};

/**
 * Volume of a vessel from the water that fills it to the brim, as the scale shows it. Gives 0 or more ml. Source 2
 * @param water the water the vessel holds to the brim, as weighed on a scale in air: 10 or more g
 * @param [temperature] temperature of the water: 0 to 40 C; 20 if left out
 * @customfunction
 */
function CANDLE_VOLUME_FROM_WATER(water, temperature) { return answer_("volume_from_water", arguments); }
FUNCTIONS_.volume_from_water = {
  takes: { water: "g", temperature: "C" },
  left_out: { temperature: 20 },
  answer: (water, temperature) => ratio_(water * (1 - 0.0012 / 8), 0.99997495 * (1 - ratio_((temperature - 3.983035) ** 2 * (temperature + 301.797), 522528.9 * (temperature + 69.34881))) - 0.0012),
  gives: "ml",
};

/**
 * Weight of wax and oil that fills a vessel up to its headspace. Gives 0 or more g. Source 3
 * @param volume what the vessel holds to the brim: 10 to 1000000 ml
 * @param headspace share of the vessel left empty above the wax: 0 to 0.9 of the brimful volume
 * @param density weight of a millilitre of the wax, at the temperature it is filled: 0.5 to 1.5 g/ml
 * @customfunction
 */
function CANDLE_FILL_WEIGHT(volume, headspace, density) { return answer_("fill_weight", arguments); }
FUNCTIONS_.fill_weight = {
  takes: { volume: "ml 2", headspace: "of the brimful volume", density: "g/ml" },
  answer: (volume, headspace, density) => volume * (1 - headspace) * density,
  gives: "g 2",
};

/**
 * Weight of wax and oil to the same mark in another wax, from a fill that was weighed. Gives 0 or more g. Source 4
 * @param fill wax and oil together as they were weighed in the vessel: 0 or more g
 * @param measured weight of a millilitre of the wax that the fill was weighed with: 0.5 to 1.5 g/ml
 * @param density weight of a millilitre of the other wax, at the same temperature: 0.5 to 1.5 g/ml
 * @customfunction
 */
function CANDLE_FILL_IN_ANOTHER_WAX(fill, measured, density) { return answer_("fill_in_another_wax", arguments); }
FUNCTIONS_.fill_in_another_wax = {
  takes: { fill: "g 2", measured: "g/ml", density: "g/ml" },
  answer: (fill, measured, density) => ratio_(fill * density, measured),
  gives: "g 2",
};

/**
 * Vessels that a weight of wax fills, once its oil is in. Gives whole numbers 0 to 1000000. Source 5
 * @param wax wax in the melt, before any oil: 0 or more g
 * @param fill wax and oil together, as poured into a vessel or a batch: 0 or more g
 * @param [load] fragrance load: oil as a share of wax weight (8% is 0.08): 0 to 0.5 of wax weight; 0 if left out
 * @customfunction
 */
function CANDLE_VESSELS_FILLED(wax, fill, load) { return answer_("vessels_filled", arguments); }
FUNCTIONS_.vessels_filled = {
  takes: { wax: "g 2", fill: "g 2", load: "of wax weight" },
  left_out: { load: 0 },
  asks: ["fill > 0"],
  answer: (wax, fill, load) => Math.floor(round_(ratio_(wax * (1 + load), fill), 6)),
  gives: "number 2",
};

/**
 * Weight of wax and oil to a given depth in a straight round vessel. Gives 0 or more g. Source 1
 * @param diameter how far the vessel is across inside: 10 to 2000 mm
 * @param depth how deep the wax is to stand above the floor: 5 to 500 mm
 * @param density weight of a millilitre of the wax, at the temperature it is filled: 0.5 to 1.5 g/ml
 * @param [base] how high the floor is pushed up at its middle; minus where it bulges down: -200 to 200 mm; 0 if left
 *   out
 * @customfunction
 */
function CANDLE_FILL_TO_DEPTH(diameter, depth, density, base) { return answer_("fill_to_depth", arguments); }
FUNCTIONS_.fill_to_depth = {
  takes: { diameter: "mm", depth: "mm 4", density: "g/ml", base: "mm 2" },
  left_out: { base: 0 },
  asks: ["base < depth"],
  answer: (diameter, depth, density, base) => (Math.PI / 4 * diameter ** 2 * depth - Math.PI / 6 * base * (0.75 * diameter ** 2 + base ** 2)) / 1000 * density,
  gives: "g 2",
};

/**
 * Weight of a volume of anything that pours, by its density: oil by the fluid ounce, melted wax by the cup. Gives 0 or
 * more g. Source 4
 * @param volume how much of it, by volume: 0 to 1000000 ml
 * @param density weight of a millilitre of it, from its data sheet (relative density): 0.5 to 2 g/ml
 * @customfunction
 */
function CANDLE_VOLUME_TO_WEIGHT(volume, density) { return answer_("volume_to_weight", arguments); }
FUNCTIONS_.volume_to_weight = {
  takes: { volume: "ml 3", density: "g/ml 2" },
  answer: (volume, density) => volume * density,
  gives: "g 2",
};

/**
 * Whole pieces, such as wax melts, from one melt: wax and oil divided by what one mould cavity holds. Gives whole
 * numbers 0 to 1000000. Source 5
 * @param wax wax in the melt, before any oil: 0 or more g
 * @param load fragrance load: oil as a share of wax weight (8% is 0.08): 0 to 0.5 of wax weight
 * @param cavity what one cavity of the mould holds: more than 0, at most 10000 ml
 * @param density weight of a millilitre of the wax, at the temperature it is filled: 0.5 to 1.5 g/ml
 * @customfunction
 */
function CANDLE_PIECES_FROM_MOULD(wax, load, cavity, density) { return answer_("pieces_from_mould", arguments); }
FUNCTIONS_.pieces_from_mould = {
  takes: { wax: "g 2", load: "of wax weight", cavity: "ml 4", density: "g/ml" },
  answer: (wax, load, cavity, density) => Math.floor(round_(ratio_(wax * (1 + load), cavity * density), 6)),
  gives: "number 2",
};

// ------------------------------------------------------------
// Fragrance: oil and wax by load, blends of oils, and the highest load that is allowed

/**
 * Fragrance oil to weigh out for a weight of wax. Gives 0 or more g. Source 5
 * @param wax wax in the melt, before any oil: 0 or more g
 * @param load fragrance load: oil as a share of wax weight (8% is 0.08): 0 to 0.5 of wax weight
 * @customfunction
 */
function CANDLE_OIL_FOR_WAX(wax, load) { return answer_("oil_for_wax", arguments); }
FUNCTIONS_.oil_for_wax = {
  takes: { wax: "g 2", load: "of wax weight" },
  answer: (wax, load) => wax * load,
  gives: "g 2",
};

/**
 * Wax that a weight of oil is enough for, to use a bottle up. Gives 0 or more g. Source 5
 * @param oil fragrance oil to weigh out: 0 or more g
 * @param load fragrance load: oil as a share of wax weight (8% is 0.08): 0 to 0.5 of wax weight
 * @customfunction
 */
function CANDLE_WAX_FOR_OIL(oil, load) { return answer_("wax_for_oil", arguments); }
FUNCTIONS_.wax_for_oil = {
  takes: { oil: "g 2", load: "of wax weight" },
  asks: ["load > 0"],
  answer: (oil, load) => ratio_(oil, load),
  gives: "g 2",
};

/**
 * Fragrance oil in a finished fill of wax and oil together. Gives 0 or more g. Source 6
 * @param fill wax and oil together, as poured into a vessel or a batch: 0 or more g
 * @param load fragrance load: oil as a share of wax weight (8% is 0.08): 0 to 0.5 of wax weight
 * @customfunction
 */
function CANDLE_OIL_FOR_FILL(fill, load) { return answer_("oil_for_fill", arguments); }
FUNCTIONS_.oil_for_fill = {
  takes: { fill: "g 2", load: "of wax weight" },
  answer: (fill, load) => ratio_(fill * load, 1 + load),
  gives: "g 2",
};

/**
 * Wax in a finished fill of wax and oil together. Gives 0 or more g. Source 6
 * @param fill wax and oil together, as poured into a vessel or a batch: 0 or more g
 * @param load fragrance load: oil as a share of wax weight (8% is 0.08): 0 to 0.5 of wax weight
 * @customfunction
 */
function CANDLE_WAX_FOR_FILL(fill, load) { return answer_("wax_for_fill", arguments); }
FUNCTIONS_.wax_for_fill = {
  takes: { fill: "g 2", load: "of wax weight" },
  answer: (fill, load) => ratio_(fill, 1 + load),
  gives: "g 2",
};

/**
 * Share of the finished candle that a load on wax comes to. Gives 0 to 0.333333 of total weight. Source 6
 * @param load fragrance load: oil as a share of wax weight (8% is 0.08): 0 to 0.5 of wax weight
 * @customfunction
 */
function CANDLE_SHARE_OF_TOTAL(load) { return answer_("share_of_total", arguments); }
FUNCTIONS_.share_of_total = {
  takes: { load: "of wax weight" },
  answer: (load) => ratio_(load, 1 + load),
  gives: "of total weight",
};

/**
 * Load on wax that a share of the finished candle comes to. Gives 0 to 0.5 of wax weight. Source 6
 * @param share fragrance oil as a share of wax and oil together: 0 to 0.333333 of total weight
 * @customfunction
 */
function CANDLE_LOAD_FROM_SHARE(share) { return answer_("load_from_share", arguments); }
FUNCTIONS_.load_from_share = {
  takes: { share: "of total weight" },
  answer: (share) => ratio_(share, 1 - share),
  gives: "of wax weight",
};

/**
 * Load that a pot of wax really got, from the two weighings. Gives 0 to 0.5 of wax weight. Source 5
 * @param wax wax in the melt, before any oil: 0 or more g
 * @param oil fragrance oil to weigh out: 0 or more g
 * @customfunction
 */
function CANDLE_LOAD_MEASURED(wax, oil) { return answer_("load_measured", arguments); }
FUNCTIONS_.load_measured = {
  takes: { wax: "g 2", oil: "g 2" },
  asks: ["wax > 0"],
  answer: (wax, oil) => ratio_(oil, wax),
  gives: "of wax weight",
};

/**
 * Load that a pot gets on a scale of this step: the load it shows, and the range of the true one. Gives a row of wax,
 * oil, load, lowest, highest. Source 7
 * @param wax wax in the melt, before any oil: 0 or more g
 * @param load fragrance load: oil as a share of wax weight (8% is 0.08): 0 to 0.5 of wax weight
 * @param step the smallest step the scale shows: more than 0, at most 100 g
 * @customfunction
 */
function CANDLE_LOAD_ON_SCALE(wax, load, step) { return answer_("load_on_scale", arguments); }
FUNCTIONS_.load_on_scale = {
  takes: { wax: "g 2", load: "of wax weight", step: "g 3" },
  asks: ["wax > step"],
  steps: fragrance_load_on_scale_,
  gives: "text",
  fields: { wax: "g 2", oil: "g 2", load: "of wax weight", lowest: "of wax weight 2", highest: "of wax weight 2" },
};

/**
 * Weight of each oil in a blend, from shares that must add up to 1. Gives list, each 0 or more g. Source 5
 * @param oil fragrance oil to weigh out: 0 or more g
 * @param {Array} shares share of each oil in the blend; together 1: list, each 0 to 1 of the blend
 * @customfunction
 */
function CANDLE_OIL_PARTS(oil, shares) { return answer_("oil_parts", arguments); }
FUNCTIONS_.oil_parts = {
  takes: { oil: "g 2", shares: "list of of the blend" },
  asks: ["ROUND(SUM(shares),6) = 1"],
  steps: fragrance_oil_parts_,
  gives: "g 2",
  several: true,
};

/**
 * Load on wax at which a certified limit in the finished candle is reached, counted up to 0.5. Gives 0 to 0.5 of wax
 * weight. Source 8
 * @param limit highest share of this oil in the finished candle by its certificate; 1 where it sets none: more than 0,
 *   at most 1 of the finished candle
 * @customfunction
 */
function CANDLE_LOAD_AT_LIMIT(limit) { return answer_("load_at_limit", arguments); }
FUNCTIONS_.load_at_limit = {
  takes: { limit: "of the finished candle" },
  answer: (limit) => ratio_(Math.min(limit, 1 / 3), 1 - Math.min(limit, 1 / 3)),
  gives: "of wax weight 3",
};

/**
 * Highest load on wax: the lowest of those stated for the wax, for the oil and in the oil's certificate. Gives 0 to
 * 0.5 of wax weight. Source 5
 * @param wax the highest load that the wax's supplier states: 0 to 0.5 of the stated basis
 * @param oil the highest load that the oil's supplier states: 0 to 0.5 of the stated basis
 * @param limit highest share of this oil in the finished candle by its certificate; 1 where it sets none: more than 0,
 *   at most 1 of the finished candle
 * @param {string} [wax_basis] what the wax supplier's highest load is a share of: "of wax" or "of total"; of wax if
 *   left out
 * @param {string} [oil_basis] what the oil supplier's highest load is a share of: "of wax" or "of total"; of wax if
 *   left out
 * @customfunction
 */
function CANDLE_HIGHEST_LOAD(wax, oil, limit, wax_basis, oil_basis) { return answer_("highest_load", arguments); }
FUNCTIONS_.highest_load = {
  takes: { wax: "of the stated basis", oil: "of the stated basis", limit: "of the finished candle", wax_basis: "choice", oil_basis: "choice" },
  left_out: { wax_basis: "of wax", oil_basis: "of wax" },
  answer: (wax, oil, limit, wax_basis, oil_basis) => Math.min(ratio_(wax, 1 - wax * (wax_basis === "of total")), ratio_(oil, 1 - oil * (oil_basis === "of total")), ratio_(Math.min(limit, 1 / 3), 1 - Math.min(limit, 1 / 3)), 0.5),
  gives: "of wax weight 3",
};

/**
 * Which limit decides the highest load: the wax's supplier, the oil's supplier or the certificate. Gives text. Source
 * 5
 * @param wax the highest load that the wax's supplier states: 0 to 0.5 of the stated basis
 * @param oil the highest load that the oil's supplier states: 0 to 0.5 of the stated basis
 * @param limit highest share of this oil in the finished candle by its certificate; 1 where it sets none: more than 0,
 *   at most 1 of the finished candle
 * @param {string} [wax_basis] what the wax supplier's highest load is a share of: "of wax" or "of total"; of wax if
 *   left out
 * @param {string} [oil_basis] what the oil supplier's highest load is a share of: "of wax" or "of total"; of wax if
 *   left out
 * @customfunction
 */
function CANDLE_HIGHEST_LOAD_DECIDED_BY(wax, oil, limit, wax_basis, oil_basis) { return answer_("highest_load_decided_by", arguments); }
FUNCTIONS_.highest_load_decided_by = {
  takes: { wax: "of the stated basis", oil: "of the stated basis", limit: "of the finished candle", wax_basis: "choice", oil_basis: "choice" },
  left_out: { wax_basis: "of wax", oil_basis: "of wax" },
  steps: fragrance_highest_load_decided_by_,
  gives: "text",
};

/**
 * Highest share of a blend of oils in the finished candle, by each oil's certified limit. Gives more than 0, at most 1
 * of the finished candle. Source 8
 * @param {Array} shares share of each oil in the blend; together 1: list, each 0 to 1 of the blend
 * @param {Array} limits highest share of each oil in the finished candle by its certificate; 1 where it sets none:
 *   list, each more than 0, at most 1 of the finished candle
 * @customfunction
 */
function CANDLE_LIMIT_OF_BLEND(shares, limits) { return answer_("limit_of_blend", arguments); }
FUNCTIONS_.limit_of_blend = {
  takes: { shares: "list of of the blend", limits: "list of of the finished candle" },
  asks: ["ROUND(SUM(shares),6) = 1"],
  answer: (shares, limits) => Math.min(1, ratio_(1, sum_(each_([shares, limits], (each_shares, each_limits) => ratio_(each_shares, each_limits))))),
  gives: "of the finished candle",
};

/**
 * Oil to add to wax that is already scented, to bring it up to a higher load. Gives 0 or more g. Source 9
 * @param scented wax and oil together, as poured into a vessel or a batch: 0 or more g
 * @param load load that it has now: oil as a share of wax weight (8% is 0.08): 0 to 0.5 of wax weight
 * @param wanted load wanted: oil as a share of wax weight (8% is 0.08): 0 to 0.5 of wax weight
 * @customfunction
 */
function CANDLE_OIL_TO_RAISE_LOAD(scented, load, wanted) { return answer_("oil_to_raise_load", arguments); }
FUNCTIONS_.oil_to_raise_load = {
  takes: { scented: "g 2", load: "of wax weight", wanted: "of wax weight" },
  asks: ["wanted >= load"],
  answer: (scented, load, wanted) => ratio_(scented * (wanted - load), 1 + load),
  gives: "g 2",
};

/**
 * Plain wax to add to wax that is already scented, to bring it down to a lower load. Gives 0 or more g. Source 9
 * @param scented wax and oil together, as poured into a vessel or a batch: 0 or more g
 * @param load load that it has now: oil as a share of wax weight (8% is 0.08): 0 to 0.5 of wax weight
 * @param wanted load wanted: oil as a share of wax weight (8% is 0.08): 0 to 0.5 of wax weight
 * @customfunction
 */
function CANDLE_WAX_TO_LOWER_LOAD(scented, load, wanted) { return answer_("wax_to_lower_load", arguments); }
FUNCTIONS_.wax_to_lower_load = {
  takes: { scented: "g 2", load: "of wax weight", wanted: "of wax weight" },
  asks: ["wanted > 0", "wanted <= load"],
  answer: (scented, load, wanted) => ratio_(scented, 1 + load) * (ratio_(load, wanted) - 1),
  gives: "g 2",
};

// ------------------------------------------------------------
// Wax: blends, dye, and how it draws together as it sets

/**
 * Dye to weigh out for a weight of wax. Gives 0 or more g. Source 5
 * @param wax wax in the melt, before any oil: 0 or more g
 * @param share dye as a share of wax weight: 0 to 0.1 of wax weight
 * @customfunction
 */
function CANDLE_DYE_FOR_WAX(wax, share) { return answer_("dye_for_wax", arguments); }
FUNCTIONS_.dye_for_wax = {
  takes: { wax: "g 2", share: "of wax weight 4" },
  answer: (wax, share) => wax * share,
  gives: "g 2",
};

/**
 * Pieces of dye (blocks, chips) for a melt, by how much wax one piece colours, to the nearest half or quarter. Gives 0
 * or more. Source 5
 * @param wax wax in the melt, before any oil: 0 or more g
 * @param coloured wax that one piece of dye colours as wanted, by its supplier or your own tests: more than 0 g
 * @param [cuts] parts that a piece is cut into: 1 for whole ones, 2 for halves, 4 for quarters: whole numbers 1 to 16;
 *   1 if left out
 * @customfunction
 */
function CANDLE_DYE_PIECES(wax, coloured, cuts) { return answer_("dye_pieces", arguments); }
FUNCTIONS_.dye_pieces = {
  takes: { wax: "g 2", coloured: "g 4", cuts: "number 3" },
  left_out: { cuts: 1 },
  answer: (wax, coloured, cuts) => ratio_(round_(round_(ratio_(wax, coloured) * cuts, 6), 0), cuts),
  gives: "number 4",
};

/**
 * Every wax and additive of a blend, from the shares; the shares must add up to 1. Gives list, each 0 or more g.
 * Source 5
 * @param wax wax in the melt, before any oil: 0 or more g
 * @param {Array} shares share of each wax or additive in the blend; together 1: list, each 0 to 1 of the blend
 * @customfunction
 */
function CANDLE_WAX_PARTS(wax, shares) { return answer_("wax_parts", arguments); }
FUNCTIONS_.wax_parts = {
  takes: { wax: "g 2", shares: "list of of the blend" },
  asks: ["ROUND(SUM(shares),6) = 1"],
  steps: wax_wax_parts_,
  gives: "g 2",
  several: true,
};

/**
 * Density of several waxes and additives mixed by weight; the shares must add up to 1. Gives 0.5 to 1.5 g/ml. Source 9
 * @param {Array} shares share of each wax or additive in the blend; together 1: list, each 0 to 1 of the blend
 * @param {Array} densities density of each, all at one temperature: list, each 0.5 to 1.5 g/ml
 * @customfunction
 */
function CANDLE_MIXED_DENSITY(shares, densities) { return answer_("mixed_density", arguments); }
FUNCTIONS_.mixed_density = {
  takes: { shares: "list of of the blend", densities: "list of g/ml" },
  asks: ["ROUND(SUM(shares),6) = 1"],
  answer: (shares, densities) => ratio_(1, sum_(each_([shares, densities], (each_shares, each_densities) => ratio_(each_shares, each_densities)))),
  gives: "g/ml",
};

/**
 * Specific heat of several waxes and additives mixed by weight, all set or all melted. Gives more than 0, at most 10
 * kJ/(kg C). Source 10
 * @param {Array} shares share of each wax or additive in the blend; together 1: list, each 0 to 1 of the blend
 * @param {Array} heats specific heat of each, all set or all melted: list, each more than 0, at most 10 kJ/(kg C)
 * @customfunction
 */
function CANDLE_MIXED_SPECIFIC_HEAT(shares, heats) { return answer_("mixed_specific_heat", arguments); }
FUNCTIONS_.mixed_specific_heat = {
  takes: { shares: "list of of the blend", heats: "list of kJ/(kg C)" },
  asks: ["ROUND(SUM(shares),6) = 1"],
  answer: (shares, heats) => sum_(each_([shares, heats], (each_shares, each_heats) => each_shares * each_heats)),
  gives: "kJ/(kg C)",
};

/**
 * Heat that melts a kilogram of a blend, from each wax's own. Gives 0 to 1000 kJ/kg. Source 10
 * @param {Array} shares share of each wax or additive in the blend; together 1: list, each 0 to 1 of the blend
 * @param {Array} heats latent heat of each: list, each 0 to 1000 kJ/kg
 * @customfunction
 */
function CANDLE_MIXED_LATENT_HEAT(shares, heats) { return answer_("mixed_latent_heat", arguments); }
FUNCTIONS_.mixed_latent_heat = {
  takes: { shares: "list of of the blend", heats: "list of kJ/kg" },
  asks: ["ROUND(SUM(shares),6) = 1"],
  answer: (shares, heats) => sum_(each_([shares, heats], (each_shares, each_heats) => each_shares * each_heats)),
  gives: "kJ/kg",
};

/**
 * Density of melted wax at another temperature than the one it was measured at. Gives 0.5 to 1.5 g/ml. Source 11
 * @param density weight of a millilitre of the wax, at the temperature it is filled: 0.5 to 1.5 g/ml
 * @param measured temperature at which its density was measured: -50 to 160 C
 * @param temperature temperature at which its density is wanted: -50 to 160 C
 * @param [expansion] how much a melted wax swells for each degree C, as a share of its volume: 0 to 0.002 per C;
 *   0.00085 if left out
 * @customfunction
 */
function CANDLE_LIQUID_DENSITY(density, measured, temperature, expansion) { return answer_("liquid_density", arguments); }
FUNCTIONS_.liquid_density = {
  takes: { density: "g/ml", measured: "C 2", temperature: "C 2", expansion: "per C" },
  left_out: { expansion: 0.00085 },
  answer: (density, measured, temperature, expansion) => ratio_(density, 1 + expansion * (temperature - measured)),
  gives: "g/ml",
};

/**
 * How much a wax shrinks from the pour until it has set and cooled, from two densities. Gives 0 to 0.5 of the volume
 * poured. Source 12
 * @param hot density of the melted wax as it is poured: 0.5 to 1.5 g/ml
 * @param cold density of the wax once it has set and cooled: 0.5 to 1.5 g/ml
 * @customfunction
 */
function CANDLE_SETTING_SHRINKAGE(hot, cold) { return answer_("setting_shrinkage", arguments); }
FUNCTIONS_.setting_shrinkage = {
  takes: { hot: "g/ml", cold: "g/ml" },
  asks: ["hot <= cold"],
  answer: (hot, cold) => 1 - ratio_(hot, cold),
  gives: "of the volume poured",
};

/**
 * Scented wax to keep back for a second pour that brings a vessel up to its first level again. Gives 0 or more g.
 * Source 12
 * @param fill wax and oil together, as poured into a vessel or a batch: 0 or more g
 * @param [shrinkage] how much the wax draws together as it sets: 0 to 0.5 of the volume poured; 0.1 if left out
 * @customfunction
 */
function CANDLE_TOP_UP_POUR(fill, shrinkage) { return answer_("top_up_pour", arguments); }
FUNCTIONS_.top_up_pour = {
  takes: { fill: "g 2", shrinkage: "of the volume poured" },
  left_out: { shrinkage: 0.1 },
  answer: (fill, shrinkage) => fill * shrinkage,
  gives: "g 2",
};

// ------------------------------------------------------------
// Heat: heat and time to melt, oil going in, and what to mind

/**
 * Heat to warm something that does not melt on the way: a pot, a water bath, wax already melted. Gives 0 or more kJ.
 * Source 13
 * @param weight weight of what is heated: a wax, a pot, the water of a bath: 0 or more g
 * @param start temperature before it is heated: -50 to 160 C
 * @param end temperature it is brought to: -50 to 160 C
 * @param specific_heat heat that warms a kilogram of it by one degree C: more than 0, at most 10 kJ/(kg C)
 * @customfunction
 */
function CANDLE_HEAT_TO_WARM(weight, start, end, specific_heat) { return answer_("heat_to_warm", arguments); }
FUNCTIONS_.heat_to_warm = {
  takes: { weight: "g 2", start: "C 2", end: "C 2", specific_heat: "kJ/(kg C)" },
  asks: ["end >= start"],
  answer: (weight, start, end, specific_heat) => weight / 1000 * specific_heat * (end - start),
  gives: "kJ",
};

/**
 * Heat to warm set wax, melt it and bring it to a temperature. Gives 0 or more kJ. Source 13
 * @param wax wax in the melt, before any oil: 0 or more g
 * @param start temperature before it is heated: -50 to 160 C
 * @param end temperature it is brought to: -50 to 160 C
 * @param melting temperature at which the last of the wax is melted: the upper end of its melting range: -50 to 160 C
 * @param [latent_heat] heat that melts a kilogram of it once it is warm enough: 0 to 1000 kJ/kg; 190 if left out
 * @param [solid] heat that warms a kilogram of set wax by one degree C: more than 0, at most 10 kJ/(kg C); 2.1 if left
 *   out
 * @param [liquid] heat that warms a kilogram of melted wax by one degree C: more than 0, at most 10 kJ/(kg C); 2.2 if
 *   left out
 * @customfunction
 */
function CANDLE_HEAT_FOR_WAX(wax, start, end, melting, latent_heat, solid, liquid) { return answer_("heat_for_wax", arguments); }
FUNCTIONS_.heat_for_wax = {
  takes: { wax: "g 2", start: "C 2", end: "C 2", melting: "C 2", latent_heat: "kJ/kg", solid: "kJ/(kg C)", liquid: "kJ/(kg C)" },
  left_out: { latent_heat: 190, solid: 2.1, liquid: 2.2 },
  asks: ["start <= melting", "end >= melting"],
  answer: (wax, start, end, melting, latent_heat, solid, liquid) => wax / 1000 * (solid * (melting - start) + latent_heat + liquid * (end - melting)),
  gives: "kJ",
};

/**
 * Minutes that a heater takes to put an amount of heat into the pot. Gives 0 or more min. Source 14
 * @param heat heat that has to get into it: 0 or more kJ
 * @param power power of the heater, as its plate states it: 10 to 100000 W
 * @param efficiency share of the power that gets into the wax: more than 0, at most 1 of the heater's power
 * @customfunction
 */
function CANDLE_MELT_TIME(heat, power, efficiency) { return answer_("melt_time", arguments); }
FUNCTIONS_.melt_time = {
  takes: { heat: "kJ", power: "W", efficiency: "of the heater's power" },
  answer: (heat, power, efficiency) => ratio_(heat * 1000, power * efficiency) / 60,
  gives: "min",
};

/**
 * Share of a heater's power that got into the wax, from one melt with a clock. Gives more than 0, at most 1 of the
 * heater's power. Source 14
 * @param heat heat that has to get into it: 0 or more kJ
 * @param power power of the heater, as its plate states it: 10 to 100000 W
 * @param minutes how long the heater was on: more than 0, at most 1000000 min
 * @customfunction
 */
function CANDLE_HEATER_EFFICIENCY(heat, power, minutes) { return answer_("heater_efficiency", arguments); }
FUNCTIONS_.heater_efficiency = {
  takes: { heat: "kJ", power: "W", minutes: "min 2" },
  answer: (heat, power, minutes) => ratio_(heat * 1000, power * minutes * 60),
  gives: "of the heater's power",
};

/**
 * Temperature once oil has gone into melted wax, before the pot loses any heat. Gives -50 to 160 C. Source 10
 * @param wax wax in the melt, before any oil: 0 or more g
 * @param oil fragrance oil to weigh out: 0 or more g
 * @param hot temperature of the melted wax before the oil goes in: -50 to 160 C
 * @param room temperature of the oil before it goes in: -50 to 100 C
 * @param melting temperature at which the last of the wax is melted: the upper end of its melting range: -50 to 160 C
 * @param [liquid] heat that warms a kilogram of melted wax by one degree C: more than 0, at most 10 kJ/(kg C); 2.2 if
 *   left out
 * @param [oil_heat] heat that warms a kilogram of oil by one degree C: more than 0, at most 10 kJ/(kg C); 2.2 if left
 *   out
 * @customfunction
 */
function CANDLE_TEMPERATURE_AFTER_OIL(wax, oil, hot, room, melting, liquid, oil_heat) { return answer_("temperature_after_oil", arguments); }
FUNCTIONS_.temperature_after_oil = {
  takes: { wax: "g 2", oil: "g 2", hot: "C 2", room: "C 3", melting: "C 2", liquid: "kJ/(kg C)", oil_heat: "kJ/(kg C)" },
  left_out: { liquid: 2.2, oil_heat: 2.2 },
  asks: ["wax > 0", "ROUND(wax*liquid*(hot-melting)-oil*oil_heat*(melting-room),6) >= 0"],
  answer: (wax, oil, hot, room, melting, liquid, oil_heat) => ratio_(wax * liquid * hot + oil * oil_heat * room, wax * liquid + oil * oil_heat),
  gives: "C 2",
};

/**
 * Temperature to bring the wax to, so that it is as warm as wanted once the oil is in. Gives -50 to 160 C. Source 10
 * @param wax wax in the melt, before any oil: 0 or more g
 * @param oil fragrance oil to weigh out: 0 or more g
 * @param wanted temperature of wax and oil together: -50 to 160 C
 * @param room temperature of the oil before it goes in: -50 to 100 C
 * @param melting temperature at which the last of the wax is melted: the upper end of its melting range: -50 to 160 C
 * @param [liquid] heat that warms a kilogram of melted wax by one degree C: more than 0, at most 10 kJ/(kg C); 2.2 if
 *   left out
 * @param [oil_heat] heat that warms a kilogram of oil by one degree C: more than 0, at most 10 kJ/(kg C); 2.2 if left
 *   out
 * @customfunction
 */
function CANDLE_TEMPERATURE_BEFORE_OIL(wax, oil, wanted, room, melting, liquid, oil_heat) { return answer_("temperature_before_oil", arguments); }
FUNCTIONS_.temperature_before_oil = {
  takes: { wax: "g 2", oil: "g 2", wanted: "C 2", room: "C 3", melting: "C 2", liquid: "kJ/(kg C)", oil_heat: "kJ/(kg C)" },
  left_out: { liquid: 2.2, oil_heat: 2.2 },
  asks: ["wax > 0", "wanted >= melting"],
  answer: (wax, oil, wanted, room, melting, liquid, oil_heat) => wanted + ratio_(oil * oil_heat, wax * liquid) * (wanted - room),
  gives: "C 2",
};

/**
 * What to mind at the temperature of a melt, a line each. Gives list, each text. Source 15
 * @param temperature a temperature: -50 to 160 C
 * @param [ceiling] highest temperature that the supplier states for the wax; blank where none is known: -50 to 160 C
 *   or blank; blank if left out
 * @param [wax_flash] flash point of the wax by its data sheet; blank where none is known: -50 to 350 C or blank; blank
 *   if left out
 * @param [oil_flash] flash point of the neat oil by its safety data sheet; blank where none is known: -50 to 180 C or
 *   blank; blank if left out
 * @param [near] how near a flash point is warned of: 0 to 100 C difference; 20 if left out
 * @customfunction
 */
function CANDLE_MELT_CAUTIONS(temperature, ceiling, wax_flash, oil_flash, near) { return answer_("melt_cautions", arguments); }
FUNCTIONS_.melt_cautions = {
  takes: { temperature: "C 2", ceiling: "C 4", wax_flash: "C 5", oil_flash: "C 6", near: "C difference" },
  left_out: { ceiling: null, wax_flash: null, oil_flash: null, near: 20 },
  steps: heat_melt_cautions_,
  gives: "text",
  several: true,
};

// ------------------------------------------------------------
// Cooling of a stirred pot, between two readings and above the melting range

/**
 * Minutes after the first reading at which a stirred pot came down to a temperature between the two. Gives 0 or more
 * min. Source 16
 * @param first first reading of the stirred pot: 0 to 160 C
 * @param second second reading of the stirred pot: 0 to 160 C
 * @param minutes minutes from the first reading to the second: more than 0, at most 100000 min
 * @param room temperature of the room: -20 to 45 C
 * @param melting temperature at which the last of the wax is melted: the upper end of its melting range: -50 to 160 C
 * @param temperature a temperature between the two readings: 0 to 160 C
 * @customfunction
 */
function CANDLE_COOLING_TIME(first, second, minutes, room, melting, temperature) { return answer_("cooling_time", arguments); }
FUNCTIONS_.cooling_time = {
  takes: { first: "C 7", second: "C 7", minutes: "min 3", room: "C 8", melting: "C 2", temperature: "C 7" },
  asks: ["first > second", "second > room", "second >= melting", "temperature <= first", "temperature >= second"],
  answer: (first, second, minutes, room, melting, temperature) => ratio_(minutes * ln_(ratio_(first - room, temperature - room)), ln_(ratio_(first - room, second - room))),
  gives: "min",
};

/**
 * Temperature of a stirred pot at a time between two readings. Gives 0 to 160 C. Source 16
 * @param first first reading of the stirred pot: 0 to 160 C
 * @param second second reading of the stirred pot: 0 to 160 C
 * @param minutes minutes from the first reading to the second: more than 0, at most 100000 min
 * @param room temperature of the room: -20 to 45 C
 * @param melting temperature at which the last of the wax is melted: the upper end of its melting range: -50 to 160 C
 * @param after minutes after the first reading: 0 to 100000 min
 * @customfunction
 */
function CANDLE_COOLING_TEMPERATURE(first, second, minutes, room, melting, after) { return answer_("cooling_temperature", arguments); }
FUNCTIONS_.cooling_temperature = {
  takes: { first: "C 7", second: "C 7", minutes: "min 3", room: "C 8", melting: "C 2", after: "min 4" },
  asks: ["first > second", "second > room", "second >= melting", "after <= minutes"],
  answer: (first, second, minutes, room, melting, after) => room + (first - room) * power_(ratio_(second - room, first - room), ratio_(after, minutes)),
  gives: "C 7",
};

/**
 * When a stirred pot will have cooled to a temperature still to come, in minutes after the first reading. Gives a row
 * of expected, soonest, latest, note. Source 17
 * @param first first reading of the stirred pot: 0 to 160 C
 * @param second second reading of the stirred pot: 0 to 160 C
 * @param minutes minutes from the first reading to the second: more than 0, at most 100000 min
 * @param room temperature of the room: -20 to 45 C
 * @param melting temperature at which the last of the wax is melted: the upper end of its melting range: -50 to 160 C
 * @param temperature a cooler temperature, still to come: 0 to 160 C
 * @param [reading] how far each reading may be off; 0.5 for a thermometer that shows whole degrees: 0 to 10 C
 *   difference; 0.5 if left out
 * @customfunction
 */
function CANDLE_COOLING_FORECAST(first, second, minutes, room, melting, temperature, reading) { return answer_("cooling_forecast", arguments); }
FUNCTIONS_.cooling_forecast = {
  takes: { first: "C 7", second: "C 7", minutes: "min 3", room: "C 8", melting: "C 2", temperature: "C 7", reading: "C difference 2" },
  left_out: { reading: 0.5 },
  asks: ["first > second", "second > room", "second >= melting", "temperature <= second", "temperature >= melting", "temperature > room"],
  steps: cooling_cooling_forecast_,
  gives: "text",
  fields: { expected: "min", soonest: "min", latest: "min 5", note: "text" },
};

// ------------------------------------------------------------
// Burning: how fast, from the maker's own weighings, with the interval that they deserve

/**
 * Rate of burning from one pair of weighings; it comes without an interval. Gives more than 0, at most 1000000 g/h.
 * Source 3
 * @param before what the candle weighed before the burn, jar and all: 0 or more g
 * @param after what it weighed after the burn, jar and all: 0 or more g
 * @param hours hours of burning: more than 0, at most 1000000 h
 * @customfunction
 */
function CANDLE_RATE_OF_ONE_BURN(before, after, hours) { return answer_("rate_of_one_burn", arguments); }
FUNCTIONS_.rate_of_one_burn = {
  takes: { before: "g 2", after: "g 2", hours: "h" },
  asks: ["after < before"],
  answer: (before, after, hours) => ratio_(before - after, hours),
  gives: "g/h",
};

/**
 * Rate of burning from a log of weighings: the slope of the straight line through them. Gives more than 0, at most
 * 1000000 g/h. Source 18
 * @param {Array} hours hours burnt up to each weighing, all burns of this candle counted together: list, each 0 to
 *   10000 h
 * @param {Array} weights what the candle weighed then, jar and all: list, each 0 to 100000 g
 * @customfunction
 */
function CANDLE_BURN_RATE(hours, weights) { return answer_("burn_rate", arguments); }
FUNCTIONS_.burn_rate = {
  takes: { hours: "list of h 2", weights: "list of g 5" },
  asks: ["MAX(hours) > MIN(hours)", "SUMPRODUCT(hours,weights)*COUNT(hours) < SUM(hours)*SUM(weights)*0.999999999999"],
  answer: (hours, weights) => -slope_(weights, hours),
  gives: "g/h",
};

/**
 * Rate of burning from a log of weighings, with its interval and a word on the log. Gives a row of rate, low, high,
 * note. Source 18
 * @param {Array} hours hours burnt up to each weighing, all burns of this candle counted together: list, each 0 to
 *   10000 h
 * @param {Array} weights what the candle weighed then, jar and all: list, each 0 to 100000 g
 * @param [confidence] how often such an interval is to be right: 0.5 to 0.999 of the time; 0.95 if left out
 * @customfunction
 */
function CANDLE_BURN_RATE_BETWEEN(hours, weights, confidence) { return answer_("burn_rate_between", arguments); }
FUNCTIONS_.burn_rate_between = {
  takes: { hours: "list of h 2", weights: "list of g 5", confidence: "of the time" },
  left_out: { confidence: 0.95 },
  asks: ["MAX(hours) > MIN(hours)", "SUMPRODUCT(hours,weights)*COUNT(hours) < SUM(hours)*SUM(weights)*0.999999999999"],
  steps: burn_burn_rate_between_,
  gives: "text",
  fields: { rate: "g/h", low: "g/h 2", high: "g/h 2", note: "text" },
};

/**
 * How fast the next candle of a recipe may burn, from the rates of those tested. Gives more than 0, at most 1000000
 * g/h. Source 19
 * @param {Array} rates rate of burning of each candle of one recipe: list, each more than 0, at most 1000000 g/h
 * @param [confidence] how often such an interval is to be right: 0.5 to 0.999 of the time; 0.95 if left out
 * @customfunction
 */
function CANDLE_FASTEST_CANDLE(rates, confidence) { return answer_("fastest_candle", arguments); }
FUNCTIONS_.fastest_candle = {
  takes: { rates: "list of g/h", confidence: "of the time" },
  left_out: { confidence: 0.95 },
  asks: ["COUNT(rates) >= 2"],
  answer: (rates, confidence) => mean_(rates) + tQuantile_(1 - confidence, count_(rates) - 1) * deviation_(rates) * root_(1 + ratio_(1, count_(rates))),
  gives: "g/h",
};

/**
 * The mean rate of burning of several candles of one recipe, its interval, and that of the next candle. Gives a row of
 * mean, low, high, next_low, next_high, note. Source 19
 * @param {Array} rates rate of burning of each candle of one recipe: list, each more than 0, at most 1000000 g/h
 * @param [confidence] how often such an interval is to be right: 0.5 to 0.999 of the time; 0.95 if left out
 * @customfunction
 */
function CANDLE_RATES_OF_CANDLES(rates, confidence) { return answer_("rates_of_candles", arguments); }
FUNCTIONS_.rates_of_candles = {
  takes: { rates: "list of g/h", confidence: "of the time" },
  left_out: { confidence: 0.95 },
  asks: ["COUNT(rates) >= 2"],
  steps: burn_rates_of_candles_,
  gives: "text",
  fields: { mean: "g/h", low: "g/h 3", high: "g/h 3", next_low: "g/h 3", next_high: "g/h 3", note: "text" },
};

// ------------------------------------------------------------
// Burning time: how long a fill burns, how many hours are left, and what an hour costs and warms

/**
 * Wax that stays in a round vessel when burning has to stop, by the depth that is left. Gives 0 or more g. Source 20
 * @param diameter an inside length of the vessel: 10 to 2000 mm
 * @param density weight of a millilitre of the wax, at the temperature it is filled: 0.5 to 1.5 g/ml
 * @param [depth] depth of wax at which burning stops: 0 to 500 mm; 13 if left out
 * @customfunction
 */
function CANDLE_WAX_THAT_STAYS(diameter, density, depth) { return answer_("wax_that_stays", arguments); }
FUNCTIONS_.wax_that_stays = {
  takes: { diameter: "mm", density: "g/ml", depth: "mm 5" },
  left_out: { depth: 13 },
  answer: (diameter, density, depth) => Math.PI / 4 * diameter ** 2 * depth / 1000 * density,
  gives: "g 2",
};

/**
 * Hours that a fill burns at a rate; `stays` is the wax left when burning has to stop. Gives 0 to 1000000 h. Source 3
 * @param fill wax and oil together, as poured into a vessel or a batch: 0 or more g
 * @param rate wax burnt in an hour: 1 to 500 g/h
 * @param [stays] wax that stays in the vessel when burning stops: 0 or more g; 0 if left out
 * @customfunction
 */
function CANDLE_BURN_TIME(fill, rate, stays) { return answer_("burn_time", arguments); }
FUNCTIONS_.burn_time = {
  takes: { fill: "g 2", rate: "g/h 4", stays: "g 2" },
  left_out: { stays: 0 },
  asks: ["stays <= fill"],
  answer: (fill, rate, stays) => ratio_(fill - stays, rate),
  gives: "h 3",
};

/**
 * Hours of burning for a label: at the fastest rate, rounded down to whole hours. Gives whole numbers 0 to 1000000 h.
 * Source 3
 * @param fill wax and oil together, as poured into a vessel or a batch: 0 or more g
 * @param fastest the fastest it may burn: the high end of the rate's interval: 1 to 500 g/h
 * @param [stays] wax that stays in the vessel when burning stops: 0 or more g; 0 if left out
 * @customfunction
 */
function CANDLE_LABEL_HOURS(fill, fastest, stays) { return answer_("label_hours", arguments); }
FUNCTIONS_.label_hours = {
  takes: { fill: "g 2", fastest: "g/h 4", stays: "g 2" },
  left_out: { stays: 0 },
  asks: ["stays <= fill"],
  answer: (fill, fastest, stays) => Math.floor(round_(ratio_(fill - stays, fastest), 6)),
  gives: "h 4",
};

/**
 * How long a candle burns, from a log of weighings: hours, their interval, and whole hours for a label. Gives a row of
 * hours, low, high, label, note. Source 18
 * @param {Array} hours hours burnt up to each weighing, all burns of this candle counted together: list, each 0 to
 *   10000 h
 * @param {Array} weights what the candle weighed then, jar and all: list, each 0 to 100000 g
 * @param fill wax and oil together, as poured into a vessel or a batch: 0 or more g
 * @param [stays] wax that stays in the vessel when burning stops: 0 or more g; 0 if left out
 * @param [confidence] how often such an interval is to be right: 0.5 to 0.999 of the time; 0.95 if left out
 * @customfunction
 */
function CANDLE_BURN_TIME_FROM_LOG(hours, weights, fill, stays, confidence) { return answer_("burn_time_from_log", arguments); }
FUNCTIONS_.burn_time_from_log = {
  takes: { hours: "list of h 2", weights: "list of g 5", fill: "g 2", stays: "g 2", confidence: "of the time" },
  left_out: { stays: 0, confidence: 0.95 },
  asks: ["MAX(hours) > MIN(hours)", "SUMPRODUCT(hours,weights)*COUNT(hours) < SUM(hours)*SUM(weights)*0.999999999999", "stays <= fill"],
  steps: burn_time_burn_time_from_log_,
  gives: "text",
  fields: { hours: "h 5", low: "h 6", high: "h 6", label: "h 7", note: "text" },
};

/**
 * Hours left after the last weighing until the candle is down to its stopping weight. Gives 0 to 1000000 h. Source 18
 * @param {Array} hours hours burnt up to each weighing, all burns of this candle counted together: list, each 0 to
 *   10000 h
 * @param {Array} weights what the candle weighed then, jar and all: list, each 0 to 100000 g
 * @param end what it weighs when burning has to stop: the jar, the wick and the wax that stays: 0 or more g
 * @customfunction
 */
function CANDLE_HOURS_LEFT(hours, weights, end) { return answer_("hours_left", arguments); }
FUNCTIONS_.hours_left = {
  takes: { hours: "list of h 2", weights: "list of g 5", end: "g 2" },
  asks: ["MAX(hours) > MIN(hours)", "SUMPRODUCT(hours,weights)*COUNT(hours) < SUM(hours)*SUM(weights)*0.999999999999"],
  answer: (hours, weights, end) => mean_(hours) - max_(hours) + ratio_(mean_(weights) - end, -slope_(weights, hours)),
  gives: "h 3",
};

/**
 * Hours left after the last weighing, with an interval that allows for extending the line. Gives a row of left, low,
 * high, note. Source 21
 * @param {Array} hours hours burnt up to each weighing, all burns of this candle counted together: list, each 0 to
 *   10000 h
 * @param {Array} weights what the candle weighed then, jar and all: list, each 0 to 100000 g
 * @param end what it weighs when burning has to stop: the jar, the wick and the wax that stays: 0 or more g
 * @param [confidence] how often such an interval is to be right: 0.5 to 0.999 of the time; 0.95 if left out
 * @customfunction
 */
function CANDLE_HOURS_LEFT_BETWEEN(hours, weights, end, confidence) { return answer_("hours_left_between", arguments); }
FUNCTIONS_.hours_left_between = {
  takes: { hours: "list of h 2", weights: "list of g 5", end: "g 2", confidence: "of the time" },
  left_out: { confidence: 0.95 },
  asks: ["MAX(hours) > MIN(hours)", "SUMPRODUCT(hours,weights)*COUNT(hours) < SUM(hours)*SUM(weights)*0.999999999999"],
  steps: burn_time_hours_left_between_,
  gives: "text",
  fields: { left: "h 3", low: "h 8", high: "h 8", note: "text" },
};

/**
 * What an hour of burning costs. Gives 0 or more money per h. Source 3
 * @param cost what the candle costs: 0 or more
 * @param hours hours of burning: more than 0, at most 1000000 h
 * @customfunction
 */
function CANDLE_COST_PER_BURN_HOUR(cost, hours) { return answer_("cost_per_burn_hour", arguments); }
FUNCTIONS_.cost_per_burn_hour = {
  takes: { cost: "money", hours: "h" },
  answer: (cost, hours) => ratio_(cost, hours),
  gives: "money per h",
};

/**
 * Heat that a candle gives to the room: some 12 W for each gram of paraffin an hour. Gives 0 or more W. Source 22
 * @param rate wax burnt in an hour: more than 0, at most 1000000 g/h
 * @param [heat] heat that a kilogram of it gives as it burns (lower heating value): more than 0, at most 60 MJ/kg;
 *   43.5 if left out
 * @customfunction
 */
function CANDLE_BURN_HEAT(rate, heat) { return answer_("burn_heat", arguments); }
FUNCTIONS_.burn_heat = {
  takes: { rate: "g/h", heat: "MJ/kg" },
  left_out: { heat: 43.5 },
  answer: (rate, heat) => rate * heat / 3.6,
  gives: "W 2",
};

// ------------------------------------------------------------
// Melt pool and flame: how the pool grows to the wall, and how high the flame stands at a rate of burning

/**
 * How much wider the melt pool gets in an hour, from readings of one burn on its way to the wall. Gives more than 0
 * mm/h. Source 18
 * @param {Array} hours hours since lighting, at each reading: list, each 0 to 1000 h
 * @param {Array} widths how wide the melt pool was then, up to the wall: list, each 0 to 1000 mm
 * @customfunction
 */
function CANDLE_POOL_GROWTH(hours, widths) { return answer_("pool_growth", arguments); }
FUNCTIONS_.pool_growth = {
  takes: { hours: "list of h 9", widths: "list of mm 6" },
  asks: ["MAX(hours) > MIN(hours) (2)", "SUMPRODUCT(hours,widths)*COUNT(hours)*0.999999999999 > SUM(hours)*SUM(widths)"],
  answer: (hours, widths) => slope_(widths, hours),
  gives: "mm/h",
};

/**
 * Hours from lighting until the melt pool reaches the wall, on the straight line through the readings. Gives 0 or more
 * h. Source 18
 * @param {Array} hours hours since lighting, at each reading: list, each 0 to 1000 h
 * @param {Array} widths how wide the melt pool was then, up to the wall: list, each 0 to 1000 mm
 * @param diameter how far the vessel is across inside: 10 to 2000 mm
 * @customfunction
 */
function CANDLE_POOL_TIME(hours, widths, diameter) { return answer_("pool_time", arguments); }
FUNCTIONS_.pool_time = {
  takes: { hours: "list of h 9", widths: "list of mm 6", diameter: "mm" },
  asks: ["MAX(hours) > MIN(hours) (2)", "SUMPRODUCT(hours,widths)*COUNT(hours)*0.999999999999 > SUM(hours)*SUM(widths)", "MAX(widths) <= diameter"],
  answer: (hours, widths, diameter) => mean_(hours) + ratio_(diameter - mean_(widths), slope_(widths, hours)),
  gives: "h 5",
};

/**
 * Hours that makers usually expect the melt pool to take to the wall: one for each inch across. Gives 0 or more h.
 * Source 5
 * @param diameter how far the vessel is across inside: 10 to 2000 mm
 * @customfunction
 */
function CANDLE_USUAL_POOL_TIME(diameter) { return answer_("usual_pool_time", arguments); }
FUNCTIONS_.usual_pool_time = {
  takes: { diameter: "mm" },
  answer: (diameter) => diameter / 25.4,
  gives: "h 5",
};

/**
 * How the melt pool grows and when it reaches the wall, with the usual expectation beside it. Gives a row of growth,
 * reaches, usual, note. Source 23
 * @param {Array} hours hours since lighting, at each reading: list, each 0 to 1000 h
 * @param {Array} widths how wide the melt pool was then, up to the wall: list, each 0 to 1000 mm
 * @param diameter how far the vessel is across inside: 10 to 2000 mm
 * @customfunction
 */
function CANDLE_POOL_FORECAST(hours, widths, diameter) { return answer_("pool_forecast", arguments); }
FUNCTIONS_.pool_forecast = {
  takes: { hours: "list of h 9", widths: "list of mm 6", diameter: "mm" },
  asks: ["MAX(hours) > MIN(hours) (2)", "SUMPRODUCT(hours,widths)*COUNT(hours)*0.999999999999 > SUM(hours)*SUM(widths)", "MAX(widths) <= diameter"],
  steps: pool_pool_forecast_,
  gives: "text",
  fields: { growth: "mm/h", reaches: "h 5", usual: "h 5", note: "text" },
};

/**
 * Height of the flame to expect at a rate of burning, from the maker's own readings. Gives 0 or more mm. Source 24
 * @param rate wax burnt in an hour: more than 0, at most 1000000 g/h
 * @param {Array} rates rate of burning of each candle of one recipe: list, each more than 0, at most 1000000 g/h
 * @param {Array} heights how high the flame was at each of these rates: list, each 4 to 300 mm
 * @customfunction
 */
function CANDLE_FLAME_HEIGHT(rate, rates, heights) { return answer_("flame_height", arguments); }
FUNCTIONS_.flame_height = {
  takes: { rate: "g/h", rates: "list of g/h", heights: "list of mm 7" },
  asks: ["COUNT(rates) >= 2 (2)"],
  answer: (rate, rates, heights) => ratio_(rate * sum_(each_([rates, heights], (each_rates, each_heights) => each_rates * each_heights)), sum_(each_([rates], (each_rates) => each_rates * each_rates))),
  gives: "mm 8",
};

/**
 * How tall the flame may get at a rate of burning, as far as the maker's own readings can tell. Gives 0 or more mm.
 * Source 24
 * @param rate wax burnt in an hour: more than 0, at most 1000000 g/h
 * @param {Array} rates rate of burning of each candle of one recipe: list, each more than 0, at most 1000000 g/h
 * @param {Array} heights how high the flame was at each of these rates: list, each 4 to 300 mm
 * @param [confidence] how often such an interval is to be right: 0.5 to 0.999 of the time; 0.95 if left out
 * @customfunction
 */
function CANDLE_FLAME_HEIGHT_HIGH(rate, rates, heights, confidence) { return answer_("flame_height_high", arguments); }
FUNCTIONS_.flame_height_high = {
  takes: { rate: "g/h", rates: "list of g/h", heights: "list of mm 7", confidence: "of the time" },
  left_out: { confidence: 0.95 },
  asks: ["COUNT(rates) >= 2 (2)"],
  steps: pool_flame_height_high_,
  gives: "mm 8",
};

// ------------------------------------------------------------
// Wick tests: what one burn comes to, what a recipe comes to, and which wick to burn next

/**
 * What one test burn comes to, against stop conditions and the maker's own targets, with every reason. Gives a row of
 * verdict, reasons. Source 25
 * @param [flame] the tallest flame seen in the test; blank if not looked at: 4 to 500 mm or blank; blank if left out
 * @param [other_burning] secondary ignition: the longest time that anything but the wick burnt; 0 for never; blank if
 *   not looked at: 0 or more s or blank; blank if left out
 * @param {string} [vessel] how the vessel came through; blank if not looked at: "whole" or "cracked" or "broken" or
 *   "leaking" or blank; blank if left out
 * @param [afterglow] the longest glow or smoke after putting out; blank if not looked at: 0 or more s or blank; blank
 *   if left out
 * @param {string} [lit_again] whether it lit again by itself after putting out; blank if not looked at: "no" or "yes"
 *   or blank; blank if left out
 * @param {Array} [targets] what the maker's own targets are for, such as burn rate or hours to the wall: list, each
 *   text or blank; blank if left out
 * @param {Array} [measured] what the test showed for each target; blank if not measured: list, each any amount or
 *   blank; blank if left out
 * @param {Array} [lowest] the lowest that meets each target; blank for no lowest: list, each any amount or blank;
 *   blank if left out
 * @param {Array} [highest] the highest that meets each target; blank for no highest: list, each any amount or blank;
 *   blank if left out
 * @param [tallest] tallest flame that is not a stop: 75 mm or 3 in; tea light 30 mm: 10 to 76.2 mm; 75 if left out
 * @param {Array} [seen] what was seen, in the words of wick_signs; blank for nothing: list, each text or blank; blank
 *   if left out
 * @customfunction
 */
function CANDLE_BURN_VERDICT(flame, other_burning, vessel, afterglow, lit_again, targets, measured, lowest, highest, tallest, seen) { return answer_("burn_verdict", arguments); }
FUNCTIONS_.burn_verdict = {
  takes: { flame: "mm 9", other_burning: "s", vessel: "choice 2", afterglow: "s", lit_again: "choice 3", targets: "list of text 2", measured: "list of number 5", lowest: "list of number 5", highest: "list of number 5", tallest: "mm 10", seen: "list of text 2" },
  left_out: { flame: null, other_burning: null, vessel: null, afterglow: null, lit_again: null, targets: null, measured: null, lowest: null, highest: null, tallest: 75, seen: null },
  steps: wick_burn_verdict_,
  gives: "text",
  fields: { verdict: "choice 4", reasons: "text" },
};

/**
 * What the test burns of one recipe come to together: at least three pieces judged, none of them a stop. Gives a row
 * of verdict, reasons. Source 26
 * @param {Array} verdicts the verdict on each piece burnt of one recipe: list, each "stop: do not sell or burn" or
 *   "not judged" or "misses the maker's targets" or "meets the maker's targets"
 * @customfunction
 */
function CANDLE_RECIPE_VERDICT(verdicts) { return answer_("recipe_verdict", arguments); }
FUNCTIONS_.recipe_verdict = {
  takes: { verdicts: "list of choice 4" },
  steps: wick_recipe_verdict_,
  gives: "text",
  fields: { verdict: "choice 4", reasons: "text" },
};

/**
 * Which of the maker's own wicks to test next in a recipe, by the maker's own tests of that recipe. Gives a row of
 * wick, reasons. Source 26
 * @param {string} wax the wax of the recipe: text
 * @param load fragrance load: oil as a share of wax weight (8% is 0.08): 0 to 0.5 of wax weight
 * @param {string} vessel the vessel of the recipe: text
 * @param {string} kind the kind of wick to stay within: text
 * @param {Array} wicks each wick the maker has or has tested, by the maker's name for it: list, each text
 * @param {Array} kinds the kind of each wick: wicks of a kind differ in size alone: list, each text
 * @param {Array} sizes size of each wick within its kind, in any order of size the maker keeps: list, each 0 or more
 * @param {Array} tested_waxes the wax it was tested in; blank for a wick not tested yet: list, each text or blank
 * @param {Array} tested_loads the load it was tested at; blank for a wick not tested yet: list, each 0 to 0.5 of wax
 *   weight or blank
 * @param {Array} tested_vessels the vessel it was tested in; blank for a wick not tested yet: list, each text or blank
 * @param {Array} findings how it burnt against the maker's own targets; blank if not tested: list, each "too cool" or
 *   "within targets" or "too hot" or blank
 * @customfunction
 */
function CANDLE_NEXT_WICK(wax, load, vessel, kind, wicks, kinds, sizes, tested_waxes, tested_loads, tested_vessels, findings) { return answer_("next_wick", arguments); }
FUNCTIONS_.next_wick = {
  takes: { wax: "text", load: "of wax weight", vessel: "text", kind: "text", wicks: "list of text", kinds: "list of text", sizes: "list of number 4", tested_waxes: "list of text 2", tested_loads: "list of of wax weight 5", tested_vessels: "list of text 2", findings: "list of choice 5" },
  steps: wick_next_wick_,
  gives: "text",
  fields: { wick: "text 2", reasons: "text" },
};

// ------------------------------------------------------------
// Signs on a burn: what was seen, and which way the next test goes; what stops a burn comes first

/**
 * What was seen on a burn, and which way to go next: stop conditions first, then smaller, then larger. Gives list,
 * each a row of sign, direction, what_to_do. Source 27
 * @param {Array} seen what was seen, such as soot, mushrooming, tunneling or drowning: list, each text
 * @customfunction
 */
function CANDLE_WICK_SIGNS(seen) { return answer_("wick_signs", arguments); }
FUNCTIONS_.wick_signs = {
  takes: { seen: "list of text" },
  steps: burn_signs_wick_signs_,
  gives: "text",
  several: true,
  fields: { sign: "text", direction: "choice 6", what_to_do: "text" },
};

// ------------------------------------------------------------
// Batch: weighing out to the scale's step, pots, pieces, and what is on hand

/**
 * What to weigh out for a batch, to the scale's step. Gives 0 or more g. Source 5
 * @param each what goes into one candle, in any unit, the same for all: 0 or more g
 * @param count how many candles to make: whole numbers 0 to 1000000
 * @param step the smallest step the scale shows, in any unit, the same for all: 0 or more g
 * @customfunction
 */
function CANDLE_WEIGH_OUT(each, count, step) { return answer_("weigh_out", arguments); }
FUNCTIONS_.weigh_out = {
  takes: { each: "g 2", count: "number 2", step: "g 2" },
  asks: ["step > 0"],
  answer: (each, count, step) => round_(round_(ratio_(each * count, step), 6), 0) * step,
  gives: "g 2",
};

/**
 * What each pot holds where a melt is shared out evenly, so that every pot can be stirred and weighed alike. Gives 0
 * or more g. Source 5
 * @param melt a weight, in any unit; the answer is in the same unit: 0 or more g
 * @param pots how many pots: whole numbers 0 to 1000000
 * @customfunction
 */
function CANDLE_EQUAL_POT(melt, pots) { return answer_("equal_pot", arguments); }
FUNCTIONS_.equal_pot = {
  takes: { melt: "g 2", pots: "number 2" },
  asks: ["pots > 0"],
  answer: (melt, pots) => ratio_(melt, pots),
  gives: "g 2",
};

/**
 * Pots to melt for a batch where no candle is filled from two of them. Gives whole numbers 0 to 1000000. Source 5
 * @param count how many candles to make: whole numbers 0 to 1000000
 * @param each what goes into one candle, in any unit, the same for all: 0 or more g
 * @param pot the most that a pot holds, in any unit, the same for all: 0 or more g
 * @customfunction
 */
function CANDLE_POTS_FOR_CANDLES(count, each, pot) { return answer_("pots_for_candles", arguments); }
FUNCTIONS_.pots_for_candles = {
  takes: { count: "number 2", each: "g 2", pot: "g 2" },
  asks: ["each > 0", "pot >= each", "pot <= 100000*each"],
  answer: (count, each, pot) => roundUp_(round_(ratio_(count, Math.floor(round_(ratio_(pot, each), 6))), 6), 0),
  gives: "number 2",
};

/**
 * Candles that a pot is for, where a batch is shared evenly over pots in whole candles. Gives whole numbers 0 to
 * 1000000. Source 5
 * @param count how many candles to make: whole numbers 0 to 1000000
 * @param pots how many pots: whole numbers 0 to 1000000
 * @customfunction
 */
function CANDLE_CANDLES_A_POT(count, pots) { return answer_("candles_a_pot", arguments); }
FUNCTIONS_.candles_a_pot = {
  takes: { count: "number 2", pots: "number 2" },
  asks: ["pots > 0"],
  answer: (count, pots) => roundUp_(round_(ratio_(count, pots), 6), 0),
  gives: "number 2",
};

/**
 * How many candles you can make from what is on hand, at one weight for each. Gives whole numbers 0 to 1000000. Source
 * 5
 * @param available what is on hand, in any unit, the same for all: 0 or more g
 * @param each what goes into one candle, in any unit, the same for all: 0 or more g
 * @customfunction
 */
function CANDLE_ENOUGH_FOR(available, each) { return answer_("enough_for", arguments); }
FUNCTIONS_.enough_for = {
  takes: { available: "g 2", each: "g 2" },
  asks: ["each > 0"],
  answer: (available, each) => Math.floor(round_(ratio_(available, each), 6)),
  gives: "number 2",
};

// ------------------------------------------------------------
// Cost: what a unit of material, a batch and a candle cost

/**
 * Cost of one unit out of a pack, with its share of shipping and the tax you cannot claim back. Gives 0 or more money
 * per unit. Source 28
 * @param price price of the pack: 0 or more
 * @param size what the pack holds: a weight, or how many pieces: more than 0
 * @param [shipping] what shipping the pack cost, its part of the order's: 0 or more; 0 if left out
 * @param [tax] tax on the pack that you cannot claim back: 0 or more; 0 if left out
 * @customfunction
 */
function CANDLE_UNIT_COST(price, size, shipping, tax) { return answer_("unit_cost", arguments); }
FUNCTIONS_.unit_cost = {
  takes: { price: "money", size: "number 6", shipping: "money", tax: "money" },
  left_out: { shipping: 0, tax: 0 },
  answer: (price, size, shipping, tax) => ratio_(price + shipping + tax, size),
  gives: "money per unit",
};

/**
 * Cost of an amount of material at its unit cost. Gives 0 or more. Source 29
 * @param amount how much of the material, in the unit it is priced by: 0 or more
 * @param cost cost of one unit of the material: a piece, or a unit of weight: 0 or more money per unit
 * @customfunction
 */
function CANDLE_MATERIAL_COST(amount, cost) { return answer_("material_cost", arguments); }
FUNCTIONS_.material_cost = {
  takes: { amount: "number 4", cost: "money per unit" },
  answer: (amount, cost) => amount * cost,
  gives: "money",
};

/**
 * Cost of several parts: how much of each, at its unit cost. Gives 0 or more. Source 29
 * @param {Array} amounts how much of each part, in the unit its cost is per: list, each 0 or more
 * @param {Array} costs cost of one unit of each part: list, each 0 or more money per unit
 * @customfunction
 */
function CANDLE_PARTS_COST(amounts, costs) { return answer_("parts_cost", arguments); }
FUNCTIONS_.parts_cost = {
  takes: { amounts: "list of number 4", costs: "list of money per unit" },
  answer: (amounts, costs) => sum_(each_([amounts, costs], (each_amounts, each_costs) => each_amounts * each_costs)),
  gives: "money",
};

/**
 * Split a charge such as shipping over the lines of an order, to the cent. Gives list, each any amount. Source 30
 * @param charge the charge to split, such as shipping; minus for a credit: any amount
 * @param {Array} amounts each line's value, weight or quantity: list, each 0 or more
 * @param {string} [sharing] how the charge is shared: in proportion to the amounts, or evenly: "in proportion" or
 *   "evenly"; in proportion if left out
 * @param [digits] decimals of the currency's smallest coin: whole numbers 0 to 4; 2 if left out
 * @customfunction
 */
function CANDLE_SPLIT_CHARGE(charge, amounts, sharing, digits) { return answer_("split_charge", arguments); }
FUNCTIONS_.split_charge = {
  takes: { charge: "money 2", amounts: "list of number 4", sharing: "choice 7", digits: "number 7" },
  left_out: { sharing: "in proportion", digits: 2 },
  steps: cost_split_charge_,
  gives: "money 2",
  several: true,
};

/**
 * What to weigh out so that a wanted amount is left after waste. Gives 0 or more g. Source 5
 * @param amount what is wanted after waste, in any unit; the answer is in the same unit: 0 or more g
 * @param waste share lost in pots, jugs, wicks dipped and spills: 0 to 0.5 of what is weighed out
 * @customfunction
 */
function CANDLE_BEFORE_WASTE(amount, waste) { return answer_("before_waste", arguments); }
FUNCTIONS_.before_waste = {
  takes: { amount: "g 2", waste: "of what is weighed out" },
  answer: (amount, waste) => ratio_(amount, 1 - waste),
  gives: "g 2",
};

/**
 * Yield of a batch: the share that came out good enough to sell. Gives 0 to 1 of what was made. Source 5
 * @param good how many came out good: whole numbers 0 to 1000000
 * @param made how many were made: whole numbers 0 to 1000000
 * @customfunction
 */
function CANDLE_YIELD_OF(good, made) { return answer_("yield_of", arguments); }
FUNCTIONS_.yield_of = {
  takes: { good: "number 2", made: "number 2" },
  asks: ["good <= made", "made > 0"],
  answer: (good, made) => ratio_(good, made),
  gives: "of what was made",
};

/**
 * How many to make so that enough come out good: the number wanted over the yield, rounded up. Gives whole numbers 0
 * to 1000000. Source 5
 * @param good how many good ones are wanted: whole numbers 0 to 1000000
 * @param share share that comes out good enough to sell: more than 0, at most 1 of what is made
 * @customfunction
 */
function CANDLE_MAKE_FOR_GOOD(good, share) { return answer_("make_for_good", arguments); }
FUNCTIONS_.make_for_good = {
  takes: { good: "number 2", share: "of what is made" },
  answer: (good, share) => roundUp_(round_(ratio_(good, share), 6), 0),
  gives: "number 2",
};

/**
 * Working minutes a candle, with its share of the time to set up and clean. Gives 0 to 1000000 min. Source 5
 * @param each working time for one candle: 0 to 1000000 min
 * @param setup working time to set up and clean, once a batch: 0 to 1000000 min
 * @param batch how many candles are made together: whole numbers 1 to 1000000
 * @customfunction
 */
function CANDLE_MINUTES_EACH(each, setup, batch) { return answer_("minutes_each", arguments); }
FUNCTIONS_.minutes_each = {
  takes: { each: "min 6", setup: "min 6", batch: "number 8" },
  answer: (each, setup, batch) => each + ratio_(setup, batch),
  gives: "min 6",
};

/**
 * Cost of working time at an hourly rate: paid help or the maker's own. Gives 0 or more. Source 29
 * @param minutes working time: 0 to 1000000 min
 * @param rate money for an hour of work: 0 or more money per h
 * @param [people] how many people work at it: 0 to 1000; 1 if left out
 * @customfunction
 */
function CANDLE_LABOUR_COST(minutes, rate, people) { return answer_("labour_cost", arguments); }
FUNCTIONS_.labour_cost = {
  takes: { minutes: "min 6", rate: "money per h", people: "number 9" },
  left_out: { people: 1 },
  answer: (minutes, rate, people) => minutes / 60 * people * rate,
  gives: "money",
};

/**
 * Overhead for each hour of work, from a budget for the season and the hours it is spread over. Gives 0 or more money
 * per h. Source 31
 * @param overhead budget for overhead over the time: 0 or more
 * @param activity hours of work over the same time: more than 0, at most 1000000 h
 * @customfunction
 */
function CANDLE_OVERHEAD_RATE(overhead, activity) { return answer_("overhead_rate", arguments); }
FUNCTIONS_.overhead_rate = {
  takes: { overhead: "money", activity: "h" },
  answer: (overhead, activity) => ratio_(overhead, activity),
  gives: "money per h",
};

/**
 * Making cost of a batch or a candle: materials, paid labour, production overhead. Gives 0 or more. Source 29
 * @param materials what the materials cost, waste with them: 0 or more
 * @param labour what paid help costs; nothing for your own time: 0 or more
 * @param overhead its part of production overhead: 0 or more
 * @customfunction
 */
function CANDLE_MAKING_COST(materials, labour, overhead) { return answer_("making_cost", arguments); }
FUNCTIONS_.making_cost = {
  takes: { materials: "money", labour: "money", overhead: "money" },
  answer: (materials, labour, overhead) => materials + labour + overhead,
  gives: "money",
};

/**
 * Full cost of a batch or a candle: making cost, the maker's own time, costs of running. Gives 0 or more. Source 5
 * @param making making cost: materials, paid help, production overhead: 0 or more
 * @param own_time your own time at your hourly rate: 0 or more
 * @param running its part of the costs of running: insurance, website, phone: 0 or more
 * @customfunction
 */
function CANDLE_FULL_COST(making, own_time, running) { return answer_("full_cost", arguments); }
FUNCTIONS_.full_cost = {
  takes: { making: "money", own_time: "money", running: "money" },
  answer: (making, own_time, running) => making + own_time + running,
  gives: "money",
};

/**
 * Cost of one candle out of a batch. Gives 0 or more. Source 3
 * @param cost what the whole batch costs: 0 or more
 * @param batch how many candles are made together: whole numbers 1 to 1000000
 * @customfunction
 */
function CANDLE_COST_EACH(cost, batch) { return answer_("cost_each", arguments); }
FUNCTIONS_.cost_each = {
  takes: { cost: "money", batch: "number 8" },
  answer: (cost, batch) => ratio_(cost, batch),
  gives: "money",
};

/**
 * What testing a recipe adds to each candle that is made of it. Gives 0 or more. Source 3
 * @param tests how many test candles the recipe takes: whole numbers 0 to 10000
 * @param cost what one test candle costs: materials, and the time to make and burn it: 0 or more
 * @param count how many candles share that cost: whole numbers 1 to 1000000
 * @customfunction
 */
function CANDLE_TESTING_COST_EACH(tests, cost, count) { return answer_("testing_cost_each", arguments); }
FUNCTIONS_.testing_cost_each = {
  takes: { tests: "number 10", cost: "money", count: "number 8" },
  answer: (tests, cost, count) => ratio_(tests * cost, count),
  gives: "money",
};

/**
 * Cost per candle at another batch size, its set-up divided over the new one. Gives 0 or more. Source 3
 * @param cost what the candle costs in the usual batch: 0 or more
 * @param setup what setting up once costs: 0 or more
 * @param usual how many candles are usually made together: whole numbers 1 to 1000000
 * @param batch how many candles are made together: whole numbers 1 to 1000000
 * @customfunction
 */
function CANDLE_COST_AT_BATCH(cost, setup, usual, batch) { return answer_("cost_at_batch", arguments); }
FUNCTIONS_.cost_at_batch = {
  takes: { cost: "money", setup: "money", usual: "number 8", batch: "number 8" },
  answer: (cost, setup, usual, batch) => cost + ratio_(setup, batch) - ratio_(setup, usual),
  gives: "money",
};

/**
 * A cost after the price of the materials in it rises (or falls, with a minus) by a share. Gives 0 or more. Source 3
 * @param cost what it costs today: 0 or more
 * @param materials what the materials in that cost: 0 or more
 * @param rise how far prices rise; minus for a fall: -0.9 to 2 of today's cost
 * @customfunction
 */
function CANDLE_COST_WITH_RISE(cost, materials, rise) { return answer_("cost_with_rise", arguments); }
FUNCTIONS_.cost_with_rise = {
  takes: { cost: "money", materials: "money", rise: "of today's cost" },
  answer: (cost, materials, rise) => cost + materials * rise,
  gives: "money",
};

// ------------------------------------------------------------
// Price: from cost to a price in each place, and what is left of it

/**
 * Margin on the price that a markup on cost comes to: 100 % markup is 50 % margin. Gives 0 to 0.99 of the price.
 * Source 32
 * @param markup what is added to the cost, as a share of the cost: 0 to 10 of cost
 * @customfunction
 */
function CANDLE_MARGIN_FROM_MARKUP(markup) { return answer_("margin_from_markup", arguments); }
FUNCTIONS_.margin_from_markup = {
  takes: { markup: "of cost" },
  answer: (markup) => ratio_(markup, 1 + markup),
  gives: "of the price",
};

/**
 * Markup on cost that a margin on the price comes to. Gives 0 to 1000 of cost. Source 32
 * @param margin profit as a share of the price before tax: 0 to 0.99 of the price
 * @customfunction
 */
function CANDLE_MARKUP_FROM_MARGIN(margin) { return answer_("markup_from_margin", arguments); }
FUNCTIONS_.markup_from_margin = {
  takes: { margin: "of the price" },
  answer: (margin) => ratio_(margin, 1 - margin),
  gives: "of cost 2",
};

/**
 * Price before tax from a markup on cost. Gives 0 or more. Source 32
 * @param cost what the candle costs: 0 or more
 * @param markup what is added to the cost, as a share of the cost: 0 to 10 of cost
 * @customfunction
 */
function CANDLE_PRICE_FROM_MARKUP(cost, markup) { return answer_("price_from_markup", arguments); }
FUNCTIONS_.price_from_markup = {
  takes: { cost: "money", markup: "of cost" },
  answer: (cost, markup) => cost * (1 + markup),
  gives: "money",
};

/**
 * Price before tax that leaves a wanted margin after the place has taken its fees. Gives 0 or more. Source 3
 * @param cost what the candle costs: 0 or more
 * @param margin profit as a share of the price before tax: 0 to 0.99 of the price
 * @param [fee] what the place keeps of the price: 0 to 0.95 of the price; 0 if left out
 * @param [fixed] what a sale costs in fixed sums, not shares: fees, packing, postage; minus if the buyer pays more:
 *   any amount; 0 if left out
 * @param [tax] rate of sales tax or VAT: 0 to 1 of the price before tax; 0 if left out
 * @param {string} [basis] what the fee is a share of: the price before tax (net) or with tax (gross): "net" or
 *   "gross"; net if left out
 * @param [least] the smallest fee that a candle is charged: 0 or more; 0 if left out
 * @customfunction
 */
function CANDLE_PRICE_FOR_MARGIN(cost, margin, fee, fixed, tax, basis, least) { return answer_("price_for_margin", arguments); }
FUNCTIONS_.price_for_margin = {
  takes: { cost: "money", margin: "of the price", fee: "of the price 2", fixed: "money 2", tax: "of the price before tax", basis: "choice 8", least: "money" },
  left_out: { fee: 0, fixed: 0, tax: 0, basis: "net", least: 0 },
  asks: ["margin+fee*(1+tax*(basis=\"gross\")) < 1", "cost+fixed >= 0"],
  answer: (cost, margin, fee, fixed, tax, basis, least) => Math.max(ratio_(cost + fixed, 1 - margin - fee * (1 + tax * (basis === "gross"))), ratio_(cost + fixed + least, 1 - margin)),
  gives: "money",
};

/**
 * Lowest price before tax that still covers the materials and the place's fees. Gives 0 or more. Source 3
 * @param materials what the materials in it cost, without any work: 0 or more
 * @param [fee] what the place keeps of the price: 0 to 0.95 of the price; 0 if left out
 * @param [fixed] what a sale costs in fixed sums, not shares: fees, packing, postage; minus if the buyer pays more:
 *   any amount; 0 if left out
 * @param [tax] rate of sales tax or VAT: 0 to 1 of the price before tax; 0 if left out
 * @param {string} [basis] what the fee is a share of: the price before tax (net) or with tax (gross): "net" or
 *   "gross"; net if left out
 * @param [least] the smallest fee that a candle is charged: 0 or more; 0 if left out
 * @customfunction
 */
function CANDLE_LOWEST_PRICE(materials, fee, fixed, tax, basis, least) { return answer_("lowest_price", arguments); }
FUNCTIONS_.lowest_price = {
  takes: { materials: "money", fee: "of the price 2", fixed: "money 2", tax: "of the price before tax", basis: "choice 8", least: "money" },
  left_out: { fee: 0, fixed: 0, tax: 0, basis: "net", least: 0 },
  asks: ["fee*(1+tax*(basis=\"gross\")) < 1", "materials+fixed >= 0"],
  answer: (materials, fee, fixed, tax, basis, least) => Math.max(ratio_(materials + fixed, 1 - fee * (1 + tax * (basis === "gross"))), materials + fixed + least),
  gives: "money",
};

/**
 * What the place takes from a price: its percentage, or its smallest fee if more. Gives 0 or more. Source 3
 * @param price price before tax: 0 or more
 * @param fee what the place keeps of the price: 0 to 0.95 of the price
 * @param [tax] rate of sales tax or VAT: 0 to 1 of the price before tax; 0 if left out
 * @param {string} [basis] what the fee is a share of: the price before tax (net) or with tax (gross): "net" or
 *   "gross"; net if left out
 * @param [least] the smallest fee that a candle is charged: 0 or more; 0 if left out
 * @customfunction
 */
function CANDLE_FEE_AT(price, fee, tax, basis, least) { return answer_("fee_at", arguments); }
FUNCTIONS_.fee_at = {
  takes: { price: "money", fee: "of the price 2", tax: "of the price before tax", basis: "choice 8", least: "money" },
  left_out: { tax: 0, basis: "net", least: 0 },
  answer: (price, fee, tax, basis, least) => Math.max(price * fee * (1 + tax * (basis === "gross")), least),
  gives: "money",
};

/**
 * Profit on a candle at a price before tax, after its cost and all the place's fees. Gives any amount. Source 3
 * @param price price before tax: 0 or more
 * @param cost what the candle costs: 0 or more
 * @param [fees] all that the place takes of this price and this sale: any amount; 0 if left out
 * @customfunction
 */
function CANDLE_PROFIT_AT(price, cost, fees) { return answer_("profit_at", arguments); }
FUNCTIONS_.profit_at = {
  takes: { price: "money", cost: "money", fees: "money 2" },
  left_out: { fees: 0 },
  answer: (price, cost, fees) => price - cost - fees,
  gives: "money 2",
};

/**
 * Profit divided by the price before tax. Gives any amount of the price. Source 32
 * @param profit profit on one; minus for a loss: any amount
 * @param price price before tax: 0 or more
 * @customfunction
 */
function CANDLE_MARGIN_AT(profit, price) { return answer_("margin_at", arguments); }
FUNCTIONS_.margin_at = {
  takes: { profit: "money 2", price: "money" },
  asks: ["price > 0"],
  answer: (profit, price) => ratio_(profit, price),
  gives: "of the price 3",
};

/**
 * Price with tax from the price before tax. Gives 0 or more. Source 32
 * @param price price before tax: 0 or more
 * @param tax rate of sales tax or VAT: 0 to 1 of the price before tax
 * @customfunction
 */
function CANDLE_ADD_TAX(price, tax) { return answer_("add_tax", arguments); }
FUNCTIONS_.add_tax = {
  takes: { price: "money", tax: "of the price before tax" },
  answer: (price, tax) => price * (1 + tax),
  gives: "money",
};

/**
 * Price before tax from a price with tax in it. Gives 0 or more. Source 32
 * @param price price with tax in it: 0 or more
 * @param tax rate of sales tax or VAT: 0 to 1 of the price before tax
 * @customfunction
 */
function CANDLE_TAKE_OUT_TAX(price, tax) { return answer_("take_out_tax", arguments); }
FUNCTIONS_.take_out_tax = {
  takes: { price: "money", tax: "of the price before tax" },
  answer: (price, tax) => ratio_(price, 1 + tax),
  gives: "money",
};

/**
 * The tax that comes on a price before tax. Gives 0 or more. Source 32
 * @param price price before tax: 0 or more
 * @param tax rate of sales tax or VAT: 0 to 1 of the price before tax
 * @customfunction
 */
function CANDLE_TAX_ON(price, tax) { return answer_("tax_on", arguments); }
FUNCTIONS_.tax_on = {
  takes: { price: "money", tax: "of the price before tax" },
  answer: (price, tax) => price * tax,
  gives: "money",
};

/**
 * The tax included in a price. Gives 0 or more. Source 32
 * @param price price with tax in it: 0 or more
 * @param tax rate of sales tax or VAT: 0 to 1 of the price before tax
 * @customfunction
 */
function CANDLE_TAX_IN_PRICE(price, tax) { return answer_("tax_in_price", arguments); }
FUNCTIONS_.tax_in_price = {
  takes: { price: "money", tax: "of the price before tax" },
  answer: (price, tax) => ratio_(price * tax, 1 + tax),
  gives: "money",
};

/**
 * Price after discounts in a row: each is taken off what the one before left. Gives 0 or more. Source 32
 * @param price price as the place states it, with tax in it or not: 0 or more
 * @param first the first discount, off the price: 0 to 0.99 of the price
 * @param [second] the second, off what the first left: 0 to 0.99 of the price; 0 if left out
 * @param [third] the third, off what the second left: 0 to 0.99 of the price; 0 if left out
 * @customfunction
 */
function CANDLE_AFTER_DISCOUNTS(price, first, second, third) { return answer_("after_discounts", arguments); }
FUNCTIONS_.after_discounts = {
  takes: { price: "money", first: "of the price", second: "of the price", third: "of the price" },
  left_out: { second: 0, third: 0 },
  answer: (price, first, second, third) => price * (1 - first) * (1 - second) * (1 - third),
  gives: "money",
};

/**
 * Wholesale price that a shop pays you, from the retail price and the shop's discount on it. Gives 0 or more. Source
 * 32
 * @param retail retail price: what the buyer in the shop pays, with tax in it or not: 0 or more
 * @param discount what is taken off the price: 0 to 0.99 of the price
 * @customfunction
 */
function CANDLE_WHOLESALE_PRICE(retail, discount) { return answer_("wholesale_price", arguments); }
FUNCTIONS_.wholesale_price = {
  takes: { retail: "money", discount: "of the price" },
  answer: (retail, discount) => retail * (1 - discount),
  gives: "money",
};

/**
 * What a stated price leaves you before tax: less the discount, and less any tax included. Gives 0 or more. Source 32
 * @param shelf price as the place states it, with tax in it or not: 0 or more
 * @param discount what is taken off the price: 0 to 0.99 of the price
 * @param tax rate of sales tax or VAT: 0 to 1 of the price before tax
 * @param {string} stated whether the place states its prices with tax in them: "with tax" or "before tax"
 * @customfunction
 */
function CANDLE_PRICE_RECEIVED(shelf, discount, tax, stated) { return answer_("price_received", arguments); }
FUNCTIONS_.price_received = {
  takes: { shelf: "money", discount: "of the price", tax: "of the price before tax", stated: "choice 9" },
  answer: (shelf, discount, tax, stated) => ratio_(shelf * (1 - discount), 1 + tax * (stated === "with tax")),
  gives: "money",
};

/**
 * Price to state so that a wanted price before tax is received: the inverse of `price_received`. Gives 0 or more.
 * Source 32
 * @param price price before tax: 0 or more
 * @param discount what is taken off the price: 0 to 0.99 of the price
 * @param tax rate of sales tax or VAT: 0 to 1 of the price before tax
 * @param {string} stated whether the place states its prices with tax in them: "with tax" or "before tax"
 * @customfunction
 */
function CANDLE_PRICE_TO_STATE(price, discount, tax, stated) { return answer_("price_to_state", arguments); }
FUNCTIONS_.price_to_state = {
  takes: { price: "money", discount: "of the price", tax: "of the price before tax", stated: "choice 9" },
  answer: (price, discount, tax, stated) => ratio_(price * (1 + tax * (stated === "with tax")), 1 - discount),
  gives: "money",
};

/**
 * The next price up that the maker uses: a whole number of steps, plus the ending. Gives 0 or more. Source 5
 * @param price price as the place states it, with tax in it or not: 0 or more
 * @param step the step between the prices the maker uses: more than 0
 * @param [ending] what prices end in, below the step: 0.95 for 17.95: 0 or more; 0 if left out
 * @customfunction
 */
function CANDLE_ROUND_UP_PRICE(price, step, ending) { return answer_("round_up_price", arguments); }
FUNCTIONS_.round_up_price = {
  takes: { price: "money", step: "money 3", ending: "money" },
  left_out: { ending: 0 },
  asks: ["ending < step"],
  answer: (price, step, ending) => round_(Math.max(0, 0 - Math.floor(round_(ratio_(ending - price, step), 6))) * step + ending, 6),
  gives: "money",
};

/**
 * An amount rounded to the currency's smallest coin, half away from zero. Gives any amount. Source 33
 * @param amount the amount to round: any amount
 * @param [digits] decimals of the currency's smallest coin: whole numbers 0 to 4; 2 if left out
 * @customfunction
 */
function CANDLE_ROUND_MONEY(amount, digits) { return answer_("round_money", arguments); }
FUNCTIONS_.round_money = {
  takes: { amount: "money 2", digits: "number 7" },
  left_out: { digits: 2 },
  answer: (amount, digits) => round_(amount, digits),
  gives: "money 2",
};

/**
 * Candles to sell to cover fixed costs, and a wanted profit if given: rounded up to whole ones. Gives whole numbers 0
 * to 1000000. Source 34
 * @param fixed fixed costs to cover: those that come whatever is sold: 0 or more
 * @param price price before tax, less the place's fees on it: 0 or more
 * @param cost cost of each extra candle sold, without fixed costs: 0 or more
 * @param [profit] profit wanted besides: 0 or more; 0 if left out
 * @customfunction
 */
function CANDLE_BREAK_EVEN_UNITS(fixed, price, cost, profit) { return answer_("break_even_units", arguments); }
FUNCTIONS_.break_even_units = {
  takes: { fixed: "money", price: "money", cost: "money", profit: "money" },
  left_out: { profit: 0 },
  asks: ["price > cost"],
  answer: (fixed, price, cost, profit) => 0 - Math.floor(0 - round_(ratio_(fixed + profit, price - cost), 6)),
  gives: "number 2",
};

/**
 * Sales in money that cover fixed costs, and a wanted profit if given. Gives 0 or more. Source 34
 * @param fixed fixed costs to cover: those that come whatever is sold: 0 or more
 * @param price price before tax, less the place's fees on it: 0 or more
 * @param cost cost of each extra candle sold, without fixed costs: 0 or more
 * @param [profit] profit wanted besides: 0 or more; 0 if left out
 * @customfunction
 */
function CANDLE_BREAK_EVEN_SALES(fixed, price, cost, profit) { return answer_("break_even_sales", arguments); }
FUNCTIONS_.break_even_sales = {
  takes: { fixed: "money", price: "money", cost: "money", profit: "money" },
  left_out: { profit: 0 },
  asks: ["price > cost"],
  answer: (fixed, price, cost, profit) => ratio_((fixed + profit) * price, price - cost),
  gives: "money",
};

/**
 * Lots of a mix of products to sell to cover fixed costs. Gives 0 or more. Source 34
 * @param fixed fixed costs to cover: those that come whatever is sold: 0 or more
 * @param {Array} mix how many of each product sell together: list, each 0 or more
 * @param {Array} prices price of each product, before tax: list, each 0 or more
 * @param {Array} costs what one more of each product costs: list, each 0 or more
 * @customfunction
 */
function CANDLE_BREAK_EVEN_MIX(fixed, mix, prices, costs) { return answer_("break_even_mix", arguments); }
FUNCTIONS_.break_even_mix = {
  takes: { fixed: "money", mix: "list of number 4", prices: "list of money", costs: "list of money" },
  answer: (fixed, mix, prices, costs) => ratio_(fixed, sum_(each_([mix, prices], (each_mix, each_prices) => each_mix * each_prices)) - sum_(each_([mix, costs], (each_mix, each_costs) => each_mix * each_costs))),
  gives: "number 4",
};

// ------------------------------------------------------------
// Selling: what a stall, a bundle and an order leave, what a shop owes, and what a parcel is charged for

/**
 * What is left for each hour of your own work on a candle at a price. Gives any amount money per h. Source 35
 * @param price price before tax, less the place's fees on it: 0 or more
 * @param cost what the candle costs, without the maker's own time: 0 or more
 * @param minutes the maker's own working time on it: more than 0, at most 1000000 min
 * @customfunction
 */
function CANDLE_HOURLY_EARNINGS(price, cost, minutes) { return answer_("hourly_earnings", arguments); }
FUNCTIONS_.hourly_earnings = {
  takes: { price: "money", cost: "money", minutes: "min 2" },
  answer: (price, cost, minutes) => ratio_((price - cost) * 60, minutes),
  gives: "money per h 2",
};

/**
 * What a day at a market or a fair leaves: takings less candles, the day's own costs and fees; minus for a loss. Gives
 * any amount. Source 3
 * @param takings what was taken for candles, before tax: 0 or more
 * @param goods what the candles sold cost, all of them: 0 or more
 * @param costs what the day costs whatever is sold: stall, travel, parking, meals: 0 or more
 * @param [fees] what card companies and the organiser keep of the takings: 0 or more; 0 if left out
 * @customfunction
 */
function CANDLE_STALL_RESULT(takings, goods, costs, fees) { return answer_("stall_result", arguments); }
FUNCTIONS_.stall_result = {
  takes: { takings: "money", goods: "money", costs: "money", fees: "money" },
  left_out: { fees: 0 },
  answer: (takings, goods, costs, fees) => takings - goods - costs - fees,
  gives: "money 2",
};

/**
 * What a day at a market or a fair leaves for each hour that it takes. Gives any amount money per h. Source 3
 * @param takings what was taken for candles, before tax: 0 or more
 * @param goods what the candles sold cost, all of them: 0 or more
 * @param costs what the day costs whatever is sold: stall, travel, parking, meals: 0 or more
 * @param hours hours that the day takes: packing, travel, setting up, selling: more than 0, at most 1000 h
 * @param [fees] what card companies and the organiser keep of the takings: 0 or more; 0 if left out
 * @customfunction
 */
function CANDLE_STALL_PER_HOUR(takings, goods, costs, hours, fees) { return answer_("stall_per_hour", arguments); }
FUNCTIONS_.stall_per_hour = {
  takes: { takings: "money", goods: "money", costs: "money", hours: "h 10", fees: "money" },
  left_out: { fees: 0 },
  answer: (takings, goods, costs, hours, fees) => ratio_(takings - goods - costs - fees, hours),
  gives: "money per h 2",
};

/**
 * Margin that a bundle leaves of its price: a gift set, a box of three, a candle with matches. Gives any amount of the
 * price. Source 32
 * @param price price of the whole bundle, before tax: more than 0
 * @param {Array} costs cost of each thing in the bundle; list a candle twice if it is in twice: list, each 0 or more
 * @param [packing] box, filling and ribbon of the bundle: 0 or more; 0 if left out
 * @param [fees] what the place keeps of the price of the bundle: 0 or more; 0 if left out
 * @customfunction
 */
function CANDLE_BUNDLE_MARGIN(price, costs, packing, fees) { return answer_("bundle_margin", arguments); }
FUNCTIONS_.bundle_margin = {
  takes: { price: "money 3", costs: "list of money", packing: "money", fees: "money" },
  left_out: { packing: 0, fees: 0 },
  answer: (price, costs, packing, fees) => ratio_(price - sum_(costs) - packing - fees, price),
  gives: "of the price 3",
};

/**
 * Retail price at which a shop keeps its share, from the wholesale price that you charge it. Gives 0 or more. Source
 * 32
 * @param wholesale wholesale price: what the shop pays the maker: 0 or more
 * @param share what the shop keeps of the retail price: 0 to 0.99 of the price
 * @customfunction
 */
function CANDLE_RETAIL_FROM_WHOLESALE(wholesale, share) { return answer_("retail_from_wholesale", arguments); }
FUNCTIONS_.retail_from_wholesale = {
  takes: { wholesale: "money", share: "of the price" },
  answer: (wholesale, share) => ratio_(wholesale, 1 - share),
  gives: "money",
};

/**
 * The smallest order that pays for itself, in candles: whole cases. Gives whole numbers 0 to 1000000. Source 34
 * @param order what an order costs whatever its size: the time it takes, a box, freight that you pay: 0 or more
 * @param price wholesale price: what the shop pays the maker: 0 or more
 * @param cost what each candle costs that goes into the order: 0 or more
 * @param [profit] profit that the order is to leave: 0 or more; 0 if left out
 * @param [carton] candles are sold in cases of so many; 1 for singly: whole numbers 1 to 1000; 1 if left out
 * @customfunction
 */
function CANDLE_MINIMUM_ORDER(order, price, cost, profit, carton) { return answer_("minimum_order", arguments); }
FUNCTIONS_.minimum_order = {
  takes: { order: "money", price: "money", cost: "money", profit: "money", carton: "number 11" },
  left_out: { profit: 0, carton: 1 },
  asks: ["price > cost"],
  answer: (order, price, cost, profit, carton) => roundUp_(round_(ratio_(ratio_(order + profit, price - cost), carton), 6), 0) * carton,
  gives: "number 2",
};

/**
 * What a shop owes you that sells your candles on consignment: the price of what it sold, less its commission. Gives
 * any amount. Source 36
 * @param count how many the shop has sold since it last paid: whole numbers 0 to 1000000
 * @param price price of one in the shop, before tax: 0 or more
 * @param share commission that the shop keeps: 0 to 0.99 of the price
 * @param [paid] what the shop has paid on them already: 0 or more; 0 if left out
 * @customfunction
 */
function CANDLE_CONSIGNMENT_DUE(count, price, share, paid) { return answer_("consignment_due", arguments); }
FUNCTIONS_.consignment_due = {
  takes: { count: "number 2", price: "money", share: "of the price", paid: "money" },
  left_out: { paid: 0 },
  answer: (count, price, share, paid) => count * price * (1 - share) - paid,
  gives: "money 2",
};

/**
 * Price at which yours costs as much for its weight as another candle does. Gives 0 or more. Source 3
 * @param price price of the other candle: 0 or more
 * @param weight net weight of the other candle: more than 0, at most 25000 g
 * @param own net weight of yours: more than 0, at most 25000 g
 * @customfunction
 */
function CANDLE_PRICE_TO_MATCH(price, weight, own) { return answer_("price_to_match", arguments); }
FUNCTIONS_.price_to_match = {
  takes: { price: "money", weight: "g 6", own: "g 6" },
  answer: (price, weight, own) => ratio_(price, weight) * own,
  gives: "money",
};

/**
 * Weight that a carrier charges for: what the parcel weighs, or its size over the carrier's divisor if more. Gives 0
 * or more g. Source 37
 * @param weight what the packed parcel weighs: more than 0, at most 1000000 g
 * @param length length of the packed parcel, outside: 10 to 5000 mm
 * @param width width of the packed parcel, outside: 10 to 5000 mm
 * @param height height of the packed parcel, outside: 10 to 5000 mm
 * @param divisor the carrier's divisor for dimensional weight, by its own rules: 50 to 10000
 * @param {string} per what the divisor is in: cubic inches to a pound or cubic centimetres to a kilogram: "in3 per lb"
 *   or "cm3 per kg"
 * @param [step] the carrier charges in whole steps of this, such as 1 lb; 0 for no steps: 0 to 100000 g; 0 if left out
 * @customfunction
 */
function CANDLE_BILLABLE_WEIGHT(weight, length, width, height, divisor, per, step) { return answer_("billable_weight", arguments); }
FUNCTIONS_.billable_weight = {
  takes: { weight: "g 7", length: "mm 11", width: "mm 11", height: "mm 11", divisor: "number 12", per: "choice 10", step: "g 5" },
  left_out: { step: 0 },
  answer: (weight, length, width, height, divisor, per, step) => (step > 0 ? roundUp_(round_(ratio_(Math.max(weight, ratio_(ratio_(length * width * height, divisor), (per === "in3 per lb" ? 36.127292000083685 : 1))), Math.max(step, 0.000001)), 6), 0) * step : Math.max(weight, ratio_(ratio_(length * width * height, divisor), (per === "in3 per lb" ? 36.127292000083685 : 1)))),
  gives: "g 2",
};

/**
 * Packed candles that a carton takes, all upright and all turned the same way. Gives whole numbers 0 to 1000000.
 * Source 5
 * @param carton_length length of the carton, inside: 10 to 5000 mm
 * @param carton_width width of the carton, inside: 10 to 5000 mm
 * @param carton_height height of the carton, inside: 10 to 5000 mm
 * @param length length of one packed candle, wrapping with it: 10 to 5000 mm
 * @param width width of one packed candle, wrapping with it: 10 to 5000 mm
 * @param height height of one packed candle as it stands: 10 to 5000 mm
 * @customfunction
 */
function CANDLE_PER_CARTON(carton_length, carton_width, carton_height, length, width, height) { return answer_("per_carton", arguments); }
FUNCTIONS_.per_carton = {
  takes: { carton_length: "mm 11", carton_width: "mm 11", carton_height: "mm 11", length: "mm 11", width: "mm 11", height: "mm 11" },
  answer: (carton_length, carton_width, carton_height, length, width, height) => Math.max(Math.floor(round_(ratio_(carton_length, length), 6)) * Math.floor(round_(ratio_(carton_width, width), 6)), Math.floor(round_(ratio_(carton_length, width), 6)) * Math.floor(round_(ratio_(carton_width, length), 6))) * Math.floor(round_(ratio_(carton_height, height), 6)),
  gives: "number 2",
};

// ------------------------------------------------------------
// Plan: how much to buy at a time, when to order again, and how much of it everyone gets

/**
 * How much to order at a time so that ordering and keeping cost least together. Gives 0 or more. Source 38
 * @param demand how much is used or sold over the time planned for: a year, a season: 0 or more
 * @param ordering what an order costs whatever its size: delivery, handling, the time it takes: 0 or more
 * @param holding cost to keep one unit for the whole of that time: money tied up, room, losses: more than 0 money per
 *   unit
 * @customfunction
 */
function CANDLE_ECONOMIC_ORDER_QUANTITY(demand, ordering, holding) { return answer_("economic_order_quantity", arguments); }
FUNCTIONS_.economic_order_quantity = {
  takes: { demand: "number 4", ordering: "money", holding: "money per unit 2" },
  answer: (demand, ordering, holding) => root_(ratio_(2 * demand * ordering, holding)),
  gives: "number 4",
};

/**
 * What ordering and keeping cost over the time planned for, where so much is ordered at a time. Gives 0 or more.
 * Source 38
 * @param quantity how much is ordered at a time, in the unit that demand is in: more than 0
 * @param demand how much is used or sold over the time planned for: a year, a season: 0 or more
 * @param ordering what an order costs whatever its size: delivery, handling, the time it takes: 0 or more
 * @param holding cost to keep one unit for the whole of that time: money tied up, room, losses: more than 0 money per
 *   unit
 * @customfunction
 */
function CANDLE_ORDERING_COST(quantity, demand, ordering, holding) { return answer_("ordering_cost", arguments); }
FUNCTIONS_.ordering_cost = {
  takes: { quantity: "number 6", demand: "number 4", ordering: "money", holding: "money per unit 2" },
  answer: (quantity, demand, ordering, holding) => ratio_(demand, quantity) * ordering + quantity / 2 * holding,
  gives: "money",
};

/**
 * Total cost of goods, ordering and keeping if you buy this much at a time at this price. Gives 0 or more. Source 39
 * @param quantity how much is ordered at a time, in the unit that demand is in: more than 0
 * @param demand how much is used or sold over the time planned for: a year, a season: 0 or more
 * @param ordering what an order costs whatever its size: delivery, handling, the time it takes: 0 or more
 * @param holding_share cost to keep a unit for the whole of that time, as a share of its price: more than 0, at most 1
 *   of the price
 * @param price price of one unit at that quantity: 0 or more money per unit
 * @customfunction
 */
function CANDLE_BUYING_COST(quantity, demand, ordering, holding_share, price) { return answer_("buying_cost", arguments); }
FUNCTIONS_.buying_cost = {
  takes: { quantity: "number 6", demand: "number 4", ordering: "money", holding_share: "of the price 4", price: "money per unit" },
  answer: (quantity, demand, ordering, holding_share, price) => demand * price + ratio_(demand, quantity) * ordering + quantity / 2 * holding_share * price,
  gives: "money",
};

/**
 * The order quantity that costs least in all, where the price falls for larger orders. Gives a row of quantity, price,
 * cost. Source 39
 * @param demand how much is used or sold over the time planned for: a year, a season: 0 or more
 * @param ordering what an order costs whatever its size: delivery, handling, the time it takes: 0 or more
 * @param holding_share cost to keep a unit for the whole of that time, as a share of its price: more than 0, at most 1
 *   of the price
 * @param {Array} breaks smallest quantity that each price holds from, rising; 0 or 1 for the first: list, each 0 or
 *   more
 * @param {Array} prices price of one unit from each of these quantities up, on all that is bought: list, each more
 *   than 0 money per unit
 * @customfunction
 */
function CANDLE_BEST_BREAK(demand, ordering, holding_share, breaks, prices) { return answer_("best_break", arguments); }
FUNCTIONS_.best_break = {
  takes: { demand: "number 4", ordering: "money", holding_share: "of the price 4", breaks: "list of number 4", prices: "list of money per unit 2" },
  asks: ["demand > 0"],
  steps: plan_best_break_,
  gives: "text",
  fields: { quantity: "number 4", price: "money per unit", cost: "money" },
};

/**
 * Extra stock to keep for uneven demand and late deliveries while you wait for an order. Gives 0 or more. Source 40
 * @param demand how much is used or sold in a day or a week on average: 0 or more
 * @param lead_time days or weeks from ordering to having it, in the unit of demand: 0 to 10000
 * @param risk share of orders during which running out is accepted: more than 0, at most 0.5 of the orders
 * @param [spread] standard deviation of what is used or sold in a day or a week; 0 if it is steady: 0 or more; 0 if
 *   left out
 * @param [lead_spread] standard deviation of the days or weeks that an order takes; 0 if they are always the same: 0
 *   or more; 0 if left out
 * @customfunction
 */
function CANDLE_SAFETY_STOCK(demand, lead_time, risk, spread, lead_spread) { return answer_("safety_stock", arguments); }
FUNCTIONS_.safety_stock = {
  takes: { demand: "number 4", lead_time: "number 13", risk: "of the orders", spread: "number 4", lead_spread: "number 4" },
  left_out: { spread: 0, lead_spread: 0 },
  answer: (demand, lead_time, risk, spread, lead_spread) => (0 - normalQuantile_(risk)) * root_(lead_time * spread ** 2 + demand ** 2 * lead_spread ** 2),
  gives: "number 4",
};

/**
 * Order again when this much is left: what is used until the order comes, and the buffer. Gives 0 or more. Source 40
 * @param demand how much is used or sold in a day or a week on average: 0 or more
 * @param lead_time days or weeks from ordering to having it, in the unit of demand: 0 to 10000
 * @param risk share of orders during which running out is accepted: more than 0, at most 0.5 of the orders
 * @param [spread] standard deviation of what is used or sold in a day or a week; 0 if it is steady: 0 or more; 0 if
 *   left out
 * @param [lead_spread] standard deviation of the days or weeks that an order takes; 0 if they are always the same: 0
 *   or more; 0 if left out
 * @customfunction
 */
function CANDLE_REORDER_POINT(demand, lead_time, risk, spread, lead_spread) { return answer_("reorder_point", arguments); }
FUNCTIONS_.reorder_point = {
  takes: { demand: "number 4", lead_time: "number 13", risk: "of the orders", spread: "number 4", lead_spread: "number 4" },
  left_out: { spread: 0, lead_spread: 0 },
  answer: (demand, lead_time, risk, spread, lead_spread) => demand * lead_time + (0 - normalQuantile_(risk)) * root_(lead_time * spread ** 2 + demand ** 2 * lead_spread ** 2),
  gives: "number 4",
};

/**
 * Whole packs to buy for what is needed and not on hand. Gives whole numbers 0 to 1000000. Source 5
 * @param needed how much is needed: 0 or more
 * @param pack how much a pack holds, in the same unit: more than 0
 * @param [on_hand] how much is on hand: 0 or more; 0 if left out
 * @customfunction
 */
function CANDLE_PACKS_TO_BUY(needed, pack, on_hand) { return answer_("packs_to_buy", arguments); }
FUNCTIONS_.packs_to_buy = {
  takes: { needed: "number 4", pack: "number 6", on_hand: "number 4" },
  left_out: { on_hand: 0 },
  answer: (needed, pack, on_hand) => Math.max(0, roundUp_(round_(ratio_(needed - on_hand, pack), 6), 0)),
  gives: "number 2",
};

/**
 * How many packs to buy once where larger orders are cheaper: what costs least, and no fewer than are needed. Gives
 * whole numbers 0 to 1000000. Source 3
 * @param packs whole packs that are needed at least: whole numbers 0 to 1000000
 * @param price price of a pack: 0 or more
 * @param first the first break: whole numbers 0 to 1000000
 * @param first_price from the first break on: 0 or more
 * @param second the second break: whole numbers 0 to 1000000
 * @param second_price from the second break on: 0 or more
 * @customfunction
 */
function CANDLE_PACKS_AT_BREAKS(packs, price, first, first_price, second, second_price) { return answer_("packs_at_breaks", arguments); }
FUNCTIONS_.packs_at_breaks = {
  takes: { packs: "number 2", price: "money", first: "number 2", first_price: "money", second: "number 2", second_price: "money" },
  asks: ["first_price <= price", "second_price <= first_price", "second >= first"],
  answer: (packs, price, first, first_price, second, second_price) => (round_(Math.min(packs * price, Math.max(packs, first) * first_price) - Math.max(packs, second) * second_price, 6) <= 0 ? (round_(packs * price - Math.max(packs, first) * first_price, 6) <= 0 ? packs : Math.max(packs, first)) : Math.max(packs, second)),
  gives: "number 2",
};

/**
 * Share out what there is too little of: oil for several products, candles for several shops. Gives list, each 0 or
 * more. Source 41
 * @param available how much there is to share out: 0 or more
 * @param {Array} wants how much each one wants, in the same unit: list, each 0 or more
 * @param [step] the smallest amount that is handed out: 1 for pieces, 50 for steps of 50 g: more than 0; 1 if left out
 * @param {string} [sharing] how the charge is shared: in proportion to the amounts, or evenly: "in proportion" or
 *   "evenly"; in proportion if left out
 * @customfunction
 */
function CANDLE_FAIR_SPLIT(available, wants, step, sharing) { return answer_("fair_split", arguments); }
FUNCTIONS_.fair_split = {
  takes: { available: "number 4", wants: "list of number 4", step: "number 6", sharing: "choice 7" },
  left_out: { step: 1, sharing: "in proportion" },
  steps: plan_fair_split_,
  gives: "number 4",
  several: true,
};

// ------------------------------------------------------------
// Curing: when to pour, and when what was poured is ready

/**
 * The day on which candles have cured: ready to label, to test or to sell. Gives a date such as "2026-03-14". Source
 * 42
 * @param {Date} poured the day on which they were poured: a date such as "2026-03-14"
 * @param cure days that candles rest between pouring and finishing: whole numbers 0 to 365 days
 * @customfunction
 */
function CANDLE_READY_ON(poured, cure) { return answer_("ready_on", arguments); }
FUNCTIONS_.ready_on = {
  takes: { poured: "date", cure: "days" },
  answer: (poured, cure) => Math.floor(poured) + cure,
  gives: "date",
};

/**
 * The last day to start pouring for a market or an order, working Monday to Friday. Gives a date such as "2026-03-14".
 * Source 42
 * @param {Date} sale the day it is to be sold or sent: a date such as "2026-03-14"
 * @param cure days that candles rest between pouring and finishing: whole numbers 0 to 365 days
 * @param [evenings] working days or evenings that the pouring takes: whole numbers 1 to 365; 1 if left out
 * @param [finishing] working days to label, pack and carry before that day: whole numbers 0 to 365 days; 0 if left out
 * @customfunction
 */
function CANDLE_POUR_BY(sale, cure, evenings, finishing) { return answer_("pour_by", arguments); }
FUNCTIONS_.pour_by = {
  takes: { sale: "date", cure: "days", evenings: "number 14", finishing: "days" },
  left_out: { evenings: 1, finishing: 0 },
  answer: (sale, cure, evenings, finishing) => workday_(workday_(sale, 0 - finishing) - cure + 1, 0 - evenings),
  gives: "date",
};

/**
 * The last day to start pouring for a market or an order, on the days that you work. Gives a date such as
 * "2026-03-14". Source 42
 * @param {Date} sale the day it is to be sold or sent: a date such as "2026-03-14"
 * @param cure days that candles rest between pouring and finishing: whole numbers 0 to 365 days
 * @param {string} working the days you work: "Mon-Fri", "Tue Thu Sat", "weekends", "every day": text
 * @param [evenings] working days or evenings that the pouring takes: whole numbers 1 to 365; 1 if left out
 * @param [finishing] working days to label, pack and carry before that day: whole numbers 0 to 365 days; 0 if left out
 * @param {Array} [closed] days on which you do not work all the same: list, each a date such as "2026-03-14" or blank;
 *   blank if left out
 * @customfunction
 */
function CANDLE_POUR_BY_OWN_DAYS(sale, cure, working, evenings, finishing, closed) { return answer_("pour_by_own_days", arguments); }
FUNCTIONS_.pour_by_own_days = {
  takes: { sale: "date", cure: "days", working: "text", evenings: "number 14", finishing: "days", closed: "list of date 2" },
  left_out: { evenings: 1, finishing: 0, closed: null },
  steps: curing_pour_by_own_days_,
  gives: "date",
};

// ------------------------------------------------------------
// Schedule: how many evenings the pouring takes, and how much to make in each week

/**
 * How many pots a melt fills, from the most a pot holds; the last may not be full. Gives whole numbers 0 to 1000000.
 * Source 5
 * @param melt the whole melt, wax and oil, in any unit, the same for all: 0 or more g
 * @param pot the most that a pot holds, in any unit, the same for all: 0 or more g
 * @customfunction
 */
function CANDLE_POTS_NEEDED(melt, pot) { return answer_("pots_needed", arguments); }
FUNCTIONS_.pots_needed = {
  takes: { melt: "g 2", pot: "g 2" },
  asks: ["pot > 0"],
  answer: (melt, pot) => roundUp_(round_(ratio_(melt, pot), 6), 0),
  gives: "number 2",
};

/**
 * How much to make or buy for a month: what goes out, plus what is to be left, less what you have. Gives 0 or more.
 * Source 43
 * @param sales how much is used or sold over the time planned for: a year, a season: 0 or more
 * @param closing how much is to be left at the end: 0 or more
 * @param opening how much is there at the start: 0 or more
 * @customfunction
 */
function CANDLE_TO_MAKE(sales, closing, opening) { return answer_("to_make", arguments); }
FUNCTIONS_.to_make = {
  takes: { sales: "number 4", closing: "number 4", opening: "number 4" },
  answer: (sales, closing, opening) => Math.max(0, sales + closing - opening),
  gives: "number 4",
};

/**
 * How much to make in each week or month to follow what is wanted, and leave so much at the end of each. Gives list,
 * each 0 or more. Source 43
 * @param {Array} sales how much is wanted in each week or month, in order: list, each 0 or more
 * @param {Array} keep how much is to be left at the end of each, in order: list, each 0 or more
 * @param [opening] how much is there at the start: 0 or more; 0 if left out
 * @customfunction
 */
function CANDLE_FOLLOW_DEMAND(sales, keep, opening) { return answer_("follow_demand", arguments); }
FUNCTIONS_.follow_demand = {
  takes: { sales: "list of number 4", keep: "list of number 4", opening: "number 4" },
  left_out: { opening: 0 },
  steps: schedule_follow_demand_,
  gives: "number 4",
  several: true,
};

/**
 * The smallest equal amount to make each week or month that never runs short and leaves enough at the end. Gives 0 or
 * more. Source 44
 * @param {Array} sales how much is wanted in each week or month, in order: list, each 0 or more
 * @param [opening] how much is there at the start: 0 or more; 0 if left out
 * @param [closing] how much is to be left at the end: 0 or more; 0 if left out
 * @customfunction
 */
function CANDLE_LEVEL_RATE(sales, opening, closing) { return answer_("level_rate", arguments); }
FUNCTIONS_.level_rate = {
  takes: { sales: "list of number 4", opening: "number 4", closing: "number 4" },
  left_out: { opening: 0, closing: 0 },
  steps: schedule_level_rate_,
  gives: "number 4",
};

/**
 * How much is left at the end of each week or month, from what is made and sold in it. Gives list, each 0 or more.
 * Source 3
 * @param {Array} sales how much is wanted in each week or month, in order: list, each 0 or more
 * @param {Array} made how much is made in each week or month, in order: list, each 0 or more
 * @param [opening] how much is there at the start: 0 or more; 0 if left out
 * @customfunction
 */
function CANDLE_STOCK_LEFT(sales, made, opening) { return answer_("stock_left", arguments); }
FUNCTIONS_.stock_left = {
  takes: { sales: "list of number 4", made: "list of number 4", opening: "number 4" },
  left_out: { opening: 0 },
  steps: schedule_stock_left_,
  gives: "number 4",
  several: true,
};

/**
 * What a plan costs: making, keeping what is left over, and making more or fewer than the time before. Gives 0 or
 * more. Source 44
 * @param {Array} sales how much is wanted in each week or month, in order: list, each 0 or more
 * @param {Array} made how much is made in each week or month, in order: list, each 0 or more
 * @param making what making one costs: 0 or more money per unit
 * @param [keeping] what keeping one from a week or month to the next costs: 0 or more money per unit; 0 if left out
 * @param [raising] what it costs to make one more than in the week or month before, such as finding help: 0 or more
 *   money per unit; 0 if left out
 * @param [lowering] what it costs to make one fewer than in the week or month before: 0 or more money per unit; 0 if
 *   left out
 * @param [usual] how much was made in the one before the first; blank if starting costs nothing: 0 or more or blank;
 *   blank if left out
 * @param [opening] how much is there at the start: 0 or more; 0 if left out
 * @customfunction
 */
function CANDLE_PLAN_COST(sales, made, making, keeping, raising, lowering, usual, opening) { return answer_("plan_cost", arguments); }
FUNCTIONS_.plan_cost = {
  takes: { sales: "list of number 4", made: "list of number 4", making: "money per unit", keeping: "money per unit", raising: "money per unit", lowering: "money per unit", usual: "number 15", opening: "number 4" },
  left_out: { keeping: 0, raising: 0, lowering: 0, usual: null, opening: 0 },
  steps: schedule_plan_cost_,
  gives: "money",
};

/**
 * Build ahead at a level rate, or follow what is wanted? Both plans with what they cost. Gives list, each a row of
 * plan, most_made, most_kept, cost. Source 44
 * @param {Array} sales how much is wanted in each week or month, in order: list, each 0 or more
 * @param making what making one costs: 0 or more money per unit
 * @param [keeping] what keeping one from a week or month to the next costs: 0 or more money per unit; 0 if left out
 * @param [raising] what it costs to make one more than in the week or month before, such as finding help: 0 or more
 *   money per unit; 0 if left out
 * @param [lowering] what it costs to make one fewer than in the week or month before: 0 or more money per unit; 0 if
 *   left out
 * @param [usual] how much was made in the one before the first; blank if starting costs nothing: 0 or more or blank;
 *   blank if left out
 * @param [opening] how much is there at the start: 0 or more; 0 if left out
 * @customfunction
 */
function CANDLE_LEVEL_OR_FOLLOW(sales, making, keeping, raising, lowering, usual, opening) { return answer_("level_or_follow", arguments); }
FUNCTIONS_.level_or_follow = {
  takes: { sales: "list of number 4", making: "money per unit", keeping: "money per unit", raising: "money per unit", lowering: "money per unit", usual: "number 15", opening: "number 4" },
  left_out: { keeping: 0, raising: 0, lowering: 0, usual: null, opening: 0 },
  steps: schedule_level_or_follow_,
  gives: "text",
  several: true,
  fields: { plan: "choice 11", most_made: "number 4", most_kept: "number 4", cost: "money" },
};

/**
 * How much to make in each week or month so that batches and keeping cost least over the season. Gives list, each 0 or
 * more. Source 45
 * @param {Array} sales how much is wanted in each week or month, in order: list, each 0 or more
 * @param setup what a batch costs whatever its size: setting up, cleaning, an evening taken: 0 or more
 * @param keeping what keeping one from a week or month to the next costs: 0 or more money per unit
 * @param [opening] how much is there at the start: 0 or more; 0 if left out
 * @customfunction
 */
function CANDLE_LOT_SIZES(sales, setup, keeping, opening) { return answer_("lot_sizes", arguments); }
FUNCTIONS_.lot_sizes = {
  takes: { sales: "list of number 4", setup: "money", keeping: "money per unit", opening: "number 4" },
  left_out: { opening: 0 },
  steps: schedule_lot_sizes_,
  gives: "number 4",
  several: true,
};

/**
 * What batches and keeping cost over a season: each time something is made, and what is left after each. Gives 0 or
 * more. Source 45
 * @param {Array} sales how much is wanted in each week or month, in order: list, each 0 or more
 * @param {Array} made how much is made in each week or month, in order: list, each 0 or more
 * @param setup what a batch costs whatever its size: setting up, cleaning, an evening taken: 0 or more
 * @param keeping what keeping one from a week or month to the next costs: 0 or more money per unit
 * @param [opening] how much is there at the start: 0 or more; 0 if left out
 * @customfunction
 */
function CANDLE_LOTS_COST(sales, made, setup, keeping, opening) { return answer_("lots_cost", arguments); }
FUNCTIONS_.lots_cost = {
  takes: { sales: "list of number 4", made: "list of number 4", setup: "money", keeping: "money per unit", opening: "number 4" },
  left_out: { opening: 0 },
  steps: schedule_lots_cost_,
  gives: "money",
};

// ------------------------------------------------------------
// Stock: what went out cost, and what is left is worth, by first in first out or by an average

/**
 * Average cost of one unit over all lots: the periodic average. Not rounded: round what you work out from it. Gives 0
 * or more money per unit. Source 46
 * @param {Array} bought how much of each lot: what was there at the start first, then each receipt: list, each 0 or
 *   more
 * @param {Array} costs cost of one unit of each lot: list, each 0 or more money per unit
 * @customfunction
 */
function CANDLE_AVERAGE_COST(bought, costs) { return answer_("average_cost", arguments); }
FUNCTIONS_.average_cost = {
  takes: { bought: "list of number 4", costs: "list of money per unit" },
  asks: ["SUM(bought) > 0"],
  answer: (bought, costs) => ratio_(sum_(each_([bought, costs], (each_bought, each_costs) => each_bought * each_costs)), sum_(bought)),
  gives: "money per unit",
};

// ------------------------------------------------------------
// Stocktake: what a count finds, what stock may be worth at most, how fast it goes, and which lot to use first

/**
 * What the difference of a count is worth at cost; a minus is a loss to be booked. Gives any amount. Source 47
 * @param counted how much the count finds: 0 or more
 * @param booked how much the books or the log say there is: 0 or more
 * @param cost cost of one unit of the material: a piece, or a unit of weight: 0 or more money per unit
 * @customfunction
 */
function CANDLE_COUNT_DIFFERENCE_COST(counted, booked, cost) { return answer_("count_difference_cost", arguments); }
FUNCTIONS_.count_difference_cost = {
  takes: { counted: "number 4", booked: "number 4", cost: "money per unit" },
  answer: (counted, booked, cost) => (counted - booked) * cost,
  gives: "money 2",
};

/**
 * What one brings after what it still costs to finish and to sell it; nothing where that is a loss. Gives 0 or more
 * money per unit. Source 48
 * @param price what one is expected to sell for: 0 or more
 * @param [finishing] what it still costs to finish one: 0 or more; 0 if left out
 * @param [selling] what it costs to sell one: fees, packing, postage paid by the maker: 0 or more; 0 if left out
 * @customfunction
 */
function CANDLE_NET_REALISABLE_VALUE(price, finishing, selling) { return answer_("net_realisable_value", arguments); }
FUNCTIONS_.net_realisable_value = {
  takes: { price: "money", finishing: "money", selling: "money" },
  left_out: { finishing: 0, selling: 0 },
  answer: (price, finishing, selling) => Math.max(0, price - finishing - selling),
  gives: "money per unit",
};

/**
 * What stock is carried at: the lower of cost and net realisable value, item by item. Gives 0 or more. Source 48
 * @param {Array} amounts how much there is of each item: list, each 0 or more
 * @param {Array} costs what one of each item cost: list, each 0 or more money per unit
 * @param {Array} worth what one of each item brings after the costs to finish and to sell it: list, each 0 or more
 *   money per unit
 * @customfunction
 */
function CANDLE_LOWER_OF_COST(amounts, costs, worth) { return answer_("lower_of_cost", arguments); }
FUNCTIONS_.lower_of_cost = {
  takes: { amounts: "list of number 4", costs: "list of money per unit", worth: "list of money per unit" },
  answer: (amounts, costs, worth) => sum_(each_([amounts, costs, worth], (each_amounts, each_costs, each_worth) => each_amounts * ((each_costs <= each_worth) * each_costs + (each_costs > each_worth) * each_worth))),
  gives: "money",
};

/**
 * What is written off stock at the lower of cost and net realisable value: an expense of the period. Gives 0 or more.
 * Source 48
 * @param {Array} amounts how much there is of each item: list, each 0 or more
 * @param {Array} costs what one of each item cost: list, each 0 or more money per unit
 * @param {Array} worth what one of each item brings after the costs to finish and to sell it: list, each 0 or more
 *   money per unit
 * @customfunction
 */
function CANDLE_WRITE_DOWN(amounts, costs, worth) { return answer_("write_down", arguments); }
FUNCTIONS_.write_down = {
  takes: { amounts: "list of number 4", costs: "list of money per unit", worth: "list of money per unit" },
  answer: (amounts, costs, worth) => sum_(each_([amounts, costs, worth], (each_amounts, each_costs, each_worth) => each_amounts * (each_costs > each_worth) * (each_costs - each_worth))),
  gives: "money",
};

/**
 * How often the average stock was sold or used over the time, all at cost. Gives 0 or more times. Source 49
 * @param goods cost of the goods sold or used over the time: 0 or more
 * @param opening what stock was worth at the start, at cost: 0 or more
 * @param closing what stock was worth at the end, at cost: 0 or more
 * @customfunction
 */
function CANDLE_STOCK_TURNS(goods, opening, closing) { return answer_("stock_turns", arguments); }
FUNCTIONS_.stock_turns = {
  takes: { goods: "money", opening: "money", closing: "money" },
  asks: ["opening+closing > 0"],
  answer: (goods, opening, closing) => ratio_(goods, (opening + closing) / 2),
  gives: "times",
};

/**
 * How many days goods stay in stock on average, from what was sold or used over so many days. Gives 0 or more days.
 * Source 49
 * @param goods cost of the goods sold or used over the time: 0 or more
 * @param opening what stock was worth at the start, at cost: 0 or more
 * @param closing what stock was worth at the end, at cost: 0 or more
 * @param [days] how many days the time has: more than 0, at most 3660 days; 365 if left out
 * @customfunction
 */
function CANDLE_DAYS_IN_STOCK(goods, opening, closing, days) { return answer_("days_in_stock", arguments); }
FUNCTIONS_.days_in_stock = {
  takes: { goods: "money", opening: "money", closing: "money", days: "days 2" },
  left_out: { days: 365 },
  asks: ["goods > 0"],
  answer: (goods, opening, closing, days) => ratio_((opening + closing) / 2, ratio_(goods, days)),
  gives: "days 3",
};

/**
 * How many days your stock lasts, from how much goes in a day. Gives 0 or more days. Source 3
 * @param on_hand how much is on hand: 0 or more
 * @param a_day how much is used or sold in a day: more than 0
 * @customfunction
 */
function CANDLE_DAYS_COVERED(on_hand, a_day) { return answer_("days_covered", arguments); }
FUNCTIONS_.days_covered = {
  takes: { on_hand: "number 4", a_day: "number 6" },
  answer: (on_hand, a_day) => ratio_(on_hand, a_day),
  gives: "days 3",
};

/**
 * The last day on which to use a lot, from the day it was made and how long it keeps. Gives a date such as
 * "2026-03-14". Source 42
 * @param {Date} made the day the lot was made, or came in: a date such as "2026-03-14"
 * @param shelf_life how long it keeps, by the supplier's data sheet or the maker's own tests: whole numbers 0 to 36500
 *   days
 * @customfunction
 */
function CANDLE_USE_BY(made, shelf_life) { return answer_("use_by", arguments); }
FUNCTIONS_.use_by = {
  takes: { made: "date", shelf_life: "days 4" },
  answer: (made, shelf_life) => Math.floor(made) + shelf_life,
  gives: "date",
};

/**
 * The last day on which to use a lot that keeps so many months: the same day of the month, or its last. Gives a date
 * such as "2026-03-14". Source 50
 * @param {Date} made the day the lot was made, or came in: a date such as "2026-03-14"
 * @param months how many months it keeps, by the supplier's data sheet or the maker's own tests: whole numbers 0 to
 *   600 months
 * @customfunction
 */
function CANDLE_USE_BY_MONTHS(made, months) { return answer_("use_by_months", arguments); }
FUNCTIONS_.use_by_months = {
  takes: { made: "date", months: "months" },
  answer: (made, months) => monthsAfter_(made, months),
  gives: "date",
};

/**
 * Days that a lot still keeps; minus where it is past. Gives any amount days. Source 42
 * @param {Date} made the day the lot was made, or came in: a date such as "2026-03-14"
 * @param shelf_life how long it keeps, by the supplier's data sheet or the maker's own tests: whole numbers 0 to 36500
 *   days
 * @param {Date} as_of the day it is counted from: today, or the day of use: a date such as "2026-03-14"
 * @customfunction
 */
function CANDLE_SHELF_DAYS_LEFT(made, shelf_life, as_of) { return answer_("shelf_days_left", arguments); }
FUNCTIONS_.shelf_days_left = {
  takes: { made: "date", shelf_life: "days 4", as_of: "date" },
  answer: (made, shelf_life, as_of) => Math.floor(made) + shelf_life - Math.floor(as_of),
  gives: "days 5",
};

/**
 * Which lots to use for what is needed: the one with the earliest date first. Gives list, each a row of lot, take,
 * use_by, days_left. Source 5
 * @param {Array} lots name or number of each lot: list, each text
 * @param {Array} amounts how much is left of each lot: list, each 0 or more
 * @param {Array} dates the last day on which to use each lot: list, each a date such as "2026-03-14"
 * @param needed how much is needed now: more than 0
 * @param {Date} as_of the day it is counted from: today, or the day of use: a date such as "2026-03-14"
 * @customfunction
 */
function CANDLE_LOTS_TO_USE(lots, amounts, dates, needed, as_of) { return answer_("lots_to_use", arguments); }
FUNCTIONS_.lots_to_use = {
  takes: { lots: "list of text", amounts: "list of number 4", dates: "list of date", needed: "number 6", as_of: "date" },
  steps: stocktake_lots_to_use_,
  gives: "text",
  several: true,
  fields: { lot: "text", take: "number 4", use_by: "date", days_left: "days 5" },
};

// ------------------------------------------------------------
// Label: the net weight as it may be declared, the height of its figures, fire-safety statements

/**
 * Net weight statement for a US label: pounds and ounces with grams beside them, both rounded down. Gives a row of
 * statement, note. Source 51
 * @param net net weight to declare: wax and oil, no vessel, lid or wick tab: 5 to 25000 g
 * @param [decimals] decimals of the ounces at most; the rest is left off, so that the label never says too much: whole
 *   numbers 0 to 2; 2 if left out
 * @customfunction
 */
function CANDLE_NET_WEIGHT_US(net, decimals) { return answer_("net_weight_us", arguments); }
FUNCTIONS_.net_weight_us = {
  takes: { net: "g 8", decimals: "number 16" },
  left_out: { decimals: 2 },
  steps: label_net_weight_us_,
  gives: "text",
  fields: { statement: "text", note: "text" },
};

/**
 * Net weight in metric units as a label may state it, rounded down to three digits, never up. Gives text. Source 52
 * @param net net weight to declare: wax and oil, no vessel, lid or wick tab: 5 to 25000 g
 * @customfunction
 */
function CANDLE_NET_WEIGHT_METRIC(net) { return answer_("net_weight_metric", arguments); }
FUNCTIONS_.net_weight_metric = {
  takes: { net: "g 8" },
  steps: label_net_weight_metric_,
  gives: "text",
};

/**
 * Grams that a label with both declarations is held to: the larger of the two. Gives 0 to 25000 g. Source 53
 * @param ounces the declaration in ounces: 16 for 1 lb: 0 to 1000
 * @param grams the declaration in grams: 0 to 25000 g
 * @customfunction
 */
function CANDLE_BINDING_WEIGHT(ounces, grams) { return answer_("binding_weight", arguments); }
FUNCTIONS_.binding_weight = {
  takes: { ounces: "number 9", grams: "g 9" },
  answer: (ounces, grams) => Math.max(ounces * 28.3495, grams),
  gives: "g 9",
};

/**
 * How far under its declared weight a single candle may be in the EU and GB, by the average system. Gives 0 or more g.
 * Source 54
 * @param net net weight to declare: wax and oil, no vessel, lid or wick tab: 5 to 25000 g
 * @customfunction
 */
function CANDLE_TOLERABLE_NEGATIVE_ERROR(net) { return answer_("tolerable_negative_error", arguments); }
FUNCTIONS_.tolerable_negative_error = {
  takes: { net: "g 8" },
  answer: (net) => (net <= 50 ? roundUp_(round_(net * 0.09, 6), 1) : (net <= 100 ? 4.5 : (net <= 200 ? roundUp_(round_(net * 0.045, 6), 1) : (net <= 300 ? 9 : (net <= 500 ? roundUp_(round_(net * 0.03, 6), 1) : (net <= 1000 ? 15 : (net <= 10000 ? roundUp_(round_(net * 0.015, 6), 1) : (net <= 15000 ? 150 : roundUp_(round_(net * 0.01, 6), 1))))))))),
  gives: "g 2",
};

/**
 * Area of the principal display panel: the whole of a flat side, two fifths of the side of a round package. Gives 0 to
 * 1000000 cm2. Source 55
 * @param height height of the side that is shown; of a lid how far it is across: 10 to 2000 mm
 * @param around width of a flat side; of a round package all the way around; of a lid how far it is across the other
 *   way: 15 to 5000 mm
 * @param {string} [shape] a flat side or lid of the package, the side of a round one, or a round lid that the buyer
 *   sees first: "flat" or "round" or "round lid"; round if left out
 * @customfunction
 */
function CANDLE_PANEL_AREA(height, around, shape) { return answer_("panel_area", arguments); }
FUNCTIONS_.panel_area = {
  takes: { height: "mm", around: "mm 12", shape: "choice 12" },
  left_out: { shape: "round" },
  answer: (height, around, shape) => height * around * (shape === "flat" ? 1 : (shape === "round" ? 0.4 : Math.PI / 4)) / 100,
  gives: "cm2",
};

/**
 * Least height of the figures of a net weight on a US label, by the area of the panel it stands on. Gives a row of
 * height, note. Source 56
 * @param area area of the side that is shown to the buyer: 15 to 1000000 cm2
 * @customfunction
 */
function CANDLE_FIGURE_HEIGHT_US(area) { return answer_("figure_height_us", arguments); }
FUNCTIONS_.figure_height_us = {
  takes: { area: "cm2 2" },
  steps: label_figure_height_us_,
  gives: "text",
  fields: { height: "mm 8", note: "text" },
};

/**
 * Least height of the figures of a declared weight in the EU and GB, by the weight. Gives a row of height, note.
 * Source 57
 * @param net net weight to declare: wax and oil, no vessel, lid or wick tab: 5 to 25000 g
 * @customfunction
 */
function CANDLE_FIGURE_HEIGHT_METRIC(net) { return answer_("figure_height_metric", arguments); }
FUNCTIONS_.figure_height_metric = {
  takes: { net: "g 8" },
  steps: label_figure_height_metric_,
  gives: "text",
  fields: { height: "mm 8", note: "text" },
};

/**
 * Fire-safety statements for the label of a container candle: those of the standard first, then optional ones. Gives
 * list, each a row of standing, statement, note. Source 58
 * @param {string} region where its buyers live: "US" or "EU" or "GB"
 * @customfunction
 */
function CANDLE_FIRE_STATEMENTS(region) { return answer_("fire_statements", arguments); }
FUNCTIONS_.fire_statements = {
  takes: { region: "choice 13" },
  steps: label_fire_statements_,
  gives: "text",
  several: true,
  fields: { standing: "text", statement: "text", note: "text" },
};

// ------------------------------------------------------------
// Measure: tare, whether a scale is fine enough, and what the weighings of a batch say

/**
 * Average weight of what is not sold by weight: vessel, lid, wick and label together. Gives 0 or more g. Source 59
 * @param {Array} tares weights of empty vessels with all that belongs to them: list, each 0 or more g
 * @customfunction
 */
function CANDLE_AVERAGE_TARE(tares) { return answer_("average_tare", arguments); }
FUNCTIONS_.average_tare = {
  takes: { tares: "list of g 2" },
  answer: (tares) => mean_(tares),
  gives: "g 2",
};

/**
 * What a whole package must weigh to hold its declared net weight. Gives 0 or more g. Source 59
 * @param net net weight to declare: wax and oil, no vessel, lid or wick tab: 5 to 25000 g
 * @param tare vessel, lid, wick, label: all that is not sold by weight: 0 or more g
 * @customfunction
 */
function CANDLE_GROSS_WEIGHT(net, tare) { return answer_("gross_weight", arguments); }
FUNCTIONS_.gross_weight = {
  takes: { net: "g 8", tare: "g 2" },
  answer: (net, tare) => net + tare,
  gives: "g 2",
};

/**
 * How far under its declared weight a single package may be in the US, and the coarsest scale step for it. Gives a row
 * of variation, coarsest_step, note. Source 60
 * @param net net weight to declare: wax and oil, no vessel, lid or wick tab: 5 to 25000 g
 * @customfunction
 */
function CANDLE_MAXIMUM_ALLOWABLE_VARIATION(net) { return answer_("maximum_allowable_variation", arguments); }
FUNCTIONS_.maximum_allowable_variation = {
  takes: { net: "g 8" },
  steps: measure_maximum_allowable_variation_,
  gives: "text",
  fields: { variation: "g 2", coarsest_step: "g 2", note: "text" },
};

/**
 * How many packages of a batch the EU and GB test weighs without opening them; all of a small batch. Gives whole
 * numbers 1 to 1000000. Source 61
 * @param batch how many packages the batch has: whole numbers 1 to 1000000
 * @customfunction
 */
function CANDLE_PACKAGES_TO_WEIGH(batch) { return answer_("packages_to_weigh", arguments); }
FUNCTIONS_.packages_to_weigh = {
  takes: { batch: "number 8" },
  answer: (batch) => (batch < 100 ? batch : (batch <= 500 ? 50 : (batch <= 3200 ? 80 : 125))),
  gives: "number 8",
};

/**
 * The two tests of a batch in the EU and GB, on net weights: its average, and its short packages. Gives a row of
 * verdict, mean, mean_needed, short, short_allowed, far_short. Source 61
 * @param net net weight to declare: wax and oil, no vessel, lid or wick tab: 5 to 25000 g
 * @param {Array} weighings net weight of each package weighed: list, each 0 or more g
 * @param batch how many packages the batch has: whole numbers 1 to 1000000
 * @customfunction
 */
function CANDLE_BATCH_TEST(net, weighings, batch) { return answer_("batch_test", arguments); }
FUNCTIONS_.batch_test = {
  takes: { net: "g 8", weighings: "list of g 2", batch: "number 8" },
  steps: measure_batch_test_,
  gives: "text",
  fields: { verdict: "text", mean: "g 2", mean_needed: "g 2", short: "number 2", short_allowed: "number 2", far_short: "number 2" },
};

/**
 * The two requirements of a US lot on the net weights of its sample: its average, and each package by itself. Gives a
 * row of verdict, average_error, spread, error_limit, note, variation, beyond. Source 60
 * @param net net weight to declare: wax and oil, no vessel, lid or wick tab: 5 to 25000 g
 * @param {Array} weighings net weight of each package weighed: list, each 0 or more g
 * @customfunction
 */
function CANDLE_LOT_TEST_US(net, weighings) { return answer_("lot_test_us", arguments); }
FUNCTIONS_.lot_test_us = {
  takes: { net: "g 8", weighings: "list of g 2" },
  steps: measure_lot_test_us_,
  gives: "text",
  fields: { verdict: "text", average_error: "g 10", spread: "g 2", error_limit: "g 2", note: "text", variation: "g 2", beyond: "number 2" },
};

// ------------------------------------------------------------
// Hazard classes of a candle from section 3 of its oils' data sheets, by the limits of the EU

/**
 * Share of the finished candle that a substance in the oil comes to. Gives 0 to 1 of the finished candle. Source 6
 * @param concentration share of the substance in the oil, the upper end of its range: 0 to 1 of the oil
 * @param load fragrance load: oil as a share of wax weight (8% is 0.08): 0 to 0.5 of wax weight
 * @customfunction
 */
function CANDLE_SUBSTANCE_IN_CANDLE(concentration, load) { return answer_("substance_in_candle", arguments); }
FUNCTIONS_.substance_in_candle = {
  takes: { concentration: "of the oil", load: "of wax weight" },
  answer: (concentration, load) => ratio_(concentration * load, 1 + load),
  gives: "of the finished candle 2",
};

/**
 * Load on wax at which a substance reaches a limit in the candle: to stay below it, pour less. Gives 0 to 0.5 of wax
 * weight. Source 6
 * @param concentration share of the substance in the oil, the upper end of its range: 0 to 1 of the oil
 * @param limit share from which the substance counts: more than 0, at most 1 of the finished candle
 * @customfunction
 */
function CANDLE_LOAD_REACHING_LIMIT(concentration, limit) { return answer_("load_reaching_limit", arguments); }
FUNCTIONS_.load_reaching_limit = {
  takes: { concentration: "of the oil", limit: "of the finished candle" },
  asks: ["ROUND(concentration-3*limit,9) >= 0"],
  answer: (concentration, limit) => Math.min(ratio_(limit, concentration - limit), 0.5),
  gives: "of wax weight 3",
};

/**
 * How far a substance's share may change before the candle must be classified again. Gives 0 to 1 of the share it had.
 * Source 62
 * @param share share of the finished candle: 0 to 1 of the finished candle
 * @customfunction
 */
function CANDLE_CHANGE_BEFORE_RECLASSIFYING(share) { return answer_("change_before_reclassifying", arguments); }
FUNCTIONS_.change_before_reclassifying = {
  takes: { share: "of the finished candle 2" },
  answer: (share) => (share <= 0.025 ? 0.3 : (share <= 0.1 ? 0.2 : (share <= 0.25 ? 0.1 : 0.05))),
  gives: "of the share it had",
};

/**
 * M-factor of a substance from its toxicity to water life, where section 3 gives none. Gives 1 or more. Source 63
 * @param toxicity the lowest LC50, EC50 or NOEC in section 12 of the data sheet: more than 0, at most 1 mg/l
 * @param {string} test which test: acute (LC50, EC50), chronic (NOEC), or chronic of a rapidly degradable substance:
 *   "acute" or "chronic" or "chronic, degradable"
 * @customfunction
 */
function CANDLE_M_FACTOR(toxicity, test) { return answer_("m_factor", arguments); }
FUNCTIONS_.m_factor = {
  takes: { toxicity: "mg/l", test: "choice 14" },
  asks: ["ROUND(toxicity*(1+9*(test=\"chronic\")+99*(test=\"chronic, degradable\")),9) <= 1"],
  answer: (toxicity, test) => power_(10, Math.floor(round_(0 - log10_(toxicity), 9) - (test === "chronic") - 2 * (test === "chronic, degradable"))),
  gives: "number 17",
};

// ------------------------------------------------------------
// The label of a candle by its hazard classes: EU rules, to be confirmed where a row says so

/**
 * What to bear in mind with hazard classes and labels from this library. Gives list, each text. Source 64
 * @param {string} [region] where the candle is sold: the rules are those of the EU: "EU" or "GB" or "US"; EU if left
 *   out
 * @customfunction
 */
function CANDLE_HAZARD_CAUTIONS(region) { return answer_("hazard_cautions", arguments); }
FUNCTIONS_.hazard_cautions = {
  takes: { region: "choice 15" },
  left_out: { region: "EU" },
  steps: hazard_label_hazard_cautions_,
  gives: "text",
  several: true,
};

// ------------------------------------------------------------
// Money: tax as it is booked, in the coins of a currency, and paying early

/**
 * Sales tax or VAT of each line of an order, each rounded to the coin, half up. Gives list, each 0 or more. Source 65
 * @param {Array} amounts the amount of each line, all at one rate of tax: list, each 0 or more
 * @param tax rate of sales tax or VAT: 0 to 1 of the price before tax
 * @param {string} [stated] whether the place states its prices with tax in them: "with tax" or "before tax"; before
 *   tax if left out
 * @param [digits] decimals of the currency's smallest coin: whole numbers 0 to 4; 2 if left out
 * @customfunction
 */
function CANDLE_TAX_BY_LINE(amounts, tax, stated, digits) { return answer_("tax_by_line", arguments); }
FUNCTIONS_.tax_by_line = {
  takes: { amounts: "list of money", tax: "of the price before tax", stated: "choice 9", digits: "number 7" },
  left_out: { stated: "before tax", digits: 2 },
  steps: money_tax_by_line_,
  gives: "money",
  several: true,
};

/**
 * Sales tax or VAT of an order at one rate, worked out on its total and rounded once. Gives 0 or more. Source 65
 * @param {Array} amounts the amount of each line, all at one rate of tax: list, each 0 or more
 * @param tax rate of sales tax or VAT: 0 to 1 of the price before tax
 * @param {string} [stated] whether the place states its prices with tax in them: "with tax" or "before tax"; before
 *   tax if left out
 * @param [digits] decimals of the currency's smallest coin: whole numbers 0 to 4; 2 if left out
 * @param {string} [rounding] to the nearest coin, half up; or down, where the tax office allows it on the total of an
 *   invoice: "nearest" or "down"; nearest if left out
 * @customfunction
 */
function CANDLE_TAX_BY_ORDER(amounts, tax, stated, digits, rounding) { return answer_("tax_by_order", arguments); }
FUNCTIONS_.tax_by_order = {
  takes: { amounts: "list of money", tax: "of the price before tax", stated: "choice 9", digits: "number 7", rounding: "choice 16" },
  left_out: { stated: "before tax", digits: 2, rounding: "nearest" },
  answer: (amounts, tax, stated, digits, rounding) => (rounding === "down" ? roundDown_(round_(ratio_(sum_(amounts) * tax, 1 + tax * (stated === "with tax")), 6), digits) : round_(ratio_(sum_(amounts) * tax, 1 + tax * (stated === "with tax")), digits)),
  gives: "money",
};

/**
 * Discount for paying an invoice early, on what is left of it after returns. Gives 0 or more. Source 66
 * @param invoice amount of the invoice: 0 or more
 * @param discount discount for paying early: 0 to 0.5 of the invoice
 * @param [returned] taken back or allowed off before it is paid: 0 or more; 0 if left out
 * @customfunction
 */
function CANDLE_EARLY_DISCOUNT(invoice, discount, returned) { return answer_("early_discount", arguments); }
FUNCTIONS_.early_discount = {
  takes: { invoice: "money", discount: "of the invoice", returned: "money" },
  left_out: { returned: 0 },
  asks: ["invoice >= returned"],
  answer: (invoice, discount, returned) => round_((invoice - returned) * discount, 2),
  gives: "money",
};

/**
 * What to pay in the days of the discount. Gives 0 or more. Source 66
 * @param invoice amount of the invoice: 0 or more
 * @param discount discount for paying early: 0 to 0.5 of the invoice
 * @param [returned] taken back or allowed off before it is paid: 0 or more; 0 if left out
 * @customfunction
 */
function CANDLE_EARLY_PAYMENT(invoice, discount, returned) { return answer_("early_payment", arguments); }
FUNCTIONS_.early_payment = {
  takes: { invoice: "money", discount: "of the invoice", returned: "money" },
  left_out: { returned: 0 },
  asks: ["invoice >= returned"],
  answer: (invoice, discount, returned) => invoice - returned - round_((invoice - returned) * discount, 2),
  gives: "money",
};

/**
 * What passing over an early-payment discount costs, as a simple rate a year. Gives 0 or more of the amount a year.
 * Source 66
 * @param discount discount for paying early: 0 to 0.5 of the invoice
 * @param early days in which the discount is given: whole numbers 0 to 365 days
 * @param due days after which the whole is due: whole numbers 0 to 365 days
 * @param [year] days that a year is counted as: whole numbers 360 to 366 days; 360 if left out
 * @customfunction
 */
function CANDLE_COST_OF_PAYING_LATE(discount, early, due, year) { return answer_("cost_of_paying_late", arguments); }
FUNCTIONS_.cost_of_paying_late = {
  takes: { discount: "of the invoice", early: "days", due: "days", year: "days 6" },
  left_out: { year: 360 },
  asks: ["early < due"],
  answer: (discount, early, due, year) => ratio_(ratio_(year, due - early) * discount, 1 - discount),
  gives: "of the amount a year",
};

// ------------------------------------------------------------
// Books: entries and their balance, cost of goods made and sold, the lines of a tax schedule

/**
 * Entries whose debits and credits differ, and by how much; none where every one balances. Gives list, each a row of
 * entry, debits, credits, over. Source 67
 * @param {Array} entries number or date of the entry that each line is of: list, each text
 * @param {Array} debits debit of each line; blank where it is a credit: list, each 0 or more or blank
 * @param {Array} credits credit of each line; blank where it is a debit: list, each 0 or more or blank
 * @customfunction
 */
function CANDLE_ENTRIES_OUT_OF_BALANCE(entries, debits, credits) { return answer_("entries_out_of_balance", arguments); }
FUNCTIONS_.entries_out_of_balance = {
  takes: { entries: "list of text", debits: "list of money 4", credits: "list of money 4" },
  steps: books_entries_out_of_balance_,
  gives: "text",
  several: true,
  fields: { entry: "text", debits: "money", credits: "money", over: "money 2" },
};

/**
 * Balance of every account of a journal, in the order met, on the side it falls; the last line is the total. Gives
 * list, each a row of account, debit, credit. Source 67
 * @param {Array} accounts the account of each line: list, each text
 * @param {Array} debits debit of each line; blank where it is a credit: list, each 0 or more or blank
 * @param {Array} credits credit of each line; blank where it is a debit: list, each 0 or more or blank
 * @customfunction
 */
function CANDLE_TRIAL_BALANCE(accounts, debits, credits) { return answer_("trial_balance", arguments); }
FUNCTIONS_.trial_balance = {
  takes: { accounts: "list of text", debits: "list of money 4", credits: "list of money 4" },
  steps: books_trial_balance_,
  gives: "text",
  several: true,
  fields: { account: "text", debit: "money 4", credit: "money 4" },
};

/**
 * Balanced journal entries for a period's figures, from materials bought to candles sold. Gives list, each a row of
 * event, account, debit, credit. Source 67
 * @param bought bought in the period, less returns and discounts, freight in with it: 0 or more
 * @param used materials used in the period: 0 or more
 * @param labour paid labour of making; nothing for the maker's own time: 0 or more
 * @param overhead overhead of making: 0 or more
 * @param made cost of goods made: 0 or more
 * @param sold cost of goods, over the period: 0 or more
 * @param sales sales of the period, before tax: 0 or more
 * @param [tax] sales tax or VAT charged on them, owed to the tax office: 0 or more; 0 if left out
 * @param [fees] fees that places and card companies kept back: 0 or more; 0 if left out
 * @param [short] cost of what the count found missing: 0 or more; 0 if left out
 * @customfunction
 */
function CANDLE_PERIOD_ENTRIES(bought, used, labour, overhead, made, sold, sales, tax, fees, short) { return answer_("period_entries", arguments); }
FUNCTIONS_.period_entries = {
  takes: { bought: "money", used: "money", labour: "money", overhead: "money", made: "money", sold: "money", sales: "money", tax: "money", fees: "money", short: "money" },
  left_out: { tax: 0, fees: 0, short: 0 },
  steps: books_period_entries_,
  gives: "text",
  several: true,
  fields: { event: "text", account: "text", debit: "money 4", credit: "money 4" },
};

/**
 * Materials used in a period, from what was there, what was bought and what is left. Gives 0 or more. Source 68
 * @param opening stock at the start of the period, at making cost: 0 or more
 * @param bought bought in the period, less returns and discounts, freight in with it: 0 or more
 * @param closing stock at the end of the period, at making cost: 0 or more
 * @customfunction
 */
function CANDLE_MATERIALS_USED(opening, bought, closing) { return answer_("materials_used", arguments); }
FUNCTIONS_.materials_used = {
  takes: { opening: "money", bought: "money", closing: "money" },
  asks: ["opening+bought >= closing"],
  answer: (opening, bought, closing) => opening + bought - closing,
  gives: "money",
};

/**
 * Making cost of the candles finished in a period; opening and closing are work in hand, half-made. Gives 0 or more.
 * Source 68
 * @param materials materials used in the period: 0 or more
 * @param labour paid labour of making; nothing for the maker's own time: 0 or more
 * @param overhead overhead of making: 0 or more
 * @param [opening] stock at the start of the period, at making cost: 0 or more; 0 if left out
 * @param [closing] stock at the end of the period, at making cost: 0 or more; 0 if left out
 * @customfunction
 */
function CANDLE_COST_OF_GOODS_MADE(materials, labour, overhead, opening, closing) { return answer_("cost_of_goods_made", arguments); }
FUNCTIONS_.cost_of_goods_made = {
  takes: { materials: "money", labour: "money", overhead: "money", opening: "money", closing: "money" },
  left_out: { opening: 0, closing: 0 },
  asks: ["opening+materials+labour+overhead >= closing"],
  answer: (materials, labour, overhead, opening, closing) => opening + materials + labour + overhead - closing,
  gives: "money",
};

/**
 * Making cost of the candles sold in a period, from finished stock before, made, and left. Gives 0 or more. Source 68
 * @param opening stock at the start of the period, at making cost: 0 or more
 * @param made cost of goods made: 0 or more
 * @param closing stock at the end of the period, at making cost: 0 or more
 * @customfunction
 */
function CANDLE_COST_OF_GOODS_SOLD(opening, made, closing) { return answer_("cost_of_goods_sold", arguments); }
FUNCTIONS_.cost_of_goods_sold = {
  takes: { opening: "money", made: "money", closing: "money" },
  asks: ["opening+made >= closing"],
  answer: (opening, made, closing) => opening + made - closing,
  gives: "money",
};

/**
 * Overhead that was paid and not charged to candles by its rate; minus where more was charged. Gives any amount.
 * Source 29
 * @param actual overhead of making that was paid: 0 or more
 * @param charged overhead that was charged to candles by its rate: 0 or more
 * @customfunction
 */
function CANDLE_OVERHEAD_UNCHARGED(actual, charged) { return answer_("overhead_uncharged", arguments); }
FUNCTIONS_.overhead_uncharged = {
  takes: { actual: "money", charged: "money" },
  answer: (actual, charged) => actual - charged,
  gives: "money 2",
};

/**
 * Cost of goods sold as a US sole owner's Schedule C asks for it, lines 35 to 42. Gives a row of line_35, line_36,
 * line_37, line_38, line_39, line_40, line_41, line_42. Source 69
 * @param opening stock at the start of the period, at making cost: 0 or more
 * @param bought bought in the period, less returns and discounts, freight in with it: 0 or more
 * @param closing stock at the end of the period, at making cost: 0 or more
 * @param [labour] paid labour of making; nothing for the maker's own time: 0 or more; 0 if left out
 * @param [supplies] supplies used in making that are not in stock: 0 or more; 0 if left out
 * @param [other] other costs of making: 0 or more; 0 if left out
 * @param [withdrawn] cost of what was taken for the maker's own use: 0 or more; 0 if left out
 * @customfunction
 */
function CANDLE_COST_OF_GOODS_SCHEDULE(opening, bought, closing, labour, supplies, other, withdrawn) { return answer_("cost_of_goods_schedule", arguments); }
FUNCTIONS_.cost_of_goods_schedule = {
  takes: { opening: "money", bought: "money", closing: "money", labour: "money", supplies: "money", other: "money", withdrawn: "money" },
  left_out: { labour: 0, supplies: 0, other: 0, withdrawn: 0 },
  asks: ["bought >= withdrawn", "opening+bought-withdrawn+labour+supplies+other >= closing"],
  steps: books_cost_of_goods_schedule_,
  gives: "text",
  fields: { line_35: "money", line_36: "money", line_37: "money", line_38: "money", line_39: "money", line_40: "money", line_41: "money", line_42: "money" },
};

// ------------------------------------------------------------
// Measure: a value in another unit

/**
 * A value in another unit of its kind, by exact factors: weights, volumes, lengths, temperatures, times. Gives any
 * amount. Source 70
 * @param value a value in the first unit: any amount
 * @param {string} unit a unit as you write it: g, kg, oz, lb, ml, fl oz (the US one), imp fl oz, mm, in, C, F, F
 *   difference, min, h: text
 * @param {string} to the unit wanted, written the same way: text
 * @customfunction
 */
function CANDLE_CONVERT(value, unit, to) { return answer_("convert", arguments); }
FUNCTIONS_.convert = {
  takes: { value: "number 18", unit: "text", to: "text" },
  answer: (value, unit, to) => convert_(value, unit, to),
  gives: "number 18",
};

// ------------------------------------------------------------
// What was bought: its cost with freight, duty and tax

/**
 * Cost of a line of a purchase with its share of freight and duty, and the tax you cannot claim back. Gives 0 or more.
 * Source 28
 * @param price an amount of money: 0 or more
 * @param [returned] discount, and what the supplier gave back: 0 or more; 0 if left out
 * @param [shipping] the line's share of freight and duty: 0 or more; 0 if left out
 * @param [tax] tax that you cannot claim back: 0 or more; 0 if left out
 * @customfunction
 */
function CANDLE_LANDED_COST(price, returned, shipping, tax) { return answer_("landed_cost", arguments); }
FUNCTIONS_.landed_cost = {
  takes: { price: "money", returned: "money", shipping: "money", tax: "money" },
  left_out: { returned: 0, shipping: 0, tax: 0 },
  asks: ["returned <= price"],
  answer: (price, returned, shipping, tax) => price - returned + shipping + tax,
  gives: "money",
};

// ------------------------------------------------------------
// Sources, by the number that stands with a function

// 1  elementary geometry; OpenStax, Prealgebra 2e (cylinder) and Calculus (solids cut across)
// 2  water's density: Tanaka et al., Metrologia 38 (2001) 301, from memory, checked against IAPWS-95; weighing in air:
//    the buoyancy correction of the conventional mass (air 0.0012, weights 8.0 g/ml), from memory
// 3  algebra from the definitions
// 4  density is mass over volume: OpenStax, Chemistry 2e, measurements
// 5  common practice, no source
// 6  percent by mass: OpenStax, Chemistry 2e, section on other units for solution concentrations
// 7  to the nearest step: common practice, no source; limit of error of half a step for each reading; GUM, from memory
// 8  derived: a material's share in an oil is at most its own limit over that oil's certified limit
// 9  mass balance of a mixture; OpenStax, Intermediate Algebra 2e, mixture applications
// 10  heat lost is heat gained: OpenStax, College Physics 2e, heat capacity; melted wax 2.2 second-hand, oil taken to
//    warm as wax does, no source
// 11  thermal expansion: OpenStax, College Physics 2e, thermal expansion of solids and liquids; 0.00085 per C for
//    melted wax worked from alkanes in a reference library
// 12  derived from the two densities; wax draws together by 5 to 15 %, second-hand, texts disagree
// 13  heat to warm and to melt: OpenStax, College Physics 2e, temperature change and heat capacity, phase change;
//    defaults for paraffin second-hand: 2.1 set, 2.2 melted, 190 (150 to 220) to melt: put in your data sheet's
// 14  power times time: OpenStax, College Physics 2e, phase change; Cengel, heat transfer, example 1-2, second-hand
// 15  flash point as the NIST glossary of fire terms defines it; how near is common practice, no source
// 16  Newton's law of cooling: OpenStax, Calculus volume 2, exponential growth and decay
// 17  Newton's law of cooling: OpenStax, Calculus volume 2, exponential growth and decay; loss to still air as the 5/4
//    power of how much warmer it is: O'Sullivan, American Journal of Physics 58 (1990), page 956, from memory
// 18  straight line by least squares, interval of its slope: NIST StRD (Norris), ISO/TS 28037 by its examples
// 19  interval of a mean: OpenStax, Introductory Statistics 2e, confidence intervals; of one more, from memory
// 20  elementary geometry; OpenStax, Prealgebra 2e (cylinder) and Calculus (solids cut across); the depth: common
//    practice, no source
// 21  exact (Fieller) interval of a calibration line: Graybill and Iyer, Regression Analysis, 6, second-hand
// 22  lower heating values worked from heats of formation in a reference library: paraffin 43.5, stearic acid 36.9;
//    put in your data sheet's
// 23  straight line by least squares, interval of its slope: NIST StRD (Norris), ISO/TS 28037 by its examples; an hour
//    for each inch: common practice, no source
// 24  line through the origin: NIST StRD (NoInt1); a candle's flame grows with its fuel: Sunderland et al.,
//    Proceedings of the Combustion Institute 33 (2011) 2489, second-hand
// 25  EN 15493 by trade and test-house summaries, unconfirmed: check against the standard; a maker's log is no
//    conformity test
// 26  common practice, no source: one thing is changed at a time, and a single piece proves nothing
// 27  common practice, no source; what stops a burn: EN 15493 by trade and test-house summaries, unconfirmed
// 28  cost of purchase, freight and tax not recovered in it: IAS 2, from summaries; OpenStax, Financial Accounting 6
// 29  job cost: OpenStax, Managerial Accounting, chapter 4
// 30  largest remainder (Hamilton): OpenStax, Contemporary Mathematics 11.4
// 31  predetermined overhead rate: OpenStax, Managerial Accounting 4.4
// 32  markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2
// 33  half away from zero: sales tax rules of US Streamlined states, HMRC
// 34  cost, volume and profit: OpenStax, Managerial Accounting, chapter 3
// 35  contribution margin per hour of labour: Accounting for Managers (Saylor), 6.5
// 36  ordinary commission on what is sold: accountingformanagement.org, consignment, by its example
// 37  dimensional weight: carriers' published rules; IATA's 6000 cubic centimetres a kilogram, second-hand
// 38  economic order quantity: the library stockpyl, after Snyder and Shen, example 3.1
// 39  order quantity with a price on all units: the library stockpyl, after Snyder and Shen, chapter 3
// 40  reorder point with demand and lead time normal: Stevenson, Operations Management, 14th edition, chapter 12
// 41  largest remainder (OpenStax, Contemporary Mathematics 11.4); even shares up to what each wants: algebra
// 42  days of the calendar
// 43  production and materials budgets: OpenStax, Managerial Accounting 7.2
// 44  level and chase plans: a textbook exercise with its answers, second-hand (homeworkhost 454395)
// 45  Wagner and Whitin's lot sizes: the library stockpyl, after Snyder and Shen, example 3.9
// 46  FIFO, average and LIFO, periodic and perpetual: OpenStax, Financial Accounting 10.1 to 10.3
// 47  adjusting to a count: OpenStax, Financial Accounting 6.3
// 48  lower of cost and net realisable value: IAS 2, from summaries; OpenStax, Financial Accounting 10.1
// 49  inventory turnover and days: OpenStax, Financial Accounting 10.5
// 50  months of the calendar, as EDATE counts them: ISO/IEC 26300 (OpenFormula), from memory
// 51  15 U.S.C. 1453(a)(3); 16 CFR 500.19; under a pound in ounces: 16 CFR 500.9, from memory; down, never up: a NIST
//    fact sheet, second-hand; two decimals: American Samoa, Admin. Code 27.0632
// 52  rounded down, three digits: 16 CFR 500.19(b); Directive 76/211/EEC, Annex I, 1.1
// 53  NIST Handbook 133 (2026), 2.3.3; factor of 16 CFR 500.19(a)
// 54  Council Directive 76/211/EEC, Annex I, 2.4; rounding: GOV.UK, Packaged goods
// 55  16 CFR 500.21(a)
// 56  16 CFR 500.21(b), by a page on the parallel FDA rule
// 57  Directive 76/211/EEC by a summary of USDA Foreign Agricultural Service
// 58  ASTM F2058 (US); EN 15494:2019 (EU, GB), both by reports of others
// 59  NIST Handbook 133 (2026), 2.3.5 and 2.3.6
// 60  NIST Handbook 133 (2026), 2.2 and 2.3; its tables 2-1 and 2-5 from memory
// 61  UK SI 2006/659, Schedule 2, 3 and 4; Directive 76/211/EEC, Annex II
// 62  Regulation (EC) No 1272/2008 (CLP), Annex I: limits as consolidated 2026-05-01, read in a transcription that
//    quotes its tables; wording of 2025-09-01; Table 1.2
// 63  Regulation (EC) No 1272/2008 (CLP), Annex I: limits as consolidated 2026-05-01, read in a transcription that
//    quotes its tables; wording of 2025-09-01; Table 4.1.3
// 64  drawn up from the cautions of the sources named in hazard_of_candle; common practice
// 65  Streamlined Sales and Use Tax Agreement 324 (US); HMRC VATREC12010 to 12030 (UK); CJEU C-484/06 (EU), headline
//    only: check against the tax office's own page
// 66  OpenStax, Financial Accounting 6.3; Principles of Finance 19.2
// 67  double entry: OpenStax, Financial Accounting, chapters 3 and 6; Managerial Accounting 4.7
// 68  schedules of cost of goods: OpenStax, Managerial Accounting 2.1 and 4.3
// 69  IRS Form 1040 Schedule C, Part III, by Publication 334 (editions of 2013 to 2019)
// 70  units are defined by exact factors (international yard and pound agreement of 1959; US customary gallon)

/**
 * Why a candle function has no answer, in words: its name, then the arguments that it was given.
 * @param {string} name the function, such as "oil_for_wax"
 * @param {...*} values what the function was given, in the same order
 * @customfunction
 */
function CANDLE_WHY(name, ...values) {
  return why_(name, values);
}

// ------------------------------------------------------------
// Steps that functions share

function fragrance_load_on_scale_(wax, load, step) {
  let highest, lowest, shown_oil, shown_wax;
  [shown_wax, shown_oil] = [wax, wax * load].map((each) => round_(rounding_whole_steps_(ratio_(each, step)) * step, 9));
  lowest = ratio_(most_([0.0, shown_oil - ratio_(step, 2)]), shown_wax + ratio_(step, 2));
  highest = ratio_(shown_oil + ratio_(step, 2), shown_wax - ratio_(step, 2));
  return ({ wax: shown_wax, oil: shown_oil, load: ratio_(shown_oil, shown_wax), lowest: lowest, highest: highest });
}

function rounding_whole_steps_(amount) {
  return round_(round_(amount, 6), 0);
}

function fragrance_oil_parts_(oil, shares) {
  return shares.map((share) => oil * share);
}

function fragrance_highest_load_decided_by_(wax, oil, limit, wax_basis = "of wax", oil_basis = "of wax") {
  let deciding, first, last, loads, lowest;
  loads = fragrance_three_(wax, oil, limit, wax_basis, oil_basis);
  lowest = least_([...loads.values()]);
  deciding = [...loads].filter(([which, load]) => round_(load - lowest, 9) === 0).map(([which, load]) => which);
  if (round_(lowest - fragrance_MOST_, 9) >= 0 && isSame_(length_(deciding), length_(loads))) {
    return `none of the three: no load above ${fixed_(fragrance_MOST_ * 100, 0) + "%"} of wax weight is counted with`;
  }
  [first, last] = [deciding.slice(undefined, -1), at_(deciding, -1)];
  return isTrue_(first) ? `${items_(first).join(", ")} and ${last}` : last;
}

function fragrance_three_(wax, oil, limit, wax_basis, oil_basis) {
  return new Map([["the wax's supplier", least_([fragrance_MOST_, ratio_(wax, 1 - wax * (wax_basis === "of total"))])], ["the oil's supplier", least_([fragrance_MOST_, ratio_(oil, 1 - oil * (oil_basis === "of total"))])], ["the certificate", ratio_(least_([limit, fragrance_MOST_OF_TOTAL_]), 1 - least_([limit, fragrance_MOST_OF_TOTAL_]))]]);
}

const fragrance_MOST_ = 0.5;

const fragrance_MOST_OF_TOTAL_ = 0.3333333333333333;

function wax_wax_parts_(wax, shares) {
  return shares.map((share) => wax * share);
}

function heat_melt_cautions_(temperature, ceiling = null, wax_flash = null, oil_flash = null, near = 20.0) {
  let lines;
  lines = [];
  if (ceiling === null) {
    lines.push("no ceiling typed for the wax: see its supplier's data sheet");
  } else {
    if (temperature > ceiling) {
      lines.push(`above the wax supplier's stated ceiling of ${heat_degrees_(ceiling)}: let it cool`);
    }
  }
  lines = added_(lines, added_(heat_near_flash_("wax", temperature, wax_flash, near), heat_near_flash_("oil", temperature, oil_flash, near)));
  return [...items_(lines), heat_ALWAYS_];
}

function heat_degrees_(temperature) {
  return `${general_(temperature, 4)} C (${general_(temperature * 1.8 + 32, 4)} F)`;
}

function heat_near_flash_(what, temperature, flash, near) {
  let within;
  if (flash === null) {
    return [`no flash point typed for the ${what}: see its safety data sheet`];
  }
  if (temperature >= flash) {
    return [`at or above the ${what}'s flash point of ${heat_degrees_(flash)}: heat off, no flame or spark near`];
  }
  if (temperature >= flash - near) {
    within = `within ${general_(near, 4)} C (${general_(near * 1.8, 4)} F) of the ${what}'s flash point of ${heat_degrees_(flash)}`;
    return [`${within}: heat down, no flame or spark near`];
  }
  return [];
}

const heat_ALWAYS_ = "hot wax burns skin and can catch fire: stay with the pot, keep flames away and water out of it; the suppliers' data sheets come first";

function cooling_cooling_forecast_(first, second, minutes, room, melting, temperature, reading = 0.5) {
  let expected, latest, notes, soonest, times;
  expected = minutes * cooling_newton_(first - room, second - room, temperature - room);
  times = cooling_at_the_worst_(minutes, first - room, second - room, temperature - room, reading);
  latest = isIn_(null, times) ? null : most_(items_(times).filter((time) => time !== null));
  soonest = least_(either_(items_(times).filter((time) => time !== null), () => [expected]));
  notes = ["what may be off is the readings and how the pot loses its heat; read the pot again on the way"];
  if (latest === null) {
    notes.push("the readings are too near each other, or to the room, to say how late: wait for a second one");
  }
  if (expected > 2 * minutes) {
    notes.push("drawn on further than the readings lie apart");
  }
  return ({ expected: expected, soonest: most_([minutes, soonest]), latest: latest, note: items_(notes).join("; ") });
}

function cooling_newton_(first, second, wanted) {
  return ratio_(ln_(ratio_(first, wanted)), ln_(ratio_(first, second)));
}

function cooling_at_the_worst_(minutes, first, second, wanted, off) {
  let aim, cool, cooling, hot, times;
  times = [];
  for (const signs of combined_([-off, off], 4)) {
    [hot, cool, aim] = inRows_([first, second, wanted], signs).map(([above, sign]) => added_(above, sign) - at_(signs, 3));
    cooling = hot > cool && cool > 0 && 0 < aim;
    for (const law of [cooling_newton_, cooling_still_air_]) {
      times.push(isTrue_(cooling) ? minutes * law(hot, cool, least_([aim, cool])) : null);
    }
  }
  return times;
}

function cooling_still_air_(first, second, wanted) {
  let start;
  start = power_(first, -0.25);
  return ratio_(power_(wanted, -0.25) - start, power_(second, -0.25) - start);
}

function burn_burn_rate_between_(hours, weights, confidence = 0.95) {
  let line, rate, rough, swing;
  line = statistics_line_(hours, weights);
  [rate, swing] = [-line.slope, burn_swing_of_(line, confidence)];
  if (swing === null) {
    return ({ rate: rate, low: null, high: null, note: burn_WITHOUT_INTERVAL_ });
  }
  rough = swing >= rate ? "; the low end is not above 0: too few or too rough weighings" : "";
  return ({ rate: rate, low: rate - swing, high: added_(rate, swing), note: added_(burn_told_of_(line.readings, confidence), rough) });
}

function statistics_line_(xs, ys) {
  let across, left, scatter, slope, spread, up;
  [across, up] = [ratio_(sum_(xs), length_(xs)), ratio_(sum_(ys), length_(ys))];
  spread = sum_(items_(xs).map((x) => power_(x - across, 2)));
  slope = ratio_(sum_(inRows_(xs, ys).map(([x, y]) => (x - across) * (y - up))), spread);
  left = sum_(inRows_(xs, ys).map(([x, y]) => power_(y - up - slope * (x - across), 2)));
  scatter = length_(xs) > 2 ? root_(ratio_(left, length_(xs) - 2)) : 0.0;
  return ({ readings: length_(xs), across: across, up: up, spread: spread, slope: slope, scatter: scatter });
}

function burn_swing_of_(line, confidence) {
  return line.readings > 2 ? statistics_Line_slope_swing_(line, confidence) : null;
}

function statistics_Line_slope_swing_(self, confidence) {
  return ratio_(statistics_Line__t_(self, confidence) * self.scatter, root_(self.spread));
}

function statistics_Line__t_(self, confidence) {
  return tQuantile_(2 * (1 - ratio_(1 + confidence, 2)), self.readings - 2);
}

const burn_WITHOUT_INTERVAL_ = "two weighings give a rate without an interval: weigh more often";

function burn_told_of_(count, confidence) {
  return `${general_(confidence * 100, 6)} % interval, ${count} weighings of one candle`;
}

function burn_rates_of_candles_(rates, confidence = 0.95) {
  let few, mean, note, of_mean, of_next;
  mean = burn_mean_(rates);
  [of_mean, of_next] = burn_swings_of_candles_(rates, confidence);
  few = length_(rates) < 3 ? ": test at least three" : "";
  note = `${general_(confidence * 100, 6)} % intervals, ${length_(rates)} candles${few}`;
  return ({ mean: mean, low: mean - of_mean, high: added_(mean, of_mean), next_low: mean - of_next, next_high: added_(mean, of_next), note: note });
}

function burn_mean_(values) {
  return ratio_(sum_(values), length_(values));
}

function burn_swings_of_candles_(rates, confidence) {
  let count, mean, spread, t;
  [count, mean] = [length_(rates), burn_mean_(rates)];
  spread = root_(ratio_(sum_(items_(rates).map((rate) => power_(rate - mean, 2))), count - 1));
  t = tQuantile_(2 * (1 - ratio_(1 + confidence, 2)), count - 1);
  return [ratio_(t * spread, root_(count)), t * spread * root_(1 + ratio_(1, count))];
}

function burn_time_burn_time_from_log_(hours, weights, fill, stays = 0.0, confidence = 0.95) {
  let burnt, high, line, low, note, rate, swing;
  line = statistics_line_(hours, weights);
  [rate, swing, burnt] = [-line.slope, burn_swing_of_(line, confidence), fill - stays];
  if (swing === null) {
    return ({ hours: ratio_(burnt, rate), low: null, high: null, label: null, note: `${burn_time_WITHOUT_INTERVAL_} before you put hours on a label` });
  }
  [low, note] = [ratio_(burnt, added_(rate, swing)), burn_told_of_(line.readings, confidence) + "; candles differ, so burn several"];
  high = swing < rate ? ratio_(burnt, rate - swing) : null;
  return ({ hours: ratio_(burnt, rate), low: low, high: high, label: Number(Math.floor(round_(low, 6))), note: note });
}

const burn_time_WITHOUT_INTERVAL_ = "two weighings give a rate without an interval: weigh more often";

function burn_time_hours_left_between_(hours, weights, end, confidence = 0.95) {
  let between, high, left, line, low, note;
  line = statistics_line_(hours, weights);
  left = burn_time_left_(statistics_Line_where_(line, end), hours);
  if (line.readings < 3) {
    return ({ left: left, low: null, high: null, note: burn_time_WITHOUT_INTERVAL_ });
  }
  note = burn_told_of_(line.readings, confidence);
  if (left > most_(hours) - least_(hours)) {
    note = note + "; drawn on further than the log is long: weigh on";
  }
  between = statistics_Line_where_between_(line, end, confidence);
  if (between === null) {
    return ({ left: left, low: null, high: null, note: `${note}; ${burn_time_TOO_ROUGH_}` });
  }
  [low, high] = items_(between).map((when) => burn_time_left_(when, hours));
  return ({ left: left, low: low, high: high, note: note });
}

function statistics_Line_where_(self, y) {
  return self.across + ratio_(y - self.up, self.slope);
}

function burn_time_left_(when, hours) {
  return when - most_(hours);
}

function statistics_Line_where_between_(self, y, confidence) {
  let away, half, level, swing;
  level = power_(ratio_(statistics_Line_slope_swing_(self, confidence), self.slope), 2);
  if (level >= 1) {
    return null;
  }
  away = ratio_(y - self.up, self.slope);
  swing = ratio_(statistics_Line__t_(self, confidence) * self.scatter, Math.abs(self.slope));
  half = swing * root_((1 + ratio_(1, self.readings)) * (1 - level) + ratio_(power_(away, 2), self.spread));
  return [self.across + ratio_(away - half, 1 - level), self.across + ratio_(added_(away, half), 1 - level)];
}

const burn_time_TOO_ROUGH_ = "the weighings are too rough to say when; weigh on";

function pool_pool_forecast_(hours, widths, diameter) {
  let line, notes, reaches, usual;
  line = statistics_line_(hours, widths);
  [reaches, usual] = [statistics_Line_where_(line, diameter), ratio_(diameter, pool_INCH_)];
  notes = ["one hour an inch is common practice, not measured"];
  if (reaches > most_(hours)) {
    notes.push("drawn on beyond the last reading");
  }
  if (reaches > pool_LONGEST_BURN_) {
    notes.push(pool_PAST_);
  }
  return ({ growth: line.slope, reaches: reaches, usual: usual, note: items_(notes).join("; ") });
}

const pool_INCH_ = 25.4;

const pool_LONGEST_BURN_ = 4.0;

const pool_PAST_ = "past the four hours usual for one burn";

function pool_flame_height_high_(rate, rates, heights, confidence = 0.95) {
  let count, each, off, swing;
  [each, count] = [pool_each_(rates, heights), length_(rates)];
  off = ratio_(sum_(inRows_(rates, heights).map(([at, height]) => power_(height - each * at, 2))), count - 1);
  swing = root_(off * (1 + ratio_(power_(rate, 2), sum_(rates.map((at) => power_(at, 2))))));
  return rate * each + tQuantile_(2 * (1 - ratio_(1 + confidence, 2)), count - 1) * swing;
}

function pool_each_(rates, heights) {
  let products;
  products = sum_(inRows_(rates, heights).map(([rate, height]) => rate * height));
  return ratio_(products, sum_(items_(rates).map((rate) => power_(rate, 2))));
}

function wick_burn_verdict_(flame = null, other_burning = null, vessel = null, afterglow = null, lit_again = null, targets = null, measured = null, lowest = null, highest = null, tallest = 75.0, seen = null) {
  let looked_at, misses, missing, stops, unmeasured;
  looked_at = new Map([["flame", flame], ["other burning", other_burning], ["vessel", vessel], ["afterglow", afterglow], ["lit again", lit_again]]);
  stops = added_(wick_stops_(flame, other_burning, vessel, afterglow, lit_again, tallest), wick_stops_seen_(either_(seen, () => [])));
  if (isTrue_(stops)) {
    return ({ verdict: wick_STOP_, reasons: [...items_(stops), wick_UNCONFIRMED_].join("; ") });
  }
  missing = [...looked_at].filter(([name, value]) => value === null).map(([name, value]) => `${name} not looked at`);
  [misses, unmeasured] = wick_against_targets_(either_(targets, () => []), either_(measured, () => []), either_(lowest, () => []), either_(highest, () => []));
  if (isTrue_(missing) || isTrue_(unmeasured)) {
    return ({ verdict: wick_NOT_JUDGED_, reasons: items_(added_(added_(missing, unmeasured), misses)).join("; ") });
  }
  if (isTrue_(misses)) {
    return ({ verdict: wick_MISSES_, reasons: items_(misses).join("; ") });
  }
  return ({ verdict: wick_MEETS_, reasons: `no stop condition seen (${wick_UNCONFIRMED_}); every target typed is met` });
}

function wick_stops_(flame, other_burning, vessel, afterglow, lit_again, tallest) {
  let found;
  found = new Map([[`flame ${general_(either_(flame, () => 0), 6)} mm, over ${general_(tallest, 6)}`, flame !== null && flame > tallest], [`more than the wick burnt for ${general_(either_(other_burning, () => 0), 6)} s, over ${general_(wick_LONGEST_OTHER_, 6)}`, other_burning !== null && other_burning > wick_LONGEST_OTHER_], [`vessel ${vessel}`, !isIn_(vessel, [null, "whole"])], [`glow or smoke for ${general_(either_(afterglow, () => 0), 6)} s, over ${general_(wick_LONGEST_GLOW_, 6)}`, afterglow !== null && afterglow > wick_LONGEST_GLOW_], ["lit again by itself", lit_again === "yes"]]);
  return [...found].filter(([words, stop]) => isTrue_(stop)).map(([words, stop]) => words);
}

const wick_LONGEST_OTHER_ = 10.0;

const wick_LONGEST_GLOW_ = 30.0;

function wick_stops_seen_(seen) {
  let signs;
  signs = burn_signs_known_("burn_verdict", seen);
  return items_(signs).filter((sign) => isSame_(at_(at_(new Map([["flame over 75 mm", ["stop", "put it out now with a lid or a snuffer, never with water, and let it go cold; do not sell or burn that recipe"]], ["anything but the wick burns", ["stop", "put it out now with a lid or a snuffer, never with water, and let it go cold; do not sell or burn that recipe"]], ["vessel cracks or leaks", ["stop", "put it out now with a lid or a snuffer, never with water, and let it go cold; do not sell or burn that recipe"]], ["relights by itself", ["stop", "put it out now with a lid or a snuffer, never with water, and let it go cold; do not sell or burn that recipe"]], ["flame near the glass", ["stop", "put it out now with a lid or a snuffer, never with water, and let it go cold; do not sell or burn that recipe; then fix the wick in the middle and upright"]], ["vessel too hot to hold", ["stop", "put it out now with a lid or a snuffer, never with water, and let it go cold; do not sell or burn that recipe; then go one size down, or take another vessel"]], ["soot", ["a smaller wick", "trim the wick to 5 or 6 mm before each burn and keep it out of draughts; if it comes back, go one size down"]], ["smoke while burning", ["a smaller wick", "trim the wick to 5 or 6 mm before each burn and keep it out of draughts; if it comes back, go one size down"]], ["mushrooming", ["a smaller wick", "trim the wick to 5 or 6 mm before each burn and keep it out of draughts; if it comes back, go one size down; a high load or much dye can do it as well"]], ["flickering", ["a smaller wick", "trim the wick to 5 or 6 mm before each burn and keep it out of draughts; if it comes back, go one size down"]], ["pool at the wall within an hour", ["a smaller wick", "go one size down and time the pool again"]], ["pool too deep", ["a smaller wick", "go one size down; a pool of some 10 mm is usual"]], ["tunneling", ["a larger wick", "let the first burn reach the wall; if it comes back, go one size up"]], ["wax left on the wall", ["a larger wick", "burn it on: it may melt lower down; if it stays to the end, go one size up"]], ["weak flame", ["a larger wick", "see that the wick was not cut too short or clogged; then go one size up"]], ["goes out by itself", ["a larger wick", "see that the wick was not cut too short or clogged; then go one size up"]], ["drowning", ["a larger wick", "put it out, let it set and take some wax away from the wick; then test one size up"]], ["pool short of the wall after four hours", ["a larger wick", "go one size up; a wide vessel may need two wicks"]], ["weak scent while burning", ["look at something else first", "let it cure longer and check the load by both weighings; a larger wick only if the pool is short of the wall"]]]), sign), 0), "stop")).map((sign) => `seen: ${sign}`);
}

function burn_signs_known_(name, seen) {
  let named, strange;
  named = new Set(items_(seen).filter((sign) => isTrue_(sign)).map((sign) => items_(parted_(sign.toLowerCase(), )).join(" ")));
  strange = sorted_(without_(named, [...burn_signs_MEANING_.keys()]));
  if (isTrue_(strange)) {
    throw new Refused_(`${name}: seen is "${at_(strange, 0)}"; it takes ${items_(burn_signs_MEANING_).join(", ")}.`);
  }
  return items_(burn_signs_MEANING_).filter((sign) => isIn_(sign, named));
}

const burn_signs_MEANING_ = new Map([["flame over 75 mm", ["stop", "put it out now with a lid or a snuffer, never with water, and let it go cold; do not sell or burn that recipe"]], ["anything but the wick burns", ["stop", "put it out now with a lid or a snuffer, never with water, and let it go cold; do not sell or burn that recipe"]], ["vessel cracks or leaks", ["stop", "put it out now with a lid or a snuffer, never with water, and let it go cold; do not sell or burn that recipe"]], ["relights by itself", ["stop", "put it out now with a lid or a snuffer, never with water, and let it go cold; do not sell or burn that recipe"]], ["flame near the glass", ["stop", "put it out now with a lid or a snuffer, never with water, and let it go cold; do not sell or burn that recipe; then fix the wick in the middle and upright"]], ["vessel too hot to hold", ["stop", "put it out now with a lid or a snuffer, never with water, and let it go cold; do not sell or burn that recipe; then go one size down, or take another vessel"]], ["soot", ["a smaller wick", "trim the wick to 5 or 6 mm before each burn and keep it out of draughts; if it comes back, go one size down"]], ["smoke while burning", ["a smaller wick", "trim the wick to 5 or 6 mm before each burn and keep it out of draughts; if it comes back, go one size down"]], ["mushrooming", ["a smaller wick", "trim the wick to 5 or 6 mm before each burn and keep it out of draughts; if it comes back, go one size down; a high load or much dye can do it as well"]], ["flickering", ["a smaller wick", "trim the wick to 5 or 6 mm before each burn and keep it out of draughts; if it comes back, go one size down"]], ["pool at the wall within an hour", ["a smaller wick", "go one size down and time the pool again"]], ["pool too deep", ["a smaller wick", "go one size down; a pool of some 10 mm is usual"]], ["tunneling", ["a larger wick", "let the first burn reach the wall; if it comes back, go one size up"]], ["wax left on the wall", ["a larger wick", "burn it on: it may melt lower down; if it stays to the end, go one size up"]], ["weak flame", ["a larger wick", "see that the wick was not cut too short or clogged; then go one size up"]], ["goes out by itself", ["a larger wick", "see that the wick was not cut too short or clogged; then go one size up"]], ["drowning", ["a larger wick", "put it out, let it set and take some wax away from the wick; then test one size up"]], ["pool short of the wall after four hours", ["a larger wick", "go one size up; a wide vessel may need two wicks"]], ["weak scent while burning", ["look at something else first", "let it cure longer and check the load by both weighings; a larger wick only if the pool is short of the wall"]]]);

const wick_STOP_ = "stop: do not sell or burn";

const wick_UNCONFIRMED_ = "limits from summaries of EN 15493, unconfirmed: check against the standard";

function wick_against_targets_(targets, measured, lowest, highest) {
  let aims, misses, unmeasured, what;
  [misses, unmeasured] = [[], []];
  for (const [place, [name, value, low, high]] of numbered_(inRows_(targets, measured, lowest, highest), 1)) {
    what = either_(name, () => `target ${place}`);
    if (low === null && high === null) {
      continue;
    }
    if (value === null) {
      unmeasured.push(`${what} not measured`);
    } else {
      if (low !== null && value < low) {
        misses.push(`${what} ${general_(value, 6)}, below ${general_(low, 6)}`);
      } else {
        if (high !== null && value > high) {
          misses.push(`${what} ${general_(value, 6)}, above ${general_(high, 6)}`);
        }
      }
    }
  }
  aims = any_([...items_(lowest), ...items_(highest)].map((limit) => limit !== null));
  return [misses, isTrue_(aims) ? unmeasured : ["no target of your own typed"]];
}

const wick_NOT_JUDGED_ = "not judged";

const wick_MISSES_ = "misses the maker's targets";

const wick_MEETS_ = "meets the maker's targets";

function wick_recipe_verdict_(verdicts) {
  let counted, judged, left_out;
  counted = new Map(items_(wick_VERDICTS_).map((verdict) => [verdict, total_(verdicts.map((given) => isSame_(given, verdict)))]));
  judged = length_(verdicts) - at_(counted, wick_NOT_JUDGED_);
  if (isTrue_(at_(counted, wick_STOP_))) {
    return ({ verdict: wick_STOP_, reasons: `a stop condition in ${at_(counted, wick_STOP_)} of ${length_(verdicts)} pieces: one is enough` });
  }
  if (judged < wick_PIECES_) {
    return ({ verdict: wick_NOT_JUDGED_, reasons: `${judged} pieces judged; at least ${wick_PIECES_} are wanted` });
  }
  left_out = isTrue_(at_(counted, wick_NOT_JUDGED_)) ? `; ${at_(counted, wick_NOT_JUDGED_)} not judged, left out` : "";
  if (isTrue_(at_(counted, wick_MISSES_))) {
    return ({ verdict: wick_MISSES_, reasons: `${at_(counted, wick_MISSES_)} of ${judged} pieces miss a target${left_out}` });
  }
  return ({ verdict: wick_MEETS_, reasons: `all ${judged} pieces meet the targets${left_out}` });
}

const wick_VERDICTS_ = ["stop: do not sell or burn", "not judged", "misses the maker's targets", "meets the maker's targets"];

const wick_PIECES_ = 3;

function wick_next_wick_(wax, load, vessel, kind, wicks, kinds, sizes, tested_waxes, tested_loads, tested_vessels, findings) {
  let own, recipe, rows, same, tested;
  recipe = [wick_plain_(wax), rounded_(load, 6), wick_plain_(vessel)];
  own = new Map([]);
  rows = inRows_(wicks, kinds, sizes, tested_waxes, tested_loads, tested_vessels, findings);
  for (const [name, its_kind, size, its_wax, its_load, its_vessel, finding] of items_(rows)) {
    if (isSame_(wick_plain_(its_kind), wick_plain_(kind))) {
      tested = keptIn_(own, wick_plain_(name), ({ name: name, size: size, findings: [] }));
      if (!isSame_(tested.size, size)) {
        throw new Refused_(`next_wick: ${name} has the sizes ${general_(tested.size, 6)} and ${general_(size, 6)}; a wick has one size.`);
      }
      same = its_load !== null && isSame_([wick_plain_(its_wax), rounded_(its_load, 6), wick_plain_(its_vessel)], recipe);
      tested.findings.push(...isTrue_(same) && isTrue_(finding) ? [finding] : []);
    }
  }
  return wick_advised_(sorted_([...own.values()], (tested) => tested.size), kind);
}

function wick_plain_(words) {
  return items_(parted_((either_(words, () => "")).toLowerCase(), )).join(" ");
}

function wick_advised_(own, kind) {
  let between, both, cool, high, hot, low, open_to, within;
  if (!isTrue_(own)) {
    return ({ wick: null, reasons: `no wick of the kind ${kind} is listed` });
  }
  cool = numbered_(own, 0).filter(([place, tested]) => isIn_(wick_TOO_COOL_, tested.findings)).map(([place, tested]) => place);
  hot = numbered_(own, 0).filter(([place, tested]) => isIn_(wick_TOO_HOT_, tested.findings)).map(([place, tested]) => place);
  within = numbered_(own, 0).filter(([place, tested]) => isSame_(new Set(tested.findings), new Set([wick_WITHIN_]))).map(([place, tested]) => place);
  if (!isTrue_(cool) && !isTrue_(hot) && !isTrue_(within)) {
    return ({ wick: null, reasons: "none tested in this wax, load and vessel: begin where the wick's supplier advises" });
  }
  [low, high] = [most_(cool, -1), least_(hot, length_(own))];
  if (low >= high) {
    both = [at_(own, high).name, ...items_(low > high ? [at_(own, low).name] : [])];
    return ({ wick: at_(own, high).name, reasons: `the tests contradict each other: test ${items_(both).join(" and ")} again` });
  }
  if (isTrue_(within)) {
    open_to = items_(within).filter((place) => low < place && place < high).map((place) => at_(own, place));
    return isTrue_(open_to) ? wick_once_more_(open_to) : wick_contradicted_(at_(own, at_(within, 0)));
  }
  between = range_(low + 1, high);
  if (!isTrue_(between)) {
    return ({ wick: null, reasons: wick_nothing_between_(own, low, high, kind) });
  }
  return ({ wick: at_(own, wick_first_to_try_(between, isTrue_(cool), isTrue_(hot))).name, reasons: wick_why_(own, low, high) });
}

const wick_TOO_COOL_ = "too cool";

const wick_TOO_HOT_ = "too hot";

const wick_WITHIN_ = "within targets";

function wick_once_more_(within) {
  let count, tested;
  tested = most_(within, (each) => length_(each.findings));
  count = length_(tested.findings);
  if (count < wick_PIECES_) {
    return ({ wick: tested.name, reasons: `within targets in ${count} of at least ${wick_PIECES_} pieces: burn another` });
  }
  return ({ wick: null, reasons: `${tested.name} was within targets in ${count} pieces: go on with it, and see the verdict on its recipe` });
}

function wick_contradicted_(tested) {
  return ({ wick: tested.name, reasons: `the tests of other sizes contradict those of ${tested.name}: test it again` });
}

function wick_nothing_between_(own, low, high, kind) {
  let where;
  where = low < 0 || isSame_(high, length_(own)) ? "beyond" : "between";
  return `${wick_why_(own, low, high)}, and no ${kind} of yours lies ${where}: another kind, wax or load is a new recipe`;
}

function wick_why_(own, low, high) {
  let parts;
  parts = low >= 0 ? [`${at_(own, low).name} was too cool`] : [];
  parts = added_(parts, high < length_(own) ? [`${at_(own, high).name} was too hot`] : []);
  return items_(parts).join(" and ");
}

function wick_first_to_try_(between, cool, hot) {
  if (isTrue_(cool) && isTrue_(hot)) {
    return at_(between, divided_(length_(between), 2)[0]);
  }
  return isTrue_(cool) ? at_(between, 0) : at_(between, -1);
}

function burn_signs_wick_signs_(seen) {
  return items_(burn_signs_known_("wick_signs", seen)).map((sign) => rowsOf_(["sign", "direction", "what_to_do"], [[sign, ...items_(at_(burn_signs_MEANING_, sign))]])[0]);
}

function cost_split_charge_(charge, amounts, sharing = "in proportion", digits = 2) {
  let by_fraction, coins, exact, parts, total;
  if (sharing === "evenly") {
    amounts = repeated_([1.0], length_(amounts));
  }
  total = sum_(amounts);
  if (total <= 0) {
    throw new Refused_("split_charge: amounts add up to 0; at least one line must have a share.");
  }
  coins = round_(Math.abs(charge) * power_(10, digits), 0);
  exact = amounts.map((amount) => ratio_(coins * amount, total));
  parts = items_(exact).map((part) => Math.floor(round_(part, 6)));
  by_fraction = sorted_(range_(length_(parts)), (line) => [-round_(at_(exact, line) - at_(parts, line), 6), line]);
  for (const line of items_(by_fraction.slice(undefined, Math.trunc(coins - total_(parts))))) {
    put_(parts, line, at_(parts, line) + 1);
  }
  return items_(parts).map((part) => isTrue_(part) ? ratio_((charge < 0 ? -Math.abs(1) : Math.abs(1)) * part, power_(10, digits)) : 0.0);
}

function plan_best_break_(demand, ordering, holding_share, breaks, prices) {
  let choices, quantity;
  plan_refuse_out_of_order_(breaks, prices);
  choices = [];
  for (const [low, high, price] of inRows_(breaks, added_([...items_(breaks.slice(1))], [Infinity]), prices)) {
    quantity = most_([low, call_("economic_order_quantity", [demand, ordering, holding_share * price])]);
    if (0 < quantity && quantity < high) {
      choices.push(({ quantity: quantity, price: price, cost: call_("buying_cost", [quantity, demand, ordering, holding_share, price]) }));
    }
  }
  if (!isTrue_(choices)) {
    throw new Refused_("best_break: where ordering costs nothing, the first break must be more than 0.");
  }
  return least_(choices, (choice) => choice.cost);
}

function plan_refuse_out_of_order_(breaks, prices) {
  for (const place of range_(1, length_(breaks))) {
    if (at_(breaks, place) <= at_(breaks, place - 1)) {
      throw new Refused_(`best_break: breaks at place ${place + 1} must be above the one before.`);
    }
    if (at_(prices, place) > at_(prices, place - 1)) {
      throw new Refused_(`best_break: prices at place ${place + 1} must not be above the one before.`);
    }
  }
}

function plan_fair_split_(available, wants, step = 1.0, sharing = "in proportion") {
  let steps, there, wanted;
  [there, wanted] = [plan_steps_(available, step), wants.map((want) => plan_steps_(want, step))];
  there = least_([there, total_(wanted)]);
  steps = sharing === "evenly" ? plan_even_(there, wanted) : plan_in_proportion_(there, wanted);
  return items_(steps).map((count) => round_(count * step, 9));
}

function plan_steps_(amount, step) {
  return Math.floor(round_(ratio_(amount, step), 6));
}

function plan_even_(there, wanted) {
  let parts, rest, share, waiting;
  [share, rest] = [0, there];
  for (const [served, want] of numbered_(sorted_(wanted), 0)) {
    share = divided_(rest, length_(wanted) - served)[0];
    if (want > share) {
      break;
    }
    rest = rest - want;
  }
  parts = items_(wanted).map((want) => least_([want, share]));
  waiting = numbered_(wanted, 0).filter(([line, want]) => want > share).map(([line, want]) => line);
  for (const line of items_(waiting.slice(undefined, there - total_(parts)))) {
    put_(parts, line, at_(parts, line) + 1);
  }
  return parts;
}

function plan_in_proportion_(there, wanted) {
  let by_fraction, parts, total;
  total = either_(total_(wanted), () => 1);
  parts = items_(wanted).map((want) => divided_(there * want, total)[0]);
  by_fraction = sorted_(range_(length_(wanted)), (line) => [-divided_(there * at_(wanted, line), total)[1], line]);
  for (const line of items_(by_fraction.slice(undefined, there - total_(parts)))) {
    put_(parts, line, at_(parts, line) + 1);
  }
  return parts;
}

function curing_pour_by_own_days_(sale, cure, working, evenings = 1.0, finishing = 0.0, closed = null) {
  return curing_pour_by_(sale, cure, evenings, finishing, curing_week_(working), new Set(items_(either_(closed, () => [])).filter((day) => isTrue_(day))));
}

function curing_week_(working) {
  let days, ends, first, last, words;
  words = working.toLowerCase().split("–").join("-");
  if (isIn_(words, ["every day", "daily", "all"])) {
    return new Set(range_(7));
  }
  words = words.split("weekends").join("sat sun").split("weekdays").join("mon-fri").split(" and ").join(" ");
  days = [];
  for (const part of items_(words.split(/\s*-\s*/).join("-").split(/[\s,;]+/))) {
    ends = items_(parted_(part, "-")).map((name) => name.slice(undefined, 3));
    if (length_(ends) > 2 || !(items_(new Set(ends)).every((each) => isIn_(each, new Set(curing_WEEK_))))) {
      throw new Refused_(`pour_by_own_days: working is "${working}"; it takes days such as "Mon-Fri" or "Tue Thu".`);
    }
    [first, last] = [curing_WEEK_.indexOf(at_(ends, 0)), curing_WEEK_.indexOf(at_(ends, -1))];
    days = added_(days, range_(first, last + 1 + 7 * (last < first)).map((day) => divided_(day, 7)[1]));
  }
  return new Set(days);
}

const curing_WEEK_ = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"];

function curing_pour_by_(sale, cure, evenings, finishing, week, closed) {
  let cured;
  cured = curing_back_(sale, finishing, week, closed);
  return curing_back_(cured - cure + curing_DAY_, evenings, week, closed);
}

function curing_back_(day, working_days, week, closed) {
  while (working_days > 0) {
    day = day - curing_DAY_;
    working_days = working_days - (isIn_(((day + 5) % 7), week) && !isIn_(day, closed));
  }
  return day;
}

const curing_DAY_ = 1;

function schedule_follow_demand_(sales, keep, opening = 0.0) {
  let made;
  made = [];
  for (const [wanted, left] of inRows_(sales, keep)) {
    made.push(round_(call_("to_make", [wanted, left, opening]), 9));
    opening = round_(added_(opening, at_(made, -1)) - wanted, 9);
  }
  return made;
}

function schedule_level_rate_(sales, opening = 0.0, closing = 0.0) {
  let rate, wanted;
  [wanted, rate] = [-opening, 0.0];
  for (const [period, sold] of numbered_(sales, 1)) {
    wanted = added_(wanted, sold);
    rate = most_([rate, ratio_(wanted, period)]);
  }
  return most_([rate, ratio_(added_(wanted, closing), length_(sales))]);
}

function schedule_stock_left_(sales, made, opening = 0.0) {
  return schedule_left_("stock_left", sales, made, opening);
}

function schedule_left_(name, sales, made, opening) {
  let left;
  left = [];
  for (const [place, [sold, new_]] of numbered_(inRows_(sales, made), 1)) {
    opening = round_(added_(opening, new_) - sold, 9);
    if (opening < -schedule_SHORT_) {
      throw new Refused_(`${name}: ${general_(-opening, 6)} too few at place ${place}; more must be made by then.`);
    }
    left.push(most_([0.0, opening]));
  }
  return left;
}

const schedule_SHORT_ = 1e-06;

function schedule_plan_cost_(sales, made, making, keeping = 0.0, raising = 0.0, lowering = 0.0, usual = null, opening = 0.0) {
  let before, changes, falls, left, rises;
  left = schedule_left_("plan_cost", sales, made, opening);
  before = [usual === null ? at_(made, 0) : usual, ...made];
  changes = inRows_(before, made).map(([old, new_]) => new_ - old);
  rises = sum_(items_(changes).map((change) => most_([0.0, change])));
  falls = sum_(items_(changes).map((change) => most_([0.0, -change])));
  return sum_([making * sum_(made), keeping * sum_(left), raising * rises, lowering * falls]);
}

function schedule_level_or_follow_(sales, making, keeping = 0.0, raising = 0.0, lowering = 0.0, usual = null, opening = 0.0) {
  let follow, level;
  level = repeated_([call_("level_rate", [sales, opening])], length_(sales));
  follow = call_("follow_demand", [sales, repeated_([0.0], length_(sales)), opening]);
  return [["level", level], ["follow demand", follow]].map(([plan, made]) => ({ plan: plan, most_made: most_(made), most_kept: most_(call_("stock_left", [sales, made, opening])), cost: call_("plan_cost", [sales, made, making, keeping, raising, lowering, usual, opening]) }));
}

function schedule_lot_sizes_(sales, setup, keeping, opening = 0.0) {
  let end, made, start, starts, wanted;
  wanted = schedule_after_opening_(sales, opening);
  starts = schedule_batch_starts_(wanted, setup, keeping);
  [made, end] = [repeated_([0.0], length_(wanted)), length_(wanted)];
  while (isTrue_(end)) {
    start = at_(starts, end);
    put_(made, start, sum_(wanted.slice(start, end)));
    end = start;
  }
  return made;
}

function schedule_after_opening_(sales, opening) {
  let wanted;
  wanted = [];
  for (const sold of items_(sales)) {
    wanted.push(most_([0.0, round_(sold - opening, 9)]));
    opening = most_([0.0, round_(opening - sold, 9)]);
  }
  return wanted;
}

function schedule_batch_starts_(wanted, setup, keeping) {
  let best, cost, costs, first, kept, least, starts, waiting;
  [best, starts] = [[0.0], [0]];
  first = 0;
  for (const end of range_(1, length_(wanted) + 1)) {
    [costs, kept, waiting] = [[], 0.0, 0.0];
    for (const start of range_(end - 1, first - 1, -1)) {
      kept = added_(kept, waiting);
      waiting = added_(waiting, at_(wanted, start));
      costs.push([added_(at_(best, start), isTrue_(waiting) ? setup + keeping * kept : 0.0), start]);
    }
    least = at_(least_(costs), 0);
    [cost, first] = least_(costs, (choice) => [at_(choice, 0) > least + 1e-09 * (1 + least), at_(choice, 1)]);
    best.push(cost);
    starts.push(first);
  }
  return starts;
}

function schedule_lots_cost_(sales, made, setup, keeping, opening = 0.0) {
  let left;
  left = schedule_left_("lots_cost", sales, made, opening);
  return setup * total_(made.map((amount) => amount > 0)) + keeping * sum_(left);
}

function stocktake_lots_to_use_(lots, amounts, dates, needed, as_of) {
  let rest, take, taken;
  taken = [];
  rest = needed;
  for (const [day, amount, lot] of sorted_(inRows_(dates, amounts, lots), (line) => at_(line, 0))) {
    take = least_([amount, rest]);
    if (day >= as_of && take > 0) {
      taken.push(({ lot: lot, take: take, use_by: day, days_left: Number((day - as_of)) }));
      rest = round_(rest - take, 9);
    }
  }
  if (rest > 0) {
    throw new Refused_(`lots_to_use: lots that are not past their day hold ${general_(needed - rest, 6)} of the ${general_(needed, 6)} needed.`);
  }
  return taken;
}

function label_net_weight_us_(net, decimals = 2) {
  let ounces, pound, pounds, rest, rest_words, statement;
  ounces = label_down_(ratio_(net, label_OUNCE_), Math.trunc(decimals));
  [pounds, rest] = divided_(ounces, 16);
  pound = isTrue_(pounds) ? [`${fixed_(pounds, 0)} lb`] : [];
  rest_words = isTrue_(rest) || !isTrue_(pounds) ? [`${general_(round_(rest, Math.trunc(decimals)), 6)} oz`] : [];
  statement = `Net Wt ${items_(added_(pound, rest_words)).join(" ")} (${label_metric_(net)})`;
  return ({ statement: statement, note: sources_unconfirmed_("16 CFR 500.9 and 500.17") });
}

const label_OUNCE_ = 28.3495;

function label_down_(amount, digits) {
  return ratio_(Math.floor(round_(amount * power_(10.0, digits), 3)), power_(10.0, digits));
}

function label_metric_(net) {
  if (net >= 1000) {
    return `${general_(label_down_(ratio_(net, 1000), net < 10000 ? 2 : 1), 6)} kg`;
  }
  return `${general_(label_down_(net, 0), 6)} g`;
}

function sources_unconfirmed_(against) {
  return `unconfirmed: check against ${against}`;
}

function label_net_weight_metric_(net) {
  return label_metric_(net);
}

function label_figure_height_us_(area) {
  let row;
  row = rowUpTo_(table_figure_heights_us_, round_(ratio_(area, label_SQUARE_INCH_), 6));
  return ({ height: Number(at_(row, "height")) * label_SIXTEENTH_, note: sources_unconfirmed_("16 CFR 500.21(b)") });
}

const label_SQUARE_INCH_ = 6.4516;

const table_figure_heights_us_ = rowsOf_(["up_to", "height", "status"], [
  ["5", "1", "second-hand"],
  ["25", "2", "second-hand"],
  ["100", "3", "from memory"],
  ["400", "4", "from memory"],
  ["", "8", "from memory"],
]);

const label_SIXTEENTH_ = 1.5875;

function label_figure_height_metric_(net) {
  let height;
  height = Number(at_(rowUpTo_(table_figure_heights_metric_, net), "height"));
  return ({ height: height, note: sources_unconfirmed_("Directive 76/211/EEC, Annex I, 3.1") });
}

const table_figure_heights_metric_ = rowsOf_(["up_to", "height", "status"], [
  ["50", "2", "second-hand"],
  ["200", "3", "second-hand"],
  ["1000", "4", "second-hand"],
  ["25000", "6", "second-hand"],
]);

function label_fire_statements_(region) {
  let kept, standard;
  standard = (region === "US" ? "ASTM F2058" : "EN 15494") + ", a voluntary standard";
  kept = table_fire_statements_.filter((row) => isSame_(at_(row, "region"), (region === "US" ? "US" : "EU")));
  return items_(kept).map((row) => ({ standing: at_(row, "standing"), statement: at_(row, "statement"), note: label_fire_note_(standard, at_(row, "status")) }));
}

const table_fire_statements_ = rowsOf_(["region", "standing", "statement", "status"], [
  ["US", "required by the standard", "Safety alert symbol, directly followed by WARNING in bold capitals", "read in the text"],
  ["US", "required by the standard", "Burn within sight", "second-hand"],
  ["US", "required by the standard", "Keep away from things that catch fire", "second-hand"],
  ["US", "required by the standard", "Keep away from children", "second-hand"],
  ["US", "optional", "Pictograms of the three statements besides their words", "second-hand"],
  ["US", "optional", "Burning instructions of your own, such as the length to trim the wick to", "second-hand"],
  ["US", "optional", "Stop burning when 1/2 in (13 mm) of wax is left", "from memory"],
  ["EU", "required by the standard", "General warning sign", "second-hand"],
  ["EU", "required by the standard", "Never leave a burning candle unattended", "second-hand"],
  ["EU", "required by the standard", "Keep away from things that can catch fire", "second-hand"],
  ["EU", "required by the standard", "Keep away from children and pets", "second-hand"],
  ["EU", "for some types", "Use a heat resistant candleholder", "second-hand"],
  ["EU", "optional", "Do not burn in a draught", "second-hand"],
  ["EU", "optional", "Do not place near a heat source", "second-hand"],
  ["EU", "optional", "Keep candles apart by the distance you state", "second-hand"],
  ["EU", "optional", "Trim the wick to the length you state", "second-hand"],
  ["EU", "optional", "Snuff out the flame; do not blow it out", "second-hand"],
  ["EU", "optional", "Keep the wax pool clear of matches and debris", "second-hand"],
  ["EU", "optional", "Do not move a burning candle", "second-hand"],
  ["EU", "optional", "Never use liquid to put it out", "second-hand"],
  ["EU", "optional", "Remove packaging before use", "second-hand"],
  ["EU", "optional", "Place the candle upright", "second-hand"],
]);

function label_fire_note_(standard, status) {
  if (status === "read in the text") {
    return `${standard}, by its abstract`;
  }
  return sources_unconfirmed_(`${standard} (${status === "second-hand" ? "read second-hand" : status})`);
}

function measure_maximum_allowable_variation_(net) {
  let note, read, row, variation;
  row = rowUpTo_(table_allowable_variations_, net);
  variation = measure_variation_(net);
  read = at_(row, "status") === "read in the text";
  note = isTrue_(read) ? "read at 113 g and 907 g only: check against NIST Handbook 133, Appendix A" : measure_HANDBOOK_TABLES_;
  return ({ variation: variation, coarsest_step: round_(ratio_(variation, 6), 6), note: note });
}

const table_allowable_variations_ = rowsOf_(["up_to", "variation", "share", "status"], [
  ["36", "", "0.1", "from memory"],
  ["54", "3.6", "", "from memory"],
  ["81", "5.4", "", "from memory"],
  ["117", "7.2", "", "read in the text"],
  ["154", "9.0", "", "from memory"],
  ["208", "10.8", "", "from memory"],
  ["263", "12.7", "", "from memory"],
  ["317", "14.5", "", "from memory"],
  ["381", "16.3", "", "from memory"],
  ["426", "18.1", "", "from memory"],
  ["489", "19.9", "", "from memory"],
  ["571", "21.7", "", "from memory"],
  ["635", "23.5", "", "from memory"],
  ["698", "25.4", "", "from memory"],
  ["771", "27.2", "", "from memory"],
  ["852", "29.0", "", "from memory"],
  ["970", "31.7", "", "read in the text"],
  ["1120", "35.3", "", "from memory"],
  ["1250", "39.0", "", "from memory"],
  ["1450", "42.6", "", "from memory"],
  ["1760", "49", "", "from memory"],
  ["2130", "54", "", "from memory"],
  ["2630", "63", "", "from memory"],
  ["3080", "68", "", "from memory"],
  ["3580", "77", "", "from memory"],
  ["4260", "86", "", "from memory"],
  ["5300", "99", "", "from memory"],
  ["6480", "113", "", "from memory"],
  ["8020", "127", "", "from memory"],
  ["10520", "140", "", "from memory"],
  ["14330", "167", "", "from memory"],
  ["19230", "199", "", "from memory"],
  ["24670", "226", "", "from memory"],
  ["", "", "0.02", "from memory"],
]);

function measure_variation_(net) {
  let row;
  row = rowUpTo_(table_allowable_variations_, net);
  return either_(Number(either_(at_(row, "variation"), () => 0)), () => net * Number(at_(row, "share")));
}

const measure_HANDBOOK_TABLES_ = "unconfirmed: check against NIST Handbook 133, Appendix A";

function measure_batch_test_(net, weighings, batch) {
  let allowed, error, far, mean, needed, reasons, short, under, verdict, wanted;
  wanted = Math.trunc(call_("packages_to_weigh", [batch]));
  if (length_(weighings) < wanted) {
    throw new Refused_(`batch_test: ${length_(weighings)} weighed; a batch of ${general_(batch, 6)} asks for ${wanted}.`);
  }
  if (length_(weighings) > batch) {
    throw new Refused_(`batch_test: ${length_(weighings)} weighed of a batch of ${general_(batch, 6)}.`);
  }
  [mean, needed, allowed] = measure_planned_(net, weighings, batch);
  error = call_("tolerable_negative_error", [net]);
  under = weighings.map((weighing) => round_(net - weighing, 6));
  [short, far] = [total_(items_(under).map((by) => by > error)), total_(items_(under).map((by) => by > 2 * error))];
  reasons = [];
  if (round_(mean - needed, 6) < 0) {
    reasons.push(`the average is ${fixed_(mean, 2)} g, under the ${fixed_(needed, 2)} g needed`);
  }
  if (short > allowed) {
    reasons.push(`${short} are under ${general_(net - error, 6)} g, more than the ${allowed} allowed`);
  }
  if (isTrue_(far)) {
    reasons.push(`${far} under ${general_(net - 2 * error, 6)} g may not carry the e mark`);
  }
  verdict = either_(items_(reasons).join("; "), () => "both tests are met");
  return ({ verdict: verdict, mean: mean, mean_needed: needed, short: short, short_allowed: allowed, far_short: far });
}

function measure_planned_(net, weighings, batch) {
  let averaged, needed, row;
  if (batch < measure_WHOLE_BATCH_) {
    return [ratio_(sum_(weighings), length_(weighings)), net, Math.floor(round_(batch * 0.05, 6))];
  }
  row = rowUpTo_(table_reference_test_, batch);
  averaged = weighings.slice(undefined, Math.trunc(at_(row, "averaged")));
  needed = net - Number(at_(row, "factor")) * deviation_(averaged);
  return [ratio_(sum_(averaged), length_(averaged)), needed, Math.trunc(at_(row, "short_allowed"))];
}

const measure_WHOLE_BATCH_ = 100;

const table_reference_test_ = rowsOf_(["up_to", "sample", "short_allowed", "averaged", "factor", "status"], [
  ["500", "50", "3", "30", "0.503", "read in the text"],
  ["3200", "80", "5", "50", "0.379", "read in the text"],
  ["", "125", "7", "50", "0.379", "read in the text"],
]);

function measure_lot_test_us_(net, weighings) {
  let average, beyond, errors, limit, side, spread, variation, verdict;
  if (length_(weighings) < 2) {
    throw new Refused_("lot_test_us: one weighing has no spread; weigh two or more.");
  }
  errors = weighings.map((weighing) => weighing - net);
  [average, spread] = [ratio_(sum_(errors), length_(errors)), deviation_(errors)];
  limit = ratio_(spread * tQuantile_(2 * (1 - 0.975), length_(errors) - 1), root_(length_(errors)));
  if (round_(average, 6) >= 0) {
    verdict = "the average is not under the declared weight";
  } else {
    side = -average < limit ? "within" : "not within";
    verdict = `no verdict: ${fixed_(-average, 3)} g under on average, ${side} a limit of ${fixed_(limit, 3)} g that is from memory`;
  }
  variation = measure_variation_(net);
  beyond = total_(items_(errors).map((error) => round_(-error - variation, 6) > 0));
  verdict = verdict + `; ${measure_on_each_(net, variation, beyond, -least_(errors))}`;
  return ({ verdict: verdict, average_error: average, spread: spread, error_limit: limit, note: measure_HANDBOOK_TABLES_, variation: variation, beyond: beyond });
}

function measure_on_each_(net, variation, beyond, furthest) {
  let read, words;
  read = isIn_(net, measure_READ_AT_);
  if (!isTrue_(beyond)) {
    return `none is more than ${general_(variation, 6)} g under` + (isTrue_(read) ? "" : `, ${measure_HANDBOOK_TABLES_}`);
  }
  words = `${beyond} more than ${general_(variation, 6)} g under, the furthest ${fixed_(furthest, 3)} g: `;
  return added_(words, isTrue_(read) ? "that is an unreasonable minus error" : `no verdict, ${measure_HANDBOOK_TABLES_}`);
}

const measure_READ_AT_ = [113, 907];

function hazard_label_hazard_cautions_(region = "EU") {
  return region === "US" ? [hazard_label_US_ + ": " + hazard_label_ASK_US_] : duty_rules_cautions_(region);
}

const hazard_label_US_ = "these rules do not apply in the US";

const hazard_label_ASK_US_ = "ask the oil's supplier for a data sheet by 29 CFR 1910.1200 (work places), and a licensed adviser or the Consumer Product Safety Commission about labels for consumers (the latter from memory)";

function duty_rules_cautions_(region) {
  return added_(duty_rules_CAUTIONS_, repeated_(["Great Britain: the GB list may differ: confirm."], region === "GB"));
}

const duty_rules_CAUTIONS_ = ["Worked out from the lines typed, by limits and sums alone. The supplier's data sheet for the oil, or for the oil in wax, test results, comparison with mixtures already judged, and a competent person's decision stand above it. Whoever sells the candle answers for its class and label.", "EU rules: limits as consolidated in May 2026, wording of September 2025. Great Britain, Northern Ireland, Switzerland, the United States, Canada and others differ in law, language, dates and statements. National rules on language, waste, poison centres and goods for consumers come on top.", "A data sheet prints ranges, leaves out what is below its thresholds, may be old, and may lack specific limits, M-factors or toxicity estimates. The upper ends are taken; what is missing is unknown, not harmless.", "For experts or tests: substances that do not add up (aldehydes, phenols, acids, bases, surfactants), the 20 % guide for irritation of the airways and drowsiness, viscosity, how the solid burns, fumes and soot, dyes, additives of the wax, and impurities.", "Labels for hazards are no labels for burning: fire warnings and their standards (EN 15493, 15494 and 15426, from memory) are a duty of their own.", "A fragrance certificate by the IFRA standards is no hazard classification.", "Weighing and drift from batch to batch may cross a limit that is near.", "That a candle is judged as a mixture is from memory: confirm it with a competent person."];

function money_tax_by_line_(amounts, tax, stated = "before tax", digits = 2) {
  return amounts.map((amount) => round_(money_tax_(amount, tax, stated), Math.trunc(digits)));
}

function money_tax_(amount, tax, stated) {
  return ratio_(amount * tax, 1 + tax * (stated === "with tax"));
}

function books_entries_out_of_balance_(entries, debits, credits) {
  let found, sums;
  sums = books_sums_(entries, debits, credits);
  found = [...sums].map(([entry, [debit, credit]]) => ({ entry: entry, debits: debit, credits: credit, over: round_(debit - credit, 6) }));
  return items_(found).filter((one) => isTrue_(one.over));
}

function books_sums_(marks, debits, credits) {
  let here, sides;
  sides = new Map([]);
  for (const [mark, debit, credit] of inRows_(marks, debits, credits)) {
    here = keptIn_(sides, mark, [[], []]);
    at_(here, 0).push(either_(debit, () => 0.0));
    at_(here, 1).push(either_(credit, () => 0.0));
  }
  return new Map([...sides].map(([mark, [debit, credit]]) => [mark, [sum_(debit), sum_(credit)]]));
}

function books_trial_balance_(accounts, debits, credits) {
  let debit_total, lines, other, sums, total;
  sums = books_sums_(accounts, debits, credits);
  [total, other] = inRows_(...[...sums.values()]).map((side) => sum_(side));
  if (isTrue_(round_(total - other, 6))) {
    throw new Refused_(`trial_balance: debits are ${general_(total, 15)} and credits ${general_(other, 15)}; they differ by ${general_(round_(Math.abs(total - other), 6), 15)}.`);
  }
  lines = [...sums].map(([account, [debit, credit]]) => books_balance_(account, debit - credit));
  debit_total = sum_(items_(lines).map((line) => either_(line.debit, () => 0)));
  return [...items_(lines), ({ account: "total", debit: round_(debit_total, 6), credit: round_(debit_total, 6) })];
}

function books_balance_(account, over) {
  over = round_(over, 6);
  return ({ account: account, debit: over > 0 ? over : null, credit: over < 0 ? -over : null });
}

function books_period_entries_(bought, used, labour, overhead, made, sold, sales, tax = 0.0, fees = 0.0, short = 0.0) {
  let entries, lines;
  entries = [["materials bought", new Map([["materials", bought]]), new Map([["cash", bought]])], ["materials used", new Map([["work in hand", used]]), new Map([["materials", used]])], ["paid labour", new Map([["work in hand", labour]]), new Map([["cash", labour]])], ["overhead of making", new Map([["work in hand", overhead]]), new Map([["cash", overhead]])], ["candles made", new Map([["finished candles", made]]), new Map([["work in hand", made]])], ["candles sold", new Map([["cash", added_(sales, tax) - fees], ["selling fees", fees]]), new Map([["sales", sales], ["tax owed", tax]])], ["cost of candles sold", new Map([["cost of goods sold", sold]]), new Map([["finished candles", sold]])], ["count short", new Map([["cost of goods sold", short]]), new Map([["finished candles", short]])]];
  lines = [];
  for (const [event, debits, credits] of items_(entries)) {
    lines = added_(lines, [...debits].filter(([account, amount]) => isTrue_(amount)).map(([account, amount]) => ({ event: event, account: account, debit: Number(amount), credit: null })));
    lines = added_(lines, [...credits].filter(([account, amount]) => isTrue_(amount)).map(([account, amount]) => ({ event: event, account: account, debit: null, credit: Number(amount) })));
  }
  return lines;
}

function books_cost_of_goods_schedule_(opening, bought, closing, labour = 0.0, supplies = 0.0, other = 0.0, withdrawn = 0.0) {
  let available, net;
  net = bought - withdrawn;
  available = added_(added_(added_(added_(opening, net), labour), supplies), other);
  return ({ line_35: opening, line_36: net, line_37: labour, line_38: supplies, line_39: other, line_40: available, line_41: closing, line_42: available - closing });
}

// ------------------------------------------------------------
// What the functions read by

// Ranges by their units: without a low it is 0, without a high there is none; % asks for a share.
const RANGES_ = {
  mm: { low: 10, high: 2000 },
  "mm 2": { low: -200, high: 200 },
  ml: {},
  number: { low: 3, high: 100, whole: true },
  "mm 3": { low: 5, high: 2000 },
  g: { low: 10 },
  C: { high: 40 },
  "ml 2": { low: 10, high: 1000000 },
  "of the brimful volume": { high: 0.9, hint: "%" },
  "g/ml": { low: 0.5, high: 1.5 },
  "g 2": {},
  "of wax weight": { high: 0.5, hint: "%" },
  "number 2": { high: 1000000, whole: true },
  "mm 4": { low: 5, high: 500 },
  "ml 3": { high: 1000000 },
  "g/ml 2": { low: 0.5, high: 2 },
  "ml 4": { high: 10000, low_excluded: true },
  "of total weight": { high: 0.3333333333333333, hint: "%" },
  "g 3": { high: 100, low_excluded: true },
  text: { text: true },
  "of wax weight 2": {},
  "of the blend": { high: 1, hint: "%" },
  "of the finished candle": { high: 1, low_excluded: true, hint: "%" },
  "of wax weight 3": { high: 0.5 },
  "of the stated basis": { high: 0.5, hint: "%" },
  choice: { choices: ["of wax", "of total"] },
  "of wax weight 4": { high: 0.1, hint: "%" },
  "g 4": { low_excluded: true },
  "number 3": { low: 1, high: 16, whole: true },
  "number 4": {},
  "kJ/(kg C)": { high: 10, low_excluded: true },
  "kJ/kg": { high: 1000 },
  "C 2": { low: -50, high: 160 },
  "per C": { high: 0.002 },
  "of the volume poured": { high: 0.5, hint: "%" },
  kJ: {},
  W: { low: 10, high: 100000 },
  "of the heater's power": { high: 1, low_excluded: true, hint: "%" },
  min: {},
  "min 2": { high: 1000000, low_excluded: true },
  "C 3": { low: -50, high: 100 },
  "C 4": { low: -50, high: 160, blank: true },
  "C 5": { low: -50, high: 350, blank: true },
  "C 6": { low: -50, high: 180, blank: true },
  "C difference": { high: 100 },
  "C 7": { high: 160 },
  "min 3": { high: 100000, low_excluded: true },
  "C 8": { low: -20, high: 45 },
  "min 4": { high: 100000 },
  "C difference 2": { high: 10 },
  "min 5": { blank: true },
  h: { high: 1000000, low_excluded: true },
  "g/h": { high: 1000000, low_excluded: true },
  "h 2": { high: 10000 },
  "g 5": { high: 100000 },
  "of the time": { low: 0.5, high: 0.999, hint: "%" },
  "g/h 2": { low: -1000000000000, blank: true },
  "g/h 3": { low: -1000000000000 },
  "mm 5": { high: 500 },
  "g/h 4": { low: 1, high: 500 },
  "h 3": { high: 1000000 },
  "h 4": { high: 1000000, whole: true },
  "h 5": {},
  "h 6": { blank: true },
  "h 7": { whole: true, blank: true },
  "h 8": { low: -1000000000000, blank: true },
  money: {},
  "money per h": {},
  "MJ/kg": { high: 60, low_excluded: true },
  "W 2": {},
  "h 9": { high: 1000 },
  "mm 6": { high: 1000 },
  "mm/h": { low_excluded: true },
  "mm 7": { low: 4, high: 300 },
  "mm 8": {},
  "mm 9": { low: 4, high: 500, blank: true },
  s: { blank: true },
  "choice 2": { choices: ["whole", "cracked", "broken", "leaking"], blank: true },
  "choice 3": { choices: ["no", "yes"], blank: true },
  "text 2": { text: true, blank: true },
  "number 5": { low: -1000000000000, blank: true },
  "mm 10": { low: 10, high: 76.2 },
  "choice 4": { choices: ["stop: do not sell or burn", "not judged", "misses the maker's targets", "meets the maker's targets"] },
  "of wax weight 5": { high: 0.5, hint: "%", blank: true },
  "choice 5": { choices: ["too cool", "within targets", "too hot"], blank: true },
  "choice 6": { choices: ["stop", "a smaller wick", "a larger wick", "look at something else first"] },
  "number 6": { low_excluded: true },
  "money per unit": {},
  "money 2": { low: -1000000000000 },
  "choice 7": { choices: ["in proportion", "evenly"] },
  "number 7": { high: 4, whole: true },
  "of what is weighed out": { high: 0.5, hint: "%" },
  "of what was made": { high: 1 },
  "of what is made": { high: 1, low_excluded: true, hint: "%" },
  "min 6": { high: 1000000 },
  "number 8": { low: 1, high: 1000000, whole: true },
  "number 9": { high: 1000 },
  "number 10": { high: 10000, whole: true },
  "of today's cost": { low: -0.9, high: 2, hint: "%" },
  "of cost": { high: 10, hint: "%" },
  "of the price": { high: 0.99, hint: "%" },
  "of cost 2": { high: 1000 },
  "of the price 2": { high: 0.95, hint: "%" },
  "of the price before tax": { high: 1, hint: "%" },
  "choice 8": { choices: ["net", "gross"] },
  "of the price 3": { low: -1000000000000 },
  "choice 9": { choices: ["with tax", "before tax"] },
  "money 3": { low_excluded: true },
  "money per h 2": { low: -1000000000000 },
  "h 10": { high: 1000, low_excluded: true },
  "number 11": { low: 1, high: 1000, whole: true },
  "g 6": { high: 25000, low_excluded: true },
  "g 7": { high: 1000000, low_excluded: true },
  "mm 11": { low: 10, high: 5000 },
  "number 12": { low: 50, high: 10000 },
  "choice 10": { choices: ["in3 per lb", "cm3 per kg"] },
  "money per unit 2": { low_excluded: true },
  "of the price 4": { high: 1, low_excluded: true, hint: "%" },
  "number 13": { high: 10000 },
  "of the orders": { high: 0.5, low_excluded: true, hint: "%" },
  date: {},
  days: { high: 365, whole: true },
  "number 14": { low: 1, high: 365, whole: true },
  "date 2": { blank: true },
  "number 15": { blank: true },
  "choice 11": { choices: ["level", "follow demand"] },
  times: {},
  "days 2": { high: 3660, low_excluded: true },
  "days 3": {},
  "days 4": { high: 36500, whole: true },
  months: { high: 600, whole: true },
  "days 5": { low: -1000000000000 },
  "g 8": { low: 5, high: 25000 },
  "number 16": { high: 2, whole: true },
  "g 9": { high: 25000 },
  "mm 12": { low: 15, high: 5000 },
  "choice 12": { choices: ["flat", "round", "round lid"] },
  cm2: { high: 1000000 },
  "cm2 2": { low: 15, high: 1000000 },
  "choice 13": { choices: ["US", "EU", "GB"] },
  "g 10": { low: -1000000000000 },
  "of the oil": { high: 1, hint: "%" },
  "of the finished candle 2": { high: 1 },
  "of the share it had": { high: 1 },
  "mg/l": { high: 1, low_excluded: true },
  "choice 14": { choices: ["acute", "chronic", "chronic, degradable"] },
  "number 17": { low: 1 },
  "choice 15": { choices: ["EU", "GB", "US"] },
  "choice 16": { choices: ["nearest", "down"] },
  "of the invoice": { high: 0.5, hint: "%" },
  "days 6": { low: 360, high: 366, whole: true },
  "of the amount a year": {},
  "money 4": { blank: true },
  "number 18": { low: -1000000000000 },
};

// What functions ask of their arguments together: what holds, what is told where not, and of which.
const ASKS_ = {
  "base < height": [(base, height) => base < height, "the floor cannot rise above the fill", "base", "height"],
  "fill > 0": [(fill) => fill > 0, "fill must be more than 0", "fill"],
  "base < depth": [(base, depth) => base < depth, "the floor cannot rise above the wax", "base", "depth"],
  "load > 0": [(load) => load > 0, "load must be more than 0", "load"],
  "wax > 0": [(wax) => wax > 0, "wax must be more than 0", "wax"],
  "wax > step": [(wax, step) => wax > step, "the wax must weigh more than one step of the scale", "wax", "step"],
  "ROUND(SUM(shares),6) = 1": [(shares) => round_(sum_(shares), 6) === 1, "the shares must add up to 1", "shares"],
  "wanted >= load": [(wanted, load) => wanted >= load, "the wanted load must not be below the load it has; to lower it use wax_to_lower_load", "wanted", "load"],
  "wanted > 0": [(wanted) => wanted > 0, "the wanted load must be more than 0", "wanted"],
  "wanted <= load": [(wanted, load) => wanted <= load, "the wanted load must not be above the load it has; to raise it use oil_to_raise_load", "wanted", "load"],
  "hot <= cold": [(hot, cold) => hot <= cold, "set wax cannot be lighter than melted wax", "hot", "cold"],
  "end >= start": [(end, start) => end >= start, "the end must not be colder than the start", "end", "start"],
  "start <= melting": [(start, melting) => start <= melting, "wax that starts above its melting range is melted already: use heat_to_warm", "start", "melting"],
  "end >= melting": [(end, melting) => end >= melting, "the end must not be below the melting range", "end", "melting"],
  "ROUND(wax*liquid*(hot-melting)-oil*oil_heat*(melting-room),6) >= 0": [(wax, liquid, hot, melting, oil, oil_heat, room) => round_(wax * liquid * (hot - melting) - oil * oil_heat * (melting - room), 6) >= 0, "the wax would begin to set: warm it more, or warm the oil", "wax", "liquid", "hot", "melting", "oil", "oil_heat", "room"],
  "wanted >= melting": [(wanted, melting) => wanted >= melting, "the wax would begin to set: warm it more, or warm the oil", "wanted", "melting"],
  "first > second": [(first, second) => first > second, "the first reading must be the warmer one", "first", "second"],
  "second > room": [(second, room) => second > room, "both readings must be above the room", "second", "room"],
  "second >= melting": [(second, melting) => second >= melting, "both readings must lie above the melting range: wax that sets gives up heat of its own", "second", "melting"],
  "temperature <= first": [(temperature, first) => temperature <= first, "it holds between the two readings only: the temperature is above the first", "temperature", "first"],
  "temperature >= second": [(temperature, second) => temperature >= second, "it holds between two readings: for a cooler one to come use cooling_forecast", "temperature", "second"],
  "after <= minutes": [(after, minutes) => after <= minutes, "it holds between the two readings only: the time is after the second", "after", "minutes"],
  "temperature <= second": [(temperature, second) => temperature <= second, "the temperature must not be above the second reading: for that use cooling_time", "temperature", "second"],
  "temperature >= melting": [(temperature, melting) => temperature >= melting, "below the melting range no time can be told: wax that sets gives up heat of its own", "temperature", "melting"],
  "temperature > room": [(temperature, room) => temperature > room, "a pot does not come down to the room's own temperature", "temperature", "room"],
  "after < before": [(after, before) => after < before, "it must weigh less after the burn than before", "after", "before"],
  "MAX(hours) > MIN(hours)": [(hours) => max_(hours) > min_(hours), "two weighings at different hours, at least, are wanted", "hours"],
  "SUMPRODUCT(hours,weights)*COUNT(hours) < SUM(hours)*SUM(weights)*0.999999999999": [(hours, weights) => sum_(each_([hours, weights], (each_hours, each_weights) => each_hours * each_weights)) * count_(hours) < sum_(hours) * sum_(weights) * 0.999999999999, "the weights must fall as the hours grow", "hours", "weights"],
  "COUNT(rates) >= 2": [(rates) => count_(rates) >= 2, "the rates of two candles at least are wanted", "rates"],
  "stays <= fill": [(stays, fill) => stays <= fill, "more wax cannot stay than was poured", "stays", "fill"],
  "MAX(hours) > MIN(hours) (2)": [(hours) => max_(hours) > min_(hours), "two readings at different hours, at least, are wanted", "hours"],
  "SUMPRODUCT(hours,widths)*COUNT(hours)*0.999999999999 > SUM(hours)*SUM(widths)": [(hours, widths) => sum_(each_([hours, widths], (each_hours, each_widths) => each_hours * each_widths)) * count_(hours) * 0.999999999999 > sum_(hours) * sum_(widths), "the pool must grow as the hours do: leave out readings taken once it had reached the wall", "hours", "widths"],
  "MAX(widths) <= diameter": [(widths, diameter) => max_(widths) <= diameter, "the pool cannot be wider than the vessel", "widths", "diameter"],
  "COUNT(rates) >= 2 (2)": [(rates) => count_(rates) >= 2, "readings at two rates at least are wanted", "rates"],
  "step > 0": [(step) => step > 0, "step must be more than 0", "step"],
  "pots > 0": [(pots) => pots > 0, "pots must be more than 0", "pots"],
  "each > 0": [(each) => each > 0, "each must be more than 0", "each"],
  "pot >= each": [(pot, each) => pot >= each, "the pot must hold one candle at least", "pot", "each"],
  "pot <= 100000*each": [(pot, each) => pot <= 100000 * each, "no pot holds more than 100,000 candles", "pot", "each"],
  "good <= made": [(good, made) => good <= made, "there cannot be more good ones than were made", "good", "made"],
  "made > 0": [(made) => made > 0, "made must be more than 0", "made"],
  "margin+fee*(1+tax*(basis=\"gross\")) < 1": [(margin, fee, tax, basis) => margin + fee * (1 + tax * (basis === "gross")) < 1, "margin and fee together must stay below 1", "margin", "fee", "tax", "basis"],
  "cost+fixed >= 0": [(cost, fixed) => round_(cost + fixed - 0, 9) >= 0, "what the buyer pays for postage must not be more than the cost", "cost", "fixed"],
  "fee*(1+tax*(basis=\"gross\")) < 1": [(fee, tax, basis) => fee * (1 + tax * (basis === "gross")) < 1, "the fee must leave something of the price", "fee", "tax", "basis"],
  "materials+fixed >= 0": [(materials, fixed) => round_(materials + fixed - 0, 9) >= 0, "what the buyer pays for postage must not be more than the cost", "materials", "fixed"],
  "price > 0": [(price) => price > 0, "price must be more than 0", "price"],
  "ending < step": [(ending, step) => ending < step, "the ending must be below the step", "ending", "step"],
  "price > cost": [(price, cost) => price > cost, "the price must be above what each one costs", "price", "cost"],
  "demand > 0": [(demand) => demand > 0, "demand must be more than 0", "demand"],
  "first_price <= price": [(first_price, price) => first_price <= price, "a larger order must not be dearer by the pack", "first_price", "price"],
  "second_price <= first_price": [(second_price, first_price) => second_price <= first_price, "a still larger order must not be dearer by the pack", "second_price", "first_price"],
  "second >= first": [(second, first) => second >= first, "the second break must not come before the first", "second", "first"],
  "pot > 0": [(pot) => pot > 0, "the pot must hold more than 0", "pot"],
  "SUM(bought) > 0": [(bought) => sum_(bought) > 0, "something must have been bought", "bought"],
  "opening+closing > 0": [(opening, closing) => opening + closing > 0, "there must have been stock at the start or the end", "opening", "closing"],
  "goods > 0": [(goods) => goods > 0, "goods must be more than 0", "goods"],
  "ROUND(concentration-3*limit,9) >= 0": [(concentration, limit) => round_(concentration - 3 * limit, 9) >= 0, "even at a load of 50 % this substance stays below the limit", "concentration", "limit"],
  "ROUND(toxicity*(1+9*(test=\"chronic\")+99*(test=\"chronic, degradable\")),9) <= 1": [(toxicity, test) => round_(toxicity * (1 + 9 * (test === "chronic") + 99 * (test === "chronic, degradable")), 9) <= 1, "there is an M-factor only up to 1 mg/l (acute), 0.1 (chronic) or 0.01 (chronic, degradable)", "toxicity", "test"],
  "invoice >= returned": [(invoice, returned) => invoice >= returned, "no more can be returned than was invoiced", "invoice", "returned"],
  "early < due": [(early, due) => early < due, "the discount must end before the whole is due", "early", "due"],
  "opening+bought >= closing": [(opening, bought, closing) => round_(opening + bought - closing, 9) >= 0, "closing stock cannot be more than there was", "opening", "bought", "closing"],
  "opening+materials+labour+overhead >= closing": [(opening, materials, labour, overhead, closing) => round_(opening + materials + labour + overhead - closing, 9) >= 0, "closing work in hand cannot be more than went in", "opening", "materials", "labour", "overhead", "closing"],
  "opening+made >= closing": [(opening, made, closing) => round_(opening + made - closing, 9) >= 0, "closing stock cannot be more than there was", "opening", "made", "closing"],
  "bought >= withdrawn": [(bought, withdrawn) => bought >= withdrawn, "no more can be taken for own use than was bought", "bought", "withdrawn"],
  "opening+bought-withdrawn+labour+supplies+other >= closing": [(opening, bought, withdrawn, labour, supplies, other, closing) => round_(opening + bought - withdrawn + labour + supplies + other - closing, 9) >= 0, "closing stock cannot be more than there was", "opening", "bought", "withdrawn", "labour", "supplies", "other", "closing"],
  "returned <= price": [(returned, price) => returned <= price, "no more can be taken off than the price", "returned", "price"],
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
  mm: { in: 25.4, cm: 10 },
  cm2: { "sq in": 6.4516 },
  g: { oz: 28.349523125 },
  "g/h": { "oz/h": 28.349523125 },
  ml: { "US fl oz": 29.5735295625 },
  "g/ml": { "kg/m3": 0.001 },
  W: { kW: 1000 },
  "kJ/(kg C)": { "J/(kg C)": 0.001 },
};

const SPELLED_ = {
  gram: ["g", "gm", "gms", "gr", "gram", "grams", "gramme", "grammes"],
  kilogram: ["kg", "kgs", "kilo", "kilos", "kilogram", "kilograms"],
  ounce: ["oz", "ounce", "ounces"],
  pound: ["lb", "lbs", "pound", "pounds"],
  milliliter: ["ml", "mls", "cc", "millilitre", "millilitres", "milliliter", "milliliters"],
  centiliter: ["cl", "centilitre", "centilitres", "centiliter", "centiliters"],
  liter: ["l", "litre", "litres", "liter", "liters"],
  fluid_ounce: ["fl oz", "floz", "fluid ounce", "fluid ounces", "us fl oz", "us floz", "us fluid ounce", "us fluid ounces", "u s fl oz", "u s floz", "u s fluid ounce", "u s fluid ounces"],
  imperial_fluid_ounce: ["imp fl oz", "imp floz", "imp fluid ounce", "imp fluid ounces", "imperial fl oz", "imperial floz", "imperial fluid ounce", "imperial fluid ounces", "uk fl oz", "uk floz", "uk fluid ounce", "uk fluid ounces"],
  gallon: ["gal", "gals", "gallon", "gallons", "us gal", "us gals", "us gallon", "us gallons", "u s gal", "u s gals", "u s gallon", "u s gallons"],
  imperial_gallon: ["imp gal", "imp gals", "imp gallon", "imp gallons", "imperial gal", "imperial gals", "imperial gallon", "imperial gallons", "uk gal", "uk gals", "uk gallon", "uk gallons"],
  cup: ["cup", "cups", "us cup", "us cups"],
  millimeter: ["mm", "millimetre", "millimetres", "millimeter", "millimeters"],
  centimeter: ["cm", "centimetre", "centimetres", "centimeter", "centimeters"],
  inch: ["in", "inch", "inches", "\"", "″", "”", "''", "’’"],
  "centimeter**2": ["cm2", "cm²", "sq cm", "square centimetres", "square centimeters"],
  "inch**2": ["in2", "in²", "sq in", "sq inch", "sq inches", "square inch", "square inches"],
  degC: ["c", "degc", "deg c", "°c", "celsius"],
  degF: ["f", "degf", "deg f", "°f", "fahrenheit"],
  delta_degC: ["c difference"],
  delta_degF: ["f difference"],
  second: ["s", "sec", "secs", "second", "seconds"],
  minute: ["min", "mins", "minute", "minutes"],
  hour: ["h", "hr", "hrs", "hour", "hours"],
  day: ["day", "days"],
  week: ["wk", "wks", "week", "weeks"],
  common_year: ["yr", "yrs", "year", "years"],
  "gram/milliliter": ["g/ml", "g/cc", "g/cm3"],
  "kilogram/meter**3": ["kg/m3"],
  "milligram/liter": ["mg/l"],
  watt: ["w", "watt", "watts"],
  kilowatt: ["kw", "kilowatt", "kilowatts"],
  kilojoule: ["kj"],
  megajoule: ["mj"],
  kilowatt_hour: ["kwh"],
  "kilojoule/kilogram": ["kj/kg", "j/g"],
  "megajoule/kilogram": ["mj/kg", "kj/g"],
  "gram/hour": ["g/h"],
  "ounce/hour": ["oz/h"],
  "millimeter/hour": ["mm/h"],
  "inch/hour": ["in/h"],
  percent: ["%", "percent", "per cent"],
  "kilojoule/kilogram/kelvin": ["kj/(kg k)", "kj/kg k", "kj/(kg c)", "kj/kg c", "kj/(kg °c)", "kj/kg °c", "j/(g k)", "j/g k", "j/(g c)", "j/g c", "j/(g °c)", "j/g °c"],
  "joule/kilogram/kelvin": ["j/(kg k)", "j/kg k", "j/(kg c)", "j/kg c", "j/(kg °c)", "j/kg °c"],
};

const SPELLINGS_ = spellings_(SPELLED_);

// What a unit measures, and how many of the first of its kind make one: so much over so much.
const UNITS_ = {
  centiliter: ["centiliter", 1n, 1n],
  centimeter: ["centimeter", 1n, 1n],
  "centimeter**2": ["centimeter**2", 1n, 1n],
  common_year: ["common_year", 1n, 1n],
  cup: ["centiliter", 473176473n, 20000000n],
  day: ["common_year", 1n, 365n],
  degC: ["degC", 1n, 1n],
  degF: ["degC", 1n, 1n],
  delta_degC: ["delta_degC", 1n, 1n],
  delta_degF: ["delta_degC", 5n, 9n],
  fluid_ounce: ["centiliter", 473176473n, 160000000n],
  gallon: ["centiliter", 473176473n, 1250000n],
  gram: ["gram", 1n, 1n],
  "gram/hour": ["gram/hour", 1n, 1n],
  "gram/milliliter": ["gram/milliliter", 1n, 1n],
  hour: ["common_year", 1n, 8760n],
  imperial_fluid_ounce: ["centiliter", 454609n, 160000n],
  imperial_gallon: ["centiliter", 454609n, 1000n],
  inch: ["centimeter", 127n, 50n],
  "inch**2": ["centimeter**2", 16129n, 2500n],
  "inch/hour": ["inch/hour", 1n, 1n],
  "joule/kilogram/kelvin": ["joule/kilogram/kelvin", 1n, 1n],
  kilogram: ["gram", 1000n, 1n],
  "kilogram/meter**3": ["gram/milliliter", 1n, 1000n],
  kilojoule: ["kilojoule", 1n, 1n],
  "kilojoule/kilogram": ["kilojoule/kilogram", 1n, 1n],
  "kilojoule/kilogram/kelvin": ["joule/kilogram/kelvin", 1000n, 1n],
  kilowatt: ["kilowatt", 1n, 1n],
  kilowatt_hour: ["kilojoule", 3600n, 1n],
  liter: ["centiliter", 100n, 1n],
  megajoule: ["kilojoule", 1000n, 1n],
  "megajoule/kilogram": ["kilojoule/kilogram", 1000n, 1n],
  "milligram/liter": ["gram/milliliter", 1n, 1000000n],
  milliliter: ["centiliter", 1n, 10n],
  millimeter: ["centimeter", 1n, 10n],
  "millimeter/hour": ["inch/hour", 5n, 127n],
  minute: ["common_year", 1n, 525600n],
  ounce: ["gram", 45359237n, 1600000n],
  "ounce/hour": ["gram/hour", 45359237n, 1600000n],
  percent: ["percent", 1n, 1n],
  pound: ["gram", 45359237n, 100000n],
  second: ["common_year", 1n, 31536000n],
  watt: ["kilowatt", 1n, 1000n],
  week: ["common_year", 7n, 365n],
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

const LARGEST_ = 1000000000000;

const CRUMB_ = 1e-09;

const LONGEST_SHOWN_ = 200;


// ------------------------------------------------------------
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

// ------------------------------------------------------------
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
  const inside = (term.low_excluded ? term.low < value : term.low <= value) && value <= term.high;
  return inside && (!term.whole || Number.isInteger(value));
}

/** What was likely meant: a percentage, or the number in another unit, where that would be taken. */
function slip_(term, value) {
  const plain = Number(general_(value, 10));
  if (term.hint && Math.max(term.high, 1) < value && takes_(term, value / 100)) {
    const hint = term.hint === "%" ? "Did you mean {:g}%?" : term.hint;
    return ` ${hint.replace("{:g}", general_(plain, 6))}`;
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
    return formula.steps ? formula.steps(...blanks_(values)) : formula.answer(...values);
  } catch (problem) {
    const told = told_(problem, (reason) => (/^[a-z_]+: /.test(reason) ? reason.replace(/^[a-z_]+: /, "") : "")).message;
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
  const given = (of) => of.map((name) => values[names.indexOf(name)]);
  return (formula.asks || [])
    .map((condition) => ASKS_[condition])
    .filter(([holds, , ...of]) => !holds(...given(of)))
    .map(([, words, ...of]) => `${words} (${listed_(of, given(of))})`);
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

/** A range by its name, with what is usual filled in. */
function term_(name) {
  if (name.startsWith("list of ")) return { ...term_(name.slice(8)), many: true };
  const unit = name.replace(/ \d+$/, "");
  const named = /^(choice|text|number)$/.test(unit) ? "" : unit;
  const term = { unit: named, low: 0, high: LARGEST_, ...RANGES_[name] };
  return { ...term, range: rangeWords_(term) + (term.blank ? " or blank" : "") };
}

/** A range in words: "0 to 0.5 of wax weight". */
function rangeWords_({ choices, text, unit, whole, low, high, low_excluded }) {
  if (choices) return choices.map((choice) => `"${choice}"`).join(" or ");
  if (text) return "text";
  if (unit === "date") return 'a date such as "2026-03-14"';
  const what = unit && unit !== "money" ? ` ${unit}` : "";
  if (low <= -LARGEST_) return `any amount${what}`;
  const plain = (limit) => (Math.abs(limit) < 1e5 ? general_(limit, 6) : limit.toFixed(0));
  const end = high < LARGEST_;
  const span = low_excluded ? `more than ${plain(low)}` : end ? `${plain(low)} to ${plain(high)}` : `${plain(low)} or more`;
  return `${whole ? "whole numbers " : ""}${span}${low_excluded && end ? `, at most ${plain(high)}` : ""}${what}`;
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

// ------------------------------------------------------------
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

/** The unit of each spelling. */
function spellings_(units) {
  const all = Object.entries(units);
  return Object.fromEntries(all.flatMap(([unit, spelled]) => spelled.map((spelling) => [spelling, unit])));
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
    if (!found) throw new Refused_(`convert: "${spelling}" is no unit known here; it takes a unit such as g, oz, ml or C`);
    return found;
  });
  if (!alike_(from, into)) {
    throw new Refused_(`convert: "${unit}" is for ${kindOfUnit_(from)} and "${to}" for ${kindOfUnit_(into)}`);
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

// ------------------------------------------------------------
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

/** The same day so many months on, or the last day of a month that is shorter. */
function monthsAfter_(day, months) {
  const [year, month, date] = isoDay_(Math.floor(day)).split("-").map(Number);
  const [on, last] = [month + Math.trunc(months), new Date(0)];
  last.setUTCFullYear(year, on, 0);
  return dayNumber_(last.getUTCFullYear(), last.getUTCMonth() + 1, Math.min(date, last.getUTCDate()));
}

// ------------------------------------------------------------
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

// ------------------------------------------------------------
// Steps: what the functions that no formula says are worked out with.

/** Blanks, which formulas take as "", as the steps take them. */
function blanks_(given) {
  return given.map((value) => (Array.isArray(value) ? blanks_(value) : value === "" ? null : value));
}

function isTrue_(value) {
  if (Array.isArray(value)) return value.length > 0;
  return value instanceof Map || value instanceof Set ? value.size > 0 : Boolean(value);
}

function either_(value, other) {
  return isTrue_(value) ? value : other();
}

function both_(value, other) {
  return isTrue_(value) ? other() : value;
}

/** What is gone through, as a list: of a dictionary, its keys. A list is itself. */
function items_(of) {
  if (Array.isArray(of)) return of;
  return of instanceof Map ? [...of.keys()] : [...of];
}

function length_(of) {
  return of instanceof Map || of instanceof Set ? of.size : of.length;
}

function at_(of, key) {
  if (of instanceof Map) return of.get(key);
  return Array.isArray(of) && key < 0 ? of[of.length + key] : of[key];
}

function put_(of, key, value) {
  if (of instanceof Map) of.set(key, value);
  else of[Array.isArray(of) && key < 0 ? of.length + key : key] = value;
}

function got_(of, key, otherwise = null) {
  return of.has(key) ? of.get(key) : otherwise;
}

function keptIn_(of, key, value) {
  if (!of.has(key)) of.set(key, value);
  return of.get(key);
}

function isIn_(value, of) {
  return of instanceof Map || of instanceof Set ? of.has(value) : of.includes(value);
}

/** Whether two values are alike: numbers, words, lists place by place, sets whatever their order. */
function isSame_(one, other) {
  if (one instanceof Set) return one.size === other.size && [...one].every((value) => other.has(value));
  if (!Array.isArray(one)) return one === other;
  return one.length === other.length && one.every((value, place) => isSame_(value, other[place]));
}

function added_(one, other) {
  return Array.isArray(one) ? [...one, ...other] : one + other;
}

function repeated_(list, times) {
  return [].concat(...Array.from({ length: times }, () => list));
}

/** A set without what else holds. */
function without_(set, others) {
  return new Set([...set].filter((value) => !others.includes(value)));
}

function total_(list) {
  return list.reduce((sum, value) => sum + value, 0);
}

function any_(list) {
  return items_(list).some(isTrue_);
}

function all_(list) {
  return items_(list).every(isTrue_);
}

/** Whole numbers from the first up to the end, which is left out, or down to it. */
function range_(first, end, step = 1) {
  const [from, to] = end === undefined ? [0, first] : [first, end];
  return Array.from({ length: Math.max(0, Math.ceil((to - from) / step)) }, (_, place) => from + place * step);
}

function numbered_(list, start) {
  return items_(list).map((value, place) => [place + start, value]);
}

/** Lists put side by side, as long as the shortest of them. */
function inRows_(...lists) {
  const rows = lists.map(items_);
  const shortest = rows.length ? Math.min(...rows.map((list) => list.length)) : 0;
  return range_(shortest).map((place) => rows.map((list) => list[place]));
}

function rounded_(value, digits) {
  return Number(value.toFixed(digits));
}

/** A number with so many decimals; a true half goes to the even digit. */
function fixed_(value, digits) {
  const [whole, decimals] = Math.abs(value).toFixed(100).split(".");
  const kept = digits ? `${whole}.${decimals.slice(0, digits)}` : whole;
  if (!/^50*$/.test(decimals.slice(digits)) || Number(kept.slice(-1)) % 2) return value.toFixed(digits);
  return value < 0 ? `-${kept}` : kept;
}

/** How often a number goes into another, in whole times, and what is left. */
function divided_(value, by) {
  const times = Math.floor(ratio_(value, by));
  return [times, value - times * by];
}

/** Which of two comes first: numbers, words, or lists of them. */
function compared_(one, other) {
  if (!Array.isArray(one)) return one < other ? -1 : one > other ? 1 : 0;
  for (let place = 0; place < one.length; place++) {
    const order = compared_(one[place], other[place]);
    if (order) return order;
  }
  return 0;
}

function sorted_(of, key = (each) => each) {
  return [...items_(of)].sort((one, other) => compared_(key(one), key(other)));
}

/** The least of some values, or of what `key` makes of them; or what stands for it where there is none. */
function least_(of, key) {
  return chosen_(of, key, -1);
}

function most_(of, key) {
  return chosen_(of, key, 1);
}

function chosen_(of, given, side) {
  const key = typeof given === "function" ? given : (each) => each;
  const list = items_(of);
  if (!list.length && given !== undefined) return given;
  return list.reduce((best, value) => (compared_(key(value), key(best)) === side ? value : best));
}

/** A table's rows, each by its heads. */
function rowsOf_(heads, rows) {
  return rows.map((row) => Object.fromEntries(heads.map((head, place) => [head, row[place]])));
}

/** The first row of a table that an amount does not pass. */
function rowUpTo_(rows, amount) {
  const found = rows.find((row) => !row.up_to || amount <= Number(row.up_to));
  return found || none_();
}

/** Words parted at a mark, or at blanks where none is named. */
function parted_(words, mark) {
  return mark === undefined ? words.split(/\s+/).filter(Boolean) : words.split(mark);
}

/** Every row of so many values out of a list. */
function combined_(list, times) {
  return range_(times).reduce((rows) => rows.flatMap((row) => list.map((value) => [...row, value])), [[]]);
}
