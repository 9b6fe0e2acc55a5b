import { describe, expect, it } from 'vitest';
import { lazyReader } from '../../../bot/reader/load.ts';
import { withSpoken } from '../../../core/language/bare-level.ts';
import { noCase, withMoment, type Case } from '../../../core/language/case.ts';
import { saidAs } from '../../../core/language/said.ts';
import type { OfName, PartName } from '../../../core/language/parts.ts';
import type { Reading } from '../../../core/language/reading.ts';
import { scan } from '../../../core/language/tokens.ts';
import type { ParameterId } from '../../../core/water/parameter.ts';

function told(...levels: readonly (readonly [ParameterId, number])[]): Case {
  const slots = {
    levels: levels.map(([of, value]) => ({ of, part: 'now' as const, text: String(value), value })),
  };
  return withMoment(noCase, { atMs: 0, kind: 'readings-ok', slots }, 'said');
}

/** A message whose only number plays this part, and was guessed to be of that. */
function bare(text: string, part: PartName, of: OfName = 'nothing'): Reading {
  const scanned = scan(text);
  return { ...lazyReader.read(text), said: scanned.numbers.map((number) => saidAs(part, of, number, 1)) };
}

function ofs(read: Reading, before: Case): readonly OfName[] {
  return withSpoken(read, before).said.map(({ of }) => of);
}

describe('a level without its name', () => {
  it.each([
    ['of what was spoken of just before', bare('and 8.0 this time', 'now'), told(['alkalinity', 8.6])],
    ['of the one it is near to', bare('so 8.0', 'now'), told(['alkalinity', 8.6], ['calcium', 420])],
    [
      'of what it can be, not as guessed',
      bare('right now im at 9', 'now', 'nitrate'),
      told(['alkalinity', 4]),
    ],
  ])('is %s', (_, read, before) => expect(ofs(read, before)).toEqual(['alkalinity']));

  it('is of the one parameter its message names', () =>
    expect(ofs(bare('salinity of my reef is down to 31', 'now', 'temperature'), noCase)).toEqual([
      'salinity',
    ]));

  it.each([
    ['near several', told(['alkalinity', 8.6], ['ph', 8.2]), 'now'],
    ['far from what was told', told(['calcium', 420]), 'now'],
    ['where it is no level', told(['alkalinity', 8.6]), 'span'],
    ['where nothing was told', noCase, 'now'],
  ] as const)('is left alone %s', (_, before, part) =>
    expect(ofs(bare('and 8.0 this time', part), before)).toEqual(['nothing']),
  );

  it('is left alone where words tell of warmth', () =>
    expect(ofs(bare('the thermometer says 30', 'now', 'temperature'), told(['salinity', 33]))).toEqual([
      'temperature',
    ]));
});
