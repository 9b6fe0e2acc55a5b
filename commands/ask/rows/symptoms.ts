import { findCorals } from '../../../core/corals/find.ts';
import type { CoralEntry } from '../../../core/corals/entry.ts';
import { namedCoral } from '../../../core/corals/named.ts';
import type { SymptomId } from '../../../core/care/symptoms/cards.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import type { Scanned } from '../../../core/language/tokens.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { newShutAnswer } from '../../coral/new-shut-answer.ts';
import { stretchedAnswer } from '../../coral/stretched-answer.ts';
import { lookAnswer } from '../../triage/look.ts';
import { symptomAction } from '../../triage/menu.ts';
import { symptomOf, type SymptomKind } from '../../triage/of-reading.ts';
import { saidWater } from '../../triage/said-water.ts';
import { tellMore } from '../../triage/tell-more.ts';
import type { Row } from '../row.ts';

/** Something looks wrong with a coral or a fish, or grows where nobody put it. */
export const symptomRows: readonly Row[] = [
  row('coral-symptom', 'Something looks wrong with a coral'),
  row('algae-pest', 'Algae, slime, worms or pests'),
  row('fish-ill', 'A fish looks ill'),
];

function row(kind: SymptomKind, label: string): Row {
  return {
    kind,
    label,
    uses: ['corals', 'levels', 'of', 'now', 'temperature', 'salinity', 'volume'],
    answer: (frame, context) => seen(kind, frame, context),
  };
}

/** The card; where none is clear, what to tell, with the nearest cards as buttons. */
function seen(kind: SymptomKind, { slots, reading }: Frame, context: OwnContext): Answer {
  const { first, others } = symptomOf(reading, kind);
  const names = slots.corals ?? [];
  const entries = names.flatMap(entriesOf);
  const said = saidWater(slots);
  if (first === undefined) {
    const given = tellMore(names, entries, said.water);
    return { ...given, next: [...others.map((id) => symptomAction(id, {})), ...given.next] };
  }
  const own = ofOneCoral(first, names, reading.scanned, said.water);
  if (own !== undefined) return own;
  return lookAnswer({ id: first, others, entries, volume: slots.volume, ...said }, context);
}

/** What is known of one coral before its card: a new one that stays shut in water that is fine, one that stretches. */
function ofOneCoral(
  id: SymptomId,
  names: readonly string[],
  scanned: Scanned,
  water: Answer | undefined,
): Answer | undefined {
  const [only, more] = names;
  const named = only === undefined || more !== undefined ? undefined : namedCoral(only);
  if (named === undefined) return undefined;
  if (id === 'stretched') return stretchedAnswer(named, undefined);
  const isNew = met(scanned, 'records.came', 'deeds.buys', 'times.newAge');
  const isFine = water === undefined || water.facts.every(({ verdict }) => verdict === 'fine');
  return id === 'polyps closed' && isNew && isFine ? newShutAnswer(named, water) : undefined;
}

/** Every coral that a name can mean: one that may hold a poison is not to be missed. */
function entriesOf(name: string): readonly CoralEntry[] {
  const found = findCorals(name);
  return found.kind === 'one' ? [found.entry] : found.kind === 'several' ? found.entries : [];
}
