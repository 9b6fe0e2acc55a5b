import { findCorals } from '../../../core/corals/find.ts';
import type { CoralEntry } from '../../../core/corals/entry.ts';
import type { Frame } from '../../../core/language/frame.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
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
  return lookAnswer({ id: first, others, entries, volume: slots.volume, ...said }, context);
}

/** Every coral that a name can mean: one that may hold a poison is not to be missed. */
function entriesOf(name: string): readonly CoralEntry[] {
  const found = findCorals(name);
  return found.kind === 'one' ? [found.entry] : found.kind === 'several' ? found.entries : [];
}
