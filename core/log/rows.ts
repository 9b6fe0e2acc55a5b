import { Temporal } from 'temporal-polyfill';
import { Problem } from '../problem.ts';
import { fromUnit } from '../quantity/format.ts';
import { definitionOf } from '../quantity/unit.ts';
import { findParameter, parameter, type ParameterId } from '../water/parameter.ts';
import { say } from '../wording/say.ts';
import { readCsv, writeCsv, type CsvRecord } from './csv.ts';
import { readLogged } from './value.ts';

/** A reading as a row of the file holds it; `value` in the parameter's own unit. */
export interface Row {
  readonly atMs: number;
  readonly parameter: ParameterId;
  readonly value: number;
  readonly note: string | undefined;
}

/** A row and the line of the file it stands on. */
export interface ReadRow extends Row {
  readonly line: number;
}

/** What is wrong with a line of the file. */
export interface BadLine {
  readonly line: number;
  readonly why: string;
}

export interface ReadRows {
  readonly rows: readonly ReadRow[];
  readonly bad: readonly BadLine[];
}

/** The columns of the file, in this order: one reading a row. */
export const COLUMNS = ['time', 'parameter', 'value', 'unit', 'note'] as const;

/** The most rows of readings one file may have, and the longest note. */
export const MOST_ROWS = 20_000;
export const MOST_NOTE = 200;
const EARLIEST_MS = Date.UTC(2000, 0, 1);
const NUMBER = /^-?\d+(?:\.\d+)?(?:e[+-]?\d+)?$/i;

/** Readings as text with a head, times in UTC, values in their own unit and at full precision: reads back the same. */
export function writeRows(rows: readonly Row[]): string {
  const cells = rows.map(({ atMs, parameter: id, value, note }) => [
    new Date(atMs).toISOString(),
    parameter(id).label,
    String(value),
    parameter(id).unit,
    note ?? '',
  ]);
  return writeCsv([COLUMNS, ...cells]);
}

/**
 * Reads such a text: time in ISO 8601 with Z or an offset, a parameter by any of its names, a number with a decimal
 * point, its unit (none only for pH), and a note of at most 200 letters or nothing. The head is required. Nothing is
 * skipped: every line is in `rows` or in `bad`.
 *
 * @param nowMs a time after it is a mistake
 * @throws Problem for a file without the head, without readings, or with more than 20,000.
 */
export function readRows(text: string, field: string, nowMs: number): ReadRows {
  const { records, brokenLine } = readCsv(text);
  const [head, ...body] = records;
  const names = (head?.cells ?? []).map((name) => name.trim().toLowerCase());
  if (COLUMNS.some((name, index) => names[index] !== name) || names.length !== COLUMNS.length) {
    throw new Problem(say('log.noHead'), {
      field,
      limit: COLUMNS.join(','),
    });
  }
  if (body.length > MOST_ROWS)
    throw new Problem(say('log.tooManyRows', { count: body.length }), {
      field,
      limit: say('convert.atMost', { most: String(MOST_ROWS) }),
    });
  const rows: ReadRow[] = [];
  const bad: BadLine[] = [];
  for (const record of body) {
    const read = rowOf(record, nowMs);
    if (typeof read === 'string') bad.push({ line: record.line, why: read });
    else rows.push({ ...read, line: record.line });
  }
  if (brokenLine !== undefined) bad.push({ line: brokenLine, why: say('log.rowQuote') });
  if (rows.length + bad.length === 0)
    throw new Problem(say('log.noRows'), {
      field,
      limit: say('convert.fromTo', { low: '1', high: String(MOST_ROWS) }),
    });
  return { rows, bad };
}

/** The row, or what is wrong with it. */
function rowOf({ cells }: CsvRecord, nowMs: number): Row | string {
  if (cells.length !== COLUMNS.length)
    return say('log.rowCells', { count: cells.length, wanted: String(COLUMNS.length) });
  const [time = '', name = '', value = '', unit = '', note = ''] = cells;
  const atMs = timeOf(time.trim());
  if (atMs === undefined) return say('log.rowNoTime');
  if (atMs > nowMs) return say('log.rowFuture');
  if (atMs < EARLIEST_MS) return say('log.rowTooOld');
  const id = findParameter(name);
  if (id === undefined) return say('log.rowNoParameter', { name: name.slice(0, 40) });
  const read = valueOf(id, value.trim(), unit.trim());
  if (typeof read === 'string') return read;
  if (note.length > MOST_NOTE) return say('log.rowLongNote', { most: MOST_NOTE });
  return { atMs, parameter: id, value: read, note: note === '' ? undefined : note };
}

function timeOf(text: string): number | undefined {
  if (!/^\d{4}-\d{2}-\d{2}[Tt ]\d{2}:\d{2}/.test(text)) return undefined;
  try {
    return Temporal.Instant.from(text).epochMilliseconds;
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** A value in its own unit is taken as it stands, so that it comes back to the last digit. */
function valueOf(id: ParameterId, text: string, unit: string): number | string {
  const value = Number(text);
  if (!NUMBER.test(text) || !Number.isFinite(value)) return say('log.rowNoNumber');
  const own = parameter(id).unit;
  if (unit === own)
    return isPossible(id, value) ? value : say('log.rowOutside', { value: `${text} ${unit}`.trim() });
  if (unit === '') return say('log.rowNoUnit', { parameter: parameter(id).label, unit: own });
  try {
    return readLogged(id, `${text} ${unit}`, 'value').value;
  } catch (error) {
    if (error instanceof Problem) return error.message;
    throw error;
  }
}

/** Whether a value in its own unit is in the range its quantity is accepted in. */
function isPossible(id: ParameterId, value: number): boolean {
  const { kind, unit } = parameter(id);
  const { min, max } = definitionOf(kind);
  const canonical = fromUnit(kind, value, unit);
  return canonical >= min && canonical <= max * (1 + 1e-12);
}
