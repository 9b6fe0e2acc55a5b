import { describe, expect, it } from 'vitest';
import { zoneSaid } from '../../../core/schedule/zone-words.ts';

describe('a zone said in words', () => {
  // Names: IANA time zone database; countries from its file backward, from memory.
  it.each([
    ['remind me at 8pm lisbon time to feed', 'Europe/Lisbon', 'lisbon time'],
    ['at 20:00 in new york check the pump', 'America/New_York', 'in new york'],
    ['9am UK time every sunday', 'Europe/London', 'UK time'],
    ['tomorrow 7am pacific time', 'America/Los_Angeles', 'pacific time'],
    ['friday 18:00 Europe/Berlin', 'Europe/Berlin', 'Europe/Berlin'],
    ['friday 18:00 gmt', 'UTC', 'gmt'],
    ['8 pm buenos aires time', 'America/Argentina/Buenos_Aires', 'buenos aires time'],
  ])('%s', (text, zone, words) => expect(zoneSaid(text)).toEqual({ zone, words }));

  it.each([
    'remind me to buy corals in berlin tomorrow at 8',
    'remind me next time the pump stops',
    'feed the central rock at 8pm',
    'in 3 days',
    'every time in london',
  ])('is none in: %s', (text) => expect(zoneSaid(text)).toBeUndefined());
});
