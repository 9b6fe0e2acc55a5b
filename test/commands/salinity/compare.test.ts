import { describe, expect, it } from 'vitest';
import { salinityCommands } from '../../../commands/salinity.ts';
import { problemOf, runner, textOf } from '../text.ts';

const ask = runner(salinityCommands);
const compare = (input: Record<string, string>) => ask('compare', input);

// EOS-80 at 25/25: 1.023 = 30.54, 1.025 = 33.19, 1.026 = 34.51 ppt; PSS-78: 53 mS/cm at 25 °C = 34.95.
describe('/salinity compare', () => {
  it('1.026 and 1.023 are 4 ppt apart: nothing is moved until one is proven', () => {
    const given = compare({ first: '1.026', second: '1.023', by: 'refractometer', other: 'swing arm' });
    expect(given.headline).toMatch(/^They are 4 ppt apart, so at least one is wrong\. Change nothing/);
    const text = textOf(given);
    expect(text).toMatch(/refractometer 1\.026: 34\.5 ppt/);
    expect(text).toMatch(/swing arm 1\.023: 30\.5 ppt/);
    expect(text).toMatch(/35 ppt standard on both/);
    expect(text).toMatch(/Do not take the mean/);
    expect(text).not.toMatch(/\bswap\b|average/);
  });

  it.each([
    [{ first: '35 ppt', second: '53 mS/cm' }, /^Both agree .* 0\.1 ppt apart/],
    [{ first: '34 ppt', second: '1.025' }, /^Both agree .* 0\.8 ppt apart/],
    [{ first: '34 ppt', second: '1.023' }, /^They are 3\.5 ppt apart/],
    [{ first: '1.019', second: '1.0192' }, /far too low.*what:salinity crash/],
  ])('%o', (input, headline) => expect(compare(input).headline).toMatch(headline));

  it('asks what was read', () =>
    expect(problemOf(() => compare({ first: 'salty', second: '1.025' })).field).toBe('first'));

  it('says that both agree behind a salinity that cannot wait', () =>
    expect(compare({ first: '1.019', second: '1.0192' }).facts[0]?.value).toMatch(/^Both agree/));
});
