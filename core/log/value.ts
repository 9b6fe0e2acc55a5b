import { Problem } from '../problem.ts';
import { fixed, fromUnit, toUnit } from '../quantity/format.ts';
import { readQuantity, type Quantity } from '../quantity/read.ts';
import type { QuantityKind } from '../quantity/unit.ts';
import { parameter, type ParameterId } from '../water/parameter.ts';
import { readSalinity } from '../water/salinity-reading.ts';
import { limitsOf } from '../water/limits.ts';

/** Units a bare number is taken in where its size leaves several, by symbol of unit.ts. */
export interface OwnUnits {
  readonly alkalinity?: string | undefined;
  readonly temperature?: string | undefined;
}

/** A value in the parameter's own unit (salinity: practical salinity) and what had to be interpreted. */
export interface ReadValue {
  readonly value: number;
  readonly notes: readonly string[];
}

/**
 * Reads one value: "8,3", "2.9 meq/L", "78 F", "1.025", "53 mS/cm". Where a number can be in several units the
 * preferred one is taken and said; a parameter that is always printed in one unit (mg/L) is read in that.
 *
 * @throws Problem naming `field`, with `choices` where the unit has to be asked.
 */
export function readLogged(id: ParameterId, text: string, field: string, units: OwnUnits = {}): ReadValue {
  const { kind, unit } = parameter(id);
  if (kind === 'salinity') {
    const { practicalSalinity, notes } = readSalinity(text, { field });
    return { value: practicalSalinity, notes };
  }
  const read = withPreference(id, text, field, units);
  const obvious = `read ${text.trim()} as ${unit}`;
  const notes = read.notes.filter((note) => note !== obvious);
  return { value: read.unit === unit ? read.written : toUnit(kind, read.value, unit), notes };
}

/** Kinds whose bare numbers can be in several units; their size decides, or the member. */
const ASKED: ReadonlySet<QuantityKind> = new Set<QuantityKind>(['alkalinity', 'temperature', 'phosphate']);

function withPreference(id: ParameterId, text: string, field: string, units: OwnUnits): Quantity {
  const { kind, unit } = parameter(id);
  const [low, high] = limitsOf(id).believable;
  const options = {
    field,
    plausible: [fromUnit(kind, low, unit), fromUnit(kind, high, unit)] as const,
    fallback: ASKED.has(kind) ? undefined : unit,
  };
  try {
    return readQuantity(kind, text, options);
  } catch (error) {
    const preferred =
      kind === 'alkalinity' ? units.alkalinity : kind === 'temperature' ? units.temperature : undefined;
    const isOpen =
      error instanceof Problem && error.choices.some((choice) => choice.endsWith(` ${preferred}`));
    if (!isOpen || preferred === undefined) throw error;
    const read = readQuantity(kind, text, { ...options, fallback: preferred });
    return { ...read, notes: [...read.notes, `${text.trim()} read in your preferred unit, ${preferred}`] };
  }
}

/** A value as a number in the unit it is shown in: the preferred one of alkalinity and temperature, else its own. */
export interface Shown {
  readonly value: number;
  readonly unit: string;
  readonly decimals: number;
}

/** Decimals of the units that are not a parameter's own. */
const PLACES: Readonly<Record<string, number>> = { 'meq/L': 2, 'ppm CaCO3': 0, '°F': 1 };

export function shownIn(id: ParameterId, value: number, units: OwnUnits = {}): Shown {
  const { decimals, unit } = parameter(id);
  const preferred = id === 'alkalinity' || id === 'temperature' ? units[id] : undefined;
  if (preferred === undefined || preferred === unit) return { value, unit, decimals };
  const { kind } = parameter(id);
  const converted = toUnit(kind, fromUnit(kind, value, unit), preferred);
  return { value: converted, unit: preferred, decimals: PLACES[preferred] ?? decimals };
}

/** "8.2 dKH", "35 ppt", "8.1", "78 °F". */
export function printed(id: ParameterId, value: number, units: OwnUnits = {}): string {
  const shown = shownIn(id, value, units);
  return `${fixed(shown.value, shown.decimals)} ${shown.unit}`.trim();
}

/** "+0.3 dKH", "−20 mg/L", "no change": from one value to a later one, at the precision shown. */
export function printedChange(id: ParameterId, from: number, to: number, units: OwnUnits = {}): string {
  const [a, b] = [shownIn(id, from, units), shownIn(id, to, units)];
  const size = fixed(Math.abs(b.value - a.value), b.decimals);
  if (Number(size) === 0) return 'no change';
  return `${b.value > a.value ? '+' : '−'}${size} ${b.unit}`.trim();
}
