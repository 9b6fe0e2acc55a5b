import { capacity, checkedTopOff } from '../../core/dosing/limewater.ts';
import { fixed, significant, span, volume } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { answer, type Answer } from '../answer.ts';
import { opened } from '../short/remark-first.ts';
import { askedAmount } from './asked-amount.ts';
import { askedCompound, askedWater, inOwnUnit } from './asked.ts';
import { limewaterCare, limewaterSources } from './top-off.ts';

/** What dissolves in a litre at a temperature, g (core/dosing/limewater.ts). */
interface Saturation {
  readonly low: number;
  readonly high: number;
}

/**
 * Lime put into so much water against what dissolves. Check: 2 level teaspoons of 2.5 to 3.5 g in 5 L are 1 to 1.4 g per
 * litre, under the 1.5 g that dissolve at 25 °C.
 */
export function limeStrength(
  powder: string,
  per: string,
  { low, high }: Saturation,
  tempC: number,
  { daily, volume: tank }: { readonly daily?: string | undefined; readonly volume?: string | undefined } = {},
): Answer {
  const amount = askedAmount(powder, askedCompound('calcium hydroxide'));
  const water = readQuantity('volume', per, { field: 'per' });
  const [least, most] = [amount.lowG / water.value, amount.highG / water.value];
  const limit = `about ${grams(low, high)} g dissolve at ${fixed(tempC, 0)} °C`;
  const is = `${powder} in ${volume(water.value)} is ${least === most ? '' : 'roughly '}${grams(least, most)} g per litre`;
  const [verdict, why] =
    most <= low
      ? ['Not too strong', 'All of it dissolves, and it is weaker than full limewater.']
      : least >= high
        ? ['More than dissolves', 'The rest settles and makes the clear liquid no stronger.']
        : ['As strong as it gets', 'A little may settle.'];
  const brings = daily === undefined ? undefined : broughtBy(daily, tank, [least, most], { low, high });
  const given = answer({
    headline: '',
    read: [...amount.read, ...water.notes, ...(brings?.read ?? [])],
    facts: [
      {
        label: 'What dissolves',
        value: `about ${grams(low, high)} g per litre at ${fixed(tempC, 0)} °C: ${grams(low * water.value, high * water.value)} g in ${volume(water.value)}`,
      },
    ],
    steps: [
      'Let it settle and use the clear part; keep the intake of the top-off above the powder.',
      'What it brings hangs on what evaporates: test alkalinity and pH daily for a week, and stop at pH 8.5.',
      'Weigh it once: a teaspoon of lime is packed very differently.',
    ],
    dangers: [
      ...limewaterCare.dangers,
      ...(least >= high ? ['What harms is the settled powder going in: keep the intake above it.'] : []),
    ],
    cautions: limewaterCare.cautions,
    sources: limewaterSources,
  });
  return opened(
    [
      { value: brings === undefined ? `${verdict}: ${is}, and ${limit}.` : `${verdict}: ${is}.` },
      brings === undefined ? undefined : { label: 'It brings', value: brings.words },
      { label: 'So', value: why },
    ],
    given,
  );
}

/**
 * What such limewater brings in a day with what evaporates, the settled part left out.
 * Check: 3 L of 1 to 1.4 g/L in 100 L -> 81 to 113 meq (74.09 g/mol, 2 eq): 2.3 to 3.2 dKH.
 */
function broughtBy(
  daily: string,
  tank: string | undefined,
  gL: readonly [number, number],
  { low, high }: Saturation,
) {
  const litres = readQuantity('volume', daily, { field: 'daily' });
  const water = askedWater(tank);
  const topOffL = tank === undefined ? litres.value : checkedTopOff(litres.value, water.volumeL);
  const [from, to] = [Math.min(gL[0], low), Math.min(gL[1], high)].map((each) => {
    return inOwnUnit('alkalinity', capacity(topOffL, each, water.volumeL).alkMeqL);
  });
  const dkh = span(significant(from ?? 0, 2), significant(to ?? 0, 2));
  const words = `${volume(topOffL)} of it a day bring ${dkh} dKH ${tank === undefined ? 'to each 100 L of tank' : water.where}: enough where the tank uses no more.`;
  return { words, read: [...litres.notes, ...water.read] };
}

function grams(from: number, to: number): string {
  return span(significant(from, 2), significant(to, 2));
}
