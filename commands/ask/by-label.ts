import { labelCommand } from '../dose/label.ts';
import type { Labelled } from '../dose/label-advice.ts';
import type { Heard } from '../../core/words/hear.ts';
import { call } from './call.ts';
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
export const byLabelIntent: Intent = (heard, context) => {
  const what = says(heard, ...AMOUNT_WORDS) ? labelledIn(heard) : undefined;
  return what === undefined ? undefined : call(labelCommand, { what }, context);
};

function labelledIn(heard: Heard): Labelled | undefined {
  const lime = says(heard, 'kalk\\w*', 'lime\\w*', 'limewater');
  if (!lime && says(heard, ...CARBON)) return 'carbon source';
  if (says(heard, ...BINDERS)) return 'phosphate remover';
  return says(heard, ...DROPS) ? 'iodine or traces' : undefined;
}
