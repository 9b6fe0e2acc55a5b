import { describe, expect, it } from 'vitest';
import { primerIds } from '../../../core/care/primers/primer.ts';
import { MOST_ALT } from '../../../core/picture/alt.ts';
import { palette } from '../../../core/picture/palette.ts';
import { primerPicture } from '../../../core/picture/primer.ts';

const drawn = primerIds.flatMap((id) => {
  const picture = primerPicture(id);
  return picture === undefined ? [] : [{ id, ...picture }];
});

it('draws for at least ten cards', () => expect(drawn.length).toBeGreaterThanOrEqual(10));

describe.each(drawn)('$id', ({ id, svg, alt }) => {
  const size = /^<svg[^>]* width="(\d+)" height="(\d+)"/.exec(svg);
  const [width, height] = [Number(size?.[1]), Number(size?.[2])];

  it('can be read 380 px wide: no words under 12 px', () => {
    const fonts = [...svg.matchAll(/font-size="([\d.]+)"/g)].map((match) => Number(match[1]));
    expect(fonts.length).toBeGreaterThan(2);
    expect((Math.min(...fonts) * 380) / width).toBeGreaterThanOrEqual(12);
  });

  it('keeps words and marks inside its frame', () => {
    for (const [, x, y] of svg.matchAll(/<text x="([\d.-]+)" y="([\d.-]+)"/g)) {
      expect(Number(x)).toBeGreaterThanOrEqual(0);
      expect(Number(x)).toBeLessThanOrEqual(width);
      expect(Number(y)).toBeLessThanOrEqual(height);
    }
    expect(svg).not.toMatch(/NaN|undefined|Infinity/);
  });

  it('uses the colours of the palette for words', () => {
    const inks: readonly string[] = Object.values(palette);
    for (const [, fill = ''] of svg.matchAll(/<text[^>]* fill="(#[0-9a-f]+)"/g)) expect(inks).toContain(fill);
  });

  it('says itself in words, within what a platform takes', () => {
    expect(alt.length).toBeGreaterThan(60);
    expect(alt.length).toBeLessThanOrEqual(MOST_ALT);
    expect(alt).not.toMatch(/NaN|undefined/);
  });

  it('is the same each time', () => expect(primerPicture(id)?.svg).toBe(svg));
});

const altOf = (id: string): string => drawn.find((each) => each.id === id)?.alt ?? '';

describe('what they show', () => {
  it.each([
    // 0.8^n (mass balance).
    ['water changes', '64 % after 2, 51 % after 3, 41 % after 4'],
    // 50.043 / 2.80385 = 17.848 (IUPAC 2021 weights).
    ['units', '8 dKH = 2.85 meq/L = 143 ppm as CaCO3'],
    // PSS-78 and EOS-80: 53.07 mS/cm and 1.02637 at S 35, 25 °C.
    ['salinity', '35 ppt = 1.0264 specific gravity (25/25) = 53.1 mS/cm'],
    // 40.078 / 2 / 2.80385 = 7.147 mg/L per dKH.
    ['alkalinity and calcium', '5 dKH of alkalinity = 36 mg/L of calcium'],
    // Bates 1956: 1.504 g/L at 25 °C.
    ['limewater', '1.5 to 1.66 at 25 °C'],
  ])('%s: %s', (id, text) => expect(altOf(id)).toContain(text));

  it('pH in balance with air falls with CO2 and rises with alkalinity', () => {
    const [at8 = [], at11 = []] = altOf('pH')
      .split('; ')
      .map((part) => [...part.matchAll(/(\d\.\d\d)/g)].map((m) => Number(m[1])));
    expect(at8.length).toBe(3);
    for (const [index, value] of at8.entries()) expect(value).toBeLessThan(at11[index] ?? 0);
    // PyCO2SYS 1.8.3.4: S 35, 25 °C, 420 uatm: pH NBS 8.1937 at 2500 and 8.2415 at 2850 umol/kg; 8 dKH is 2788.
    expect(at8[0]).toBeGreaterThan(8.19);
    expect(at8[0]).toBeLessThan(8.2415);
  });
});

function brightness(colour: string): number {
  return Number.parseInt(colour.slice(1, 3), 16);
}

it('the bars of light get brighter with the light: more of the light ink over the dark ground', () => {
  const { svg = '' } = primerPicture('PAR') ?? {};
  const shares = [...svg.matchAll(/fill-opacity="([\d.]+)"/g)].map(([, share]) => Number(share));
  expect(shares.length).toBe(5);
  expect(shares).toEqual(shares.toSorted((a, b) => a - b));
  expect(brightness(palette.ink)).toBeGreaterThan(brightness(palette.ground));
});
