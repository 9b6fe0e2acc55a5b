import { describe, expect, it } from 'vitest';
import { luminousEfficiency } from '../../../core/light/luminous.ts';
import { luxPerPpfd } from '../../../core/light/lux.ts';

const CIE = 'CIE 018:2019 / ISO 23539, V(lambda) at 1 nm';

/** V(lambda) and lux per umol m-2 s-1 of one colour, 683.002 V / (nm x 0.008359347). */
const oneColour = [
  { nm: 410, v: 0.00121, lux: 0.24113 },
  { nm: 420, v: 0.004, lux: 0.77814 },
  { nm: 430, v: 0.0116, lux: 2.20414 },
  { nm: 440, v: 0.023, lux: 4.27095 },
  { nm: 450, v: 0.038, lux: 6.89955 },
  { nm: 460, v: 0.06, lux: 10.6572 },
  { nm: 470, v: 0.09098, lux: 15.81604 },
  { nm: 480, v: 0.13902, lux: 23.66386 },
  { nm: 490, v: 0.20802, lux: 34.68635 },
  { nm: 500, v: 0.323, lux: 52.78155 },
  { nm: 510, v: 0.503, lux: 80.58374 },
  { nm: 520, v: 0.71, lux: 111.559 },
  { nm: 530, v: 0.862, lux: 132.88654 },
  { nm: 540, v: 0.954, lux: 144.34582 },
  { nm: 550, v: 0.9949501, lux: 147.80469 },
  { nm: 560, v: 0.995, lux: 145.1726 },
  { nm: 570, v: 0.952, lux: 136.46199 },
  { nm: 580, v: 0.87, lux: 122.55778 },
  { nm: 590, v: 0.757, lux: 104.83191 },
  { nm: 600, v: 0.631, lux: 85.92662 },
  { nm: 610, v: 0.503, lux: 67.37329 },
  { nm: 620, v: 0.381, lux: 50.20915 },
  { nm: 630, v: 0.265, lux: 34.36805 },
  { nm: 640, v: 0.175, lux: 22.34126 },
  { nm: 650, v: 0.107, lux: 13.44993 },
  { nm: 660, v: 0.061, lux: 7.55154 },
  { nm: 670, v: 0.032, lux: 3.90234 },
  { nm: 680, v: 0.017, lux: 2.04263 },
  { nm: 690, v: 0.00821, lux: 0.97217 },
];

describe(`V(lambda), ${CIE}`, () => {
  it.each(oneColour)('at $nm nm is $v, $lux lux per umol of that one colour', ({ nm, v, lux }) => {
    expect(luminousEfficiency(nm)).toBeCloseTo(v, 12);
    expect(luxPerPpfd((at) => (at === nm ? 1 : 0))).toBeCloseTo(lux, 4);
  });

  it('sums at every nm to that of the 1 nm table, 106.856426, within 2e-5 of it', () => {
    const sum = Array.from({ length: 401 }, (_, i) => luminousEfficiency(380 + i)).reduce((a, b) => a + b, 0);
    expect(Math.abs(sum / 106.856426 - 1)).toBeLessThan(2e-5);
  });

  it('has its maximum, 1, at 555 nm', () => {
    const best = Array.from({ length: 401 }, (_, i) => 380 + i).reduce((a, b) =>
      luminousEfficiency(b) > luminousEfficiency(a) ? b : a,
    );
    expect(best).toBe(555);
    expect(luminousEfficiency(555)).toBeCloseTo(1, 3);
  });

  it('rises to 555 nm and falls after it, and is never negative', () => {
    for (let nm = 380; nm < 780; nm += 1) {
      const step = luminousEfficiency(nm + 1) - luminousEfficiency(nm);
      expect(nm < 555 ? step : -step).toBeGreaterThan(0);
      expect(luminousEfficiency(nm)).toBeGreaterThan(0);
    }
  });

  it.each([379, 781, Number.NaN])('is 0 at %s nm', (nm) => {
    expect(luminousEfficiency(nm)).toBe(0);
  });
});
