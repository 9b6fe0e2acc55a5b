import type { Frame } from '../../core/language/frame.ts';
import { ACTING, type Standing } from '../../core/language/goes-on.ts';
import { isSum } from '../../core/language/kind-groups.ts';
import { retold } from '../../core/language/retold.ts';
import type { Slots } from '../../core/language/slots.ts';
import type { About } from './about.ts';
import { answered, type Given } from './answered.ts';
import { isDangerPerhaps, type Decision } from './decide.ts';
import { heardOf } from './heard.ts';
import { leansOn, nextStep } from './next-step.ts';

/** Kinds less likely than this are not tried with what the case knows. Own choice. */
const TRIED = 0.2;
/** From this probability on what a message was taken for is kept in the case: less is only told. Own choice. */
export const KEPT = 0.3;
/** From this share on "what next" may be asked, or something only be told. Own choice. */
const ASKS_NEXT = 0.1;

/** The rest of the question before it: its own words were unlike any question, and what it puts right is kept. */
export function restOf(first: Frame, stand: Standing, about: About): Given | undefined {
  if (stand.kind !== 'rest') return undefined;
  const again = retold(first, stand.of, stand.slots, about.before.moments);
  const done = answered({ ...again, probability: Math.max(first.probability, KEPT) }, about);
  return done === undefined ? undefined : withHeard(done, stand.slots);
}

/** What puts right something that no question rested on, or only tells in the course of a story, is noted. */
export function notedOf(decision: Decision, frames: readonly Frame[], about: About): Given | undefined {
  const [first] = frames;
  const told = frames.find(({ kind }) => kind === 'told');
  if (first === undefined || told === undefined || about.before.moments.length === 0) return undefined;
  const isNoted = about.stand.kind === 'noted';
  const isOpen = decision.kind !== 'answer' && about.before.waits === undefined;
  const isTold = isOpen && first === told && !isQuestion(first) && !isDangerPerhaps(frames);
  return isNoted || isTold ? answered(told, about) : undefined;
}

function isQuestion({ reading: { scanned } }: Frame): boolean {
  return scanned.tokens.some(({ mask }) => mask === '?');
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
export function fromCase(
  decision: Decision,
  frames: readonly Frame[],
  about: About,
  run: (frame: Frame) => Given | undefined,
): Given | undefined {
  const [first] = frames;
  if (first === undefined || about.before.moments.length === 0) return undefined;
  const isOfSum =
    decision.kind === 'answer' && (isSum(decision.frame.kind) || ACTING.has(decision.frame.kind));
  const leant = !isOfSum && leansOn(first, about.before) ? nextOf(first, about) : undefined;
  if (leant !== undefined) return leant;
  const sure = decision.kind === 'answer' ? run(decision.frame) : undefined;
  if (sure !== undefined && (sure.waits === undefined || isOfSum)) return undefined;
  for (const frame of frames.slice(0, 3)) {
    if (frame.probability < TRIED || frame.kind === 'next-step' || ACTING.has(frame.kind)) continue;
    const done = run(frame);
    if (done !== undefined && done.waits === undefined && done.isFilled === true) return done;
  }
  const asksNext = frames
    .slice(0, 3)
    .some(({ kind, probability }) => kind === 'next-step' && probability >= ASKS_NEXT);
  if (!reads(first) && (asksNext || isQuestion(first))) return nextOf(first, about);
  const told = frames.find(({ kind }) => kind === 'told');
  const isStory = decision.kind !== 'answer' && !isDangerPerhaps(frames) && !isQuestion(first);
  return isStory && told !== undefined && told.probability >= ASKS_NEXT ? run(told) : undefined;
}

/** It tells what something reads, and not only what it should. */
function reads({ slots: { levels = [] } }: Frame): boolean {
  return levels.some(({ part }) => part !== 'wanted' && part !== 'target');
}

function withHeard(given: Given, slots: Slots): Given {
  const { answer: done } = given;
  const read = [`with what you said before: ${heardOf(slots)}`, ...done.read];
  return { ...given, answer: { ...done, read } };
}
