import { describe, expect, it } from 'vitest';
import { hear } from '../../../core/words/hear.ts';
import { tankVolume } from '../../../core/words/tank-volume.ts';
import { asked, type CaseId } from '../../corpus.ts';

/** The inputs a careful reader takes from each question: parameter, number, part it plays. */
const said: Partial<Record<CaseId, string[]>> = {
  A01: ['alkalinity 5.3 plain', 'alkalinity 8 goal'],
  A03: ['alkalinity 14 dkh plain', 'alkalinity 9 before', 'alkalinity 8 fresh', 'alkalinity 9 goal'],
  A05: ['alkalinity 0.6 dkh use'],
  A07: ['calcium 360 plain', 'calcium 430 goal'],
  A16: ['alkalinity 9.3 plain', 'alkalinity 7.5 goal', 'ph 8.03 plain'],
  B01: ['nitrate 80 plain', 'nitrate 10 goal'],
  B03: ['nitrate 4 ppm rise', 'nitrate 10 goal'],
  B07: ['salinity 1.030 plain', 'salinity 1.026 goal'],
  G03: [
    'temperature 80f plain',
    'salinity 1.024 ppt plain',
    'ph 8.3 plain',
    'alkalinity 10 plain',
    'calcium 560 plain',
    'nitrate 0 plain',
    'phosphate 0 plain',
  ],
};

describe('what was said of which parameter', () => {
  it.each(Object.entries(said))('%s', (id, expected) => {
    const heard = hear(asked[id as CaseId]);
    expect(heard.said.map((s) => `${s.parameter} ${s.mention.text} ${s.role}`)).toEqual(expected);
  });

  it('reads a triplet in either order by magnitude', () => {
    for (const text of ['450/9.5/1350', '9.5/450/1350']) {
      expect(hear(text).said.map((s) => `${s.parameter} ${s.mention.value}`)).toEqual([
        'calcium 450',
        'alkalinity 9.5',
        'magnesium 1350',
      ]);
    }
  });

  it.each([
    ['dose 500 mg 75 gal', ['500 mg', '75 gal']],
    ['ca 380 mg 1250', ['380', '1250']],
    ['alk 2 dkh 75 gal', ['2 dkh', '75 gal']],
    ['ca 420 kh 8.1', ['420', '8.1']],
    ['mg 1350 sg 1.025', ['1350', '1.025']],
  ])('tells a unit from a name before the next number: %s', (text, expected) => {
    expect(hear(text).mentions.map((m) => m.text)).toEqual(expected);
  });

  it('leaves dates, ratios and times alone', () => {
    expect(hear('on 4/15 at 9:30 we did 1:10').mentions).toEqual([]);
  });
});

describe('the volume of the tank', () => {
  const table: [string, string | undefined][] = [
    [asked.A01, undefined],
    [asked.A03, '75 gal'],
    [asked.A05, '90g'],
    [asked.A07, '180 litres'],
    [asked.A10, '100 gal'],
    [asked.A14, '60 gal'],
    [asked.A16, '150g'],
    [asked.B01, '55g'],
    [asked.B07, '55 gal'],
    ['dose 14 tsp and 120 ml', undefined],
    ['100 g of baking soda', undefined],
  ];
  it.each(table)('%s -> %s', (text, expected) => {
    expect(tankVolume(hear(text))?.text).toBe(expected);
  });
});
