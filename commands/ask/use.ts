import type { Heard, Said } from '../../core/words/hear.ts';
import { is, type Mention } from '../../core/words/mention.ts';
import { rateDays } from '../../core/words/roles.ts';
import { isTankSize, tankVolume } from '../../core/words/tank-volume.ts';
import { useCommand } from '../dose/use.ts';
import { call } from './call.ts';
import { says, type Intent } from './intent.ts';
import { compoundsFor } from '../../core/dosing/compound.ts';

const ASKS = [
  'use',
  'uses',
  'using',
  'usage',
  'consum\\w*',
  'daily',
  'a day',
  'per day',
  'each day',
  'eats?',
];

/** "alk went from 8.2 to 7.1 over 3 days, what do I dose daily?": the use a day. */
export const useIntent: Intent = (heard, context) => {
  const pair = falling(heard);
  const over = heard.mentions.find((m) => is(m, 'days') && rateDays(heard.text.slice(m.end)) === undefined);
  if (pair === undefined || (!says(heard, ...ASKS) && !tellsOnly(heard, pair, over))) return undefined;
  const [before, now] = pair;
  const days = over?.text ?? weekdaysBetween(heard, before, now) ?? aWeek(heard);
  if (days === undefined) return undefined;
  const input = { of: before.parameter, before: before.mention.text, now: now.mention.text, over: days };
  return call(useCommand, { ...input, volume: tankVolume(heard)?.text }, context);
};

/** Asks for the level back, or for something else than the use. */
const ELSE = [
  'back',
  'raise',
  'bump',
  'bring',
  'dose',
  'dosing',
  'how much',
  'how many',
  'want',
  'goal',
  'target',
  'wc',
  'water ?change',
  'kits?',
  'old',
  'should i',
] as const;

/** "alk went from 8.6 to 7.4 in 3 days", "alk 9 monday 8.1 thursday": no question, but only the use can be meant. */
function tellsOnly(heard: Heard, [before, now]: readonly [Said, Said], over?: Mention): boolean {
  if (!['alkalinity', 'calcium', 'magnesium'].includes(before.parameter)) return false;
  if (says(heard, ...ELSE) || heard.mentions.some(isOfPowder)) return false;
  const lead = over === undefined ? '' : heard.text.slice(0, over.start);
  return over === undefined
    ? (weekdaysBetween(heard, before, now) ?? aWeek(heard)) !== undefined
    : /\b(?:in|over|after|within)(?: (?:the )?(?:last|past|about))?\s*$/.test(lead);
}

/** The first parameter said with a higher and then a lower number. */
function falling(heard: Heard): readonly [Said, Said] | undefined {
  for (const before of heard.said) {
    const now = heard.said.find(
      (later) => later.parameter === before.parameter && later.mention.start > before.mention.start,
    );
    if (compoundsFor(before.parameter).length === 0 || now === undefined) continue;
    if (now.mention.value < before.mention.value) return [before, now];
  }
  return undefined;
}

/** Spoons and grams: a dose is spoken of. */
function isOfPowder(mention: Mention): boolean {
  return is(mention, 'volume') ? !isTankSize(mention) : is(mention, 'mass');
}

/** "over a week", "in the last week". */
function aWeek({ text }: Heard): string | undefined {
  return /\b(?:over|in|within|after|during) (?:a|one|the|the (?:last|past)|this|last) week\b/.test(text)
    ? '7 days'
    : undefined;
}

const WEEKDAYS = ['sun', 'mon', 'tue', 'wed', 'thu', 'fri', 'sat'];
const BEHIND = /^\s*(?:d?kh\s*)?(?:on |last |this )*(sun|mon|tue|wed|thu|fri|sat)(?:s|nes|rs|ur)?(?:day)?\b/;
const AHEAD =
  /\b(sun|mon|tue|wed|thu|fri|sat)(?:s|nes|rs|ur)?(?:day)?(?: it)?(?: (?:was|is|reads?|at))*\s*[:=]?\s*$/;

/** "8.4 mon and 7.9 wed", "monday 8.4, wednesday 7.9": the days from one to the next, within a week. */
function weekdaysBetween({ text }: Heard, before: Said, now: Said): string | undefined {
  const pattern = [BEHIND, AHEAD].find((one) => [before, now].every((said) => dayAt(text, said, one) >= 0));
  if (pattern === undefined) return undefined;
  const days = (dayAt(text, now, pattern) - dayAt(text, before, pattern) + 7) % 7;
  return days === 0 ? undefined : `${days} days`;
}

function dayAt(text: string, { mention }: Said, pattern: RegExp): number {
  const beside = pattern === BEHIND ? text.slice(mention.end) : text.slice(0, mention.start);
  return WEEKDAYS.indexOf(pattern.exec(beside)?.[1] ?? '');
}
