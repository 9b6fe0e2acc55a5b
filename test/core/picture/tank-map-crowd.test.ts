import { describe, expect, it } from 'vitest';
import { check } from '../../../core/corals/check.ts';
import type { Scene } from '../../../core/corals/scene.ts';
import { palette } from '../../../core/picture/palette.ts';
import { troublesOf } from '../../../core/picture/tank-map-shown.ts';
import { tankMap } from '../../../core/picture/tank-map.ts';
import { bothOf, elements, listOf, number, textsOf, viewOf, wordBoxes } from './read-map.ts';
import { strewn } from './tank-map-scenes.ts';

function drawn(scene: Scene): string {
  return bothOf(tankMap(scene, check(scene)));
}

describe.each([0, 1, 60, 150])('%i corals', (count) => {
  const svg = drawn(strewn({ count, points: count === 0 ? 0 : 40, rough: (i) => i % 7 === 0 }));
  const ids = Array.from({ length: count }, (_, i) => i + 1);

  it('are all in both views and in the list, with number, name and verdict', () => {
    for (const side of ['above', 'front'] as const)
      for (const id of ids) expect(viewOf(svg, side)).toContain(`id="${side}-${id}"`);
    const texts = textsOf(listOf(svg)).map(({ text }) => text);
    expect(texts).toEqual(expect.arrayContaining(ids.map(String)));
    expect(texts.filter((text) => /^(move|watch|settled)/.test(text))).toHaveLength(count);
    expect(texts).toHaveLength(3 * count);
  });

  it('fit the picture and read at phone width: 12 px when it is shown 380 px wide', () => {
    const [root] = elements(svg, 'svg');
    const [width, height] = ['width', 'height'].map((name) => number(root ?? expect.unreachable(), name));
    expect(height).toBeLessThanOrEqual(4000);
    expect((width ?? 0) * (height ?? 0)).toBeLessThan(1_300_000);
    const [, , units = ''] = root?.attributes['viewBox']?.split(' ') ?? [];
    for (const { size } of textsOf(svg)) expect((size * 380) / Number(units)).toBeGreaterThanOrEqual(12);
  });

  it('numbers and words of one view stand clear of each other', () => {
    for (const side of ['above', 'front'] as const) {
      const boxes = wordBoxes(viewOf(svg, side));
      expect(boxes.length).toBeGreaterThanOrEqual(Math.min(count, 40));
      for (const [i, [left, right, top, bottom]] of boxes.entries())
        for (const other of boxes.slice(i + 1))
          expect(left < other[1] && other[0] < right && top < other[3] && other[2] < bottom).toBe(false);
    }
  });

  it('no word has a colour that is not measured against its ground', () => {
    const fills = new Set(textsOf(svg).map(({ fill }) => fill));
    const measured = new Set<string>([palette.ink, palette.quietInk, palette.light, palette.ground]);
    expect([...fills].filter((fill) => !measured.has(fill))).toEqual([]);
    // Light words stand only on the dark shape of move.
    for (const [, shape = ''] of svg.matchAll(
      new RegExp(`(<[^<]*/>)<text[^>]*fill="${palette.ground}"`, 'g'),
    ))
      expect(shape).toContain(`fill="${palette.move}"`);
  });
});

it('is the same each time', () => {
  const scene = strewn({ count: 30, points: 10 });
  const findings = check(scene);
  expect(tankMap(scene, findings)).toEqual(tankMap(scene, findings));
});

it('says what it leaves out of a crowd', () => {
  const svg = drawn(strewn({ count: 150, box: { lengthCm: 60, widthCm: 40, heightCm: 40 } }));
  expect(svg).toMatch(/>Drawn: the 60 worst of \d+ conflicts\.</);
  expect(svg).toMatch(/>Too crowded for \d+ of the numbers\.</);
});

describe('the worst conflict of a crowded tank', () => {
  it('is a picture of its own, with both corals, their names and what is wrong', () => {
    const scene = strewn({ count: 25, points: 8 });
    const findings = check(scene);
    const [, , near, ...more] = tankMap(scene, findings);
    expect(more).toEqual([]);
    expect(near?.name).toBe('conflict');
    const [worst] = troublesOf(scene, findings);
    const texts = textsOf(near?.svg ?? '').map(({ text }) => text);
    for (const { id, label } of worst?.corals ?? []) {
      expect(texts).toContain(String(id));
      expect(near?.alt).toContain(label);
    }
    expect(worst?.corals.length).toBeGreaterThan(0);
    for (const { size } of textsOf(near?.svg ?? '')) expect((size * 380) / 680).toBeGreaterThanOrEqual(12);
  });

  it('is not drawn where few corals stand, or none is in trouble', () => {
    const few = strewn({ count: 8 });
    expect(tankMap(few, check(few))).toHaveLength(2);
    expect(tankMap(strewn({ count: 25 }), [])).toHaveLength(2);
  });
});
