import { dangerOf, isDangerKind } from './kind-groups.ts';
import type { Line } from './labelled.ts';
import type { Likely } from './likely.ts';
import type { Thresholds } from './model-file.ts';

/** A message read by weights that have not seen its batch: the probabilities of its kinds, likeliest first. */
export interface Unseen {
  readonly line: Line;
  readonly kinds: readonly Likely[];
}

/**
 * Of all messages, the share that may be answered wrong as if sure. It is counted strictly, against the labels of one hand
 * and by weights that a third of the writers is kept from: the first fresh batch had a quarter of it (report.md, v1).
 */
export const MOST_WRONG = 0.06;
/** Of calm messages with alarming words, the share that may raise an alarm, counted in the same way. Own choice. */
export const MOST_FALSE_ALARMS = 0.06;
/** Of emergencies, the share that must at least lead to the question. Own choice. */
const LEAST_ASKED = 0.985;
/** Of messages, the share that may be called far from everything. Own choice. */
const MOST_FAR = 0.01;

const STEPS = Array.from({ length: 99 }, (_, at) => (at + 1) / 100);

/**
 * Where to answer, to ask and to offer, read off messages the weights have not seen: the lowest probability at which the
 * share of wrong answers, of false alarms and of missed emergencies stays within what is allowed.
 */
export function calibrated(unseen: readonly Unseen[]): Thresholds {
  const wrongAt = (least: number): number =>
    share(
      unseen,
      ({ line, kinds: [first] }) =>
        first !== undefined && first.probability >= least && !isRight(line, first.name),
    );
  const calm = unseen.filter(({ line }) => line.calm === true && !isDangerous(line));
  const emergencies = unseen.filter(({ line }) => isDangerous(line) && line.calm !== true);
  return {
    answer: STEPS.find((least) => wrongAt(least) <= MOST_WRONG) ?? 0.99,
    margin: 0.1,
    danger: STEPS.find((least) => share(calm, (one) => danger(one) >= least) <= MOST_FALSE_ALARMS) ?? 0.99,
    maybeDanger:
      STEPS.findLast((least) => share(emergencies, (one) => danger(one) >= least) >= LEAST_ASKED) ?? 0.01,
    far:
      STEPS.findLast(
        (most) => share(unseen, ({ kinds: [first] }) => (first?.probability ?? 0) < most) <= MOST_FAR,
      ) ?? 0.01,
  };
}

/** Whether a kind is what the message wants first, or as well. */
export function isRight({ kind, also = [] }: Line, name: string): boolean {
  return kind === name || also.some((other) => other === name);
}

export function isDangerous({ kind, also = [] }: Line): boolean {
  return [kind, ...also].some(isDangerKind);
}

/** Probability that a person, an animal or a tank is in danger now. */
export function danger({ kinds }: Pick<Unseen, 'kinds'>): number {
  return dangerOf(kinds);
}

function share<T>(all: readonly T[], test: (one: T) => boolean): number {
  return all.length === 0 ? 0 : all.filter(test).length / all.length;
}
