import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { toPng } from '../../../bot/png.ts';
import type { Desk, Reply } from '../../../bot/terminal/desk.ts';
import { replyTo } from '../../../bot/terminal/reply.ts';
import { MAX_FILE } from '../../../commands/options.ts';
import { alt, fileCommands } from '../discord/demo-files.ts';
import { sampleDesk } from './sample.ts';

const style = { width: 80, bold: false };

let folder: string;
let desk: Desk & { readonly reported: unknown[] };

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'sumpside-files-'));
  desk = { ...sampleDesk(), commands: fileCommands, dataDir: join(folder, 'var'), toPng };
});

afterEach(() => rmSync(folder, { recursive: true, force: true }));

const reply = (line: string): Promise<Reply> => replyTo(line, { offers: [] }, desk, style);

/** The path an answer names after "Picture:" or "File:"; a long one has a line of its own. */
function pathIn(text: string, what: string): string {
  return new RegExp(`${what}:\\s+(\\S+)`).exec(text)?.[1] ?? '';
}

const put = (name: string, data: string | Uint8Array): string => {
  const path = join(folder, name);
  writeFileSync(path, data);
  return path;
};

describe('a picture', () => {
  it('is written as PNG under its own name, and told with its alt text', async () => {
    const { text } = await reply('/chart');
    const path = pathIn(text, 'Picture');
    expect(path).toBe(join(folder, 'var', 'pictures', 'alk-trend.png'));
    expect(readFileSync(path).subarray(1, 4).toString()).toBe('PNG');
    expect(text).toContain(alt);
    expect(text.indexOf(alt)).toBeLessThan(text.indexOf('Do this'));
  });

  it('never takes the place of one that is there', async () => {
    const first = pathIn((await reply('/chart')).text, 'Picture');
    writeFileSync(first, 'mine');
    expect(pathIn((await reply('/chart')).text, 'Picture')).toBe(
      join(folder, 'var', 'pictures', 'alk-trend-2.png'),
    );
    expect(readFileSync(first, 'utf8')).toBe('mine');
  });

  it('that cannot be drawn leaves the answer and the alt text, and is reported', async () => {
    const { text } = await reply('/chart svg:no drawing');
    expect(text).toContain('Picture: it could not be written. That is logged as F1.');
    expect(text).toContain(alt);
    expect(text).toContain('Test again.');
    expect(desk.reported).toHaveLength(1);
  });
});

describe('a file given back', () => {
  it('is written under a safe name', async () => {
    const path = pathIn((await reply('/papers out')).text, 'File');
    expect(path).toBe(join(folder, 'var', 'files', 'my-papers.csv'));
    expect(readFileSync(path, 'utf8')).toBe('day;alk\n1;8,3\n');
  });

  it('is left out and reported where the folder cannot be made', async () => {
    writeFileSync(join(folder, 'var'), 'a file');
    expect((await reply('/papers out')).text).toContain('File: it could not be written.');
    expect(desk.reported).toHaveLength(1);
  });
});

describe('a file taken', () => {
  it('is read from its path, spaces and byte order mark included', async () => {
    const path = put('my papers.csv', '\ufeffday;alk');
    const { text } = await reply(`/papers in file:${path} with:comma`);
    expect(text).toContain('my papers.csv holds 8 characters from feff, comma');
  });

  it('is read again where a choice is picked', async () => {
    const asked = await reply(`/papers in file:${put('a.csv', 'x')} with:guess`);
    const { text } = await replyTo('2', asked, desk, style);
    expect(text).toContain('with:point');
    expect(text).toContain('a.csv holds 1 characters from 78, point');
  });

  it.each([
    ['nothing', () => join(folder, 'missing.csv'), 'There is no such file.'],
    ['a folder', () => folder, 'That is not a file.'],
    ['a path through a file', () => join(put('a.csv', 'x'), 'b.csv'), 'There is no such file.'],
    ['a picture', () => put('a.png', new Uint8Array([0x89, 0x50, 0xff])), 'That file is not plain text.'],
    ['too much', () => put('a.csv', 'x'.repeat(MAX_FILE + 1)), 'too large'],
    ['a device', () => '/dev/zero', 'That is not a file.'],
  ])('is a Problem where the path leads to %s', async (_, path, sentence) => {
    expect((await reply(`/papers in file:${path()}`)).text).toContain(sentence);
    expect(desk.reported).toEqual([]);
  });
});

describe('a table', () => {
  it('is set in aligned columns under its head', async () => {
    const first = await reply('/sheet rows:10 cell:clear');
    expect(first.text).toContain('\n  day  alkalinity  note\n  1    8.3 dKH     clear\n');
    const { text } = await replyTo('more', first, desk, style);
    expect(text).toContain('\n  10   8.3 dKH     clear\n');
  });

  it('is set in words where the page is narrow', async () => {
    const { text } = await replyTo('/sheet rows:1 cell:clear', { offers: [] }, desk, { ...style, width: 20 });
    expect(text.replaceAll(/\s+/g, ' ')).toContain('- day: 1, alkalinity: 8.3 dKH, note: clear');
  });

  it('is not steered by a cell', async () => {
    expect((await reply('/sheet rows:1 cell:\u001B[2Jx')).text).not.toContain('\u001B');
  });
});

describe('nothing is written', () => {
  it('by an answer of text', async () => {
    mkdirSync(join(folder, 'elsewhere'));
    await reply('/sheet rows:1 cell:clear');
    expect(existsSync(desk.dataDir)).toBe(false);
  });
});
