import { coralsIn } from '../../../core/words/corals.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { newShutAnswer } from '../../coral/new-shut-answer.ts';
import type { Heard } from '../../../core/words/hear.ts';
import { says, type Intent } from '../intent.ts';
import { readingIntent } from '../readings.ts';

const SHUT = [
  '(?:stays?|staying|still|is|are|all|keeps?) (?:pulled in|closed|shut|retracted|tight|in)',
  'pulled in',
  "(?:not|isnt|isn't|wont|won't|never|doesnt|doesn't) (?:be )?open(?:ing|ed)?(?: up)?",
  'retracted',
  'closed up',
] as const;
const NEW = [
  'new',
  'got',
  'bought',
  'added',
  'received',
  'picked up',
  'arrived',
  'came',
  'introduced',
  'placed',
] as const;

/** A new coral that stays shut in water that reads well: leave it, look, and ask; nothing is ordered. */
export const shutIntent: Intent = (heard, context) => {
  if (!says(heard, ...SHUT) || !says(heard, ...NEW)) return undefined;
  const [named] = coralsIn(heard.text);
  if (named === undefined) return undefined;
  const water = waterOf(heard, context);
  if (water?.facts.some(({ verdict }) => verdict !== undefined && verdict !== 'fine')) return undefined;
  return newShutAnswer(named, water);
};

/** What the readings in the sentence say, where there are any. */
function waterOf(heard: Heard, context: OwnContext): Answer | undefined {
  return heard.said.length === 0 ? undefined : readingIntent(heard, context);
}
