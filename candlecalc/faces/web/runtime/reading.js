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
