import type Database from 'better-sqlite3';
import { openAdditions, type Additions } from './additions.ts';
import { openEntries, type Entries } from './entries.ts';
import { openPeople, type People } from './people.ts';
import { openReadings, type Readings } from './readings.ts';
import { openTanks, type Tanks } from './tanks.ts';

/** The statements of one open file, each prepared once. */
export interface Tables {
  readonly people: People;
  readonly tanks: Tanks;
  readonly entries: Entries;
  readonly readings: Readings;
  readonly additions: Additions;
}

export function openTables(db: Database.Database, nowMs: () => number): Tables {
  return {
    people: openPeople(db, nowMs),
    tanks: openTanks(db),
    entries: openEntries(db, nowMs),
    readings: openReadings(db),
    additions: openAdditions(db),
  };
}
