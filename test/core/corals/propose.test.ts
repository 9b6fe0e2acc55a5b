import { describe, expect, it } from 'vitest';
import { propose, spotsFor } from '../../../core/corals/propose.ts';
import { Problem } from '../../../core/problem.ts';
import { beside, placed, reading, sceneOf, spot } from './scenes.ts';

describe('propose', () => {
  it('sends a torch away from a hammer, on rock, clear of its 20 cm', () => {
    const scene = beside('torch-coral', 'hammer-coral-branching', 5);
    const { spots, doubt } = propose(scene, 1);
    expect(spots).toHaveLength(3);
    for (const { spot: at, why, watch } of spots) {
      expect(at.zCm).toBeGreaterThan(2);
      expect(Math.hypot(at.xCm - 115, at.yCm - 50, at.zCm - 20)).toBeGreaterThanOrEqual(30);
      expect(watch.filter(({ verdict }) => verdict === 'move')).toEqual([]);
      expect(why).toContain('Nearest: hammer-coral-branching');
    }
    expect(doubt).toContain('I do not know where your rock stands');
  });

  // D07, common practice: open sand, low.
  it('brings a plate coral down to the sand', () => {
    const scene = sceneOf([placed(1, 'plate-coral-fungia', spot(100, 50, 30))]);
    const { spots } = propose(scene, 1);
    expect(spots.length).toBeGreaterThan(0);
    for (const better of spots) {
      expect(better.spot.zCm).toBe(0);
      expect(better.words).toContain('on the sand');
    }
  });

  // C01, common practice: zoanthids begin at 60 to 100 PAR, not at 250.
  it('finds the dimmer place when readings tell where it is', () => {
    const light = [10, 20, 30, 40, 50, 60].map((z, id) => reading(id, spot(100, 50, z), 60 + 4 * z));
    const scene = sceneOf([placed(1, 'zoanthus', spot(100, 50, 60), { daysHere: 2 })], { light });
    const [best] = propose(scene, 1).spots;
    expect(best?.why).toContain('PAR');
    expect(best?.spot.zCm).toBeLessThan(40);
  });

  it('has nothing better for a coral that stands well', () => {
    const { spots, obstacle } = propose(sceneOf([placed(1, 'torch-coral', spot(100, 50, 27))]), 1);
    expect([spots, obstacle]).toEqual([[], undefined]);
  });

  it('says what cannot be cured when a tank is too small', () => {
    const small = { lengthCm: 30, widthCm: 25, heightCm: 25 };
    const scene = sceneOf(
      [placed(1, 'torch-coral', spot(10, 10, 10)), placed(2, 'galaxea', spot(20, 12, 10))],
      { box: small },
    );
    const { spots, obstacle } = propose(scene, 1);
    expect(spots).toEqual([]);
    expect(obstacle?.verdict).toBe('move');
    expect(obstacle?.reason).toContain('keep 30 cm');
  });

  it('looks for a coral that is not in the tank yet', () => {
    const scene = sceneOf([placed(1, 'galaxea', spot(150, 50, 20))]);
    const { spots } = spotsFor(scene, placed(2, 'duncan-coral', spot(150, 50, 0)));
    expect(spots.length).toBeGreaterThan(0);
    for (const { spot: at } of spots) {
      expect(Math.hypot(at.xCm - 150, at.yCm - 50, at.zCm - 20)).toBeGreaterThanOrEqual(35);
    }
  });

  // Rock rises to the back, or stands under corals that live on it: project rule.
  it('names no spot in open water at the front glass', () => {
    const nano = { lengthCm: 120, widthCm: 50, heightCm: 46 };
    const others = [
      placed(1, 'torch-coral', spot(20, 30, 20)),
      placed(3, 'montipora-plating', spot(60, 40, 35)),
    ];
    const scene = sceneOf([...others, placed(2, 'hammer-coral-branching', spot(36, 30, 20))], { box: nano });
    const { spots } = propose(scene, 2);
    expect(spots.length).toBeGreaterThan(0);
    for (const { spot: at } of spots) {
      const third = Math.min(2, Math.floor((3 * at.yCm) / 50));
      const isUnder = others.some(
        (o) => o.spot.zCm >= at.zCm && Math.hypot(o.spot.xCm - at.xCm, o.spot.yCm - at.yCm) <= 12,
      );
      expect(isUnder || at.zCm <= Math.ceil(((third + 1) / 4) * 46)).toBe(true);
      expect(Math.min(at.yCm, 50 - at.yCm)).toBeGreaterThanOrEqual(6);
    }
  });

  it('asks for a coral of the scene', () => expect(() => propose(sceneOf([]), 1)).toThrow(Problem));
});
