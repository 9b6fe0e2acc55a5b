/** Whether one number above zero is at most so many times another, and the other way round. */
export function isWithin(factor: number, one: number, other: number): boolean {
  return one > 0 && other > 0 && one <= factor * other && other <= factor * one;
}
