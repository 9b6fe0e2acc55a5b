import type { Heard } from '../../core/words/hear.ts';
import { remindFromWords, repeatsIn } from '../remind/from-words.ts';
import { MAX_SEVERAL } from '../remind/several.ts';
import { says, type Intent } from './intent.ts';

/** "water change reminder every 2 weeks". */
const NOUN = /\breminders?\b(?: for\b| to\b)?/i;
const DOUBTFUL = /\bbi-?(?:weekly|monthly|annual(?:ly)?|yearly)\b/i;
/** Parts that repeat make a list of wishes. */
const LIST = 3;

/** "remind me to test alk every other saturday 9am", or a list of what is to be done how often. */
export const remindIntent: Intent = (heard, context) => {
  const { given } = heard;
  const asks =
    says(heard, 'remind me', 'set (?:me )?(?:a )?reminders?') ||
    (NOUN.test(given) && (repeatsIn(given) > 0 || DOUBTFUL.test(given)));
  if (!asks && !isList(heard)) return undefined;
  return remindFromWords(given, context);
};

/** "want: floss every sat, water change every other sat, ...": several repeats, no numbers of a tank, no question. */
function isList({ given, mentions }: Heard): boolean {
  const measured = mentions.some(({ kinds }) => kinds.some((kind) => kind !== 'days' && kind !== 'bare'));
  return !measured && !given.includes('?') && given.length <= MAX_SEVERAL && repeatsIn(given) >= LIST;
}
