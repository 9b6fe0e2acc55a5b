import { Problem } from '../../core/problem.ts';
import { fixed, significant, volume } from '../../core/quantity/format.ts';
import { readQuantity, type Quantity } from '../../core/quantity/read.ts';

/** The system's water, or 100 L where the member gave none; `part` prints a fraction of it in litres and as written. */
export interface Water {
  readonly volumeL: number;
  readonly read: readonly string[];
  readonly part: (fraction: number) => string;
}

/** Reads the system volume; left out, amounts are given per 100 L and that is said. */
export function readWater(text: string | undefined): Water {
  if (text === undefined) {
    const read = ['no volume given, so amounts are per 100 L of water in the system'];
    return { volumeL: 100, read, part: (fraction) => `${volume(100 * fraction)} per 100 L` };
  }
  const given = readQuantity('volume', text, { field: 'volume' });
  const read = [`${asWritten(given, 1)} taken as the net water of the whole system`, ...given.notes];
  return { volumeL: given.value, read, part: (fraction) => asWritten(given, fraction) };
}

/** A fraction of a volume: "7.29 US gal (27.6 L)", or litres alone where it was written in litres. */
function asWritten(given: Quantity, fraction: number): string {
  const litres = volume(given.value * fraction);
  const metric = given.unit === 'L' || given.unit === 'mL' || given.unit === 'm³';
  return metric ? litres : `${significant(given.written * fraction, 3)} ${given.unit} (${litres})`;
}

/** A share for people: 0.132 -> "13.2 %". */
export function percent(fraction: number): string {
  return `${fixed(fraction * 100, 1)} %`;
}

/**
 * Reads "20 %" or "20" as the fraction 0.2. Under 1 without a percent sign it is asked back: 0.3 is 30 % or 0.3 %.
 *
 * @throws Problem for a share of nothing.
 */
export function readShare(text: string): number {
  const { value } = readQuantity('share', text, { field: 'share' });
  if (value > 0 && value <= 1 && !/%|per\s?cent|pct/i.test(text)) {
    const choices = [`${fixed(value * 100, 1)} %`, `${significant(value, 3)} %`];
    throw new Problem(`Is "${text}" ${choices.join(' or ')}?`, { field: 'share', given: text, choices });
  }
  if (value <= 0)
    throw new Problem('A share of 0 changes nothing.', {
      field: 'share',
      given: text,
      limit: '0.1 to 100 %',
    });
  return value / 100;
}

/** The share changed, from `share` or from `amount` over `volume`; undefined when neither is given. */
export function shareOf(
  input: { share?: string | undefined; amount?: string | undefined },
  water: Water,
): number | undefined {
  if (input.share !== undefined) return readShare(input.share);
  if (input.amount === undefined) return undefined;
  const amount = readQuantity('volume', input.amount, { field: 'amount' });
  if (amount.value <= water.volumeL) return amount.value / water.volumeL;
  throw new Problem('That is more water than the system holds.', {
    field: 'amount',
    given: input.amount,
    limit: `at most ${volume(water.volumeL)}`,
  });
}
