import { describe, expect, it } from 'vitest';
import { checkCommand } from '../../../commands/salinity/check.ts';

const check = (fresh: string, standard: string) => checkCommand.run({ fresh, standard }, { nowMs: 0 });

/** A straight line through both points, by hand; S 35 is 1.0264 on 25/25 (EOS-80, Fofonoff and Millard 1983). */
describe('an instrument read on fresh water and on its standard', () => {
  // (35 - 2)/35 = 0.943; (30 - 2)/0.943 = 29.7
  it('is right where it matters, and its slope is off', () => {
    const given = check('2 ppt', '35 ppt');
    expect(given.headline).toMatch(/right where it matters.*error of the slope/);
    expect(given.facts.map(({ value }) => value).join()).toContain('about 29.7 ppt');
    expect(given.working.join()).toContain('0.943');
  });

  it('is off by as much on both', () => {
    expect(check('2 ppt', '37 ppt').headline).toMatch(/off by as much on both \(2 ppt too high\): an offset/);
  });

  it('is right on fresh water only, so the slope is wrong', () => {
    expect(check('0 ppt', '32 ppt').headline).toMatch(/slope is wrong/);
  });

  it('is right on both', () => {
    expect(check('1.000', '1.0264').headline).toBe('It is right on both: trust it.');
  });
});
