import { saidIn } from '../said.ts';
import type { HurtId } from './cards.ts';
import { hurtWays } from './ways.ts';

const tests = hurtWays.map(([id, ways]) => ({ id, test: saidIn(ways) }));

/** Which hurt a cleaned text tells of that is known to speak of one; undefined where the words do not say. */
export function hurtIn(text: string): HurtId | undefined {
  return tests.find(({ test }) => test(text))?.id;
}
