import { describe, expect, it } from 'vitest';
import type { Answer } from '../../../../commands/answer.ts';
import { ask } from '../../../../commands/ask.ts';
import { plain, scriptedReader } from '../../../scripted-reader.ts';
import { textOf } from './asked-row.ts';

/** Wednesday, 7 January 2026, noon. */
const NOW_MS = Date.UTC(2026, 0, 7, 12);

function answerTo(marked: string): Answer {
  const reader = scriptedReader([{ marked, kinds: [['moved', 0.95]] }]);
  return ask(plain(marked), { nowMs: NOW_MS, keep: undefined, reader, zone: 'UTC' });
}

const told = (marked: string): string => textOf(answerTo(marked));

const FOUR = '[8.6](was alkalinity), [8.3](was alkalinity), [7.9](was alkalinity), [7.4](now alkalinity)';

// Pace by hand: the move through the days it took.
describe('the time a move took', () => {
  it.each<readonly [string, RegExp]>([
    // Three steps of 4 days: 1.2 / 12.
    [`alk ${FOUR} every [4 days](span)`, /if nothing was dosed: 0\.1 dKH a day/],
    // It stood at 8.6 before: the steps count from there.
    [`alk [8.6](was alkalinity) since the start, then ${FOUR} each [4 days](span)`, /0\.1 dKH a day/],
    [`alk ${FOUR} in [4 days](span)`, /if nothing was dosed: 0\.3 dKH a day/],
    // Sunday to Wednesday: 1.5 / 3.
    ['alk was [9](was alkalinity) [sunday](moment) and is [7.5](now alkalinity)', /0\.5 dKH a day/],
  ])('%s', (marked, pace) => expect(told(marked)).toMatch(pace));

  it('is not how long it stood before', () => {
    const text = told('nitrate [2](was nitrate) for [a year](span), now [12](now nitrate)');
    expect(text).not.toMatch(/a day/);
    expect(text).toMatch(/Nitrate went up/);
  });

  it('is named fast beyond the usual pace of a day', () => {
    const { facts } = answerTo(
      'alk went [8](was alkalinity) to [9.4](now alkalinity) since [yesterday](moment)',
    );
    const pace = facts.find(({ label }) => label === 'pace');
    expect(pace?.value).toBe('1.4 dKH a day');
    expect(pace?.verdict).toMatch(/^fast: the usual limit is 1 dKH a day, common practice/);
  });
});

describe('units beside a level', () => {
  it('micrograms are micrograms in a litre', () =>
    expect(told('iodine [60 µg](was iodine) then [20 µg](now iodine)')).toMatch(/0\.02 mg\/L/));
});
