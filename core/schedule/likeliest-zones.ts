import zonesOfRegion from './likeliest-zones.json' with { type: 'json' };

/**
 * The zones somebody with this locale (BCP 47: "en-US", "pt-BR", "de") most likely lives in, the likeliest first; none
 * where nothing is known of the locale. A language alone stands for its likely country.
 *
 * Country of a language: CLDR likely subtags, by `Intl.Locale`. Zones of a country: IANA time zone database, zone1970.tab,
 * from memory; their order, and neighbours of the same language, by numbers of people: common practice, no source.
 */
export function likeliestZones(locale: string | undefined): readonly string[] {
  if (locale === undefined) return [];
  const region = new Intl.Locale(locale).maximize().region ?? '';
  return (zonesOfRegion as Readonly<Record<string, readonly string[]>>)[region] ?? [];
}

/** Where most people live, of all countries there is something on. */
export function populousZones(): readonly string[] {
  return Object.values(zonesOfRegion as Readonly<Record<string, readonly string[]>>).flat();
}
