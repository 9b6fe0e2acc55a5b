import { say } from '../../core/wording/say.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';

/** Rules that show what can be checked, one of each sort. */
const examples = [
  '1 tsp baking soda per 5 gal raises 1 dKH',
  'soda ash is twice as strong as baking soda',
  '1.025 is 35 ppt',
  'half a cup of salt per gallon',
  '4 x 20 % = 80 %',
  'lux / 50 = PAR',
  'ppm is dKH x 17.9',
  'no more than 1 dKH a day',
] as const;

/** Said where no rule was recognised: no verdict is made up. */
export function notKnown(): Answer {
  return answer({
    headline: say('claim.notKnown'),
    facts: [
      {
        label: 'Doses',
        value:
          'a salt by weight or spoon in a volume, and what it raises; one salt against another; limewater',
      },
      { label: 'Salt', value: 'gravity, ppt and conductivity; salt per litre; evaporation' },
      {
        label: 'Water changes',
        value: 'several together, slow against all at once, where a routine settles',
      },
      { label: 'Units', value: 'any two ways to write one value, and the factor between them' },
      {
        label: 'The rest',
        value: 'lux and PAR, light and hours, turnover, rock, food, what the sea holds, the pace of a change',
      },
    ],
    steps: [say('claim.writeIt')],
    next: examples.map((rule) => action(rule, 'claim', { rule })),
    sources: ['practice'],
  });
}
