import { known, type Case } from '../../core/language/case.ts';
import type { Frame } from '../../core/language/frame.ts';
import { isSum } from '../../core/language/kind-groups.ts';
import { unsureIn } from '../../core/language/unsure.ts';
import { filledFrom } from '../../core/language/goes-on.ts';
import type { Kind } from '../../core/language/kinds.ts';
import type { SlotName, Slots } from '../../core/language/slots.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer } from '../answer.ts';
import type { About } from './about.ts';
import { heardOf, notUsed } from './heard.ts';
import { keptCoral } from './kept-coral.ts';
import { withKept, type Kept } from './kept-slots.ts';
import { rowOf } from './kinds.ts';
import { missingIn, type Need } from './row.ts';
import { isUnclear, nearest, particularOf, perhapsOf } from '../primer/particular.ts';
import { guarded } from './rows/guarded.ts';
import { unclearDangers } from './unclear-danger.ts';
import { unsureAnswer } from './unsure-answer.ts';

/** An answer and what it leaves behind: what it was taken for, and the kind whose question stays open. */
export interface Given {
  readonly answer: Answer;
  readonly frame: Frame | undefined;
  /** The kinds that are refused where it was none of what this says. */
  readonly taken: readonly Kind[];
  /** What the answer rests on, with what was filled in. */
  readonly slots?: Slots;
  readonly waits?: Kind;
  /** The case filled something in. */
  readonly isFilled?: boolean;
}

/** The tank kept that a message is about. */
export function keptOf({ tank, context: { keep, nowMs } }: About): Kept | undefined {
  return tank === undefined || keep === undefined ? undefined : { tank, keep, nowMs };
}

/**
 * Runs a frame's row: the one question it lacks something for, its answer, or undefined where it has none. What the message
 * leaves out is filled from the case, then from the kept tank.
 */
export function answered(frame: Frame, about: About): Given | undefined {
  const row = rowOf(frame.kind);
  if (row === undefined) return undefined;
  const { slots, read, isFilled } = filled(frame, row.uses, about);
  const whole = { ...frame, slots };
  const given = { frame, slots, taken: [frame.kind] };
  const waiting = { ...given, waits: frame.kind };
  const isComputed = row.computes?.(whole) === true;
  const particular = isComputed ? undefined : particularOf(whole);
  if (particular !== undefined) {
    const told = { ...particular, read: [...read, ...particular.read] };
    return { ...given, answer: guarded(frame, told), isFilled };
  }
  const unsure = isSum(frame.kind) ? unsureIn(frame, row.uses) : undefined;
  if (unsure !== undefined) return { ...waiting, answer: unsureAnswer(frame, unsure) };
  const missing = missingIn(row, whole);
  const perhaps = perhapsOf(whole);
  if (missing !== undefined) {
    const asked = asking(missing, whole, frame);
    const next = asked.next.length > 0 ? asked.next : perhaps;
    return { ...waiting, answer: { ...asked, next } };
  }
  const isOfCoral = row.uses.includes('corals') && slots.corals !== undefined;
  const isWhich = !isComputed && !isOfCoral && isUnclear(whole);
  const done = isWhich ? undefined : row.answer(whole, about.context);
  const [need] = row.needs ?? [];
  if (done === undefined && perhaps.length > 0)
    return { ...given, answer: nearest(perhaps, unclearDangers([frame.kind])) };
  if (done === undefined)
    return need === undefined ? undefined : { ...waiting, answer: asking(need, whole, frame) };
  const left =
    row.keepsAll === true
      ? []
      : notUsed(frame, row.uses).filter((text) => done.echo?.includes(`:${text}`) !== true);
  const all = { read: [...read, ...done.read], unused: [...done.unused, ...left] };
  const next = [...perhaps.slice(0, 2), ...done.next];
  return { ...given, answer: guarded(frame, { ...done, ...all, next }), isFilled };
}

/** Runs a frame's row at the first call and has its answer ever after: a row may write, and does so once. */
export function answeredOnce(about: About): (frame: Frame) => Given | undefined {
  const done = new Map<Frame, Given | undefined>();
  return (frame) => {
    if (!done.has(frame)) done.set(frame, answered(frame, about));
    return done.get(frame);
  };
}

/** The one question, with what was heard and what may answer it. */
function asking({ ask, next }: Need, whole: Frame, { slots }: Frame): Answer {
  const heard = heardOf(slots);
  return answer({
    headline: say(ask),
    tone: 'question',
    read: heard === '' ? [] : [heard],
    dangers: unclearDangers([whole.kind]),
    next: next?.(whole) ?? [],
  });
}

function filled(
  frame: Frame,
  uses: readonly SlotName[],
  about: About,
): { readonly slots: Slots; readonly read: readonly string[]; readonly isFilled: boolean } {
  const { slots, taken } = filledFrom(frame, about.fills, uses);
  const said = heardOf(Object.fromEntries(taken.map((name) => [name, slots[name]])));
  const read = said === '' ? [] : [`from what you said before: ${said}`];
  const kept = keptOf(about);
  const isFilled = taken.length > 0;
  if (kept === undefined) return { slots, read, isFilled };
  const whole = withKept(slots, { uses, kind: frame.kind, holdsLevels: holdsLevels(about.fills) }, kept);
  const coral = coralIn(whole.slots, uses, kept);
  const isLit = uses.includes('light') && whole.slots.light === undefined && coral?.light !== undefined;
  return {
    slots: isLit ? { ...whole.slots, light: [coral.light] } : whole.slots,
    read: [...read, ...whole.read, ...(coral === undefined ? [] : [coral.read])],
    isFilled,
  };
}

function holdsLevels(before: Case): boolean {
  return known(before).levels !== undefined;
}

/** What is kept of the one coral that is spoken of. */
function coralIn({ corals = [] }: Slots, uses: readonly SlotName[], kept: Kept) {
  const [only, more] = corals;
  return only === undefined || more !== undefined || !uses.includes('corals')
    ? undefined
    : keptCoral(only, kept);
}
