import { describe, expect, it } from 'vitest';
import { withDefaults } from '../../../commands/defaults.ts';
import { suitedCommand } from '../../../commands/coral/suited.ts';
import { levels } from '../../../core/corals/suits.ts';
import { problemOf, textOf } from '../text.ts';
import { twoPersons } from './person.ts';
import { rendered } from './rendered.ts';

const ask = (input: Record<string, string>) => suitedCommand.run(input, { nowMs: 0 });

describe('without a tank', () => {
  it('says what fits, why, and what was not judged', () => {
    const given = ask({ level: 'first year', par: '90 PAR', flow: 'low' });
    expect(given.headline).toMatch(
      /^\d+ of 112 kinds fit \(first year of reefs, 90 PAR, low flow\): look first at/,
    );
    expect(given.read.join()).toMatch(/no tank, so size and neighbours are not judged/);
    const fit = given.facts.filter(({ verdict }) => verdict?.startsWith('fits'));
    expect(fit.length).toBe(8);
    for (const { value } of fit) expect(value).toMatch(/^easy; .* PAR/);
    for (const { label } of fit)
      expect(given.working.join('\n')).toMatch(new RegExp(`^${label}: begins near .*common practice`, 'm'));
  });

  it('is honest of what is wished for', () => {
    const facts = ask({ level: 'first year', wish: 'torch and some acropora, zoas' }).facts;
    const verdict = (label: string) => facts.find((fact) => fact.label === label);
    expect(verdict('Torch coral')).toMatchObject({ verdict: 'does not fit', value: /moderate/ });
    expect(verdict('Staghorn acropora')).toMatchObject({ verdict: 'does not fit', value: /demanding/ });
    expect(verdict('Zoas')).toMatchObject({ verdict: 'fits' });
    expect(ask({ wish: 'acropora' }).read.join()).toMatch(/acropora can mean 5 kinds; 3 of them are tried/);
    expect(ask({ wish: 'a unicorn' }).read).toContain('I know no coral in "a unicorn"');
  });

  it('judges beside what stands there, and does not offer it again', () => {
    const given = ask({ beside: 'toadstool', kind: 'soft' });
    expect(given.headline).toContain('(beside toadstool)');
    const labels = given.facts.map(({ label }) => label);
    expect(labels).not.toContain('Toadstool leather');
    expect(ask({ beside: 'torch', wish: 'zoas' }).facts[0]).toMatchObject({
      label: 'Zoas',
      value: expect.stringContaining('from your torch') as string,
    });
  });

  // 2 x depth^3 = 51 L -> 29 cm deep; a toadstool of 30 to 50 cm (common practice, no source) is too wide for it.
  it('leaves out what outgrows a tank that was told of', () => {
    const given = ask({ volume: '13.5 gal', wish: 'toadstool, ricordea' });
    expect(given.read.join()).toContain('59 x 29 x 29 cm (a guess)');
    expect(given.headline).toMatch(/^Does not fit: Toadstool leather\. Fits: /);
    expect(ask({ volume: '182 L', wish: 'toadstool' }).headline).toMatch(/^Fits: Toadstool leather/);
    expect(ask({ volume: '5 gal', wish: 'condy anemone' }).headline).toMatch(/^Does not fit: Condy/);
  });

  it('names some often wished for that do not fit, and the nearest misses where nothing does', () => {
    const unfit = ask({ level: 'first year' }).facts.filter(({ verdict }) => verdict === 'does not fit');
    expect(unfit.map(({ label }) => label)).toContain('Staghorn acropora');
    const none = ask({ level: 'first year', par: '20 PAR', flow: 'high' });
    expect(none.headline).toMatch(/^None of the 112 kinds/);
    expect(none.facts.length).toBeGreaterThan(0);
    expect(none.facts.every(({ verdict }) => verdict === 'does not fit')).toBe(true);
  });

  it('offers nothing that wants shade for a bright spot, easy ones first and anemones after corals', () => {
    const bright = ask({ level: 'many years', par: '300 PAR', flow: 'high', wish: 'sun coral' });
    expect(bright.facts[0]).toMatchObject({ label: 'Sun coral', verdict: 'does not fit' });
    expect(textOf(bright)).not.toMatch(/Carnation/);
    const open = ask({});
    expect(open.headline).toMatch(/^Nothing is said of light, spot or experience/);
    expect(open.headline).not.toMatch(/anemone/);
    for (const { value } of open.facts.slice(0, 8)) expect(value).toMatch(/^easy/);
  });

  it('says to a beginner what a small-polyp coral wants', () => {
    const { facts } = ask({ level: 'first year', kind: 'small-polyp' });
    const fit = facts.filter(({ verdict }) => verdict?.startsWith('fits'));
    expect(fit.length).toBeGreaterThan(0);
    expect(fit.every(({ value }) => value.includes('alkalinity holds steady'))).toBe(true);
  });

  it('does not take a spot without a tank', () =>
    expect(problemOf(() => ask({ at: 'left, back, low' })).hint).toMatch(/tank new/));

  it('tells palytoxin of those it names', () =>
    expect(ask({ kind: 'zoanthid' }).dangers[0]).toMatch(/May hold palytoxin/));
});

describe('in a tank', () => {
  const [ada, bea] = twoPersons();
  ada.say('/coral add coral:torch at:20 x 42 x 11 cm size:12 cm');
  ada.say('/light measured at:20 x 42 x 11 cm par:120');

  it('judges the spot by its light and its neighbours', () => {
    const given = ada.say('/coral suited level:many years at:25 x 42 x 11 cm wish:hammer, torch');
    expect(given.read.join()).toMatch(
      /judged beside the one coral of your tank.*light there: \d+ to \d+ PAR/,
    );
    const hammer = given.facts.find(({ label }) => label === 'Branching hammer coral');
    expect(hammer).toMatchObject({ verdict: 'does not fit', value: 'sting: your Torch coral is near' });
    expect(given.facts.find(({ label }) => label === 'Torch coral')?.verdict).toMatch(/^fits/);
  });

  it('says from whom to stay away where no spot is named', () =>
    expect(textOf(ada.say('/coral suited level:some years wish:hammer'))).toMatch(
      /keep 20 cm from your Torch coral/,
    ));

  it('keeps it from others', () => {
    expect(textOf(bea.say('/coral suited wish:hammer'))).not.toMatch(/Torch/);
    expect(withDefaults(suitedCommand, {}, { nowMs: 0, keep: ada.keep }).hidden).toBe(true);
    expect(withDefaults(suitedCommand, {}, { nowMs: 0 }).hidden).toBe(false);
  });
});

it('is hidden when a tank is named, in use or not', () => {
  const [ada] = twoPersons();
  const none = { ...ada.keep, tankInUse: () => undefined };
  expect(withDefaults(suitedCommand, { tank: 'Pantry' }, { nowMs: 0, keep: none }).hidden).toBe(true);
  expect(withDefaults(suitedCommand, {}, { nowMs: 0, keep: none }).hidden).toBe(false);
});

it('fits a message whatever is asked', () => {
  for (const level of [undefined, ...levels]) {
    for (const par of [undefined, '15 PAR', '90 PAR', '250 PAR', '600 PAR']) {
      for (const kind of [
        undefined,
        'soft',
        'large-polyp',
        'small-polyp',
        'zoanthid',
        'mushroom',
        'anemone',
      ]) {
        for (const flow of [undefined, 'low', 'high']) {
          const input = Object.entries({
            level,
            par,
            kind,
            flow,
            wish: flow && 'torch, acropora, goniopora, bta, zoas, gsp, scoly',
          });
          const given = ask(
            Object.fromEntries(
              input.flatMap(([key, value]) => (value === undefined ? [] : [[key, value]])),
            ) as Record<string, string>,
          );
          const { issues, text } = rendered(given);
          expect(issues).toEqual([]);
          expect(text).not.toMatch(/undefined|NaN/);
          expect(text.length).toBeLessThan(4000);
        }
      }
    }
  }
});

it('judges a tank younger than half a year like a first year, unless told otherwise', () => {
  const [{ say }] = twoPersons();
  say('/tank edit started:2026-03-01');
  const given = say('/coral suited wish:staghorn');
  expect(given.headline).toMatch(/\(a young tank\)/);
  expect(given.read.join()).toMatch(/runs since 2026-03-01/);
  expect(given.facts[0]?.verdict).toBe('does not fit');
  expect(say('/coral suited level:many years wish:staghorn').facts[0]?.verdict).toMatch(/^fits/);
  say('/tank edit started:2024-03-01');
  expect(say('/coral suited wish:staghorn').headline).not.toMatch(/young/);
});
