import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { noticesOf, noticesText } from '../../../bot/deploy/notices.ts';

const { dependencies } = JSON.parse(readFileSync('package.json', 'utf8')) as {
  dependencies: Readonly<Record<string, string>>;
};
const notices = noticesOf('.');

describe('notices of third parties', () => {
  it('name every package that runs with the bot, and none of the tools', () => {
    const names = notices.map(({ name }) => name);
    expect(names).toEqual(expect.arrayContaining(Object.keys(dependencies)));
    expect(names).not.toContain('vitest');
    expect(new Set(notices.map(({ name, version }) => `${name} ${version}`)).size).toBeGreaterThan(40);
  });

  it('hold the text of each direct dependency’s licence', () => {
    const without = notices.filter(({ name, text }) => name in dependencies && text === '');
    expect(without.map(({ name }) => name)).toEqual([]);
  });

  it('hold the licence of the font', () => {
    const font = notices.find(({ name }) => name === 'dejavu-fonts-ttf');
    expect(font?.text).toMatch(/Bitstream Vera Fonts Copyright/);
    expect(noticesText(notices)).toContain('dejavu-fonts-ttf 2.37');
  });
});

describe('the image', () => {
  const lines = readFileSync('Dockerfile', 'utf8').split('\n');

  it('carries the licence, the notices and what is said of the data', () => {
    const [, final = ''] = lines.join('\n').split(/^FROM .*slim$/m);
    for (const file of ['LICENSE', 'core/DATA.md', 'NOTICES.txt'])
      expect(final).toMatch(new RegExp(`COPY .*${file}`));
  });
});

it('DATA.md names each collection with its licence and what was derived', () => {
  const text = readFileSync('core/DATA.md', 'utf8');
  // Madin et al. 2016; the species list of octocorals; the register of marine species.
  for (const name of ['Coral Trait Database', 'Octocoral Trait Database', 'World Register of Marine Species'])
    expect(text).toMatch(new RegExp(`${name}.*\\| Creative Commons Attribution`));
  expect(text).toContain('10.1038/sdata.2016.17');
});
