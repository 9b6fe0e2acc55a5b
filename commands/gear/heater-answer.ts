import { heaterWatts, stuckRise } from '../../core/gear/heater.ts';
import { inUnit, significant } from '../../core/quantity/format.ts';
import type { Answer } from '../answer.ts';
import { sumFirst } from './sum-first.ts';

/** What was said of a heater: the water as it was written and in L, the room at its coldest, the watts there are in all. */
export interface HeaterSaid {
  readonly water: string;
  readonly volumeL: number;
  readonly roomC: number | undefined;
  readonly watts: number | undefined;
}

/** Below this share of the need a heater is too weak, from that on it is more than it takes; own choices. */
const WEAK = 0.9;
const AMPLE = 1.25;

/** The card on heaters with the sum for this water and room first. */
export function heaterAnswer(card: Answer, said: HeaterSaid): Answer {
  const { watts, volumeL, water } = said;
  const stuck =
    watts === undefined
      ? []
      : [
          {
            label: 'If it sticks on',
            value: `${significant(watts)} W heats ${water} by ${riseWords(watts, volumeL)} at first`,
          },
        ];
  return sumFirst(card, `${needWords(said)}${verdict(said)}`, stuck);
}

/** The card with what this heater does to this water if it sticks on. */
export function stuckAnswer(card: Answer, { water, volumeL }: HeaterSaid, watts: number): Answer {
  return sumFirst(
    card,
    `${significant(watts)} W stuck on heats ${water} by about ${riseWords(watts, volumeL)} at first: a separate controller with its own probe cuts it off.`,
    [],
  );
}

function needWords({ water, volumeL, roomC }: HeaterSaid): string {
  const [least, most] = heaterWatts(volumeL, roomC).map(upToFive);
  return roomC === undefined
    ? `${water}: about ${least} W in a usual room, up to ${most} W in a cold one (below 18 °C, 64 °F), as two heaters.`
    : `${water} in a room of ${degrees(roomC)}: about ${most} W in all, as two of half the size.`;
}

function verdict({ volumeL, roomC, watts }: HeaterSaid): string {
  if (watts === undefined) return '';
  const [least, most] = heaterWatts(volumeL, roomC);
  const all = `${significant(watts)} W`;
  if (watts >= AMPLE * most) return ` ${all} is more than it takes.`;
  if (watts >= WEAK * most) return roomC === undefined ? ` ${all} does for both.` : ` ${all} is just enough.`;
  return watts >= WEAK * least ? ` ${all} does for a usual room.` : ` ${all} is too weak.`;
}

function upToFive(watts: number): string {
  return String(Math.ceil(watts / 5 - 0.01) * 5);
}

function degrees(c: number): string {
  return `${significant(c)} °C (${inUnit('temperature', c, '°F', 0)})`;
}

function riseWords(watts: number, volumeL: number): string {
  const rise = stuckRise(watts, volumeL);
  return `${significant(rise, 2)} °C (${significant(rise * 1.8, 2)} °F) an hour`;
}
