import type { CoralGroup } from '../../../core/corals/kind.ts';
import { coralsIn } from '../../../core/words/corals.ts';
import type { Heard } from '../../../core/words/hear.ts';
import { is } from '../../../core/words/mention.ts';
import { groupLightAnswer } from '../../coral/group-light-answer.ts';
import { softBesideStony } from '../../coral/soft-beside-stony.ts';
import { isTrouble } from './named.ts';
import { says, type Intent } from '../intent.ts';

/** The kinds of corals as members call them. */
const groups: readonly (readonly [CoralGroup, readonly string[]])[] = [
  ['small-polyp', ['sps', 'small ?polyps?(?: stony)?']],
  ['large-polyp', ['lps', 'large ?polyps?(?: stony)?']],
  ['soft', ['softies', 'soft ?corals?', 'leathers?']],
];

function groupIn(heard: Heard): (typeof groups)[number] | undefined {
  const named = groups.filter(([, words]) => says(heard, ...words));
  return named.length === 1 ? named[0] : undefined;
}

const LIGHT = ['par', 'ppfd', 'light(?:ing)?', 'bright(?:ness)?'] as const;
const ASKS = [
  'how much',
  'how bright',
  'what',
  'which',
  'needs?',
  'want',
  'ok(?:ay)?',
  'enough',
  'too? (?:much|bright|high|low)',
] as const;

/** "how much par for sps", "is 250 par ok for lps": what is usual in a group, and that each has its own range. */
export const groupLightIntent: Intent = (heard) => {
  const group = groupIn(heard);
  if (group === undefined || !says(heard, ...LIGHT) || !says(heard, ...ASKS)) return undefined;
  if (isTrouble(heard) || says(heard, 'hours?', 'hrs?', 'which corals?', 'what corals?')) return undefined;
  if (coralsIn(heard.text).some(({ entries }) => entries[0].group !== group[0])) return undefined;
  if (heard.mentions.some((m) => is(m, 'illuminance') || is(m, 'share'))) return undefined;
  const reading = heard.mentions.find((m) => is(m, 'light'));
  return groupLightAnswer(group[0], reading);
};

const SOFT = ['softies', 'soft ?corals?', 'leathers?', 'toadstools?', 'sinularia', 'kenya trees?'] as const;
const STONY = ['sps', 'lps', 'stony', 'stonies', 'hard ?corals?', 'acros?', 'acropora'] as const;
const TOGETHER = [
  'mix(?:ed|ing)?',
  'together',
  'next to',
  'near',
  'kills?',
  'harms?',
  'hurts?',
  'toxic',
  'poison(?:s|ous)?',
  'with',
  'how far',
  'bother',
] as const;

/** "can I mix softies and sps", "do leathers kill sps": one tank, not one rock. */
export const softBesideStonyIntent: Intent = (heard) => {
  if (!says(heard, ...SOFT) || !says(heard, ...STONY) || !says(heard, ...TOGETHER)) return undefined;
  return isTrouble(heard) ? undefined : softBesideStony();
};
