import type { Frame } from '../../core/language/frame.ts';
import { ACTING, type Standing } from '../../core/language/goes-on.ts';
import { retold } from '../../core/language/retold.ts';
import type { Slots } from '../../core/language/slots.ts';
import type { About } from './about.ts';
import { answered, type Given } from './answered.ts';
import type { Decision } from './decide.ts';
import { heardOf } from './heard.ts';
import { leansOn, nextStep } from './next-step.ts';

/** Kinds less likely than this are not tried with what the case knows. */
const TRIED = 0.2;
/** From this probability on what a message was taken for is kept in the case: less is only told. Own choice. */
export const KEPT = 0.3;
/** Kinds of a sum with numbers of its own: no matter of the case alone. */
const SUMS = /^(?:dose|change|salinity|solution|limewater|convert|volume|remind|log|coral-record|tank-setup)/;

/** The rest of the question before it: its own words were unlike any question, and what it puts right is kept. */
export function restOf(first: Frame, stand: Standing, about: About): Given | undefined {
  if (stand.kind !== 'rest') return undefined;
  const again = retold(first, stand.of, stand.slots, about.before.moments);
  const done = answered({ ...again, probability: Math.max(first.probability, KEPT) }, about);
  return done === undefined ? undefined : withHeard(done, stand.slots);
}

/** What leans on the whole case ("what do I do first") is answered from it. */
export function nextOf(first: Frame, about: About): Given | undefined {
  const answer = nextStep(first, about.before, about.context);
  return answer === undefined
    ? undefined
    : { answer, frame: { ...first, kind: 'next-step' }, taken: [first.kind] };
}

/**
 * What a message that is unsure by itself, or that lacks something, means in its case: the likeliest kind whose answer the
 * case makes whole, else the step the case asks for.
 */
export function fromCase(decision: Decision, frames: readonly Frame[], about: About): Given | undefined {
  const [first] = frames;
  if (first === undefined || about.before.moments.length === 0) return undefined;
  const isSum = decision.kind === 'answer' && SUMS.test(decision.frame.kind);
  const leant = !isSum && leansOn(first, about.before) ? nextOf(first, about) : undefined;
  if (leant !== undefined) return leant;
  const sure = decision.kind === 'answer' ? answered(decision.frame, about) : undefined;
  if (sure !== undefined && sure.waits === undefined) return undefined;
  for (const frame of frames.slice(0, 3)) {
    if (frame.probability < TRIED || frame.kind === 'next-step' || ACTING.has(frame.kind)) continue;
    const done = answered(frame, about);
    if (done !== undefined && done.waits === undefined && done.isFilled === true) return done;
  }
  return first.slots.levels === undefined ? nextOf(first, about) : undefined;
}

function withHeard(given: Given, slots: Slots): Given {
  const { answer: done } = given;
  const read = [`with what you said before: ${heardOf(slots)}`, ...done.read];
  return { ...given, answer: { ...done, read } };
}
