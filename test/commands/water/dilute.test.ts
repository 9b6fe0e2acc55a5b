import { describe, expect, it } from 'vitest';
import { waterCommands } from '../../../commands/water.ts';
import { urgentCards } from '../../../core/care/urgent/cards.ts';
import { runner, textOf } from '../text.ts';

const ask = runner(waterCommands);
const dilute = (input: Record<string, string>) => ask('dilute', input);

// Mass balance by hand: 10 g in 100 L are 100 mg/L; a change of share f leaves 1 - f of it.
describe('/water dilute', () => {
  it.each([
    [
      { amount: '10 g', volume: '100 L', share: '30 %' },
      /^10 g in 100 L is 100 mg\/L now.* A change of 30 % leaves 70 mg\/L/,
    ],
    // 50 mL x 80 g/L = 4 g; 40 mg/L to 30 takes a quarter.
    [
      { amount: '50 mL', strength: '80 g/L', volume: '100 L', goal: '30 mg/L' },
      /is 40 mg\/L now.* One change of 25 % takes it to 30 mg\/L/,
    ],
    // 0.5^4 = 1/16: 40 to 2.5.
    [
      { amount: '50 mL', strength: '8 %', volume: '100 L', goal: '2.5 mg/L' },
      /To 2\.5 mg\/L it takes 4 changes of 50 %/,
    ],
    [{ amount: '1 g', volume: '100 L', goal: '20 mg/L' }, /is 10 mg\/L now.* below the 20 mg\/L/],
  ])('%o', (input, headline) => expect(dilute(input).headline).toMatch(headline));

  it('puts people first and claims nothing of the harm', () => {
    const text = textOf(dilute({ amount: '10 g', volume: '100 L' }));
    expect(text).toMatch(/People first/);
    expect(text).toMatch(/nothing of how harmful it is/);
    expect(text).toMatch(/after a change of 50 %: 50 mg\/L/);
  });

  // 3 tbsp = 9 level tsp of 4 to 5 g; 1 dKH in 227.1 L = 6.80 g NaHCO3: 5.3 to 6.6 dKH.
  it('of a salt that is dosed gives the first aid, and what went in', () => {
    const given = dilute({ what: 'baking soda', amount: '3 tbsp', volume: '60 gal' });
    expect(given.headline).toBe(urgentCards.overdose.first);
    expect(given.facts[0]?.value).toMatch(/^3 tbsp .* raises alkalinity by 5\.3 to 6\.6 dKH/);
    expect(given.facts[0]?.value).toMatch(/in 227\.1 L/);
    expect(dilute({ of: 'limewater' }).headline).toBe(urgentCards.overdose.first);
    expect(textOf(dilute({ what: 'sodium nitrate', amount: '3 g', volume: '100 L' }))).toMatch(
      /raises nitrate by 21\.9 mg\/L.*\n.*\n[\s\S]*add nothing more of anything/,
    );
  });

  it('of a cleaner, a spray or copper shows the card first', () => {
    const bleach = dilute({ what: 'bleach', amount: '50 mL', strength: '4 %', volume: '100 L' });
    expect(bleach.headline).toBe(urgentCards['bleach or spray'].first);
    // 50 mL x 40 g/L = 2 g.
    expect(textOf(bleach)).toMatch(/in the water now: 20 mg\/L/);
    const copper = dilute({ what: 'copper sulfate', amount: '1 g', volume: '100 L' });
    expect(copper.headline).toBe(urgentCards['copper or medicine'].first);
    expect(textOf(copper)).not.toMatch(/\d mg\/L/);
  });

  it('withholds nothing because a number is odd, and names what it did not use', () => {
    const odd = dilute({ amount: 'much', volume: 'big', share: '500 %', colour: 'blue' });
    expect(odd.headline).toMatch(/^Stop whatever still goes in/);
    for (const name of ['amount', 'volume', 'share', 'colour'])
      expect(
        odd.unused.some((text) => text.startsWith(name)),
        name,
      ).toBe(true);
    expect(dilute({ what: 'soda ash', amount: '??', volume: '100 L' }).headline).toBe(
      urgentCards.overdose.first,
    );
    expect(textOf(dilute({ amount: '50 mL', volume: '100 L' }))).toMatch(/How strong was it/);
  });
});
