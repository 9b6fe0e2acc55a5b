import { z } from 'zod';
import { readLogged } from '../../core/log/value.ts';
import { Problem } from '../../core/problem.ts';
import { significant } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { judge } from '../../core/water/assess.ts';
import { limitsOf, urgentSide } from '../../core/water/limits.ts';
import { amount, isDailySwing, moveRemark, timeWords } from '../../core/water/move.ts';
import { firstLabel, parameter, type ParameterId } from '../../core/water/parameter.ts';
import { isUsedUp, ruledOut, whatMoves, type RuledOut } from '../../core/water/what-moves.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { judgedAnswer } from '../checkup/judged.ts';
import { defineCommand } from '../command.ts';
import { moreThanAnyTank } from '../dose/use-answer.ts';
import { askedMeasured } from '../log/asked-measured.ts';
import { quantityOption, textOption } from '../options.ts';
import { swingAnswer } from './swing-answer.ts';
import { say } from '../../core/wording/say.ts';

export const movedCommand = defineCommand({
  path: ['water', 'moved'],
  summary: 'A reading went up or down by itself: what may have moved it, and what to look at first',
  example: '/water moved of:alkalinity was:9 dKH now:7.5 dKH over:3 days',
  options: z.strictObject({
    of: textOption('What moved: alkalinity, salinity, pH, ...', { suggest: 'parameter' }),
    was: textOption('What it read, e.g. 9 dKH').optional(),
    now: textOption('What it reads now, e.g. 7.5 dKH').optional(),
    way: z.enum(['up', 'down']).describe('Which way it went, where there are no two readings').optional(),
    over: quantityOption('days', 'The time between them, e.g. 3 days').optional(),
    without: textOption('What is ruled out, of: dosing, changes, feeding, top-off, hour').optional(),
    shut: z.boolean().describe('Whether the room has been shut up since').optional(),
    swing: z.boolean().describe('Whether these are of one day, evening and morning').optional(),
  }),
  run: ({ of, was, now, way, over, without, shut, swing }): Answer => {
    const id = askedMeasured(of);
    const [before, after] = [was, now].map((text, index) =>
      text === undefined ? undefined : readLogged(id, text, index === 0 ? 'was' : 'now'),
    );
    const time =
      over === undefined ? undefined : readQuantity('days', over, { field: 'over', fallback: 'days' });
    const by = before === undefined || after === undefined ? undefined : after.value - before.value;
    const went = by === undefined || by === 0 ? way : by > 0 ? 'up' : 'down';
    // Of a swing the end that cannot wait is judged, else the latest.
    const isWorst = before !== undefined && swing === true && urgentSide(id, before.value) !== undefined;
    const told = isWorst ? before : after;
    const values = told === undefined ? undefined : [{ parameter: id, value: told.value }];
    const state = values === undefined ? undefined : judgedAnswer({ values, read: [] });
    const verdict = values === undefined ? undefined : judge(values)[0]?.verdict;
    const moved: Moved = {
      id,
      by,
      went,
      days: time?.value,
      without: ruledOutIn(without),
      isShut: shut === true,
      isSwing: swing === true,
    };
    const read = [
      `${parameter(id).label} ${[was, now].filter((text) => text !== undefined).join(', then ')}`.trim(),
      ...new Set([...(before?.notes ?? []), ...(after?.notes ?? []), ...(time?.notes ?? [])]),
    ];
    const isUrgent = verdict === 'urgent' || verdict === 'doubtful';
    if (by !== undefined && by !== 0 && !isUrgent && isDailySwing({ ...moved, by }))
      return swingAnswer({ ...moved, by }, read, state);
    const urgent = isUrgent ? state : undefined;
    return answer({
      headline: urgent?.headline ?? headline(moved),
      tone: urgent?.tone ?? 'plain',
      read,
      facts: [
        ...(urgent === undefined ? [] : [{ label: 'what moved it', value: headline(moved) }]),
        ...perDay(moved),
        ...ways(went).flatMap((one) =>
          whatMoves(id, one, moved.without, moved.isShut).map((value) => ({
            label: `may move it ${one}`,
            value,
          })),
        ),
        ...(state?.facts ?? []),
      ],
      isList: true,
      steps: [
        ...(urgent?.steps ?? []),
        'Test again with a fresh sample, the same kit and the same hour before you act on it.',
        'Think back over the days before: what was new, cleaned, moved, refilled or switched off?',
        ...(id === 'salinity' || id === 'temperature' || id === 'ph'
          ? []
          : ['Measure salinity, too: what is dissolved rises and falls with it.']),
        'Dose nothing towards the old number for its own sake: the range below counts, not where it was.',
      ],
      dangers: urgent?.dangers ?? [],
      cautions: urgent?.cautions ?? [],
      sources: ['practice'],
      next: useAction(moved, was, now, over),
    });
  },
});

/** A move of a parameter in its own unit; `by` and `days` only where they are known. */
interface Moved {
  readonly id: ParameterId;
  readonly by: number | undefined;
  readonly went: 'up' | 'down' | undefined;
  readonly days: number | undefined;
  readonly without: readonly RuledOut[];
  readonly isShut: boolean;
  readonly isSwing: boolean;
}

function headline({ id, by, went, days, without, isShut }: Moved): string {
  const { unit, kitResolution } = parameter(id);
  const name = firstLabel(id);
  if (by !== undefined && Math.abs(by) <= kitResolution * (1 + 1e-9))
    return `${name} may not have moved at all: a kit tells about ${kitResolution} ${unit} apart.`.replace(
      '  ',
      ' ',
    );
  if (days !== undefined && by !== undefined && moreThanAnyTank(id, by / days))
    return `Retest first: ${name} does not move ${amount(id, by)} in ${significant(days, 3)} days by what a tank uses or makes.`;
  if (days !== undefined && by !== undefined && by < 0 && isUsedUp(id) && isMoreThanUse(id, by / days))
    return `Test again first: ${name} fell by ${amount(id, by)} in ${timeWords(days)}, more than most tanks use.`;
  if (went === 'down' && isUsedUp(id))
    return `${name} that falls is mostly use: corals and coralline algae take it up every day, and it wants putting back.`;
  const [likeliest = ''] = went === undefined ? [] : whatMoves(id, went, without, isShut);
  return went === undefined
    ? `${name} moves by few things: look at these in turn.`
    : `${name} went ${went}: most often it is ${likeliest}.`;
}

/** "0.5 dKH a day": of what is used up it is the use, if nothing was put in; and whether that is fast, or may be. */
function perDay({ id, by, days, isSwing }: Moved): Answer['facts'] {
  if (by === undefined || by === 0) return [];
  const fast = moveRemark({ id, by, days, isSwing });
  const pace = days === undefined ? amount(id, by) : `${amount(id, by / days)} a day`;
  const isUse = days !== undefined && by < 0 && isUsedUp(id);
  const label = isUse ? 'the tank’s use, if nothing was dosed' : days === undefined ? 'move' : 'pace';
  if (days === undefined && fast === undefined) return [];
  return [{ label, value: pace, ...(fast === undefined ? {} : { verdict: `${fast}, common practice` }) }];
}

/** Few tanks use so many times what a level is moved in a day. Common practice, no source. */
const MOST_USED = 2;

function isMoreThanUse(id: ParameterId, byADay: number): boolean {
  return Math.abs(byADay) > MOST_USED * (limitsOf(id).pace?.down ?? Infinity);
}

/** "dosing, changes": each one of a short list. @throws Problem at another. */
function ruledOutIn(text: string | undefined): readonly RuledOut[] {
  const words = text?.split(',').map((word) => word.trim().toLowerCase()) ?? [];
  return words.map((word) => {
    const found = ruledOut.find((one) => one === word);
    if (found !== undefined) return found;
    throw new Problem(say('water.iDoNotKnow2', { word }), {
      field: 'without',
      given: word,
      limit: ruledOut.join(', '),
    });
  });
}

function ways(went: Moved['went']): readonly ('up' | 'down')[] {
  return went === undefined ? ['up', 'down'] : [went];
}

function useAction({ id, by }: Moved, was?: string, now?: string, over?: string): Answer['next'] {
  if (by === undefined || by >= 0 || !isUsedUp(id)) return [];
  return [
    action(
      say('water.whatTankUsesDay'),
      'dose use',
      { of: id, before: was, now, over },
      over === undefined ? ['over'] : undefined,
    ),
  ];
}
