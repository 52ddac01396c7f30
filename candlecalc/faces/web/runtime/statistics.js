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
