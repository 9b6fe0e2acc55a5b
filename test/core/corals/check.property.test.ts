import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { check, pairFindings } from '../../../core/corals/check.ts';
import { corals } from '../../../core/corals/coral-list.ts';
import { distanceCm, gapBetween } from '../../../core/corals/distance.ts';
import { propose } from '../../../core/corals/propose.ts';
import { pairNeed } from '../../../core/corals/reach.ts';
import {
  flowDirections,
  origins,
  type Finding,
  type Placed,
  type Scene,
} from '../../../core/corals/scene.ts';
import { box, reading, spot } from './scenes.ts';
import { real } from './real.ts';

const anySpot = fc
  .tuple(real(0, box.lengthCm), real(0, box.widthCm), fc.oneof(fc.constant(0), real(0, box.heightCm)))
  .map(([x, y, z]) => spot(x, y, z));

const anyCoral = fc.record({
  entry: fc.oneof(fc.constantFrom(...corals), fc.constantFrom(...corals.filter(({ shade }) => shade.value))),
  spot: anySpot,
  rough: fc.boolean(),
  diameterCm: real(0.5, 60),
  origin: fc.constantFrom(...origins),
  daysHere: fc.option(fc.nat(1000), { nil: undefined }),
});

const someCorals = (most: number): fc.Arbitrary<Placed[]> =>
  fc
    .array(anyCoral, { minLength: 1, maxLength: most })
    .map((all) => all.map((one, index) => ({ ...one, id: index + 1, label: one.entry.names.common[0] })));

const twoCorals = someCorals(2).filter((all) => all.length === 2);
/** The second is within 45 cm of the first on each axis, often within 4 cm. */
const offset = fc.oneof(real(-45, 45), real(-4, 4));
const nearPair = fc.tuple(twoCorals, offset, offset, offset).map(([pair, dx, dy, dz]) => {
  const [a, b] = two(pair);
  const near = spot(a.spot.xCm + dx, a.spot.yCm + dy, Math.max(0, a.spot.zCm + dz));
  return [a, { ...b, spot: near }];
});
const flow = fc.option(fc.constantFrom(...flowDirections), { nil: undefined });
const readings = fc
  .array(fc.tuple(anySpot, fc.integer({ min: 1, max: 900 })), { maxLength: 8 })
  .map((all) => all.map(([at, ppfd], id) => reading(id, at, ppfd)));
const scenes = (most: number): fc.Arbitrary<Scene> =>
  fc
    .record({ corals: someCorals(most), flow, light: readings })
    .map((parts) => ({ box, boxGuessed: false, ...parts }));

const rank = ({ verdict }: Finding): number => ['settled', 'watch', 'move'].indexOf(verdict);
const worst = (findings: readonly Finding[]): number => Math.max(-1, ...findings.map(rank));

function two([one, other]: readonly Placed[]): readonly [Placed, Placed] {
  if (one === undefined || other === undefined) throw new Error('two corals wanted');
  return [one, other];
}

describe('distance', () => {
  it('is the same from both sides, to the bit, and never negative', () => {
    fc.assert(
      fc.property(twoCorals, (pair) => {
        const [a, b] = two(pair);
        expect(distanceCm(a, b)).toBe(distanceCm(b, a));
        expect(gapBetween(a, b, box)).toEqual(gapBetween(b, a, box));
        const { lowCm, cm, highCm } = gapBetween(a, b, box);
        expect(lowCm).toBeGreaterThanOrEqual(0);
        expect(cm).toBeGreaterThanOrEqual(lowCm);
        expect(highCm).toBeGreaterThanOrEqual(cm);
      }),
    );
  });
});

describe('the need of a pair', () => {
  it('is the same whichever kind comes first, and the water only adds to it', () => {
    const kinds = fc.constantFrom(...corals);
    fc.assert(
      fc.property(kinds, kinds, (a, b) => {
        const [still, turned, carried] = [pairNeed(a, b), pairNeed(b, a), pairNeed(a, b, 1.5)];
        expect([turned.moveBelowCm, turned.watchBelowCm]).toEqual([still.moveBelowCm, still.watchBelowCm]);
        expect(still.watchBelowCm).toBeGreaterThanOrEqual(still.moveBelowCm);
        expect(carried.moveBelowCm).toBeGreaterThanOrEqual(still.moveBelowCm);
        expect(carried.watchBelowCm).toBeGreaterThanOrEqual(still.watchBelowCm);
      }),
      { numRuns: 2000 },
    );
  });
});

/**
 * Growth is compared with the worst said of the pair before: two that stand too close are told so once, by the sting
 * rule, and only from there on is it of use how soon they grow too close again.
 */
it('moving two corals apart along their line makes nothing said of the pair worse', () => {
  let sawTrouble = 0;
  fc.assert(
    fc.property(nearPair, flow, real(1.0001, 4), (pair, way, times) => {
      const [a, b] = two(pair);
      const along = (axis: 'xCm' | 'yCm' | 'zCm'): number =>
        a.spot[axis] + (b.spot[axis] - a.spot[axis]) * times;
      const apart = { ...b, spot: spot(along('xCm'), along('yCm'), along('zCm')) };
      // The room a spot in words can be off ends at the sand, so such a spot stays on or off it.
      fc.pre(!b.rough || (b.spot.zCm === 0) === (apart.spot.zCm === 0));
      const scene: Scene = { box, boxGuessed: false, corals: [a, b], light: [], flow: way };
      const before = pairFindings(scene, a, b);
      const after = pairFindings(scene, a, apart);
      if (worst(before) > 0) sawTrouble++;
      expect(worst(after)).toBeLessThanOrEqual(worst(before));
      for (const finding of after) {
        const same = before.filter(({ rule }) => rule === finding.rule);
        const against = finding.rule === 'growth' ? before : same;
        expect(rank(finding), finding.reason).toBeLessThanOrEqual(worst(against));
      }
    }),
    { numRuns: 3000 },
  );
  expect(sawTrouble).toBeGreaterThan(500);
});

it('a check does not hang on the order of the corals, and holds no number that is none', () => {
  fc.assert(
    fc.property(scenes(8), fc.integer(), (scene, seed) => {
      const turned = scene.corals.toSorted(
        (a, b) => ((a.id * 31 + seed) % 7) - ((b.id * 31 + seed) % 7) || b.id - a.id,
      );
      const findings = check(scene);
      expect(check({ ...scene, corals: turned })).toEqual(findings);
      for (const { reason, cure, weight } of findings) {
        expect(Number.isFinite(weight)).toBe(true);
        expect(`${reason} ${cure ?? ''}`).not.toMatch(/NaN|undefined|Infinity/);
      }
    }),
  );
});

it('a proposal is inside the glass and never a move', () => {
  let proposed = 0;
  fc.assert(
    fc.property(scenes(8), (scene) => {
      const [first] = scene.corals;
      if (first === undefined) return;
      const { spots } = propose(scene, first.id);
      expect(spots.length).toBeLessThanOrEqual(3);
      for (const better of spots) {
        proposed++;
        expect(better.spot.xCm).toBeGreaterThanOrEqual(0);
        expect(better.spot.xCm).toBeLessThanOrEqual(box.lengthCm);
        expect(better.spot.yCm).toBeLessThanOrEqual(box.widthCm);
        expect(better.spot.zCm).toBeLessThanOrEqual(box.heightCm);
        const there = scene.corals.map((coral) =>
          coral.id === first.id ? { ...coral, spot: better.spot, rough: false } : coral,
        );
        const found = check({ ...scene, corals: there }).filter(({ corals: ids }) => ids.includes(first.id));
        expect(found.filter(({ verdict }) => verdict === 'move')).toEqual([]);
      }
    }),
    { numRuns: 60 },
  );
  expect(proposed).toBeGreaterThan(20);
});
