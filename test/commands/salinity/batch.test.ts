import { describe, expect, it } from 'vitest';
import { salinityCommands } from '../../../commands/salinity.ts';
import { problemOf, runner, textOf } from '../text.ts';

const ask = runner(salinityCommands);
const batch = (input: Record<string, string>) => ask('batch', input);

// EOS-80 at 25/25: 1.023 = 30.54, 1.026 = 34.51, 1.030 = 39.78 ppt. 32 US gal = 121.13 L, 40 US gal = 151.42 L.
describe('/salinity batch', () => {
  it('too weak: 3.97 ppt x 121.13 L x 1 g = 481 g of mix', () => {
    const given = batch({ volume: '32 gal', now: '1.023', goal: '1.026' });
    expect(given.headline).toMatch(
      /^In 32 US gal \(121\.1 L\) of new salt water: add about 48[01] g of salt mix/,
    );
    expect(textOf(given)).toMatch(/35 ppt standard/);
    expect(textOf(given)).toMatch(/In a tank with animals this goes slowly/);
  });

  it('too strong: 39.78 / 34.51 - 1 = 15.3 % more, or 1 - 34.51 / 39.78 = 13.2 % swapped', () =>
    expect(batch({ volume: '40 gal', now: '1.030', goal: '1.026' }).headline).toMatch(
      /add 23\.1 L of fresh \(RO\) water \(15\.3 %\), or, in a full bin, swap 20(?:\.1)? L/,
    ));

  it('leaves a batch that is there, and asks about an unusual goal', () => {
    expect(batch({ volume: '40 gal', now: '35 ppt' }).headline).toMatch(/leave it/);
    const asked = batch({ volume: '20 L', now: '35 ppt', goal: '25 ppt' });
    expect(asked.headline).toMatch(/below the usual .* Is that what you meant\?$/);
    expect(batch({ volume: '20 L', now: '35 ppt', goal: '25 ppt', sure: 'yes' }).headline).toMatch(
      /add 8 L of fresh/,
    );
  });

  it.each([
    [{ volume: '20 L', now: '50 ppt' }, 'now'],
    [{ volume: 'a bin', now: '35 ppt', goal: '33 ppt' }, 'volume'],
  ])('asks about %o', (input, field) => expect(problemOf(() => batch(input)).field).toBe(field));
});
