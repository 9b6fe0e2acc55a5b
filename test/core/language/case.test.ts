import { describe, expect, it } from 'vitest';
import { known, noCase, over, withMoment } from '../../../core/language/case.ts';
import type { Slots } from '../../../core/language/slots.ts';

const told = (slots: Slots, before = noCase) =>
  withMoment(before, { atMs: 0, kind: 'readings-ok', slots }, 'x');
const alk = (text: string, part: 'now' | 'was' = 'now') => ({
  of: 'alkalinity' as const,
  part,
  text,
  value: Number(text),
});

describe('what is known of a case', () => {
  it('is the last of what was said several times', () => {
    const after = told({ volume: '30 gal' }, told({ volume: '40 gal', levels: [alk('7')] }));
    expect(known(after)).toMatchObject({ volume: '30 gal', levels: [alk('7')] });
  });

  it('keeps the last level of each part', () => {
    const after = told({ levels: [alk('8.1')] }, told({ levels: [alk('9', 'was'), alk('7')] }));
    expect(known(after).levels).toEqual([alk('9', 'was'), alk('8.1')]);
  });

  it('has the corals spoken of last first', () => {
    expect(known(told({ corals: ['torch'] }, told({ corals: ['hammer'] }))).corals).toEqual([
      'torch',
      'hammer',
    ]);
  });
});

describe('a correction', () => {
  it('puts a value over a value', () => {
    expect(over({ volume: '40 gal', now: '7' }, { volume: '30 gal' })).toMatchObject({
      volume: '30 gal',
      now: '7',
    });
  });

  it('moves levels to the parameter that was meant', () => {
    const calcium = { of: 'calcium' as const, part: 'now' as const, text: '8', value: 8 };
    expect(over({ of: 'calcium', now: '8', levels: [calcium] }, { of: 'alkalinity' })).toMatchObject({
      of: 'alkalinity',
      now: '8',
      levels: [{ of: 'alkalinity', text: '8' }],
    });
  });
});
