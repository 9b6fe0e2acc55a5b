import { describe, expect, it } from 'vitest';
import { publishedRankings } from '../../../core/corals/aggression.ts';
import { palytoxinCaution } from '../../../core/corals/cautions.ts';
import { coralById, corals } from '../../../core/corals/coral-list.ts';
import { disagreements, disagreementsOn } from '../../../core/corals/disagreements.ts';
import type { CoralEntry } from '../../../core/corals/entry.ts';
import { pairRules } from '../../../core/corals/pair-rules.ts';
import { pairRulesFor } from '../../../core/corals/pairs.ts';
import { selects } from '../../../core/corals/selector.ts';
import { coralSources } from '../../../core/corals/sources.ts';

function coral(id: string): CoralEntry {
  const entry = coralById(id);
  if (entry === undefined) throw new Error(`no coral ${id}`);
  return entry;
}

/** The narrowest rule for two corals: its effect, gap and the id that is harmed. */
function first(one: string, other: string): readonly [string, number, string | undefined] | undefined {
  const [applied] = pairRulesFor(coral(one), coral(other));
  if (applied === undefined) return undefined;
  const { rule } = applied;
  return [rule.effect, rule.gapCm, rule.loser === undefined ? undefined : applied[rule.loser].id];
}

describe('the narrowest rule', () => {
  it.each([
    // Common practice, no source.
    ['torch-coral', 'torch-coral', ['usually tolerated', 3, undefined]],
    ['hammer-coral-wall', 'frogspawn-branching', ['usually tolerated', 3, undefined]],
    ['torch-coral', 'hammer-coral-branching', ['keep apart', 20, 'hammer-coral-branching']],
    ['hydnophora', 'birdsnest-seriatopora', ['never close', 15, undefined]],
    ['zoanthus', 'palythoa', ['tolerated', 0, undefined]],
    ['bubble-tip-anemone', 'acan-lord', ['never close', 25, undefined]],
    // Hidaka & Yamazato 1984: colour morphs of one species kill each other.
    ['galaxea', 'galaxea', ['keep apart', 15, undefined]],
    // Lapid et al. 2004; Lapid & Chadwick 2006: Favites loses to Platygyra.
    ['platygyra', 'favites', ['keep apart', 12, 'favites']],
    ['platygyra', 'fire-coral-millepora', ['watch', 6, undefined]],
    // Chadwick-Furman & Loya 1992: mushroom corals spare each other and harm other stony corals.
    ['plate-coral-fungia', 'cycloseris', ['tolerated', 0, undefined]],
    ['plate-coral-fungia', 'porites', ['keep apart', 8, 'porites']],
    // Langmead & Chadwick-Furman 1999.
    ['lobophyllia', 'pocillopora', ['keep apart', 12, 'pocillopora']],
    ['rhodactis', 'zoanthus', ['keep apart', 6, 'zoanthus']],
    ['rhodactis', 'cyphastrea', ['stand-off', 3, undefined]],
    // Griffith 1997: harm was common within 10 cm.
    ['toadstool-sarcophyton', 'montipora-digitata', ['keep apart', 10, undefined]],
  ] as const)('%s beside %s: %j', (one, other, expected) => {
    expect(first(one, other)).toEqual(expected);
    expect(first(other, one)).toEqual(expected);
  });

  it('still lists the wide rules behind it', () => {
    const rules = pairRulesFor(coral('galaxea'), coral('chalice-echinophyllia'));
    expect(rules.map(({ a }) => a.id)).toEqual(expect.arrayContaining(['galaxea', 'chalice-echinophyllia']));
  });

  it('is silent where nothing is known', () => {
    expect(first('ricordea-florida', 'discosoma')).toBeUndefined();
  });
});

describe('pair rules', () => {
  it('speak of corals that exist', () => {
    for (const rule of pairRules) {
      expect(corals.some((entry) => selects(rule.a, entry))).toBe(true);
      expect(corals.some((entry) => selects(rule.b, entry))).toBe(true);
    }
  });

  it('call a distance published only where a paper gives one: 0, 3 and 10 cm', () => {
    const published = pairRules.filter(({ gapBasis }) => gapBasis.some(({ kind }) => kind === 'published'));
    expect(new Set(published.map(({ gapCm }) => gapCm))).toEqual(new Set([0, 3, 10]));
  });
});

describe('rankings, facts and cautions', () => {
  it('rank Galaxea, Goniopora and free-living fungiids strong in Chagos, Porites weak (Sheppard 1979)', () => {
    const ranking = publishedRankings.find(({ source }) => source === 'Sheppard1979');
    const strong = corals.filter((entry) => ranking?.strong.who.some((who) => selects(who, entry)));
    expect(strong.map(({ id }) => id).sort()).toEqual([
      'acropora-table',
      'cycloseris',
      'galaxea',
      'goniopora',
      'heliofungia',
      'isopora',
      'plate-coral-fungia',
      'tongue-coral',
    ]);
    expect(ranking?.weak?.who.some((who) => selects(who, coral('porites')))).toBe(true);
  });

  it('name sources that were seen', () => {
    const said = [...disagreements, palytoxinCaution];
    for (const { text, basis } of said) {
      expect(text).toMatch(/^[\x20-\x7e]+[^.]$/);
      for (const one of basis)
        if (one.kind === 'published') expect(coralSources[one.source].kind, text).toBe('published');
    }
  });

  it('of a disagreement are told of a coral of the guide each', () => {
    for (const { who, text } of disagreements)
      expect(
        corals.some((entry) => who.some((one) => selects(one, entry))),
        text,
      ).toBe(true);
    expect(disagreementsOn(coral('elegance-coral')).map(({ text }) => text)).toEqual([
      expect.stringMatching(/strong current.*lower flow, which is kept$/),
    ]);
  });

  it('send a person who falls ill after zoanthids to a doctor, and forbid heat and scrubbing', () => {
    expect(palytoxinCaution.text).toMatch(/doctor or a poison centre/);
    expect(palytoxinCaution.text).toMatch(
      /Never boil, bake, steam, microwave, saw, scrub dry or pressure-wash/,
    );
  });
});
