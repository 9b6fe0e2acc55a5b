import { describe, expect, it } from 'vitest';
import { judge } from '../../../core/water/assess.ts';

describe('judge', () => {
  it('puts the doubtful first and finds nothing in a good line', () => {
    const good = judge(
      [
        { parameter: 'alkalinity', value: 9.5 },
        { parameter: 'calcium', value: 450 },
      ],
      35,
    );
    expect(good.map(({ verdict }) => verdict)).toEqual(['fine', 'fine']);
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
    const [calcium] = judge([{ parameter: 'calcium', value: 375 }], 31.9);
    expect(calcium?.at35).toBeCloseTo(411.4, 1);
    expect(calcium?.verdict).toBe('fine');
    expect(judge([{ parameter: 'calcium', value: 375 }])[0]?.verdict).toBe('low');
  });

  it('does not scale what does not follow salinity', () => {
    expect(judge([{ parameter: 'nitrate', value: 8 }], 30)[0]).toEqual({
      parameter: 'nitrate',
      value: 8,
      verdict: 'fine',
    });
  });
});
