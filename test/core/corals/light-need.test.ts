import { describe, expect, it } from 'vitest';
import { corals } from '../../../core/corals/coral-list.ts';
import { lampBand, lightFor } from '../../../core/corals/light-need.ts';
import { origins } from '../../../core/corals/scene.ts';
import { kind } from './scenes.ts';

describe('lightFor', () => {
  // Range and start: common practice. What origin takes off is a project rule; to the nearest 5.
  it.each([
    ['torch-coral', 'tank-grown', 110],
    ['torch-coral', 'unknown', 100],
    ['torch-coral', 'maricultured', 90],
    ['torch-coral', 'wild', 75],
    ['torch-coral', 'deep', 65],
    ['zoanthus', 'tank-grown', 100],
    ['zoanthus', 'deep', 60],
  ] as const)('%s, %s: begins at %d', (id, origin, startPpfd) => {
    expect(lightFor(kind(id), origin).startPpfd).toBe(startPpfd);
  });

  // Common practice: tank-grown near the start of the range, wild and maricultured lower and slower, deep lowest.
  it('begins lower and goes up more slowly the dimmer the piece grew', () => {
    for (const entry of corals) {
      const [tank, marine, wild, deep] = (['tank-grown', 'maricultured', 'wild', 'deep'] as const).map(
        (origin) => lightFor(entry, origin),
      );
      if (tank === undefined || marine === undefined || wild === undefined || deep === undefined) continue;
      expect(tank.startPpfd).toBeGreaterThanOrEqual(marine.startPpfd);
      expect(marine.startPpfd).toBeGreaterThanOrEqual(wild.startPpfd);
      expect(wild.startPpfd).toBeGreaterThanOrEqual(deep.startPpfd);
      expect(tank.raisePercentAWeek).toBeGreaterThan(wild.raisePercentAWeek);
      expect(wild.raisePercentAWeek).toBeGreaterThan(deep.raisePercentAWeek);
      expect(tank.raisePercentAWeek).toBeLessThanOrEqual(10);
    }
  });

  it('says the weeks from the start to the middle of the range', () => {
    // zoanthus 100 -> 150 at 10 % a week: 1.1^4 = 1.464, 1.1^5 = 1.611.
    expect(lightFor(kind('zoanthus'), 'tank-grown').weeks).toBe(5);
    expect(lightFor(kind('zoanthus'), 'deep').weeks).toBeGreaterThan(15);
    expect(lightFor(kind('sun-coral'), 'tank-grown').weeks).toBe(0);
  });

  it('calls memory memory and its own factors a project rule', () => {
    expect(lightFor(kind('turbinaria-cup'), 'tank-grown').rangeBasis).toBe('from memory');
    expect(lightFor(kind('torch-coral'), 'wild').startBasis).toBe('common practice; project rule');
    for (const entry of corals) {
      for (const origin of origins) {
        const light = lightFor(entry, origin);
        expect(light.startPpfd).toBeGreaterThan(0);
        expect(light.tooMuch.signs.length).toBeGreaterThan(0);
        if (!entry.light.basis.some(({ kind: one }) => one === 'published')) {
          expect(light.rangeBasis).not.toContain('published');
        }
      }
    }
  });
});

// Project rule: each border twice the one before; it begins below what common practice (no source) calls usual.
it('without a meter, a lamp has a wide band to try by its strength', () => {
  expect(lampBand('weak')).toMatchObject({ lowPercent: 40, highPercent: 80 });
  expect(lampBand('strong')).toMatchObject({ lowPercent: 20, highPercent: 40 });
  expect(lampBand('weak').basis).toBe('project rule');
  expect(lampBand('weak').doubt).toContain('first try');
});
