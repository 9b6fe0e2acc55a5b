import { z } from 'zod';
import { answer } from '../../../../commands/answer.ts';
import type { NextAction } from '../../../../commands/answer.ts';
import { defineCommand } from '../../../../commands/command.ts';
import type { Command } from '../../../../commands/command.ts';
import { fileOption, idOption, textOption } from '../../../../commands/options.ts';
import { readCallId } from '../../../../bot/discord/asked/call.ts';
import { Problem } from '../../../../core/problem.ts';
import { pretended } from '../../../action.ts';

/** Keeps a note with the asker's first tank, as a reading is kept; refuses "lots". */
const enterCommand = defineCommand({
  path: ['note', 'enter'],
  summary: 'Takes readings for something, and says where they went and what follows from them',
  example: '/note enter item:12 readings:kh 8.2',
  private: true,
  options: z.strictObject({
    item: textOption('What it belongs to'),
    readings: textOption('What you tested, e.g. kh 8.2 ca 420', { max: 300 }),
    times: z.int().min(1).max(9).describe('How often').optional(),
    mood: z.enum(['calm', 'worried']).describe('How you feel').optional(),
    fresh: z.boolean().describe('Fresh').optional(),
    helper: idOption('member', 'Who helped').optional(),
    paper: fileOption('A paper', ['.csv']).optional(),
  }),
  run: ({ item, readings, times, mood }, { keep }) => {
    if (readings === 'lots') {
      const choices = ['kh 8', 'kh 9'];
      throw new Problem('How much is lots?', { field: 'readings', given: readings, choices });
    }
    const tank = keep?.tankInUse();
    if (keep === undefined || tank === undefined) return answer({ headline: `No tank for ${readings}.` });
    keep.addEntry(tank.id, { atMs: 0, values: [{ parameter: 'calcium', value: 420 }], note: readings });
    return answer({
      headline: `${item} in ${tank.name}: ${readings}, ${times ?? 1} times, ${mood ?? 'calm'}`,
    });
  },
});

/** Shows a button of any custom id that is one of ours in form, whatever it names. */
const holdCommand = defineCommand({
  path: ['hold'],
  summary: 'Shows a button',
  example: '/hold with:ask:note enter?item=12!readings',
  options: z.strictObject({ with: textOption('Its custom id', { max: 100 }) }),
  run: (input) => {
    const call = readCallId(input.with);
    const next: readonly NextAction[] =
      call === undefined ? [] : [pretended({ label: 'Enter reading', ...call })];
    return answer({ headline: 'Press it.', next });
  },
});

/** Needs a moment that is asked back, though no option was given for it. */
const laterCommand = defineCommand({
  path: ['note', 'later'],
  summary: 'Asks until when',
  example: '/note later until:tomorrow',
  private: true,
  options: z.strictObject({ until: textOption('Until when').optional() }),
  run: ({ until }) => {
    if (until !== undefined) return answer({ headline: `Until ${until}.` });
    throw new Problem('Until when?', { field: 'until', choices: ['in 1 hour', 'tomorrow'] });
  },
});

export const formCommands: readonly Command[] = [enterCommand, laterCommand, holdCommand];
