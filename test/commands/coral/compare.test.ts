import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tellingName } from '../../../commands/coral/asked-kind.ts';
import { compareCoralsCommand } from '../../../commands/coral/compare.ts';
import { corals } from '../../../core/corals/coral-list.ts';
import { pairRoom } from '../../../core/corals/pair-room.ts';
import { kind } from '../../core/corals/scenes.ts';
import { problemOf } from '../text.ts';
import { CUT, rendered } from './rendered.ts';

const compare = (a: string, b: string, c?: string) =>
  compareCoralsCommand.run(c === undefined ? { a, b } : { a, b, c }, { nowMs: 0 });

describe('whether they may stand together', () => {
  it.each([
    // Common practice; Arrigoni et al. 2023: different genera.
    ['torch', 'branching hammer', /^Not together: keep 20 cm or more/],
    // Common practice: same genus.
    ['branching hammer', 'branching frogspawn', /^Mostly yes: .* watch them below 3 cm/],
    // Common practice.
    ['galaxea', 'zoas', /^Not together: keep 30 cm/],
    // Griffith 1997: most corals within 10 cm were interacting to the harm of one or both.
    ['toadstool', 'staghorn acropora', /^Not together: keep 10 cm/],
    // Chadwick-Furman & Loya 1992: fungiids do not harm each other.
    ['tongue coral', 'short-tentacle plate coral', /^Mostly yes/],
    // Common practice: zoanthids stand beside each other; one may overgrow the other.
    ['zoas', 'palys', /^Mostly yes: .* leave both room to spread/],
    // From memory: both spread.
    ['gsp', 'pulsing xenia', /spreads over the other/],
  ])('%s and %s', (a, b, pattern) => {
    expect(compare(a, b).headline).toMatch(pattern);
    expect(compare(b, a).headline).toMatch(pattern);
  });

  it('names the worst pair of three', () => {
    const given = compare('torch', 'duncan', 'galaxea');
    expect(given.headline).toMatch(/^Not together: keep 30 cm or more between .*Galaxea.*Of all here/);
    expect(given.facts).toHaveLength(3);
  });

  it('says the same either way round, and never asks to watch closer than to move', () => {
    const any = fc.constantFrom(...corals);
    fc.assert(
      fc.property(any, any, (a, b) => {
        const [one, other] = [pairRoom(a, b), pairRoom(b, a)];
        expect(one.moveBelowCm).toBe(other.moveBelowCm);
        expect(one.watchBelowCm).toBe(other.watchBelowCm);
        expect(one.watchBelowCm).toBeGreaterThanOrEqual(one.moveBelowCm);
      }),
    );
    expect(pairRoom(kind('toadstool-sarcophyton'), kind('acropora-staghorn')).moveBelowCm).toBe(10);
  });
});

describe('the table', () => {
  it('has the letter of its basis behind each number', () => {
    const table = compare('torch', 'acropora staghorn').table;
    expect(table?.rows.find(([label]) => label === 'PAR')).toEqual(['PAR', '75-200 c', '200-450 c']);
    expect(table?.rows.find(([label]) => label === 'a year')).toEqual(['a year', '2-5 cm m', '4-15.3 cm p']);
    expect(table?.rows.find(([label]) => label === 'width')).toEqual(['width', '40 cm m', '50 cm m']);
  });

  it('never has a p behind what is not published', () => {
    for (const entry of corals) {
      const other = entry.id === 'torch-coral' ? 'duncan' : 'torch';
      const cell = (label: string): string =>
        compare(tellingName(entry), other).table?.rows.find(([name]) => name === label)?.[1] ?? '';
      const { light, sting, size, growth, hardiness } = entry;
      const bases = {
        PAR: light.basis,
        begins: light.basis,
        reach: sting.reachBasis,
        clear: sting.keepClearBasis,
        width: size.basis,
        'a year': growth.basis,
        'to keep': hardiness.basis,
      };
      for (const [label, basis] of Object.entries(bases)) {
        const letters = cell(label).split(' ').at(-1) ?? '';
        expect(letters.includes('p'), `${entry.id} ${label}`).toBe(
          basis.some(({ kind: one }) => one === 'published'),
        );
        expect(letters.includes('m'), `${entry.id} ${label}`).toBe(
          basis.some(({ kind: one }) => one === 'memory'),
        );
      }
    }
  });
});

it('fits a message for any three', () => {
  fc.assert(
    fc.property(fc.uniqueArray(fc.constantFrom(...corals), { minLength: 2, maxLength: 3 }), (entries) => {
      const [a = '', b = '', c] = entries.map(tellingName);
      const { issues, text } = rendered(compare(a, b, c));
      expect(issues).toEqual([]);
      expect(text).not.toMatch(CUT);
    }),
    { numRuns: 200 },
  );
});

it('tells palytoxin first, and of no coral twice', () => {
  expect(compare('torch', 'zoas').dangers[0]).toMatch(/^Zoas: May hold palytoxin/);
  expect(problemOf(() => compare('torch', 'Euphyllia glabrescens')).message).toMatch(/twice/);
  expect(problemOf(() => compare('torch', 'acan')).field).toBe('b');
});
