import { describe, expect, it } from 'vitest';
import { waterCommands } from '../../../commands/water.ts';
import { problemOf, runner, textOf } from '../text.ts';

const ask = runner(waterCommands);
const spill = (input: Record<string, string>) => ask('spill', input);

// 120 cm x 50 cm x 4 cm = 24,000 cm3 = 24 L.
describe('/water spill', () => {
  it.each([
    [
      { drains: '120 x 50 x 4 cm', pipes: '2 L', room: '20 L' },
      /^Not enough room: 26 L runs back .* takes 20 L, 6 L spills\.$/,
    ],
    [{ drains: '120 x 50 x 4 cm' }, /^24 L runs back .* needs that much free/],
    [{ drains: '24 L', room: '25 L' }, /^Only just: 24 L/],
    // 60 cm x 40 cm x 15 cm = 36 L.
    [{ drains: '24 L', room: '60 x 40 x 15 cm' }, /^It holds: 24 L runs back .* takes 36 L\.$/],
  ])('%o', (input, headline) => expect(spill(input).headline).toMatch(headline));

  it('minds mains, and the salt that spilled', () => {
    const text = textOf(spill({ drains: '26 L', room: '20 L' }));
    expect(text).toMatch(/drip loop/);
    expect(text).toMatch(/breaker first/);
    expect(text).toMatch(/replace it with salt water/);
    expect(textOf(spill({ drains: '10 L', room: '20 L' }))).not.toMatch(/replace it with salt water/);
  });

  it.each([
    [{ drains: 'some' }, 'drains'],
    [{ drains: '10 L', room: '-3 L' }, 'room'],
  ])('asks about %o', (input, field) => expect(problemOf(() => spill(input)).field).toBe(field));
});
