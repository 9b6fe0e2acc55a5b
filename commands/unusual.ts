import { z } from 'zod';
import { printed } from '../core/log/value.ts';
import { fixed } from '../core/quantity/format.ts';
import { unusualGoal, type Unusual } from '../core/water/towards.ts';
import { parameter, type ParameterId } from '../core/water/parameter.ts';
import { answer, type Answer, type NextAction } from './answer.ts';
import { say } from '../core/wording/say.ts';

/** The option of every command that plans towards a level: said yes to where that level is unusual. */
export function sureOption() {
  return z.enum(['yes']).describe('yes plans it outside the usual range').optional();
}

/** A level to be brought about, in the parameter's own unit, and the call that asked for it. */
export interface PlannedLevel {
  readonly id: ParameterId;
  readonly goal: number;
  readonly now?: number | undefined;
  /** What is said in place of the goal's number. */
  readonly named?: string;
  readonly sure?: 'yes' | undefined;
  /** The same call once more as a button, confirmed or with another goal. */
  readonly again: (
    label: string,
    changed: { readonly sure: 'yes' } | { readonly goal: string },
  ) => NextAction;
  /** Whether the call has a goal that another one can take the place of. */
  readonly hasGoal?: boolean;
}

/**
 * The question before anything is planned towards a level outside its usual range: asked once, answered with the same
 * call and `sure`. Undefined where the goal is usual, was confirmed, or lies nearer to the usual range than now.
 */
export function askFirst({
  id,
  goal,
  now,
  named,
  sure,
  again,
  hasGoal = true,
}: PlannedLevel): Answer | undefined {
  const unusual = unusualGoal(id, goal, now);
  if (unusual === undefined || unusual.isNearer || sure === 'yes') return undefined;
  const instead = printed(id, unusual.instead);
  return answer({
    headline: `${said(id, named ?? printed(id, goal), unusual)} Is that what you meant?`,
    steps: [
      'Look at the number and its unit, and test again: it may be a slip.',
      'Nothing is worked out until you say yes.',
    ],
    cautions: ['Ranges are common practice, no source; a quick move harms more than a number outside them.'],
    sources: ['practice'],
    next: [
      ...(hasGoal ? [again(say('change.instead', { instead }), { goal: instead })] : []),
      again(say('change.yesWorkOut'), { sure: 'yes' }),
    ],
  });
}

/** The sentence that begins an answer whose goal is outside the usual range all the same; empty where it is usual. */
export function stillUnusual({
  id,
  goal,
  now,
  named,
}: Pick<PlannedLevel, 'id' | 'goal' | 'now' | 'named'>): string {
  const unusual = unusualGoal(id, goal, now);
  return unusual === undefined ? '' : `${said(id, named ?? printed(id, goal), unusual)} `;
}

function said(id: ParameterId, level: string, { side, usual, isNearer }: Unusual): string {
  const place = side === 'low' ? 'below' : 'above';
  const still = isNearer ? 'still ' : '';
  const { label, decimals } = parameter(id);
  const [low, high] = usual;
  const range = high === 0 ? 'none' : `${fixed(low, decimals)} to ${printed(id, high)}`;
  return `${level} is ${still}${place} the usual ${label} (${range}).`;
}
