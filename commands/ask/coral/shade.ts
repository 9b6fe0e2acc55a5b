import { coralsIn } from '../../../core/words/corals.ts';
import { shadeAnswer } from '../../coral/shade-answer.ts';
import { says, type Intent } from '../intent.ts';

const SHADES = [
  'shad(?:e|es|ed|ing)',
  'overshadow(?:s|ing)?',
  'block(?:s|ing)? (?:the |my |all )?light',
  'take (?:the |all (?:the )?)?light (?:from|away)',
] as const;
/** "is monti cap going to shade my acans": whether the first grows over the light of the second. */
export const shadeIntent: Intent = (heard) => {
  if (!says(heard, ...SHADES)) return undefined;
  const [over, under] = coralsIn(heard.text);
  return over === undefined || under === undefined ? undefined : shadeAnswer(over, under);
};
