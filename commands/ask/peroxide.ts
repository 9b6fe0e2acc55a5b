import { noPeroxide } from '../triage/no-amount.ts';
import { claimed } from './claim.ts';
import { says, type Intent } from './intent.ts';

/** Peroxide against algae: a rule that was said is judged; no amount is worked out. */
export const peroxideIntent: Intent = (heard, context) => {
  const named = says(heard, 'peroxide', 'h2o2');
  const implied = says(heard, '1:10') && says(heard, String.raw`3\s?%?`, 'bryopsis');
  if (!named && !implied) return undefined;
  return claimed(heard, context) ?? noPeroxide;
};
