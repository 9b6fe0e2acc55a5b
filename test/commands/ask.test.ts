import { describe, expect, it } from 'vitest';
import { ask } from '../../commands/ask.ts';
import { findCommand } from '../../commands/index.ts';
import { Problem } from '../../core/problem.ts';
import { textOf } from './text.ts';

const context = { nowMs: 0 };

describe('ask', () => {
  const table: [string, RegExp[]][] = [
    [
      'raise alk 7.2 to 8.4 in 75 gal with soda ash',
      [/^6\.4 g of sodium carbonate/, /3\.2 g a day for 2 days/, /283\.9 L/],
    ],
    ['nitrate 80, 55g, 20% a week, how many to 10', [/^10 changes of 20 %/, /US gallons/]],
    ['1.030 refractometer 55 gal want 1.026', [/^Over 4 days/, /13\.2 %/]],
    ['Raise ALK from 7,2 dKH to 8,4 dKH in 284 L with soda ash', [/^6\.4 g/]],
    ['alk 7.2 want 8.4 soda ash', [/per 100 L/, /2\.27 g/]],
    ['whats 53 mS/cm', [/35(?:\.0)? ppt/]],
  ];
  it.each(table)('%s', (text, patterns) => {
    const shown = textOf(ask(text, context));
    for (const pattern of patterns) expect(shown).toMatch(pattern);
  });

  it('says what it read, as a command that can be typed', () => {
    expect(ask('raise alk 7.2 to 8.4 in 75 gal with soda ash', context).read[0]).toContain(
      '/dose amount of:alkalinity now:7.2 goal:8.4 with:soda ash volume:75 gal',
    );
  });

  it('asks exactly one question back, and each choice answers it', () => {
    const asked = ask('raise alk 3.1 to 3.4 in 75 gal with soda ash', context);
    expect(asked.headline.endsWith('?')).toBe(true);
    expect(asked.next.length).toBeGreaterThan(1);
    for (const { command, input } of asked.next) {
      expect(findCommand(command.split(' '))?.run(input, context).headline).toMatch(/g of sodium carbonate/);
    }
  });

  it('says in at most five lines what it can do when it does not know', () => {
    for (const text of ['hello', 'my fish is sad', 'I have 3 fish and 12 snails']) {
      const lost = ask(text, context);
      expect(1 + lost.steps.length + lost.read.length).toBeLessThanOrEqual(5);
    }
  });

  it('refuses what is too long', () => expect(() => ask('x'.repeat(4000), context)).toThrow(Problem));
});
