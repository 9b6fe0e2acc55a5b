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

/** From here on "times as much" says it plainer than per cent. */
const TIMES = 2;

/** "21 % less", "40 % more", "8.1 times as much", "as meant": what comes of it against what was meant. */
export function against(real: number, meant: number): string {
  const ratio = real / meant;
  if (ratio >= TIMES) return `${timesOf(ratio)} times as much`;
  const percent = (ratio - 1) * 100;
  if (Math.abs(percent) < 0.5) return 'as meant';
  return `${fixed(Math.abs(percent), Math.abs(percent) < 10 ? 1 : 0)} % ${percent < 0 ? 'less' : 'more'}`;
}

/** The same for a range: "7.1 to 8.8 times as much", "10 to 21 % less". */
export function spanAgainst({ low, high }: Span, meant: number): string {
  const [first, last] = [against(low, meant), against(high, meant)];
  if (first === last) return first;
  const unit = [' times as much', ' % less', ' % more'].find(
    (end) => first.endsWith(end) && last.endsWith(end),
  );
  if (unit === undefined) return `${first} to ${last}`;
  // The lower end falls the further short.
  const [from, to] = unit === ' % less' ? [last, first] : [first, last];
  return `${from.slice(0, -unit.length)} to ${to}`;
}

function timesOf(ratio: number): string {
  return fixed(ratio, ratio < 10 ? 1 : 0);
}
