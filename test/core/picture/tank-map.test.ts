import { describe, expect, it } from 'vitest';
import { check } from '../../../core/corals/check.ts';
import type { Scene } from '../../../core/corals/scene.ts';
import { tankMap } from '../../../core/picture/tank-map.ts';
import { placed, sceneOf, spot } from '../corals/scenes.ts';
import { bodyOf, bothOf, elements, groupOf, listOf, number, scaleOf, textsOf, viewOf } from './read-map.ts';

function drawn(scene: Scene): string {
  return bothOf(tankMap(scene, check(scene)));
}

const box = { lengthCm: 120, widthCm: 50, heightCm: 46 } as const;

describe('the scale', () => {
  it.each([
    box,
    { lengthCm: 20, widthCm: 20, heightCm: 20 },
    { lengthCm: 300, widthCm: 60, heightCm: 60 },
    { lengthCm: 60, widthCm: 60, heightCm: 150 },
  ])('is that of the bar for the glass of both views: $lengthCm x $widthCm x $heightCm cm', (size) => {
    const svg = drawn(sceneOf([], { box: size }));
    for (const [side, highCm] of [
      ['above', size.widthCm],
      ['front', size.heightCm],
    ] as const) {
      const scale = scaleOf(svg, side);
      const [water] = elements(viewOf(svg, side), 'rect');
      expect(number(water ?? expect.unreachable(), 'width') / scale).toBeCloseTo(size.lengthCm, 1);
      expect(number(water ?? expect.unreachable(), 'height') / scale).toBeCloseTo(highCm, 1);
    }
  });

  it('30 cm across are 30 cm in both views, 20 cm back and 10 cm up each in its own', () => {
    const one = placed(1, 'torch-coral', spot(30, 15, 10));
    const other = placed(2, 'torch-coral', spot(60, 35, 20));
    const svg = drawn(sceneOf([one, other], { box }));
    const gap = (side: 'above' | 'front') => {
      const scale = scaleOf(svg, side);
      const [a, b] = [1, 2].map((id) => bodyOf(viewOf(svg, side), `${side}-${id}`));
      return [((b?.x ?? 0) - (a?.x ?? 0)) / scale, ((a?.y ?? 0) - (b?.y ?? 0)) / scale];
    };
    const [acrossAbove, back] = gap('above');
    const [acrossFront, up] = gap('front');
    expect(acrossAbove).toBeCloseTo(30, 1);
    expect(acrossFront).toBeCloseTo(30, 1);
    expect(back).toBeCloseTo(20, 1);
    expect(up).toBeCloseTo(10, 1);
  });
});

describe('a coral', () => {
  // A torch is a ball to the placement rules, a plate coral a level disc.
  it.each(['torch-coral', 'plate-coral-fungia'])('%s is as wide as it is, from both sides', (kind) => {
    const svg = drawn(sceneOf([placed(1, kind, spot(60, 25, 10), { diameterCm: 14 })], { box }));
    for (const side of ['above', 'front'] as const)
      expect(bodyOf(viewOf(svg, side), `${side}-1`).width / scaleOf(svg, side)).toBeCloseTo(14, 1);
  });

  it('has its reach dashed round it, and none where nothing travels', () => {
    const torch = placed(1, 'torch-coral', spot(60, 25, 10));
    const svg = drawn(sceneOf([torch, placed(2, 'zoanthus', spot(20, 25, 10))], { box }));
    const reach = groupOf(viewOf(svg, 'above'), 'reach');
    const [look, ...rings] = elements(reach);
    expect(look?.attributes['stroke-dasharray']).toBe('10 6');
    expect(rings).toHaveLength(1);
    expect(torch.entry.sting.reachHighCm).toBeGreaterThan(0);
    const ring = number(rings[0] ?? expect.unreachable(), 'r') / scaleOf(svg);
    expect(ring).toBeCloseTo(5 + torch.entry.sting.reachHighCm, 1);
  });

  it('has its width in a year dotted, at the high end, whatever its usual width', () => {
    const frag = placed(1, 'duncan-coral', spot(60, 25, 10), { diameterCm: 5 });
    const grown = placed(2, 'duncan-coral', spot(20, 25, 10), { diameterCm: 200 });
    const { growth } = frag.entry;
    const svg = drawn(sceneOf([frag, grown], { box: { lengthCm: 400, widthCm: 300, heightCm: 60 } }));
    const [look, ...rings] = elements(groupOf(viewOf(svg, 'above'), 'year'));
    expect(look?.attributes['stroke-dasharray']).toBe('1 6');
    expect(rings).toHaveLength(2);
    const edges = growth.range === 'recalled' ? 1 : 2;
    expect((2 * number(rings[0] ?? expect.unreachable(), 'r')) / scaleOf(svg)).toBeCloseTo(
      5 + edges * growth.highCmPerYear,
      1,
    );
    expect(svg).toContain('width in a year, at the high end');
  });

  it('has a soft edge where its spot was said in words', () => {
    const rough = placed(1, 'torch-coral', spot(60, 25, 10), { rough: true });
    const svg = drawn(sceneOf([rough], { box }));
    expect(svg).toMatch(/id="above-1" fill="url\(#soft-settled\)"/);
    expect(svg).toMatch(/<radialGradient id="soft-settled"/);
    expect(svg).toContain('soft edge: spot said in words');
    expect(drawn(sceneOf([{ ...rough, rough: false }], { box }))).not.toMatch(/soft/);
  });

  it('sits on its ground: the sand is the lower edge of the front view', () => {
    const view = viewOf(drawn(sceneOf([placed(1, 'plate-coral-fungia', spot(60, 25, 0))], { box })), 'front');
    const [water] = elements(view, 'rect');
    const sand = number(water ?? expect.unreachable(), 'y') + number(water ?? expect.unreachable(), 'height');
    expect(bodyOf(view, 'front-1').y).toBeCloseTo(sand, 1);
  });
});

/** The shape round a number of the list. */
function shapeOf(svg: string, id: number): string {
  const found = new RegExp(`<(rect|polygon)([^>]*)/><text[^>]*>${id}<`).exec(listOf(svg));
  if (found === null) throw new Error(`no number ${id}`);
  return found[1] === 'polygon' ? 'points' : found[2]?.includes('rx=') === true ? 'round' : 'corners';
}

describe('verdicts', () => {
  const corals = [
    placed(1, 'torch-coral', spot(20, 25, 20)),
    placed(2, 'hammer-coral-branching', spot(34, 25, 20)),
    placed(3, 'plate-coral-fungia', spot(105, 25, 0)),
    placed(4, 'duncan-coral', spot(70, 45, 20)),
  ];
  const scene = sceneOf(corals, { box });
  const findings = check(scene);

  it('have a shape and a word each in the list', () => {
    const [watch = '', settled = ''] = (['watch', 'settled'] as const).map((verdict) => {
      const judged = findings.map((one) => (one.corals.includes(4) ? { ...one, verdict } : one));
      return bothOf(tankMap(scene, judged));
    });
    expect([1, 2].map((id) => shapeOf(watch, id))).toEqual(['points', 'points']);
    expect([shapeOf(watch, 4), shapeOf(settled, 4)]).toEqual(['corners', 'round']);
    const words = textsOf(listOf(watch)).map(({ text }) => text);
    expect(words.filter((text) => text.startsWith('move: sting'))).toHaveLength(2);
    expect(words.some((text) => text.startsWith('watch'))).toBe(true);
    expect(words).toContain('settled');
  });

  it('a pair is joined from middle to middle, with the rule in words', () => {
    const svg = bothOf(tankMap(scene, findings));
    for (const side of ['above', 'front'] as const) {
      const view = viewOf(svg, side);
      const [look, ...lines] = elements(groupOf(view, 'conflict-move'));
      expect(number(look ?? expect.unreachable(), 'stroke-width')).toBe(5);
      const ends = ['x1', 'y1', 'x2', 'y2'].map((name) => number(lines[0] ?? expect.unreachable(), name));
      const [a, b] = [1, 2].map((id) => bodyOf(view, `${side}-${id}`));
      expect(lines).toHaveLength(1);
      // Written to a hundredth and to a tenth.
      const [left, right] = [a, b].toSorted((one, other) => (one?.x ?? 0) - (other?.x ?? 0));
      const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = ends;
      const [from, to] = x1 < x2 ? [left, right] : [right, left];
      expect(
        [x1 - (from?.x ?? 0), y1 - (from?.y ?? 0), x2 - (to?.x ?? 0), y2 - (to?.y ?? 0)].map(Math.round),
      ).toEqual([0, 0, 0, 0].map((zero) => expect.closeTo(zero, 5)));
      expect(textsOf(view).some(({ text }) => text.startsWith('sting'))).toBe(true);
    }
    expect(svg).toMatch(/>conflict: move</);
  });
});

describe('what stands round the water', () => {
  it('names the sides, the glass and what it is not sure of', () => {
    const svg = drawn(sceneOf([], { box, boxGuessed: true }));
    for (const word of ['left', 'right', 'back', 'front', 'water line', 'sand'])
      expect(svg).toContain(`>${word}<`);
    for (const heading of ['From above', 'From the front']) expect(svg).toContain(`>${heading}<`);
    expect(svg).toContain('120 x 50 x 46 cm, a guessed size');
    expect(drawn(sceneOf([], { box }))).not.toMatch(/guess/);
    expect(svg).toContain('No corals placed yet');
  });

  // Left is left in both views, and the front is the lower edge from above.
  it.each([
    ['left to right', 2, 1, 0],
    ['right to left', 2, -1, 0],
    ['front to back', 1, 0, -1],
    ['back to front', 1, 0, 1],
  ] as const)('an arrow shows a flow %s', (flow, count, dx, dy) => {
    const svg = drawn(sceneOf([], { box, flow }));
    expect(svg).toContain(`>flow ${flow}<`);
    const arrows = [...svg.matchAll(/<g class="flow"><line[^>]*\/>/g)].map(
      ([line]) => elements(line, 'line')[0],
    );
    expect(arrows).toHaveLength(count);
    for (const arrow of arrows) {
      const [x1, x2, y1, y2] = ['x1', 'x2', 'y1', 'y2'].map((name) =>
        number(arrow ?? expect.unreachable(), name),
      );
      expect(Math.sign((x2 ?? 0) - (x1 ?? 0))).toBe(dx);
      expect(Math.sign((y2 ?? 0) - (y1 ?? 0))).toBe(dy);
    }
  });

  it('a changing flow has no arrow, an unknown one is not spoken of', () => {
    expect(drawn(sceneOf([], { box, flow: 'changing' }))).toMatch(/>flow changing</);
    expect(drawn(sceneOf([], { box, flow: 'changing' }))).not.toMatch(/class="flow"/);
    expect(drawn(sceneOf([], { box }))).not.toMatch(/>flow/);
  });
});

describe('the edge', () => {
  // 1 in = 2.54 cm exactly (NIST SP 811, 2008, appendix B.8).
  it('is marked in inches where they are wanted, to the same scale', () => {
    const scene = sceneOf([], { box });
    const inches = bothOf(tankMap(scene, [], 'Pantry', 'in'));
    expect(scaleOf(inches) / scaleOf(drawn(scene))).toBeCloseTo(2.54, 2);
    expect(inches).toContain('47.2 x 19.7 x 18.1 in');
    expect(textsOf(inches).filter(({ text }) => / cm\b/.test(text))).toEqual([]);
  });
});

describe('a light reading', () => {
  it('has its number beside its mark in both pictures', () => {
    const light = [{ xCm: 30, yCm: 20, zCm: 20, id: 1, ppfd: 137, atMs: 0 }];
    const svg = drawn(sceneOf([], { box, light }));
    for (const side of ['above', 'front'] as const)
      expect(textsOf(viewOf(svg, side)).map(({ text }) => text)).toContain('137');
  });
});

it('takes hostile names as words, and shortens long ones', () => {
  const label = `<b>&" ${'very '.repeat(30)}long`;
  const svg = drawn(sceneOf([{ ...placed(1, 'torch-coral', spot(60, 25, 10)), label }], { box }));
  expect(svg).not.toContain('<b>');
  expect(svg).toMatch(/>&lt;b&gt;&amp;&quot; very[^<]*…</);
});
