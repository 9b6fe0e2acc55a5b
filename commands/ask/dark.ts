import { coralsIn } from '../../core/words/corals.ts';
import { darkCommand } from '../light/dark.ts';
import { call } from './call.ts';
import { isTrouble } from './coral/named.ts';
import { says, type Intent } from './intent.ts';

const DARK = [
  '(?:without|no|with ?out|w/o) (?:any )?lights?',
  'in (?:the |total |full )?dark(?:ness)?',
  'lights? (?:is |are |was |were )?(?:out|off|broke|broken|died|dead) (?:for|about)',
  'blackout',
] as const;
const ASKS = [
  'how long',
  'how many days',
  'can',
  'will',
  'ok(?:ay)?',
  'survive',
  'live',
  'last',
  'harm',
  'safe',
  'days?',
] as const;

/** "how long can corals go without light": a few days, and what to do meanwhile. */
export const darkIntent: Intent = (heard, context) => {
  const isAsked = says(heard, ...DARK) && says(heard, ...ASKS) && !isTrouble(heard);
  const isOfCorals = says(heard, 'corals?', 'sps', 'lps', 'softies', 'reef', 'frags?', 'zoas?');
  if (!isAsked || (!isOfCorals && coralsIn(heard.text).length === 0)) return undefined;
  const days = /\b([1-9]\d?) ?(?:d|days?)\b/.exec(heard.text)?.[1];
  return call(darkCommand, { days: days === undefined ? undefined : `${days} days` }, context);
};
