import { answer } from '../answer.ts';

/** What is said of peroxide for a tank, whatever was asked. */
export const noPeroxide = answer({
  headline:
    'I work out no amount of peroxide for a tank: what is passed on has no evidence, and a slip kills shrimps and corals.',
  read: ['hydrogen peroxide against algae; a rule like 1:10 says neither of what nor into what'],
  steps: [
    'Safer: take the rock out, treat the patch by hand outside the tank, rinse it in tank water, put it back.',
    'Ask first what kind of algae it is: a photo helps, and results differ by kind.',
    'Then what feeds it: read nitrate and phosphate, and look at light and flow.',
  ],
  dangers: [
    'Never a stronger kind: it burns skin and eyes and is an oxidiser. Eye cover and gloves; follow the label.',
    'Peroxide harms some shrimps, macroalgae and sensitive corals. Never on zoanthids: they can hold palytoxin.',
  ],
  sources: ['practice', 'memory', 'ghs'],
});
