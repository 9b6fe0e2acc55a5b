import type { Kind } from '../../core/language/kinds.ts';
import { GUARD, NEVER_MIX } from '../triage/no-amount.ts';

/** Kinds that ask whether something hurts: while it is not clear what, what hurts worst is said. */
const OF_HARM: ReadonlySet<Kind> = new Set<Kind>(['handling', 'mixing']);

/** What stands with an answer that only asks back, where one of the kinds it may be is of harm. */
export function unclearDangers(kinds: readonly Kind[]): readonly string[] {
  return kinds.some((kind) => OF_HARM.has(kind)) ? [NEVER_MIX, GUARD] : [];
}
