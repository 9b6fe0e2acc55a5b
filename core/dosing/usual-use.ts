import type { ParameterId } from '../water/parameter.ts';

/**
 * The most that full tanks use in a day, in the parameter's own unit: 1 dKH of alkalinity, the calcium that growth takes
 * with it (20.04 mg/L for 2.804 dKH, rounded), and little magnesium. Common practice, no source; a use above it is more
 * often one of a week.
 */
const mostADay: Partial<Record<ParameterId, number>> = { alkalinity: 1, calcium: 7, magnesium: 3 };

/** Whether a use said without its time is too large to be taken as one of a day. Check: calcium 12 yes, 5 no. */
export function isMoreThanUsual(id: ParameterId, used: number): boolean {
  return used > (mostADay[id] ?? Infinity);
}
