import { answer } from '../answer.ts';
import { says, type Intent } from './intent.ts';
import { AMOUNT_WORDS } from './refusal.ts';

const CARBON = [
  'vodka',
  'sugar',
  'vinegar',
  'carbon (?:dosing|source)',
  'dose carbon',
  'ethanol',
  'acetic acid',
];
const BINDERS = [
  'lanthanum\\w*',
  'gfo',
  'ferric oxide',
  'iron oxide',
  'phosphate (?:remover|binder|media|resin)',
  'activated carbon',
  'charcoal',
];
const DROPS = ["lugol'?s?", 'iodine solution', 'amino acids?', 'trace elements?'];

/** What acts by its strength, its brand or the bacteria of the tank: no sum gives an amount, and I make none up. */
export const byLabelIntent: Intent = (heard) => {
  if (!says(heard, ...AMOUNT_WORDS)) return undefined;
  const lime = says(heard, 'kalk\\w*', 'lime\\w*', 'limewater');
  const carbon = !lime && says(heard, ...CARBON);
  if (!carbon && !says(heard, ...BINDERS, ...DROPS)) return undefined;
  return answer({
    headline: `I work out no amount of ${carbon ? 'a carbon source' : 'that'}: how it acts hangs on the product and the tank, not on a sum. Follow its label and begin well below it.`,
    steps: [
      'Test nitrate and phosphate first, twice, with fresh reagents: a tank near zero needs none of this.',
      carbon
        ? 'Raise it only in small steps, weeks apart, with the skimmer running and strong surface flow. Stop when the water clouds, slime grows or fish breathe fast.'
        : 'Start with a part of what the label says, test every two or three days, and take it out or stop as soon as the level is where you want it.',
      'Less food, a cleaner sump and water changes bring both down without it: ask "nitrate 40, 55 gal, 20 % a week, how many to 10".',
    ],
    cautions: [
      carbon
        ? 'Carbon feeds bacteria, which take up oxygen: too much at once suffocates fish, worst at night. Vinegar also lowers pH.'
        : 'Phosphate that falls fast pales and kills corals. Iodine is poisonous in small amounts: dose it only against a test.',
    ],
    sources: ['practice'],
  });
};
