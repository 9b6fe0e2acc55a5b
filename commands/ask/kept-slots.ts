import type { Kind } from '../../core/language/kinds.ts';
import { isOtherWater } from '../../core/language/new-subject.ts';
import type { Level, SlotName, Slots } from '../../core/language/slots.ts';
import type { ParameterId } from '../../core/water/parameter.ts';
import { nameOf } from '../coral/asked-placed.ts';
import { filledVolume, leftOut, loggedDay, loggedLine, loggedText, loggedWords } from '../fill.ts';
import { isFresh } from '../fresh.ts';
import type { Keep, Reading, Tank } from '../keep.ts';

/** A kept tank and the moment it is looked at. */
export interface Kept {
  readonly keep: Keep;
  readonly tank: Tank;
  readonly nowMs: number;
}

/**
 * What is kept of a tank as slots: of every parameter the last reading that is not too old, with its day; the net water;
 * the corals by their names. Empty where there is no tank.
 */
export function keptSlots(keep: Keep, nowMs: number, tank: Tank | undefined = keep.tankInUse()): Slots {
  if (tank === undefined) return {};
  const levels = freshReadings({ keep, tank, nowMs }).map(levelOf);
  const corals = [...new Set(keep.corals(tank.id).map(nameOf))];
  return {
    volume: filledVolume(tank),
    ...(levels.length === 0 ? {} : { levels }),
    ...(corals.length === 0 ? {} : { corals }),
  };
}

/** The last reading of every parameter, where it still says something of today. */
export function freshReadings({ keep, tank, nowMs }: Kept): readonly Reading[] {
  return keep.latest(tank.id).filter((one) => isFresh(one, nowMs));
}

function levelOf(reading: Reading): Level {
  const { parameter: of, value, atMs } = reading;
  return { of, part: 'now', text: loggedText(reading), value, moment: loggedDay(atMs) };
}

/** Whether what is said can be of this tank: it names no clearly different volume. */
export function isOfTank({ volume }: Slots, tank: Tank): boolean {
  return volume === undefined || !isOtherWater(volume, filledVolume(tank));
}

/** Kinds that ask of a coral that stands there: where only one does, it is meant. */
const OF_ONE_CORAL: ReadonlySet<Kind> = new Set([
  'coral-light',
  'par-ok',
  'growth',
  'flow',
  'feed',
  'day-night',
  'coral-symptom',
]);

/** Slots with what is kept in the places that are used and that neither message nor case holds; the lines say from when. */
export function withKept(
  slots: Slots,
  { uses, kind, holdsLevels }: { uses: readonly SlotName[]; kind: Kind; holdsLevels: boolean },
  kept: Kept,
): { readonly slots: Slots; readonly read: readonly string[] } {
  const { keep, tank, nowMs } = kept;
  if (!isOfTank(slots, tank)) return { slots, read: [] };
  const all = keptSlots(keep, nowMs, tank);
  const readings = freshReadings(kept);
  const filled: { -readonly [K in SlotName]?: Slots[K] } = {};
  const read: string[] = [];
  const isOpen = (name: SlotName): boolean => uses.includes(name) && slots[name] === undefined;
  const level = (name: 'now' | 'salinity' | 'temperature', of: ParameterId | undefined): void => {
    const found = isOpen(name) ? readings.find((one) => one.parameter === of) : undefined;
    if (found === undefined) return;
    filled[name] = loggedText(found);
    read.push(loggedLine(found, tank));
  };
  const water = isOpen('volume') ? leftOut('volume', tank, keep) : undefined;
  if (water !== undefined) {
    filled.volume = water.value;
    read.push(water.read);
  }
  if (slots.was === undefined) level('now', slots.of);
  for (const of of ['salinity', 'temperature'] as const) if (slots.of !== of) level(of, of);
  if (isOpen('levels') && !holdsLevels && all.levels !== undefined) {
    filled.levels = all.levels;
    const words = readings.map((one) => `${one.parameter} ${loggedWords(one, tank)}`);
    read.push(`from the log of your tank ${tank.name}: ${words.join(', ')}`);
  }
  if (isOpen('corals') && all.corals?.length === 1 && OF_ONE_CORAL.has(kind)) {
    filled.corals = all.corals;
    read.push(`the one coral kept in your tank ${tank.name}: ${all.corals.join()}`);
  }
  return { slots: { ...filled, ...slots }, read };
}
