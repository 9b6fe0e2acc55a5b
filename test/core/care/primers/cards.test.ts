import { describe, expect, it } from 'vitest';
import { primers } from '../../../../core/care/primers/cards.ts';
import { MOST_WORDS, primerIds, type Primer } from '../../../../core/care/primers/primer.ts';
import { sources } from '../../../../core/sources.ts';
import { meqLFromDkh, calciumWithAlkalinity } from '../../../../core/water/alkalinity.ts';
import { feedingAdds } from '../../../../core/corals/feeding.ts';
import type { ParameterId } from '../../../../core/water/parameter.ts';
import { limitsOf } from '../../../../core/water/limits.ts';

function textOf({ headline, points, steps = [], cautions = [] }: Primer): string {
  return [headline, ...points.flat(), ...steps, ...cautions].join(' ');
}

const card = (id: string): string => {
  const found = primers.find((each) => each.id === id);
  if (found === undefined) throw new Error(`no card ${id}`);
  return textOf(found);
};

/** Words of shops and of medicines: no card names a product or a dose of one. */
const NEVER =
  /™|®|\bbrand\b|\b\d+(?:\.\d+)? ?(?:mg|ml|drops?) (?:of|per) (?:iodine|copper|medicine|antibiotic|peroxide)/i;

describe.each(primers.map((each) => ({ id: each.id, each })))('$id', ({ each }) => {
  it(`has at most ${MOST_WORDS} words`, () => {
    const words = textOf(each).split(/\s+/).length;
    expect(words).toBeGreaterThan(60);
    expect(words).toBeLessThanOrEqual(MOST_WORDS);
  });

  it('cites sources that exist, and leads to other cards', () => {
    expect(each.sources.length).toBeGreaterThan(0);
    for (const code of each.sources) expect(sources[code].title).not.toBe('');
    expect(each.see.length).toBeGreaterThan(1);
    for (const id of each.see) {
      expect(primerIds).toContain(id);
      expect(id).not.toBe(each.id);
    }
  });

  it('is plain text without a product or a dose of medicine', () => {
    expect(textOf(each)).not.toMatch(/[*_`#]|\u2014|undefined/);
    expect(textOf(each)).not.toMatch(NEVER);
  });

  it('marks what is common practice where its only sources are not published', () => {
    const published = each.sources.some((code) =>
      ['published', 'standard', 'project'].includes(sources[code].kind),
    );
    expect(published || each.sources.includes('practice')).toBe(true);
  });
});

describe('the list', () => {
  it('has about twenty cards and fits one list of choices', () => {
    expect(primers.length).toBeGreaterThanOrEqual(20);
    expect(primers.length).toBeLessThanOrEqual(25);
    expect(new Set(primers.map(({ id }) => id)).size).toBe(primers.length);
  });

  it('asks for every card by words of its own', () => {
    const names = primers.flatMap(({ id, names: own }) => [
      id.toLowerCase(),
      ...own.filter((name) => name !== id.toLowerCase()),
    ]);
    expect(new Set(names).size).toBe(names.length);
  });
});

describe('numbers on the cards', () => {
  /** IUPAC 2021 weights: 40.078 / 2 mg per meq, 2.80385 dKH per meq/L. */
  it('7 mg/L of calcium go with a dKH', () => {
    expect(Math.round(calciumWithAlkalinity(meqLFromDkh(1)))).toBe(7);
    expect(card('alkalinity and calcium')).toContain('about 7 mg/L of calcium');
  });

  const usual: readonly [string, ParameterId, string][] = [
    ['alkalinity and calcium', 'alkalinity', '7 to 11 dKH'],
    ['alkalinity and calcium', 'calcium', '400 to 450 mg/L'],
    ['magnesium', 'magnesium', '1250 to 1400 mg/L'],
    ['nutrients', 'nitrate', 'nitrate 2 to 20 mg/L'],
    ['nutrients', 'phosphate', 'phosphate 0.03 to 0.1'],
    ['pH', 'ph', '7.8 to 8.4'],
  ];
  it.each(usual)('%s: the range of %s is the one answers use', (id, of, text) => {
    const [low, high] = limitsOf(of).usual;
    expect(text).toContain(`${low} to ${high}`);
    expect(card(id)).toContain(text);
  });

  /** Reference seawater S 35, 25 °C: Ca 421.70, Mg 1313.68 mg/L, alkalinity 6.612 dKH (Millero 2008 with EOS-80). */
  it.each([
    ['alkalinity and calcium', '6.6 and 422'],
    ['magnesium', '1314'],
    // PSS-78: S 35 at 25 °C is 53.07 mS/cm; EOS-80: SG 25/25 1.02637.
    ['salinity', '1.0264 at 25 °C and 53 mS/cm'],
    // 1 - 0.8^4 = 0.5904; +5 a week at 10 % settles at 50; 1 - e^-0.3 = 0.259 (mass balance).
    ['water changes', 'four of 20 % replace 59 %'],
    ['water changes', '5 mg/L and 10 % end at 50'],
    ['water changes', '30 % dripped through replaces 26 %'],
    // 35 / 0.95 = 36.8.
    ['top-off', '5 % evaporated turns 35 ppt into 37'],
    // Bates 1956: 0.0203 mol/L, 1.504 g/L, 40.6 meq/L.
    ['limewater', 'about 1.5 g in a litre, 41 meq/L at 25 °C'],
    // 8 dKH = 2.853 meq/L = 142.8 mg/L CaCO3.
    ['units', '8 dKH, 2.85 meq/L or 143 ppm'],
    // 200 x 8 x 0.0036 = 5.76 (definition of the daily light integral).
    ['PAR', '200 for 8 h is 5.8 mol'],
    // 50 / 38 = 1.316.
    ['net volume', '32 % too much'],
  ])('%s says %s', (id, text) => expect(card(id)).toContain(text));

  it('what a gram of flakes adds is what the sum says', () => {
    const { low, high } = feedingAdds(1, 100, 'flake').nitrateMgL;
    expect(card('feeding')).toContain(`${low.toFixed(1)} to ${high.toFixed(1)} mg/L nitrate`);
  });
});

describe('safety', () => {
  it.each([
    ['palytoxin', /medical help first/],
    ['palytoxin', /emergency or poison services/],
    ['palytoxin', /[Gg]loves, goggles/],
    ['palytoxin', /never boil/],
    ['limewater', /Caustic: eye protection, gloves/],
    ['limewater', /get medical help/],
    ['dips and quarantine', /the label decides/],
    ['dips and quarantine', /ask a vet/],
    ['dips and quarantine', /I give no doses/],
    ['water and mains', /power off before you touch them/],
    ['water and mains', /electrician/],
  ])('%s says %s', (id, pattern) => expect(card(id)).toMatch(pattern));
});
