import { relates } from '../language/relations.ts';
import { is, type Stated } from './stated.ts';

/** "16:1", "10 to 1": the first number of a ratio to one; undefined where the rule holds no such ratio, or other numbers. */
export function ratioToOne({ amounts, words }: Stated): number | undefined {
  const [first, one, other] = amounts;
  if (first === undefined || one?.value !== 1 || other !== undefined) return undefined;
  if (!is(first, 'bare') || !is(one, 'bare')) return undefined;
  const tie = words.find(({ token }) => token.start >= first.end && token.end <= one.start);
  return relates(tie?.token.word, 'ratio') ? first.value : undefined;
}
