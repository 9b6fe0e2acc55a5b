import type Database from 'better-sqlite3';
import { openAdditions, type Additions } from './additions.ts';
import { openCorals, type Corals } from './corals.ts';
import { openEntries, type Entries } from './entries.ts';
import { openGlasses, type Glasses } from './glasses.ts';
import { openHandOvers, type HandOvers } from './hand-overs.ts';
import { openHeld, type HeldBodies } from './held.ts';
import { openLeases, type Leases } from './leases.ts';
import { openLightPoints, type LightPoints } from './light-points.ts';
import { openNotices, type Notices } from './notices.ts';
import { openPeople, type People } from './people.ts';
import { openReadings, type Readings } from './readings.ts';
import { openReminders, type Reminders } from './reminders.ts';
import { openServers, type Servers } from './servers.ts';
import { openShownTanks, type ShownTanks } from './shown-tanks.ts';
import { openTanks, type Tanks } from './tanks.ts';
import { openTold, type ToldCases } from './told.ts';
import { openWatches, type Watches } from './watches.ts';

/** The statements of one open file, each prepared once. */
export interface Tables {
  readonly people: People;
  readonly tanks: Tanks;
  readonly entries: Entries;
  readonly readings: Readings;
  readonly additions: Additions;
  readonly watches: Watches;
  readonly glasses: Glasses;
  readonly corals: Corals;
  readonly lightPoints: LightPoints;
  readonly reminders: Reminders;
  readonly leases: Leases;
  readonly handOvers: HandOvers;
  readonly shownTanks: ShownTanks;
  readonly told: ToldCases;
  readonly held: HeldBodies;
  readonly notices: Notices;
  readonly servers: Servers;
}

export function openTables(db: Database.Database, nowMs: () => number): Tables {
  const people = openPeople(db, nowMs);
  const leases = openLeases(db);
  return {
    people,
    leases,
    tanks: openTanks(db),
    entries: openEntries(db, nowMs),
    readings: openReadings(db),
    additions: openAdditions(db),
    watches: openWatches(db),
    glasses: openGlasses(db),
    corals: openCorals(db),
    lightPoints: openLightPoints(db),
    reminders: openReminders(db, leases),
    handOvers: openHandOvers(db, people, nowMs),
    shownTanks: openShownTanks(db, people, nowMs),
    told: openTold(db, people, nowMs),
    held: openHeld(db, nowMs),
    notices: openNotices(db, nowMs),
    servers: openServers(db),
  };
}
