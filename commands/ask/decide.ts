import { dangerOf, isDangerKind } from '../../core/language/kind-groups.ts';
import { met } from '../../core/language/met.ts';
import type { Frame } from '../../core/language/frame.ts';
import { asksNothing, type Kind } from '../../core/language/kinds.ts';
import type { Thresholds } from '../../core/language/model-file.ts';
import { personLead } from '../urgent/of-reading.ts';

/** What to do with a message that stands alone. */
export type Decision =
  | { readonly kind: 'answer'; readonly frame: Frame; readonly others: readonly Frame[] }
  | { readonly kind: 'offer'; readonly frames: readonly Frame[] }
  | { readonly kind: 'far' };

/** At most so many things are offered. */
export const MOST_OFFERED = 4;
/** From this probability on another kind is another question of the same message. Own choice. */
const ALSO = 0.15;

/** From this probability a danger is the first thing offered; below it stands behind the likelier ones. Own choice. */
const ASKED_FIRST = 0.2;

/** Below this probability a danger told as over or long past is asked about, not answered. Own choice. */
const SURELY = 0.9;

/** What only tells or greets is answered as that only where less than this speaks of a hurt person. Own choice. */
const PERHAPS_HURT = 0.08;

/** From this probability a danger is asked about before what goes on with a case is only noted. Own choice. */
const PERHAPS_DANGER = 0.15;

/** A person comes before the water even where the water is somewhat likelier. Own choice. */
const PERSON_FIRST = 0.6;

/**
 * Danger first: a person, then animals and tank, from a lower probability than anything else. Then the likeliest kind,
 * where it is likely enough and far enough ahead of the next; else the likeliest four are offered, a danger among them
 * when there may be one.
 */
export function decide(frames: readonly Frame[], thresholds: Thresholds): Decision {
  const [first, second] = frames;
  if (first === undefined) return { kind: 'far' };
  const person = frames.find(({ kind }) => kind === 'person-hurt');
  const water = frames.find(({ kind }) => kind === 'urgent-water');
  const [ofPerson, ofWater] = [person?.probability ?? 0, water?.probability ?? 0];
  const ofDanger = ofPerson + ofWater;
  const danger = ofPerson >= ofWater * personLead(first.reading, PERSON_FIRST) ? person : water;
  const isOver = ofDanger < SURELY && met(first.reading.scanned, 'manner.over', 'times.longAgo');
  const isLikely = ofDanger >= ASKED_FIRST;
  if (danger !== undefined && !isOver) {
    if (ofDanger >= thresholds.danger) return answered(danger, frames);
    if (asksNothing.has(first.kind) && (isLikely || ofPerson >= PERHAPS_HURT))
      return askedFirst([danger], frames);
  }
  const isSure =
    !(isOver && isDangerKind(first.kind)) &&
    first.probability >= thresholds.answer &&
    first.probability - (second?.probability ?? 0) >= thresholds.margin;
  if (isSure) return answered(first, frames);
  const report = reported(frames, thresholds);
  if (report !== undefined) return answered(report, frames);
  if (first.probability < thresholds.far) return { kind: 'far' };
  const dangers = frames.filter(
    ({ kind, probability }) => isDangerKind(kind) && probability >= thresholds.maybeDanger,
  );
  if (isLikely) return askedFirst(dangers, frames);
  // Where hardly anything speaks of danger, one button for it is enough: the likelier, since frames are in order.
  const perhaps = dangers.slice(0, 1);
  const others = frames.filter((frame) => !perhaps.includes(frame));
  return { kind: 'offer', frames: [...others.slice(0, MOST_OFFERED - perhaps.length), ...perhaps] };
}

/** Dangers are asked about first, beside the likelier kinds. */
function askedFirst(dangers: readonly Frame[], frames: readonly Frame[]): Decision {
  const others = frames.filter((frame) => !dangers.includes(frame));
  return { kind: 'offer', frames: [...dangers, ...others].slice(0, MOST_OFFERED) };
}

/** Whether a message that goes on with a case may tell of danger, and is not only to be noted. */
export function isDangerPerhaps(frames: readonly Frame[]): boolean {
  return dangerOf(frames.map(({ kind: name, probability }) => ({ name, probability }))) >= PERHAPS_DANGER;
}

/** What only reports readings: whichever of these it is, the readings are judged. */
const REPORTS: ReadonlySet<Kind> = new Set<Kind>(['readings-ok', 'moved', 'log', 'told']);

/** Readings told in a message that is surely a report, though not surely which kind of one. */
function reported(frames: readonly Frame[], { answer }: Thresholds): Frame | undefined {
  const [first] = frames;
  if (first === undefined || !REPORTS.has(first.kind)) return undefined;
  const sum = frames
    .filter(({ kind }) => REPORTS.has(kind))
    .reduce((all, { probability }) => all + probability, 0);
  const isRead = first.slots.levels?.some(({ part }) => part === 'now' || part === 'was') === true;
  return sum >= answer && isRead ? frames.find(({ kind }) => kind === 'readings-ok') : undefined;
}

function answered(frame: Frame, frames: readonly Frame[]): Decision {
  const others = frames.filter((other) => other !== frame && other.probability >= ALSO).slice(0, 2);
  return { kind: 'answer', frame, others };
}
