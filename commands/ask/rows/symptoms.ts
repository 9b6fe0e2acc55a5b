import { findCorals } from '../../../core/corals/find.ts';
import type { CoralEntry } from '../../../core/corals/entry.ts';
import { namedCoral } from '../../../core/corals/named.ts';
import type { SymptomId } from '../../../core/care/symptoms/cards.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import { troubleTold } from '../../../core/language/trouble.ts';
import type { Scanned } from '../../../core/language/tokens.ts';
import type { SentenceKey } from '../../../core/wording/language.ts';
import { say } from '../../../core/wording/say.ts';
import type { Answer } from '../../answer.ts';
import { action } from '../../calls.ts';
import type { OwnContext } from '../../command.ts';
import { newShutAnswer } from '../../coral/new-shut-answer.ts';
import { stretchedAnswer } from '../../coral/stretched-answer.ts';
import { lookAnswer } from '../../triage/look.ts';
import { symptomAction } from '../../triage/menu.ts';
import { symptomOf, type SymptomKind } from '../../triage/of-reading.ts';
import { saidWater } from '../../triage/said-water.ts';
import { saidSigns } from '../../triage/said-signs.ts';
import { tellMore } from '../../triage/tell-more.ts';
import type { Row } from '../row.ts';
import { lightOf } from './coral-light.ts';
import { coralsOf, parsOf } from './coral-said.ts';
import { litOf } from './light-of-symptom.ts';

/** Something looks wrong with a coral or a fish, or grows where nobody put it. */
export const symptomRows: readonly Row[] = [
  row('coral-symptom', 'ask.kindCoralSymptom'),
  row('algae-pest', 'ask.kindAlgaePest'),
  row('fish-ill', 'ask.kindFishIll'),
];

function row(kind: SymptomKind, label: SentenceKey): Row {
  return {
    kind,
    label,
    uses: ['light', 'corals', 'levels', 'of', 'now', 'temperature', 'salinity', 'volume'],
    answer: (frame, context) => seen(kind, frame, context),
  };
}

/** The card; where none is clear, what to tell, with the nearest cards as buttons. */
function seen(kind: SymptomKind, frame: Frame, context: OwnContext): Answer {
  const { slots, reading } = frame;
  const { first, others } = symptomOf(reading, kind);
  const names = slots.corals ?? [];
  const entries = names.flatMap(entriesOf);
  const { water, signs } = saidWater(slots);
  const lit = litOf(frame);
  const said = { water, signs: [...saidSigns(reading.scanned), ...lit.signs, ...signs] };
  const lightOnly = first === undefined || !hasTrouble(frame) ? lightSeen(frame, context) : undefined;
  if (lightOnly !== undefined)
    return { ...lightOnly, next: [...lightOnly.next, ...others.map((id) => symptomAction(id, {}))] };
  if (first === undefined) {
    const given = tellMore(names, entries, said.water, kind === 'fish-ill');
    return { ...given, next: [...others.map((id) => symptomAction(id, {})), ...given.next] };
  }
  const own = ofOneCoral(first, names, reading.scanned, said.water);
  if (own !== undefined) return own;
  const look = lookAnswer({ id: first, others, entries, volume: slots.volume, ...said }, context);
  return { ...look, facts: [...lit.facts, ...look.facts] };
}

function hasTrouble({ reading: { scanned } }: Frame): boolean {
  return troubleTold(scanned) !== undefined;
}

/** The light that was read at a coral, judged: all the answer there is where nothing else is known of the trouble. */
function lightSeen(frame: Frame, context: OwnContext): Answer | undefined {
  if (parsOf(frame).length === 0 || coralsOf(frame).length === 0) return undefined;
  const given = lightOf(frame, context);
  return (
    given && {
      ...given,
      next: [
        ...given.next,
        action(say('triage.whatISee'), 'triage', {}),
        action(say('checkup.checkMyReadings'), 'checkup', {}, ['readings']),
      ],
    }
  );
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
