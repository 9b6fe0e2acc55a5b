import type { Found } from '../../core/care/symptoms/rank.ts';
import type { Level, Slots } from '../../core/language/slots.ts';
import { printed, readLogged } from '../../core/log/value.ts';
import { judge, type Value } from '../../core/water/assess.ts';
import { parameter } from '../../core/water/parameter.ts';
import { judgedAnswer } from '../checkup/judged.ts';
import type { Answer } from '../answer.ts';
import { readOrName } from '../urgent/not-used.ts';
import { movedSaid } from './moved-said.ts';
import { signOf } from './sign-of.ts';

/** Readings said beside what is seen, judged, and what they are signs of. What cannot be read is named, and no more. */
interface SaidWater {
  readonly water: Answer | undefined;
  readonly signs: readonly Found[];
}

export function saidWater(slots: Slots): SaidWater {
  const { levels = [] } = slots;
  const left: string[] = [];
  const values = lastOfEach(levels).flatMap(
    ({ of, text }): (Value & { readonly notes: readonly string[] })[] => {
      const read = readOrName(of, text, (given) => readLogged(of, given, of), left);
      return read === undefined ? [] : [{ parameter: of, ...read }];
    },
  );
  if (values.length + left.length === 0) return { water: undefined, signs: [] };
  const signs = judge(values).flatMap((one): Found[] => {
    const sign = signOf(one);
    const { parameter: id, value } = one;
    return sign === undefined
      ? []
      : [{ sign, text: `you said: ${parameter(id).label} ${printed(id, value)}` }];
  });
  const read = values.flatMap(({ notes }) => notes);
  const judged = judgedAnswer({ values, read, unused: left });
  return { water: { ...judged, unused: left }, signs: [...movedSaid(slots), ...signs] };
}

/** What each parameter reads now, in the order said. */
function lastOfEach(levels: readonly Level[]): readonly Level[] {
  const now = levels.filter(({ part }) => part === 'now');
  return now.filter((one) => now.findLast(({ of }) => of === one.of) === one);
}
