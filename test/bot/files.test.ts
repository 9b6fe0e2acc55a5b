import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { extensionOf, readText, safeName } from '../../bot/files.ts';
import { MAX_FILE } from '../../commands/options.ts';

describe('safeName', () => {
  it.each([
    ['Alk trend!', 'png', 'alk-trend.png'],
    ['trend.PNG', 'png', 'trend.png'],
    ['../../etc/passwd', 'txt', 'etc-passwd.txt'],
    ['..', 'png', 'sumpside.png'],
    ['', 'json', 'sumpside.json'],
    ['Mürène \u0000 7', 'csv', 'm-r-ne-7.csv'],
  ])('%j as %s is %s', (name, extension, expected) => expect(safeName(name, extension)).toBe(expected));

  it('is a plain name whatever the name', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (name) => {
        expect(safeName(name, extensionOf(name))).toMatch(/^[a-z0-9][a-z0-9-]{0,59}\.[a-z0-9]{1,8}$/);
      }),
    );
  });
});

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const read = (data: Uint8Array) => () => readText('file', 'a.csv', data);

describe('readText', () => {
  it('keeps the byte order mark, line ends and any script', () => {
    const text = '\ufeffday;alk\r\n1;8,3 µ 水\n';
    expect(readText('file', 'a.csv', bytes(text))).toEqual({ name: 'a.csv', text });
  });

  it('takes an empty file and one at the limit', () => {
    expect(readText('file', 'a.csv', new Uint8Array()).text).toBe('');
    expect(readText('file', 'a.csv', new Uint8Array(MAX_FILE).fill(120)).text).toHaveLength(MAX_FILE);
  });

  it('refuses more than that, and what is no text, naming the limit', () => {
    const problem = { name: 'Problem', field: 'file' };
    expect(read(new Uint8Array(MAX_FILE + 1))).toThrow(
      expect.objectContaining({ ...problem, limit: 'at most 2 MB' }),
    );
    expect(read(new Uint8Array([0xff, 0xfe]))).toThrow(
      expect.objectContaining({ ...problem, limit: 'text in UTF-8' }),
    );
    expect(read(bytes('a\0b'))).toThrow(expect.objectContaining(problem));
  });
});
