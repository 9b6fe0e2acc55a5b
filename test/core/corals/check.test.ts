import { describe, expect, it } from 'vitest';
import { check, checkOne, problemsOf } from '../../../core/corals/check.ts';
import type { Finding } from '../../../core/corals/scene.ts';
import { Problem } from '../../../core/problem.ts';
import { otherScenes, stingScenes } from './placement-scenes.ts';
import { beside, placed, sceneOf, spot } from './scenes.ts';

const named = ({ verdict, rule, corals }: Finding): string => `${verdict} ${rule} ${corals.join()}`;

describe.each([...stingScenes, ...otherScenes])('$name ($source)', ({ scene, has, lacks, says }) => {
  const findings = check(scene);
  const names = findings.map(named);

  it('is found as the source has it', () => {
    expect(names).toEqual(expect.arrayContaining([...has]));
    for (const none of lacks ?? []) {
      expect(names.filter((name) => `${name} `.startsWith(`${none} `))).toEqual([]);
    }
    const told = findings.filter((finding) => has.includes(named(finding)));
    const text = told.map(({ reason, basis, cure }) => `${reason} ${basis} ${cure ?? ''}`).join('\n');
    for (const words of says ?? []) expect(text).toContain(words);
  });

  it('is said with its basis, and every problem with a cure', () => {
    for (const { reason, basis, verdict, cure } of findings) {
      expect(reason).toMatch(/^\S.*[.]$/s);
      expect(basis).toMatch(/common practice|from memory|project rule|published: /);
      expect(`${reason} ${cure ?? ''}`).not.toMatch(/NaN|undefined|Infinity|\bunknown\b/);
      expect(cure !== undefined).toBe(verdict !== 'settled');
    }
  });
});

it('holds at least 40 scenes', () => {
  expect(stingScenes.length + otherScenes.length).toBeGreaterThanOrEqual(40);
});

describe('check', () => {
  it('sorts move before watch before settled, the heavier first', () => {
    const findings = check(
      sceneOf([
        ...beside('bubble-tip-anemone', 'galaxea', 5).corals,
        placed(3, 'zoanthus', spot(250, 50, 20)),
      ]),
    );
    const order = findings.map(({ verdict, weight }) => [
      ['move', 'watch', 'settled'].indexOf(verdict),
      -weight,
    ]);
    expect(order).toEqual([...order].sort(([a = 0, b = 0], [c = 0, d = 0]) => a - c || b - d));
    expect(new Set(findings.map(({ verdict }) => verdict)).size).toBe(3);
  });

  it('gives a coral without a problem exactly one statement of its light and room', () => {
    const findings = check(sceneOf([placed(1, 'torch-coral', spot(100, 50, 20))]));
    expect(findings.filter(({ rule }) => rule === 'room')).toHaveLength(1);
    expect(findings.find(({ rule }) => rule === 'room')?.reason).toContain('75 to 200 PAR');
  });

  it('says nothing of an empty tank', () => expect(check(sceneOf([]))).toEqual([]));
});

describe('checkOne', () => {
  it('tells the same problems of a coral as the whole check, and its flow and law', () => {
    const scene = sceneOf([
      ...beside('torch-coral', 'hammer-coral-branching', 5).corals,
      placed(3, 'duncan-coral', spot(250, 50, 20)),
    ]);
    const whole = check(scene).filter(({ corals, verdict }) => corals.includes(2) && verdict !== 'settled');
    const one = checkOne(scene, 2);
    expect(one.filter(({ verdict }) => verdict !== 'settled')).toEqual(whole);
    expect(one.map(({ rule }) => rule)).toEqual(expect.arrayContaining(['flow', 'law']));
    expect(one.find(({ rule }) => rule === 'flow')?.reason).toContain('I do not know the flow at its spot');
    expect(problemsOf(scene, scene.corals[2] ?? placed(3, 'zoanthus', spot(0, 0, 0)))).toEqual([]);
  });

  it('asks for a coral of the scene', () => {
    expect(() => checkOne(sceneOf([]), 7)).toThrow(Problem);
  });
});
