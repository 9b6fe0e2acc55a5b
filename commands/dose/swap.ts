import { z } from 'zod';
import { handling, hazard } from '../../core/care/hazards.ts';
import type { Compound } from '../../core/dosing/compound.ts';
import { gramsForGram, sharedBy } from '../../core/dosing/swap.ts';
import { Problem } from '../../core/problem.ts';
import { fixed, mass } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { parameter } from '../../core/water/parameter.ts';
import { answer, type Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { quantityOption, textOption } from '../options.ts';
import { askedCompound, oneForm } from './asked.ts';
import { supplyLine } from './working.ts';
import { say } from '../../core/wording/say.ts';

/** Grams a recipe is taken as where it names none. */
const RECIPE_G = 100;
/** So near to the right amount a weighed one counts as right; own choice. */
const NEAR = 0.02;

export const swapCommand = defineCommand({
  path: ['dose', 'swap'],
  summary: 'One salt in place of another: the grams that do the same',
  example: '/dose swap with:baking soda instead:soda ash amount:100 g used:50 g',
  options: z.strictObject({
    with: textOption('The salt of the recipe, e.g. baking soda', { suggest: 'compound' }),
    instead: textOption('The salt you have, e.g. soda ash', { suggest: 'compound' }),
    amount: quantityOption('mass', 'What the recipe says; 100 g if left out').optional(),
    used: quantityOption('mass', 'What you put in of yours, to check it').optional(),
  }),
  run: (input): Answer => {
    const from = oneForm(askedCompound(input.with), input.with);
    const other = askedCompound(input.instead, undefined, 'instead');
    const to = oneForm(other, input.instead, 'instead');
    const [id] = sharedBy(from, to);
    if (id === undefined || from === to)
      throw new Problem(
        from === to ? say('dose.sameSalt') : say('dose.doesNotDoWhat', { name: to.name, name2: from.name }),
        { field: 'instead', given: input.instead },
      );
    const recipe = readQuantity('mass', input.amount ?? `${RECIPE_G} g`, { field: 'amount' });
    const used = input.used === undefined ? undefined : readQuantity('mass', input.used, { field: 'used' });
    const ratio = gramsForGram(from, to, id);
    const needG = recipe.value * ratio;
    const { first, behind } = verdictOn(used?.value, needG, isBaking(from, to));
    return answer({
      headline: `${first}${mass(recipe.value)} of ${from.name} equals ${mass(needG)} of ${to.name}${behind}.`,
      read: [
        `the recipe as ${mass(recipe.value)} of ${from.name} (${from.formula})`,
        `the replacement as pure, dry ${to.name} (${to.formula})`,
        ...recipe.notes,
        ...(used?.notes ?? []),
      ],
      facts: [
        { label: 'grams for grams', value: `${fixed(ratio, 3)} g of ${to.name} per gram of ${from.name}` },
      ],
      steps: [
        `Weigh ${mass(needG)}; the ${parameter(id).label} is then the same.`,
        to.hazard === 'lime'
          ? 'Never as powder into the tank: only as clear limewater, by slow drip (/dose limewater).'
          : 'Test after the first dose of it, before you rely on it.',
      ],
      working: [
        supplyLine(from, id),
        supplyLine(to, id),
        ...(isBaking(from, to)
          ? ['a carbonate counts twice, but its sodium weighs too: (105.99 / 2) / 84.01 = 0.631']
          : []),
      ],
      dangers: handling(to.hazard).dangers,
      cautions: [...besides(from, to), ...handling(to.hazard).cautions],
      sources: [
        ...(id === 'alkalinity' ? (['iupac21', 'dsc07'] as const) : (['iupac21'] as const)),
        hazard(to.hazard).basis,
      ],
    });
  },
});

/** The word before the sum, and what is behind it, where an amount was put in already. */
function verdictOn(
  usedG: number | undefined,
  needG: number,
  isBaked: boolean,
): { readonly first: string; readonly behind: string } {
  const no = isBaked ? 'Not half: ' : '';
  if (usedG === undefined || needG <= 0) return { first: no, behind: '' };
  const miss = usedG / needG - 1;
  if (Math.abs(miss) < NEAR) return { first: 'Yes: ', behind: '' };
  const word = miss < 0 ? 'little' : 'much';
  return {
    first: no === '' ? 'No: ' : no,
    behind: `, so ${mass(usedG)} is ${fixed(Math.abs(miss) * 100, 0)} % too ${word}`,
  };
}

/** Bicarbonate of a recipe, and the carbonate that an oven makes of it. */
function isBaking(from: Compound, to: Compound): boolean {
  return from.hazard === 'bicarbonate' && to.hazard === 'carbonate' && to.water === 0;
}

/** What is not the same although the sum is. */
function besides(from: Compound, to: Compound): readonly string[] {
  const isAlkalinity = from.raises.includes('alkalinity') && to.raises.includes('alkalinity');
  return [
    ...(isBaking(from, to)
      ? [
          'Baking drives off water and CO2 (2 NaHCO3 gives Na2CO3); powder baked too short or too cool lies in between, so test the first batch.',
        ]
      : []),
    isAlkalinity
      ? 'The alkalinity is the same but the pH is not: carbonate and lime raise pH, bicarbonate lowers it slightly at first.'
      : 'What else the salt is made of stays in the water: chloride, sulfate or sodium add up where one salt is used for long.',
  ];
}
