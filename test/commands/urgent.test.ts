import { describe, expect, it } from 'vitest';
import { PEOPLE_FIRST } from '../../core/care/urgent/people.ts';
import { urgentCard, urgentIds } from '../../core/care/urgent/cards.ts';
import { withDefaults } from '../../commands/defaults.ts';
import { findCommand } from '../../commands/index.ts';
import { urgentCommand } from '../../commands/urgent.ts';
import { medicineDoses } from '../core/care/medicine.ts';
import { twoPersons } from './coral/person.ts';
import { CUT, rendered } from './coral/rendered.ts';
import { beyondShort } from './short-limits.ts';
import { textOf } from './text.ts';
import { inputOf } from '../action.ts';

const run = (input: Record<string, string>) => urgentCommand.run(input, { nowMs: 0 });

/** Every number a card can be given. */
const FULL: Record<string, Record<string, string>> = {
  overheating: { temperature: '31 C' },
  'cold water': { temperature: '64 F' },
  ammonia: { now: '1 ppm' },
  overdose: { now: '14 dKH', goal: '9 dKH', fresh: '8 dKH' },
  'salinity crash': { salinity: '1.018' },
};

describe.each(urgentIds)('/urgent what:%s', (what) => {
  it.each([{}, { volume: '75 gal' }, { volume: '75 gal', ...FULL[what] }])(
    'is shown whole on Discord (%o)',
    (input) => {
      const given = run({ what, ...input });
      const { issues, text } = rendered(given);
      expect(issues).toEqual([]);
      expect(text).not.toMatch(CUT);
      expect(textOf(given)).not.toMatch(/NaN|undefined|Infinity|null/);
      expect(medicineDoses(textOf(given))).toEqual([]);
      expect(given.steps.length).toBeGreaterThanOrEqual(5);
      for (const { command } of given.next) expect(findCommand(command.split(' '))).toBeDefined();
    },
  );

  it('puts people first', () => {
    const given = run({ what });
    expect(given.dangers[0]).toBe(PEOPLE_FIRST);
    expect(given.tone).toBe('urgent');
    expect(given.next[0]).toMatchObject({ command: 'urgent', input: { what: 'person hurt' } });
    expect(given.cautions).toEqual([`Stop and ask: ${urgentCard(what).stop}`]);
    expect(beyondShort(given)).toEqual([]);
  });
});

/**
 * Mass balance of a well-mixed tank; 75 US gal = 283.9 L (1 US gal = 3.785412 L). Specific gravities 25/25 by the 1980
 * equation of state: 1.018 = 24.0 ppt, 1.030 = 39.8. Oxygen: Garcia & Gordon 1992. Heat: from memory.
 */
const numbers: readonly (readonly [
  Record<string, string>,
  readonly { readonly at: RegExp; readonly value: number; readonly tolerance?: number }[],
])[] = [
  [
    { what: 'overdose', now: '14 dKH', goal: '9 dKH', fresh: '8 dKH', volume: '75 gal' },
    [
      { at: /then alkalinity ([\d.]+) dKH/, value: 12.5 },
      { at: /after two ([\d.]+)/, value: 11.375, tolerance: 0.005 },
      { at: /alone: ([\d.]+) %/, value: 83.3 },
      { at: /to (\d+) days, if corals/, value: 10 },
      { at: /([\d.]+) L\), then/, value: 71 },
    ],
  ],
  [
    { what: 'overdose', of: 'calcium', now: '560', goal: '430', fresh: '420', volume: '200 L' },
    [
      { at: /then calcium ([\d.]+)/, value: 525 },
      // 20.04 mg/L Ca per meq/L over 2.804 dKH: 7.147 mg/L a dKH; 130/7.147 = 18.2, so 19 days; at half, 37.
      { at: /about (\d+) to \d+ days/, value: 19 },
      { at: /about \d+ to (\d+) days/, value: 37 },
    ],
  ],
  [
    { what: 'ammonia', now: '1 mg/L', volume: '60 gal' },
    [
      { at: /\(([\d.]+) L\): 1 mg\/L becomes 0\.5/, value: 113.6 },
      { at: /L\): becomes ([\d.]+) mg\/L/, value: 0.75 },
      { at: /after (\d+) changes of a half/, value: 2 },
    ],
  ],
  [
    { what: 'salinity crash', salinity: '25 ppt', volume: '100 L' },
    [
      // 10 ppt at 0.66 a day: 16 days of 0.625.
      { at: /way back: (\d+) days/, value: 16 },
      // (25 - 25.625)/(25 - 40) of 100 L.
      { at: /swap ([\d.]+) L/, value: 4.17 },
      // 101.57 kg x (35.165 - 25.118)/(1000 - 35.165) x 1000.
      { at: /all: ([\d.]+) kg of dry salt/, value: 1.058 },
    ],
  ],
  [
    { what: 'salinity crash', salinity: '39.8 ppt', goal: '34.5 ppt', volume: '55 gal' },
    [
      { at: /in one go it would be: ([\d.]+) %/, value: 13.3 },
      { at: /way back: (\d+) days/, value: 4 },
    ],
  ],
  [
    { what: 'burst heater', volume: '100 L' },
    [
      { at: /such change ([\d.]+) %/, value: 60 },
      { at: /two ([\d.]+) %/, value: 36 },
      { at: /three ([\d.]+) %/, value: 21.6 },
    ],
  ],
  [
    { what: 'oxygen loss', volume: '75 gal', temperature: '28 C', salinity: '35 ppt' },
    [
      { at: /most: ([\d.]+) mg\/L/, value: 6.441 },
      { at: /so ([\d.]+) g/, value: 1.829 },
      { at: /20 % change: [\d.]+ US gal \(([\d.]+) L/, value: 56.8 },
    ],
  ],
  [
    { what: 'overheating', volume: '120 L', temperature: '30 C' },
    [
      { at: /no less than (\d+) hours/, value: 2 },
      // 408.3 kJ per 100 L and degree over 334 + 4.18 x 29.
      { at: /about ([\d.]+) kg of frozen/, value: 1.076 },
      { at: /most ([\d.]+) mg\/L at 30/, value: 6.236 },
      { at: /, (\d+) % less/, value: 6.3, tolerance: 0.06 },
    ],
  ],
  [
    { what: 'cold water', volume: '100 L', temperature: '17 C' },
    [
      { at: /no less than (\d+) hours/, value: 5 },
      { at: /about ([\d.]+) L of water at 40/, value: 4.44 },
    ],
  ],
  [
    { what: 'flood' },
    [
      { at: /water: (\d+) g to/, value: 360 },
      { at: /to (\d+) g of bagged/, value: 390 },
    ],
  ],
];

describe.each(numbers)('%o', (input, values) => {
  const text = textOf(run(input)).replaceAll(' \n', '\n');
  it.each(values)('$at is $value', ({ at, value, tolerance = 0.01 }) => {
    const found = at.exec(text)?.[1];
    expect(found, text).toBeDefined();
    expect(Math.abs(Number(found) / value - 1), text).toBeLessThanOrEqual(tolerance);
  });
});

describe('a reading that is no emergency', () => {
  it.each([
    [{ what: 'overheating', temperature: '26 C' }, /not too hot/],
    [{ what: 'cold water', temperature: '26 C' }, /not too cold/],
    [{ what: 'salinity crash', salinity: '35 ppt' }, /no crash/],
    [{ what: 'overdose', now: '8 dKH' }, /nothing to bring down/],
  ])('%o', (input, pattern) => expect(textOf(run(input))).toMatch(pattern));
});

it('limewater that ran away is named as caustic (UN GHS H318, generic data sheets)', () =>
  expect(run({ what: 'overdose', of: 'limewater' }).dangers.join(' ')).toMatch(/caustic: eye protection/));

describe('menus', () => {
  it('reach every emergency within two steps, on buttons', () => {
    const first = urgentCommand.run({}, { nowMs: 0 });
    expect(first.next.length).toBeLessThanOrEqual(10);
    const reached = first.next.map(inputOf).flatMap((input) => {
      const { next } = urgentCommand.run(input, { nowMs: 0 });
      expect(next.length).toBeLessThanOrEqual(10);
      return [input, ...next.map(inputOf)];
    });
    const whats = new Set(reached.map((input) => input['what']));
    expect(urgentIds.filter((id) => !whats.has(id))).toEqual([]);
    for (const given of [first, run({ what: 'something got in' })])
      expect(rendered(given).issues).toEqual([]);
  });
});

describe('the tank in use', () => {
  it('fills in its water and last readings, for the asker alone', () => {
    const [{ keep, say }] = twoPersons();
    say('/log add readings:temp 31.5 C sg 1.026');
    const { hidden } = withDefaults(urgentCommand, { what: 'overheating' }, { nowMs: 0, keep });
    const given = say('/urgent what:overheating');
    expect(hidden).toBe(true);
    expect(given.read.join(' ')).toMatch(/net water of your tank Pantry/);
    expect(textOf(given)).toMatch(/31\.5 to 28 °C in no less than 4 hours/);
    expect(withDefaults(urgentCommand, { what: 'overheating' }, { nowMs: 0 }).hidden).toBe(false);
  });
});
