import { hasBox } from './box-said.ts';
import { isDoseUnit } from './kinds-of-said.ts';
import type { Said } from './said.ts';
import type { Scanned } from './tokens.ts';

/** The water of a system as text for `readQuantity`, and the numbers it was put together from. */
interface SystemVolume {
  readonly text: string;
  readonly from: readonly Said[];
}

/** "a 75 plus a 29 sump": what joins a second vessel to the first. */
const JOINED = /\b(?:plus|and|with|\+)\b|\+/;
/** "120 gallons, the sump 35": a comma is enough, where no total is spoken of. */
const AND_SUMP = /^[\s,]*(?:(?:the|my|our|a) )?sump\b(?! (?:in|incl))/;
/** "260 litre but truly maybe 225": said anew, not added. */
const ANEW = /\b(?:but|truly|really|actually|maybe|rather|net|only|no)\b/;
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
  // Beside the sides of a box its sump is a part of the water, and not all of it.
  const isPartOfBox = hasBox(said) && parts.every(({ of }) => of === 'sump');
  const base = systems.at(-1) ?? (isPartOfBox ? undefined : parts[0]);
  if (base === undefined) return undefined;
  const joined = parts.filter((one) => one !== base && !isHalf(one) && isJoined(scanned, base, one));
  const unit = unitOf(scanned, said, [base, ...joined]);
  const all = [base, ...joined];
  const first = all.find(({ number }) => number.unit !== '')?.number.unit;
  const isOwn = (own: string): boolean => own !== '' && own !== first;
  return {
    text: all
      .map(({ number }) => `${number.number} ${isOwn(number.unit) ? number.unit : unit}`.trim())
      .join(' + '),
    from: [...systems, ...joined],
  };
}

/** "a sump that runs half full": no half of a litre. */
function isHalf({ number: { unit, value } }: Said): boolean {
  return unit === '' && value < 1;
}

/** A volume as text: one without a unit takes that of another volume of the message. */
export function withUnit(scanned: Scanned, said: readonly Said[], one: Said): string {
  const { number, unit, kinds } = one.number;
  return unit !== '' || kinds.length > 0 ? one.text : `${number} ${unitOf(scanned, said, [one])}`.trim();
}

/** "my tank is in gallons (34)", "litres: 300": the unit stands before its number. */
const UNIT_BEFORE = /\b(gal(?:lon)?s?|lit(?:er|re)s?)\s*[(:=]\s*$/;

/** A bare number is one, also before a word that is no unit of its own: "a 10 cube". */
function isVolume({ kinds, unit }: Said['number']): boolean {
  return kinds.every((kind) => kind === 'scoops') || (kinds.includes('volume') && !isDoseUnit(unit));
}

function isJoined({ text }: Scanned, base: Said, part: Said): boolean {
  const [first, second] = [base, part].sort((a, b) => a.number.start - b.number.start);
  if (first === undefined || second === undefined) return false;
  const between = text.slice(first.number.end, second.number.start);
  return (
    between.length < 40 &&
    !ANEW.test(between) &&
    (JOINED.test(between) || AND_SUMP.test(between) || base.part === 'part')
  );
}

function unitOf({ text }: Scanned, said: readonly Said[], all: readonly Said[]): string {
  const own = all.find(({ number }) => number.unit !== '')?.number;
  const others = said
    .filter(
      ({ part, number }) =>
        number.kinds.includes('volume') && !isDoseUnit(number.unit) && part !== 'strength',
    )
    .map(({ number }) => number);
  // The unit that most of them have; the first of those that have it as often.
  const often = ({ unit }: Said['number']): number => others.filter((each) => each.unit === unit).length;
  const other = others.toSorted((a, b) => often(b) - often(a))[0];
  const [one] = all;
  const before = one === undefined ? undefined : UNIT_BEFORE.exec(text.slice(0, one.number.start))?.[1];
  if (own === undefined && before !== undefined) return before.startsWith('g') ? 'gal' : 'l';
  const found = own ?? other;
  if (found === undefined) return '';
  const behind = text.slice(found.end, found.end + 24);
  if (!/gal|^g$/.test(found.unit)) return found.unit;
  if (IMPERIAL.test(behind)) return 'imp gal';
  return AMERICAN.test(behind) ? 'us gal' : found.unit.replace(/^g$/, 'gal');
}
