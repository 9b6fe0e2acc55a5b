import type { SourceCode } from '../../core/sources.ts';
import { answer, type Answer, type NextAction } from '../answer.ts';

/** What every card has: a first line, facts by their labels, steps, hazards and sources. */
export interface Parts {
  readonly headline: string;
  readonly points: readonly (readonly [label: string, value: string])[];
  readonly steps?: readonly string[];
  readonly cautions?: readonly string[];
  readonly sources: readonly SourceCode[];
}

/** A card as an answer. */
export function ofParts(
  { headline, points, steps = [], cautions = [], sources }: Parts,
  next: readonly NextAction[],
): Answer {
  return answer({
    headline,
    facts: points.map(([label, value]) => ({ label, value })),
    steps,
    dangers: cautions,
    sources,
    next,
  });
}
