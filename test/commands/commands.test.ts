import { describe, expect, it } from 'vitest';
import { commands, findCommand } from '../../commands/index.ts';
import { optionsOf } from '../../commands/options.ts';
import { sources } from '../../core/sources.ts';
import { readLine } from '../../bot/terminal/read.ts';

/** The names the product promises. */
const PROMISED = [
  'dose amount', 'dose effect', 'dose use', 'dose solution', 'dose limewater',
  'waterchange once', 'waterchange goal', 'waterchange routine', 'waterchange drip',
  'salinity convert', 'salinity adjust', 'salinity mix', 'salinity check',
  'light hours', 'light dim', 'light ramp', 'light lux',
  'convert', 'about',
]; // prettier-ignore

describe('the list of commands', () => {
  it('has every promised name once', () => {
    const names = commands.map(({ path }) => path.join(' '));
    expect(new Set(names).size).toBe(names.length);
    expect(names).toEqual(expect.arrayContaining(PROMISED));
  });

  it.each(PROMISED)('finds /%s', (name) => expect(findCommand(name.split(' '))?.path.join(' ')).toBe(name));
});

describe.each(commands.map((command) => ({ name: command.path.join(' '), command })))(
  '/$name',
  ({ command }) => {
    it('answers its own example, with sources and without loose ends', () => {
      const line = readLine(command.example, commands);
      if (line.kind !== 'command') throw new Error(`not a command: ${command.example}`);
      expect(line.path).toEqual(command.path);
      const given = command.run(line.input, { nowMs: 0 });
      expect(given.headline).toMatch(/[a-z].*[.:?!]$/s);
      expect(given.sources.length).toBeGreaterThan(0);
      for (const code of given.sources) expect(sources[code].title).not.toBe('');
    });

    it('can be shown on every platform', () => {
      expect(command.summary.length).toBeLessThanOrEqual(100);
      for (const word of command.path) expect(word).toMatch(/^[a-z]{1,32}$/);
      for (const option of optionsOf(command.options)) {
        expect(option.name).toMatch(/^[a-z]{1,32}$/);
        expect(option.description.length).toBeLessThanOrEqual(100);
      }
    });

    it('offers only next steps that work', () => {
      const line = readLine(command.example, commands);
      if (line.kind !== 'command') throw new Error('not a command');
      for (const { command: name, input } of command.run(line.input, { nowMs: 0 }).next) {
        const target = findCommand(name.split(' '));
        expect(target, name).toBeDefined();
        expect(target?.run(input, { nowMs: 0 }).headline).not.toBe('');
      }
    });
  },
);
