import { compoundsFor } from '../../core/dosing/compound.ts';
import { known, type Case, type Moment } from '../../core/language/case.ts';
import { toldOf } from '../../core/language/evidence.ts';
import type { Frame } from '../../core/language/frame.ts';
import { ACTING, wordsBesides } from '../../core/language/goes-on.ts';
import { asksNothing, kinds, type Kind } from '../../core/language/kinds.ts';
import { isSum } from '../../core/language/kind-groups.ts';
import type { SlotName, Slots } from '../../core/language/slots.ts';
import { met } from '../../core/language/met.ts';
import { coverOf } from './cover.ts';

/** Besides sums, what is asked for by "how much" and "how long". */
const AMOUNTS: ReadonlySet<Kind> = new Set<Kind>(['light-hours', 'light-lamp']);
/** Kinds that press on animals where no danger does: asked first where nothing says what is asked. */
export const PRESSING: ReadonlySet<Kind> = new Set<Kind>([
  'overdose',
  'fish-ill',
  'coral-symptom',
  'algae-pest',
]);
/** What is said in passing beside most questions. */
const GENERAL = /^(?:readings-ok|moved|log|test-kit|claim|holiday|equipment|handling)$/;

/** Weights of a kind in a short question: own choices, fitted on stories of nine to twelve messages. */
const OWN = 1.3;
/** A question of more words than these leans less on what was told, and speaks so much more for itself. Own choices. */
export const FEW_WORDS = 9;
const LONG = 1.7;
const TOLD = 0.8;
const SAME = 0.5;
const ASKED_SUM = 0.9;
const PRESSES = 0.5;
const IN_PASSING = 0.5;
const LEAST = 0.25;
/** A level that is wanted somewhere speaks of a dose as plainly as this. Own choice. */
const WANTED = 0.6;

/** What a short question can mean in its case: the kinds it and the case speak of, the plainest first. */
export function wantedOf(frame: Frame, said: readonly Moment[], before: Case): readonly Kind[] {
  const asksSum = isSumAsked(frame);
  const wantsDose = isDoseWanted(before);
  const covered = coverOf(known(before));
  const own = wordsBesides(frame.reading.scanned) > FEW_WORDS ? OWN * LONG : OWN;
  const isSalty = isSalinitySpoken(frame, before);
  const facts = { ...known(before), ...frame.slots };
  const isOutcome = (kind: Kind): boolean =>
    met(frame.reading.scanned, 'sums.outcome') &&
    OUTCOMES.some(([of, needs]) => of === kind && needs.every((name) => facts[name] !== undefined));
  return kinds
    .filter(
      (kind) => !asksNothing.has(kind) && !ACTING.has(kind) && (isSalty || !kind.startsWith('salinity-')),
    )
    .map((kind) => {
      const told = Math.max(toldOf(said, kind), kind === 'dose-amount' && wantsDose ? WANTED : 0);
      const same = isOfSame(frame, said, kind) ? SAME : 0;
      const plain = own * ownShare(frame, kind) + TOLD * told + same + covered(kind);
      if (isOutcome(kind)) return { kind, weight: plain + OUTCOME };
      if (plain < LEAST) return { kind, weight: 0 };
      if (isSum(kind) || AMOUNTS.has(kind)) return { kind, weight: plain + (asksSum ? ASKED_SUM : 0) };
      if (PRESSING.has(kind)) return { kind, weight: plain + (asksSum ? 0 : PRESSES) };
      return { kind, weight: GENERAL.test(kind) ? plain * IN_PASSING : plain };
    })
    .filter(({ weight }) => weight > 0)
    .toSorted((a, b) => b.weight - a.weight)
    .map(({ kind }) => kind);
}

/** What comes of something done or planned, with the facts it needs: "where does that land me". */
const OUTCOMES: readonly (readonly [Kind, readonly SlotName[]])[] = [
  ['dose-effect', ['amount', 'salt']],
  ['dose-effect', ['amount', 'strength']],
  ['change-once', ['changed', 'levels']],
  ['change-once', ['share', 'levels']],
  ['salinity-forecast', ['waterRate', 'span']],
];
/** It weighs as much as a sum that is asked for and spoken of. Own choice. */
const OUTCOME = 1.5;

/** A sum of salinity stands for nothing where nobody spoke of it. */
function isSalinitySpoken({ slots, reading: { scanned } }: Frame, { moments }: Case): boolean {
  const isNamed = scanned.names.some(({ id }) => id === 'salinity');
  return isNamed || [...moments, { slots }].some((one) => hasSalinity(one.slots));
}

function hasSalinity({ of, levels = [] }: Slots): boolean {
  return of === 'salinity' || levels.some((level) => level.of === 'salinity');
}

/** The kind was told of the same parameter or coral that is named now ("back to the mag"). */
function isOfSame({ slots: { of, corals = [] } }: Frame, said: readonly Moment[], kind: Kind): boolean {
  const own = said.filter((moment) => moment.kind === kind).map(({ slots }) => slots);
  return own.some(
    (slots) =>
      (of !== undefined && slots.of === of) || corals.some((coral) => (slots.corals ?? []).includes(coral)),
  );
}

/** What the message itself speaks of, small talk and "what next" left aside. */
function ownShare({ reading }: Frame, kind: Kind): number {
  const others = reading.kinds.filter(({ name }) => !asksNothing.has(name));
  const sum = others.reduce((total, { probability }) => total + probability, 0);
  const own = others.find(({ name }) => name === kind)?.probability ?? 0;
  return sum < OWN_LEAST ? 0 : own / Math.max(sum, OWN_FAINT);
}

/** Below this everything but "what next" is noise; below the next it counts in part. Own choices. */
const OWN_LEAST = 0.02;
const OWN_FAINT = 0.25;

function isSumAsked({ reading }: Frame): boolean {
  return (
    !met(reading.scanned, 'times.first') &&
    met(
      reading.scanned,
      'manner.askMuch',
      'manner.askWhen',
      'manner.continuation',
      'sums.rate',
      'manner.agreement',
    )
  );
}

/** A level that salts are dosed for is wanted somewhere in the case, and is not below what the tank reads. */
function isDoseWanted(before: Case): boolean {
  const { levels = [] } = known(before);
  return levels.some(({ part, of, value }) => {
    const now = levels.find((level) => level.of === of && level.part === 'now');
    return part === 'wanted' && compoundsFor(of).length > 0 && (now === undefined || now.value < value);
  });
}
