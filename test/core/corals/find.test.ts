import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { corals } from '../../../core/corals/coral-list.ts';
import { coralNames, findCorals, MAX_CORAL_NAME_LENGTH } from '../../../core/corals/find.ts';

/** The ids a name leads to: one, or the offer. */
function leadsTo(text: string): readonly string[] {
  const found = findCorals(text);
  if (found.kind === 'one') return [found.entry.id];
  return found.kind === 'several' ? found.entries.map(({ id }) => id) : [];
}

/** Names as members type them that can mean one coral. */
const one: readonly (readonly [string, string])[] = [
  ['torch', 'torch-coral'],
  ['TORCH CORAL', 'torch-coral'],
  ['green torch', 'torch-coral'],
  ['2 heads of torch', 'torch-coral'],
  ['euphyllia glabrecens', 'torch-coral'],
  ['branching hamer', 'hammer-coral-branching'],
  ['wall hammer', 'hammer-coral-wall'],
  ['Euphyllia ancora', 'hammer-coral-wall'],
  ['octo spawn', 'octospawn'],
  ['galaxia', 'galaxea'],
  ['Galexea', 'galaxea'],
  ['elegence coral', 'elegance-coral'],
  ['catalaphylia', 'elegance-coral'],
  ['trachy', 'open-brain-trachyphyllia'],
  ['trachyphylia', 'open-brain-trachyphyllia'],
  ['willsoni', 'australophyllia-wilsoni'],
  ['acan lord', 'acan-lord'],
  ['bowerbanky', 'bowerbanki'],
  ['cynerina', 'cynarina'],
  ['candycane', 'candy-cane-caulastraea'],
  ['Candy Canes', 'candy-cane-caulastraea'],
  ['trumpets', 'candy-cane-caulastraea'],
  ['duncans', 'duncan-coral'],
  ['dunkan', 'duncan-coral'],
  ['gonipora', 'goniopora'],
  ['gonio', 'goniopora'],
  ['alveapora', 'alveopora'],
  ['fungea', 'plate-coral-fungia'],
  ['long tentacle plate', 'heliofungia'],
  ['helio fungia', 'heliofungia'],
  ['lithofyllon', 'lithophyllon'],
  ['mycidium', 'mycedium'],
  ['favia', 'favia-dipsastraea'],
  ['dipsastrea', 'favia-dipsastraea'],
  ['war coral', 'favites'],
  ['platigyra', 'platygyra'],
  ['hydnofora', 'hydnophora'],
  ['hydno', 'hydnophora'],
  ['cypastrea', 'cyphastrea'],
  ['sun corral', 'sun-coral'],
  ['tubastrea', 'sun-coral'],
  ['stag horn', 'acropora-staghorn'],
  ['acropora tenuis', 'acropora-corymbose'],
  ['monti cap', 'montipora-plating'],
  ['monticap', 'montipora-plating'],
  ['digi', 'montipora-digitata'],
  ['pocillapora', 'pocillopora'],
  ["bird's nest", 'birdsnest-seriatopora'],
  ['pink birdsnest', 'birdsnest-seriatopora'],
  ['purple stylo', 'stylophora'],
  ['porities', 'porites'],
  ['leptosaris', 'leptoseris'],
  ['toad stool leather', 'toadstool-sarcophyton'],
  ['devils hand', 'devils-hand-lobophytum'],
  ['kenyatree', 'kenya-tree'],
  ['pulsing zenia', 'xenia-pulsing'],
  ['GSP', 'green-star-polyps'],
  ['gps coral', 'green-star-polyps'],
  ['zoas', 'zoanthus'],
  ['zoathid', 'zoanthus'],
  ['palys', 'palythoa'],
  ['ricordia yuma', 'ricordea-yuma'],
  ['BTA', 'bubble-tip-anemone'],
  ['suncoral', 'sun-coral'],
  ['milli', 'acropora-corymbose'],
  ['bubble tip anenome', 'bubble-tip-anemone'],
  ['bubbletip nem', 'bubble-tip-anemone'],
  ['rose bubble tip anenome', 'bubble-tip-anemone'],
  ['Heteractis magnifica', 'magnificent-anemone'],
  ['rock flour anemone', 'rock-flower-anemone'],
  ['haddonii', 'carpet-anemone'],
];

it.each(one)('"%s" is %s', (text, id) => {
  expect(leadsTo(text)).toEqual([id]);
});

/** Names that fit several corals: an offer that holds these, and is no guess. */
const several: readonly (readonly [string, readonly string[]])[] = [
  ['acan', ['acan-lord', 'acanthastrea-echinata', 'bowerbanki']],
  ['acanthastrea', ['acan-lord', 'acanthastrea-echinata', 'micromussa-small']],
  ['brain', ['favia-dipsastraea', 'platygyra', 'lobophyllia', 'open-brain-trachyphyllia', 'goniastrea']],
  ['hammer', ['hammer-coral-branching', 'hammer-coral-wall']],
  ['euphilia hamer', ['hammer-coral-branching', 'hammer-coral-wall']],
  ['frog spwan', ['frogspawn-branching', 'frogspawn-wall']],
  ['euphyllia', ['torch-coral', 'hammer-coral-branching', 'frogspawn-branching']],
  ['euphillia', ['torch-coral', 'hammer-coral-wall', 'frogspawn-wall']],
  ['bubble coral', ['bubble-coral', 'pearl-bubble-coral']],
  ['chalice', ['chalice-echinophyllia', 'chalice-oxypora', 'mycedium', 'echinopora']],
  ['plate coral', ['plate-coral-fungia', 'heliofungia']],
  ['mushroom', ['discosoma', 'rhodactis', 'plate-coral-fungia']],
  ['elephant ear', ['amplexidiscus', 'rhodactis']],
  ['blasto', ['blastomussa-merleti', 'blastomussa-wellsi']],
  ['scoly', ['scolymia-australis', 'scolymia-vitiensis']],
  ['meat coral', ['lobophyllia', 'cynarina', 'acanthophyllia']],
  ['montapora', ['montipora-plating', 'montipora-encrusting', 'montipora-digitata']],
  ['acro', ['acropora-staghorn', 'acropora-corymbose', 'acropora-table']],
  ['turbinaria', ['turbinaria-cup', 'turbinaria-scroll']],
  ['millepora', ['acropora-corymbose', 'fire-coral-millepora']],
  ['leather', ['toadstool-sarcophyton', 'sinularia-finger']],
  ['gorgonian', ['gorgonian-photosynthetic', 'gorgonian-nonphotosynthetic']],
  ['carpet anenome', ['carpet-anemone', 'mini-carpet-anemone']],
  ['nephthea', ['tree-coral-litophyton', 'kenya-tree']],
  ['nem', ['bubble-tip-anemone', 'carpet-anemone']],
  ['rics', ['ricordea-florida', 'ricordea-yuma']],
  ['donut coral', ['cynarina', 'scolymia-australis']],
];

it.each(several)('"%s" is offered as several', (text, ids) => {
  const found = findCorals(text);
  expect(found.kind).toBe('several');
  expect(leadsTo(text)).toEqual(expect.arrayContaining([...ids]));
});

/** Colours and other words that many corals share: no coral is taken by one of them alone. */
it.each([
  'rose coral',
  'orange coral',
  'pink',
  'white coral',
  'neon',
  'aussie',
  'rock',
  'elegans',
  'robusta',
])('"%s" is no name', (text) => expect(findCorals(text).kind).toBe('none'));

describe('every name in the guide', () => {
  const names = corals.flatMap(({ id, names: { common, hobby, misspelt }, scientific }) =>
    [
      ...common,
      ...hobby,
      ...misspelt,
      ...scientific.superseded.map(({ name }) => name),
      ...scientific.genera,
      ...scientific.species,
      scientific.accepted,
    ].map((name) => [name, id] as const),
  );

  it('covers some hundreds of names', () => expect(names.length).toBeGreaterThan(1000));

  it('leads to its coral or to an offer that holds it', () => {
    const lost = names.filter(([name, id]) => !leadsTo(name).includes(id));
    expect(lost).toEqual([]);
  });
});

describe('how a name was read', () => {
  it('says the older name', () => {
    expect(findCorals('favia')).toMatchObject({
      kind: 'one',
      nameNote: 'Favia (Indo-Pacific species) is now Dipsastraea (from memory)',
    });
    expect(findCorals('tubastrea')).toMatchObject({
      nameNote: 'Tubastrea is spelt Tubastraea (from memory)',
    });
    expect(findCorals('goniopora')).not.toHaveProperty('nameNote');
  });

  /** The epithet of a species stays when its genus changes (ICZN 31.2 lets only its ending follow the genus). */
  it('tells the same species under its new name, and never another', () => {
    for (const { scientific } of corals) {
      for (const { name, now, kind } of scientific.superseded) {
        const [, epithet] = name.split(' ');
        if (epithet === undefined || kind !== 'older' || now !== undefined) continue;
        const kept = scientific.accepted.split(' ')[1] ?? '';
        expect(kept.slice(0, 5), `${name}: ${scientific.accepted}`).toBe(epithet.slice(0, 5));
      }
    }
    expect(findCorals('Acropora brueggemanni')).toMatchObject({
      nameNote: 'Acropora brueggemanni is now Isopora brueggemanni (from memory)',
    });
    expect(findCorals('Heteractis crispa')).toMatchObject({
      nameNote: 'Heteractis crispa is now Radianthus crispa (published: Titus et al. 2024)',
    });
  });

  it('says a spelling it read otherwise, and only then', () => {
    expect(findCorals('hydnofora')).toMatchObject({ kind: 'one', readAs: 'Hydnophora' });
    expect(findCorals('scolly')).toMatchObject({ kind: 'several', readAs: 'Scoly' });
    expect(findCorals('Hydnophora')).not.toHaveProperty('readAs');
  });

  it('puts the coral whose whole name it is first', () => {
    expect(leadsTo('bubble')[0]).toBe('bubble-coral');
    expect(leadsTo('mushroom')[0]).toBe('discosoma');
    expect(leadsTo('acropora').at(-1)).toBe('isopora');
  });
});

describe('what it does not know', () => {
  it.each(['', '   ', 'coral', 'a piece of coral', '???', 'clownfish', 'goby', 'chaeto', 'xyz', 'doge'])(
    '"%s" is none, with nothing near',
    (text) => expect(findCorals(text)).toEqual({ kind: 'none', near: [] }),
  );

  it('shows what is near when only a part is known', () => {
    const found = findCorals('torch hammer');
    expect(found.kind).toBe('none');
    expect(found.kind === 'none' ? found.near.map(({ id }) => id) : []).toEqual(
      expect.arrayContaining(['torch-coral', 'hammer-coral-branching']),
    );
  });

  it('never fails, whatever is typed', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: MAX_CORAL_NAME_LENGTH + 20 }), (text) => {
        expect(['one', 'several', 'none']).toContain(findCorals(text).kind);
      }),
      { numRuns: 60 },
    );
  });

  it('does not mind case, spaces, hyphens or punctuation', () => {
    fc.assert(
      fc.property(fc.constantFrom(...coralNames()), (name) => {
        const shouted = ` ${name.toUpperCase().replace(/ /g, ' - ')}! `;
        expect(leadsTo(shouted)).toEqual(leadsTo(name));
      }),
      { numRuns: 60 },
    );
  });
});

it('suggests accepted and first common names, each once', () => {
  const names = coralNames();
  expect(names).toContain('Torch coral');
  expect(names).toContain('Dipsastraea');
  expect(new Set(names).size).toBe(names.length);
  // Where keepers call a coral by its accepted name the two are one.
  const both = corals.flatMap((coral) => [coral.names.common[0], coral.scientific.accepted]);
  expect(names.toSorted()).toEqual([...new Set(both)].toSorted());
});
