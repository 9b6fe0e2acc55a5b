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
  A16: ['alkalinity 9.3 plain', 'alkalinity 7.5 plain', 'ph 8.03 plain'],
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

  it.each([
    ['want kh 9, its 7.4 now', ['alkalinity 9 goal', 'alkalinity 7.4 plain']],
    ['alk 7 need 8.5', ['alkalinity 7 plain', 'alkalinity 8.5 goal']],
    ['alk is 7, 8 is my goal', ['alkalinity 7 plain', 'alkalinity 8 goal']],
    ['need to raise alk 7 to 8', ['alkalinity 7 plain', 'alkalinity 8 goal']],
    ['a 1.5 dkh bump', ['alkalinity 1.5 dkh step']],
    ['alk 8 more or less', ['alkalinity 8 plain']],
    ['soda ash from 7 to 8', ['alkalinity 7 before', 'alkalinity 8 goal']],
    ['100 ppm nitrate to 20', ['nitrate 100 ppm nitrate plain', 'nitrate 20 goal']],
    ['no3-n 2.5', ['nitrate 2.5 ppm no3-n plain']],
    ['ammonia 1 ppm', ['ammonia 1 ppm plain']],
    ['20 g soda ash in 75 gal', []],
  ])('%s', (text, expected) => {
    expect(hear(text).said.map((s) => `${s.parameter} ${s.mention.text} ${s.role}`)).toEqual(expected);
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
    ['120g, prob 95 net, mg 1180', '95 g'],
    ['10 gal a week on 60 gal', '60 gal'],
    ['75 gal tank, alk is 7 water is clear', '75 gal'],
    ['dose 14 tsp and 120 ml', undefined],
    ['100 g of baking soda', undefined],
  ];
  it.each(table)('%s -> %s', (text, expected) => {
    expect(tankVolume(hear(text))?.text).toBe(expected);
  });
});

it('does not take the day of a log for a reading', () => {
  const heard = hear('ammonia at 2 ppm day 5, nitrite 1 ppm on day 12');
  expect(heard.said.map(({ parameter, mention }) => [parameter, mention.value])).toEqual([
    ['ammonia', 2],
    ['nitrite', 1],
  ]);
});
