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
