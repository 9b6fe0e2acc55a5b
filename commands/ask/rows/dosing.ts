import { compoundsFor, findCompound } from '../../../core/dosing/compound.ts';
import type { Slots } from '../../../core/language/slots.ts';
import type { ParameterId } from '../../../core/water/parameter.ts';
import { amountCommand } from '../../dose/amount.ts';
import { effectCommand } from '../../dose/effect.ts';
import { limewaterCommand } from '../../dose/limewater.ts';
import { solutionCommand } from '../../dose/solution.ts';
import { useCommand } from '../../dose/use.ts';
import { call } from '../call.ts';
import type { Row } from '../row.ts';

export const dosingRows: readonly Row[] = [
  {
    kind: 'dose-amount',
    label: 'How much to dose',
    needs: [
      { oneOf: ['of'], ask: 'What do you want to raise: alkalinity, calcium, magnesium, or something else?' },
      { oneOf: ['wanted', 'change'], ask: 'What does it read now, and what should it be?' },
    ],
    uses: ['of', 'now', 'was', 'wanted', 'change', 'salt', 'volume', 'salinity'],
    answer: ({ slots }, context) => {
      const { of, now, was, wanted, change, volume, salinity } = slots;
      const goal = wanted ?? (change === undefined ? undefined : `+${change}`);
      if (of === undefined || goal === undefined) return undefined;
      const input = { of, now: now ?? was, goal, with: saltFor(slots, of), volume, salinity };
      return call(amountCommand, input, context);
    },
  },
  {
    kind: 'dose-effect',
    label: 'What an amount does',
    needs: [
      { oneOf: ['salt'], ask: 'Which powder or solution is it, by its chemical name?' },
      { oneOf: ['amount'], ask: 'How much of it: grams, teaspoons or millilitres?' },
    ],
    uses: ['salt', 'amount', 'volume', 'of', 'now', 'was'],
    answer: ({ slots: { salt, amount, volume } }, context) =>
      salt === undefined || amount === undefined
        ? undefined
        : call(effectCommand, { with: salt, amount, volume }, context),
  },
  {
    kind: 'dose-use',
    label: 'What my tank uses a day',
    needs: [
      { oneOf: ['was'], ask: 'What did it read, what does it read now, and how many days lie between?' },
    ],
    uses: ['of', 'was', 'now', 'span', 'moments', 'volume'],
    answer: ({ slots: { of, was, now, span, volume } }, context) =>
      of === undefined || was === undefined || now === undefined || span === undefined
        ? undefined
        : call(useCommand, { of, before: was, now, over: span, volume }, context),
  },
  {
    kind: 'solution',
    label: 'Strength of a solution',
    needs: [{ oneOf: ['salt'], ask: 'Which powder is it, how much of it, and in how much water?' }],
    uses: ['salt', 'amount', 'container', 'change', 'volume'],
    answer: ({ slots: { salt, amount, container, change } }, context) =>
      salt === undefined || amount === undefined || container === undefined
        ? undefined
        : call(
            solutionCommand,
            { with: salt, amount, volume: container, goal: change === undefined ? undefined : `+${change}` },
            context,
          ),
  },
  {
    kind: 'limewater',
    label: 'Limewater in the top-off',
    uses: ['container', 'rate', 'of', 'volume'],
    answer: ({ slots: { container, rate, of, volume } }, context) =>
      container === undefined
        ? undefined
        : call(
            limewaterCommand,
            { amount: container, goal: of === 'alkalinity' ? rate : undefined, volume },
            context,
          ),
  },
];

/** The salt that was named and raises it; none where the one named raises something else. */
function saltFor({ salts = [] }: Slots, of: ParameterId): string | undefined {
  const raising = new Set(compoundsFor(of).map(({ name }) => name));
  return salts.find((word) => {
    const found = findCompound(word);
    const forms = found === undefined ? [] : 'name' in found ? [found] : found;
    return forms.some(({ name }) => raising.has(name));
  });
}
