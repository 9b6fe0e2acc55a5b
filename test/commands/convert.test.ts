import { describe, expect, it } from 'vitest';
import { convert } from '../../commands/convert.ts';
import { Problem } from '../../core/problem.ts';
import { problemOf, textOf } from './text.ts';

describe('convert', () => {
  // Unit relations: IUPAC 2021 weights and the SI Brochure; see test/core/quantity/unit.test.ts.
  const table: { text: string; of?: string; says: string[] }[] = [
    { text: '75 gal', says: ['283.9 L', 'US gallons'] },
    { text: '180 ppm', of: 'alkalinity', says: ['10.09 dKH', '3.597 meq/L'] },
    { text: '8,3 dKH', says: ['2.96 meq/L', '148.1 ppm CaCO3'] },
    { text: '18 ppb P', says: ['0.055'] },
    { text: '78 F', says: ['25.56 °C'] },
    { text: '120 x 50 x 50 cm', says: ['300 L', 'full box'] },
    { text: '10 ppm', of: 'nitrate', says: ['2.259'] },
    { text: '2 lb', says: ['907.18'] },
  ];
  it.each(table)('$text of $of', ({ text, of, says }) => {
    const shown = textOf(convert(text, of));
    for (const part of says) expect(shown).toContain(part);
  });

  it.each([
    ['5 ppm', ['alkalinity', 'nitrate', 'phosphate']],
    ['75 g', ['volume', 'mass']],
  ])('%s is asked back', (text, kinds) => {
    try {
      convert(text);
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      expect(error.choices).toEqual(expect.arrayContaining(kinds));
      for (const choice of error.choices) expect(() => convert(text, choice)).not.toThrow();
      return;
    }
    throw new Error('nothing was asked');
  });

  it.each(['', 'lots', '75', '@everyone'])('"%s" is refused', (text) =>
    expect(() => convert(text)).toThrow(Problem),
  );
});

it('says so where a value has no other unit', () => {
  expect(problemOf(() => convert('9', 'pH')).message).toMatch(/pH has no other unit/);
});

// PO4/P = 94.97/30.97 = 3.066 (IUPAC 2021): 18 ppb P is 55 ppb PO4, 18 ppb PO4 is 5.9 ppb P.
describe('phosphate in ppb', () => {
  it.each([
    ['18 ppb P', /^18 ppb P is 0\.055 mg\/L phosphate: fine/],
    ['18 ppb', /^18 ppb PO4 is 0\.018 mg\/L phosphate: low/],
    ['60 ppb P', /^60 ppb P is 0\.184 mg\/L phosphate: high/],
  ])('%s is judged', (text, headline) => expect(convert(text, 'phosphate').headline).toMatch(headline));

  it('shows both ways it can be meant', () => {
    const text = textOf(convert('18 ppb', 'po4'));
    expect(text).toMatch(/if it is ppb P: 55 ppb PO4 = 0\.055 mg\/L PO4 fine/);
    expect(text).toMatch(/if it is ppb PO4: 18 ppb PO4 = 0\.018 mg\/L PO4 low/);
    expect(text).toMatch(/5\.9 ppb P/);
    expect(textOf(convert('0.06 ppm', 'phosphate'))).not.toMatch(/if it is/);
  });
});
