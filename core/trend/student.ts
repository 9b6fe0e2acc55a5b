/**
 * Two-sided 95 % point of Student's t: P(|T| <= t) = 0.95 with `df` degrees of freedom (whole, 1 or more).
 *
 * The probability is the finite series of Abramowitz & Stegun 1964, Handbook of Mathematical Functions, eq. 26.7.3
 * and 26.7.4 (from memory; its values reproduce the printed table), inverted by bisection to 1e-12.
 * Check: df 1 -> 12.706, 10 -> 2.228, 100 -> 1.984 (NIST/SEMATECH e-Handbook, table 1.3.6.7.2).
 */
export function studentT95(df: number): number {
  if (!Number.isInteger(df) || df < 1) throw new Error(`no t quantile for ${df} degrees of freedom`);
  let low = 1.9;
  let high = 13;
  while (high - low > 1e-12) {
    const middle = (low + high) / 2;
    if (within(middle, df) < 0.95) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** P(|T| <= t), A&S 26.7.3 (odd df) and 26.7.4 (even df). */
function within(t: number, df: number): number {
  const angle = Math.atan(t / Math.sqrt(df));
  const cos = Math.cos(angle);
  const odd = df % 2 === 1;
  // Terms cos, 2/3 cos^3, 2*4/(3*5) cos^5 ... for odd df; 1, 1/2 cos^2, 1*3/(2*4) cos^4 ... for even.
  let term = odd ? cos : 1;
  let sum = 0;
  for (let power = odd ? 1 : 0; power <= df - 2; power += 2) {
    sum += term;
    term *= (cos * cos * (power + 1)) / (power + 2);
  }
  const series = Math.sin(angle) * sum;
  return odd ? (2 / Math.PI) * (angle + series) : series;
}
