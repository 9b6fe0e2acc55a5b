import { definitionOf, type QuantityKind } from '../quantity/unit.ts';
import { findParameter, parameter, parameterIds } from '../water/parameter.ts';

/** A number found in free text, with the kinds its unit allows. `bare` has no unit; `salinity` is a gravity or ppt. */
export interface Mention {
  readonly kinds: readonly MentionKind[];
  /** The number and its unit as written, ready for `readQuantity`. */
  readonly text: string;
  readonly value: number;
  readonly start: number;
  readonly end: number;
}

export type MentionKind = QuantityKind | 'bare';

/** Kinds whose units are looked for in free text. Lengths are not: "in" and "m" are ordinary words. */
const KINDS: readonly QuantityKind[] = [
  'volume',
  'mass',
  'alkalinity',
  'concentration',
  'nitrate',
  'phosphate',
  'temperature',
  'conductivity',
  'days',
  'light',
  'illuminance',
  'share',
];

/** Unit spellings that are ordinary words or other things in a sentence. */
const NOT_IN_PROSE = new Set(['us', 'm', 'w', 'd', 'c', 'f', 'lt', 'cc', 'dh', 'mmol', 'us g']);

const unitKinds = buildUnitKinds();

function buildUnitKinds(): ReadonlyMap<string, readonly QuantityKind[]> {
  const map = new Map<string, QuantityKind[]>();
  for (const kind of KINDS) {
    for (const unit of definitionOf(kind).units) {
      for (const name of new Set([unit.symbol.toLowerCase(), ...unit.names])) {
        if (name === '' || NOT_IN_PROSE.has(name)) continue;
        map.set(name, [...(map.get(name) ?? []), kind]);
      }
    }
  }
  // "78f", "25 c": a temperature only when it stands right behind the number.
  map.set('c', ['temperature']);
  map.set('f', ['temperature']);
  map.set('ppt', []);
  map.set('psu', []);
  map.set('g/kg', []);
  map.set('sg', []);
  return map;
}

const UNIT = [...unitKinds.keys()]
  .sort((a, b) => b.length - a.length)
  .map((name) => name.replace(/[.*+?^${}()|[\]\\/"']/g, '\\$&'))
  .join('|');

const NUMBER = new RegExp(
  String.raw`(?<![\w.,:/-])(?<sign>-)?(?<number>\d+(?:[.,]\d+)*|[.,]\d+)(?<spaced>\s{0,2})(?<unit>${UNIT})?(?![a-z0-9µ])`,
  'g',
);

/** Every number of a cleaned text in order. Numbers inside words, dates, ratios and times are left out. */
export function mentions(text: string): Mention[] {
  const found: Mention[] = [];
  for (const match of text.matchAll(NUMBER)) {
    const { number = '', sign } = match.groups ?? {};
    const start = match.index;
    const value = Number(number.replace(',', '.'));
    const unit = ownUnit(
      match.groups?.['unit'],
      value,
      text.slice(start + match[0].length),
      text.slice(0, start),
    );
    const all = match.groups?.['unit'] ?? '';
    const whole =
      unit === undefined
        ? number
        : match[0].trim().slice(0, match[0].trim().length - (all.length - unit.length));
    const end = start + whole.length;
    if (sign !== undefined || /^[:/]\d/.test(text.slice(end))) continue;
    if (!Number.isFinite(value)) continue;
    found.push({ kinds: kindsOf(value, number, unit, text.slice(end)), text: whole, value, start, end });
  }
  return found;
}

/**
 * "1350 sg 1.025", "ca 380 mg 1250", "ca 420 kh 8.1": a word with a number of its own behind it is that number's name,
 * not this one's unit; so "0 ppm no3 5 ppm" is 0 ppm of what came before. "2 dkh 75 gal" keeps its unit, since 2 can be a hardness and 420 cannot.
 */
function ownUnit(unit: string | undefined, value: number, tail: string, lead: string): string | undefined {
  const behind = /^\s*[=:]?\s*(\d+(?:[.,]\d+)?|[.,]\d+)/.exec(tail)?.[1];
  if (unit === undefined || behind === undefined) return unit;
  const next = Number(behind.replace(',', '.'));
  const [measure, name] = unit.split(' ');
  const isNext = name !== undefined && /^(?:ppm|ppb|mg\/l|µg\/l|ug\/l)$/.test(measure ?? '');
  const [, owner = ''] = NAME_BEFORE.exec(lead) ?? [];
  if (isNext && owner !== '') return measure;
  if (/^d?kh$/.test(unit) && owner !== '' && findParameter(owner) !== 'alkalinity') return undefined;
  const isName =
    (unit === 'sg' && (next < 1.1 || next >= 1000)) ||
    (unit === 'mg' && next >= 800 && next <= 2000) ||
    ((unit === 'kh' || unit === 'dkh') && value > MOST_DKH);
  return isName ? undefined : unit;
}

/** A number right behind the name of a reading is that reading's own. */
const NAME_BEFORE = new RegExp(
  String.raw`(?<![a-z0-9])(${parameterIds
    .flatMap((id) => parameter(id).names)
    .map((known) => known.replaceAll('.', '\\.'))
    .join('|')})\s*[:=]?\s*$`,
);

/** No tank has more; the number before "kh" then belongs to something else. */
const MOST_DKH = 30;

function kindsOf(
  value: number,
  number: string,
  unit: string | undefined,
  tail: string,
): readonly MentionKind[] {
  if (unit === 'ppt' || unit === 'psu' || unit === 'g/kg' || unit === 'sg') return ['salinity'];
  if (unit === undefined && /^1[.,]0\d{1,3}$/.test(number) && value < 1.045) return ['salinity'];
  if (unit === undefined) return ['bare'];
  if (unit === 'g') return gramsOrGallons(tail);
  const kinds = unitKinds.get(unit) ?? [];
  return kinds.length === 0 ? ['bare'] : kinds;
}

/** Words that can only be weighed: after "100 g" they make it a mass. */
const WEIGHED =
  /^\s*(?:of\s+)?(?:my\s+|the\s+|pure\s+|dry\s+|oven\s+|baked\s+)*(?:powder|baking|bicarb|soda|salt|mix|lime|kalk|calcium|magnesium|potassium|sodium|nitrate|epsom|stuff|food|flakes?|prills?)/;

function gramsOrGallons(tail: string): readonly MentionKind[] {
  return WEIGHED.test(tail) ? ['mass'] : ['volume', 'mass'];
}

/** Whether the mention can be of that kind. */
export function is(mention: Mention, kind: MentionKind): boolean {
  return mention.kinds.includes(kind);
}
