import { describe, expect, it } from 'vitest';
import { waterCommands } from '../../../commands/water.ts';
import { problemOf, runner, textOf } from '../text.ts';

const ask = runner(waterCommands);
const warm = (input: Record<string, string>) => ask('warm', input);

// Heat balance with equal heat capacities, by hand. Usual 24 to 27 °C, 1 °C a day: common practice, no source.
describe('/water warm', () => {
  it.each([
    // 25 - 0.2 x 3 = 24.4; 24 + 1 / 0.2 = 29; (25 - 24) / (29 - 24) = 20 %.
    [
      { now: '25 C', fresh: '22 C', share: '20 %' },
      /^A change of 20 % \(20 L per 100 L\) of 22 °C takes 25 °C to 24\.4 °C/,
    ],
    [
      { now: '24 C', goal: '25 C', share: '20 %', volume: '200 L' },
      /^Make it 29 °C: a change of 20 % \(40 L\)/,
    ],
    [{ now: '24 C', goal: '25 C', fresh: '29 C' }, /^A change of 20 % .* of 29 °C brings 24 °C to 25 °C/],
    // 20 x 7 / (60 - 25) = 4 L; (20 x 18 + 5 x 28) / 25 = 20.
    [
      { now: '18 C', fresh: '60 C', goal: '25 C', volume: '20 L', how: 'in a bin' },
      /^4 L more of 60 °C brings 18 °C to 25 °C/,
    ],
    [
      { now: '18 C', fresh: '28 C', amount: '5 L', volume: '20 L', how: 'in a bin' },
      /^5 L more of 28 °C takes 18 °C to 20 °C/,
    ],
    // 77 °F - 0.1 x 10 °F = 76 °F.
    [{ now: '77 F', fresh: '67 F', share: '10 %' }, /takes 77 °F \(25 °C\) to 76 °F \(24\.4 °C\)/],
  ])('%o', (input, headline) => expect(warm(input).headline).toMatch(headline));

  it('warns of a quick move, of hot water, and of what ends outside the usual', () => {
    const cold = warm({ now: '25 C', fresh: '18 C', share: '20 %' });
    expect(cold.headline).toMatch(/^23\.6 °C is below the usual temperature/);
    expect(textOf(cold)).toMatch(/moves the tank by 1\.4 °C at once; the usual limit is 1 °C a day/);
    expect(warm({ now: '25 C', fresh: '2 C', share: '50 %' }).headline).toMatch(/Do not do that/);
    expect(textOf(warm({ now: '18 C', fresh: '60 C', goal: '25 C', how: 'in a bin' }))).toMatch(/scalds/);
  });

  it('does not heat a tank with hot water', () => {
    // 24 + 2 / 0.1 = 44.
    const made = warm({ now: '24 C', goal: '26 C', share: '10 %' });
    expect(made.headline).toMatch(/^Do not do it with water: .* 44 °C/);
    expect(warm({ now: '24 C', goal: '26 C', fresh: '50 C' }).headline).toMatch(
      /^Do not do it with water so far off/,
    );
  });

  it('asks before it plans towards an unusual goal, and works it out after a yes', () => {
    const input = { now: '25 C', goal: '29 C', share: '50 %' };
    const asked = warm(input);
    expect(asked.headline).toMatch(/above the usual temperature .* Is that what you meant\?$/);
    expect(asked.next.at(-1)?.input).toMatchObject({ sure: 'yes' });
    expect(warm({ ...input, sure: 'yes' }).headline).toMatch(/above the usual.*Make it 33 °C/);
  });

  it.each([
    [{ fresh: '20 C', share: '20 %' }, 'now'],
    [{ now: '25 C' }, 'share'],
    [{ now: '25 C', fresh: '20 C' }, 'share'],
    [{ now: '25 C', fresh: '20 C', goal: '24 C', share: '20 %' }, 'fresh'],
    [{ now: '25 C', fresh: '20 C', goal: '26 C' }, 'goal'],
    [{ now: '25 C', fresh: '20 C', amount: '5 L' }, 'volume'],
    [{ now: 'warm', fresh: '20 C', share: '20 %' }, 'now'],
  ])('asks about %o', (input, field) => expect(problemOf(() => warm(input)).field).toBe(field));
});
