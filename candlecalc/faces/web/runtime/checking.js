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
