import { describe, expect, it } from 'vitest';
import { isOff, judge, usualRange, type RangeOf } from '../../../core/water/assess.ts';
import { salinityFromSpecificGravity } from '../../../core/water/specific-gravity.ts';
import { targetFor } from '../../../core/water/targets.ts';

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

  it.each([
    [33, 'urgent'],
    [31, 'urgent'],
    [30, 'urgent'],
    [29.9, 'high'],
    [26, 'fine'],
    [20, 'low'],
    [19.5, 'urgent'],
    [18, 'urgent'],
    [12, 'urgent'],
  ] as const)('calls %d °C %s', (value, verdict) => {
    // Common practice, no source: harm within a day above 31 and below 20.
    expect(judge([{ parameter: 'temperature', value }])[0]?.verdict).toBe(verdict);
  });

  it('does not scale an ion by a salinity of another day', () => {
    const dayMs = 24 * 60 * 60 * 1000;
    const magnesium = (atMs: number) =>
      judge([
        { parameter: 'magnesium', value: 1350, atMs },
        { parameter: 'salinity', value: 31, atMs: 6 * dayMs },
      ]).find(({ parameter }) => parameter === 'magnesium');
    expect(magnesium(0)).toMatchObject({ verdict: 'fine' });
    expect(magnesium(0)?.at35).toBeUndefined();
    expect(magnesium(5 * dayMs)?.at35).toBeCloseTo((1350 * 35) / 31, 6);
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
    expect(doubted.map(({ verdict }) => verdict)).toEqual(['urgent', 'fine']);
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

  // Stony corals 34 to 36, soft 33 to 36: common practice, no source; 1 ppt is what a hobby instrument can be off by.
  it.each([
    ['mixed', 32.9, 'low'],
    ['mixed', 33, 'at the edge'],
    ['mixed', 33.9, 'at the edge'],
    ['mixed', 34, 'fine'],
    ['mixed', 36, 'fine'],
    ['mixed', 37, 'at the edge'],
    ['mixed', 37.1, 'high'],
    ['small-polyp', 33.19, 'at the edge'],
    ['large-polyp', 31.9, 'low'],
    ['soft', 33.19, 'fine'],
    ['soft', 31.9, 'low'],
  ] as const)('salinity in a %s tank: %d is %s', (kind, value, verdict) => {
    const [judged] = judge([{ parameter: 'salinity', value }], (id) => targetFor(kind, id).range);
    expect(judged?.verdict).toBe(verdict);
    expect(judged && isOff(judged)).toBe(verdict === 'low' || verdict === 'high');
  });

  it('takes an edge for no fault: it comes last of what is named and moves no ion', () => {
    const judged = judge(
      [
        { parameter: 'calcium', value: 420 },
        { parameter: 'salinity', value: 33.5 },
        { parameter: 'alkalinity', value: 6 },
      ],
      (id) => targetFor('mixed', id).range,
    );
    expect(judged.map(({ parameter, verdict }) => `${parameter} ${verdict}`)).toEqual([
      'alkalinity low',
      'salinity at the edge',
      'calcium fine',
    ]);
    expect(judged.some(({ at35 }) => at35 !== undefined)).toBe(false);
  });

  // 1.025 is S 33.188 on 25/25, 32.900 on 20/20, 32.587 on 60F/60F (EOS-80, Unesco 44).
  it.each([
    ['25/25', 'fine'],
    ['20/20', 'at the edge'],
    ['60F/60F', 'at the edge'],
  ] as const)('lets 1.025 on %s pass where the kind of tank is not known: %s', (pair, verdict) => {
    const value = salinityFromSpecificGravity(1.025, pair);
    expect(judge([{ parameter: 'salinity', value }])[0]?.verdict).toBe(verdict);
  });

  it('calls ammonia urgent only where a kit can see it', () => {
    expect(judge([{ parameter: 'ammonia', value: 0 }])[0]?.verdict).toBe('fine');
    expect(judge([{ parameter: 'ammonia', value: 0.05 }])[0]?.verdict).toBe('high');
    expect(judge([{ parameter: 'ammonia', value: 0.25 }])[0]?.verdict).toBe('urgent');
  });
});
