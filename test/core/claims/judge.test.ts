import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judge } from '../../../core/claims/judge.ts';
import { rules } from './rules.ts';

describe('rules', () => {
  it.each(rules)('%s', (rule, kind, verdict, figure) => {
    const claim = judge(rule);
    expect(claim?.kind).toBe(kind);
    expect(claim?.verdict, claim?.figure).toBe(verdict);
    expect(claim?.figure).toMatch(figure);
    // Behind "Roughly right: " the first line of a phone still holds it.
    expect(claim?.figure.length).toBeLessThanOrEqual(124);
    for (const danger of claim?.dangers ?? []) expect(danger.length).toBeLessThanOrEqual(110);
    expect(claim?.sources.length).toBeGreaterThan(0);
    expect([claim?.rule, claim?.figure, ...(claim?.working ?? [])].join(' ')).not.toMatch(
      /NaN|undefined|Infinity|\u2014/,
    );
  });

  it('knows more than thirty kinds', () => {
    expect(new Set(rules.map(([, kind]) => kind)).size).toBeGreaterThan(30);
  });
});

describe('what following a rule does', () => {
  /** US gallon 3.785412 L. */
  const GAL_75_L = 283.9059;
  /** [rule, litres, low and high of what comes of it, where they are from]. */
  const table: readonly (readonly [rule: string, waterL: number, low: number, high: number])[] = [
    // 4 and 5 g per 18.927 L: 4 / (2.9961 x 0.18927) = 7.054 and 8.817 dKH, whatever the tank.
    ['1 tsp baking soda per 5 gal raises 1 dKH', GAL_75_L, 7.054, 8.817],
    // Half the soda ash: 0.5 / 0.6308 = 0.7926 dKH, 21 % less.
    ['soda ash is twice as strong as baking soda', GAL_75_L, 0.7926, 0.7926],
    // 1 dKH takes 7.147 mg/L Ca: 283.9 L x 7.147 / 0.272625 = 7.443 g dihydrate; half of it is added.
    ['every 10 ppm Ca goes with 1 meq/L', GAL_75_L, 3.714, 3.714],
    // 1.025 (25/25) -> 33.188; 45 mS/cm at 25 °C -> 29.1 (PSS-78).
    ['1.025 is 35 ppt', GAL_75_L, 33.188, 33.188],
    ['45 mS is 35 ppt', GAL_75_L, 29.1, 29.1],
    // 59.04 % and 25.92 % of 400 L.
    ['4 x 20 % = 80 %', 400, 236.16, 236.16],
    ['30 % continuous is the same as 30 % batch', 400, 103.67, 103.67],
    // 40 mg/L halved.
    ['a 50% water change halves nitrate', 400, 20, 20],
    // 100 L at 1 L of 0.0203 mol/L: 1.138 dKH (computed from Bates 1956); all 5 to 7 g per gallon are at or above 1.32 g/L.
    ['more kalk powder makes it stronger', 100, 1.138, 1.256],
    // 1 dKH in 283.9 L: 2.9961 x 2.839 = 8.506 g NaHCO3.
    ['never raise alk more than 1 dkh a day', GAL_75_L, 8.506, 8.506],
    // 20 x 283.9 L.
    ['you need 20x turnover', GAL_75_L, 5678.1, 5678.1],
    // 283.9 x 4 / 3.785412.
    ['1 gallon is 4 litres', GAL_75_L, 300, 300],
    // 283.9 L x 1.02334.
    ['a gallon of salt water weighs 8.5 lbs', GAL_75_L, 290.5, 290.5],
    // 35 + 35 x 0.07.
    ['top off with salt water to keep salinity stable', GAL_75_L, 37.45, 37.45],
    // 35 g per litre against 39 (bag, practice) and 35.82 (dry).
    ['1 ppt = 1 g per L', 100, 31.41, 34.2],
  ];
  it.each(table)('%s in %d L', (rule, waterL, low, high) => {
    const following = judge(rule)?.following?.(waterL);
    expect(Math.abs((following?.low ?? 0) / low - 1), following?.words).toBeLessThanOrEqual(0.02);
    expect(Math.abs((following?.high ?? 0) / high - 1), following?.words).toBeLessThanOrEqual(0.02);
  });

  it('says how far off it is, in the tank’s own amounts', () => {
    expect(judge('soda ash is twice as strong as baking soda')?.following?.(GAL_75_L).words).toMatch(
      /4\.3 g .* 8\.5 g .* 21 % less/,
    );
    expect(judge('1 tsp baking soda per 5 gal raises 1 dKH')?.following?.(GAL_75_L).words).toMatch(
      /^15 tsp .*7\.1 to 8\.8 times as much/,
    );
  });
});

describe('no rule', () => {
  /** Near misses: readings, questions, wishes and stories with the same words. */
  it.each([
    'my alk is 8 dkh and calcium 420',
    'ca 420 alk 8 dkh mg 1350',
    'how much baking soda to raise kh by 2 in 40 gallons',
    'raise alk 7.2 to 8.4 in 75 gal with soda ash',
    'what does 20 g of soda ash do',
    'nitrate 80, 55 gal, 20 % a week, how many to 10',
    'i have 200 par for my zoas',
    'refractometer says 1.026 and the tank is 300 L',
    'probe shows 45 ms, someone told me thats the number u want. is it 35ppt?',
    'phone app says 9000 lux right under my blue led',
    'i change 15% each sunday',
    'i bought soda ash and baking soda today',
    'kalk is in my topoff, 1 gal evaporates a day',
    'my tank is 75 gal and the sump 20 gal',
    'my ph drops at night',
    'do i need magnesium with calcium at 420',
    'salt mix 30 kg bucket 90 eur',
    'temp went from 25 c to 27 c',
    'i run 2 pumps of 3000 l/h',
    'it is 1.025 today and was 1.026',
    'hello',
  ])('%s', (text) => expect(judge(text)).toBeUndefined());
});

describe('other numbers in the same rule', () => {
  it.each([1, 2, 3, 5, 8])('%d times 15 % never adds up', (count) => {
    const claim = judge(`${count} x 15 % = ${count * 15} %`);
    if (count === 1) expect(claim).toBeUndefined();
    else expect(claim?.verdict).toBe('wrong');
  });

  it.each([
    ['½ cup of salt per gallon', '0.5 US cup'],
    ['1/2 cup of salt per gallon', '0.5 US cup'],
    ['a half cup of salt per gallon', '0.5 US cup'],
  ])('%s is read', (rule) => expect(judge(rule)?.kind).toBe('cups of salt'));
});

describe('any numbers', () => {
  const number = fc.double({ min: 0.001, max: 5000, noNaN: true }).map((n) => n.toPrecision(3));
  const shapes: readonly ((a: string, b: string, c: string) => string)[] = [
    (a, b, c) => `${a} g of baking soda per ${b} L raises alk by ${c} dkh`,
    (a, b) => `${a} x ${b} % = 80 %`,
    (a, b) => `${a} % continuous is the same as ${b} % batch`,
    (a) => `soda ash is ${a} times as strong as baking soda`,
    (a, b) => `every ${a} ppm ca goes with ${b} meq/l`,
    (a, b) => `${a} ms is ${b} ppt`,
    (a) => `lux / ${a} = par`,
    (a, b) => `${a} cups of salt per ${b} gallons`,
    (a, b, c) => `${a} par for ${b} hours is ${c} mol`,
    (a, b, c) => `${a} ppm a week with ${b} % weekly changes tops out at ${c}`,
    (a, b) => `${a} ml per ${b} gal peroxide`,
    (a) => `never raise alk more than ${a} dkh a day`,
    (a, b) => `${a} gallon is ${b} litres`,
  ];

  it('gives a verdict whose words hold no broken number, or none at all', () => {
    let judged = 0;
    fc.assert(
      fc.property(fc.constantFrom(...shapes), number, number, number, (shape, a, b, c) => {
        const claim = judge(shape(a, b, c));
        if (claim === undefined) return;
        judged += 1;
        const words = [
          claim.rule,
          claim.figure,
          ...claim.working,
          claim.following?.(284).words,
          claim.example?.words,
        ];
        expect(words.filter((part) => part !== undefined).join(' ')).not.toMatch(
          /NaN|Infinity|undefined|unknown|e[+-]\d/,
        );
      }),
      { numRuns: 600 },
    );
    expect(judged).toBeGreaterThan(150);
  });

  it('calls the worked-out factor right and one a fifth off wrong', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 20, max: 2000 }), (grams, litres) => {
        const dkh = (grams * 100) / (2.9961 * litres);
        fc.pre(dkh > 0.05 && dkh < 40);
        const rule = (rise: number): string =>
          `${grams} g of baking soda per ${litres} L raises alk by ${rise.toFixed(4)} dkh`;
        expect(judge(rule(dkh))?.verdict).toBe('right');
        expect(judge(rule(dkh * 1.2))?.verdict).toBe('wrong');
        expect(judge(rule(dkh / 1.25))?.verdict).toBe('wrong');
      }),
      { numRuns: 60 },
    );
  });
});
