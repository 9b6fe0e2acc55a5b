import { describe, expect, it } from 'vitest';
import type { Bases, Statement } from '../../../core/corals/basis.ts';
import { corals, coralById } from '../../../core/corals/coral-list.ts';
import type { CoralEntry } from '../../../core/corals/entry.ts';
import { edgeCmPerYear } from '../../../core/corals/growth.ts';
import { selects } from '../../../core/corals/selector.ts';
import { coralSources } from '../../../core/corals/sources.ts';

const flow = ['low', 'medium', 'high'];

/** Every list of bases anywhere in an entry, with the path to it. */
function basesIn(value: unknown, path = ''): { path: string; basis: Bases }[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]: [string, unknown]) =>
    /basis$/i.test(key)
      ? [{ path: `${path}.${key}`, basis: inner as Bases }]
      : basesIn(inner, `${path}.${key}`),
  );
}

/** Everything said of an entry. */
function statementsOf(entry: CoralEntry): readonly Statement[] {
  return [
    entry.spot,
    ...(entry.flow.note === undefined ? [] : [entry.flow.note]),
    ...entry.sting.notes,
    ...entry.sting.atRisk,
    ...entry.susceptible,
    ...entry.growth.notes,
    ...entry.feeding,
    ...entry.record,
    ...(entry.hazard?.notes ?? []),
    ...entry.law.notes,
  ];
}

describe('the list', () => {
  it('holds 77 corals in its core and 35 more, each once', () => {
    expect(corals.filter(({ tier }) => tier === 'core')).toHaveLength(77);
    expect(corals.filter(({ tier }) => tier === 'extra')).toHaveLength(35);
    expect(new Set(corals.map(({ id }) => id)).size).toBe(112);
    expect(new Set(corals.map(({ scientific }) => scientific.accepted)).size).toBeGreaterThan(100);
  });

  it('is found by id', () => {
    expect(coralById('galaxea')?.scientific.accepted).toBe('Galaxea fascicularis');
    expect(coralById('no-such-coral')).toBeUndefined();
  });
});

describe.each(corals.map((entry) => ({ id: entry.id, entry })))('$id', ({ id, entry }) => {
  it('has ranges in order', () => {
    const { light, sting, growth, depth, size } = entry;
    expect(light.lowPpfd).toBeLessThan(light.highPpfd);
    expect(light.startPpfd).toBeGreaterThanOrEqual(light.lowPpfd);
    expect(light.startPpfd).toBeLessThanOrEqual(light.highPpfd);
    expect(light.highPpfd).toBeLessThanOrEqual(450);
    expect(flow.indexOf(entry.flow.min)).toBeLessThanOrEqual(flow.indexOf(entry.flow.max));
    expect(sting.reachLowCm).toBeLessThanOrEqual(sting.reachHighCm);
    // Project rule, as its text says: reach at full stretch and a year of growth of an edge, rounded up.
    expect(sting.keepClearCm).toBeGreaterThanOrEqual(sting.reachHighCm + edgeCmPerYear(entry));
    expect(sting.keepClearCm).toBe(Math.ceil(sting.keepClearCm));
    expect(growth.lowCmPerYear).toBeLessThanOrEqual(growth.highCmPerYear);
    expect(depth.upperM ?? 0).toBeLessThan(depth.lowerM);
    expect(size.practicalMaxCm).toBeGreaterThan(0);
    const wild = growth.wild;
    if (wild === undefined) return;
    const inOrder = [
      wild.minMmPerYear,
      wild.p10MmPerYear,
      wild.medianMmPerYear,
      wild.p90MmPerYear,
      wild.maxMmPerYear,
    ];
    expect([...inOrder].sort((a, b) => a - b)).toEqual(inOrder);
  });

  it('names a basis for everything, and only sources that were seen as published', () => {
    const all = basesIn(entry);
    expect(all.length).toBeGreaterThan(20);
    for (const { path, basis } of all) {
      expect(basis.length, path).toBeGreaterThan(0);
      for (const one of basis) {
        if (one.kind !== 'published') continue;
        const source = coralSources[one.source];
        expect(source.kind, `${path} ${one.source}`).toBe('published');
      }
    }
  });

  it('says what it says in plain words, sources kept apart from the text', () => {
    for (const { text } of statementsOf(entry)) {
      expect(text).toMatch(/^[\x20-\x7e]+[^.\s]$/);
      expect(text).not.toMatch(/memory|published:|\b[A-Z][a-zA-Z]+(?:19|20)\d\d|CTDB/);
    }
  });

  it('is on good terms with corals that exist', () => {
    for (const ally of entry.sting.allies) {
      expect(
        corals.some((other) => selects(ally.who, other)),
        `${id}: ${ally.text}`,
      ).toBe(true);
    }
  });
});

describe('hazards and law', () => {
  it('flags palytoxin for every zoanthid and for nothing else', () => {
    const flagged = corals.filter((entry) => entry.hazard?.palytoxin === true).map(({ id }) => id);
    expect(flagged).toEqual(corals.filter(({ group }) => group === 'zoanthid').map(({ id }) => id));
    expect(flagged).toContain('palythoa');
  });

  // CITES Notification 2006/063: Scleractinia, Helioporidae, Tubiporidae, Milleporidae, Stylasteridae.
  it('puts stony corals and the three listed families in CITES Appendix II', () => {
    const listed = corals.filter(({ law }) => law.cites === 'II');
    const stony = corals.filter(({ group }) => group === 'large-polyp' || group === 'small-polyp');
    expect(listed.map(({ id }) => id).sort()).toEqual(
      [...stony.map(({ id }) => id), 'blue-ridge-heliopora', 'organ-pipe'].sort(),
    );
  });

  it('says which corals do not live by light', () => {
    expect(corals.filter((entry) => !entry.photosynthetic).map(({ id }) => id)).toEqual([
      'sun-coral',
      'dendrophyllia',
      'carnation-dendronephthya',
      'gorgonian-nonphotosynthetic',
      'tube-anemone',
    ]);
  });
});
