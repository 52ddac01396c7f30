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
