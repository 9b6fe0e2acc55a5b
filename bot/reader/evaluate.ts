import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { readBatch } from '../../core/language/labelled.ts';
import { measured, type Figures } from '../../core/language/measure.ts';
import { lockedFile, measuredDir, readSentences, reportFile } from './files.ts';
import { loadReader } from './load.ts';
import { firstTry, lockedTable } from './report.ts';

/**
 * `npm run reading` measures the locked batches with the weights of today. `npm run reading -- first NAME FILE DATE` reads
 * a fresh batch for the first time and writes its figures into the report, good or bad.
 */
/** A few short messages are written alike by two hands; they are left out. More is no fresh batch. */
const LEAST_UNSEEN = 0.95;

const [order, name = '', file = '', date = ''] = process.argv.slice(2);
if (order === 'first') {
  measureFirst(name, file, date);
} else {
  const today = Object.fromEntries(
    Object.keys(locked()).map((batch) => [batch, figuresOf(`${measuredDir}/${batch}.jsonl`)]),
  );
  process.stdout.write(`${lockedTable(locked(), today)}\n`);
}

function measureFirst(batch: string, path: string, day: string): void {
  const { lines } = readBatch(readFileSync(path, 'utf8'));
  const known = new Set(readSentences().flatMap((each) => each.lines.map(({ text }) => text)));
  const unseen = lines.filter(({ text }) => !known.has(text));
  if (unseen.length < lines.length * LEAST_UNSEEN)
    throw new Error(`${lines.length - unseen.length} messages of ${batch} stand in training already`);
  const { figures, misses } = measured(unseen, loadReader());
  const before = existsSync(reportFile) ? readFileSync(reportFile, 'utf8') : '# How well messages are read\n';
  if (before.includes(`## ${batch},`)) throw new Error(`${batch} has had its first try`);
  writeFileSync(reportFile, `${before.trimEnd()}\n\n${firstTry(batch, day, figures, misses)}`);
  process.stdout.write(`${JSON.stringify(figures, null, 1)}\n`);
}

function figuresOf(path: string): Figures {
  return measured(readBatch(readFileSync(path, 'utf8')).lines, loadReader()).figures;
}

function locked(): Readonly<Record<string, Figures>> {
  return JSON.parse(readFileSync(lockedFile, 'utf8')) as Readonly<Record<string, Figures>>;
}
