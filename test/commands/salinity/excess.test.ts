import { describe, expect, it } from 'vitest';
import { salinityCommands } from '../../../commands/salinity.ts';
import { problemOf, runner, textOf } from '../text.ts';

const ask = runner(salinityCommands);
const excess = (input: Record<string, string>) => ask('excess', input);

// EOS-80 at 25/25: 1.025 = 33.188, 1.024 = 31.867, 1.015 = 19.94 ppt; 1 - 31.867 / 33.188 = 3.98 %.
describe('/salinity excess', () => {
  it('1.024 instead of 1.025 is 4 % of fresh water too much: leave it', () => {
    const given = excess({ now: '1.024', usual: '1.025', volume: '300 L' });
    expect(given.headline).toMatch(
      /^Leave it\. The extra water is fresh, about 4 % of the volume \(11\.9 L\)/,
    );
    const text = textOf(given);
    expect(text).toMatch(/top-off off until the level is back/);
    expect(text).toMatch(/Salt added now stays in/);
    expect(text).not.toMatch(/^add salt|drain/im);
  });

  it('does not wait it out where animals are in danger', () => {
    const given = excess({ now: '1.015', usual: '1.025' });
    expect(given.headline).toMatch(/^Salinity 1\.015 SG .* far too low.*salinity crash/);
    expect(given.headline).not.toMatch(/Leave it/);
    expect(given.next.map(({ command }) => command)).toEqual(['urgent', 'salinity adjust']);
  });

  it('is for a salinity that fell', () =>
    expect(problemOf(() => excess({ now: '1.026', usual: '1.025' })).field).toBe('now'));
});
