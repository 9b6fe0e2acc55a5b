import { describe, expect, it } from 'vitest';
import { check } from '../../../core/corals/check.ts';
import { fewestMoves } from '../../../core/corals/fewest-moves.ts';
import { placed, sceneOf, spot } from './scenes.ts';

describe('fewest moves', () => {
  // Galaxea is kept 30 cm from everything (common practice, no source).
  it('names the one in the middle, not the three round it', () => {
    const scene = sceneOf([
      placed(1, 'duncan-coral', spot(80, 50, 20)),
      placed(2, 'favites', spot(120, 50, 20)),
      placed(3, 'lobophyllia', spot(100, 75, 20)),
      placed(4, 'galaxea', spot(100, 50, 20)),
    ]);
    const findings = check(scene);
    expect(findings.filter(({ verdict }) => verdict === 'move').length).toBeGreaterThanOrEqual(3);
    expect(fewestMoves(findings)[0]?.id).toBe(4);
    const movers = new Set(fewestMoves(findings).map(({ id }) => id));
    for (const { verdict, corals } of findings)
      if (verdict === 'move') expect(corals.some((id) => movers.has(id))).toBe(true);
  });

  it('names the one at risk of a single pair, and none where nothing is to move', () => {
    const pair = sceneOf([
      placed(1, 'torch-coral', spot(100, 50, 20)),
      placed(2, 'hammer-coral-branching', spot(115, 50, 20)),
    ]);
    expect(fewestMoves(check(pair))).toEqual([{ id: 2, cures: 1 }]);
    expect(fewestMoves(check(sceneOf([placed(1, 'zoanthus', spot(100, 50, 20))])))).toEqual([]);
  });
});
