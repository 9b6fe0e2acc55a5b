import { z } from 'zod';
import { COLUMNS, MOST_ROWS, writeRows } from '../../core/log/rows.ts';
import { answer, type Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { textOption } from '../options.ts';
import { askedTank, keepOf } from '../tank/asked-tank.ts';

export const exportCommand = defineCommand({
  path: ['log', 'export'],
  summary: 'All readings of your tank as a CSV file, which /log import takes back',
  example: '/log export',
  private: true,
  options: z.strictObject({
    tank: textOption('Which of your tanks, if not the one in use', { suggest: 'tank' }).optional(),
  }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const tank = askedTank(keep, input.tank);
    const readings = keep.readings(tank.id, {});
    if (readings.length === 0) {
      return answer({
        headline: `Nothing is logged for ${tank.name} yet, so there is no file.`,
        sources: ['practice'],
      });
    }
    const rows = readings.map(({ atMs, parameter, value, note }) => ({ atMs, parameter, value, note }));
    return answer({
      headline: `${readings.length} ${readings.length === 1 ? 'reading' : 'readings'} of ${tank.name} in one file, the oldest first.`,
      read: [
        `columns ${COLUMNS.join(', ')}; times in UTC, each value in the unit beside it`,
        'doses are not in it: /mydata export has everything',
        ...(readings.length > MOST_ROWS
          ? [`/log import takes ${MOST_ROWS} readings at a time: split the file for that`]
          : []),
      ],
      file: { name: `${fileName(tank.name)}-readings.csv`, text: writeRows(rows) },
      sources: ['practice'],
    });
  },
});

/** Letters, digits and hyphens only: a name that every system takes. */
function fileName(name: string): string {
  return (
    name
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-+|-+$/g, '') || 'tank'
  );
}
