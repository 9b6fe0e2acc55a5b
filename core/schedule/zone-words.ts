import { fold } from '../language/fold.ts';
import { zoneNames } from './zone.ts';

/**
 * Countries and zones by their everyday names, where they have one clock. IANA time zone database, files backward ("GB",
 * "Eire", "Portugal", "US/Eastern", ...) and zone1970.tab; from memory.
 */
const EVERYDAY: Readonly<Record<string, string>> = {
  uk: 'Europe/London',
  gb: 'Europe/London',
  british: 'Europe/London',
  england: 'Europe/London',
  ireland: 'Europe/Dublin',
  eire: 'Europe/Dublin',
  portugal: 'Europe/Lisbon',
  france: 'Europe/Paris',
  germany: 'Europe/Berlin',
  german: 'Europe/Berlin',
  italy: 'Europe/Rome',
  netherlands: 'Europe/Amsterdam',
  poland: 'Europe/Warsaw',
  sweden: 'Europe/Stockholm',
  norway: 'Europe/Oslo',
  denmark: 'Europe/Copenhagen',
  switzerland: 'Europe/Zurich',
  austria: 'Europe/Vienna',
  greece: 'Europe/Athens',
  turkey: 'Europe/Istanbul',
  iceland: 'Atlantic/Reykjavik',
  japan: 'Asia/Tokyo',
  india: 'Asia/Kolkata',
  israel: 'Asia/Jerusalem',
  egypt: 'Africa/Cairo',
  'us eastern': 'America/New_York',
  eastern: 'America/New_York',
  'us central': 'America/Chicago',
  central: 'America/Chicago',
  'us mountain': 'America/Denver',
  mountain: 'America/Denver',
  'us pacific': 'America/Los_Angeles',
  pacific: 'America/Los_Angeles',
  hawaii: 'Pacific/Honolulu',
  nz: 'Pacific/Auckland',
  'new zealand': 'Pacific/Auckland',
  gmt: 'UTC',
};

let places: ReadonlyMap<string, string> | undefined;

/** Zones by the last part of their name: "lisbon", "new york"; one that two clocks share is left out. */
function byPlace(): ReadonlyMap<string, string> {
  if (places !== undefined) return places;
  const all = new Map<string, string>();
  const shared = new Set<string>();
  for (const name of zoneNames()) {
    const place = (name.split('/').at(-1) ?? name).replaceAll('_', ' ').toLowerCase();
    const before = all.get(place);
    if (before === undefined) all.set(place, name);
    else if (clockOf(before) !== clockOf(name)) shared.add(place);
  }
  for (const place of shared) all.delete(place);
  places = new Map([...all, ...Object.entries(EVERYDAY)]);
  return places;
}

/** The name the runtime keeps a zone under: two spellings of one zone have the same. */
function clockOf(zone: string): string {
  return new Intl.DateTimeFormat('en', { timeZone: zone }).resolvedOptions().timeZone;
}

/** A zone said in words, and the words that say it. */
export interface SaidZone {
  readonly zone: string;
  readonly words: string;
}

const LONGEST = 3;
const WORD = /[a-z]+/g;
/** A clock time right before "in lisbon": a place alone is no zone ("buy corals in berlin"). */
const AFTER_CLOCK = /(?:\d|[ap]m|noon|midnight|o'clock)\s*,?\s*$/;

/** The zone a time is said in: "8pm lisbon time", "at 20:00 in new york", "9am uk time", "8pm Europe/Lisbon". */
export function zoneSaid(text: string): SaidZone | undefined {
  const folded = fold(text);
  const words = [...folded.matchAll(WORD)].map(({ 0: word, index }) => ({
    word,
    start: index,
    end: index + word.length,
  }));
  for (let at = 0; at < words.length; at++) {
    for (let length = Math.min(LONGEST, words.length - at); length > 0; length--) {
      const [first, last] = [words[at], words[at + length - 1]];
      if (first === undefined || last === undefined) continue;
      const zone = byPlace().get(folded.slice(first.start, last.end));
      if (zone === undefined) continue;
      const [before, next] = [words[at - 1], words[at + length]];
      const isTime = next?.word === 'time' && /^\s+$/.test(folded.slice(last.end, next.start));
      const isIn = before?.word === 'in' && AFTER_CLOCK.test(folded.slice(0, before.start));
      const isBehind = zone === 'UTC' && AFTER_CLOCK.test(folded.slice(0, first.start));
      if (!isTime && !isIn && !isBehind) continue;
      const start = before?.word === 'in' || (isTime && before?.word === 'by') ? before.start : first.start;
      return { zone, words: text.slice(start, isTime ? next.end : last.end) };
    }
  }
  return named(text);
}

/** "Europe/Lisbon", as the database writes it. */
function named(text: string): SaidZone | undefined {
  const words = /\b[A-Za-z]+\/[A-Za-z_]+(?:\/[A-Za-z_]+)?\b/.exec(text)?.[0];
  const zone = zoneNames().find((name) => name.toLowerCase() === words?.toLowerCase());
  return zone === undefined || words === undefined ? undefined : { zone, words };
}
