import { Locale } from 'discord.js';
import { assert, constantFrom, double, property } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inUnit } from '../../../core/quantity/format.ts';
import { readQuantity } from '../../../core/quantity/read.ts';
import { localText } from '../../../core/quantity/local-text.ts';

describe('numbers as a locale writes them', () => {
  // Decimal marks: CLDR 45, numbers/symbols-latn, from memory: a comma in de, pt-BR, fr, pl; a point in en, ja.
  it.each([
    ['8.2 dKH', 'de', '8,2 dKH'],
    ['8.2 dKH', 'pt-BR', '8,2 dKH'],
    ['8.2 dKH', 'en-US', '8.2 dKH'],
    ['8.2 dKH', 'ja', '8.2 dKH'],
    ['7.7 to 8.1 (−0.024 dKH/day)', 'fr', '7,7 to 8,1 (−0,024 dKH/day)'],
    ['0.04/0.056 = 0.714', 'de', '0,04/0,056 = 0,714'],
    ['1.5x and pH 8.25.', 'de', '1,5x and pH 8,25.'],
    ['1290 mg/L, 12500 L', 'de', '1290 mg/L, 12500 L'],
    ['1.026 SG', 'de', '1.026 SG'],
    ['1.0264 (25/25)', 'de', '1.0264 (25/25)'],
    ['1.025 L', 'de', '1,025 L'],
    ['at 20:00 and 9.30', 'de', 'at 20:00 and 9,30'],
  ])('%s for %s is %s', (text, locale, shown) => expect(localText(text, locale)).toBe(shown));

  it.each([
    'doi:10.1016/0198-0149(81)90132-5.2',
    '10.4319/lo.2002.47.5.1325',
    'section 5.10 of it',
    'Table 2.2.1',
    'eq. 3.4',
    'version 1.5',
    'v1.5',
    'https://example.org/2.5/page',
    'tank.2.csv',
    '/dose amount of:alkalinity now:7.2',
    '192.168.1.1',
  ])('%s is no quantity', (text) => expect(localText(text, 'de')).toBe(text));

  it('changes nothing without a locale', () => {
    expect(localText('8.2 dKH on 2026-06-01', undefined)).toBe('8.2 dKH on 2026-06-01');
  });

  it('is read back as the same quantity', () => {
    const kinds = [
      ['alkalinity', 'dKH', 2, 0.5, 7],
      ['volume', 'L', 1, 1, 5000],
      ['temperature', '°C', 1, 15, 35],
      ['salinity', 'ppt', 2, 5, 41.9],
    ] as const;
    assert(
      property(
        constantFrom(...kinds),
        double({ min: 0, max: 1, noNaN: true }),
        constantFrom(...Object.values(Locale)),
        ([kind, symbol, decimals, low, high], share, locale) => {
          const shown = inUnit(kind, low + share * (high - low), symbol, decimals);
          const back = readQuantity(kind, localText(shown, locale), { field: 'value' });
          expect(back.value).toBeCloseTo(readQuantity(kind, shown, { field: 'value' }).value, 9);
        },
      ),
    );
  });
});

describe('days as a locale writes them', () => {
  // CLDR 45, gregorian date formats, medium, from memory.
  it.each([
    ['on 2026-06-01; 23 readings', 'en-US', 'on Jun 1, 2026; 23 readings'],
    ['2026-06-01 21:00', 'en-GB', '1 Jun 2026 21:00'],
    ['(2026-06-01)', 'de', '(01.06.2026)'],
    ['2026-02-30', 'de', '2026-02-30'],
    ['2026-06-01T18:00:00Z', 'de', '2026-06-01T18:00:00Z'],
    ['tank-2026-06-01.csv', 'de', 'tank-2026-06-01.csv'],
  ])('%s for %s is %s', (text, locale, shown) => expect(localText(text, locale)).toBe(shown));

  it('is the same day in every locale of Discord, wherever the process runs', () => {
    for (const locale of Object.values(Locale)) {
      expect(localText('2026-12-31', locale), locale).toMatch(/31/);
      expect(localText('2026-12-31', locale), locale).toMatch(/2026/);
    }
  });
});
