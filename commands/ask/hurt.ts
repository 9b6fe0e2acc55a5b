import { mayBeHurt } from '../../core/care/hurt/maybe.ts';
import { isPersonHurt } from '../../core/care/hurt/person-words.ts';
import { despair } from '../urgent/despair.ts';
import { hurtAnswer, hurtAnswerFor } from '../urgent/hurt.ts';
import { says, type Intent } from './intent.ts';

const DESPAIR = [
  'kill(?:ing)? my ?self',
  'end(?:ing)? my (?:own )?life',
  'suicid(?:e|al)',
  '(?:hurt|harm|cut)(?:ing)? my ?self on purpose',
  'self[- ]harm',
  "(?:do ?n'?t|do not) want to (?:live|be alive)(?: any ?more)?",
  '(?:i )?(?:want|wanna|wish) to (?:just )?die',
  'want to be dead',
  'end(?:ing)? it all',
  'kms',
  "(?:ca ?n'?t|cannot) go on(?: (?:any ?more|like this|living))?",
  '(?:no|whats the|what is the) point (?:of|in) (?:living|life)',
  'better off (?:dead|without me)',
  'give up on life',
] as const;

/** Somebody is hurt: people first, no arithmetic. */
export const hurtIntent: Intent = (heard) => {
  if (says(heard, ...DESPAIR)) return despair;
  return isPersonHurt(heard.text) ? hurtAnswerFor(heard.text) : undefined;
};

/** Nothing else was understood, and somebody may be hurt: the question, with every hurt a tap away. */
export const maybeHurtIntent: Intent = ({ text }) => (mayBeHurt(text) ? hurtAnswer(undefined) : undefined);
