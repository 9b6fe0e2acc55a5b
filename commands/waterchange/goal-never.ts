import { afterChanges } from '../../core/change/exchange.ts';
import { settles } from '../../core/change/routine.ts';
import { fixed, toUnit } from '../../core/quantity/format.ts';
import { mostPossible } from '../../core/water/possible.ts';
import { answer, type Answer } from '../answer.ts';
import { causes } from './advice.ts';
import type { Levels } from './level.ts';
import { percent, type Water } from './pour.ts';
import { days } from './rate.ts';

/** Changes of one size towards a level. */
export interface Plan {
  readonly levels: Levels & { readonly goal: number };
  readonly water: Water;
  readonly fraction: number;
  readonly everyDays: number;
  readonly rise: number;
  /** The time between changes was said. */
  readonly isTimed: boolean;
}

/** A level that changes of this size never get to. */
export function never(plan: Plan): Answer {
  const { levels, fraction, everyDays, rise } = plan;
  const { about, show, goal, fresh, now } = levels;
  const { before, after } = settles({ fresh, rise, fraction });
  const isPossible = toUnit(about.kind, before, about.unit) <= mostPossible(levels.id);
  const settled = (level: number): string =>
    isPossible ? show(level) : `more than ${mostPossible(levels.id)} ${about.unit}`;
  return answer({
    headline: `At ${percent(fraction)} every ${days(everyDays)} ${about.label} never gets to ${show(goal)}: ${isPossible ? `it settles between ${show(after)} and ${show(before)}` : `it would climb past ${mostPossible(levels.id)} ${about.unit}, where no tank is: check the rise and the share`}.`,
    read: readLines(plan),
    facts: [
      { label: 'just after a change, once settled', value: settled(after) },
      { label: 'just before a change, once settled', value: settled(before) },
      { label: 'after one change from now', value: show(afterChanges({ now, fresh, fraction })) },
    ],
    steps: [
      ...levels.doubts,
      causes(levels),
      'Then change more, or more often, or add another way out for it, and test again.',
    ],
    working: [
      `settles at new water + rise/share before a change: ${show(fresh)} + ${show(rise)}/${fixed(fraction, 3)} = ${settled(before)}`,
    ],
    cautions: ['A steady rise is a model: feeding and stock change it.'],
    sources: ['mixing', 'practice', ...about.basis],
  });
}

/** What was understood. */
export function readLines({ levels, water, fraction, everyDays, rise }: Plan): readonly string[] {
  const made = rise > 0 ? [`it climbs ${levels.show(rise)} between changes`] : [];
  return [
    ...levels.read,
    `goal ${levels.show(levels.goal)}`,
    `${percent(fraction)} every ${days(everyDays)}`,
    ...made,
    ...water.read,
    ...levels.notes,
  ];
}
