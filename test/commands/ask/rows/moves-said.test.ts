import { describe, expect, it } from 'vitest';
import type { Answer } from '../../../../commands/answer.ts';
import { ask } from '../../../../commands/ask.ts';
import type { Kind } from '../../../../core/language/kinds.ts';
import { plain, scriptedReader } from '../../../scripted-reader.ts';

/** Wednesday, 7 January 2026, noon. */
const NOW_MS = Date.UTC(2026, 0, 7, 12);

function answerTo(kind: Kind, marked: string): Answer {
  const reader = scriptedReader([{ marked, kinds: [[kind, 0.95]] }]);
  return ask(plain(marked), { nowMs: NOW_MS, keep: undefined, reader, zone: 'UTC' });
}

const first = (kind: Kind, marked: string): string => answerTo(kind, marked).headline;

// Sunday to Wednesday is three days. Paces are common practice, no source.
describe('a reading in range that came there fast', () => {
  it.each<readonly [string, RegExp]>([
    [
      'alk [7](was alkalinity) [sunday](moment), [10.6](now alkalinity) now, fine?',
      /^In range now, but alkalinity rose by 3\.6 dKH in 3 days, which is fast/,
    ],
    [
      'kh swings between [7.5](now alkalinity) and [9.5](now alkalinity), both in range, fine?',
      /^In range now, but alkalinity rose by 2 dKH in a day/,
    ],
    [
      'temp goes [24](now temperature) at night to [27](now temperature) by day, ok?',
      /^In range now, but temperature swings by 3 °C in a day, more than the usual 1 °C/,
    ],
    ['ph [7.6](now pH) in the morning and [8.2](now pH) evening, ok?', /pH low.*swings by 0\.6/],
  ])('%s', (marked, headline) => expect(first('readings-ok', marked)).toMatch(headline));

  it.each([
    'alk was [6.2](was alkalinity) in spring, [8.3](now alkalinity) now, still good?',
    'after [last month](moment), [30 degrees](was temperature), she is at [25.6](now temperature). should i be chasing something',
    'ph [7.9](now pH) morning [8.2](now pH) evening ok?',
  ])('is fine where it took long or swings as usual: %s', (marked) => {
    const { headline, unused } = answerTo('readings-ok', marked);
    expect(headline).toMatch(/^All of it is in the usual range/);
    expect(unused).toEqual([]);
  });
});

// Which way is common practice, no source.
describe('which of several ways to lower nutrients', () => {
  it.each([
    'no3 [50](now nitrate) po4 [0.4](now phosphate). refugium or more water changes?',
    'nitrate [40](now nitrate), a roller filter, vinegar or feed less?',
    'nitrate [60](now nitrate), bigger skimmer or macroalgae',
  ])('%s', (marked) => {
    const { headline, read } = answerTo('nutrients', marked);
    expect(headline).toMatch(/^Less food first, then wetter skimming/);
    expect(read.join()).toMatch(/nitrate \d+ is high/);
  });

  it('keeps to it where less food is refused', () =>
    expect(
      first('nutrients', 'nitrate [40](now nitrate): fuge or rollers? not keen on feeding less'),
    ).toMatch(/^Not feeding less: the same comes in/));

  it('asks no card where the number is low', () =>
    expect(first('nutrients', 'nitrate [3](now nitrate): refugium or skimmer?')).toMatch(/usual range/));
});

// 8 of 10 hours is 20 % less. Usual hours are common practice, no source.
describe('one of two days of light', () => {
  it.each<readonly [string, RegExp]>([
    [
      '[8](setting light) hrs or [10](setting light) for softies',
      /^Take 8 h: both are usual; 8 h is 20 % less/,
    ],
    [
      '[8 h](setting light) vs [12 h](setting light)?',
      /^Take 8 h: 8 h of full light is usual, 12 h is longer/,
    ],
    ['should I run [6 hours](setting light) or [9](setting light)', /^Take 9 h: 6 h .* shorter than usual/],
    ['go from [8 hours](setting light) to [10](setting light), ok?', /^Dim to about 80 %/],
  ])('%s', (marked, headline) => expect(first('light-hours', marked)).toMatch(headline));
});

// Ranges of the kinds are those of the guide; 1 meq/L = 2.804 dKH (IUPAC 2021): 8.4 dKH = 2.996 meq/L.
describe('other classes of a judged number', () => {
  it('judges a light for each kind a name can be', () =>
    expect(first('par-ok', 'acropora at [210 par](light) ok or weak')).toMatch(
      /^210 PAR: fits for .*too dim for table acropora.*too bright to begin with for deepwater acropora/,
    ));

  it('takes degrees of hardness for dKH, and degrees alone for warmth', () => {
    const hard = 'kit gives [8.4 degrees of hardness](now alkalinity), the leaflet wants meq';
    expect(first('convert', hard)).toMatch(/^8\.4 dKH is 2\.996 meq\/L/);
    // (78 - 32) / 1.8 = 25.56.
    expect(first('convert', '[78 degrees](now temperature) in celsius')).toMatch(/^78 °F is 25\.56 °C/);
  });

  it('keeps a reading under the time told beside it', () => {
    const told =
      '[Seven months ago](moment) I lost a tank. Log [this morning](moment) alk [8.6](now alkalinity)';
    expect(answerTo('log', told).steps[0]).toMatch(/at:this morning/);
  });

  it('offers to keep the tank that is told of', () => {
    const { next } = answerTo('told', 'its a [50 gal](system) with a mushroom wall');
    expect(next.map(({ command }) => command)).toContain('tank new');
  });
});
