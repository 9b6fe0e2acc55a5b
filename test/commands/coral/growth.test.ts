import { describe, expect, it } from 'vitest';
import { tellingName } from '../../../commands/coral/asked-kind.ts';
import { growthCommand } from '../../../commands/coral/growth.ts';
import { withDefaults } from '../../../commands/defaults.ts';
import { corals } from '../../../core/corals/coral-list.ts';
import { headsIn, widthOfHeads } from '../../../core/corals/heads.ts';
import { kind } from '../../core/corals/scenes.ts';
import { problemOf, textOf } from '../text.ts';
import { twoPersons } from './person.ts';
import { rendered } from './rendered.ts';

const grow = (coral: string, size?: string) =>
  growthCommand.run(size === undefined ? { coral } : { coral, size }, { nowMs: 0 });

describe('the table', () => {
  it.each([
    // Common practice: three to six times the heads in a good first year, as many as fit. Width: 2 to 5 cm a year, from memory.
    ['torch', '1 head', '12 months', ['9 to 17.2 cm', '1 to 6']],
    ['torch', '2 heads', '12 months', ['11.9 to 17.2 cm', '2 to 6']],
    ['torch', '2 heads', '24 months', ['13.9 to 23 cm', '3 to 10']],
    // Six heads of 7 cm in the first year, 17.2 cm (common practice; width of a head from memory): more than 2 to 5 cm.
    ['torch', '5 cm', '6 months', ['6 to 11.1 cm', '1 to 2']],
    // Madin et al. 2016: 4 to 15.29 cm a year, the high end growth of one edge or branch, so it counts twice.
    ['staghorn acropora', '5 cm', '12 months', ['9 to 36 cm']],
    ['staghorn acropora', '10 cm', '3 months', ['11 to 17.7 cm']],
  ])('%s of %s in %s', (coral, size, when, cells) => {
    const row = grow(coral, size).table?.rows.find(([month]) => month === when) ?? [];
    expect(row[1]).toBe(cells[0]);
    if (size.includes('head')) expect(row[2]).toBe(cells[1]);
    expect(row.length).toBe(coral === 'torch' ? 3 : 2);
  });

  it('has 3, 6, 12 and 24 months, never less than before', () => {
    for (const entry of corals) {
      const rows = grow(tellingName(entry), '4 cm').table?.rows ?? [];
      expect(rows.map(([month]) => month)).toEqual(['3 months', '6 months', '12 months', '24 months']);
      const highs = rows.map(([, width = '']) => Number(/([\d.]+) cm$/.exec(width)?.[1]));
      expect(
        [...highs].sort((a, b) => a - b),
        entry.id,
      ).toEqual(highs);
    }
  });

  // Below 20 cm widths are printed to a tenth, above whole and so rounded up.
  it('counts heads back out of the width they make, where that is printed to a tenth, and never fewer', () => {
    const torch = kind('torch-coral');
    for (let heads = 1; heads <= 60; heads++) {
      const { diameterCm } = widthOfHeads(torch, heads);
      expect(headsIn(torch, diameterCm)).toBeGreaterThanOrEqual(heads);
      if (diameterCm < 20) expect(headsIn(torch, diameterCm)).toBe(heads);
    }
  });

  it('says that a coral does not stop at its usual width, where it comes near it', () => {
    // A torch is let grow to some 40 cm (from memory): 38 cm and 10 cm more in two years.
    expect(textOf(grow('torch', '38 cm'))).toMatch(/does not stop at some 40 cm.*plan to trim/);
    expect(textOf(grow('torch', '10 cm'))).not.toMatch(/does not stop/);
  });

  it('does not print the range of a genus as the percentiles of a species', () => {
    expect(textOf(grow('montipora digitata', '5 cm'))).toMatch(/percentile over the whole genus/);
    expect(textOf(grow('staghorn acropora', '5 cm'))).toMatch(/percentile of 22 wild values of 4 species/);
  });
});

it('names the basis of every number, and calls no memory published', () => {
  expect(textOf(grow('torch', '2 heads'))).toMatch(
    /width rests on: from memory; common practice \(.*\); project rule/,
  );
  expect(textOf(grow('torch', '2 heads'))).not.toMatch(/published/);
  expect(textOf(grow('staghorn acropora', '5 cm'))).toMatch(/width rests on: published: Madin et al\. 2016/);
});

it('asks how big it is, with choices that work', () => {
  const problem = problemOf(() => grow('duncan'));
  expect(problem.field).toBe('size');
  for (const size of problem.choices) expect(grow('duncan', size).headline).toMatch(/in a year/);
});

describe('one of my own', () => {
  const [ada, bea] = twoPersons();
  // Edges 30 - 6 - 6 = 18 cm apart.
  ada.say('/coral add coral:torch at:30 x 25 x 15 cm size:12 cm');
  ada.say('/coral add coral:torch at:60 x 25 x 15 cm size:12 cm label:Gold');

  it('goes by its own width and says when it meets its neighbour', () => {
    const given = ada.say('/coral growth coral:1');
    expect(given.headline).toMatch(/^Torch coral, 12 cm wide now/);
    // Two heads of 12 cm -> six, 17.2 cm, in a good first year: both edges together 5.2 cm, then 5 cm a year (2 to 5 cm
    // of width, from memory): 12 + 12.8 / 5 x 12 = 42.7 months; 18 / 2 is beyond five years.
    expect(given.facts[0]?.value).toMatch(/^Gold, 18 cm off; they meet in 43 months at the soonest/);
  });

  it('takes a label, and a size given now before the one that is kept', () => {
    expect(ada.say('/coral growth coral:gold size:20 cm').headline).toMatch(/^Gold, 20 cm wide now/);
    expect(ada.say('/coral growth coral:duncan size:2 cm').headline).toMatch(/^Duncan coral, 2 cm/);
  });

  it('stays with its owner', () => {
    expect(problemOf(() => bea.say('/coral growth coral:1')).message).toMatch(/do not know/);
    expect(withDefaults(growthCommand, { coral: '1' }, { nowMs: 0, keep: ada.keep }).hidden).toBe(true);
    expect(withDefaults(growthCommand, { coral: 'torch' }, { nowMs: 0 }).hidden).toBe(false);
  });
});

it('fits a message for every coral', () => {
  for (const entry of corals) expect(rendered(grow(tellingName(entry), '6 cm')).issues, entry.id).toEqual([]);
});
