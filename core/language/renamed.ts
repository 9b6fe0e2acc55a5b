import { renamedTo, type Case, type Moment } from './case.ts';
import { isBack } from './taken-back.ts';
import type { Scanned } from './tokens.ts';
import { isBelievable } from '../water/limits.ts';
import { parameterIds, type ParameterId } from '../water/parameter.ts';

/**
 * "sorry, I mean kh, not calcium": what was told last of the name taken back is of the other one. A message that names no
 * other parameter, or several, renames nothing.
 */
export function renamed(before: Case, { tokens }: Scanned): Case {
  const named = tokens.flatMap(({ name }, at) => {
    const id = name?.class === 'parameter' ? parameterIds.find((one) => one === name.id) : undefined;
    return id === undefined ? [] : [{ id, isBack: isBack(tokens, at) }];
  });
  const [back, ...more] = [...new Set(named.filter((one) => one.isBack).map(({ id }) => id))];
  const [meant, ...others] = [...new Set(named.filter(({ id }) => id !== back).map(({ id }) => id))];
  if (back === undefined || meant === undefined || more.length + others.length > 0) return before;
  const at = before.moments.findLastIndex(
    ({ slots }) => slots.levels?.some(({ of }) => of === back) === true,
  );
  return at < 0
    ? before
    : {
        ...before,
        moments: before.moments.map((one, n) =>
          n === at || isUnlikely(one, back) ? withName(one, back, meant) : one,
        ),
      };
}

/** What no tank reads of the name taken back: "calcium 8.4" told before "calcium 7.2". */
function isUnlikely({ slots: { levels = [] } }: Moment, back: ParameterId): boolean {
  const mine = levels.filter(({ of }) => of === back);
  return mine.length > 0 && mine.every(({ value }) => !isBelievable(back, value));
}

function withName(moment: Moment, back: ParameterId, meant: ParameterId): Moment {
  const { of, levels } = moment.slots;
  const slots = { ...moment.slots, levels: renamedTo(meant, levels, back) };
  return { ...moment, slots: of === back ? { ...slots, of: meant } : slots };
}
