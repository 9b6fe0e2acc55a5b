/** Middle of the values, the mean of the two middle ones for an even count. At least one value. */
export function median(values: ArrayLike<number>): number {
  return medianInPlace(Float64Array.from(values));
}

/** As `median`; the order of `values` is lost. */
export function medianInPlace(values: Float64Array): number {
  const middle = (values.length - 1) / 2;
  return (valueOfRank(values, Math.floor(middle)) + valueOfRank(values, Math.ceil(middle))) / 2;
}

/**
 * The value that would stand at `rank` (from 0) were the values sorted; their order is lost. Hoare's selection (Hoare
 * 1961, Algorithm 65: Find, from memory): far less work than sorting tens of thousands of slopes.
 */
export function valueOfRank(values: Float64Array, rank: number): number {
  let [from, to] = [0, values.length - 1];
  while (from < to) {
    const pivot = values[(from + to) >> 1] ?? 0;
    let [i, j] = [from, to];
    while (i <= j) {
      while ((values[i] ?? pivot) < pivot) i++;
      while ((values[j] ?? pivot) > pivot) j--;
      if (i > j) break;
      const kept = values[i] ?? 0;
      values[i++] = values[j] ?? 0;
      values[j--] = kept;
    }
    // Now no value up to j is above the pivot, none from i on below it, and any in between equals it.
    if (rank <= j) to = j;
    else if (rank >= i) from = i;
    else break;
  }
  const found = values[rank];
  if (found === undefined) throw new Error(`no value of rank ${rank} among ${values.length}`);
  return found;
}

/**
 * Median absolute deviation from the median, unscaled. 1, 1, 2, 2, 4, 6, 9 -> 1.
 * Times 1.4826 (1 over the 0.75 quantile of the normal distribution, 0.6745) it estimates a standard deviation.
 */
export function medianDeviation(values: readonly number[]): number {
  const centre = median(values);
  return median(values.map((value) => Math.abs(value - centre)));
}
