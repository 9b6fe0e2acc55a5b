import { describe, expect, it } from 'vitest';
import { pairNeed } from '../../../core/corals/reach.ts';
import { stingReach } from '../../../core/corals/sting-reach.ts';
import { kind } from './scenes.ts';

describe('pairNeed: [move below, watch below] in cm', () => {
  it.each<readonly [string, string, number, number, string]>([
    ['torch-coral', 'hammer-coral-branching', 20, 20, 'common practice'],
    ['torch-coral', 'torch-coral', 0, 3, 'common practice'],
    ['hammer-coral-branching', 'frogspawn-wall', 0, 3, 'common practice'],
    ['galaxea', 'duncan-coral', 30, 30, 'common practice'],
    ['galaxea', 'galaxea', 15, 30, 'Hidaka & Yamazato 1984, then common practice'],
    ['galaxea', 'goniopora', 30, 30, 'the wider of Sheppard 1979 and common practice'],
    ['platygyra', 'favites', 12, 12, 'Lapid et al. 2004'],
    ['platygyra', 'platygyra', 0, 9, 'project rule from Lapid et al. 2004: mean 5.3 cm, deviation 3.0'],
    ['plate-coral-fungia', 'cycloseris', 0, 0, 'Chadwick-Furman & Loya 1992'],
    ['plate-coral-fungia', 'heliofungia', 0, 15, 'Chadwick-Furman & Loya 1992 against common practice'],
    ['rhodactis', 'cyphastrea', 0, 3, 'Langmead & Chadwick-Furman 1999'],
    ['acropora-table', 'goniopora', 15, 20, 'Sheppard 1979; reach from memory'],
    ['zoanthus', 'palythoa', 0, 0, 'common practice'],
    ['candy-cane-caulastraea', 'duncan-coral', 0, 5, 'reach from memory, both mild'],
    ['bubble-tip-anemone', 'bubble-tip-anemone', 0, 25, 'clone mates (memory) against common practice'],
  ])('%s beside %s: %d, %d (%s)', (one, other, move, watch) => {
    const need = pairNeed(kind(one), kind(other));
    expect([need.moveBelowCm, need.watchBelowCm]).toEqual([move, watch]);
  });

  it('counts the reach of the side upstream 1.5 times (project rule)', () => {
    expect(pairNeed(kind('torch-coral'), kind('duncan-coral')).watchBelowCm).toBe(20);
    expect(pairNeed(kind('torch-coral'), kind('duncan-coral'), 1.5).watchBelowCm).toBe(30);
    expect(pairNeed(kind('torch-coral'), kind('duncan-coral'), 1, 1.5).watchBelowCm).toBe(20);
  });
});

it('a reach of chemicals or of overgrowth is no sting', () => {
  expect(stingReach(kind('toadstool-sarcophyton')).highCm).toBe(0);
  expect(stingReach(kind('green-star-polyps')).highCm).toBe(0);
  expect(stingReach(kind('torch-coral'))).toEqual({ lowCm: 10, highCm: 20, harms: true });
});
