import { agreement } from './agreement.ts';
import { asAsked } from './as-asked.ts';
import { fillSlots } from './fill-slots.ts';
import { coralWordsAmongCorals } from './lexicon/everyday-coral-words.ts';
import type { Kind } from './kinds.ts';
import type { Likely } from './likely.ts';
import type { Reading } from './reading.ts';
import type { Said } from './said.ts';
import type { Slots } from './slots.ts';
import { parametersNamed } from './levels-said.ts';
import { withoutTakenBack } from './taken-back.ts';

/** A message as one of the things it may want: what it says of that, and what of it was not used. */
export interface Frame<K extends Kind = Kind> {
  readonly kind: K;
  /** Below kinds with cards: which, likeliest first, each with its probability among the cards of its kind. */
  readonly cards: readonly Likely[];
  readonly probability: number;
  readonly slots: Slots;
  readonly rest: readonly Said[];
  readonly reading: Reading;
}

/** The frames a reading allows, likeliest first. */
export function framesOf(reading: Reading): readonly Frame[] {
  const said = withoutTakenBack(reading.scanned, reading.said);
  const { slots, rest } = fillSlots(reading.scanned, said);
  const among = slots.corals === undefined ? everydayCorals(reading.scanned) : [];
  const named = parametersNamed(reading.scanned);
  const frames = reading.kinds.map(({ name, probability }) => ({
    kind: name,
    get cards() {
      return reading.cards(name);
    },
    probability,
    slots: asAsked(
      name,
      among.length > 0 && ofCorals.has(name) ? { ...slots, corals: among } : slots,
      reading.scanned,
    ),
    rest,
    reading,
  }));
  return weighed(frames, ({ kind }) => agreement(kind, slots, named));
}

/** Frames by what speaks for each, likeliest first; cards are read where they are asked for. */
export function weighed(frames: readonly Frame[], factor: (frame: Frame) => number): readonly Frame[] {
  const all = frames.map((frame) => ({ frame, weight: frame.probability * factor(frame) }));
  const sum = all.reduce((total, { weight }) => total + weight, 0);
  return all
    .toSorted((a, b) => b.weight - a.weight)
    .map(({ frame, weight }) => ({
      kind: frame.kind,
      get cards() {
        return frame.cards;
      },
      probability: weight / sum,
      slots: frame.slots,
      rest: frame.rest,
      reading: frame.reading,
    }));
}

/** Kinds that ask of a coral. */
const ofCorals: ReadonlySet<Kind> = new Set<Kind>([
  'coral-light',
  'par-ok',
  'coral-place',
  'pair',
  'tank-plan',
  'growth',
  'flow',
  'feed',
  'looks',
  'coral-about',
  'day-night',
  'coral-record',
  'fragging',
  'coral-symptom',
]);

/** Everyday words that name a coral where a question is of one. */
function everydayCorals({ tokens }: Reading['scanned']): string[] {
  const words = tokens.flatMap(({ word, number }) => (number === undefined ? [word] : []));
  return words.filter((word) => coralWordsAmongCorals.has(word.replace(/s$/, '')));
}
