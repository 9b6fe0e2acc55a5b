import type { Scanned } from './tokens.ts';
import type { NumberSpan } from './scan/number-span.ts';

/** Words between two numbers that are to be chosen from. Grammar: nothing is learnt of them. */
const OR: ReadonlySet<string> = new Set(['or', 'vs', 'versus']);

/** Whether a message asks which of two numbers it should be: "8 or 10 hours", not "from 8 to 10". */
export function isEither({ tokens, numbers }: Scanned, one: number, other: number): boolean {
  const [first, last] = [numbers.find(is(one)), numbers.findLast(is(other))];
  if (first === undefined || last === undefined) return false;
  return tokens.some(({ word, start, end }) => OR.has(word) && start >= first.end && end <= last.start);
}

function is(value: number): (number: NumberSpan) => boolean {
  return (number) => number.value === value;
}
