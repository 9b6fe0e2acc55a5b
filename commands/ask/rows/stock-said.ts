import { compoundMolarMass, formsOf } from '../../../core/dosing/compound.ts';
import type { Slots } from '../../../core/language/slots.ts';
import { significant } from '../../../core/quantity/format.ts';
import { readQuantity } from '../../../core/quantity/read.ts';
import { readableAs } from './readable-as.ts';

/** A stock solution that was told of: the powder and the water it is made up to. */
export interface StockSaid {
  readonly with: string;
  readonly amount: string;
  readonly volume: string;
}

/** By its strength ("84 g/L"), or by the powder weighed in and the bottle; undefined where one is missing. */
export function stockSaid({ salt, strength, amounts = [], container }: Slots): StockSaid | undefined {
  if (salt === undefined) return undefined;
  const gL = strength === undefined ? undefined : strengthGL(strength, salt);
  if (gL !== undefined) return { with: salt, amount: `${significant(gL, 4)} g`, volume: '1 L' };
  const powder = [strength, ...amounts].find((text) => text !== undefined && isMass(text));
  return powder === undefined || container === undefined
    ? undefined
    : { with: salt, amount: powder, volume: container };
}

/** The strength of a solution in g/L, where it was told; undefined where it was not. */
export function strengthSaid(slots: Slots): string | undefined {
  const stock = stockSaid(slots);
  if (stock === undefined || (slots.strength === undefined && stock.amount === slots.amount))
    return undefined;
  return `${significant(gramsPerLitre(stock), 4)} g/L`;
}

/** Grams in a litre of it. */
export function gramsPerLitre({ amount, volume }: StockSaid): number {
  const grams = readQuantity('mass', amount, { field: 'amount' }).value;
  return grams / readQuantity('volume', volume, { field: 'volume' }).value;
}

/** "a day", "every 7 days". */
export function oftenSaid(days: number): string {
  return days === 1
    ? 'a day'
    : days < 1
      ? `${significant(1 / days, 3)} times a day`
      : `every ${significant(days, 3)} days`;
}

/** What was put in of a salt each day, or in all where no time was said: "10 g a day". */
export function addedADay(slots: Slots): string | undefined {
  const added = addedSaid(slots);
  const { amountDays } = slots;
  if (added === undefined || amountDays === undefined) return added;
  if (amountDays === 1) return `${added} a day`;
  const grams = readQuantity('mass', added, { field: 'amount' }).value;
  return `${significant(grams / amountDays, 4)} g a day`;
}

/** What was put in of a salt, as grams where it was a solution of a known strength; undefined where nobody can tell. */
function addedSaid(slots: Slots): string | undefined {
  const { salt, amount } = slots;
  if (salt === undefined || amount === undefined) return undefined;
  if (isMass(amount)) return amount;
  const stock = slots.strength === undefined ? undefined : stockSaid(slots);
  const litres = readableAs('volume', amount);
  return stock === undefined || litres === undefined
    ? undefined
    : `${significant(gramsPerLitre(stock) * litres, 4)} g`;
}

/** Grams in a litre, also of a strength in mol/L; undefined for a text that is no concentration, or has no unit. */
function strengthGL(text: string, salt: string): number | undefined {
  const molar = /^([\d.]+) molar$/.exec(text)?.[1];
  if (molar !== undefined) return molarGL(Number(molar), salt);
  if (!/[a-z]/i.test(text)) return undefined;
  const mgL = readableAs('concentration', text);
  return mgL === undefined ? undefined : mgL / 1000;
}

/** Check: 1 mol/L of NaHCO3 -> 84.01 g/L (iupac21). */
function molarGL(molar: number, salt: string): number | undefined {
  const [form, more] = formsOf(salt);
  return form === undefined || more !== undefined ? undefined : molar * compoundMolarMass(form);
}

export function isMass(text: string): boolean {
  return readableAs('mass', text) !== undefined;
}
