import { H2O2_G_PER_ML, MOST_PERCENT } from '../../dosing/peroxide.ts';
import { fixed, significant, volume } from '../../quantity/format.ts';
import { readQuantity } from '../../quantity/read.ts';
import { is } from '../../words/mention.ts';
import type { Recogniser } from '../claim.ts';

/** "1 ml of peroxide per 10 gal": worked out, not recommended. */
export const peroxideByVolume: Recogniser = (heard) => {
  if (!/\b(?:peroxide|h2o2)\b/.test(heard.text)) return undefined;
  const [amount, base] = heard.mentions.filter((m) => is(m, 'volume'));
  const strong = heard.mentions.some((m) => is(m, 'share') && m.value > MOST_PERCENT);
  const ml = amount === undefined ? 0 : readQuantity('volume', amount.text, { field: 'rule' }).value * 1000;
  const litres = base === undefined ? 0 : readQuantity('volume', base.text, { field: 'rule' }).value;
  const isDose = ml > 0 && litres > 0 && ml <= 50 * litres;
  if (!isDose && !strong) return undefined;
  const perL = isDose ? ml / litres : 0;
  return {
    kind: 'peroxide by volume',
    rule: strong
      ? 'peroxide stronger than 3 % in a tank'
      : `${amount?.text ?? ''} of 3 % peroxide per ${base?.text ?? ''}`,
    verdict: strong ? 'wrong' : 'depends',
    figure: strong
      ? 'I work nothing out for peroxide above 3 %: it burns skin and eyes, and a slip kills a tank'
      : `it comes to ${significant(perL * H2O2_G_PER_ML * 1000, 2)} mg/L of H2O2 each time; that is forum use without evidence, and I work it out without recommending it`,
    working: strong
      ? []
      : [`3 % by weight, 1.01 g/mL (from memory): ${fixed(H2O2_G_PER_ML * 1000, 1)} mg per mL`],
    ...(strong
      ? {}
      : {
          following: (waterL: number) => {
            const low = perL * waterL;
            return {
              words: `the rule comes to ${significant(low, 3)} mL of 3 % peroxide in ${volume(waterL)}`,
              low,
              high: low,
              unit: 'mL',
            };
          },
        }),
    steps: ['Safer: treat the rock by hand outside the tank, rinse it in tank water, put it back.'],
    cautions: [
      'Peroxide harms some shrimps, macroalgae and sensitive corals.',
      'Never a stronger solution by the same millilitres. Eye cover and gloves; follow the product label.',
    ],
    sources: ['practice', 'memory', 'ghs'],
  };
};
