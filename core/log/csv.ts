/**
 * Comma-separated values as RFC 4180 has them: fields that hold a comma, a quote or a line break stand in double
 * quotes, a quote in them is doubled, records end in CRLF. Reading also takes a bare LF or CR and a byte order mark.
 *
 * A spreadsheet runs a cell that begins with = + - @ (or a tab or carriage return) as a formula. Such a cell is written
 * with an apostrophe in front, and loses one when it is read; so does one that has apostrophes before such a sign
 * already, so that every text comes back as it was.
 */
const BYTE_ORDER_MARK = '\uFEFF';
const FORMULA = /^'*[=+\-@\t\r]/;
const GUARDED = /^'+[=+\-@\t\r]/;
const NEEDS_QUOTES = /[",\r\n]|^\s|\s$/;

/** A record and the line of the text it begins on, from 1. */
export interface CsvRecord {
  readonly line: number;
  readonly cells: readonly string[];
}

/** What was read, up to where the text stopped being RFC 4180. */
export interface CsvText {
  readonly records: readonly CsvRecord[];
  /** Line of a quote that is never closed, or of a character where a comma or line end must be. */
  readonly brokenLine: number | undefined;
}

/** Cells of one record: a quoted field, or one without quotes; then a comma, a line end or the end. Linear in length. */
const FIELD = /"([^"]*(?:""[^"]*)*)"(,|\r\n|\n|\r|$)|([^",\r\n]*)(,|\r\n|\n|\r|$)/y;

/** Takes the text apart; empty lines are left out. */
export function readCsv(text: string): CsvText {
  const body = text.startsWith(BYTE_ORDER_MARK) ? text.slice(1) : text;
  const records: CsvRecord[] = [];
  let cells: string[] = [];
  let line = 1;
  let startLine = 1;
  let at = 0;
  while (at < body.length || cells.length > 0) {
    FIELD.lastIndex = at;
    const found = FIELD.exec(body);
    if (found === null) return { records, brokenLine: line };
    const [whole, quoted, afterQuoted, bare = '', afterBare = ''] = found;
    cells.push(unguarded(quoted === undefined ? bare : quoted.replaceAll('""', '"')));
    line += whole.match(/\r\n|\n|\r/g)?.length ?? 0;
    at += whole.length;
    if ((afterQuoted ?? afterBare) === ',') continue;
    if (cells.length > 1 || cells[0] !== '') records.push({ line: startLine, cells });
    cells = [];
    startLine = line;
  }
  return { records, brokenLine: undefined };
}

/** Rows as text, each ended by CRLF. */
export function writeCsv(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => `${row.map(cell).join(',')}\r\n`).join('');
}

function cell(value: string): string {
  const safe = FORMULA.test(value) ? `'${value}` : value;
  return NEEDS_QUOTES.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

function unguarded(value: string): string {
  return GUARDED.test(value) ? value.slice(1) : value;
}
