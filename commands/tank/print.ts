import type { ChosenUnits } from '../../core/quantity/chosen-units.ts';
import { shownIn } from '../../core/log/value.ts';
import { counted, fixed, toUnit, volumeAsWritten } from '../../core/quantity/format.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { targetFor, type TankKind } from '../../core/water/targets.ts';
import type { TankProfile } from '../keep.ts';

export const kindWords: Readonly<Record<TankKind, string>> = {
  soft: 'soft corals',
  'large-polyp': 'large-polyp corals',
  'small-polyp': 'small-polyp corals',
  mixed: 'mixed reef',
  fish: 'fish without corals',
};

/** "238.5 L", or "63 US gal (238.5 L)" for who prefers gallons. */
export function litres(volumeL: number, units: ChosenUnits): string {
  const { volume: symbol = 'L' } = units;
  return volumeAsWritten(volumeL, toUnit('volume', volumeL, symbol), symbol);
}

/** "238.5 L of water in a display of 300 L". */
export function waterWords({ netVolumeL, displayVolumeL, units }: TankProfile): string {
  const net = litres(netVolumeL, units);
  return displayVolumeL === undefined
    ? `${net} of net water (size of the glass not known)`
    : `${net} of net water${netVolumeL > displayVolumeL ? ', the sump included' : ''}; the display holds ${litres(displayVolumeL, units)} to the rim`;
}

/** The parameters whose targets are always shown. */
const ALWAYS: readonly ParameterId[] = [
  'salinity',
  'temperature',
  'alkalinity',
  'calcium',
  'magnesium',
  'nitrate',
  'phosphate',
  'ph',
];

/** A target range as shown: own, or the usual one of the kind. */
export interface ShownTarget {
  readonly label: string;
  readonly range: string;
  readonly own: boolean;
}

export function targetsOf({ kind, targets, units }: TankProfile): readonly ShownTarget[] {
  const own = (Object.keys(targets) as ParameterId[]).filter((id) => !ALWAYS.includes(id));
  return [...ALWAYS, ...own].map((id) => ({
    label: parameter(id).label,
    range: rangeWords(id, targets[id] ?? targetFor(kind, id).range, units),
    own: targets[id] !== undefined,
  }));
}

/** "8 to 9 dKH"; alkalinity and temperature in the unit the member prefers. */
export function rangeWords(id: ParameterId, range: readonly [number, number], units: ChosenUnits): string {
  const [low, high] = range.map((value) => shownIn(id, value, units));
  const ends = [low, high].map((end) => fixed(end?.value ?? Number.NaN, end?.decimals ?? 0));
  return `${ends.join(' to ')} ${low?.unit ?? ''}`.trim();
}

/** "12 days", "5 months", "1 year 4 months" between an ISO date and an instant, by the calendar in UTC. */
export function ageWords(startedOn: string, nowMs: number): string {
  const start = new Date(`${startedOn}T00:00:00Z`);
  const now = new Date(nowMs);
  const early = now.getUTCDate() < start.getUTCDate() ? 1 : 0;
  const months =
    (now.getUTCFullYear() - start.getUTCFullYear()) * 12 + now.getUTCMonth() - start.getUTCMonth() - early;
  if (months < 2) return counted(Math.max(0, Math.floor((nowMs - start.getTime()) / 86_400_000)), 'day');
  const years = Math.floor(months / 12);
  const rest = months % 12 === 0 ? [] : [counted(months % 12, 'month')];
  return [...(years === 0 ? [] : [counted(years, 'year')]), ...rest].join(' ');
}
