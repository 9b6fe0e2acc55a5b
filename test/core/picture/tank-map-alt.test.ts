import { describe, expect, it } from 'vitest';
import { check } from '../../../core/corals/check.ts';
import type { Finding, Scene } from '../../../core/corals/scene.ts';
import { MOST_ALT } from '../../../core/picture/alt.ts';
import { troublesOf } from '../../../core/picture/tank-map-shown.ts';
import { tankMap } from '../../../core/picture/tank-map.ts';
import { placed, sceneOf, spot } from '../corals/scenes.ts';
import { strewn } from './tank-map-scenes.ts';

const box = { lengthCm: 120, widthCm: 50, heightCm: 46 } as const;

function finding(rule: Finding['rule'], verdict: Finding['verdict'], corals: readonly number[]): Finding {
  return { rule, verdict, corals, reason: 'x', basis: 'x', weight: 1 };
}

function altOf(scene: Scene, findings: readonly Finding[] = check(scene)): string {
  return tankMap(scene, findings, 'Pantry')[0]?.alt ?? '';
}

describe('alt text', () => {
  const corals = [1, 2, 3, 4].map((id) => ({
    ...placed(id, id % 2 === 0 ? 'torch-coral' : 'galaxea', spot(20 * id, 25, 20)),
    label: ['Ada', 'Bo', 'Cy', 'Di'][id - 1] ?? '',
  }));

  it('names the glass, the flow, the counts and every conflict, the worst first', () => {
    const findings = [
      finding('growth', 'watch', [3, 1]),
      finding('sting', 'move', [2, 1]),
      finding('shade', 'watch', [1, 2]),
      finding('light', 'move', [3]),
      finding('room', 'settled', [4]),
    ];
    expect(altOf(sceneOf(corals, { box, flow: 'left to right' }), findings)).toBe(
      'Pantry, from above and from the front. 120 x 50 x 46 cm; flow left to right; no light readings. ' +
        '4 corals: 3 to move, 1 settled. To move: Bo and Ada (sting, shade). Cy (light). To watch: Cy and Ada (growth).',
    );
  });

  it('says what is guessed and what is not there', () => {
    expect(altOf(sceneOf([], { box, boxGuessed: true }))).toBe(
      'Pantry, from above and from the front. 120 x 50 x 46 cm, the size of the glass is a guess; flow not said; ' +
        'no light readings. No corals.',
    );
  });

  it('of a few corals holds every conflict', () => {
    const scene = sceneOf(corals, { box });
    const troubles = troublesOf(scene, check(scene));
    expect(troubles.length).toBeGreaterThan(0);
    for (const trouble of troubles)
      expect(altOf(scene)).toContain(`${trouble.corals.map(({ label }) => label).join(' and ')} (`);
    expect(altOf(scene)).not.toMatch(/ more\./);
  });

  it.each([10, 60, 150])('of %i corals in trouble fits, and counts what it leaves out', (count) => {
    const scene = strewn({ count });
    const named = { ...scene, corals: scene.corals.map((coral) => ({ ...coral, label: `c${coral.id}` })) };
    const alt = altOf(named);
    expect(alt.length).toBeLessThanOrEqual(MOST_ALT);
    const told = alt.match(/\bc\d+(?: and c\d+)? \(/g)?.length ?? 0;
    const more = Number(/And (\d+) more\.$/.exec(alt)?.[1] ?? 0);
    expect(told).toBeGreaterThan(3);
    expect(told + more).toBe(troublesOf(named, check(named)).length);
  });

  it('with names as long as can be still fits', () => {
    const long = corals.map((coral) => ({ ...coral, label: `${'W'.repeat(600)}${coral.id}` }));
    const alt = altOf(sceneOf(long, { box }));
    expect(alt.length).toBeLessThanOrEqual(MOST_ALT);
    expect(alt).toMatch(/And \d+ more\.$/);
  });
});

it('every problem of a scene is in one trouble, with its rule and at least its verdict', () => {
  const scene = strewn({ count: 40, points: 15 });
  const findings = check(scene);
  const troubles = troublesOf(scene, findings);
  for (const { corals, rule, verdict } of findings) {
    if (verdict === 'settled') continue;
    const same = troubles.filter((trouble) => {
      const ids = trouble.corals.map(({ id }) => id);
      return ids.length === corals.length && corals.every((id) => ids.includes(id));
    });
    expect(same).toHaveLength(1);
    expect(same[0]?.rules).toContain(rule);
    if (verdict === 'move') expect(same[0]?.verdict).toBe('move');
  }
});
