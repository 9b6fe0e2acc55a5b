import { Problem } from '../core/problem.ts';
import { clean } from '../core/quantity/clean.ts';
import { isZone, zoneNames } from '../core/schedule/zone.ts';
import type { OwnContext } from './command.ts';
import type { Tank } from './keep.ts';
import { textOption } from './options.ts';
import { keepOf } from './tank/asked-tank.ts';

/** Offered where no zone is known: one or two a continent. */
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
const HINT = 'Type zone:Continent/City, such as Europe/Berlin; names are offered while you type.';
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

/** @throws Problem where none is known, with common ones as choices. */
export function zoneOf(context: OwnContext, tank?: Tank): string {
  const zone = knownZone(context, tank);
  if (zone !== undefined) return zone;
  throw new Problem('Which time zone are you in? I ask once.', {
    field: 'zone',
    limit: 'Continent/City',
    hint: HINT,
    choices: COMMON,
  });
}

/** The context with the zone of the tank, or else of the member. */
export function inZone(context: OwnContext, tank?: Tank): OwnContext {
  const zone = knownZone(context, tank);
  return zone === undefined ? context : { ...context, zone };
}

/** A zone and the sentence that tells of it. */
export interface AskedZone {
  readonly zone: string;
  readonly read: readonly string[];
}

/** The zone of the option `zone`, which is kept from now on; without it the one that is known. */
export function askedZone(context: OwnContext, given: string | undefined, tank?: Tank): AskedZone {
  if (given === undefined) {
    const zone = zoneOf(context, tank);
    return { zone, read: tank?.zone === zone ? [`times by the clock of ${tank.name}: ${zone}`] : [] };
  }
  const zone = readZone(given);
  const keep = keepOf(context);
  if (keep.zone() === zone) return { zone, read: [] };
  keep.setZone(zone);
  return { zone, read: [`your time zone is ${zone} from now on`] };
}

/**
 * A zone as a member writes it: "europe/berlin", "new york".
 *
 * @throws Problem with those that fit as choices.
 */
export function readZone(given: string): string {
  const wanted = clean(given).replaceAll(' ', '_');
  const exact = zoneNames().find((name) => name.toLowerCase() === wanted);
  if (exact !== undefined) return exact;
  if (isZone(wanted)) return wanted.replaceAll(/(?<![a-z])[a-z]/g, (letter) => letter.toUpperCase());
  const fitting = matchingZones(given);
  const [only] = fitting;
  if (only !== undefined && fitting.length === 1) return only;
  throw new Problem('I do not know that time zone.', {
    field: 'zone',
    given,
    limit: 'Continent/City',
    hint: HINT,
    choices: fitting.length <= MOST_CHOICES ? fitting : [],
  });
}

/** Names with a part that begins with, or contains, what was typed: "berl", "new yo"; those that begin so first. */
export function matchingZones(typed: string): readonly string[] {
  const wanted = clean(typed).replaceAll(' ', '_');
  const all = zoneNames().map((name) => ({ name, low: name.toLowerCase() }));
  const rank = (low: string): number =>
    low.startsWith(wanted) || low.split('/').some((part) => part.startsWith(wanted)) ? 0 : 1;
  return all
    .filter(({ low }) => low.includes(wanted))
    .sort((a, b) => rank(a.low) - rank(b.low))
    .map(({ name }) => name);
}
