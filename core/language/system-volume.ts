import type { Said } from './said.ts';
import type { Scanned } from './tokens.ts';

/** The water of a system as text for `readQuantity`, and the numbers it was put together from. */
export interface SystemVolume {
  readonly text: string;
  readonly from: readonly Said[];
}

/** "a 75 plus a 29 sump": what joins a second vessel to the first. */
const JOINED = /\b(?:plus|and|with|\+)\b|\+/;
/** A country said behind gallons belongs to them. */
const IMPERIAL = /^[\s,(]*(?:imperial|imp|uk|british|in the uk)\b/;
const AMERICAN = /^[\s,(]*(?:us|american)\b/;

/**
 * The water of the system: what was said of it last; with a sump (or a display and a sump) named beside it, both together.
 * A number without a unit takes the unit of another volume of the message. Undefined where none was said.
 */
export function systemVolume(scanned: Scanned, said: readonly Said[]): SystemVolume | undefined {
  const systems = said.filter(({ part, number }) => part === 'system' && isVolume(number));
  const parts = said.filter(
    ({ part, of, number }) => part === 'part' && (of === 'sump' || of === 'display') && isVolume(number),
  );
  const base = systems.at(-1) ?? parts[0];
  if (base === undefined) return undefined;
  const joined = parts.filter((one) => one !== base && isJoined(scanned, base, one));
  const unit = unitOf(scanned, said, [base, ...joined]);
  const all = [base, ...joined];
  return {
    text: all.map(({ number }) => `${number.number} ${unit}`.trim()).join(' + '),
    from: [...systems, ...joined],
  };
}

/** Millilitres, spoons and cups measure a dose, not a tank. */
const DOSE_UNIT = /^(?:ml|millil|cc|tsp|tbsp|teasp|tablesp|cup|fl oz|floz)/;

/** A bare number is one, also before a word that is no unit of its own: "a 10 cube". */
function isVolume({ kinds, unit }: Said['number']): boolean {
  return kinds.every((kind) => kind === 'scoops') || (kinds.includes('volume') && !DOSE_UNIT.test(unit));
}

function isJoined({ text }: Scanned, base: Said, part: Said): boolean {
  const [first, second] = [base, part].sort((a, b) => a.number.start - b.number.start);
  if (first === undefined || second === undefined) return false;
  const between = text.slice(first.number.end, second.number.start);
  return between.length < 40 && (JOINED.test(between) || base.part === 'part');
}

function unitOf({ text }: Scanned, said: readonly Said[], all: readonly Said[]): string {
  const own = all.find(({ number }) => number.unit !== '')?.number;
  const other = said.find(
    ({ number }) => number.kinds.includes('volume') && !DOSE_UNIT.test(number.unit),
  )?.number;
  const found = own ?? other;
  if (found === undefined) return '';
  const behind = text.slice(found.end, found.end + 24);
  if (!/gal|^g$/.test(found.unit)) return found.unit;
  if (IMPERIAL.test(behind)) return 'imp gal';
  return AMERICAN.test(behind) ? 'us gal' : found.unit.replace(/^g$/, 'gal');
}
