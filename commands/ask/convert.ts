import { Problem } from '../../core/problem.ts';
import { parameter } from '../../core/water/parameter.ts';
import type { Answer } from '../answer.ts';
import type { Context } from '../command.ts';
import { call } from './call.ts';
import { says, type Intent } from './intent.ts';

const BOX =
  /\d+(?:\.\d+)?\s*(?:cm|mm|in|inch|inches|"|ft)?\s*(?:x|by)\s*\d+(?:\.\d+)?\s*(?:cm|mm|in|inch|inches|"|ft)?\s*(?:x|by)\s*\d+(?:\.\d+)?\s*(?:cm|mm|inches|inch|in|"|ft)/;

/** "how many gallons is 30x18x20 inches", "8.5 dkh in meq", "10 gallons to litres". */
export const convertIntent: Intent = (heard, context) => {
  const box = BOX.exec(heard.text)?.[0];
  if (box !== undefined) return call('convert', { amount: box }, context);
  const [only, more] = heard.mentions.filter(({ kinds }) => !kinds.includes('bare'));
  if (only === undefined || more !== undefined) return undefined;
  if (!says(heard, 'convert', 'in', 'to', 'how many', 'how much is', 'whats', "what's", 'what is', 'equals?'))
    return undefined;
  const [named] = heard.parameters;
  return attempt(
    { amount: only.text, of: named === undefined ? undefined : parameter(named).label },
    context,
  );
};

/** A value that cannot be converted is no reason to fail: another reading of the sentence may fit. */
function attempt(input: { amount: string; of: string | undefined }, context: Context): Answer | undefined {
  try {
    return call('convert', input, context);
  } catch (error) {
    if (error instanceof Problem) return undefined;
    throw error;
  }
}
