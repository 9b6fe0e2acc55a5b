import { counted } from '../../core/quantity/format.ts';
import { z } from 'zod';
import { COLUMNS, MOST_ROWS, readRows, type BadLine, type ReadRow } from '../../core/log/rows.ts';
import { printed } from '../../core/log/value.ts';
import { Problem } from '../../core/problem.ts';
import { parameter } from '../../core/water/parameter.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import type { Keep, NewEntry, Tank } from '../keep.ts';
import { fileOption, textOption } from '../options.ts';
import { askedTank, keepOf } from '../tank/asked-tank.ts';
import { inZone } from '../zone.ts';
import { watchedWords } from './watched.ts';
import { timeOf, zoneLine } from './words.ts';
import { say } from '../../core/wording/say.ts';

/**
 * Takes a file as `/log export` writes it. A bad line refuses the whole file. Where the log has the parameter at that
 * very time already, the row is passed over and counted; one that differs is named, and the log stays as it is.
 */
export const importCommand = defineCommand({
  path: ['log', 'import'],
  summary: 'Log many readings from a CSV file: time,parameter,value,unit,note',
  example: '/log import file:readings.csv',
  private: true,
  options: z.strictObject({
    file: fileOption(`CSV with the head ${COLUMNS.join(',')}; at most ${MOST_ROWS} readings`, [
      '.csv',
      '.txt',
    ]),
    tank: textOption('Which of your tanks, if not the one in use', { suggest: 'tank' }).optional(),
  }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const tank = askedTank(keep, input.tank);
    const here = inZone(context, tank);
    const { rows, bad } = readRows(input.file.text, 'file', context.nowMs);
    if (bad.length > 0) throw refusal(bad);
    const { fresh, known } = sorted(rows, keep, tank);
    const count = fresh.length === 0 ? 0 : keep.addEntries(tank.id, entriesOf(fresh));
    const differing = known.filter(({ kept, row }) => !kept.includes(row.value));
    const watched = watchedWords(keep, tank, newestOf(fresh));
    const times = fresh.map(({ atMs }) => atMs).sort((a, b) => a - b);
    const [first, last] = [times[0], times.at(-1)];
    return answer({
      headline: `${watched.map((words) => `${words}. `).join('')}${counted(count, 'reading')} of ${input.file.name} logged for ${tank.name}${known.length === 0 ? '' : `; ${counted(known.length, 'reading')} passed over, because there is one of that time already`}.`,
      read: [
        ...(first === undefined || last === undefined
          ? []
          : [`from ${timeOf(first, here)} to ${timeOf(last, here)} (${zoneLine(here)})`]),
        ...differing
          .slice(0, NAMED)
          .map(
            ({ row: { line, parameter: id, value }, kept }) =>
              `line ${line}: ${parameter(id).label} ${printed(id, value)} differs from ${kept.map((one) => printed(id, one)).join(' and ')} in the log, which stays`,
          ),
        ...(differing.length > NAMED ? [`and ${differing.length - NAMED} more that differ`] : []),
      ],
      steps:
        count === 0
          ? []
          : [
              'Look it over with /log show. /log undo takes back one time of testing after the other, not the whole file.',
            ],
      sources: ['practice'],
      next: [action(say('dose.showLog'), 'log show', { tank: tank.name })],
    });
  },
});

/** The newest reading of each parameter of a file: old ones beyond a border are history. */
function newestOf(rows: readonly ReadRow[]): readonly ReadRow[] {
  const newest = new Map<string, ReadRow>();
  for (const row of rows)
    if ((newest.get(row.parameter)?.atMs ?? -Infinity) <= row.atMs) newest.set(row.parameter, row);
  return [...newest.values()];
}

/** Most lines named one by one. */
const NAMED = 10;

interface Sorted {
  readonly fresh: readonly ReadRow[];
  /** Rows of a parameter and time that is logged already, with the values there. */
  readonly known: readonly { readonly row: ReadRow; readonly kept: readonly number[] }[];
}

function sorted(rows: readonly ReadRow[], keep: Keep, tank: Tank): Sorted {
  const times = rows.map(({ atMs }) => atMs);
  const fromMs = times.reduce((a, b) => Math.min(a, b), Infinity);
  const toMs = times.reduce((a, b) => Math.max(a, b), -Infinity);
  const logged = new Map<string, number[]>();
  for (const reading of keep.readings(tank.id, { fromMs, toMs }))
    logged.set(placeOf(reading), [...(logged.get(placeOf(reading)) ?? []), reading.value]);
  const known = rows.flatMap((row) => {
    const kept = logged.get(placeOf(row));
    return kept === undefined ? [] : [{ row, kept }];
  });
  return { fresh: rows.filter((row) => !logged.has(placeOf(row))), known };
}

function placeOf({ parameter: id, atMs }: Pick<ReadRow, 'parameter' | 'atMs'>): string {
  return `${id} ${atMs}`;
}

/** Readings of one time with one note are one entry, as when they were typed on one line; a second value begins another. */
function entriesOf(rows: readonly ReadRow[]): readonly NewEntry[] {
  const groups = new Map<string, ReadRow[][]>();
  for (const row of rows) {
    const key = `${row.atMs} ${row.note ?? ''}`;
    const ofKey = groups.get(key) ?? [];
    const last = ofKey.at(-1);
    if (last === undefined || last.some((one) => one.parameter === row.parameter)) ofKey.push([row]);
    else last.push(row);
    groups.set(key, ofKey);
  }
  return [...groups.values()].flat().flatMap((group) => {
    const [first] = group;
    if (first === undefined) return [];
    const values = group.map(({ parameter: id, value }) => ({ parameter: id, value }));
    return [{ atMs: first.atMs, note: first.note, values }];
  });
}

function refusal(refused: readonly BadLine[]): Problem {
  const named = refused.slice(0, NAMED).map(({ line, why }) => `line ${line}: ${why}`);
  const more = refused.length > NAMED ? [`and ${refused.length - NAMED} more`] : [];
  const lines = refused.length === 1 ? 'One line of the file is' : `${refused.length} lines of the file are`;
  return new Problem(say('log.notRightSoNothing', { lines }), {
    field: 'file',
    limit: COLUMNS.join(','),
    hint: `${[...named, ...more].join('; ')}.`,
  });
}
