import { describe, expect, it } from 'vitest';
import { salinityCommands } from '../../../commands/salinity.ts';
import { problemOf, runner, textOf } from '../text.ts';

const ask = runner(salinityCommands);

/** S 35 is 1.0264 on 25/25 (EOS-80) and 53.07 mS/cm at 25 °C (PSS-78); fresh water is 1 and 0 by definition. */
describe('/salinity check of water that is known', () => {
  it.each([
    [{ fresh: '1.003' }, /^It reads 0\.003 too high on fresh \(RO\) water/],
    [{ fresh: '2 ppt' }, /^It reads 2 ppt too high on fresh/],
    [{ fresh: '1.000' }, /^It is right on fresh .*does not make it right at 35 ppt/],
    [{ standard: '33 ppt' }, /^It reads 2 ppt too low on the 35 ppt standard/],
    [{ standard: '1.0264' }, /^It is right on the 35 ppt standard/],
    [{ standard: '50 mS/cm' }, /^It reads 3\.1 mS\/cm too low/],
  ])('%o', (input, headline) => expect(ask('check', input).headline).toMatch(headline));

  it('changes nothing in the tank before it is set', () => {
    const given = ask('check', { fresh: '2 ppt', reading: '37 ppt' });
    expect(textOf(given)).toMatch(/off by as much there: about 35 ppt/);
    expect(given.steps.at(-1)).toContain('change nothing in it before that');
  });

  it('asks for a reading', () => expect(problemOf(() => ask('check', {})).field).toBe('reading'));
});
