import type { Heard, Said } from '../../core/words/hear.ts';
import { is } from '../../core/words/mention.ts';
import { rateDays } from '../../core/words/roles.ts';
import { tankVolume } from '../../core/words/tank-volume.ts';
import { call } from './call.ts';
import { says, type Intent } from './intent.ts';

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
  if (pair === undefined || over === undefined || !says(heard, ...ASKS)) return undefined;
  const [before, now] = pair;
  const input = { of: before.parameter, before: before.mention.text, now: now.mention.text, over: over.text };
  return call('dose use', { ...input, volume: tankVolume(heard)?.text }, context);
};

/** The first parameter said with a higher and then a lower number. */
function falling(heard: Heard): readonly [Said, Said] | undefined {
  for (const before of heard.said) {
    const now = heard.said.find(
      (later) => later.parameter === before.parameter && later.mention.start > before.mention.start,
    );
    if (before.parameter === 'salinity' || now === undefined) continue;
    if (now.mention.value < before.mention.value) return [before, now];
  }
  return undefined;
}
