import { fixed } from '../../core/quantity/format.ts';
import { readSalinity, type SalinityReading } from '../../core/water/salinity-reading.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { action } from '../calls.ts';
import { asRead, ppt, remarkOn } from './print.ts';
import { remarkFirst } from '../short/remark-first.ts';
import { say } from '../../core/wording/say.ts';

/** What salinity is read with, and what each is known for. Common practice, no source. */
export const instruments = {
  refractometer: 'a refractometer drifts: it is set on a 35 ppt standard, not on RO water',
  hydrometer: 'a glass hydrometer holds its scale, but reads for the temperature printed on it',
  'swing arm': 'a swing arm reads high by bubbles and low by a crust of salt: the least sure of them',
  probe: 'a probe needs a clean cell and its own calibration, and reads low where it does not compensate',
  lab: 'a lab measures well what it is sent: a sample that evaporated on the way reads high',
} as const;
export type Instrument = keyof typeof instruments;
export const instrumentNames = Object.keys(instruments) as readonly Instrument[];

/** A reading as it was typed, and what it was read with. */
export interface Typed {
  readonly text: string;
  readonly by?: Instrument | undefined;
}

/** Readings this near are one number with such instruments, ppt. Common practice, no source. */
const CLOSE_PPT = 1;

/** Two instruments on one water: nothing is moved until one of them is proven. */
export function comparedSalinity(one: Typed, other: Typed): Answer {
  const [a, b] = [readSalinity(one.text, { field: 'first' }), readSalinity(other.text, { field: 'second' })];
  const gap = Math.abs(a.practicalSalinity - b.practicalSalinity);
  const isClose = gap <= CLOSE_PPT;
  const remarks = [a, b].map(remarkOn);
  const isOff = remarks.every((remark) => remark !== undefined);
  const given = answer({
    headline: isClose
      ? `Both agree within what such instruments can tell: ${fixed(gap, 1)} ppt apart.`
      : `They are ${fixed(gap, 1)} ppt apart, so at least one is wrong. Change nothing in the tank until you know which.`,
    read: [...new Set([...a.notes, ...b.notes])],
    facts: [
      ...[one, other].map(({ text, by }, index): Fact => {
        const name = by === undefined ? text : `${by} ${text}`;
        return { label: name, value: ppt((index === 0 ? a : b).practicalSalinity) };
      }),
      ...scaleFacts([a, b]),
      ...[...new Set([one.by, other.by])].flatMap((by) =>
        by === undefined ? [] : [{ label: by, value: instruments[by] }],
      ),
    ],
    steps: [
      'Put a 35 ppt standard on both, at room temperature, and read them: it should show 1.0264 (25/25) or 35 ppt.',
      'Keep the one that reads the standard right, or set it there, then read the tank again (/salinity check).',
      'Rinse them and shake bubbles off a swing arm: it reads high by them. Do not take the mean.',
    ],
    dangers: isClose ? [] : ['Animals that suffer now do not wait for this: /urgent.'],
    sources: ['fm83', 'practice'],
    next: [
      action(say('salinity.whatShowsOnStandard'), 'salinity check', { reading: asRead(a) }, ['standard']),
    ],
  });
  return isClose && isOff ? remarkFirst(remarks[0], given) : given;
}

/** How much of a gap the reference temperatures of a specific gravity can make (core/water/specific-gravity.ts). */
function scaleFacts(readings: readonly SalinityReading[]): readonly Fact[] {
  if (!readings.some(({ scale }) => scale === 'SG')) return [];
  const value = '1.0264 is 34.4, 34.7 or 35 ppt, as 60 °F, 20 °C or 25 °C is printed on it: 0.6 ppt';
  return [{ label: 'what the scale can explain', value }];
}
