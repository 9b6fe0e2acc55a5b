import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pairFindings } from '../../../core/corals/check.ts';
import { corals } from '../../../core/corals/coral-list.ts';
import { lightFor } from '../../../core/corals/light-need.ts';
import { nearMisses, suited } from '../../../core/corals/suited.ts';
import { levels, suits, type Wanted } from '../../../core/corals/suits.ts';
import { beside, box, kind, reading, sceneOf, spot } from './scenes.ts';

const ids = (wanted: Wanted): readonly string[] => suited(wanted).map(({ entry }) => entry.id);
const at = spot(100, 50, 20);
/** A spot on rock of that light, with nothing else about. */
const lit = (ppfd: number) => ({
  scene: sceneOf([], { light: [reading(1, at, ppfd)] }),
  spot: at,
  rough: false,
  untold: [],
});

describe('experience', () => {
  // Hardiness: common practice. What each level leaves out: project rule.
  it('takes in more with more of it', () => {
    const [first, some, many] = levels.map((level) => new Set(ids({ level })));
    expect(many?.size).toBe(corals.length);
    for (const id of first ?? []) expect(some?.has(id), id).toBe(true);
    for (const entry of corals) {
      if (entry.hardiness.value === 'demanding') expect(some?.has(entry.id), entry.id).toBe(false);
      if (entry.hardiness.value !== 'easy') expect(first?.has(entry.id), entry.id).toBe(false);
    }
  });

  it('keeps anemones, severe stings and what must be fed from a first year', () => {
    for (const { entry } of suited({ level: 'first year' })) {
      expect(entry.group, entry.id).not.toBe('anemone');
      expect(entry.sting.potency, entry.id).not.toBe('severe');
      expect(entry.photosynthetic, entry.id).toBe(true);
    }
    expect(suits(kind('galaxea'), { level: 'first year' }).against).toEqual(['a severe sting']);
    expect(suits(kind('acropora-staghorn'), { level: 'some years' }).against[0]).toMatch(/^demanding/);
  });
});

describe('the spot', () => {
  it('takes nothing that is too bright or too dim for a new piece', () => {
    for (const ppfd of [20, 60, 100, 150, 250, 400, 800]) {
      for (const { entry } of suited({ place: lit(ppfd) })) {
        const { highPpfd, startPpfd, lowPpfd } = lightFor(entry, 'tank-grown');
        if (!entry.photosynthetic) continue;
        expect(ppfd, entry.id).toBeLessThanOrEqual(highPpfd);
        expect(ppfd, entry.id).toBeLessThan(2 * startPpfd);
        expect(ppfd, entry.id).toBeGreaterThanOrEqual(Math.min(lowPpfd, startPpfd));
      }
    }
  });

  it.each([
    // Ranges: common practice.
    ['discosoma', 250, ['too bright: begins near 50 of 25 to 120 PAR']],
    ['acropora-staghorn', 60, ['too dim: begins near 220 of 200 to 450 PAR']],
    ['zoanthus', 220, ['too bright to begin with: begins near 100 of 50 to 250 PAR']],
    ['zoanthus', 100, []],
  ] as const)('%s at %d PAR', (id, ppfd, against) =>
    expect(suits(kind(id), { place: lit(ppfd) }).against).toEqual(against),
  );

  it('asks for the flow and the ground', () => {
    expect(suits(kind('scolymia-australis'), { flow: 'high' }).against).toEqual(['wants low flow']);
    expect(suits(kind('plate-coral-fungia'), { ground: 'rock' }).against).toEqual(['belongs on sand']);
    expect(suits(kind('duncan-coral'), { ground: 'sand' }).against).toEqual([]);
    for (const { entry } of suited({ flow: 'low', ground: 'sand' })) {
      expect(entry.flow.min, entry.id).toBe('low');
      expect(entry.ground.value, entry.id).toContain('sand');
    }
  });

  it('minds who stands there: a torch and a hammer want 20 cm (common practice)', () => {
    const scene = beside('torch-coral', 'duncan-coral', 60);
    const near = { scene, spot: spot(118, 50, 20), rough: false, untold: [] };
    expect(suits(kind('hammer-coral-branching'), { place: near }).against).toEqual([
      'sting: your torch-coral is near',
    ]);
    expect(
      suits(kind('hammer-coral-branching'), { place: { ...near, spot: spot(250, 50, 20) } }).against,
    ).toEqual([]);
  });
});

it('asks nothing of corals too far off to matter', () => {
  // The widest reach is 30 cm, half as much again downstream; edges grow at most 15 cm a year each.
  const any = fc.constantFrom(...corals);
  const flow = fc.constantFrom(undefined, 'left to right' as const, 'right to left' as const);
  fc.assert(
    fc.property(any, any, fc.integer({ min: 90, max: 160 }), flow, (a, b, gapCm, water) => {
      const scene = beside(a.id, b.id, gapCm, { flow: water });
      const [one, other] = scene.corals;
      if (one === undefined || other === undefined) throw new Error('two corals');
      expect(pairFindings(scene, one, other)).toEqual([]);
    }),
    { numRuns: 2000 },
  );
});

describe('the tank', () => {
  it('is too small for what grows wider than it', () => {
    const cube = { lengthCm: 30, widthCm: 30, heightCm: 30 };
    expect(suits(kind('carpet-anemone'), { box: cube }).against).toEqual([
      'stings 40 cm wide, more than this glass gives',
    ]);
    const wider = { lengthCm: 50, widthCm: 50, heightCm: 50 };
    expect(suits(kind('carpet-anemone'), { box: wider }).against).toEqual([
      'grows to some 60 cm, wider than the glass (50 cm)',
    ]);
    for (const { entry, watch } of suited({ box: cube })) {
      expect(entry.sting.keepClearCm, entry.id).toBeLessThanOrEqual(30);
      // Mats of polyps are cut back piece by piece, whatever they would grow to; said where it matters.
      const isMat = entry.group === 'zoanthid' || entry.group === 'mushroom';
      if (entry.size.practicalMaxCm <= 30) continue;
      expect(isMat, entry.id).toBe(true);
      expect(watch.join('; '), entry.id).toContain('plan to trim it');
    }
  });

  it('has neighbours to keep away from, or no room for that', () => {
    const galaxea = [{ entry: kind('galaxea'), label: 'Galaxea' }];
    expect(suits(kind('duncan-coral'), { neighbours: galaxea, box }).watch).toContain(
      'keep 30 cm from your Galaxea',
    );
    const short = { lengthCm: 45, widthCm: 45, heightCm: 45 };
    expect(suits(kind('duncan-coral'), { neighbours: galaxea, box: short }).against[0]).toMatch(
      /wants 30 cm/,
    );
    // Griffith 1997: soft beside stony within 10 cm.
    const leather = [{ entry: kind('toadstool-sarcophyton'), label: 'Leather' }];
    expect(suits(kind('acropora-staghorn'), { neighbours: leather, box }).watch).toContain(
      'keep 10 cm from your Leather',
    );
  });
});

describe('the list', () => {
  const wanted = fc.record({
    level: fc.constantFrom(undefined, ...levels),
    flow: fc.constantFrom(undefined, 'low' as const, 'medium' as const, 'high' as const),
    ground: fc.constantFrom(undefined, 'rock' as const, 'sand' as const),
    group: fc.constantFrom(undefined, 'soft' as const, 'large-polyp' as const, 'anemone' as const),
    place: fc.constantFrom(undefined, lit(60), lit(180), lit(400)),
  });

  it('parts the corals of a group in those that fit and those with a reason not to', () => {
    fc.assert(
      fc.property(wanted, (one) => {
        const group = corals.filter((entry) => one.group === undefined || entry.group === one.group);
        const [fit, miss] = [suited(one), nearMisses(one, group.length)];
        expect(fit.length + miss.length).toBe(group.length);
        expect(new Set([...fit, ...miss].map(({ entry }) => entry)).size).toBe(group.length);
        for (const { against } of miss) expect(against.length).toBeGreaterThan(0);
      }),
      { numRuns: 60 },
    );
  });

  it('begins with easy ones, of several groups', () => {
    const first = suited({}).slice(0, 6);
    expect(first.every(({ entry }) => entry.hardiness.value === 'easy')).toBe(true);
    expect(new Set(first.map(({ entry }) => entry.group)).size).toBe(6);
  });
});
