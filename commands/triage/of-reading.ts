import { symptomWays } from '../../core/care/house-cards/symptom.ts';
import { meantCards, type Meant } from '../../core/care/meant-cards.ts';
import { symptomIds, type SymptomId } from '../../core/care/symptoms/cards.ts';
import type { Kind } from '../../core/language/kinds.ts';
import type { Reading } from '../../core/language/reading.ts';

export const symptomKinds = ['coral-symptom', 'algae-pest', 'fish-ill'] as const;
export type SymptomKind = (typeof symptomKinds)[number];

/** What kills within a day or two, and what is a sign of it. */
const byDanger: readonly SymptomId[] = [
  'fish gasping',
  'many at once',
  'ammonia seen',
  'brown jelly',
  'flesh peels',
  'fish spots',
  'polyps float',
  'anemone off',
  ...symptomIds,
];

/** What a message says is seen, as a sign of one kind: of the likeliest of them where none is given. */
export function symptomOf(reading: Reading, kind: SymptomKind = likeliest(reading)): Meant<SymptomId> {
  return meantCards(reading.cards(kind), symptomWays, reading.scanned, byDanger);
}

function likeliest({ kinds }: Reading): SymptomKind {
  const found = kinds.find(({ name }) => isSymptomKind(name))?.name;
  return found !== undefined && isSymptomKind(found) ? found : 'coral-symptom';
}

function isSymptomKind(kind: Kind): kind is SymptomKind {
  return symptomKinds.some((each) => each === kind);
}
