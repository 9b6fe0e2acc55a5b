import type { Answer, Fact } from '../answer.ts';
import { shortLimits } from './limits.ts';

/** How many facts and steps a short form shows. */
export interface Fitted {
  readonly facts: number;
  readonly steps: number;
}

/** One line after another in the order in which it is needed. */
type Part = keyof Fitted;
const CALM: readonly Part[] = ['facts', 'steps', 'steps', 'steps', 'facts', 'facts'];
const URGENT: readonly Part[] = ['steps', 'steps', 'steps', 'facts', 'steps', 'steps', 'facts', 'facts'];
/** So many lines stand there whatever room there is: the fact that decides and the first act, or the first three acts and the number that goes with them. */
const AT_LEAST = { calm: 2, urgent: 4 } as const;

/** Facts and steps, in turn, that fit beside `taken` characters of what must stand there. */
export function fitted(
  { tone, facts, steps }: Pick<Answer, 'tone' | 'facts' | 'steps'>,
  taken: number,
): Fitted {
  const isUrgent = tone === 'urgent';
  const order = isUrgent ? URGENT : CALM;
  const least = isUrgent ? AT_LEAST.urgent : AT_LEAST.calm;
  let room = (isUrgent ? shortLimits.wholeUrgent : shortLimits.whole) - taken;
  const shown = { facts: 0, steps: 0 };
  for (const [at, part] of order.entries()) {
    const line = part === 'facts' ? facts[shown.facts] : steps[shown.steps];
    if (line === undefined) continue;
    room -= lengthOf(line);
    if (room < 0 && at >= least) break;
    shown[part] += 1;
  }
  return shown;
}

/** Lines of a list at a time: fewer where they are long. */
export function pageSize(facts: readonly Fact[]): number {
  const all = facts.reduce((sum, fact) => sum + lengthOf(fact), 0);
  const fitting = Math.floor((shortLimits.wholePage * facts.length) / Math.max(1, all));
  return Math.min(shortLimits.page, Math.max(1, fitting));
}

function lengthOf(line: Fact | string): number {
  if (typeof line === 'string') return line.length;
  return line.label.length + line.value.length + (line.verdict?.length ?? 0) + 2;
}
