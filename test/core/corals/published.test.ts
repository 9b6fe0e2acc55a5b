import { describe, expect, it } from 'vitest';
import type { Bases } from '../../../core/corals/basis.ts';
import { coralById, corals } from '../../../core/corals/coral-list.ts';
import type { CoralEntry } from '../../../core/corals/entry.ts';

function coral(id: string): CoralEntry {
  const entry = coralById(id);
  if (entry === undefined) throw new Error(`no coral ${id}`);
  return entry;
}

/** Accepted names as the source was seen to give them. */
const names = [
  ['lobophyllia', 'Lobophyllia', 'World Register of Marine Species, Lobophyllia (205310)'],
  ['blastomussa-merleti', 'Blastomussa merleti', 'World Register of Marine Species (207385)'],
  ['heliofungia', 'Heliofungia actiniformis', 'World Register of Marine Species, Fungiidae (196100)'],
  ['cycloseris', 'Cycloseris', 'World Register of Marine Species, Fungiidae (196100)'],
  ['torch-coral', 'Euphyllia glabrescens', 'Coral Trait Database; Arrigoni et al. 2023'],
  ['galaxea', 'Galaxea fascicularis', 'Coral Trait Database'],
  ['elegance-coral', 'Catalaphyllia jardinei', 'Coral Trait Database'],
  ['bubble-coral', 'Plerogyra sinuosa', 'Coral Trait Database'],
  ['duncan-coral', 'Duncanopsammia axifuga', 'Coral Trait Database'],
  ['turbinaria-cup', 'Duncanopsammia peltata', 'Coral Trait Database'],
  ['favia-dipsastraea', 'Dipsastraea', 'Coral Trait Database'],
  ['montipora-digitata', 'Montipora digitata', 'Coral Trait Database'],
  ['stylophora', 'Stylophora pistillata', 'Coral Trait Database'],
  ['acan-lord', 'Micromussa lordhowensis', 'Arrigoni et al. 2016'],
  ['bowerbanki', 'Homophyllia bowerbanki', 'Arrigoni et al. 2016'],
  ['australophyllia-wilsoni', 'Australophyllia wilsoni', 'Arrigoni et al. 2016'],
  ['frogspawn-branching', 'Fimbriaphyllia paradivisa', 'NOAA Fisheries 5-year review'],
  ['sinularia-flexible', 'Sclerophytum flexibile', 'Octocoral Trait Database species list 2024'],
  ['organ-pipe', 'Tubipora musica', 'Octocoral Trait Database species list 2024'],
  ['bubble-tip-anemone', 'Entacmaea quadricolor', 'Titus et al. 2024'],
  ['magnificent-anemone', 'Radianthus magnifica', 'Titus et al. 2024'],
] as const;

it.each(names)('%s is %s (%s)', (id, accepted) => {
  const { scientific } = coral(id);
  expect(scientific.accepted).toBe(accepted);
  expect(scientific.basis.some(({ kind }) => kind === 'published')).toBe(true);
});

/** Hand-picked numbers whose origin is memory or practice: they must never be called published. */
const unpublished: readonly (readonly [string, (entry: CoralEntry) => Bases, 'memory' | 'practice'])[] = [
  ['torch-coral', ({ sting }) => sting.reachBasis, 'memory'],
  ['torch-coral', ({ light }) => light.basis, 'practice'],
  ['torch-coral', ({ growth }) => growth.basis, 'memory'],
  ['hammer-coral-wall', ({ sting }) => sting.reachBasis, 'memory'],
  ['galaxea', ({ sting }) => sting.reachBasis, 'practice'],
  ['bubble-coral', ({ sting }) => sting.reachBasis, 'memory'],
  ['grape-euphyllia', ({ light }) => light.basis, 'memory'],
  ['fox-coral', ({ light }) => light.basis, 'memory'],
  ['goniopora', ({ sting }) => sting.reachBasis, 'memory'],
  ['hydnophora', ({ sting }) => sting.reachBasis, 'practice'],
  ['favites', ({ growth }) => growth.basis, 'memory'],
  ['leptastrea', ({ growth }) => growth.basis, 'memory'],
  ['isopora', ({ growth }) => growth.basis, 'memory'],
  ['montipora-digitata', ({ light }) => light.basis, 'memory'],
  ['acropora-table', ({ sting }) => sting.reachBasis, 'memory'],
  ['sun-coral', ({ depth }) => depth.basis, 'memory'],
  ['zoanthus', ({ growth }) => growth.basis, 'memory'],
  ['discosoma', ({ sting }) => sting.reachBasis, 'memory'],
  ['bubble-tip-anemone', ({ light }) => light.basis, 'memory'],
  ['carpet-anemone', ({ sting }) => sting.reachBasis, 'memory'],
  ['heliofungia', ({ size }) => size.basis, 'memory'],
  ['porites', ({ size }) => size.basis, 'memory'],
];

it.each(unpublished)('%s %s rests on %s', (id, pick, kind) => {
  expect(pick(coral(id)).map((basis) => basis.kind)).toEqual([kind]);
});

it('calls no potency, hardiness, demand, shade or spacing figure published', () => {
  for (const id of ['platygyra', 'toadstool-sarcophyton', 'rhodactis', 'magnificent-anemone']) {
    const { sting, hardiness, stonyDemand, shade } = coral(id);
    const bases = [sting.potencyBasis, sting.keepClearBasis, hardiness.basis, stonyDemand.basis, shade.basis];
    expect(bases.flat().some(({ kind }) => kind === 'published')).toBe(false);
  }
});

describe('published figures', () => {
  it('takes the reach of Platygyra from a mean and a deviation, 5.3 and 3.0 cm (Lapid et al. 2004), and says so', () => {
    const { sting } = coral('platygyra');
    expect([sting.reachLowCm, sting.reachHighCm]).toEqual([Math.floor(5.3), Math.ceil(5.3 + 3)]);
    expect(sting.reachBasis.map(({ kind: one }) => one)).toEqual(['project rule']);
  });

  /**
   * What each paper is about, by its abstract: a field of another subject may not be called published by it. No paper
   * seen gives the light a coral needs or its flow, hardiness or uptake; the one length of tentacles is of anemones.
   */
  it('is called published only where the source is about that field', () => {
    const about: Readonly<Record<string, readonly string[]>> = {
      light: [],
      flow: [],
      hardiness: [],
      stonyDemand: [],
      reach: ['Titus2024'],
      potency: [],
      size: [],
      growth: ['CTDB', 'Knittweis2009'],
      depth: ['CTDB', 'Dixon2014', 'VAPAGuide', 'OctoGrowth2020'],
      moves: ['ChadwickFurmanLoya1992'],
    };
    for (const { id, light, flow, hardiness, stonyDemand, sting, size, growth, depth, moves } of corals) {
      const held: Readonly<Record<string, Bases>> = {
        light: light.basis,
        flow: flow.basis,
        hardiness: hardiness.basis,
        stonyDemand: stonyDemand.basis,
        reach: sting.reachBasis,
        potency: sting.potencyBasis,
        size: size.basis,
        growth: growth.basis,
        depth: depth.basis,
        moves: moves.basis,
      };
      for (const [field, bases] of Object.entries(held)) {
        const papers = bases.flatMap((basis) => (basis.kind === 'published' ? [basis.source] : []));
        expect(about[field], `${id} ${field}`).toEqual(expect.arrayContaining(papers));
      }
    }
  });

  // Chadwick-Furman & Loya 1992: seven free-living kinds at Eilat; Heliofungia and Polyphyllia do not live there.
  it('does not stretch the study of seven mushroom corals to other kinds', () => {
    const stretched = corals.filter(
      ({ id, sting, moves }) =>
        id !== 'plate-coral-fungia' &&
        [...sting.allies.flatMap(({ basis }) => basis), ...moves.basis].some(
          (basis) => basis.kind === 'published' && basis.source === 'ChadwickFurmanLoya1992',
        ),
    );
    expect(stretched.map(({ id }) => id)).toEqual([]);
  });

  it('gives Rhodactis its stand-off distance: 1-3 cm (Langmead & Chadwick-Furman 1999)', () => {
    const { sting } = coral('rhodactis');
    expect([sting.reachLowCm, sting.reachHighCm]).toEqual([1, 3]);
  });

  // Coral Trait Database 1.1.1 (Madin et al. 2016), mm per year, over the species an entry takes in.
  it.each([
    ['porites', 11.66, 148],
    ['platygyra', 7.4, 5],
    ['diploastrea', 2.49, 28],
    ['stylophora', 19.34, 18],
  ])('%s grows a median of %f mm per year over %i values', (id, median, values) => {
    expect(coral(id).growth.wild).toMatchObject({ medianMmPerYear: median, values });
  });

  // The range of a genus is not that of the species an entry takes in: for those the database has too few values.
  it('marks the growth ranges that are of a whole genus', () => {
    const ofGenus = corals.filter(({ growth }) => growth.range === '10th to 90th percentile of the genus');
    expect(ofGenus.map(({ id }) => id).sort()).toEqual(['montipora-digitata', 'montipora-plating', 'pavona']);
    for (const { id, growth } of corals) {
      if (growth.wild === undefined || growth.range !== '10th to 90th percentile') continue;
      const own = [growth.wild.p10MmPerYear / 10, growth.wild.p90MmPerYear / 10];
      expect(Math.abs(growth.lowCmPerYear - (own[0] ?? 0)), id).toBeLessThan(0.01);
      expect(Math.abs(growth.highCmPerYear - (own[1] ?? 0)), id).toBeLessThan(0.01);
    }
  });
});
