import { z } from 'zod';
import type { Compound } from '../../core/dosing/compound.ts';
import { riseFrom, supplyPerG } from '../../core/dosing/dose.ts';
import { Problem } from '../../core/problem.ts';
import { mass, significant, volume } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { parameter, parameterIds, type ParameterId } from '../../core/water/parameter.ts';
import { readWhen } from '../../core/words/when.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { askedAmount } from '../dose/asked-amount.ts';
import { askedCompound, askedParameter, askedPurity, inOwnUnit } from '../dose/asked.ts';
import type { Keep, NewAddition, Tank } from '../keep.ts';
import { quantityOption, textOption } from '../options.ts';
import { askedTank, keepOf } from '../tank/asked-tank.ts';
import { inZone } from '../zone.ts';
import { momentsOf, timeOf, zoneLine } from './words.ts';
import { limitsOf } from '../../core/water/limits.ts';
import { say } from '../../core/wording/say.ts';

export const logDoseCommand = defineCommand({
  path: ['log', 'dose'],
  summary: 'Log what you added: the rise it makes in your tank, for working out daily use',
  example: '/log dose with:soda ash amount:20 g',
  private: true,
  options: z.strictObject({
    with: textOption('The salt that was added, e.g. soda ash', { suggest: 'compound' }).optional(),
    amount: textOption('How much of it, e.g. 20 g; mL need a strength').optional(),
    of: textOption('What it raised, where only the rise is known', { suggest: 'dosed' }).optional(),
    rise: textOption('By how much it raised the tank, e.g. 0.8 dKH').optional(),
    at: textOption('When, if not now: 2 hours ago, yesterday 7pm').optional(),
    purity: quantityOption('share', 'Pure salt in the powder; pure if left out').optional(),
    strength: textOption('Of a solution: grams of powder per litre, e.g. 80 g/L').optional(),
    tank: textOption('Which of your tanks, if not the one in use', { suggest: 'tank' }).optional(),
  }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const tank = askedTank(keep, input.tank);
    const here = inZone(context, tank);
    const when = readWhen(input.at, { field: 'at', nowMs: context.nowMs, zone: here.zone });
    const dose = input.with === undefined ? knownRise(input) : fromCompound(input, input.with, tank);
    logAll(
      keep,
      tank,
      dose.rises.map(({ id, rise }) => ({
        atMs: when.atMs,
        parameter: id,
        rise,
        compound: dose.compound,
        massG: dose.massG,
      })),
    );
    const words = dose.rises.map(riseWords);
    return answer({
      headline: `Logged for ${tank.name}: ${dose.what}, worth ${words.join(' and ')}.`,
      instants: momentsOf([when.atMs], here),
      read: [
        `${tank.name}, added at ${timeOf(when.atMs, here)} (${zoneLine(here)})`,
        ...when.notes,
        ...dose.read,
      ],
      dangers: paceDangers(dose.rises),
      sources: dose.compound === undefined ? ['practice'] : ['iupac21', 'practice'],
      next: [
        action(say('log.undo'), 'log undo', { of: 'dose', tank: tank.name }),
        action(say('dose.showLog'), 'log show', { tank: tank.name }),
      ],
    });
  },
});

/** A rise in the parameter's own unit. */
interface Rise {
  readonly id: ParameterId;
  readonly rise: number;
}

interface Dose {
  readonly what: string;
  readonly rises: readonly Rise[];
  readonly compound?: string;
  readonly massG?: number;
  readonly read: readonly string[];
}

interface DoseInput {
  readonly amount?: string | undefined;
  readonly of?: string | undefined;
  readonly rise?: string | undefined;
  readonly purity?: string | undefined;
  readonly strength?: string | undefined;
}

function knownRise({ of, rise, amount }: DoseInput): Dose {
  if (of === undefined || rise === undefined) {
    throw new Problem(say('log.whatWasAdded'), {
      field: amount === undefined && of !== undefined ? 'rise' : 'with',
      hint: say('log.sayWithSodaAsh'),
    });
  }
  const id = askedParameter(of);
  const { kind, label, unit } = parameter(id);
  const read = readQuantity(kind, rise.replace(/^\+/, ''), { field: 'rise', fallback: unit });
  const own = inOwnUnit(id, read.value);
  if (own <= 0) throw new Problem(say('dose.riseAbove0'), { field: 'rise', given: rise });
  return { what: `a dose for ${label}`, rises: [{ id, rise: own }], read: read.notes };
}

/** Every parameter the compound supplies, the one it is dosed for first: limewater brings calcium too. */
function fromCompound(input: DoseInput, text: string, tank: Tank): Dose {
  const compound = askedCompound(text, input.of === undefined ? undefined : askedParameter(input.of));
  const [form, ...others] = compound.forms;
  if (others.length > 0) {
    throw new Problem(say('dose.whichForm', { label: compound.label }), {
      field: 'with',
      given: text,
      choices: compound.forms.map(({ name }) => name),
    });
  }
  if (input.amount === undefined) {
    throw new Problem(say('log.howMuch', { name: form.name }), {
      field: 'amount',
      hint: say('log.gramsEG20'),
    });
  }
  const amount = askedAmount(input.amount, compound, input.strength);
  if (amount.lowG !== amount.highG || amount.highG <= 0) {
    throw new Problem(say('dose.giveWhatWasAdded'), { field: 'amount', given: input.amount });
  }
  const purity = askedPurity(input.purity);
  const massG = amount.highG;
  const rises = supplied(form).map((id) => ({
    id,
    rise: inOwnUnit(id, riseFrom(form, id, massG, tank.netVolumeL, purity.share)),
  }));
  return {
    what: `${mass(massG)} of ${form.name} in ${volume(tank.netVolumeL)}`,
    rises,
    compound: form.name,
    massG,
    read: [
      ...amount.read,
      compound.read,
      purity.read,
      `net water of ${tank.name}: ${volume(tank.netVolumeL)}`,
    ],
  };
}

function supplied(form: Compound): readonly ParameterId[] {
  const others = parameterIds.filter((id) => !form.raises.includes(id) && supplyPerG(form, id) > 0);
  return [...form.raises, ...others];
}

/** All or nothing: what was added before a failure is taken out again. */
function logAll(keep: Keep, tank: Tank, additions: readonly NewAddition[]): void {
  const done: number[] = [];
  try {
    for (const addition of additions) {
      const added = keep.addAddition(tank.id, addition);
      if (added !== undefined) done.push(added.id);
    }
  } catch (error) {
    for (const id of done) keep.removeAddition(tank.id, id);
    throw error;
  }
}

function riseWords({ id, rise }: Rise): string {
  return `${significant(rise, 3)} ${parameter(id).unit} of ${parameter(id).label}`;
}

function paceDangers(rises: readonly Rise[]): readonly string[] {
  return rises.flatMap(({ id, rise }) => {
    const { label, unit } = parameter(id);
    const { pace } = limitsOf(id);
    if (pace === undefined || rise <= pace.up * (1 + 1e-9)) return [];
    return [
      `More than the usual ${pace.up} ${unit} of ${label} in a day: add no more today, and test tomorrow.`,
    ];
  });
}
