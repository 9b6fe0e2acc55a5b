import { fractionForGoal } from '../../core/change/exchange.ts';
import { toUnit } from '../../core/quantity/format.ts';
import type { Fact } from '../answer.ts';
import type { Levels } from './level.ts';
import { percent } from './pour.ts';

/** What was read after a change beside what the sum says: the same as near as a kit can tell, or what it may come from. */
export function seenAfter({ about, show, waste }: Levels, expected: number, seen: number): string {
  const gap = toUnit(about.kind, seen - expected, about.unit);
  if (Math.abs(gap) <= about.kitResolution) return `You read ${show(seen)}: it fits.`;
  const cause =
    waste && gap > 0
      ? 'the change was smaller, the new water holds some, or the kit is off'
      : 'the size of the change, the new water or the kit is off';
  return `You read ${show(seen)}: ${cause}.`;
}

/** The share that would have done what was read; none where no share does. */
export function didAsMuchAs({ now, fresh }: Levels, seen: number): readonly Fact[] {
  const share = fractionForGoal({ now, goal: seen, fresh });
  return share === undefined ? [] : [{ label: 'what you read is a change of', value: percent(share) }];
}
