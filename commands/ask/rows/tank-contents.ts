import { clauseWords } from '../../../core/language/clause-words.ts';
import { met } from '../../../core/language/met.ts';
import type { Said } from '../../../core/language/said.ts';
import { sidesText, type Sides } from '../../../core/language/side-units.ts';
import { withUnit } from '../../../core/language/system-volume.ts';
import { readQuantity } from '../../../core/quantity/read.ts';
import { significant } from '../../../core/quantity/format.ts';
import type { Scanned } from '../../../core/language/tokens.ts';
import { attempt } from './attempt.ts';

/** Sides of one box of water. */
const SIDES = 3;

/** Water of a running sump: as a volume, else by its sides; undefined where neither is said whole. */
export function sumpIn(
  scanned: Scanned,
  all: readonly Said[],
  sides: readonly Said[],
  unit: string | undefined,
): string | undefined {
  const litres = all.filter(
    (one) => isSump(scanned, one) && !sides.some(({ number }) => number.start === one.number.start),
  );
  if (litres.length > 0)
    return litres
      .map((one) => {
        const text = inGallons(withUnit(scanned, all, one), unit);
        const { number } = one.number;
        return text.replace(number, String(Number(number) * partOf(all, one, one)));
      })
      .join(' + ');
  const [first, last] = [sides[0], sides.at(-1)];
  if (first === undefined || last === undefined || sides.length % SIDES !== 0) return undefined;
  const boxes = Array.from({ length: sides.length / SIDES }, (_, at) =>
    sidesText(scanned.text, sides.slice(at * SIDES, (at + 1) * SIDES), []),
  );
  const litresOf = (box: Sides): number => {
    const text = box.unit === undefined ? `${box.text} ${unit ?? ''}` : box.text;
    return readQuantity('volume', text, { field: 'sump' }).value;
  };
  return attempt(
    () =>
      `${significant(partOf(all, first, last) * boxes.reduce((sum, box) => sum + litresOf(box), 0), 4)} L`,
  );
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

/** "a tenth of it". */
function isPart(value: number): boolean {
  return value > 0 && value <= 0.6;
}

/** Rock by its mass, or by its share of the tank: "about 20 kg of rock", "rock's maybe a tenth of it". */
export function rockIn(scanned: Scanned, all: readonly Said[]): string | undefined {
  const found = all.find(({ part, number }) => {
    const isOf = part === 'amount' || part === 'none';
    const isRock = ['mass', 'share'].some((kind) => number.kinds.some((one) => one === kind));
    if (!isOf || !(isRock || (number.unit === '' && isPart(number.value)))) return false;
    const words = clauseWords(scanned, number);
    return met(words, 'places.rock') && !met(words, 'places.sandBed');
  });
  if (found === undefined) return undefined;
  return found.number.unit === '' ? `${significant(100 * found.number.value, 3)} %` : found.text;
}
