import { z } from 'zod';
import { MAX_MESSAGE_LENGTH } from '../core/message-length.ts';
import { Problem } from '../core/problem.ts';
import { readLine } from '../core/words/line.ts';
import type { Answer } from './answer.ts';
import { action } from './calls.ts';
import { judgedAnswer } from './checkup/judged.ts';
import { lastLogged } from './checkup/last-logged.ts';
import { planTable } from './checkup/plan.ts';
import { defineCommand, type OwnContext } from './command.ts';
import type { Tank } from './keep.ts';
import { someReadings } from './log/add.ts';
import { rangeNamesOf, rangesOf } from './log/ranges.ts';
import { textOption } from './options.ts';
import { askedTank, keepOf } from './tank/asked-tank.ts';
import { kindWords } from './tank/print.ts';
import { inZone } from './zone.ts';
import { scan } from '../core/language/tokens.ts';
import { troubleTold } from '../core/language/trouble.ts';
import { unreadParts, unreadNumbers } from './log/words.ts';
import { saidBeside } from '../core/words/neutral.ts';
import { say } from '../core/wording/say.ts';

export const checkupCommand = defineCommand({
  path: ['checkup'],
  summary: 'How your water stands and what to do first: a line of readings, or what you logged last',
  example: '/checkup readings:420/8.1/1350 sg 1.025 78f no3 8 po4 .06',
  private: true,
  options: z.strictObject({
    readings: textOption('Your readings, e.g. 420/8.1/1350 sg 1.025 78f; the last logged if left out', {
      max: MAX_MESSAGE_LENGTH,
      fields: 'readings',
    }).optional(),
    plan: z.boolean().describe('Show how often to test what, too').optional(),
    tank: textOption('Which of your tanks, if not the one in use', { suggest: 'tank' }).optional(),
  }),
  run: (input, context): Answer => {
    const tank = tankFor(input.tank, input.readings, context);
    const checked = input.readings === undefined ? fromLog(tank, context) : fromLine(input.readings, tank);
    return input.plan === true
      ? { ...checked, table: planTable(tank, context.nowMs), isTableFirst: true }
      : checked;
  },
});

/** A pasted line needs no tank; the last logged values do. */
function tankFor(
  name: string | undefined,
  readings: string | undefined,
  context: OwnContext,
): Tank | undefined {
  if (readings === undefined && context.keep === undefined) {
    throw new Problem(say('checkup.whichReadings'), {
      field: 'readings',
      hint: say('checkup.hintReadings'),
    });
  }
  if (readings !== undefined && name === undefined) return context.keep?.tankInUse();
  return askedTank(keepOf(context), name);
}

function fromLine(text: string, tank: Tank | undefined): Answer {
  const line = someReadings(readLine(text, 'readings', tank?.units), text);
  const judged = judgedAnswer({
    ...ofTank(tank),
    values: line.values,
    read: [...tankLine(tank), ...new Set(line.values.flatMap(({ notes }) => notes))],
    unused: unreadNumbers(line.unread),
    trouble: troubleTold(scan(text)),
    beside: saidBeside(line.unread.join(' ')),
  });
  const told = { ...judged, unused: unreadParts(line.unread) };
  if (tank === undefined) return told;
  const log = action(say('checkup.logThese'), 'log add', { readings: text, tank: tank.name });
  return { ...told, next: [log] };
}

function fromLog(tank: Tank | undefined, context: OwnContext): Answer {
  if (tank === undefined) throw new Error('no tank and no readings');
  const { values, read, steps, instants } = lastLogged(keepOf(context), tank, inZone(context, tank));
  const judged = {
    ...judgedAnswer({ ...ofTank(tank), values, read: [...tankLine(tank), ...read], steps }),
    instants,
  };
  if (values.length > 0) return judged;
  return {
    ...judged,
    headline: say('checkup.nothingToJudge', { tank: tank.name }),
    steps: [...steps, say('checkup.logALine')],
    cautions: [],
  };
}

function ofTank(tank: Tank | undefined) {
  return tank === undefined
    ? {}
    : { rangeOf: rangesOf(tank), rangeName: rangeNamesOf(tank), units: tank.units };
}

function tankLine(tank: Tank | undefined): readonly string[] {
  return tank === undefined ? [] : [`${tank.name}: ${kindWords[tank.kind]}, its own targets first`];
}
