import type { Frame } from './frame.ts';
import type { Kind } from './kinds.ts';

/**
 * How much likelier a kind is inside a story than in a message that stands alone: the square root of its share among the
 * messages of the batches of stories over its share among all, rounded, as the
 * first four batches of stories had it. Own choice where these had less than ten.
 */
const LIKELIER: Partial<Record<Kind, number>> = {
  told: 5,
  'next-step': 2.5,
  'readings-ok': 2,
  'off-topic': 1.2,
  'fish-ill': 1,
  moved: 1,
  'salinity-adjust': 1,
  'coral-symptom': 0.9,
  'algae-pest': 0.9,
  'dose-amount': 0.9,
  'urgent-water': 0.75,
  'person-hurt': 0.75,
};
/** The others are questions that stand alone more often. */
const OTHERS = 0.6;

/** Frames of a message in the course of a story. People tell before they ask: what is as well only told is so first. */
export function inStory(frames: readonly Frame[]): readonly Frame[] {
  const weighed = frames.map((frame) => ({
    frame,
    weight: frame.probability * (LIKELIER[frame.kind] ?? OTHERS),
  }));
  const sum = weighed.reduce((total, { weight }) => total + weight, 0);
  return weighed
    .toSorted((a, b) => b.weight - a.weight)
    .map(({ frame, weight }) => ({
      ...frame,
      get cards() {
        return frame.cards;
      },
      probability: weight / sum,
    }));
}
