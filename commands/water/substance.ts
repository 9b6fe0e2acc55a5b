import { Problem } from '../../core/problem.ts';
import { mass, significant, volume } from '../../core/quantity/format.ts';
import { readQuantity, type Quantity } from '../../core/quantity/read.ts';
import { say } from '../../core/wording/say.ts';

/** Grams of something that went in. */
export interface Substance {
  readonly grams: number;
  readonly words: string;
  readonly read: readonly string[];
}

const PERCENT = /^\s*(\d{1,3}(?:[.,]\d{1,3})?)\s*(?:%|per ?cent)\s*$/i;

/**
 * Reads a mass, or millilitres of a liquid of some strength in g/L or %, the latter as grams in 100 mL.
 *
 * @throws Problem where it is neither, or the strength of a liquid is missing.
 */
export function substance(amount: string, strength: string | undefined): Substance {
  const weighed = weighedG(amount);
  if (weighed !== undefined) {
    const { value, notes } = weighed;
    return { grams: value, words: mass(value), read: [`${mass(value)} of it`, ...notes] };
  }
  const { value: litres, notes } = readQuantity('volume', amount, { field: 'amount' });
  if (strength === undefined)
    throw new Problem(say('water.howStrongWas'), {
      field: 'strength',
      hint: say('water.itsLabelSaysExample'),
    });
  const { gL, words } = strengthOf(strength);
  return {
    grams: gL * litres,
    words: `${volume(litres)} of ${words}`,
    read: [
      `${volume(litres)} with ${significant(gL, 3)} g in a litre, that is ${mass(gL * litres)}`,
      ...notes,
    ],
  };
}

function strengthOf(text: string): { readonly gL: number; readonly words: string } {
  const [, percent] = PERCENT.exec(text) ?? [];
  if (percent === undefined) {
    const { value } = readQuantity('concentration', text, { field: 'strength', fallback: 'g/L' });
    return { gL: value / 1000, words: `${significant(value / 1000, 3)} g/L` };
  }
  const share = Number(percent.replace(',', '.'));
  if (share > 0 && share <= 100) return { gL: share * 10, words: `${significant(share, 3)} %` };
  throw new Problem(say('water.strengthBetween0100'), { field: 'strength', given: text });
}

function weighedG(text: string): Quantity | undefined {
  try {
    return readQuantity('mass', text, { field: 'amount' });
  } catch (error) {
    if (error instanceof Problem && error.choices.length === 0) return undefined;
    throw error;
  }
}
