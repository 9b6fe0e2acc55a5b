import { known, type Case, type Moment } from '../../core/language/case.ts';
import type { Frame } from '../../core/language/frame.ts';
import type { Kind } from '../../core/language/kinds.ts';
import { met } from '../../core/language/met.ts';
import type { Answer } from '../answer.ts';
import type { OwnContext } from '../command.ts';
import { rowOf } from './kinds.ts';

/** Kinds in the order they press: a person, the water now, what ails animals, what was measured. */
const PRESSING: readonly Kind[] = [
  'person-hurt',
  'urgent-water',
  'overdose',
  'fish-ill',
  'coral-symptom',
  'algae-pest',
  'moved',
  'readings-ok',
  'cycle',
];
const SMALL_TALK: ReadonlySet<Kind> = new Set(['next-step', 'greeting', 'off-topic']);

/**
 * "what do I do first", "is that ok", "how much then": answered from what the case holds. A person and a tank in danger
 * come first; a question for an amount or a time goes on with the sum asked last; else the most pressing of the case.
 */
export function nextStep(frame: Frame, before: Case, context: OwnContext): Answer | undefined {
  const all = before.moments.filter(({ kind }) => !SMALL_TALK.has(kind));
  const last = all.at(-1);
  if (last === undefined) return undefined;
  const said = last.isOthers === true ? [last] : all.filter(({ isOthers }) => isOthers !== true);
  for (const moment of inOrder(frame, said, last)) {
    const done = rowOf(moment.kind)?.answer(frameOf(moment, frame, before), context);
    if (done !== undefined) return { ...done, read: ['from what you told so far', ...done.read] };
  }
  return undefined;
}

function inOrder({ reading }: Frame, said: readonly Moment[], last: Moment): readonly Moment[] {
  const dangers = pressing(said, PRESSING.slice(0, 2));
  const goesOnWithLast = met(
    reading.scanned,
    'manner.askMuch',
    'manner.askWhen',
    'manner.continuation',
    'sums.rate',
    'manner.agreement',
  );
  const rest = pressing(said, PRESSING);
  return goesOnWithLast && !met(reading.scanned, 'times.first')
    ? [...dangers, last, ...rest]
    : [...dangers, ...rest, last];
}

/** The latest moment of each of these kinds, in their order. */
function pressing(said: readonly Moment[], kinds: readonly Kind[]): readonly Moment[] {
  return kinds
    .map((kind) => said.findLast((moment) => moment.kind === kind))
    .filter((one) => one !== undefined);
}

/** A moment as a frame again: what it said itself, over all that is known of the member's own tank, under what was said now. */
function frameOf(moment: Moment, { reading, rest, slots: now }: Frame, before: Case): Frame {
  const { kind, card, slots, isOthers } = moment;
  const cards = card === undefined ? [] : [{ name: card, probability: 1 }];
  return {
    kind,
    cards,
    probability: 1,
    slots: { ...(isOthers === true ? {} : known(before)), ...slots, ...now },
    rest,
    reading: {
      ...reading,
      kinds: [{ name: kind, probability: 1 }],
      cards: cards.map(({ name }) => ({ name: `${kind}/${name}`, probability: 1 })),
    },
  };
}
