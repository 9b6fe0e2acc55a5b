import { Locale } from 'discord.js';
import { describe, expect, it } from 'vitest';
import zonesOfRegion from '../../../core/schedule/likeliest-zones.json' with { type: 'json' };
import { likeliestZones } from '../../../core/schedule/likeliest-zones.ts';
import { isZone } from '../../../core/schedule/zone.ts';

describe('the likeliest zones', () => {
  it('are there for every locale of Discord', () => {
    for (const locale of Object.values(Locale)) expect(likeliestZones(locale), locale).not.toEqual([]);
  });

  it('are all zones, none twice', () => {
    for (const zones of Object.values(zonesOfRegion)) {
      expect(zones.filter((zone) => !isZone(zone))).toEqual([]);
      expect(new Set(zones).size).toBe(zones.length);
    }
  });

  // IANA time zone database, zone1970.tab, from memory.
  it.each([
    ['en-US', 'America/New_York'],
    ['en-GB', 'Europe/London'],
    ['de', 'Europe/Berlin'],
    ['pt-BR', 'America/Sao_Paulo'],
    ['en-AU', 'Australia/Sydney'],
    ['vi', 'Asia/Ho_Chi_Minh'],
  ])('%s: %s', (locale, zone) => expect(likeliestZones(locale)[0]).toBe(zone));

  it('are none for a country there is nothing on, or no locale', () => {
    expect(likeliestZones('fo-FO')).toEqual([]);
    expect(likeliestZones(undefined)).toEqual([]);
  });
});
