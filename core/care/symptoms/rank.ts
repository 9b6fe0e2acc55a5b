import type { Cause, Choice, SymptomCard } from './card.ts';
import type { Sign } from './sign.ts';

/** A sign found in the log or among the corals, with the sentence that says where. */
export interface Found {
  readonly sign: Sign;
  readonly text: string;
}

/** A cause in its place, with what speaks for it and against it. */
export interface Ranked {
  readonly id: string;
  readonly cause: Cause;
  readonly score: number;
  readonly reasons: readonly string[];
}

/** What one answer and one sign count; own choice. The order of the card decides where they are even. */
const ANSWER = 2;
const SIGN = 2;

/** The causes of a card, likeliest first: answers and signs only change the order, and every change says why. */
export function rank(
  card: SymptomCard,
  answers: readonly Choice[],
  found: readonly Found[],
): readonly Ranked[] {
  const ranked = Object.entries(card.causes).map(([id, cause]): Ranked => {
    const spoken = answers.flatMap(({ up = [], down = [], because }) => [
      ...(up.includes(id) ? [{ by: ANSWER, because }] : []),
      ...(down.includes(id) ? [{ by: -ANSWER, because: `against it: ${because}` }] : []),
    ]);
    const seen = found
      .filter(({ sign }) => cause.signs?.includes(sign))
      .map(({ text }) => ({ by: SIGN, because: text }));
    const all = [...spoken, ...seen];
    return {
      id,
      cause,
      score: all.reduce((sum, { by }) => sum + by, 0),
      reasons: [...new Set(all.map(({ because }) => because))],
    };
  });
  return ranked.sort((a, b) => b.score - a.score);
}
