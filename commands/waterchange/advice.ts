import { afterChanges } from '../../core/change/exchange.ts';
import { fixed, toUnit } from '../../core/quantity/format.ts';
import type { Fact } from '../answer.ts';
import { plain, type Levels } from './level.ts';
import { percent, type Water } from './pour.ts';
import { limitsOf } from '../../core/water/limits.ts';

/** Above this a single change is doubted, as a fraction. Common practice, no source: not more than about halved. */
export const mostAtOnce = 0.5;

export const matchWater = 'Match the new water to the tank in salinity and temperature, and add it slowly.';
export const netVolume = 'Use the net water: without rock, sand and the air gap.';

export const NOT_HALF =
  'Do not change more than about half the water at once: everything else in it moves too (common practice).';

/** What makes the level, to look for before more water is changed. */
export function causes(levels: Levels): string {
  if (levels.waste)
    return 'Find the source: feeding, dirt in rock, sand and filter, dead animals, top-off water.';
  return 'Find out why it is off before you repeat this: dosing, the mix, or the test.';
}

/** The danger of one change of more than half, by what is measured. */
export function tooMuch(levels: Levels): string {
  if (levels.id === 'ammonia') {
    return 'More than a half at once is for emergencies, with matched water; two of a half, hours apart, are gentler.';
  }
  if (levels.waste)
    return `Do not more than about halve ${levels.about.label} in one change (common practice).`;
  return NOT_HALF;
}

/** A danger where one change moves a dosed parameter by more than its usual limit a day. */
export function tooFast(levels: Levels, after: number): readonly string[] {
  const { about, now, show, waste } = levels;
  const { pace } = limitsOf(levels.id);
  if (waste || pace === undefined) return [];
  const move = Math.abs(after - now);
  if (toUnit(about.kind, move, about.unit) <= pace.up * 1.001) return [];
  return [
    `That moves ${about.label} by ${show(move)} at once, usual is ${pace.up} ${about.unit} a day: over several hours, or change less.`,
  ];
}

/** "two changes of 25 %": level after them. */
export function afterSome(levels: Levels, water: Water, fraction: number, n: number): Fact {
  const { now, fresh, show } = levels;
  const count = ['', 'one change', 'two changes', 'three changes'][n] ?? `${n} changes`;
  const label = `${count} of ${percent(fraction)}`;
  return {
    label: `${label} (${water.part(fraction)}${n > 1 ? ' each' : ''})`,
    value: show(afterChanges({ now, fresh, fraction }, n)),
  };
}

/** The formula of one change with its numbers. */
export function afterWorking(levels: Levels, fraction: number): string {
  const { now, fresh, show } = levels;
  const after = show(afterChanges({ now, fresh, fraction }));
  return `after = new water + (now - new water)(1 - share) = ${plain(levels, fresh)} + (${plain(levels, now)} - ${plain(levels, fresh)}) x ${fixed(1 - fraction, 3)} = ${after}`;
}
