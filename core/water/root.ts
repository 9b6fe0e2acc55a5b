/**
 * The x in [low, high] where `rising` crosses zero, by 60 halvings (the interval shrinks by 1e18, so to the last digit
 * of a double). `rising` must not fall over the interval.
 *
 * @returns undefined when there is no crossing in the interval (a value that is not a number counts as none).
 */
export function risingRoot(rising: (x: number) => number, low: number, high: number): number | undefined {
  if (!(rising(low) <= 0 && rising(high) >= 0)) return undefined;
  let below = low;
  let above = high;
  for (let halving = 0; halving < 60; halving += 1) {
    const middle = (below + above) / 2;
    if (rising(middle) < 0) below = middle;
    else above = middle;
  }
  return (below + above) / 2;
}
