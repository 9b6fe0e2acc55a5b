import { describe, expect, it } from 'vitest';
import { room } from './a-room.ts';

describe('why and more', () => {
  it('why shows the working, the remarks and the sources of the last answer', async () => {
    const dose = 'raise alk 7.2 to 8.4 in 75 gal with soda ash';
    const short = await room().type([dose]);
    expect(short).toContain('6.4 g of sodium carbonate');
    expect(short).not.toContain('How it adds up');
    const both = await room().type([dose, 'why']);
    expect(both).toMatch(/How it adds up .*283\.9 L.* Sources .*IUPAC/);
    expect(both).toContain('/dose amount of:alkalinity now:7.2 goal:8.4 with:soda ash volume:75 gal');
  });

  it('more turns the pages of a list until the last', async () => {
    const shown = await room().type([
      '/salinity forecast now:1.025 volume:75 gal',
      '/help about:dose amount',
      'more',
    ]);
    expect(shown).toContain('Page 1 of 2: type more.');
    expect(shown).toContain('Page 2 of 2: type more.');
    expect(await room().type(['/convert amount:75 gal', 'more'])).toContain('That was all of it.');
  });

  it('there is nothing to show more of before the first answer', async () => {
    expect(await room().type(['why?'])).toContain('There is no answer to show more of yet.');
  });
});

describe('done', () => {
  const reminder = '/remind task text:rinse the sponge when:in 1 hour';

  it('settles the one reminder that was just due', async () => {
    const { type } = room();
    await type(['/remind zone zone:UTC', reminder]);
    const shown = await type(['hello', 'done'], 1);
    expect(shown).toMatch(/Due: rinse the sponge, .* When it is done, type done\./);
    expect(shown).toMatch(/> done Done/);
  });

  it('asks which of several, and takes it in words', async () => {
    const { type } = room();
    await type(['/remind zone zone:UTC', reminder, '/remind task text:empty the cup when:in 1 hour']);
    const shown = await type(['hello', 'done', 'cup'], 1);
    expect(shown).toContain('Which one is done?');
    expect(shown).toMatch(/> cup .*empty the cup/);
  });
});
