import { describe, expect, it } from 'vitest';
import { quantityText } from '../../../../core/language/scan/number-span.ts';
import { numbersIn } from '../../../../core/language/scan/numbers.ts';

const read = (text: string): readonly string[] => numbersIn(text).map(quantityText);

/** One example for each rule of the scanner; the wording is our own. */
describe('numbers of a message', () => {
  it.each<readonly [string, readonly string[]]>([
    ['alk 8.2 dkh', ['8.2 dkh']],
    ['kh 4,3 und temp 25,5', ['4.3', '25.5']],
    ['mag 1,350 and salt 1.025', ['1350', '1.025']],
    ['1.234,5 l', ['1234.5 l']],
    ['75g tank', ['75 gal']],
    ['10gal, 8dkh', ['10 gal', '8 dkh']],
    ['15k lux', ['15000 lux']],
    ['1/2 tsp of soda', ['0.5 tsp']],
    ['1 1/2 cups', ['1.5 cups']],
    ['½ cup, 2½ gal', ['0.5 cup', '2.5 gal']],
    ['120x50x50', ['120', '50', '50']],
    ['no3 is 5, po4 .03, t5 lamp', ['5', '.03']],
    ['thirty mil a day', ['30 ml']],
    ['alk is eight point two', ['8.2']],
    ['calcium three eighty want four twenty', ['380', '420']],
    ['mag thirteen fifty', ['1350']],
    ['salt is one oh two five', ['1.025']],
    ['one point oh two six', ['1.026']],
    ['twelve hundred and fifty', ['1250']],
    ['seven and a half', ['7.5']],
    ['a hundred and ten gallons', ['110 gallons']],
    ['a litre and a half, 2 cups and a half', ['1.5 litre', '2.5 cups']],
    ['a year and a half', ['1.5 year']],
    ['a couple of days', ['2 days']],
    ['half a gallon', ['0.5 gallon']],
    ['evaporates a gallon a day', ['1 gallon']],
    ['one flat teaspoon', ['1 teaspoon']],
    ['two heaped teaspoons, a flat tbsp', ['2 heaped teaspoons', '1 tbsp']],
    ['250 lt, 300 ltrs, 75 galls, 90 L.', ['250 lt', '300 ltrs', '75 gal', '90 l']],
    ['10 percents', ['10 %']],
    ['bicarb 60 g litre', ['60 g/l']],
    ['780 wet litres and 60 actual gallons', ['780 litres', '60 gallons']],
    ['5 gal 1.026 cups?', ['5 gal', '1.026']],
    ['20 gallons and 2 pints, imperial both', ['20 imp gal', '2 imp pt']],
    ['20 gallons, uk or us?', ['20 gallons']],
    ['25 °C or 77f', ['25 °c', '77 f']],
    ['20 percent', ['20 percent']],
    ['lamp at 40%', ['40 %']],
    ['friday at 8pm', ['friday', '8pm']],
    ['on 5 oct and yesterday', ['5 oct', 'yesterday']],
  ])('%s', (text, numbers) => expect(read(text)).toEqual(numbers));

  it.each<readonly [string, number, number]>([
    ['alk in the high 6s', 6.7, 6.95],
    ['calcium in the low 400s', 405, 430],
    ["temp is mid 70's", 74, 76],
    ['7-8 dkh', 7, 8],
  ])('%s has two ends', (text, low, high) => {
    const [one] = numbersIn(text);
    expect(one?.high).toBeCloseTo(high, 3);
    expect(Math.min(one?.value ?? 0, low)).toBeGreaterThanOrEqual(low - 1e-9);
  });

  it.each<readonly [string, number | undefined]>([
    ['0.3 dkh a day', 1],
    ['20 % every two weeks', 14],
    ['4 ppm/week', 7],
    ['1.2 dkh daily', 1],
    ['30 ml of soda ash a day', 1],
    ['8.2 dkh today', undefined],
  ])('%s', (text, days) => expect(numbersIn(text)[0]?.everyDays).toBe(days));
});
