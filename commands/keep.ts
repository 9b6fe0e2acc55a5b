import type { ChosenUnits } from '../core/quantity/chosen-units.ts';
import type { ParameterId } from '../core/water/parameter.ts';
import type { TankKind } from '../core/water/targets.ts';
import type { CoralKeep } from './placed.ts';
import type { ReminderKeep } from './reminder.ts';
import type { ShownKeep } from './shown.ts';
import type { WatchKeep } from './watch.ts';
import type { HeldKeep } from './held.ts';
import type { ToldKeep } from './told.ts';

/**
 * What one member keeps with the bot: their tanks, readings and additions. A `Keep` is handed to a command already
 * bound to the member who asks. No function takes a person, so no option, button or crafted id can reach another's.
 *
 * Every write has reached the disk when the function returns. Ids are numbers of this member's own rows; an id that is
 * not theirs behaves as one that does not exist.
 */
export interface Keep extends ReminderKeep, CoralKeep, ShownKeep, WatchKeep, ToldKeep, HeldKeep {
  /** The units the member chose for whatever no tank says otherwise of. */
  readonly units: () => ChosenUnits;
  readonly setUnits: (units: ChosenUnits) => void;
  /** The BCP 47 tag noted last, for letters. */
  readonly locale: () => string | undefined;
  /** Notes it where something else is kept of the member already. */
  readonly noteLocale: (locale: string) => void;
  /** In the order they were made; at most `MOST_TANKS`. */
  readonly tanks: () => readonly Tank[];
  /** The tank commands work with when none is named. */
  readonly tankInUse: () => Tank | undefined;
  /** Makes a tank and, when it is the first, puts it in use. */
  readonly addTank: (profile: TankProfile) => Tank;
  readonly editTank: (tankId: number, profile: TankProfile) => Tank | undefined;
  readonly useTank: (tankId: number) => boolean;
  /** Removes the tank with all its entries and additions. */
  readonly removeTank: (tankId: number) => boolean;

  /** Adds one entry (what a member tested at one time) with its readings, all or nothing. */
  readonly addEntry: (tankId: number, entry: NewEntry) => Entry | undefined;
  /** Adds many entries in one transaction, all or nothing; returns how many readings. */
  readonly addEntries: (tankId: number, entries: readonly NewEntry[]) => number;
  /** The entry made last (by when it was typed, not by when it was tested), without removing it. */
  readonly lastEntry: (tankId: number) => Entry | undefined;
  readonly removeEntry: (tankId: number, entryId: number) => boolean;
  /** Oldest first. */
  readonly readings: (tankId: number, query: ReadingQuery) => readonly Reading[];
  /** The newest reading of each parameter ever logged for the tank. */
  readonly latest: (tankId: number) => readonly Reading[];

  readonly addAddition: (tankId: number, addition: NewAddition) => Addition | undefined;
  readonly removeAddition: (tankId: number, additionId: number) => boolean;
  /** Oldest first. */
  readonly additions: (tankId: number, query: TimeRange) => readonly Addition[];

  /** Everything kept of this member, as plain JSON. */
  readonly exportAll: () => unknown;
  /** Removes every row of this member in one transaction. */
  readonly eraseAll: () => void;
}

/** Tanks one member may have. */
export const MOST_TANKS = 20;
/** Longest name of a tank, letters. */
export const MOST_NAME_LETTERS = 40;

export interface TankProfile {
  readonly name: string;
  readonly kind: TankKind;
  /** Water really in the whole system, litres. */
  readonly netVolumeL: number;
  /** The size of the glass, litres, where known. */
  readonly displayVolumeL?: number | undefined;
  /** How the net volume is known, in words: "120 x 50 x 50 cm inside, less 15 % rock". */
  readonly volumeBasis: string;
  /** ISO date. */
  readonly startedOn?: string | undefined;
  readonly instrument?: SalinityInstrument | undefined;
  /** Hours of full light a day. */
  readonly lightHours?: number | undefined;
  /** IANA time zone of a tank that stands elsewhere than its keeper. */
  readonly zone?: string | undefined;
  /** Its own; what is absent is as its keeper chose. */
  readonly units: ChosenUnits;
  /** Own targets, in the parameter's unit; where absent the targets of the kind hold. */
  readonly targets: Partial<Record<ParameterId, readonly [number, number]>>;
}

export interface Tank extends TankProfile {
  readonly id: number;
}

export const salinityInstruments = ['refractometer', 'hydrometer', 'conductivity', 'digital'] as const;
export type SalinityInstrument = (typeof salinityInstruments)[number];

export interface LoggedValue {
  readonly parameter: ParameterId;
  /** In the parameter's own unit (dKH, mg/L, °C, practical salinity, pH). */
  readonly value: number;
}

export interface NewEntry {
  /** When it was tested. */
  readonly atMs: number;
  readonly values: readonly LoggedValue[];
  readonly note?: string | undefined;
}

export interface Entry extends NewEntry {
  readonly id: number;
  /** When it was typed. */
  readonly madeMs: number;
}

export interface Reading extends LoggedValue {
  readonly atMs: number;
  readonly note?: string | undefined;
}

export interface NewAddition {
  readonly atMs: number;
  /** Name of the compound, or undefined where only the rise is known. */
  readonly compound?: string | undefined;
  readonly massG?: number | undefined;
  readonly parameter: ParameterId;
  /** Rise it makes in this tank, in the parameter's own unit. */
  readonly rise: number;
}

export interface Addition extends NewAddition {
  readonly id: number;
}

export interface TimeRange {
  readonly fromMs?: number | undefined;
  readonly toMs?: number | undefined;
}

export interface ReadingQuery extends TimeRange {
  readonly parameter?: ParameterId | undefined;
  /** At most this many, the newest. */
  readonly most?: number | undefined;
}
