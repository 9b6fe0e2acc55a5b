import { existsSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { describe, expect, it } from 'vitest';
import { commands } from '../commands/index.ts';
import { primers } from '../core/care/primers/cards.ts';
import { corals } from '../core/corals/coral-list.ts';
import { readLine } from '../bot/terminal/read.ts';
import { room } from './bot/terminal/a-room.ts';

const pages = [
  'README.md',
  'DEVELOPERS.md',
  'PRIVACY.md',
  'bot/deploy/running.md',
  'bot/deploy/upgrade.md',
  'bot/deploy/restore.md',
] as const;
const { scripts } = JSON.parse(readFileSync('package.json', 'utf8')) as {
  scripts: Readonly<Record<string, string>>;
};
const names = new Set(commands.map(({ path }) => path.join(' ')));
const firsts = new Set(commands.map(({ path }) => path[0]));
const roomWords = new Set(['/help', '/quit']);

/** The fenced blocks of a language. */
function blocks(text: string, language: string): readonly string[] {
  return [...text.matchAll(new RegExp(`^\`\`\`${language}\n([\\s\\S]*?)^\`\`\``, 'gm'))].map(
    ([, inside = '']) => inside,
  );
}

describe.each(pages)('%s', (page) => {
  const text = readFileSync(page, 'utf8');

  it('names only commands there are', () => {
    const told = [...text.matchAll(/`(\/[a-z][\w-]*(?: [a-z][\w-]*)?)[^`\n]*`/g)].map(
      ([, name = '']) => name,
    );
    for (const name of told) {
      if (name.includes('/', 1) || existsSync(name)) continue;
      const [first = '', second] = name.slice(1).split(' ');
      const known = roomWords.has(`/${first}`) || names.has(first) || firsts.has(first as never);
      expect(known, name).toBe(true);
      if (second !== undefined && !names.has(first) && !roomWords.has(`/${first}`))
        expect(names, name).toContain(`${first} ${second}`);
    }
  });

  it('has only second words there are in its tables', () => {
    for (const row of text.split('\n').filter((line) => line.startsWith('| `/'))) {
      const told = [...(row.split('|')[1] ?? '').matchAll(/`([^`]+)`/g)].map(([, inside = '']) => inside);
      const [first = ''] = (told[0] ?? '').slice(1).split(' ');
      for (const word of told.filter((one) => !one.startsWith('/')))
        expect(names, word).toContain(`${first} ${word}`);
    }
  });

  it('names only scripts and files there are', () => {
    for (const [, script = ''] of text.matchAll(/npm run (?:--silent )?([\w-]+)/g))
      expect(Object.keys(scripts), script).toContain(script);
    for (const [, file = ''] of text.matchAll(/\bdist\/([\w/-]+)\.js/g))
      expect(existsSync(`${file}.ts`), file).toBe(true);
  });

  it('links only to what is there', () => {
    const targets = [...text.matchAll(/\]\(([^)\s]+)\)/g)].map(([, target = '']) => target);
    for (const target of targets.filter((one) => !/^(?:https?:|#)/.test(one)))
      expect(existsSync(normalize(join(dirname(page), target))), target).toBe(true);
  });
});

function typedIn(lines: readonly string[]): readonly string[] {
  return lines.filter((line) => line.startsWith('> ')).map((line) => line.slice(2));
}

/**
 * The blocks of the language "room", typed one after the other into one store: a line after "> " is typed, every other
 * line must be shown after it, in this order; "..." stands for lines left out.
 */
describe('the tour in README.md', () => {
  const tour = blocks(readFileSync('README.md', 'utf8'), 'room').map((block) =>
    block.split('\n').filter((line) => line.trim() !== '...' && line.trim() !== ''),
  );
  it('is long enough to be one, and each step shows something', () => {
    expect(tour.flatMap(typedIn).length).toBeGreaterThanOrEqual(10);
    for (const lines of tour)
      for (const [i, line] of lines.entries())
        if (line.startsWith('> ')) expect(lines[i + 1]?.startsWith('> '), line).toBe(false);
  });

  it('prints what it says', async () => {
    const here = room();
    for (const lines of tour) {
      const text = await here.type(typedIn(lines));
      let at = 0;
      for (const line of lines) {
        const flat = line.trim().replaceAll(/\s+/g, ' ');
        const found = text.indexOf(flat, at);
        expect(found, `"${flat}" in\n${text.slice(at)}`).toBeGreaterThanOrEqual(0);
        at = found + flat.length;
      }
    }
  });
});

it('every line to type in README.md is read', () => {
  const typed = blocks(readFileSync('README.md', 'utf8'), '').flatMap((block) => block.trimEnd().split('\n'));
  for (const line of typed.filter((one) => one.startsWith('/')))
    expect(() => readLine(line, commands), line).not.toThrow();
});

it('README.md counts corals and cards as they are', () => {
  const text = readFileSync('README.md', 'utf8');
  expect(text).toContain(`the guide, ${corals.length} kinds`);
  expect(text).toContain(`${primers.length} short cards`);
});
