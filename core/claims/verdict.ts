import type { Span } from '../light/lux.ts';
import { fixed } from '../quantity/format.ts';
import type { Verdict } from './claim.ts';

/** How far a rule may be off, as a share of the right figure. This project's own choice. */
const RIGHT = 0.025;
const ROUGHLY = 0.15;

/** The verdict on a number against the right one; both above 0. 17.9 against 17.848 is right, 1 against 1.1 roughly right. */
export function againstNumber(claimed: number, right: number): Verdict {
  const off = Math.abs(claimed / right - 1);
  if (off <= RIGHT) return 'right';
  return off <= ROUGHLY ? 'roughly right' : 'wrong';
}

/** The verdict where the right figure is only known as a range: never better than roughly right. */
export function againstSpan(claimed: number, { low, high }: Span): Verdict {
  return claimed >= low * (1 - ROUGHLY) && claimed <= high * (1 + ROUGHLY) ? 'roughly right' : 'wrong';
}

/** "21 % less", "606 % more", "as meant": what comes of it against what was meant. */
export function against(real: number, meant: number): string {
  const percent = (real / meant - 1) * 100;
  if (Math.abs(percent) < 0.5) return 'as meant';
  return `${fixed(Math.abs(percent), Math.abs(percent) < 10 ? 1 : 0)} % ${percent < 0 ? 'less' : 'more'}`;
}

/** The same for a range: "606 to 782 % more". */
export function spanAgainst({ low, high }: Span, meant: number): string {
  const [first, last] = [against(low, meant), against(high, meant)];
  if (first === last) return first;
  const [side, other] = [first.slice(-4), last.slice(-4)];
  return side === other && side !== 'eant'
    ? `${first.replace(/ % \w+$/, '')} to ${last}`
    : `${first} to ${last}`;
}
