import { describe, expect, it } from 'vitest';
import { asAsked } from '../../../core/language/as-asked.ts';
import type { Kind } from '../../../core/language/kinds.ts';
import type { Level, Slots } from '../../../core/language/slots.ts';
import { scan } from '../../../core/language/tokens.ts';

function slots(first: Level['part'], a: number, second: Level['part'], b: number): Slots {
  return { of: 'alkalinity', levels: [level(first, a), level(second, b)] };
}

function level(part: Level['part'], value: number): Level {
  return { of: 'alkalinity', part, text: String(value), value };
}

describe('two levels as what is asked has them', () => {
  it.each<readonly [Kind, Level['part'], number, Level['part'], number, string]>([
    ['dose-amount', 'was', 7.2, 'now', 8.2, 'now wanted'],
    ['dose-amount', 'was', 8.4, 'now', 7.9, 'was now'],
    ['dose-amount', 'now', 7.2, 'wanted', 8.2, 'now wanted'],
    ['change-goal', 'was', 40, 'now', 10, 'now wanted'],
    ['change-goal', 'was', 10, 'now', 40, 'was now'],
    ['dose-use', 'now', 8.4, 'wanted', 8, 'was now'],
    ['readings-ok', 'was', 7.2, 'now', 8.2, 'was now'],
  ])('%s of %s %d, %s %d: %s', (kind, first, a, second, b, parts) => {
    const given = asAsked(kind, slots(first, a, second, b), scan('7.2 to 8.2'));
    expect(given.levels?.map(({ part }) => part).join(' ')).toBe(parts);
  });

  it('of a salinity only where a rise or fall is asked for', () => {
    const told = slots('was', 33, 'now', 35);
    const asked = (text: string) => asAsked('salinity-adjust', told, scan(text)).levels?.[1]?.part;
    expect(asked('raise it from 33 to 35')).toBe('wanted');
    expect(asked('it went from 33 to 35')).toBe('now');
  });
});
