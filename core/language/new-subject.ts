import { Problem } from '../problem.ts';
import { readQuantity } from '../quantity/read.ts';
import { known, type Case } from './case.ts';
import type { Frame } from './frame.ts';
import { lastAsked } from './goes-on.ts';
import { asksNothing } from './kinds.ts';
import { met } from './met.ts';
import type { Scanned } from './tokens.ts';
import { toldNumbers } from './told-numbers.ts';

/** Tanks by the names a member gave them: the one a message names, and the one meant where none is named. */
export interface Named {
  readonly named?: string | undefined;
  readonly usual?: string | undefined;
}

/** Volumes this far apart are two tanks, as a part of the larger: "75 gal" and "about 280 L" are one. Own choice. */
const SAME_WATER = 0.1;
/** As sure as this a message asks something; own choice. */
const ASKED = 0.5;

/** Whether a message is about the tank of somebody else ("my friend's tank"). */
export function isSomebodyElses({ reading, slots }: Pick<Frame, 'reading' | 'slots'>): boolean {
  return (
    met(reading.scanned, 'manner.othersTank') || (slots.volume !== undefined && isOwned(reading.scanned))
  );
}

/** Words for other keepers and what they own. They are grammar: nothing is learnt of them. */
const OTHERS: ReadonlySet<string> = new Set(
  'neighbour neighbor brother sister friend buddy mate uncle aunt cousin colleague dad mom mum he she they'.split(
    ' ',
  ),
);
const HAS: ReadonlySet<string> = new Set('has had keeps owns runs'.split(' '));
const THEIRS: ReadonlySet<string> = new Set(['hers', 'theirs']);

/** "my neighbour also has a reef, a 20 gallon", "hers is 90 l": the water is theirs. */
function isOwned({ tokens }: Scanned): boolean {
  const words = tokens.map(({ word }) => word);
  const at = words.findIndex((word) => OTHERS.has(word));
  const isKept = at >= 0 && words.slice(at + 1, at + 4).some((word) => HAS.has(word));
  return isKept || words.some((word) => THEIRS.has(word));
}

/**
 * Whether a message begins a case of its own: it says so ("new question", "another tank"), names another of the member's
 * tanks, or gives another volume together with another subject. A correction never does, nor what only
 * tells or leans on the case.
 */
export function isNewSubject(before: Case, frame: Frame, { named, usual }: Named = {}): boolean {
  if (before.moments.length === 0) return false;
  const { scanned } = frame.reading;
  if (met(scanned, 'manner.newSubject') && !isInPassing(frame)) return true;
  if (named !== undefined && named !== (before.tank ?? usual)) return true;
  if (met(scanned, 'manner.correction') || asksNothing.has(frame.kind)) return false;
  const { volume: then } = known(before);
  const { volume: now } = frame.slots;
  if (then === undefined || now === undefined || repeats(frame, before)) return false;
  return isOtherWater(then, now) && isOtherSubject(before, frame);
}

/** "my phone fell into the skimmer of the other tank": another tank that nothing is said or asked of. */
function isInPassing({ kind, probability, slots: { levels, volume } }: Frame): boolean {
  const isAsked = !asksNothing.has(kind) && probability >= ASKED;
  return levels === undefined && volume === undefined && !isAsked;
}

/** It says the number told before, beside another: "110 is only the display, with the sump it's 150". */
function repeats({ reading: { said } }: Frame, before: Case): boolean {
  const told = toldNumbers(before).filter(({ part }) => part === 'system');
  return said.length > 1 && said.some(({ number }) => told.some(({ value }) => value === number.value));
}

/** Whether two volumes, as text, are clearly not of one tank; what cannot be read says nothing. */
export function isOtherWater(one: string, other: string): boolean {
  const [a, b] = [litresOf(one), litresOf(other)];
  return a !== undefined && b !== undefined && Math.abs(a - b) > SAME_WATER * Math.max(a, b);
}

function isOtherSubject(before: Case, { kind, slots }: Frame): boolean {
  const { of, corals = [] } = known(before);
  const isOfSame = slots.of !== undefined && slots.of === of;
  const isOfSameCoral = (slots.corals ?? []).some((name) => corals.includes(name));
  return kind !== lastAsked(before.moments) && !isOfSame && !isOfSameCoral;
}

function litresOf(text: string): number | undefined {
  try {
    return readQuantity('volume', text, { field: 'volume' }).value;
  } catch (error) {
    if (error instanceof Problem) return undefined;
    throw error;
  }
}
