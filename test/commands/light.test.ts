import { describe, expect, it } from 'vitest';
import { darkCommand } from '../../commands/light/dark.ts';
import { lightCommands } from '../../commands/light.ts';
import { sources } from '../../core/sources.ts';
import { textOf } from './text.ts';

/** Those about what is kept are tried with a tank in commands.test.ts. */
const sums = lightCommands.filter((command) => !command.private && command.path[1] !== 'dark');

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

const dark = (days?: string) => darkCommand.run(days === undefined ? {} : { days }, { nowMs: 0 });

/** How long corals bear the dark is common practice, no source: it has no sum. */
describe('/light dark', () => {
  it.each([
    ['3 days', /^3 days: no harm\. Two to three days/],
    ['5 days', /^5 days is long: get some light over them sooner\. Two to three days/],
    [undefined, /^Two to three days without light do corals no harm/],
  ])('%s', (days, headline) => expect(dark(days).headline).toMatch(headline));

  it('answers its own example, water and warmth first', () => {
    expect(darkCommand.example).toBe('/light dark days:5 days');
    const { read, steps, dangers, sources: codes } = dark('5 days');
    expect(read).toContain('5 days without light');
    expect(steps[0]).toMatch(/Water movement and warmth count more/);
    expect(dangers).toEqual(['No blackout against algae with corals that need much light.']);
    expect(codes).toEqual(['practice']);
  });
});
