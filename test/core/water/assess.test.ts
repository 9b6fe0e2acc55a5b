import { describe, expect, it } from 'vitest';
import { judge, usualRange, type RangeOf } from '../../../core/water/assess.ts';

/** A member's own range for alkalinity, the usual ones for the rest. */
const own: RangeOf = (id) => (id === 'alkalinity' ? [8, 9] : usualRange(id));

describe('judge', () => {
  it('puts the doubtful first and finds nothing in a good line', () => {
    const good = judge([
      { parameter: 'alkalinity', value: 9.5 },
      { parameter: 'calcium', value: 450 },
      { parameter: 'salinity', value: 35 },
    ]);
    expect(good.map(({ verdict }) => verdict)).toEqual(['fine', 'fine', 'fine']);
    const odd = judge([
      { parameter: 'alkalinity', value: 6 },
      { parameter: 'calcium', value: 560 },
    ]);
    expect(odd.map(({ parameter, verdict }) => `${parameter} ${verdict}`)).toEqual([
      'calcium doubtful',
      'alkalinity low',
    ]);
  });

  it('judges an ion at salinity 35, since it follows salinity (constant composition, Millero et al. 2008)', () => {
    const low = { parameter: 'salinity', value: 31.9 } as const;
    const calcium = judge([{ parameter: 'calcium', value: 375 }, low]).find(
      ({ parameter }) => parameter === 'calcium',
    );
    expect(calcium?.at35).toBeCloseTo(411.4, 1);
    expect(calcium?.verdict).toBe('fine');
    expect(judge([{ parameter: 'calcium', value: 375 }])[0]?.verdict).toBe('low');
  });

  it('does not scale what does not follow salinity, nor by a salinity it doubts', () => {
    const nitrate = { parameter: 'nitrate', value: 8 } as const;
    const range = usualRange('nitrate');
    expect(judge([nitrate, { parameter: 'salinity', value: 30 }])).toContainEqual({
      ...nitrate,
      range,
      verdict: 'fine',
    });
    const doubted = judge([
      { parameter: 'calcium', value: 420 },
      { parameter: 'salinity', value: 3 },
    ]);
    expect(doubted.map(({ verdict }) => verdict)).toEqual(['doubtful', 'fine']);
    expect(doubted[1]?.at35).toBeUndefined();
  });

  // Order: common practice, no source.
  it('orders by what to act on first', () => {
    const off = judge([
      { parameter: 'nitrate', value: 60 },
      { parameter: 'calcium', value: 340 },
      { parameter: 'magnesium', value: 1100 },
      { parameter: 'alkalinity', value: 6 },
      { parameter: 'temperature', value: 29 },
      { parameter: 'salinity', value: 31 },
      { parameter: 'phosphate', value: 9 },
      { parameter: 'ammonia', value: 0.5 },
    ]);
    expect(off.map(({ parameter, verdict }) => `${parameter} ${verdict}`)).toEqual([
      'ammonia urgent',
      'phosphate doubtful',
      'salinity low',
      'temperature high',
      'alkalinity low',
      'magnesium low',
      'calcium low',
      'nitrate high',
    ]);
  });

  it('judges by the ranges given', () => {
    expect(judge([{ parameter: 'alkalinity', value: 7.5 }])[0]?.verdict).toBe('fine');
    expect(judge([{ parameter: 'alkalinity', value: 7.5 }], own)[0]?.verdict).toBe('low');
  });

  it('calls ammonia urgent only where a kit can see it', () => {
    expect(judge([{ parameter: 'ammonia', value: 0 }])[0]?.verdict).toBe('fine');
    expect(judge([{ parameter: 'ammonia', value: 0.05 }])[0]?.verdict).toBe('high');
    expect(judge([{ parameter: 'ammonia', value: 0.25 }])[0]?.verdict).toBe('urgent');
  });
});
