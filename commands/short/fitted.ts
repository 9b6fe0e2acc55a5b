import type { Answer, Fact } from '../answer.ts';
import { shortLimits } from './limits.ts';

/** How many facts and steps a short form shows. */
export interface Fitted {
  readonly facts: number;
  readonly steps: number;
}

/** One line after another in the order in which it is needed. */
type Part = keyof Fitted;
const CALM: readonly Part[] = ['steps', 'steps', 'facts', 'steps', 'facts', 'facts'];
const URGENT: readonly Part[] = ['steps', 'steps', 'steps', 'facts', 'steps', 'steps', 'facts', 'facts'];
/** So many lines stand there whatever room there is: two acts, or three and the number that goes with them. */
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

/** Characters of facts as they are read. */
export function factsLength(facts: readonly Fact[]): number {
  return sum(facts.map(lengthOf));
}

/** Lines of a list at a time: as many as fit on every page of it, at least one. */
export function pageSize(facts: readonly Fact[]): number {
  const lengths = facts.map(lengthOf);
  const fits = (size: number): boolean =>
    lengths.every(
      (_, from) => from % size > 0 || sum(lengths.slice(from, from + size)) <= shortLimits.wholePage,
    );
  const sizes = Array.from({ length: shortLimits.page }, (_, at) => shortLimits.page - at);
  return sizes.find(fits) ?? 1;
}

function sum(lengths: readonly number[]): number {
  return lengths.reduce((all, one) => all + one, 0);
}

function lengthOf(line: Fact | string): number {
  if (typeof line === 'string') return line.length;
  return line.label.length + line.value.length + (line.verdict?.length ?? 0) + 2;
}
