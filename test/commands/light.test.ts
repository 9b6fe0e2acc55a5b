import { describe, expect, it } from 'vitest';
import { lightCommands } from '../../commands/light.ts';
import { sources } from '../../core/sources.ts';
import { textOf } from './text.ts';

/** Those about what is kept are tried with a tank in commands.test.ts. */
const sums = lightCommands.filter((command) => !command.private);

describe('every light command', () => {
  it.each(sums)('$path answers its own example', (command) => {
    const pairs = [...command.example.matchAll(/(\w+):(.+?)(?= \w+:|$)/g)].map(([, name, text]) => [
      name,
      text,
    ]);
    expect(command.example.startsWith(`/${command.path.join(' ')} `)).toBe(true);
    expect(command.summary.length).toBeLessThanOrEqual(100);
    const given = command.run(Object.fromEntries(pairs), { nowMs: 0 });
    expect(given.headline).toMatch(/\d+ (?:PAR|%|h|lux)/);
    for (const part of [given.read, given.facts, given.steps, given.working, given.cautions, given.sources]) {
      expect(part.length).toBeGreaterThan(0);
    }
    for (const code of given.sources) expect(sources[code].title).not.toBe('');
    expect(textOf(given)).not.toMatch(/NaN|Infinity|undefined|unknown PAR/);
  });
});
