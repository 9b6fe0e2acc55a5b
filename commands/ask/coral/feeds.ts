import { onlyEntry } from '../../../core/corals/named.ts';
import { is } from '../../../core/words/mention.ts';
import type { Heard } from '../../../core/words/hear.ts';
import { aboutCoralCommand } from '../../coral/about.ts';
import { feedCommand } from '../../coral/feed.ts';
import { feedingAnswer } from '../../coral/feeding-answer.ts';
import { call } from '../call.ts';
import { says, type Intent } from '../intent.ts';
import { oneCoral } from './named.ts';

const FEEDS = ['eats?', 'feed(?:s|ing)?', 'fed', 'foods?', 'meaty', 'hungry'] as const;
const ADDS = ['nitrates?', 'no3', 'phosphates?', 'po4', 'nutrients?'] as const;

/** "does 5 g of pellets a day raise my nitrate": the most a feeding adds. */
export const feedingAddsIntent: Intent = (heard, context) => {
  const mass = heard.mentions.find((m) => is(m, 'mass'))?.text;
  const food = foodOf(heard);
  if (mass === undefined || food === undefined || !says(heard, ...ADDS)) return undefined;
  const volume = heard.mentions.find((m) => is(m, 'volume') && m.text !== mass)?.text;
  return call(feedCommand, { food, mass, volume }, context);
};

function foodOf(heard: Heard): 'frozen' | 'flake' | 'pellet' | undefined {
  if (says(heard, 'frozen', 'mysis', 'mysids?', 'brine ?shrimps?', 'cubes?')) return 'frozen';
  if (says(heard, 'flakes?')) return 'flake';
  return says(heard, 'pellets?', 'granules?') ? 'pellet' : undefined;
}

/** "do i have to feed my duncan": the feeding notes of one coral. */
export const feedsIntent: Intent = (heard, context) => {
  if (!says(heard, ...FEEDS)) return undefined;
  const named = oneCoral(heard);
  if (named === undefined) return undefined;
  const entry = onlyEntry(named);
  if (entry === undefined) return call(aboutCoralCommand, { coral: named.name }, context);
  return feedingAnswer(named.name, entry);
};
