import type { Judge } from '../claim.ts';
import { litresOf } from '../salts.ts';
import { has, is } from '../stated.ts';

/** Stronger than what is sold as 3 %: a slip burns people and kills a tank. */
const MOST_PERCENT = 3.5;

/** "1 ml of peroxide per 10 gal": held against what is known, which is little; no amount is worked out from it. */
export const peroxideByVolume: Judge = (stated) => {
  if (!has(stated, 'poisons.peroxide')) return undefined;
  const [amount, base] = stated.amounts.filter((each) => is(each, 'volume'));
  const strong = stated.amounts.some((each) => is(each, 'share') && each.value > MOST_PERCENT);
  const litres = [amount, base].map((said) => (said === undefined ? 0 : litresOf(said)));
  const [added = 0, into = 0] = litres;
  const isRule = added > 0 && into > 0 && added <= into / 20;
  if (!isRule && !strong) return undefined;
  return {
    kind: 'peroxide by volume',
    rule: isRule
      ? `${amount?.text ?? ''} of peroxide per ${base?.text ?? ''}`
      : 'peroxide stronger than the first-aid kind in a tank',
    verdict: strong ? 'wrong' : 'depends',
    figure: strong
      ? 'I work nothing out for peroxide stronger than the first-aid kind: it burns skin and eyes, and a slip kills a tank'
      : 'it is passed on without evidence that it is safe or works, and bottles differ, so I work nothing out from it',
    working: [],
    steps: ['Safer: treat the rock by hand outside the tank, rinse it in tank water, put it back.'],
    dangers: [
      'Peroxide harms some shrimps, macroalgae and sensitive corals. Never on zoanthids: they can hold palytoxin.',
      'Never a stronger solution. Eye cover and gloves; follow the product label.',
    ],
    sources: ['practice', 'memory', 'ghs'],
  };
};
