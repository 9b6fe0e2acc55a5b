import { z } from 'zod';
import { readLogged } from '../../core/log/value.ts';
import { significant } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { judge } from '../../core/water/assess.ts';
import { limitsOf } from '../../core/water/limits.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { deeds, isUsedUp, whatMoves, type Deed } from '../../core/water/what-moves.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { judgedAnswer } from '../checkup/judged.ts';
import { defineCommand } from '../command.ts';
import { moreThanAnyTank } from '../dose/use-answer.ts';
import { askedMeasured } from '../log/asked-measured.ts';
import { quantityOption, textOption } from '../options.ts';

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
    without: z.enum(['dosing', 'changes', 'both']).describe('What was not done meanwhile').optional(),
  }),
  run: ({ of, was, now, way, over, without }): Answer => {
    const id = askedMeasured(of);
    const [before, after] = [was, now].map((text, index) =>
      text === undefined ? undefined : readLogged(id, text, index === 0 ? 'was' : 'now'),
    );
    const time =
      over === undefined ? undefined : readQuantity('days', over, { field: 'over', fallback: 'days' });
    const by = before === undefined || after === undefined ? undefined : after.value - before.value;
    const went = by === undefined || by === 0 ? way : by > 0 ? 'up' : 'down';
    const state =
      after === undefined
        ? undefined
        : judgedAnswer({ values: [{ parameter: id, value: after.value }], read: [] });
    const verdict =
      after === undefined ? undefined : judge([{ parameter: id, value: after.value }])[0]?.verdict;
    const undone = without === 'both' ? deeds : without === undefined ? [] : [without];
    const moved: Moved = { id, by, went, days: time?.value, undone };
    const first = verdict === 'urgent' || verdict === 'doubtful' ? `${state?.headline ?? ''} ` : '';
    return answer({
      headline: `${first}${headline(moved)}`,
      read: [
        `${parameter(id).label} ${[was, now].filter((text) => text !== undefined).join(', then ')}`.trim(),
        ...new Set([...(before?.notes ?? []), ...(after?.notes ?? []), ...(time?.notes ?? [])]),
      ],
      facts: [
        ...perDay(moved),
        ...ways(went).map((one) => ({
          label: `may move it ${one}`,
          value: whatMoves(id, one, undone).join('; '),
        })),
        ...(state?.facts ?? []),
      ],
      steps: [
        ...(first === '' ? [] : (state?.steps ?? [])),
        'Test again with a fresh sample, the same kit and the same hour before you act on it.',
        'Think back over the days before: what was new, cleaned, moved, refilled or switched off?',
        ...(id === 'salinity' || id === 'temperature' || id === 'ph'
          ? []
          : ['Measure salinity, too: what is dissolved rises and falls with it.']),
        'Dose nothing towards the old number for its own sake: the range below counts, not where it was.',
      ],
      cautions: first === '' ? [] : (state?.cautions ?? []),
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
  readonly undone: readonly Deed[];
}

function headline({ id, by, went, days, undone }: Moved): string {
  const { label, unit, kitResolution } = parameter(id);
  const name = label === 'pH' ? label : `${label.charAt(0).toUpperCase()}${label.slice(1)}`;
  if (by !== undefined && Math.abs(by) <= kitResolution * (1 + 1e-9))
    return `${name} may not have moved at all: a kit tells about ${kitResolution} ${unit} apart.`.replace(
      '  ',
      ' ',
    );
  if (days !== undefined && by !== undefined && moreThanAnyTank(id, by / days))
    return `Retest first: ${name} does not move ${amount(by, unit)} in ${significant(days, 3)} days by what a tank uses or makes.`;
  if (went === 'down' && isUsedUp(id))
    return `${name} that falls is mostly use: corals and coralline algae take it up every day, and it falls unless as much is put back.`;
  const [likeliest = ''] = went === undefined ? [] : whatMoves(id, went, undone);
  return went === undefined
    ? `${name} moves by few things: look at these in turn.`
    : `${name} went ${went}: most often it is ${likeliest}.`;
}

/** "0.5 dKH a day": of what is used up it is the use, if nothing was put in. */
function perDay({ id, by, days }: Moved): Answer['facts'] {
  if (by === undefined || days === undefined || by === 0) return [];
  const value = `${amount(by / days, parameter(id).unit)} a day`;
  return by < 0 && isUsedUp(id)
    ? [{ label: 'the tank’s use, if nothing was dosed', value, ...fast(id, by / days) }]
    : [{ label: 'pace', value, ...fast(id, by / days) }];
}

/** Told where it is more than a level is usually moved in a day. */
function fast(id: ParameterId, byADay: number): { readonly verdict?: string } {
  const { pace } = limitsOf(id);
  if (pace === undefined) return {};
  const most = byADay > 0 ? pace.up : pace.down;
  if (Math.abs(byADay) <= most * 1.001) return {};
  return { verdict: `fast: the usual limit is ${amount(most, parameter(id).unit)} a day, common practice` };
}

function amount(by: number, unit: string): string {
  return `${significant(Math.abs(by), 2)} ${unit}`.trim();
}

function ways(went: Moved['went']): readonly ('up' | 'down')[] {
  return went === undefined ? ['up', 'down'] : [went];
}

function useAction({ id, by }: Moved, was?: string, now?: string, over?: string): Answer['next'] {
  if (by === undefined || by >= 0 || !isUsedUp(id)) return [];
  return [
    action(
      'What the tank uses a day',
      'dose use',
      { of: id, before: was, now, over },
      over === undefined ? ['over'] : undefined,
    ),
  ];
}
