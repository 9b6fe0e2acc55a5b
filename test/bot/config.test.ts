import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readConfig } from '../../bot/config.ts';

describe('readConfig', () => {
  it('has a default for everything; empty counts as absent', () => {
    const defaults = {
      token: undefined,
      apiBase: 'https://discord.com/api',
      dataDir: './var',
      logLevel: 'info',
    };
    expect(readConfig({})).toEqual(defaults);
    expect(readConfig({ DISCORD_TOKEN: ' ', DISCORD_API_BASE: '', LOG_LEVEL: '', PATH: '/bin' })).toEqual(
      defaults,
    );
  });

  it('reads every setting', () => {
    const env = {
      DISCORD_TOKEN: ' abc.def ',
      DISCORD_API_BASE: 'http://127.0.0.1:8080/api',
      DATA_DIR: '/srv/bot',
      LOG_LEVEL: 'warn',
    };
    expect(readConfig(env)).toEqual({
      token: 'abc.def',
      apiBase: 'http://127.0.0.1:8080/api',
      dataDir: '/srv/bot',
      logLevel: 'warn',
    });
  });

  it.each([
    ['DISCORD_API_BASE', 'http://127.0.0.1:8080/api/', 'slash'],
    ['DISCORD_API_BASE', 'http://127.0.0.1:8080/api/v10', 'version'],
    ['DISCORD_API_BASE', 'http://127.0.0.1:8080/api?x=1', 'plain address'],
    ['DISCORD_API_BASE', 'ftp://127.0.0.1/api', 'http or https'],
    ['DISCORD_API_BASE', 'discord', 'http or https'],
    ['LOG_LEVEL', 'loud', 'LOG_LEVEL'],
    ['DISCORD_TOKEN', 'two words', 'no spaces'],
  ])('names %s when it is "%s"', (name, value, part) => {
    expect(() => readConfig({ [name]: value })).toThrow(
      expect.objectContaining({ name: 'Problem', field: name }),
    );
    expect(() => readConfig({ [name]: value })).toThrow(part);
  });

  it('never repeats a token', () => {
    expect(() => readConfig({ DISCORD_TOKEN: 'two words' })).toThrow(/^((?!two words).)*$/);
  });

  it('is documented in .env.example', () => {
    const example = readFileSync(new URL('../../.env.example', import.meta.url), 'utf8');
    const named = [...example.matchAll(/^#? ?([A-Z_]+)=/gm)].map((found) => found[1]);
    expect(named).toEqual(['DISCORD_TOKEN', 'DISCORD_API_BASE', 'DATA_DIR', 'LOG_LEVEL']);
  });
});
