import type { CycleTest } from '../../core/care/cycle.ts';
import type { Level, Slots } from '../../core/language/slots.ts';
import { readLogged } from '../../core/log/value.ts';
import { Problem } from '../../core/problem.ts';

const TESTED = ['ammonia', 'nitrite', 'nitrate'] as const;
type Tested = (typeof TESTED)[number];

/** Tests of a cycle, in the order said: a new one begins where one of the three is said again. Each has ammonia and nitrite. */
export function cycleTests({ levels = [] }: Slots): readonly CycleTest[] {
  const tests: Map<Tested, number>[] = [];
  for (const level of levels) {
    const of = TESTED.find((id) => id === level.of);
    const value = of === undefined ? undefined : read(of, level);
    if (of === undefined || value === undefined) continue;
    const last = tests.at(-1);
    if (last === undefined || last.has(of)) tests.push(new Map([[of, value]]));
    else last.set(of, value);
  }
  return tests.flatMap((test, at): CycleTest[] => {
    const [ammonia, nitrite] = [test.get('ammonia'), test.get('nitrite')];
    if (ammonia === undefined || nitrite === undefined) return [];
    const when = tests.length === 1 ? 'last test' : `test ${at + 1}`;
    return [{ when, ammonia, nitrite, nitrate: test.get('nitrate') }];
  });
}

/** A state in mg/L; a wish, a change or a border is none. */
function read(of: Tested, { part, text }: Level): number | undefined {
  if (part !== 'now' && part !== 'was') return undefined;
  try {
    return readLogged(of, text, of).value;
  } catch (error) {
    if (error instanceof Problem) return undefined;
    throw error;
  }
}
