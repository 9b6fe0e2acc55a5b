import { mayBeHurt } from '../../core/care/hurt/maybe.ts';
import { isPersonHurt } from '../../core/care/hurt/person-words.ts';
import { answer } from '../answer.ts';
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

/** Somebody may be about to harm themselves: people who can help, and nothing of tanks. */
const despair = answer({
  headline:
    'You matter more than any tank. Please call your emergency number or a crisis line now, or somebody you trust.',
  steps: [
    'In danger this minute? Call the emergency number and stay on the line.',
    'Do not stay alone with it: go to somebody, or ask them to come.',
  ],
  cautions: ['I am only a program for aquariums and cannot help with this. People can, and they want to.'],
});

/** Somebody is hurt: people first, no arithmetic. */
export const hurtIntent: Intent = (heard) => {
  if (says(heard, ...DESPAIR)) return despair;
  return isPersonHurt(heard.text) ? hurtAnswerFor(heard.text) : undefined;
};

/** Nothing else was understood, and somebody may be hurt: the question, with every hurt a tap away. */
export const maybeHurtIntent: Intent = ({ text }) => (mayBeHurt(text) ? hurtAnswer(undefined) : undefined);
