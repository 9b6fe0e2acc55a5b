import type { Frame } from '../../core/language/frame.ts';
import type { Answer } from '../answer.ts';
import { particularOf } from '../primer/particular.ts';

/** What is known of a rule that is often passed on and that no sum judges: its verdict first; undefined where it is none. */
export function verdictOf(frame: Frame): Answer | undefined {
  const given = particularOf(frame);
  return given && { ...given, read: ['the rule alone; nothing else of the message', ...given.read] };
}
