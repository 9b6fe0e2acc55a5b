import { describe, expect, it } from 'vitest';
import { nearness, spansIn } from '../../../../core/care/subjects/near-number.ts';

const near = (asked: string, told: string): number => nearness(spansIn(asked), spansIn(told));

/** 1 US gal is 3.785411784 L (NIST SP 811, from memory), 1 ft 30.48 cm exactly. */
describe('a number near to a span', () => {
  it('reads both ends of a span, in litres and gallons', () => {
    expect(spansIn('150 to 230 L')).toEqual([{ kind: 'volume', from: 150, to: 230 }]);
    expect(spansIn('40 gal')[0]?.from).toBeCloseTo(151.4, 1);
    expect(spansIn('4 ft')[0]?.from).toBeCloseTo(121.92, 2);
    expect(spansIn('2 weeks')).toEqual([{ kind: 'days', from: 14, to: 14 }]);
  });

  it('takes open spans as they are said', () => {
    expect(spansIn('Nano below 40 L')).toEqual([{ kind: 'volume', from: 0, to: 40 }]);
    expect(spansIn('350 L (90 gal) and more')[0]).toEqual({ kind: 'volume', from: 350, to: Infinity });
  });

  it.each([
    ['20 gal', '75 to 110 L (20 to 30 gal)'],
    ['10 gal', 'Nano below 40 L'],
    ['600 L', '350 L (90 gal) and more'],
    ['10 days away', '8 to 14 days'],
  ])('%s lies in %s', (asked, told) => expect(near(asked, told)).toBeGreaterThan(0.9));

  it.each([
    ['20 gal', '150 L (40 gal)'],
    ['5 days', '8 to 14 days'],
    ['20 days', '20 L'],
    ['no number', '20 L'],
  ])('%s is far from %s', (asked, told) => expect(near(asked, told)).toBe(0));
});
