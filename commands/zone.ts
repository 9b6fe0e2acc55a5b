import { Problem } from '../core/problem.ts';
import { clean } from '../core/quantity/clean.ts';
import { readClock } from '../core/quantity/dated.ts';
import { likeliestZones, populousZones } from '../core/schedule/likeliest-zones.ts';
import { isZone, zoneNames, zonesAtHour, zonesAtOffset } from '../core/schedule/zone.ts';
import { say } from '../core/wording/say.ts';
import type { NextAction } from './answer.ts';
import { action } from './calls.ts';
import type { OwnContext } from './command.ts';
import type { Keep, Tank } from './keep.ts';
import { textOption } from './options.ts';
import type { Reminder } from './reminder.ts';
import { keepOf } from './tank/asked-tank.ts';

/** Offered where nothing is known of somebody: one or two a continent. */
const COMMON = [
  'Europe/London',
  'Europe/Berlin',
  'America/New_York',
  'America/Los_Angeles',
  'America/Sao_Paulo',
  'Asia/Singapore',
  'Australia/Sydney',
  'Africa/Johannesburg',
];
/** At most so many are offered as choices. */
const MOST_CHOICES = 8;

/** The option `zone` of a command that sets the member's zone. */
export function zoneOption() {
  return textOption('Your time zone, e.g. Europe/Berlin; asked once', {
    suggest: 'zone',
    max: 64,
  }).optional();
}

/** The zone clock times are in, where one is known: the tank's, the member's, the machine's. */
export function knownZone({ keep, zone }: OwnContext, tank?: Tank): string | undefined {
  return tank?.zone ?? keep?.zone() ?? zone;
}

/** @throws Problem where none is known, with the likeliest as choices. */
export function zoneOf(context: OwnContext, tank?: Tank): string {
  const zone = knownZone(context, tank);
  if (zone !== undefined) return zone;
  throw unknown('remind.whichZone', undefined, likeliestFirst(COMMON, context));
}

/** The context with the zone of the tank, or else of the member. */
export function inZone(context: OwnContext, tank?: Tank): OwnContext {
  const zone = knownZone(context, tank);
  return zone === undefined ? context : { ...context, zone };
}

/** A zone, the sentence that tells of it, and what can be done with reminders that are on another clock. */
export interface AskedZone {
  readonly zone: string;
  readonly read: readonly string[];
  readonly next: readonly NextAction[];
}

/** The zone of the option `zone`, which is kept from now on; without it the one that is known. */
export function askedZone(context: OwnContext, given: string | undefined, tank?: Tank): AskedZone {
  if (given === undefined) {
    const zone = zoneOf(context, tank);
    const read = tank?.zone === zone ? [say('remind.byClockOf', { tank: tank.name, zone })] : [];
    return { zone, read, next: [] };
  }
  const zone = readZone(given, context);
  const keep = keepOf(context);
  if (keep.zone() === zone) return { zone, read: [], next: [] };
  keep.setZone(zone);
  const count = onOtherClock(keep, zone).length;
  const read = [say('remind.zoneIsNow', { zone })];
  if (count === 0) return { zone, read, next: [] };
  return {
    zone,
    read: [...read, say('remind.othersStay', { count })],
    next: [action(say('remind.moveOthers', { count }), 'zone', { zone })],
  };
}

/** Reminders that come by another clock than this, and not by the one of their tank or into a channel. */
export function onOtherClock(keep: Keep, zone: string): readonly Reminder[] {
  const own = new Set(keep.tanks().flatMap((tank) => (tank.zone === undefined ? [] : [tank.id])));
  return keep
    .reminders()
    .filter((one) => one.zone !== zone && one.place.kind === 'direct')
    .filter(({ tankId }) => tankId === undefined || !own.has(tankId));
}

/**
 * A zone as a member writes it: "europe/berlin", "new york"; or what their clock shows now: "9pm".
 *
 * @throws Problem with those that fit as choices; and for a fixed offset such as UTC+3, which does not change with the
 * clocks where somebody lives.
 */
export function readZone(given: string, context: Pick<OwnContext, 'nowMs' | 'locale'>): string {
  const wanted = clean(given).replaceAll(' ', '_');
  const exact = zoneNames().find((name) => name.toLowerCase() === wanted);
  if (exact !== undefined) return exact;
  const offset = offsetHoursIn(clean(given));
  if (offset !== undefined)
    throw unknown('remind.fixedZone', given, likeliestFirst(zonesAtOffset(offset, context.nowMs), context));
  if (isZone(wanted)) return wanted.replaceAll(/(?<![a-z])[a-z]/g, (letter) => letter.toUpperCase());
  const clock = readClock(
    clean(given)
      .replace(/^(?:it is|it's|its|now) /, '')
      .replace(/ (?:here|now)$/, ''),
  );
  if (clock !== undefined)
    throw unknown('remind.whichAtHour', given, likeliestFirst(zonesAtHour(clock, context.nowMs), context));
  const fitting = matchingZones(given, context.locale);
  const [only] = fitting;
  if (only !== undefined && fitting.length === 1) return only;
  throw unknown('remind.noSuchZone', given, fitting.length <= MOST_CHOICES ? fitting : []);
}

function unknown(
  key: 'remind.whichZone' | 'remind.fixedZone' | 'remind.whichAtHour' | 'remind.noSuchZone',
  given: string | undefined,
  choices: readonly string[],
): Problem {
  const limit = say('remind.limitZone');
  return new Problem(say(key), { field: 'zone', given, limit, hint: say('remind.hintZone'), choices });
}

/** Eight of them at most, those where somebody with the asker's locale likely lives before all others. */
function likeliestFirst(zones: readonly string[], { locale }: Pick<OwnContext, 'locale'>): readonly string[] {
  const likely = likeliestZones(locale);
  const first = zones === COMMON ? likely : likely.filter((zone) => zones.includes(zone));
  const common = [...COMMON, ...populousZones()].filter((zone) => zones.includes(zone));
  return [...new Set([...first, ...common, ...zones])].slice(0, MOST_CHOICES);
}

/** "utc+3", "gmt -5", "+02:00", "etc/gmt+5" (whose sign is the other way round), in hours east; undefined for all else. */
function offsetHoursIn(text: string): number | undefined {
  const [, area, sign, hours, minutes = '0'] =
    /^(?:(etc\/)?(?:utc|gmt))? ?([+-])(\d{1,2})(?::?(\d{2}))?$/.exec(text) ?? [];
  if (sign === undefined) return undefined;
  const size = Number(hours) + Number(minutes) / 60;
  return (sign === '+') === (area === undefined) ? size : -size;
}

/**
 * Names with a part that begins with, or contains, what was typed: "berl", "new yo"; the likely ones of a locale first,
 * then those that begin so.
 */
export function matchingZones(typed: string, locale?: string): readonly string[] {
  const wanted = clean(typed).replaceAll(' ', '_');
  const likely = likeliestZones(locale);
  const all = zoneNames().map((name) => ({ name, low: name.toLowerCase() }));
  const begins = (low: string): boolean =>
    low.startsWith(wanted) || low.split('/').some((part) => part.startsWith(wanted));
  const placeOf = (name: string): number => (likely.includes(name) ? likely.indexOf(name) : likely.length);
  const rank = ({ name, low }: { name: string; low: string }): number =>
    (begins(low) ? 0 : 1000) + placeOf(name);
  return all
    .filter(({ low }) => low.includes(wanted))
    .sort((a, b) => rank(a) - rank(b))
    .map(({ name }) => name);
}
