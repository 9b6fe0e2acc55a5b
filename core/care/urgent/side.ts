import { askUnits, bareBands } from '../../quantity/bare.ts';
import { clean } from '../../quantity/clean.ts';
import { toUnit } from '../../quantity/format.ts';
import { definitionOf, type QuantityKind, type Unit } from '../../quantity/unit.ts';
import { limitsOf, type Side } from '../../water/limits.ts';
import { parameter, type ParameterId } from '../../water/parameter.ts';

/** Practical salinity ends at 42 (PSS-78), and a gravity of that salt is 1.0316 at 25/25 [fm83]. */
const MOST_SALT = { gravity: 1.0316, ppt: 42 } as const;
/** A gravity written with its point left out, and the most that can still be meant as a gravity; own choice. */
const GRAVITY = { least: 0.9, most: 1.2, thousandfold: 900 } as const;
/** Water that is frozen, and hotter than any tank, °C; a bare number from here up is °F. */
const WATER_C = { frozen: 0, hot: 45, bareF: 60 } as const;

/**
 * The side of a reading that no scale or formula here goes to, where it is clear: "130 F" is too hot, "1.060" too salty,
 * "60 dKH" too much, whatever they are exactly. Undefined where there is no one number, or it lies within what can be:
 * a bare 60 of alkalinity is 168 dKH as meq/L, and 3.4 dKH, too low, as ppm CaCO3.
 */
export function sideBeyond(id: ParameterId, text: string): Side | undefined {
  const found = /^[^\d-]*(-?\d+(?:[.,]\d+)?)\s*([^\d]*)$/.exec(clean(text));
  if (found === null) return undefined;
  const value = Number((found[1] ?? '').replace(',', '.'));
  const unit = (found[2] ?? '').trim();
  const { kind, unit: own } = parameter(id);
  if (kind === 'temperature') return ofTemperature(value, unit);
  if (kind === 'salinity') return ofSalinity(value, unit);
  const { units } = definitionOf(kind);
  const asked = unit === '' ? bareUnits(kind, own) : [unit];
  const meant = units.filter(({ symbol, names }) =>
    asked.some((name) => name === symbol || names.includes(name)),
  );
  const [side, ...others] = new Set(meant.map((written) => ofLevel(id, toOwn(kind, value, written, own))));
  return others.length === 0 ? side : undefined;
}

/** Every unit that a number alone can be in. */
function bareUnits(kind: QuantityKind, own: string): readonly string[] {
  const possible = [...bareBands[kind].map(({ unit }) => unit), ...(askUnits[kind] ?? [])];
  return possible.length === 0 ? [own] : possible;
}

function toOwn(kind: QuantityKind, written: number, { factor, offset = 0 }: Unit, own: string): number {
  return toUnit(kind, written * factor + offset, own);
}

function ofLevel(id: ParameterId, value: number): Side | undefined {
  const [low, high] = limitsOf(id).believable;
  return value > high ? 'high' : value < low ? 'low' : undefined;
}

function ofTemperature(value: number, unit: string): Side | undefined {
  const isF = /f/.test(unit) || (!/[ck]/.test(unit) && value >= WATER_C.bareF);
  const tempC = isF ? (value - 32) / 1.8 : value;
  if (tempC >= WATER_C.hot) return 'high';
  return tempC <= WATER_C.frozen ? 'low' : undefined;
}

function ofSalinity(value: number, unit: string): Side | undefined {
  if (/s\/?(?:c?m)?$/.test(unit)) return undefined;
  const gravity = value >= GRAVITY.thousandfold ? value / 1000 : value;
  if (gravity >= GRAVITY.least && gravity <= GRAVITY.most) {
    if (gravity > MOST_SALT.gravity) return 'high';
    return gravity < 1 ? 'low' : undefined;
  }
  return value > MOST_SALT.ppt ? 'high' : value < 0 ? 'low' : undefined;
}
