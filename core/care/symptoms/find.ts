import { anyOf, saidIn } from '../said.ts';
import { symptomCard, symptomIds, type SymptomId } from './cards.ts';

/** Sentences that speak of these otherwise: shopping, plans, praise. */
const NOT = anyOf([
  'remind',
  'prevent\\w*',
  'avoid\\w*',
  'recovered',
  'all better now',
  '(?:algae|aiptasia|majanos?|flat ?worm|cyano|diatoms?)[- ]eat(?:ing|ers?)',
  String.raw`(?:do|can|will|does|could|would) (?:\w+ ){0,2}(?:bleach|melt|close|brown)`,
]);

const tests = symptomIds.map((id) => ({ id, test: saidIn(symptomCard(id).said.map((all) => ({ all }))) }));

/** Symptoms that a cleaned text speaks of, in the order of the cards; none for a plan or a reminder. */
export function symptomsIn(text: string): readonly SymptomId[] {
  if (NOT(text)) return [];
  const found = tests.filter(({ test }) => test(text)).map(({ id }) => id);
  return found.filter((id) => !found.some((other) => particular[other]?.includes(id)));
}

/** Where the first of these is said, the others only repeat it in wider words. */
const particular: Readonly<Partial<Record<SymptomId, readonly SymptomId[]>>> = {
  'waxy leather': ['polyps closed', 'slimy', 'white spots', 'flesh peels'],
  'zoanthids shut': ['polyps closed', 'white spots', 'shrunken', 'flesh peels'],
  'brown jelly': ['slimy', 'flesh peels', 'red slime', 'brown strings'],
  'red slime': ['slimy'],
  'brown strings': ['slimy', 'red slime', 'brown dust'],
  'anemone off': ['shrunken', 'polyps closed', 'pale all over', 'glass anemones'],
  'pale on top': ['pale all over'],
  'white tips': ['pale all over', 'flesh peels', 'base recedes', 'pale on top'],
  'flesh peels': ['pale all over', 'base recedes'],
  'dead strip': ['pale all over', 'base recedes', 'pale on top'],
  'base recedes': ['pale all over'],
  'many at once': ['polyps closed'],
  'turns brown': [],
  flatworms: ['small bugs', 'white spots'],
  'glass anemones': ['small bugs'],
  'feather algae': ['green hair'],
  'surface film': ['slimy', 'cloudy'],
  'brown dust': ['surface film'],
  'small bugs': ['white spots'],
};
