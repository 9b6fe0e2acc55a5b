import { madeBetween, settles } from '../../core/change/routine.ts';
import { Problem } from '../../core/problem.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { answer, type Answer } from '../answer.ts';
import { shownAs, type Levels } from './level.ts';
import { percent, readShare } from './pour.ts';
import { days } from './rate.ts';
import { say } from '../../core/wording/say.ts';

interface Held {
  readonly levels: Levels | undefined;
  readonly fresh: number;
  readonly everyDays: number;
}

/** A level that stays under the changes tells what is made between them, and where a larger share would bring it. */
export function stays(
  id: ParameterId,
  { share }: { readonly share?: string | undefined },
  { levels, fresh, everyDays }: Held,
): Answer {
  if (levels === undefined || share === undefined)
    throw new Problem(say('ask.howFastItClimbs'), { field: 'rise' });
  const fraction = readShare(share);
  const show = shownAs(id);
  const { label, basis } = parameter(id);
  const made = madeBetween({ before: levels.now, fresh, fraction });
  const larger = Math.min(2 * fraction, 0.5);
  const then = settles({ fresh, rise: made, fraction: larger });
  const every = `every ${days(everyDays)}`;
  return answer({
    headline: `It stays there: ${percent(fraction)} ${every} takes out ${show(made)}, as much as is made. ${percent(larger)} would settle at ${show(then.before)}.`,
    read: [
      `${label} ${show(levels.now)} taken as steady, read just before a change`,
      `new salt water taken as ${show(fresh)}; test it, mixes and top-off water can hold some`,
    ],
    facts: [
      {
        label: 'with half of it made',
        value: `${show(settles({ fresh, rise: made / 2, fraction }).before)} before a change`,
      },
    ],
    steps: [
      ...levels.doubts,
      `Test the new salt water and the top-off water for ${label}: what they hold no change takes out.`,
      'Larger changes, less food, or another way out bring it down; more of the same changes do not.',
      'Test just before a change each time, to see it move.',
    ],
    working: [
      `made = (now - new water) x share = ${show(levels.now - fresh)} x ${percent(fraction)} = ${show(made)}`,
    ],
    cautions: ['A steady rise is a model: feeding, stock and growth change it.'],
    sources: ['mixing', 'practice', ...basis],
  });
}
