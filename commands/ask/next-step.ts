import { known, slotsOf, type Case, type Moment } from '../../core/language/case.ts';
import { dangerSide } from '../../core/language/danger.ts';
import { cardTold, dangerTold, likelyAs } from '../../core/language/evidence.ts';
import type { Frame } from '../../core/language/frame.ts';
import { ACTING, wordsBesides } from '../../core/language/goes-on.ts';
import type { Kind } from '../../core/language/kinds.ts';
import { retold, toldSlots } from '../../core/language/retold.ts';
import type { ParameterId } from '../../core/water/parameter.ts';
import type { Answer } from '../answer.ts';
import type { OwnContext } from '../command.ts';
import { rowOf } from './kinds.ts';
import { MAIN, wantedOf } from './wanted-of.ts';

/** What presses on people and animals now, in the order it is answered. */
const DANGERS = ['person-hurt', 'urgent-water'] as const;
/** So sure must a danger of earlier messages be to come before everything; own choice. */
const SURE_DANGER = 0.85;
/** Words a question has at most that leans on what was told. */
const FEW_WORDS = 9;
/** The same where something presses and the message is sure of nothing else. */
const MORE_WORDS = 20;
const UNSURE = 0.75;
/** Emergencies that are over once the number is back. */
const BY_LEVEL: Readonly<Record<string, ParameterId>> = {
  overheating: 'temperature',
  'cold water': 'temperature',
  'salinity crash': 'salinity',
  ammonia: 'ammonia',
};
/** What else presses is named, this many at most. */
const MOST_THEN = 2;
/** Kinds that press on animals where no danger does. */
const PRESSING: ReadonlySet<Kind> = new Set<Kind>(['overdose', 'fish-ill', 'coral-symptom', 'algae-pest']);

/**
 * "what do I do first", "is that ok", "how much then": answered from what the case holds. A person and a tank in danger
 * come first; then what the message itself and the whole case speak of most plainly. What presses next is named behind it.
 */
export function nextStep(frame: Frame, before: Case, context: OwnContext): Answer | undefined {
  const said = before.moments.filter(({ kind }) => !ACTING.has(kind));
  const dangers = DANGERS.filter((kind) => isPressing(said, kind) && !isBack(said, kind, before));
  const wanted = wantedOf(frame, said, before).filter((kind) => !DANGERS.some((danger) => danger === kind));
  const given = [...dangers, ...wanted].flatMap((kind) => {
    const done = attempt(kind, frame, said, before, context);
    return done === undefined
      ? []
      : [{ done, presses: PRESSING.has(kind) || dangers.some((one) => one === kind) }];
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

function attempt(
  kind: Kind,
  frame: Frame,
  said: readonly Moment[],
  before: Case,
  context: OwnContext,
): Answer | undefined {
  const row = rowOf(kind);
  if (row === undefined || kind === 'next-step') return undefined;
  const moment = said.findLast((one) => one.kind === kind) ?? { slots: {} };
  const isOthers = 'isOthers' in moment && moment.isOthers === true;
  const slots = isOthers ? { ...moment.slots, ...frame.slots } : toldSlots(before, moment.slots, frame.slots);
  const whole = retold(frame, kind, slots, said);
  const isWanting = (row.needs ?? []).some(
    ({ oneOf, when }) => oneOf.every((name) => slots[name] === undefined) && when?.(whole) !== false,
  );
  return isWanting ? undefined : row.answer(whole, context);
}

/** Whether a question without a number of its own leans on what presses in its case, or on the case because it is short. */
export function leansOn({ slots, reading, probability }: Frame, { moments }: Case): boolean {
  const words = wordsBesides(reading.scanned);
  if (DANGERS.some((kind) => isPressing(moments, kind)) && probability < UNSURE && words <= MORE_WORDS)
    return true;
  const isBare = slots.levels === undefined && slots.amount === undefined;
  const presses = moments.some(({ kind }) => PRESSING.has(kind));
  return isBare && words <= FEW_WORDS && presses;
}

function isPressing(moments: readonly Moment[], kind: (typeof DANGERS)[number]): boolean {
  return dangerTold(moments, kind) >= SURE_DANGER && moments.some((moment) => likelyAs(moment, kind) >= MAIN);
}

/** The number is back where it is no emergency. */
function isBack(moments: readonly Moment[], kind: Kind, before: Case): boolean {
  const of = BY_LEVEL[cardTold(moments, kind) ?? ''];
  const now = of === undefined ? undefined : slotsOf(known(before).levels ?? [], of).now;
  return of !== undefined && now !== undefined && dangerSide(of, now) === undefined;
}
