import type { Answer } from '../commands/answer.ts';
import type { Keep } from '../commands/keep.ts';

/** The answer with what the member has not seen yet at the top; the same answer where there is nothing. */
export function withNotices(answer: Answer, keep: Keep): Answer {
  const notices = keep.takeNotices();
  return notices.length === 0 ? answer : { ...answer, notices };
}
