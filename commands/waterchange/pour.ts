import { Problem } from '../../core/problem.ts';
import { fixed, significant, volume } from '../../core/quantity/format.ts';
import { decimalsOf, roundedDown, threeFigures } from '../../core/quantity/portion.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import type { Fact } from '../answer.ts';
import { say } from '../../core/wording/say.ts';

/** The system's water, or 100 L where the member gave none. */
export interface Water {
  readonly volumeL: number;
  /** No volume was given: amounts are for each 100 L. */
  readonly isPer100: boolean;
  readonly read: readonly string[];
  /** Prints a fraction of it in litres and as written. */
  readonly part: (fraction: number) => string;
  /** A fraction rounded down to three figures of the volume it is, as it is printed and poured. */
  readonly poured: (fraction: number) => number;
  /** Prints what several poured parts come to, to the last digit of the smallest. */
  readonly sum: (poured: readonly number[]) => string;
}

/** Reads the system volume; left out, amounts are given per 100 L and that is said. */
export function readWater(text: string | undefined): Water {
  if (text === undefined) {
    const read = ['no volume given, so amounts are per 100 L of water in the system'];
    return { ...waterOf(100, 100, 'L', ' per 100 L'), read };
  }
  const { value, written, unit, notes } = readQuantity('volume', text, { field: 'volume' });
  const water = waterOf(value, written, unit, '');
  return { ...water, read: [`${water.part(1)} taken as the net water of the whole system`, ...notes] };
}

/** Parts of a volume: "7.29 US gal (27.6 L)", or litres alone where it was written in litres; `per` follows them. */
function waterOf(volumeL: number, written: number, unit: string, per: string): Omit<Water, 'read'> {
  const isMetric = unit === 'L' || unit === 'mL' || unit === 'm³';
  const [all, symbol] = isMetric ? [volumeL, 'L'] : [written, unit];
  const litres = (amount: number): string => (isMetric ? '' : ` (${volume((amount / all) * volumeL)})`);
  const part = (fraction: number): string =>
    isMetric
      ? `${volume(volumeL * fraction)}${per}`
      : `${significant(written * fraction, 3)} ${unit}${litres(written * fraction)}`;
  const poured = (fraction: number): number =>
    roundedDown(all * fraction, threeFigures(all * fraction)) / all;
  const sum = (parts: readonly number[]): string => {
    const total = parts.reduce((before, fraction) => before + fraction * all, 0);
    const digits = decimalsOf(Math.min(1, ...parts.map((fraction) => threeFigures(all * fraction))));
    if (isMetric && total < 1) return `${fixed(total * 1000, Math.max(0, digits - 3))} mL${per}`;
    return `${fixed(total, digits)} ${symbol}${litres(total)}${per}`;
  };
  return { volumeL, isPer100: per !== '', part, poured, sum };
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
    throw new Problem(say('change.whichShare', { text, one: choices[0] ?? '', other: choices[1] ?? '' }), {
      field: 'share',
      given: text,
      choices,
    });
  }
  if (value <= 0)
    throw new Problem(say('change.share0ChangesNothing'), {
      field: 'share',
      given: text,
      limit: say('change.limitShare'),
    });
  return value / 100;
}

/**
 * The share changed, from `share` or from `amount` over `volume`; undefined when neither is given.
 *
 * @throws Problem for an amount of no known volume, or of more than there is.
 */
export function shareOf(
  input: { share?: string | undefined; amount?: string | undefined },
  water: Water,
): number | undefined {
  if (input.share !== undefined) return readShare(input.share);
  if (input.amount === undefined) return undefined;
  if (water.isPer100) throw new Problem(say('ask.volumeForShare'), { field: 'volume' });
  const amount = readQuantity('volume', input.amount, { field: 'amount' });
  if (amount.value <= water.volumeL) return amount.value / water.volumeL;
  throw new Problem(say('ask.moreThanHolds'), {
    field: 'amount',
    given: input.amount,
    limit: say('change.atMost', { volumeL: volume(water.volumeL) }),
  });
}

/** A share counted in buckets of one size: 25 % of 180 L by 12 L -> 3.75; none where no bucket was named. */
export function bucketFacts(bucket: string | undefined, water: Water, fraction: number): readonly Fact[] {
  if (bucket === undefined) return [];
  const { value, notes } = readQuantity('volume', bucket, { field: 'bucket' });
  const perHundred = water.isPer100 ? ' for each 100 L of water' : '';
  const count = significant((water.volumeL * fraction) / value, 3);
  return [{ label: `in buckets of ${volume(value)}`, value: [`${count}${perHundred}`, ...notes].join(', ') }];
}
