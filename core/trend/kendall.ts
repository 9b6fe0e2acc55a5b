/** Two-sided 95 % point of the normal distribution. */
const Z95 = 1.959964;

/** Up to here the distribution is counted out; beyond, the normal one stands in for it. */
const MOST_EXACT = 40;

/**
 * C such that P(|K| > C) <= 0.05 holds just so, where K is Kendall's statistic (rising less falling pairs) of points
 * without a trend: the critical value of the rank interval of a slope.
 *
 * With all times different and at most 40 points it is exact, from `kendallUpper`. Otherwise C = z sqrt(Var K),
 * Var K = (n (n - 1)(2n + 5) - sum of u (u - 1)(2u + 5)) / 18 over groups of u equal times (Sen 1968, from memory).
 * Values that repeat make the interval hold more than 95 %, not less.
 *
 * @param sameTimes sizes of the groups of points that share a time
 * @returns undefined where even all of the range holds less than 95 %: fewer than five points.
 */
export function kendallCritical95(count: number, sameTimes: readonly number[] = []): number | undefined {
  const groups = sameTimes.filter((size) => size > 1);
  if (groups.length === 0 && count <= MOST_EXACT) {
    const inversions = kendallUpper(count).findIndex((upper) => 2 * upper > 0.05);
    return inversions > 0 ? pairsOf(count) - 2 * inversions : undefined;
  }
  const shared = sum(groups.map(spread));
  const critical = Z95 * Math.sqrt((spread(count) - shared) / 18);
  const pairs = pairsOf(count) - sum(groups.map(pairsOf));
  return pairs - critical >= 2 ? critical : undefined;
}

/**
 * P(K >= N - 2 i) for i = 0, 1, 2 ..., N = n (n - 1) / 2, with no trend: K = N - 2 I, and the inversions I of the n!
 * equally likely orders are counted by the usual recurrence (Mahonian numbers).
 *
 * Check (Hollander & Wolfe, Nonparametric Statistical Methods, table of Kendall's K, from memory):
 * P(K >= 8 | n = 5) = 0.042, P(K >= 15 | n = 7) = 0.015, P(K >= 23 | n = 10) = 0.023.
 */
export function kendallUpper(count: number): readonly number[] {
  let shares = [1];
  for (let n = 2; n <= count; n++) {
    const before = shares;
    // A new point makes 0 to n - 1 more inversions, each as likely as the other.
    shares = Array.from(
      { length: before.length + n - 1 },
      (_, i) => sum(before.slice(Math.max(0, i - n + 1), i + 1)) / n,
    );
  }
  let total = 0;
  return shares.map((share) => (total += share));
}

/** 18 times the variance of K of n points without equal times. */
function spread(n: number): number {
  return n * (n - 1) * (2 * n + 5);
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function pairsOf(count: number): number {
  return (count * (count - 1)) / 2;
}
