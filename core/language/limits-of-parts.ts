import { isLevelPart, levelParts, partNames, type OfName, type PartName } from './parts.ts';
import type { NumberSpan } from './scan/number-span.ts';

const VOLUMES = ['system', 'part', 'changed', 'amount', 'rate', 'none', 'strength'] as const;

/** Parts a number with this unit can play; each kind of unit once. */
const BY_KIND: Readonly<Record<string, readonly PartName[]>> = {
  moment: ['moment', 'none', 'span'],
  volume: VOLUMES,
  mass: ['amount', 'strength', 'rate', 'none', 'part'],
  alkalinity: levelParts,
  concentration: [...levelParts, 'strength', 'amount', 'none'],
  nitrate: levelParts,
  phosphate: levelParts,
  ammonia: levelParts,
  nitrite: levelParts,
  salinity: levelParts,
  gravity: levelParts,
  conductivity: levelParts,
  temperature: [...levelParts, 'othertemp', 'none'],
  days: ['span', 'moment', 'setting', 'rate', 'none'],
  length: ['length', 'system', 'part', 'none', 'change', 'rate', 'now', 'was'],
  light: ['light', 'now', 'was', 'wanted', 'limit', 'target', 'change', 'none'],
  illuminance: ['light', 'none'],
  molar: ['strength', 'none'],
  share: ['changed', 'setting', 'strength', 'none', 'amount', 'change', 'rate', 'part'],
  watts: ['setting', 'light', 'none'],
  kelvin: ['setting', 'light', 'none'],
  money: ['none'],
  heads: ['none', 'now', 'was', 'rate', 'length'],
  times: ['none', 'rate', 'change'],
  scoops: ['amount', 'rate', 'none', 'strength'],
  flow: ['rate', 'setting', 'none'],
  others: ['none', 'setting', 'length'],
};

/** A decimal that no clock shows ("8.0", "8.25" is a quarter past eight): it is no time. */
const NO_CLOCK = /[.,](?:\d|\d{3,}|[6-9]\d)$/;
const BUT_MOMENTS: ReadonlySet<PartName> = new Set(partNames.filter((name) => name !== 'moment'));

/** Parts the unit leaves open; undefined for a bare number, which can be anything. */
export function partsAllowed({ kinds, number }: NumberSpan): ReadonlySet<PartName> | undefined {
  if (kinds.length === 0) return NO_CLOCK.test(number) ? BUT_MOMENTS : undefined;
  return new Set(kinds.flatMap((kind) => BY_KIND[kind] ?? []));
}

const PPM: readonly OfName[] = [
  'alkalinity',
  'calcium',
  'magnesium',
  'nitrate',
  'phosphate',
  'ammonia',
  'nitrite',
  'potassium',
  'iodine',
  'strontium',
  'substance',
];
const OF_UNIT: Readonly<Record<string, readonly OfName[]>> = {
  alkalinity: ['alkalinity'],
  salinity: ['salinity'],
  gravity: ['salinity'],
  conductivity: ['salinity'],
  temperature: ['temperature'],
  light: ['light'],
};

/** What a level with this unit can be of; undefined where the unit says nothing. "ppm" alone is many things, "8 dkh" one. */
export function ofsAllowed({ kinds, value }: NumberSpan, part: PartName): ReadonlySet<OfName> | undefined {
  if (!isLevelPart(part)) return undefined;
  const [only, more] = kinds;
  if (only === undefined)
    return value > 30
      ? new Set([...PPM, 'salinity', 'temperature', 'light', 'nothing', 'flow', 'coral', 'fish'])
      : undefined;
  if (kinds.includes('gravity') || (more === undefined && OF_UNIT[only] !== undefined))
    return new Set(OF_UNIT[only] ?? ['salinity']);
  if (kinds.includes('concentration')) return new Set(PPM);
  return undefined;
}
