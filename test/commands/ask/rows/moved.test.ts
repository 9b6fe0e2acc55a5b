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
    expect(pace?.verdict).toMatch(
      /rose by 1\.4 dKH in a day, which is fast \(the usual limit is 1 dKH a day\), common practice/,
    );
  });
});

// What moves a level is common practice, no source; differences by hand.
describe('what a message denies moves nothing', () => {
  it.each([
    'alk crept [7.9](was alkalinity) to [9.1](now alkalinity) and I havent added a drop of anything',
    'alk [8](was alkalinity) to [9.4](now alkalinity) undosed',
    'alk [8](was alkalinity), now [9.6](now alkalinity), I do not dose at all',
    'alk [8](was alkalinity) then [9](now alkalinity) though I add none',
  ])('no doser: %s', (marked) => {
    expect(told(marked)).not.toMatch(/doser|limewater/);
    expect(answerTo(marked).headline).toMatch(/most often it is a water change/);
  });

  it('no food where it stayed the same, no top-off that is off', () => {
    expect(told('nitrate [5](was nitrate) to [25](now nitrate), no extra feeding')).not.toMatch(/more food/);
    expect(told('salinity [35](was salinity) then [33](now salinity) and the ato is off')).not.toMatch(
      /top-off that ran on/,
    );
  });

  it('not the hour where both were read at one hour, and the air of a room that was shut', () => {
    const same = 'ph at [noon](moment) was [8.2](was pH) in spring, [7.9](now pH) at [noon](moment)';
    expect(answerTo(same).headline).toMatch(
      /^pH went down: most often it is carbon dioxide of a closed room/,
    );
    expect(told(same)).not.toMatch(/the hour: lowest/);
    const shut =
      'ph [8.2](was pH) all year, windows shut now and [7.8](now pH) at dawn, [7.95](now pH) by dusk';
    expect(answerTo(shut).headline).toMatch(/closed room/);
    expect(answerTo(shut).read).toContain('also read: 7.8');
  });
});

// The widest usual swing of a day, 0.4 of pH and 1 °C: common practice, no source.
describe('an evening and a morning', () => {
  it.each<readonly [string, RegExp]>([
    [
      'ph [8.3](was pH) at tea, [7.8](now pH) by dawn',
      /^pH swings by 0\.5 in the day, more than the usual 0\.4/,
    ],
    [
      'ph [8.2](was pH) evening, [7.9](now pH) morning',
      /^pH swings by 0\.3 in the day, no more than is usual/,
    ],
    [
      'temp [25](was temperature) in the morning, [27.6](now temperature) in the evening',
      /^Temperature swings by 2\.6 °C in the day, more than the usual 1 °C/,
    ],
    // Where one end cannot wait, that is said first.
    ['ph [7.3](was pH) in the morning, [8](now pH) in the evening', /^Urgent: pH 7\.3/],
  ])('%s', (marked, first) => expect(answerTo(marked).headline).toMatch(first));
});

it('a fall in one night that few tanks use up is tested again first', () =>
  expect(answerTo('alk fell from [9.5](was alkalinity) to [7](now alkalinity) overnight').headline).toMatch(
    /^Test again first: Alkalinity fell by 2\.5 dKH in 12 h/,
  ));

describe('units beside a level', () => {
  it('micrograms are micrograms in a litre', () =>
    expect(told('iodine [60 µg](was iodine) then [20 µg](now iodine)')).toMatch(/0\.02 mg\/L/));
});
