import { isDangerKind } from '../../core/language/kind-groups.ts';
import { ruleWithin } from '../../core/claims/judge.ts';
import type { Frame } from '../../core/language/frame.ts';
import { met } from '../../core/language/met.ts';
import type { Decision } from './decide.ts';

/** A rule that was passed on, or is asked about, whose quantities are those of a rule that can be judged. */
export function ofClaim(frames: readonly Frame[]): Decision | undefined {
  const [first] = frames;
  if (first === undefined || isDangerKind(first.kind)) return undefined;
  const { slots, reading } = first;
  if (slots.wanted !== undefined) return undefined;
  if (!met(reading.scanned, 'manner.hearsay', 'manner.askTrue', 'manner.source', 'manner.rumour'))
    return undefined;
  const frame = frames.find(({ kind }) => kind === 'claim');
  const isJudged = frame !== undefined && ruleWithin(reading.scanned) !== undefined;
  return isJudged ? { kind: 'answer', frame, others: first === frame ? [] : [first] } : undefined;
}
