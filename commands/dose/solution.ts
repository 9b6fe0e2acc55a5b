import { z } from 'zod';
import { handling, hazard } from '../../core/care/hazards.ts';
import { suppliedPerMl } from '../../core/dosing/solution.ts';
import { Problem } from '../../core/problem.ts';
import { mass, significant, volume, volumeAsWritten } from '../../core/quantity/format.ts';
import { weighable } from '../../core/quantity/portion.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { quantityOption, textOption } from '../options.ts';
import { opened, type Opening } from '../short/remark-first.ts';
import { askedCompound, askedParameter, askedPurity, oneForm, shown } from './asked.ts';
import { askedChange, withinKit } from './change.ts';
import { doseOfStock, stockOf } from './stock.ts';
import { strongest } from './strongest.ts';
import { tankDose, type StockRise } from './tank-dose.ts';
import { supplyLine } from './working.ts';
import { say } from '../../core/wording/say.ts';

export const solutionCommand = defineCommand({
  path: ['dose', 'solution'],
  summary: 'How strong a stock solution is, and how many millilitres of it make a dose',
  example: '/dose solution with:sodium bicarbonate amount:80 g volume:1 L goal:+0.5 dKH',
  options: z.strictObject({
    with: textOption('The salt, e.g. baking soda', { suggest: 'compound' }),
    amount: quantityOption(
      'mass',
      'Powder weighed in, e.g. 80 g; the most that keeps dissolved if left out',
    ).optional(),
    volume: quantityOption('volume', 'Finished volume after filling up, e.g. 1 L'),
    of: textOption('What it is dosed for, if there is a choice', { suggest: 'dosed' }).optional(),
    goal: textOption('What a dose should reach, e.g. +0.5 dKH, or 8.4 dKH with now').optional(),
    now: textOption('What it reads now, e.g. 7.9 dKH').optional(),
    purity: quantityOption('share', 'Pure salt in the powder; pure if left out').optional(),
    tank: quantityOption('volume', 'Net water of the whole system, for its dose', 'volume').optional(),
  }),
  // Without a dose to reach, the tank says nothing of the bottle.
  fills: ({ goal }) => goal !== undefined,
  run: (input): Answer => {
    const asked = askedCompound(input.with);
    const { read } = asked;
    const compound = oneForm(asked, input.with);
    const id = input.of === undefined ? compound.raises[0] : askedParameter(input.of);
    if (id === undefined) throw new Error(`${compound.name} is dosed for nothing`);
    const final = readQuantity('volume', input.volume, { field: 'volume' });
    if (input.amount === undefined) return strongest(compound, id, final.value, [read, ...final.notes]);
    const grams = readQuantity('mass', input.amount, { field: 'amount' });
    const purity = askedPurity(input.purity);
    const { gL, tooMuch, limit, source } = stockOf(compound, grams.value, final.value);
    const perMl = suppliedPerMl(compound, id, gL, purity.share);
    const powder = weighable(gL * final.value);
    const change = askedRise(id, input.now, input.goal);
    const stock = { compound, id, rise: change?.rise ?? 0, gL, purity: purity.share };
    const isLitre = Math.abs(final.value - 1) < 1e-9;
    const made = `${powder} in ${volume(final.value)}`;
    const tank =
      change?.isDose === true && input.tank !== undefined ? tankDose(stock, input.tank) : undefined;
    const parts: readonly (Opening | undefined)[] = [
      tooMuch === undefined
        ? undefined
        : { label: 'What dissolves', value: `${tooMuch}. Make it weaker, with ${made}.` },
      tank === undefined ? undefined : { label: 'Dose', value: tank.first },
      {
        label: `${significant(gL, 4)} g of ${compound.name} per litre`,
        value: `each mL raises 100 L by ${shown(id, perMl / 100)}`,
        sentence: `${isLitre ? '' : `${made} is `}${significant(gL, 4)} g of ${compound.name} per litre: each mL raises 100 L by ${shown(id, perMl / 100)}.`,
      },
    ];
    const given = answer({
      headline: '',
      read: [
        `${mass(grams.value)} of powder made up to ${volumeAsWritten(final.value, final.written, final.unit)}`,
        ...grams.notes,
        ...final.notes,
        read,
        purity.read,
        ...(tank?.read ?? []),
      ],
      facts: [
        ...(change === undefined ? [] : [doseFact(stock, change)]),
        { label: 'What dissolves', value: limit },
        { label: 'Each mL holds', value: perMlWords(id, perMl) },
      ],
      steps: [
        ...(tank?.steps ?? []),
        compound.hazard === 'lime'
          ? 'Use only the clear liquid above the settled powder; see /dose limewater.'
          : 'Dissolve in about three quarters of the water, then fill up to the mark with fresh (RO) water.',
        'Label the bottle with what it is, its strength and the date. Keep it closed; never in a drinks bottle.',
      ],
      working: [
        `${tooMuch === undefined ? `${significant(grams.value, 4)} g` : powder} / ${volume(final.value)} = ${significant(gL, 4)} g/L`,
        supplyLine(compound, id),
        `${significant(gL / 1000, 4)} g per mL${purity.share === 1 ? '' : ` × ${significant(purity.share, 3)}`} → ${perMlWords(id, perMl)} per mL`,
      ],
      ...handling(compound.hazard),
      sources: ['iupac21', hazard(compound.hazard).basis, source],
    });
    return opened(parts, given);
  },
});

function perMlWords(id: ParameterId, perMl: number): string {
  return id === 'alkalinity'
    ? `${significant(perMl, 3)} meq`
    : `${significant(perMl, 3)} mg of ${parameter(id).label}`;
}

/** The rise that was asked; `isDose` is false where a kit cannot tell the reading from the goal. */
interface AskedRise {
  readonly rise: number;
  readonly words: string;
  readonly isDose: boolean;
}

/** Undefined without a goal. @throws Problem for a goal below the reading. */
function askedRise(
  id: ParameterId,
  now: string | undefined,
  goal: string | undefined,
): AskedRise | undefined {
  if (goal === undefined) return undefined;
  const { rise, words } = askedChange(id, now, goal);
  if (rise <= 0)
    throw new Problem(say('dose.noDoseLowersReading'), {
      field: 'goal',
      given: goal,
      hint: say('dose.goalMustBeAbove'),
    });
  return { rise, words, isDose: now === undefined || !withinKit(id, rise) };
}

/** mL per 100 L of tank for the dose asked. */
function doseFact({ compound, id, rise, gL, purity }: StockRise, { words, isDose }: AskedRise): Fact {
  const { label } = parameter(id);
  if (!isDose) return { label: 'No dose', value: `${label} is as near to the goal as a kit can tell` };
  const { all, daily } = doseOfStock(compound, id, rise, gL, purity, 100);
  return {
    label: `Per 100 L of tank, ${label} ${words}`,
    value: daily === undefined ? all : `${all} in all, ${daily}`,
  };
}
