import { Problem } from '../../core/problem.ts';
import type { Answer, Fact } from '../answer.ts';
import type { UrgentInput } from './input.ts';

/** The part of the answer that is worked out for this tank. */
export type Numbers = Pick<Answer, 'read' | 'facts' | 'working' | 'sources'> & {
  /** Options that would say more. */
  readonly missing: readonly (keyof UrgentInput)[];
};

export const nothing: Numbers = { read: [], facts: [], working: [], sources: [], missing: [] };

/** Several parts in one, in order. */
export function together(...parts: readonly Numbers[]): Numbers {
  return {
    read: [...new Set(parts.flatMap(({ read }) => read))],
    facts: parts.flatMap(({ facts }) => facts),
    working: parts.flatMap(({ working }) => working),
    sources: parts.flatMap(({ sources }) => sources),
    missing: [...new Set(parts.flatMap(({ missing }) => missing))],
  };
}

export function fact(label: string, value: string): Fact {
  return { label, value };
}

/** A line that is worked out; where the numbers leave the range of the sum, that is what it says. */
export function worked(label: string, value: () => string): Fact {
  return fact(
    label,
    orWhy(value, (why) => why),
  );
}

/** What a sum gives, or what is said where its numbers leave its range: no sum takes the steps away. */
export function orWhy<T>(work: () => T, otherwise: (why: string) => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return otherwise(`not worked out: ${error.message.replace(/\.$/, '')}`);
  }
}
