import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  lockedFile,
  measuredDir,
  modelFile,
  readSentences,
  reportFile,
  sentencesHash,
} from '../../../bot/reader/files.ts';
import { loadReader } from '../../../bot/reader/load.ts';
import { cardNames } from '../../../core/language/cards.ts';
import { kinds } from '../../../core/language/kinds.ts';
import { readBatch } from '../../../core/language/labelled.ts';
import { measured, type Figures } from '../../../core/language/measure.ts';

const batches = readSentences();
const lines = batches.flatMap((batch) => batch.lines);
const report = existsSync(reportFile) ? readFileSync(reportFile, 'utf8') : '';

describe('the weights', () => {
  it('belong to the sentences: run `npm run train` after a change of either', () =>
    expect(loadReader().sentences).toBe(sentencesHash()));

  it('are at most 6 MB', () => expect(statSync(modelFile).size).toBeLessThanOrEqual(6e6));
});

describe('the sentences', () => {
  it('are at least 12,000 in at least 25 batches, 5,000 of them with every number marked', () => {
    expect(batches.length).toBeGreaterThanOrEqual(25);
    expect(lines.length).toBeGreaterThanOrEqual(12_000);
    expect(lines.filter(({ roles }) => roles !== undefined).length).toBeGreaterThanOrEqual(5000);
    expect(lines.filter(({ calm }) => calm === true).length).toBeGreaterThanOrEqual(1200);
  });

  it.each(kinds)('have at least 120 of %s', (kind) =>
    expect(lines.filter((line) => line.kind === kind).length).toBeGreaterThanOrEqual(120),
  );

  it.each(cardNames.filter((name) => /^(?:urgent-water|person-hurt)/.test(name)))(
    'have at least 120 of %s',
    (name) =>
      expect(lines.filter(({ kind, card }) => `${kind}/${card}` === name).length).toBeGreaterThanOrEqual(120),
  );

  it('hold no measuring batch whose first figure is not written down', () => {
    const unmeasured = batches.filter(
      ({ name, head }) =>
        name.startsWith('v') && (head.measured === undefined || !report.includes(`## ${name},`)),
    );
    expect(unmeasured.map(({ name }) => name)).toEqual([]);
  });
});

/** A point: what a locked batch may lose before it is a fault. */
const POINT = 0.01;
const locked = JSON.parse(readFileSync(lockedFile, 'utf8')) as Readonly<Record<string, Figures>>;

/** Known losses since 2026-12-01, told in report.md: numbers of v1. They leave this list when they are made good. */
const LOST: ReadonlySet<string> = new Set(['v1 part', 'v1 taken']);
const guarded = ['kindFirst', 'kindInThree', 'card', 'part', 'taken', 'dangerAsked'] as const;

describe.each(Object.keys(locked))('the locked batch %s', (name) => {
  const batch = readBatch(readFileSync(join(measuredDir, `${name}.jsonl`), 'utf8'));
  const before = locked[name];
  const { figures } = measured(batch.lines, loadReader());

  it('stands in no training', () => {
    const known = new Set(lines.map(({ text }) => text));
    const shared = batch.lines.filter(({ text }) => known.has(text));
    expect(shared.length / batch.lines.length).toBeLessThan(0.05);
    expect(report).toContain(`## ${name},`);
  });

  it.each(guarded.filter((figure) => !LOST.has(`${name} ${figure}`)))(
    'is read no worse by more than a point: %s',
    (figure) => expect(figures[figure]).toBeGreaterThanOrEqual((before?.[figure] ?? 1) - POINT),
  );

  it.fails.each(guarded.filter((figure) => LOST.has(`${name} ${figure}`)))(
    'has lost more than a point: %s',
    (figure) => expect(figures[figure]).toBeGreaterThanOrEqual((before?.[figure] ?? 1) - POINT),
  );

  it('has no more false alarms', () =>
    expect(figures.falseAlarms).toBeLessThanOrEqual((before?.falseAlarms ?? 0) + POINT));
});

it('every locked batch is a file there', () => {
  const files = readdirSync(measuredDir).filter((file) => file.endsWith('.jsonl'));
  expect(files.map((file) => file.replace('.jsonl', '')).sort()).toEqual(Object.keys(locked).sort());
});
