import { describe, expect, it } from 'vitest';
import { waterCommands } from '../../../commands/water.ts';
import { problemOf, runner, textOf } from '../text.ts';

const ask = runner(waterCommands);

// Paces are common practice, no source (limits.ts).
describe('/water pace', () => {
  it.each([
    [{ of: 'alkalinity' }, /^At most 0\.5 to 1 dKH of alkalinity a day/],
    [{ of: 'alkalinity', step: '3 dKH' }, /^No, not 3 dKH in one day: take 3 days or more/],
    [{ of: 'calcium', step: '40 ppm' }, /^Yes: 40 mg\/L/],
    // 0.5 meq/L x 2.804 = 1.4 dKH.
    [{ of: 'alk', step: '0.5 meq/L' }, /^No, not 1\.4 dKH in one day: take 2 days/],
    // A difference: 4 x 5 / 9 = 2.22 °C.
    [{ of: 'temperature', step: '4 F' }, /^No, not 2\.22 °C in one day: take 3 days/],
    [{ of: 'temp', step: '0.5 C' }, /^Yes: 0\.5 °C/],
    [{ of: 'sg' }, /1\.33 ppt \(0\.001 in specific gravity\) a day downward and 0\.66 ppt/],
  ])('%o', (input, headline) => expect(ask('pace', input).headline).toMatch(headline));

  it('doses nothing down', () =>
    expect(textOf(ask('pace', { of: 'alkalinity' }))).toMatch(/Going down is not done by dosing/));

  it.each([
    [{ of: 'pH' }, 'of'],
    [{ of: 'beauty' }, 'of'],
    [{ of: 'alkalinity', step: '0 dKH' }, 'step'],
    [{ of: 'temperature', step: 'a lot' }, 'step'],
  ])('asks about %o', (input, field) => expect(problemOf(() => ask('pace', input)).field).toBe(field));
});
