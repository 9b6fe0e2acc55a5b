import { fixed, significant, span, volume } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { answer, type Answer } from '../answer.ts';
import { askedAmount } from './asked-amount.ts';
import { askedCompound } from './asked.ts';
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
export function limeStrength(powder: string, per: string, { low, high }: Saturation, tempC: number): Answer {
  const amount = askedAmount(powder, askedCompound('calcium hydroxide'));
  const water = readQuantity('volume', per, { field: 'per' });
  const [least, most] = [amount.lowG / water.value, amount.highG / water.value];
  const limit = `about ${grams(low, high)} g per litre dissolve at ${fixed(tempC, 0)} °C`;
  const is = `${powder} in ${volume(water.value)} is ${least === most ? '' : 'roughly '}${grams(least, most)} g per litre`;
  const verdict =
    most <= low
      ? `Not too strong: ${is}, and ${limit}, so all of it dissolves and it is weaker than full limewater.`
      : least >= high
        ? `More than dissolves: ${is}, and ${limit}. The rest settles and makes the clear liquid no stronger; what harms is the settled powder going in.`
        : `As strong as it gets: ${is}, and ${limit}; a little may settle.`;
  return answer({
    headline: verdict,
    read: [...amount.read, ...water.notes],
    facts: [
      {
        label: 'What dissolves',
        value: `${limit}: ${grams(low * water.value, high * water.value)} g in ${volume(water.value)}`,
      },
    ],
    steps: [
      'Let it settle and use the clear part; keep the intake of the top-off above the powder.',
      'What it brings hangs on what evaporates: test alkalinity and pH daily for a week, and stop at pH 8.5.',
      'Weigh it once: a teaspoon of lime is packed very differently.',
    ],
    cautions: limewaterCare,
    sources: limewaterSources,
  });
}

function grams(from: number, to: number): string {
  return span(significant(from, 2), significant(to, 2));
}
