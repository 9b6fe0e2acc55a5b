import { clauseWords } from '../../../core/language/clause-words.ts';
import { met } from '../../../core/language/met.ts';
import type { Said } from '../../../core/language/said.ts';
import { sidesText, type Sides } from '../../../core/language/side-units.ts';
import { withUnit } from '../../../core/language/system-volume.ts';
import { readQuantity } from '../../../core/quantity/read.ts';
import { significant } from '../../../core/quantity/format.ts';
import type { Scanned } from '../../../core/language/tokens.ts';
import { forms } from '../../../core/tank/size.ts';
import { attempt } from './attempt.ts';

const SIDES = forms.box.length;

/** Water of a running sump: as a volume, else by its sides; undefined where neither is said whole. */
export function sumpIn(
  scanned: Scanned,
  all: readonly Said[],
  sides: readonly Said[],
  unit: string | undefined,
): string | undefined {
  const volumes = all.filter(
    (one) => isSump(scanned, one) && !sides.some(({ number }) => number.start === one.number.start),
  );
  if (volumes.length === 0) return sumpBySides(scanned, all, sides, unit);
  return volumes
    .map((one) => {
      const text = inGallons(withUnit(scanned, all, one), unit);
      const { number } = one.number;
      return text.replace(number, String(Number(number) * partOf(all, one, one)));
    })
    .join(' + ');
}

/** By its sides alone: one box, or several of it; undefined where a side is missing. */
export function sumpBySides(
  scanned: Scanned,
  all: readonly Said[],
  sides: readonly Said[],
  unit: string | undefined,
): string | undefined {
  const [first, last] = [sides[0], sides.at(-1)];
  if (first === undefined || last === undefined || sides.length % SIDES !== 0) return undefined;
  const boxes = Array.from({ length: sides.length / SIDES }, (_, at) =>
    sidesText(scanned.text, sides.slice(at * SIDES, (at + 1) * SIDES), []),
  );
  const litresOf = (box: Sides): number => {
    const text = box.unit === undefined ? `${box.text} ${unit ?? ''}` : box.text;
    return readQuantity('volume', text, { field: 'sump' }).value;
  };
  const fullL = attempt(() => boxes.reduce((sum, box) => sum + litresOf(box), 0));
  return fullL === undefined ? undefined : `${significant(partOf(all, first, last) * fullL, 4)} L`;
}

/** A volume of the sump, or of a part of the system where a sump is named; "half full" is none. */
function isSump(scanned: Scanned, { part, of, number: { kinds, unit, value } }: Said): boolean {
  if (part !== 'part' || (unit === '' && value < 1) || kinds.some((kind) => kind !== 'volume')) return false;
  return of === 'sump' || (of !== 'display' && of !== 'stock' && met(scanned, 'gear.sump'));
}

/** Part of a sump that is filled: "a 40 breeder about half", "a third of a 30 gal sump"; 1 where nothing was said. */
function partOf(all: readonly Said[], first: Said, last: Said): number {
  const share = all.find(({ number: { value, start, end } }) => {
    const far = start >= last.number.end ? start - last.number.end : first.number.start - end;
    return value > 0 && value < 1 && far >= 0 && far < NEAR;
  });
  return share?.number.value ?? 1;
}

/** A bare sump beside a tank in inches is in gallons, else in litres. */
function inGallons(text: string, unit: string | undefined): string {
  return /[a-z]/i.test(text) ? text : `${text} ${unit === 'in' ? 'gal' : 'L'}`;
}

/** Letters between a sump and how full it is. Own choice. */
const NEAR = 20;

/** "a tenth of it": rock fills no more of a tank than this. Own choice. */
const MOST_PART = 0.6;

/** Rock by its mass, or by its share of the tank: "about 20 kg of rock", "rock's maybe a tenth of it". */
export function rockIn(scanned: Scanned, all: readonly Said[]): string | undefined {
  const found = all.find(({ part, number }) => {
    const isOf = part === 'amount' || part === 'none';
    const isRock = number.kinds.some((kind) => kind === 'mass' || kind === 'share');
    const isPart = number.unit === '' && number.value > 0 && number.value <= MOST_PART;
    if (!isOf || !(isRock || isPart)) return false;
    const words = clauseWords(scanned, number);
    return met(words, 'places.rock') && !met(words, 'places.sandBed');
  });
  if (found === undefined) return undefined;
  return found.number.unit === '' ? `${significant(100 * found.number.value, 3)} %` : found.text;
}
