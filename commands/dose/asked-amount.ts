import { saturationGL } from '../../core/dosing/limewater.ts';
import { Problem } from '../../core/problem.ts';
import { mass, significant, span, volume } from '../../core/quantity/format.ts';
import { readQuantity, type Quantity } from '../../core/quantity/read.ts';
import { quantities } from '../../core/quantity/unit.ts';
import type { AskedCompound } from './asked.ts';
import { checkStrength } from './stock.ts';
import { say } from '../../core/wording/say.ts';

/** Grams of powder, least and most; they differ only where the amount was not weighed. */
export interface AskedAmount {
  readonly lowG: number;
  readonly highG: number;
  readonly words: string;
  readonly read: readonly string[];
}

/** Spoons and cups: a powder measured by volume. */
const SPOONS: ReadonlySet<string> = new Set(['tsp', 'tbsp']);
const TEASPOON_L = quantities.volume.units.find(({ symbol }) => symbol === 'tsp')?.factor ?? Number.NaN;

/**
 * The option `amount`: grams, spoons of a powder whose spoonful is roughly known, or millilitres of a solution of
 * `strength` (saturated limewater needs none).
 *
 * @throws Problem when it is none of these.
 */
export function askedAmount(text: string, compound: AskedCompound, strength?: string): AskedAmount {
  const plain = text.replace(/\b(?:heaped|heaping|level|rounded)\b/gi, '').trim();
  const found = weighed(plain) ?? readQuantity('volume', plain, { field: 'amount' });
  if (found.kind === 'mass')
    return exactly(found.value, mass(found.value), [`${mass(found.value)} of powder`, ...found.notes]);
  return SPOONS.has(found.unit) ? spoons(found, text, compound) : liquid(found, text, compound, strength);
}

/** Undefined when the text names no unit of mass, or asks back for one. */
function weighed(text: string): Quantity | undefined {
  try {
    return readQuantity('mass', text, { field: 'amount' });
  } catch (error) {
    if (error instanceof Problem && error.choices.length === 0) return undefined;
    throw error;
  }
}

function exactly(grams: number, words: string, read: readonly string[]): AskedAmount {
  return { lowG: grams, highG: grams, words, read };
}

/** Grams in a level teaspoon of whichever form it is; undefined where one of them is not known. */
export function teaspoonOf(forms: AskedCompound['forms']): readonly [number, number] | undefined {
  const each = forms.flatMap(({ teaspoonG }) => (teaspoonG === undefined ? [] : [teaspoonG]));
  if (each.length === 0 || each.length < forms.length) return undefined;
  return [Math.min(...each.map(([low]) => low)), Math.max(...each.map(([, high]) => high))];
}

const HEAPED = /\b(?:heaped|heaping)\b/i;
/** Level spoons in a heaped one: common practice, no source. */
const IN_A_HEAPED = [1.5, 2] as const;

function spoons(found: Quantity, text: string, { forms, label }: AskedCompound): AskedAmount {
  const spoonfuls = found.value / TEASPOON_L;
  const isHeaped = HEAPED.test(text);
  const [least, most] = isHeaped ? IN_A_HEAPED : [1, 1];
  const each = teaspoonOf(forms);
  if (each === undefined) {
    throw new Problem(say('dose.spoonHasNoFixed', { label }), {
      field: 'amount',
      given: text,
    });
  }
  const [low, high] = [each[0] * spoonfuls * least, each[1] * spoonfuls * most];
  const read = [
    ...(isHeaped
      ? [`a heaped spoon taken as ${IN_A_HEAPED.join(' to ')} level ones (common practice, no source)`]
      : []),
    `a level teaspoon of ${label} taken as ${each.join(' to ')} g (common practice); weigh it to know`,
  ];
  return {
    lowG: low,
    highG: high,
    words: `${text.trim()} (roughly ${span(significant(low, 2), significant(high, 2))} g)`,
    read,
  };
}

function liquid(
  found: Quantity,
  text: string,
  { forms, label }: AskedCompound,
  strength: string | undefined,
): AskedAmount {
  const [compound] = forms;
  if (strength !== undefined) {
    const { value } = readQuantity('concentration', strength, { field: 'strength', fallback: 'g/L' });
    checkStrength(compound, value / 1000, strength);
    const grams = (value / 1000) * found.value;
    const read = [
      `${volume(found.value)} of a solution of ${significant(value / 1000, 4)} g per litre`,
      ...found.notes,
    ];
    return exactly(grams, `${volume(found.value)} (${mass(grams)})`, read);
  }
  if (compound.hazard === 'lime') {
    const { low, high } = saturationGL();
    const words = `${volume(found.value)} of saturated limewater (${significant(low * found.value, 3)} to ${significant(high * found.value, 3)} g)`;
    return {
      lowG: low * found.value,
      highG: high * found.value,
      words,
      read: [`clear saturated limewater at 25 °C`, ...found.notes],
    };
  }
  throw new Problem(say('dose.howStrongSolution', { trim: text.trim(), label }), {
    field: 'strength',
    hint: say('dose.exampleStrength80G'),
  });
}
