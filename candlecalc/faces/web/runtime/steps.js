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
