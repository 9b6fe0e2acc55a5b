import { known, slotsOf, type Case, type Moment } from '../../core/language/case.ts';
import { compoundsFor } from '../../core/dosing/compound.ts';
import { dangerSide } from '../../core/language/danger.ts';
import type { Frame } from '../../core/language/frame.ts';
import { ACTING, wordsBesides } from '../../core/language/goes-on.ts';
import type { Kind } from '../../core/language/kinds.ts';
import { met } from '../../core/language/met.ts';
import type { ParameterId } from '../../core/water/parameter.ts';
import type { Answer } from '../answer.ts';
import type { OwnContext } from '../command.ts';
import { rowOf } from './kinds.ts';

/** What presses on people and animals now. */
const DANGERS: readonly Kind[] = ['person-hurt', 'urgent-water'];
const SMALL_TALK: ReadonlySet<Kind> = new Set(['next-step', 'greeting', 'off-topic']);
/** So sure must a danger of an earlier message have been to come before everything; own choice. */
const SURE_DANGER = 0.85;
/** Words a question has at most that leans on what was told. */
const FEW_WORDS = 9;
/** Emergencies that are over once the number is back. */
const BY_LEVEL: Readonly<Record<string, ParameterId>> = {
  overheating: 'temperature',
  'cold water': 'temperature',
  'salinity crash': 'salinity',
  ammonia: 'ammonia',
};
/** What else presses is named, this many at most. */
const MOST_THEN = 2;

/**
 * "what do I do first", "is that ok", "how much then": answered from what the case holds. A person and a tank in danger
 * come first; a question for an amount or a time goes on with the sum asked last; else the most pressing of the case. What
 * presses next is named behind it.
 */
export function nextStep(frame: Frame, before: Case, context: OwnContext): Answer | undefined {
  const said = before.moments.filter(({ kind }) => !SMALL_TALK.has(kind) && !ACTING.has(kind));
  const last = said.at(-1) ?? doseWanted(before)[0];
  if (last === undefined) return undefined;
  const given = inOrder(frame, said, last, before).flatMap((moment) => {
    const done = rowOf(moment.kind)?.answer(frameOf(moment, frame, before), context);
    return done === undefined ? [] : [{ done, presses: isPressing(moment) }];
  });
  const [first, ...others] = given;
  if (first === undefined) return undefined;
  const then = others
    .filter(({ done, presses }) => presses && done.headline !== first.done.headline)
    .slice(0, MOST_THEN)
    .map(({ done }) => `Then: ${done.headline}`);
  return {
    ...first.done,
    read: ['from what you told so far', ...first.done.read],
    steps: [...first.done.steps, ...then],
  };
}

/** Whether a short question without a number of its own leans on something that presses in its case. */
export function leansOn({ slots, reading }: Frame, { moments }: Case): boolean {
  const isBare = slots.levels === undefined && slots.amount === undefined;
  return isBare && wordsBesides(reading.scanned) <= FEW_WORDS && moments.some(isPressing);
}

function isPressing({ kind, probability = 0 }: Moment): boolean {
  if (DANGERS.includes(kind)) return probability >= SURE_DANGER;
  return kind === 'overdose' || AILING.has(kind);
}

/** Kinds of a sum that a case can go on with. */
const SUMS = /^(?:dose|change|salinity|solution|limewater|light-hours|light-lamp)/;
/** What ails animals: of several the one that was told most plainly. */
const AILING: ReadonlySet<Kind> = new Set<Kind>(['fish-ill', 'coral-symptom', 'algae-pest']);

function inOrder({ reading }: Frame, said: readonly Moment[], last: Moment, before: Case): readonly Moment[] {
  const dangers = latest(
    said.filter((moment) => isPressing(moment) && !isBack(moment, before)),
    DANGERS,
  );
  const ailing = said
    .filter(({ kind, card }) => AILING.has(kind) && card !== undefined)
    .toSorted((a, b) => (b.probability ?? 0) - (a.probability ?? 0))
    .slice(0, 1);
  const rest = [...latest(said, ['overdose']), ...ailing, ...latest(said, ['moved', 'readings-ok', 'cycle'])];
  const sums = [...said.filter(({ kind }) => SUMS.test(kind)).slice(-1), ...doseWanted(before)];
  const asksSum =
    !met(reading.scanned, 'times.first') &&
    met(
      reading.scanned,
      'manner.askMuch',
      'manner.askWhen',
      'manner.continuation',
      'sums.rate',
      'manner.agreement',
    );
  const all = asksSum ? [...dangers, ...sums, ...rest, last] : [...dangers, ...rest, ...sums, last];
  return [...new Set(all)].filter((moment) => !DANGERS.includes(moment.kind) || dangers.includes(moment));
}

/** A dose, where a level that salts are dosed for is wanted somewhere in the case. */
function doseWanted(before: Case): readonly Moment[] {
  const { levels = [] } = known(before);
  const wanted = levels.findLast(({ part, of }) => part === 'wanted' && compoundsFor(of).length > 0);
  return wanted === undefined ? [] : [{ atMs: 0, kind: 'dose-amount', slots: { of: wanted.of } }];
}

/** The number is back where it is no emergency. */
function isBack({ card = '' }: Moment, before: Case): boolean {
  const of = BY_LEVEL[card];
  const now = of === undefined ? undefined : slotsOf(known(before).levels ?? [], of).now;
  return of !== undefined && now !== undefined && dangerSide(of, now) === undefined;
}

/** The latest moment of each of these kinds, in their order. */
function latest(said: readonly Moment[], kinds: readonly Kind[]): readonly Moment[] {
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
    slots: isOthers === true ? { ...slots, ...now } : told(before, slots, now),
    rest,
    reading: {
      ...reading,
      kinds: [{ name: kind, probability: 1 }],
      cards: cards.map(({ name }) => ({ name: `${kind}/${name}`, probability: 1 })),
    },
  };
}

/** All that is known of the member's own tank, the levels of the parameter that is spoken of in their slots. */
function told(before: Case, slots: Frame['slots'], now: Frame['slots']): Frame['slots'] {
  const all = known(before);
  const of = now.of ?? slots.of;
  const { levels } = all;
  return {
    ...all,
    ...slots,
    ...slotsOf(levels ?? [], of),
    ...now,
    ...(levels === undefined ? {} : { levels }),
  };
}
