import { describe, expect, it } from 'vitest';
import { scan } from '../../../core/language/tokens.ts';
import { troubleTold } from '../../../core/language/trouble.ts';

const numbers = (text: string) =>
  scan(text).numbers.map(({ number, unit, everyDays }) =>
    [number, unit, everyDays].filter((one) => one).join(' '),
  );

describe('numbers of a message', () => {
  it.each([
    ['raise alk to 8.4 in 75 gal', ['8.4', '75 gal']],
    ['1.0255 in ppt', ['1.0255']],
    ['ph was 8.2 in summer', ['8.2']],
    ['a sand bed of 2 in', ['2 in']],
    ['36 in x 18 in x 18 in', ['36 in', '18 in', '18 in']],
    ['ca 420 mg 1350', ['420', '1350']],
    ['20 mg of it', ['20 mg']],
    ['120 x 50 x 50 cm', ['120', '50', '50 cm']],
    ['want 8.2 and 420', ['8.2', '420']],
    ['soda ash at 80 g per litre', ['80 g/l']],
  ])('%s', (text, found) => {
    expect(numbers(text)).toEqual(found);
  });

  it('belong to a time that stands at most two words behind', () => {
    expect(scan('15 ppm of calcium per week').numbers[0]?.everyDays).toBe(7);
    expect(scan('5 L by day').numbers[0]?.everyDays).toBe(1);
    expect(scan('1 dkh loss every 24 hours').numbers[0]?.everyDays).toBeCloseTo(1, 9);
    expect(scan('8.2 and falling').numbers[0]?.everyDays).toBeUndefined();
  });
});

describe('trouble', () => {
  it('is told, and not denied', () => {
    expect(troubleTold(scan('alk 8 and my torch is closed'))).toBe('closed');
    expect(troubleTold(scan('alk 8 and nothing died'))).toBeUndefined();
    expect(troubleTold(scan('is nitrate 12 bad'))).toBeUndefined();
    expect(troubleTold(scan('nitrate 12, corals look bad'))).toBe('bad');
  });
});
