import { answer } from '../answer.ts';
import { claimed } from './claim.ts';
import { says, type Intent } from './intent.ts';

/** Peroxide against algae: a rule that was said is judged; no amount is worked out. */
export const peroxideIntent: Intent = (heard, context) => {
  const named = says(heard, 'peroxide', 'h2o2');
  const implied = says(heard, '1:10') && says(heard, String.raw`3\s?%?`, 'bryopsis');
  if (!named && !implied) return undefined;
  return claimed(heard, context) ?? noAmount;
};

const noAmount = answer({
  headline:
    'I work out no amount of peroxide for a tank: what is passed on has no evidence, and a slip kills shrimps and corals.',
  read: ['hydrogen peroxide against algae; a rule like 1:10 says neither of what nor into what'],
  steps: [
    'Safer: take the rock out, pumps aside and lights off, treat the patch by hand outside the tank, rinse it in tank water, put it back.',
    'Ask first what kind of algae it is: a photo helps, and results differ by kind.',
    'Then what feeds it: read nitrate and phosphate, and look at light and flow.',
  ],
  cautions: [
    'Peroxide harms some shrimps, macroalgae and sensitive corals. Never on zoanthids: they can hold palytoxin.',
    'Never use a stronger kind: it burns skin and eyes and is an oxidiser.',
    'Eye cover and gloves; follow the product label.',
  ],
  sources: ['practice', 'memory', 'ghs'],
});
