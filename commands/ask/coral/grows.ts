import { onlyEntry } from '../../../core/corals/named.ts';
import { growthLinesAnswer } from '../../coral/growth-answer.ts';
import { growthCommand } from '../../coral/growth.ts';
import { call } from '../call.ts';
import { says, type Intent } from '../intent.ts';
import { lengthIn } from './lengths.ts';
import { oneCoral } from './named.ts';

const GROWS = [
  'how (?:fast|quick(?:ly)?|slow(?:ly)?) .{0,60}grow',
  'grow(?:s|th)? (?:rate|speed|fast|slow)',
  'growth',
  'how (?:big|wide|large) (?:do|does|will|can|is|would)',
  'how many heads',
  'outgrow',
] as const;

/** "how big does a toadstool get", "2 head torch, how many heads in a year": growth, from a size where one is said. */
export const growsIntent: Intent = (heard, context) => {
  if (!says(heard, ...GROWS)) return undefined;
  const named = oneCoral(heard);
  if (named === undefined) return undefined;
  const heads = /(?<![\d.])(\d{1,3})[ -]?heads?(?:ed)?\b/.exec(heard.text)?.[1];
  const size = heads === undefined ? lengthIn(heard)?.text : `${heads} heads`;
  const entry = onlyEntry(named);
  if (size !== undefined || entry === undefined) {
    return call(growthCommand, { coral: named.name, size }, context);
  }
  return growthLinesAnswer(named.name, entry);
};
