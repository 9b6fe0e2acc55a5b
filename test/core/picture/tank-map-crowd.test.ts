import { describe, expect, it } from 'vitest';
import { check } from '../../../core/corals/check.ts';
import type { Scene } from '../../../core/corals/scene.ts';
import { palette } from '../../../core/picture/palette.ts';
import { tankMap } from '../../../core/picture/tank-map.ts';
import { elements, listOf, number, textsOf, viewOf, wordBoxes } from './read-map.ts';
import { strewn } from './tank-map-scenes.ts';

function drawn(scene: Scene): string {
  return tankMap(scene, check(scene)).svg;
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

  it('fit the picture and read at phone width: 9 px when it is shown 400 px wide', () => {
    const [root] = elements(svg, 'svg');
    const [width, height] = ['width', 'height'].map((name) => number(root ?? expect.unreachable(), name));
    expect(height).toBeLessThanOrEqual(4000);
    expect((width ?? 0) * (height ?? 0)).toBeLessThan(1_300_000);
    const [, , units = ''] = root?.attributes['viewBox']?.split(' ') ?? [];
    for (const { size } of textsOf(svg)) expect((size * 400) / Number(units)).toBeGreaterThanOrEqual(9);
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
  expect(svg).toContain('Some lines have no room for words: the text has all.');
});
