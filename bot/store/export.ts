import type { Addition, Entry, Tank } from '../../commands/keep.ts';
import type { Glass, KeptLightPoint, Placing } from '../../commands/placed.ts';
import type { Watch } from '../../commands/watch.ts';
import type { ChosenUnits } from '../../core/quantity/chosen-units.ts';
import { parameter } from '../../core/water/parameter.ts';
import {
  exportHandOver,
  exportNotice,
  exportReminder,
  iso,
  type ExportedHandOver,
  type ExportedNotice,
  type ExportedReminder,
} from './export-reminders.ts';
import { exportHeld, type ExportedHeld } from './export-held.ts';
import { exportShowings, type ExportedShowing } from './export-shown.ts';
import { exportTold, type ExportedTold } from './export-told.ts';
import type { Tables } from './tables.ts';

/**
 * Everything kept of one member, as plain JSON. Times are ISO 8601 in UTC. Volumes are litres, masses grams; a value
 * stands beside its unit. Ids are the numbers that the bot's answers use.
 */
export interface MemberExport {
  readonly format: 'sumpside-member';
  readonly version: 1;
  readonly exportedAt: string;
  readonly discordId: string;
  /** Absent where nothing is kept. */
  readonly keptSince: string | undefined;
  /** IANA name. */
  readonly zone: string | undefined;
  /** Chosen for everything that is not about a tank with units of its own, by symbol. */
  readonly units: ChosenUnits;
  /** BCP 47 tag of their Discord's language and country. */
  readonly locale: string | undefined;
  readonly tankInUse: number | undefined;
  readonly tanks: readonly ExportedTank[];
  readonly reminders: readonly ExportedReminder[];
  /** Newest first. */
  readonly handOvers: readonly ExportedHandOver[];
  /** Of now. */
  readonly shownTanks: readonly ExportedShowing[];
  /** What was told in threads and posts in the last days, the latest first. */
  readonly told: readonly ExportedTold[];
  /** Answers that can be opened again, and calls of buttons, the latest first. */
  readonly held: readonly ExportedHeld[];
  /** What the member has not been shown yet. */
  readonly notices: readonly ExportedNotice[];
}

export interface ExportedTank extends Tank {
  /** In the order they were typed. */
  readonly entries: readonly ExportedEntry[];
  /** Oldest first. */
  readonly additions: readonly ExportedAddition[];
  readonly watches: readonly ExportedWatch[];
  /** Inside, cm. */
  readonly glass: Glass;
  /** In the order they came. Spots in cm from the left, from the front, up from the bottom. */
  readonly corals: readonly Placing[];
  /** Oldest first; light in umol m-2 s-1. */
  readonly lightPoints: readonly ExportedLightPoint[];
}

export interface ExportedWatch extends Watch {
  /** Unit of the borders. */
  readonly unit: string;
}

export interface ExportedLightPoint extends Omit<KeptLightPoint, 'atMs'> {
  readonly measuredAt: string;
}

export interface ExportedEntry {
  readonly id: number;
  readonly testedAt: string;
  readonly typedAt: string;
  readonly note: string | undefined;
  readonly values: readonly { readonly parameter: string; readonly value: number; readonly unit: string }[];
}

export interface ExportedAddition extends Omit<Addition, 'atMs'> {
  readonly addedAt: string;
  /** Unit of the rise. */
  readonly unit: string;
}

export function exportMember(tables: Tables, discordId: string, nowMs: number): MemberExport {
  const { people, tanks, entries, additions, watches, glasses, corals, lightPoints } = tables;
  const { reminders, handOvers, shownTanks, told, held, notices } = tables;
  const person = people.keyOf(discordId);
  const sinceMs = people.sinceMs(person);
  return {
    format: 'sumpside-member',
    version: 1,
    exportedAt: iso(nowMs),
    discordId,
    keptSince: sinceMs === undefined ? undefined : iso(sinceMs),
    zone: people.zone(person),
    units: people.units(person),
    locale: people.locale(person),
    tankInUse: tanks.inUse(person)?.id,
    tanks: tanks.all(person).map((tank) => ({
      ...tank,
      entries: entries.all(person, tank.id).map(exportEntry),
      additions: additions.select(person, tank.id, {}).map(exportAddition),
      watches: watches.all(person, tank.id).map(exportWatch),
      glass: glasses.get(person, tank.id),
      corals: corals.all(person, tank.id),
      lightPoints: lightPoints.all(person, tank.id).map(exportLightPoint),
    })),
    reminders: reminders.all(person).map(exportReminder),
    handOvers: handOvers.all(person).map((handOver) => exportHandOver(handOver, discordId)),
    shownTanks: exportShowings(shownTanks, person),
    told: told.all(person).map(exportTold),
    held: held.all(discordId).map(exportHeld),
    notices: notices.all(person).map(exportNotice),
  };
}

function exportWatch(watch: Watch): ExportedWatch {
  return { ...watch, unit: parameter(watch.parameter).unit };
}

function exportEntry({ id, atMs, madeMs, note, values }: Entry): ExportedEntry {
  const withUnits = values.map((each) => ({ ...each, unit: parameter(each.parameter).unit }));
  return { id, testedAt: iso(atMs), typedAt: iso(madeMs), note, values: withUnits };
}

function exportAddition({ atMs, ...addition }: Addition): ExportedAddition {
  return { ...addition, addedAt: iso(atMs), unit: parameter(addition.parameter).unit };
}

function exportLightPoint({ atMs, ...point }: KeptLightPoint): ExportedLightPoint {
  return { ...point, measuredAt: iso(atMs) };
}
