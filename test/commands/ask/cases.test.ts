import { describe, expect, it } from 'vitest';
import { openStore } from '../../../bot/store/open.ts';
import { ask } from '../../ask.ts';
import { findCommand } from '../../../commands/index.ts';
import { asked } from '../../corpus.ts';
import { cases } from '../../cases/all.ts';
import { sums } from '../../cases/sums.ts';
import { textOf } from '../text.ts';

describe.each(Object.entries(cases))('%s', (_, { asked: question, nowMs = 0, values, says, never }) => {
  const keep = openStore({ file: ':memory:', nowMs: () => nowMs }).keepFor('100000000000000001');
  const given = ask(question, { nowMs, keep, zone: 'UTC' });
  const rows = given.table?.rows.map((row) => row.join(': ')) ?? [];
  const text = [textOf(given), ...rows].join('\n');

  it.each(values)('prints $value ($at)', ({ at, value, tolerance = 0.02 }) => {
    const found = at
      .exec(text)
      ?.slice(1)
      .find((part) => part !== undefined);
    expect(found, text).toBeDefined();
    expect(Math.abs(Number(found) / value - 1), `${String(found)} in\n${text}`).toBeLessThanOrEqual(
      tolerance + 1e-12,
    );
  });

  it.each(says)('says %s', (pattern) => expect(text).toMatch(pattern));

  it.each(never)('never says %s', (pattern) => expect(text).not.toMatch(pattern));

  it('offers only commands there are', () => {
    for (const { command } of given.next) expect(findCommand(command.split(' ')), command).toBeDefined();
  });
});

it('every question of the corpus has its check', () => {
  expect(Object.keys(sums).sort()).toEqual(Object.keys(asked).sort());
});
