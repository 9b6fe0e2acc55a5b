import { met } from './met.ts';
import type { Scanned } from './tokens.ts';

/**
 * Whether a message asks at which level of something to act: "at what temperature should I begin to lose sleep", "when is
 * salinity too low", "how high can nitrate go". What lies too high or low without a question is none.
 */
export function asksThreshold(scanned: Scanned): boolean {
  if (!scanned.names.some((name) => name.class === 'parameter') || met(scanned, 'manner.askWhy'))
    return false;
  if (met(scanned, 'manner.askLevel')) return true;
  const isAsked = scanned.tokens.some(({ word }) => QUESTION.has(word));
  return (
    isAsked &&
    met(scanned, 'manner.actsNow', 'manner.lethal', 'looks.tooMuch', 'looks.tooLittle', 'lives.dies')
  );
}

/** Words that ask for a level beside one of alarm. */
const QUESTION: ReadonlySet<string> = new Set(['what', 'which', 'when', 'where', 'whats', "what's"]);
