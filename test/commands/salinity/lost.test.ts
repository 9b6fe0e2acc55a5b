import { describe, expect, it } from 'vitest';
import { salinityCommands } from '../../../commands/salinity.ts';
import { problemOf, runner } from '../text.ts';

const ask = runner(salinityCommands);

/** What stays of the salt where a steady stream is replaced with fresh water: S x e^(-gone / volume), by hand. */
describe('/salinity lost', () => {
  it.each([
    // 35 x e^-0.1
    [{ now: '35 ppt', volume: '300 L', out: '1 L a day', days: '30 days' }, /about 31\.7 ppt .*is low/],
    // 7 days if not said: 35 x e^(-7 / 100)
    [{ now: '35 ppt', volume: '100 L', out: '1 L a day' }, /^After 7 days it reads about 32\.6 ppt/],
    [{ now: '35 ppt', volume: '100 L', out: '7 L a week' }, /about 32\.6 ppt/],
  ])('%o', (input, headline) => expect(ask('lost', input).headline).toMatch(headline));

  it('puts salt water back, not fresh', () => {
    const given = ask('lost', { now: '35 ppt', volume: '300 L', out: '1 L a day' });
    expect(given.steps[0]).toMatch(/^Put back as much salt water/);
  });

  it.each([
    [{ out: '1 L a day', volume: '100 L' }, 'now'],
    [{ now: '35 ppt', out: '1 L a day' }, 'volume'],
  ])('asks about %o', (input, field) => expect(problemOf(() => ask('lost', input)).field).toBe(field));
});
