import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { salinityCommands } from '../../commands/salinity.ts';
import { Problem } from '../../core/problem.ts';
import { runner, textOf } from './text.ts';

const ask = runner(salinityCommands);

// Salinities: EOS-80 and PSS-78 (Fofonoff & Millard 1983); shares: mass balance by hand; paces: common practice.

describe('lowering 1.030 to 1.026 in 55 US gal', () => {
  const found = ask('adjust', { now: '1.030', goal: '1.026', volume: '55 gal' });
  const text = textOf(found);

  it('gives the single swap and four days', () => {
    expect(found.headline).toMatch(/^Over 4 days swap at most 2\.02 US gal/);
    expect(found.facts[0]?.value).toBe('1.030 SG (39.8 ppt) is high; 33 to 36 ppt is usual.');
    expect(found.facts[1]).toEqual({
      label: 'in one go',
      value: '13.2 % (7.29 US gal (27.6 L))',
      verdict: 'too much with corals or other invertebrates',
    });
    const days = found.facts.slice(2).map(({ value }) => Number(/swap ([\d.]+) US gal/.exec(value)?.[1]));
    expect(days).toEqual([1.81, 1.88, 1.95, 2.02]);
    expect(found.headline).toContain('7.66 US gal (29 L) in all');
    expect(text).toMatch(/39\.8 ppt/);
    expect(text).toMatch(/34\.5 ppt/);
  });

  it('checks the instrument first and removes before it adds', () => {
    expect(found.steps[0]).toMatch(/35 ppt standard/);
    expect(found.steps[1]).toMatch(/take out tank water first/);
    expect(text).toMatch(/Do not pour fresh water into a tank at its full level/);
    expect(text).toMatch(/replace what evaporates with fresh water only/);
  });

  it('steps in ppt where ppt was read, and keeps to the pace given', () => {
    const daysOf = (input: Record<string, string>) =>
      ask('adjust', { now: '38 ppt', ...input }).facts.map(({ label }) => label);
    expect(daysOf({ volume: '100 L' })).toEqual(['in one go', 'day 1', 'day 2', 'day 3']);
    expect(daysOf({ pace: '1.5 ppt' })).toEqual(['Salinity', 'in one go', 'day 1', 'day 2']);
    expect(textOf(ask('adjust', { now: '38 ppt', pace: '1.5 ppt' }))).toMatch(/faster than the usual/);
    expect(() => ask('adjust', { now: '38 ppt', pace: '20 ppt' })).toThrow(Problem);
  });
});

describe('1.024 where 1.025 is usual', () => {
  const found = ask('adjust', { now: '1.024', goal: '1.025', volume: '100 gal' });
  const text = textOf(found);

  it('is left alone when fresh water ran in: 4 % of the volume, about 4 gal', () => {
    expect(found.headline).toMatch(/^Salinity .* is low.* Leave it if the water stands above its mark/);
    expect(found.facts[0]).toMatchObject({ label: 'otherwise', value: expect.stringMatching(/swap/i) });
    expect(text).toMatch(/4 % of the volume \(3\.98 US gal/);
    expect(text).toMatch(/switch the automatic top-off off, add nothing/);
    expect(text).toMatch(/lost on the floor took salt with it/);
  });

  it('advises neither dry salt in the tank nor draining and topping with fresh water', () => {
    expect(text).toMatch(/Do not put dry salt into a tank/);
    expect(found.steps.join(' ')).not.toMatch(/drain|fresh \(RO\) water/);
  });
});

describe('raising', () => {
  it('32 to 35: five days at half the pace, 8.57 L per 100 L by top-off', () => {
    const found = ask('adjust', { now: '32 ppt' });
    expect(found.headline).toMatch(/^Over 5 days swap at most 10\.7 L per 100 L/);
    expect(textOf(found)).toMatch(/day 1: swap 7\.5 L per 100 L/);
    expect(found.headline).toMatch(/44\.79 L per 100 L in all/);
    expect(found.facts[0]).toMatchObject({
      label: 'by topping off with salt water instead',
      value: '8.57 L per 100 L of 35 ppt in all',
    });
    expect(textOf(found)).toMatch(/no volume given/);
  });

  it('refuses water that is not saltier than the goal', () => {
    expect(() => ask('adjust', { now: '32 ppt', goal: '35 ppt', fresh: '35 ppt' })).toThrow(Problem);
    expect(() => ask('adjust', { now: '38 ppt', goal: '35 ppt', fresh: '36 ppt' })).toThrow(Problem);
  });

  it('leaves what an instrument cannot tell apart', () => {
    expect(ask('adjust', { now: '35.1 ppt', goal: '35 ppt' }).headline).toMatch(/^Leave it/);
  });
});

describe('mixing: 15 cups in 30 US gal', () => {
  const found = ask('mix', { volume: '30 gal', goal: '35 ppt', amount: '15 cups' });
  const text = textOf(found);

  it('gives the mass and what a cup would have to weigh', () => {
    expect(text).toMatch(/35\.8 to 36 g per litre, 4\.07 kg/);
    expect(text).toMatch(/36 to 39 g per litre, 4\.09 kg to 4\.43 kg/);
    expect(found.headline).toMatch(/15 cups are right only if one cup of this mix weighs about 273 g/);
    expect(text).toMatch(/each 1 ppt too low: 114 g more \(1 g per litre\)/);
    expect(text).toMatch(/each 1 ppt too high: 0\.857 US gal .* \(2\.9 %\)/);
  });

  it('weighs, and mixes outside the tank', () => {
    expect(found.steps[0]).toMatch(/Weigh the salt/);
    expect(text).toMatch(/never in a tank with animals/);
    expect(text).toMatch(/cups vary 10 to 15 %/);
    expect(text).not.toMatch(/exactly right/);
  });

  it('checks a mass: 3.5 kg in 100 L is 31.4 to 34 ppt (35 x 35/39 and 35 x 35/36)', () => {
    expect(ask('mix', { volume: '100 L', amount: '3.5 kg' }).headline).toMatch(/31\.4 ppt to 34 ppt/);
  });

  it('tells a bag by the batches it makes: 100 L take 3.6 kg, so 35 kg are 9.7 of them, and 150 g make 4.17 L', () => {
    expect(ask('mix', { volume: '100 L', amount: '35 kg' }).headline).toMatch(
      /^35 kg is enough for 9\.7 such batches\. Weigh in 3\.6 kg/,
    );
    expect(ask('mix', { volume: '100 L', amount: '150 g' }).headline).toMatch(
      /^150 g is too little: the batch takes 24 of it; one makes 4\.17 L/,
    );
  });

  it('puts the label of the mix first: 38 g per litre at 35 ppt are 2.28 kg for 60 L, 2.15 kg at 33 (x 33/35)', () => {
    expect(ask('mix', { volume: '60 L', label: '38 g/L' }).headline).toMatch(
      /^By its label \(38 g per litre\): 2\.28 kg\./,
    );
    expect(ask('mix', { volume: '60 L', label: '38 g/L', goal: '33 ppt' }).headline).toContain('2.15 kg');
    expect(() => ask('mix', { volume: '60 L', label: '380 g/L' })).toThrow(Problem);
  });
});

describe('instruments that disagree: 1.026, standard shows 1.028', () => {
  const found = ask('check', { reading: '1.026', standard: '1.028' });
  const text = textOf(found);

  it('finds about 1.0245, 32.5 ppt', () => {
    expect(found.headline).toMatch(/about 32\.5 ppt \(1\.0245 SG\)/);
    expect(found.headline).toMatch(/0\.0016 too high/);
    expect(text).toMatch(/should show: 1\.0264 on 25\/25/);
  });

  it('sets the instrument and reads again first', () => {
    expect(found.steps[0]).toMatch(/Set the refractometer on the 35 ppt standard, not on fresh water/);
    expect(text).toMatch(/Leave the tank as it is until that reading/);
    expect(text).toMatch(/at most 0\.66 ppt/);
    expect(text).toMatch(/0\.001 to 0\.005 off either way and traps bubbles; do not average/);
    expect(text).toMatch(/no emergency/);
  });

  it('says when the instrument is right, and refuses two scales', () => {
    expect(ask('check', { reading: '1.026', standard: '1.0264' }).headline).toMatch(
      /is right on its standard/,
    );
    expect(() => ask('check', { reading: '1.026', standard: '36 ppt' })).toThrow(Problem);
    expect(() => ask('check', { reading: '1.026', standard: '1.015' })).toThrow(Problem);
    expect(ask('check', { reading: '1.026' }).headline).toMatch(/only a 35 ppt standard can tell/);
  });
});

describe('a probe at 45 mS', () => {
  it('is 29.1 ppt compensated, 32.6 at 20 degC; 35 ppt shows 53', () => {
    const found = ask('check', { reading: '45 mS', temperature: '20 C' });
    expect(found.headline).toMatch(
      /45 mS\/cm is not 35 ppt but 29\.1 ppt \(1\.0219 SG\) if the probe corrects to 25 °C/,
    );
    expect(found.headline).toMatch(/35 ppt shows 53 mS\/cm/);
    expect(found.headline).toMatch(/32\.6 ppt at 20 °C/);
    expect(textOf(found)).toMatch(/53 mS\/cm standard/);
  });

  it('asks for the temperature where none was given', () => {
    expect(textOf(ask('check', { reading: '45 mS' }))).toMatch(/no temperature given/);
  });

  it('corrects by the standard: shows 50 on it, so 45 is 47.8 mS/cm (53.071/50)', () => {
    const found = ask('check', { reading: '45 mS', standard: '50 mS' });
    expect(found.headline).toMatch(/^47\.76 mS\/cm is not 35 ppt but 31\.1/);
    expect(found.facts[0]).toMatchObject({
      label: 'Salinity',
      value: expect.stringMatching(/^31\.1 ppt is low/),
    });
  });
});

describe('convert', () => {
  it('1.025 on every scale', () => {
    const text = textOf(ask('convert', { reading: '1.025' }));
    for (const part of ['33.2 ppt', '33.34 g/kg', '50.62 mS/cm', '32.6 ppt on 60F/60F', '32.9 ppt on 20/20'])
      expect(text).toContain(part);
    expect(text).toMatch(/taken as the scale 25 °C \/ 25 °C/);
  });

  it('35 ppt: 1.0269, 1.0266, 1.0264, 53.07 and 47.92 mS/cm, 35.17 g/kg', () => {
    const values = ask('convert', { reading: '35 ppt' }).facts.map(({ value }) => value);
    for (const value of ['1.0269', '1.0266', '1.0264', '53.07 mS/cm', '47.92 mS/cm', '35.17 g/kg'])
      expect(values).toContain(value);
  });

  it('corrects "1.024 ppt" gently', () => {
    const found = ask('convert', { reading: '1.024 ppt' });
    expect(found.headline).toMatch(/^Salinity 1\.024 SG \(31\.9 ppt\) is low.* 1\.024 SG is 31\.9 ppt/);
    expect(textOf(found)).toMatch(/specific gravity, not ppt/);
  });

  it('fresh water has no conductivity here and nothing breaks', () => {
    expect(textOf(ask('convert', { reading: '1.000' }))).not.toMatch(/NaN|conductivity at/);
  });
});

describe('any numbers', () => {
  it('give an answer without NaN, Infinity or a negative amount, or a Problem', () => {
    const gravity = fc.double({ min: 0.99, max: 1.05, noNaN: true }).map((x) => `${x.toFixed(4)} sg`);
    const ppt = fc.double({ min: 0, max: 50, noNaN: true }).map((x) => `${x.toFixed(2)} ppt`);
    const conductivity = fc.double({ min: 0, max: 120, noNaN: true }).map((x) => `${x.toFixed(2)} mS/cm`);
    const salinity = fc.oneof(gravity, ppt, conductivity);
    const litres = fc.double({ min: 0, max: 5000, noNaN: true }).map((x) => `${x.toFixed(2)} L`);
    const degrees = fc.integer({ min: -5, max: 45 }).map((x) => `${x} C`);
    fc.assert(
      fc.property(salinity, salinity, litres, degrees, (a, b, volume, temperature) => {
        const texts = [
          attempt('convert', { reading: a, temperature }),
          attempt('adjust', { now: a, goal: b, volume }),
          attempt('adjust', { now: a, goal: '35 ppt', fresh: b }),
          attempt('mix', { volume, goal: a, amount: '4 kg' }),
          attempt('check', { reading: a, standard: b, temperature }),
          attempt('check', { reading: a, temperature }),
        ];
        expect(texts.join('\n')).not.toMatch(
          /NaN|Infinity|undefined|unknown|(?<=swap |one go it would be )-|e[+-]\d/,
        );
      }),
    );
  });
});

/** The whole text of an answer or of the Problem; any other error fails the test. */
function attempt(name: string, input: Record<string, string>): string {
  try {
    return textOf(ask(name, input));
  } catch (error) {
    if (error instanceof Problem) return error.message;
    throw error;
  }
}
