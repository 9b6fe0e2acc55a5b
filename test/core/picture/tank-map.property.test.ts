import { Resvg } from '@resvg/resvg-js';
import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { check } from '../../../core/corals/check.ts';
import { corals } from '../../../core/corals/coral-list.ts';
import { flowDirections, type Scene } from '../../../core/corals/scene.ts';
import { MOST_ALT } from '../../../core/picture/alt.ts';
import { tankMap } from '../../../core/picture/tank-map.ts';
import { real } from '../corals/real.ts';
import { bothOf, elements, number, viewOf } from './read-map.ts';

const part = real(0, 1);
const place = fc.record({ x: part, y: part, z: part });

/** Any tank with any corals, the glass itself included, and readings. */
const scene = fc
  .record({
    lengthCm: real(15, 300),
    widthCm: real(15, 100),
    heightCm: real(15, 100),
    boxGuessed: fc.boolean(),
    flow: fc.option(fc.constantFrom(...flowDirections), { nil: undefined }),
    placed: fc.array(
      fc.record({
        at: place,
        entry: fc.constantFrom(...corals),
        diameterCm: real(0.3, 60),
        rough: fc.boolean(),
        label: fc.string({ unit: 'binary', maxLength: 40 }),
      }),
      { maxLength: 25 },
    ),
    light: fc.array(fc.record({ at: place, ppfd: real(0, 1500) }), { maxLength: 25 }),
  })
  .map(({ lengthCm, widthCm, heightCm, placed, light, ...rest }): Scene => {
    const spot = ({ x, y, z }: { x: number; y: number; z: number }) => ({
      xCm: x * lengthCm,
      yCm: y * widthCm,
      zCm: z * heightCm,
    });
    return {
      ...rest,
      box: { lengthCm, widthCm, heightCm },
      corals: placed.map(({ at, ...coral }, i) => ({
        ...coral,
        id: i + 1,
        spot: spot(at),
        origin: 'unknown',
      })),
      light: light.map(({ at, ppfd }, i) => ({ ...spot(at), id: i + 1, ppfd, atMs: i })),
    };
  });

it('any tank is drawn whole, well-formed and within limits', () => {
  fc.assert(
    fc.property(scene, (any) => {
      const pictures = tankMap(any, check(any));
      const svg = bothOf(pictures);
      for (const { alt } of pictures) expect(alt.length).toBeLessThanOrEqual(MOST_ALT);
      const written = svg.replace(/>[^<]*</g, '><');
      expect(written).not.toMatch(/NaN|Infinity|undefined|null/);
      const [root] = elements(svg, 'svg');
      for (const side of ['width', 'height']) {
        expect(number(root ?? expect.unreachable(), side)).toBeGreaterThan(0);
        expect(number(root ?? expect.unreachable(), side)).toBeLessThanOrEqual(4000);
      }
      for (const side of ['above', 'front'] as const)
        for (const { id } of any.corals) expect(viewOf(svg, side)).toContain(`id="${side}-${id}"`);
      for (const each of pictures)
        expect(() => new Resvg(each.svg, { font: { loadSystemFonts: false } })).not.toThrow();
    }),
    { numRuns: 40 },
  );
});

it.each([
  { lengthCm: 3000, widthCm: 0.1, heightCm: 0.1 },
  { lengthCm: 0.1, widthCm: 3000, heightCm: 3000 },
  { lengthCm: 0.1, widthCm: 0.1, heightCm: 0.1 },
])('a glass out of this world, $lengthCm x $widthCm x $heightCm cm, is drawn too', (box) => {
  const [entry] = corals;
  const coral = {
    id: 1,
    entry: entry ?? expect.unreachable(),
    label: 'x',
    spot: { xCm: 90, yCm: 90, zCm: 90 },
    rough: false,
    diameterCm: 10,
    origin: 'unknown' as const,
  };
  const light = [1, 2].map((id) => ({
    id,
    xCm: id / 30,
    yCm: id / 30,
    zCm: id / 30,
    ppfd: 50 * id,
    atMs: 0,
  }));
  const any: Scene = { box, boxGuessed: false, corals: [coral], light };
  const svg = bothOf(tankMap(any, check(any)));
  expect(svg).not.toMatch(/NaN|Infinity|undefined/);
  expect(number(elements(svg, 'svg')[0] ?? expect.unreachable(), 'height')).toBeLessThanOrEqual(4000);
});
