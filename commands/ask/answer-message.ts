import { noCase, withMoment, type Case } from '../../core/language/case.ts';
import { framesOf, type Frame } from '../../core/language/frame.ts';
import { filledFrom, standing } from '../../core/language/goes-on.ts';
import type { Kind } from '../../core/language/kinds.ts';
import { tongueOf } from '../../core/language/tongue/tongue-of.ts';
import type { Reader } from '../../core/language/reading.ts';
import { answer, type Answer, type NextAction } from '../answer.ts';
import type { OwnContext } from '../command.ts';
import { decide, type Decision } from './decide.ts';
import { foreignAnswer } from './foreign.ts';
import { heardOf, notUsed } from './heard.ts';
import { rowOf, usesOf } from './kinds.ts';
import { guarded } from './rows/guarded.ts';
import { despairAnswer } from '../urgent/despair.ts';
import { nextStep } from './next-step.ts';
import { asKind, farFromAll, notThat, offers } from './offer.ts';

/** How a message is to be taken where a button says so. */
export interface Taken {
  /** As this kind. */
  readonly as?: Kind;
  /** As none of these. */
  readonly not?: readonly Kind[];
}

/** An answer and what it leaves behind: what it was taken for, and the kind whose question stays open. */
interface Given {
  readonly answer: Answer;
  readonly frame: Frame | undefined;
  readonly waits?: Kind;
}

/**
 * Answers a message in plain words: reads it, decides what it is, calls the command. What the case knows fills what it
 * leaves out; what it says is added to the case.
 *
 * @throws Problem for what the member can put right.
 */
export function answerMessage(text: string, taken: Taken, reader: Reader, context: OwnContext): Answer {
  const { tongue } = tongueOf(text);
  if (tongue !== 'english' && taken.as === undefined) return foreignAnswer(text, tongue);
  const before = context.talk?.before ?? noCase;
  const reading = reader.read(text);
  const sad = despairAnswer(reading.scanned);
  if (sad !== undefined) return sad;
  const frames = framesOf(reading);
  let given: Given | undefined;
  try {
    given = givenFor(frames, taken, before, reader, context);
    return given.answer;
  } finally {
    const frame = given?.frame ?? frames[0];
    if (frame !== undefined) {
      const moment = { atMs: context.nowMs, kind: frame.kind, slots: frame.slots, ...cardOf(frame) };
      context.talk?.remember(withMoment(before, moment, text, given?.waits));
    }
  }
}

function givenFor(
  frames: readonly Frame[],
  { as, not = [] }: Taken,
  before: Case,
  { thresholds }: Reader,
  context: OwnContext,
): Given {
  if (as !== undefined) return outright(frames, as, before, context);
  const left = frames.filter(({ kind }) => !not.includes(kind));
  const decision = decide(left, thresholds);
  const first = decision.kind === 'answer' ? decision.frame : left[0];
  if (first === undefined) return { answer: farFromAll(frames), frame: undefined };
  const isDanger = first.kind === 'person-hurt' || first.kind === 'urgent-water';
  const stand = isDanger || not.length > 0 ? ({ kind: 'new' } as const) : standing(first, before, usesOf);
  if (stand.kind === 'next') {
    const next = nextStep(first, before, context);
    if (next !== undefined) return { answer: next, frame: first };
  }
  if (stand.kind === 'rest') {
    const whole = { ...first, kind: stand.of, slots: stand.slots };
    const done = answered(whole, before, context);
    if (done !== undefined) return withHeard(done, stand.slots);
  }
  return fromDecision(decision, left, not, before, context);
}

function fromDecision(
  decision: Decision,
  frames: readonly Frame[],
  not: readonly Kind[],
  before: Case,
  context: OwnContext,
): Given {
  if (decision.kind === 'far') return { answer: farFromAll(frames), frame: undefined };
  const offered = decision.kind === 'offer' ? decision.frames : frames.slice(0, 4);
  if (decision.kind === 'offer') return { answer: offers(offered), frame: undefined };
  const done = answered(decision.frame, before, context);
  if (done === undefined)
    return { answer: offers(offered.filter((frame) => frame !== decision.frame)), frame: decision.frame };
  const others = decision.others.map(({ kind }) => asKind(kind)).filter((one) => one !== undefined);
  return { ...done, answer: withNext(done.answer, [...others, notThat([...not, decision.frame.kind])]) };
}

/** The message taken as one kind, because a button said so. */
function outright(frames: readonly Frame[], kind: Kind, before: Case, context: OwnContext): Given {
  const frame = frames.find((each) => each.kind === kind);
  const done = frame === undefined ? undefined : answered(frame, before, context);
  return done ?? { answer: farFromAll(frames), frame };
}

/** Runs a frame's row: the one question it lacks something for, its answer, or undefined where it has none. */
function answered(frame: Frame, before: Case, context: OwnContext): Given | undefined {
  const row = rowOf(frame.kind);
  if (row === undefined) return undefined;
  const { slots, taken } = filledFrom(frame, before, row.uses);
  const whole = { ...frame, slots };
  const missing = (row.needs ?? []).find(
    ({ oneOf, when }) => oneOf.every((name) => slots[name] === undefined) && when?.(whole) !== false,
  );
  if (missing !== undefined) {
    const heard = heardOf(slots);
    const asked = answer({
      headline: missing.ask,
      read: heard === '' ? [] : [heard],
      next: [notThat([frame.kind])],
    });
    return { answer: asked, frame, waits: frame.kind };
  }
  const done = row.answer(whole, context);
  if (done === undefined) return undefined;
  const left = notUsed(frame, row.uses);
  const read = [
    ...(taken.length === 0
      ? []
      : [`from what you said before: ${taken.map((name) => String(slots[name])).join(', ')}`]),
    ...done.read,
    ...(left.length === 0 ? [] : [`not used: ${left.join(', ')}`]),
  ];
  return { answer: { ...done, read }, frame };
}

function withHeard(given: Given, slots: Frame['slots']): Given {
  const { answer: done } = given;
  return {
    ...given,
    answer: { ...done, read: [`with what you said before: ${heardOf(slots)}`, ...done.read] },
  };
}

function withNext(done: Answer, more: readonly NextAction[]): Answer {
  return { ...done, next: [...done.next, ...more] };
}

function cardOf({ cards }: Frame): { card?: string } {
  const [first] = cards;
  return first === undefined ? {} : { card: first.name };
}
