import { parameterSlots } from './slots.ts';
import { known, ofAsked, over, slotsOf, type Case, type Moment } from './case.ts';
import type { Frame } from './frame.ts';
import { asksNothing, type Kind } from './kinds.ts';
import { isSum } from './kind-groups.ts';
import { withLentUnit } from './lent-unit.ts';
import { met } from './met.ts';
import type { SlotName, Slots } from './slots.ts';
import { takesBack } from './taken-back.ts';
import type { Scanned } from './tokens.ts';

/** How a message stands to what was said before. */
export type Standing =
  /** A question of its own; what the case knows may fill what it leaves out. */
  | { readonly kind: 'new' }
  /** The rest of a question that was open, a correction of the last one, or the last one with something changed. */
  | {
      readonly kind: 'rest';
      readonly of: Kind;
      readonly slots: Slots;
      /** The question before it was about somebody else's tank. */
      readonly isOthers: boolean;
    }
  /** It puts right what no question rested on yet. */
  | { readonly kind: 'noted' }
  /** "what do I do first", "is that ok": answered from the whole case. */
  | { readonly kind: 'next' };

/** Kinds that write: what was done is done, and nothing goes on from it but the question it left open. */
export const ACTING: ReadonlySet<Kind> = new Set<Kind>(['remind', 'log', 'tank-setup', 'coral-record']);

/** Words a message that is only the rest of another has at most, numbers and names not counted. Own choice. */
const FEW_WORDS = 7;
/** Questions besides sums that a value more or another goes on with; trouble and talk do not hang on one. */
const GOES_ON = /^(?:light|lux|par|pair|coral-light|coral-place|tank|remind|flow|feed|growth)/;
/** As sure as this of another kind, a message is no rest of the one before. Own choice. */
const SURE = 0.75;
/** The same where no question was open. Own choice. */
const OTHER = 0.4;

/**
 * How the likeliest frame of a message stands to its case. Short messages that bring a value, a name or a correction are
 * the rest of the question before them; a correction of something told long before is the rest of the question that used
 * it; "next-step" is asked of the case; all else stands alone.
 */
export function standing(frame: Frame, before: Case, uses: (kind: Kind) => readonly SlotName[]): Standing {
  const last = before.moments.at(-1);
  if (last === undefined) return { kind: 'new' };
  const { scanned, said } = frame.reading;
  const isShort = wordsBesides(scanned) <= FEW_WORDS;
  const brings = Object.keys(frame.slots).length > 0;
  const isCorrection = met(scanned, 'manner.correction') || takesBack(scanned, said);
  const asked = before.waits ?? lastAsked(before.moments.filter(({ kind }) => !ACTING.has(kind)));
  if (asked !== undefined && brings && isShort) {
    const least = before.waits === undefined ? OTHER : SURE;
    const isOnlyTold = frame.kind === 'told' && before.waits === undefined && !isSum(asked);
    const isOther = isOnlyTold || !asksNothing.has(frame.kind);
    const isSure = frame.probability >= least && frame.kind !== asked && isOther;
    const fits = fitting(frame.slots, uses(asked), before.waits !== undefined);
    const mayGoOn = isCorrection || before.waits !== undefined || isSum(asked) || GOES_ON.test(asked);
    if (fits && mayGoOn && (isCorrection || !isSure)) return restOf(asked, frame, before);
  }
  if (brings && isCorrection && asksNothing.has(frame.kind)) {
    const sum = before.moments.findLast(({ kind }) => isSum(kind) && fitting(frame.slots, uses(kind), false));
    return sum === undefined ? { kind: 'noted' } : restOf(sum.kind, frame, before);
  }
  return frame.kind === 'next-step' ? { kind: 'next' } : { kind: 'new' };
}

function restOf(of: Kind, frame: Frame, before: Case): Standing {
  const base = before.moments.findLast(({ kind }) => kind === of) ?? before.moments.at(-1);
  const slots = base?.slots ?? {};
  const { isOthers = false } = base ?? {};
  const later = settled(frame, slots, before.waits);
  return { kind: 'rest', of, slots: over(slots, asContainer(slots, later)), isOthers };
}

/** Of a question about a vessel and no tank, a volume is the vessel's. */
function asContainer(before: Slots, later: Slots): Slots {
  const { volume, ...rest } = later;
  const isVessel = before.container !== undefined && before.volume === undefined;
  return isVessel && volume !== undefined && later.container === undefined
    ? { ...rest, container: volume }
    : later;
}

/** The last thing that was really asked: small talk and "what next" leave it standing. */
export function lastAsked(moments: readonly Moment[]): Kind | undefined {
  return moments.findLast(({ kind }) => !asksNothing.has(kind))?.kind;
}

/** Whether it brings something that the question uses; to an open question any level will do. */
function fitting(slots: Slots, uses: readonly SlotName[], isOpen: boolean): boolean {
  const given = Object.keys(slots) as readonly SlotName[];
  return given.some((name) => uses.includes(name) || (isOpen && name === 'counts'));
}

/** A bare number in answer to a question is what was asked for, and a level of what was spoken of. */
function settled({ slots }: Frame, before: Slots, waits: Kind | undefined): Slots {
  const [only, more] = slots.counts ?? [];
  if (waits === undefined || only === undefined || more !== undefined) return slots;
  const text = String(only);
  const name = before.wanted === undefined && before.now !== undefined ? 'wanted' : 'now';
  return before.of === undefined ? slots : { ...slots, [name]: text };
}

/** Words that are no number and no name. */
export function wordsBesides({ tokens }: Scanned): number {
  return tokens.filter(({ mask, word }) => !mask.startsWith('#') && /\p{L}/u.test(word)).length;
}

/**
 * Slots of a frame with what the case knows in the places the kind uses and the message left empty. A message without a
 * level of its own is asked of those told before; one with a level takes over what belongs to the same parameter.
 */
export function filledFrom(
  { slots }: Pick<Frame, 'slots'>,
  before: Case,
  uses: readonly SlotName[],
): { readonly slots: Slots; readonly taken: readonly SlotName[] } {
  const all = known(before);
  const isBare = slots.levels === undefined;
  const of = slots.of ?? (isBare ? ofAsked(before) : undefined);
  const { levels, ...others } = all;
  const told: Slots = {
    ...withoutLevels(others),
    ...slotsOf(levels ?? [], of),
    ...(of === undefined ? {} : { of }),
    ...(isBare && levels !== undefined ? { levels } : {}),
  };
  const taken = uses.filter(
    (name) => slots[name] === undefined && told[name] !== undefined && (isBare || CARRIED.has(name)),
  );
  const withSalts: readonly SlotName[] = taken.includes('salt') ? [...taken, 'salts'] : taken;
  const filled = Object.fromEntries(withSalts.map((name) => [name, told[name]]));
  return { slots: withLentUnit({ ...filled, ...slots }), taken };
}

/** Slots without those that belong to one parameter. */
export function withoutLevels(slots: Slots): Slots {
  return Object.fromEntries(Object.entries(slots).filter(([name]) => !LEVELS.has(name)));
}

/** What stays true from message to message, whatever else a message brings. */
const CARRIED: ReadonlySet<string> = new Set<SlotName>([
  'volume',
  'corals',
  'salinity',
  'temperature',
  'now',
  'was',
  'of',
  'salt',
  'box',
]);
/** What belongs to one parameter. */
const LEVELS: ReadonlySet<string> = new Set<SlotName>([...parameterSlots, 'other', 'limit']);
