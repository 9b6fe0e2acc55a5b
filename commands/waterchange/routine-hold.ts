import { fractionToHold } from '../../core/change/routine.ts';
import { Problem } from '../../core/problem.ts';
import { fixed } from '../../core/quantity/format.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { answer, type Answer } from '../answer.ts';
import { matchWater, mostAtOnce, netVolume, NOT_HALF } from './advice.ts';
import { shownAs } from './level.ts';
import { percent, type Water } from './pour.ts';
import { days } from './rate.ts';
import { say } from '../../core/wording/say.ts';

/** What builds up between two changes, and the level it should not pass. Levels in the parameter's canonical unit. */
export interface Hold {
  readonly id: ParameterId;
  readonly fresh: number;
  readonly rise: number;
  readonly everyDays: number;
  readonly goal: number | undefined;
  readonly water: Water;
  readonly freshGiven: boolean;
}

/**
 * The share of a regular change that keeps the highest level at the goal: rise / (goal - new water).
 * Check: +3 a week, goal 15, new water 0 -> 20 % each week.
 *
 * @throws Problem where no level is named.
 */
export function toHold({ id, fresh, rise, everyDays, goal, water, freshGiven }: Hold): Answer {
  if (goal === undefined)
    throw new Problem(say('change.howMuchWaterDo'), {
      field: 'share',
      hint: say('change.orNameHighestLevel'),
    });
  const { label, basis } = parameter(id);
  const show = shownAs(id);
  const every = days(everyDays);
  const fraction = fractionToHold(goal, fresh, rise);
  const heard = [
    `${label} climbs ${show(rise)} between changes ${every} apart`,
    freshGiven
      ? `new salt water ${show(fresh)}`
      : `new salt water taken as ${show(0)}; test it, mixes and top-off water can hold some`,
    ...water.read,
  ];
  if (fraction === undefined)
    return answer({
      headline: `No change of any size every ${every} holds ${label} at ${show(goal)}: it climbs ${show(rise)} in between.`,
      read: heard,
      steps: [`Cut what makes ${label} first, or change more often.`],
      sources: ['mixing', 'practice', ...basis],
    });
  return answer({
    headline: `To keep ${label} from passing ${show(goal)}, change ${percent(fraction)} (${water.part(fraction)}) every ${every}.`,
    read: heard,
    facts: [{ label: 'just after a change, once settled', value: show(goal - rise) }],
    steps: [
      `Less food and dirt taken out make less ${label}, and every change smaller.`,
      matchWater,
      'Test just before a change for some weeks.',
    ],
    working: [
      `share = rise / (goal - new water) = ${show(rise)} / (${show(goal)} - ${show(fresh)}) = ${fixed(fraction, 3)}`,
    ],
    dangers: fraction > mostAtOnce ? [NOT_HALF] : [],
    cautions: ['A steady rise is a model: feeding, stock and growth change it.', netVolume],
    sources: ['mixing', 'practice', ...basis],
  });
}
