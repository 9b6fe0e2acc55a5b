/** A reading on a time axis in days; any origin, the same for all points of one fit. */
export interface Point {
  readonly day: number;
  /** In the parameter's own unit. */
  readonly value: number;
}

/** Lowest and highest value a number is held to have. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** A straight line through readings. All intervals here are two-sided at 95 %. */
export interface TrendLine {
  readonly method: 'straight' | 'robust';
  readonly count: number;
  /** Unit of the value per day. */
  readonly slopePerDay: number;
  /** 95 % interval of the slope; undefined where there are too few points for one. */
  readonly slope: Interval | undefined;
  /** Value of the line at a day. */
  readonly at: (day: number) => number;
  /** 95 % range of the line at a day; undefined where `slope` is. */
  readonly bandAt: (day: number) => Interval | undefined;
}
