import { findCompound, type Compound } from '../../core/dosing/compound.ts';
import { supplyPerG } from '../../core/dosing/dose.ts';
import { fixed, mass } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { is } from '../../core/words/mention.ts';
import { answer } from '../answer.ts';
import { says, type Intent } from './intent.ts';

/** "the recipe says 100 g baking soda, I put in 50 g soda ash": grams of one that equal grams of the other. */
export const swapIntent: Intent = (heard) => {
  const [from, to] = recipePair(heard.compounds.map(({ name }) => name));
  if (from === undefined || to === undefined) return undefined;
  if (
    !says(
      heard,
      'instead',
      'swap',
      'replace',
      'twice',
      'half',
      'double',
      'recipe',
      'strong',
      'stronger',
      'equal',
      'same as',
    )
  )
    return undefined;
  const masses = heard.mentions
    .filter((m) => is(m, 'mass'))
    .map((m) => readQuantity('mass', m.text, { field: 'amount' }).value);
  const recipeG = masses[0] ?? 100;
  const ratio = supplyPerG(from, 'alkalinity') / supplyPerG(to, 'alkalinity');
  const usedG = masses[1];
  const miss = usedG === undefined ? undefined : usedG / (recipeG * ratio) - 1;
  const verdict =
    miss === undefined || Math.abs(miss) < 0.02
      ? ''
      : `, so ${mass(usedG ?? 0)} is ${fixed(Math.abs(miss) * 100, 0)} % too ${miss < 0 ? 'little' : 'much'}`;
  const right = miss !== undefined && Math.abs(miss) < 0.02;
  return answer({
    headline: `${right ? 'Yes' : 'Not half'}: ${mass(recipeG)} of ${from.name} equals ${mass(recipeG * ratio)} of ${to.name}${verdict}.`,
    read: [
      `the recipe as ${mass(recipeG)} of ${from.name} (${from.formula})`,
      `the replacement as pure, dry ${to.name} (${to.formula})`,
    ],
    facts: [
      { label: 'grams for grams', value: `${fixed(ratio, 3)} g of ${to.name} per gram of ${from.name}` },
    ],
    steps: [`Weigh ${mass(recipeG * ratio)}; the alkalinity is then the same.`],
    working: [from, to]
      .map((c) => `${c.formula}: ${fixed(supplyPerG(c, 'alkalinity'), 2)} meq per gram`)
      .concat('a carbonate counts twice, but its sodium weighs too: (105.99 / 2) / 84.01 = 0.631'),
    cautions: [
      'Baking drives off water and CO2 (2 NaHCO3 gives Na2CO3); powder baked too short or too cool lies in between, so test the first batch.',
      'The alkalinity is the same but the pH is not: soda ash raises pH, baking soda lowers it slightly at first. Both give carbonate.',
      'Soda ash irritates the eyes: keep the dust out of them.',
    ],
    sources: ['iupac21', 'dsc07', 'ghs'],
  });
};

/** Both compounds that supply alkalinity, the bicarbonate of a recipe first and the carbonate that replaces it. */
function recipePair(words: readonly string[]): readonly [Compound | undefined, Compound | undefined] {
  const found = words
    .map((word) => findCompound(word))
    .filter((c): c is Compound => c !== undefined && 'atoms' in c && c.raises.includes('alkalinity'));
  const distinct = [...new Set(found)];
  return [
    distinct.find((c) => c.name === 'sodium bicarbonate'),
    distinct.find((c) => c.name === 'sodium carbonate'),
  ];
}
