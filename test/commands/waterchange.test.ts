import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { waterchangeCommands } from '../../commands/waterchange.ts';
import { Problem } from '../../core/problem.ts';
import { runner, textOf } from './text.ts';

const ask = runner(waterchangeCommands);

// Expected numbers: mass balance of a well-mixed tank, worked by hand; paces are common practice, no source.

describe('how many changes: nitrate 80 to 10 by 20 % a week in 55 US gal', () => {
  const found = ask('goal', {
    of: 'nitrates',
    now: '80',
    goal: '10',
    share: '20%',
    every: 'week',
    volume: '55g',
  });
  const text = textOf(found);

  it('counts ten, eleven gallons each', () => {
    expect(found.headline).toMatch(/^10 changes of 20 % .* 80 mg\/L to 10 mg\/L/);
    expect(found.headline).toMatch(/11 US gal \(41\.6 L\) each/);
    expect(text).toMatch(/110 US gal \(416\.4 L\) in all, 63 days/);
    expect(found.headline).toMatch(/63 days/);
    expect(text).toMatch(/9\.32 changes/);
  });

  it('names the other ways, the source and the assumptions', () => {
    expect(text).toMatch(/with 50 % each: 3 changes/);
    expect(text).toMatch(/one change alone: 87\.5 % too much at once/);
    expect(text).toMatch(/30 to 50 % some days apart/);
    expect(text).toMatch(/Test the new salt water/);
    expect(text).toMatch(/Find the source: feeding/);
    expect(text).toMatch(/new salt water taken as 0 mg\/L/);
    expect(text).toMatch(/US gallons/);
  });

  it('does not ignore what the tank makes, nor add shares up', () => {
    expect(text).toMatch(/makes nitrate: it takes longer, or never arrives/);
    expect(text).toMatch(/four of 20 % take out 59 %/);
    expect(text).not.toMatch(/(?<!\d)80 ?%/);
  });

  // 40 -> 32 | 36 -> 28.8 | 32.8 -> 26.2 | 30.2 -> 24.2 | 28.2 -> 22.6 | 26.6 -> 21.2 | 25.2 -> 20.2 | 24.2 -> 19.4.
  it('counts a rise in, and says when it never arrives', () => {
    const input = { of: 'no3', now: '40 ppm', share: '20 %', rise: '4 ppm a week' };
    expect(ask('goal', { ...input, goal: '10 ppm' }).headline).toMatch(
      /never gets to 10 mg\/L: it settles between 16 mg\/L and 20 mg\/L/,
    );
    expect(ask('goal', { ...input, goal: '20 ppm' }).headline).toMatch(/^8 changes/);
  });

  it('asks for no change where there is nothing to do', () => {
    expect(ask('goal', { of: 'no3', now: '5 ppm', goal: '10 ppm', share: '20 %' }).headline).toMatch(
      /^Nothing to do/,
    );
  });
});

describe('where it settles: +4 a week, 15 % each week', () => {
  const found = ask('routine', {
    of: 'no3',
    rise: '4 ppm a week',
    share: '15 %',
    every: '7 days',
    goal: '10',
  });

  it('gives the peak, the trough and the share that holds 10', () => {
    expect(found.headline).toMatch(/settles at 26\.7 mg\/L just before a change and 22\.7 mg\/L just after/);
    expect(found.headline).toMatch(/To peak at 10 mg\/L: 40 % each time/);
    expect(found.steps[0]).toMatch(/Cut what makes nitrate/);
    expect(textOf(found)).toMatch(/steady rise is a model/);
    expect(textOf(found)).not.toMatch(/forever|to zero/);
  });

  it('turns a rise a day or a week into one between changes', () => {
    const rises = ['4 ppm', '4 ppm a week', '0.571429 ppm per day', '4 ppm/week'];
    const headlines = rises.map((rise) => ask('routine', { of: 'no3', rise, share: '15 %' }).headline);
    expect(new Set(headlines).size).toBe(1);
    expect(
      ask('routine', { of: 'no3', rise: '4 ppm a week', share: '15 %', every: '14 days' }).headline,
    ).toMatch(/53\.3 mg\/L/);
  });

  it('is for what builds up', () => {
    expect(() => ask('routine', { of: 'alk', rise: '1 dKH a week', share: '15 %' })).toThrow(/dosing/);
  });
});

describe('continuous against batch: 30 % over a day', () => {
  const found = ask('drip', { share: '30 %' });
  const text = textOf(found);

  it('is not the same: 25.9 %, and 35.7 % equals the batch', () => {
    expect(found.headline).toMatch(/^Not quite the same/);
    expect(found.headline).toMatch(/takes out 25\.9 %/);
    expect(found.headline).toMatch(/pass 35\.7 %/);
    expect(text).toMatch(/three batches of 10 % take out: 27\.1 %/);
    expect(text).toMatch(/Match the two pumps/);
  });

  it('does not call it useless', () => {
    expect(text).toMatch(/It works well/);
    expect(text).not.toMatch(/useless|pointless|waste of/);
  });

  it('follows a reading: 80 L through 400 L at 40 -> 32.7, the batch 32', () => {
    const followed = textOf(ask('drip', { amount: '80 L', volume: '400 L', of: 'no3', now: '40 ppm' }));
    expect(followed).toMatch(/nitrate after one batch: 32 mg\/L/);
    expect(followed).toMatch(/the same volume continuously: 32\.7 mg\/L/);
  });
});

describe('too much alkalinity: 14 to 9 with a mix of 8 in 75 US gal', () => {
  const found = ask('once', { of: 'alk', now: '14 dkh', goal: '9', fresh: '8', volume: '75 gal' });
  const text = textOf(found);

  it('is the wrong tool: 83 %; a third brings 12', () => {
    expect(found.headline).toMatch(/^A water change alone is the wrong tool: .* 83\.3 % at once/);
    expect(found.headline).toMatch(/A third \(25 US gal \(94\.6 L\)\) brings 12 dKH/);
    expect(text).toMatch(/one change of 25 %.*: 12\.5 dKH/);
    expect(text).toMatch(/two changes of 25 %.*: 11\.4 dKH/);
    expect(text).toMatch(/three changes of 25 %.*: 10\.5 dKH/);
  });

  it('tests, stops the sources and lets the tank use the rest', () => {
    expect(found.steps[0]).toMatch(/Test again first/);
    expect(text).toMatch(/Stop every source of alkalinity, limewater too/);
    expect(text).toMatch(/0\.5 dKH a day 5 dKH takes about 10 days/);
    expect(text).toMatch(/Check pH/);
    expect(text).toMatch(/moves alkalinity by 2 dKH at once/);
  });

  it('advises no acid, no change of 80 %, no calcium', () => {
    expect(found.steps.join(' ')).not.toMatch(/acid|vinegar|carbon dioxide|CO2/i);
    expect(text).toMatch(/Do not pull alkalinity down with acid/);
    expect(found.steps.join(' ')).not.toMatch(/8\d(?:\.\d)? %/);
    expect(text).toMatch(/Leave calcium as it is/);
  });
});

describe('one change', () => {
  it('40 by 20 % -> 32, per 100 L where no volume is given', () => {
    const found = ask('once', { of: 'nitrate', now: '40 ppm', share: '20 %' });
    expect(found.headline).toBe(
      'A 20 % change (20 L per 100 L) takes nitrate from 40 mg/L to 32 mg/L. 32 mg/L is still above the usual nitrate (2 to 20 mg/L).',
    );
    expect(textOf(found)).toMatch(/no volume given/);
  });

  it('takes litres over the volume, and new water that is not clean', () => {
    const found = ask('once', {
      of: 'nitrate',
      now: '40 ppm',
      amount: '80 L',
      volume: '400 L',
      fresh: '5 ppm',
    });
    expect(found.headline).toMatch(/A 20 % change \(80 L\) .* to 33 mg\/L/);
  });

  it('raises with a richer mix: 7 to 8 dKH with 11 -> 25 %', () => {
    const found = ask('once', { of: 'kh', now: '7 dKH', goal: '8 dKH', fresh: '11 dKH', volume: '200 L' });
    expect(found.headline).toMatch(/^One change of 25 % \(50 L\)/);
  });

  it('does not put ammonia off by days', () => {
    const found = ask('once', { of: 'ammonia', now: '2 ppm', goal: '0.2 ppm', volume: '100 L' });
    expect(found.headline).toMatch(/Change half now \(50 L\), which brings 1 mg\/L: .* 90 % at once/);
    expect(textOf(found)).not.toMatch(/wrong tool|days apart/);
  });

  it('says when more than about half of the nitrate would go at once', () => {
    expect(textOf(ask('once', { of: 'no3', now: '40 ppm', share: '60 %' }))).toMatch(
      /more than about halve nitrate/,
    );
  });

  it.each([
    { input: { of: 'calcium', now: '400', share: '20 %' }, field: 'fresh' },
    { input: { of: 'ph', now: '8', share: '20 %' }, field: 'of' },
    { input: { of: 'salinity', now: '35', share: '20 %' }, field: 'of' },
    { input: { of: 'no3', now: '40 ppm' }, field: 'share' },
    { input: { of: 'no3', now: '40 ppm', share: '0.2' }, field: 'share' },
    { input: { of: 'no3', now: '40 ppm', share: '0 %' }, field: 'share' },
    { input: { of: 'no3', now: '40 ppm', share: '120 %' }, field: 'share' },
    { input: { of: 'no3', now: '40 ppm', amount: '20 L' }, field: 'volume' },
    { input: { of: 'no3', now: '40 ppm', amount: '200 L', volume: '100 L' }, field: 'amount' },
    { input: { of: 'no3', now: '40 ppm', goal: '50 ppm' }, field: 'goal' },
    { input: { of: 'alk', now: '8 dKH', goal: '9 dKH', fresh: '7 dKH' }, field: 'goal' },
  ])('asks for what is wrong in $input', ({ input, field }) => {
    let problem: unknown;
    try {
      ask('once', input);
    } catch (error) {
      problem = error;
    }
    expect(problem).toBeInstanceOf(Problem);
    expect(problem).toMatchObject({ field });
  });
});

function unit(level: number): string {
  return `${level.toFixed(3)} mg/L`;
}

describe('any numbers', () => {
  it('give an answer without NaN, Infinity or a negative amount, or a Problem', () => {
    const number = fc.oneof(
      fc.constant(0),
      fc.double({ min: 0, max: 1200, noNaN: true }).map((x) => Number(x.toPrecision(3))),
    );
    const share = fc.double({ min: 0, max: 120, noNaN: true }).map((x) => `${x.toFixed(2)} %`);
    const of = fc.constantFrom('nitrate', 'phosphate', 'ammonia');
    fc.assert(
      fc.property(of, number, number, number, share, number, (id, now, goal, fresh, part, rise) => {
        const levels = { of: id, now: unit(now), goal: unit(goal), fresh: unit(fresh), share: part };
        const { goal: aim, ...noGoal } = levels;
        const texts = [
          attempt('once', levels),
          attempt('once', noGoal),
          attempt('goal', { ...levels, rise: unit(rise) }),
          attempt('routine', { ...noGoal, goal: aim, rise: unit(rise) }),
          attempt('drip', noGoal),
        ];
        expect(texts.join('\n')).not.toMatch(/NaN|Infinity|undefined|unknown|(?<![\w(,^ ]|ln )-\d|e[+-]\d/);
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
