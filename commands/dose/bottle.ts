import { z } from 'zod';
import { hazard } from '../../core/care/hazards.ts';
import { bottleFor, riseOfBottle, type BottleStrength } from '../../core/dosing/bottle.ts';
import { amountG } from '../../core/dosing/dose.ts';
import { significant, volume } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { limitsOf } from '../../core/water/limits.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { possible } from '../../core/water/possible.ts';
import { answer, type Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { quantityOption, textOption } from '../options.ts';
import { shortLimits } from '../short/limits.ts';
import { askFirst, sureOption } from '../unusual.ts';
import { action } from '../calls.ts';
import { readPerDay } from '../waterchange/rate.ts';
import {
  askedCompound,
  askedParameter,
  askedWater,
  inOwnUnit,
  oneForm,
  shown,
  type AskedWater,
} from './asked.ts';
import { BOTTLE_CAUTIONS, millilitres, millilitresByDay } from './bottle-words.ts';
import { askedChange, believable, withinKit } from './change.ts';
import { HOLDS_ONLY, retest } from './daily.ts';
import { noDose, retestFirst, sameToTheKit } from './no-dose.ts';
import { stockOf } from './stock.ts';
import { moreThanAnyTank } from './use-answer.ts';

const options = z.strictObject({
  of: textOption('What the bottle raises', { suggest: 'dosed' }),
  dose: quantityOption('volume', 'Its dose by the label, e.g. 1 mL'),
  per: quantityOption('volume', 'In how much water, by its label, e.g. 100 L'),
  raises: textOption('How far that raises it, e.g. 0.5 dKH'),
  goal: textOption('Where it should end: 8.4 dKH; or the rise: +1 dKH').optional(),
  now: textOption('What it reads now, e.g. 7.2 dKH').optional(),
  use: textOption('What the tank uses, e.g. 0.6 dKH a day').optional(),
  amount: quantityOption('volume', 'How much of it goes in, e.g. 20 mL').optional(),
  with: textOption('The salt to make the same from', { suggest: 'compound' }).optional(),
  bottle: quantityOption('volume', 'Finished volume of what is made, e.g. 2 L').optional(),
  volume: quantityOption('volume', 'Net water of the whole system', 'volume').optional(),
  sure: sureOption(),
});

type Input = z.infer<typeof options>;

/** The bottle in canonical units, and its label as it was read. */
interface Label {
  readonly id: ParameterId;
  readonly strength: BottleStrength;
  readonly water: AskedWater;
  readonly read: readonly string[];
}

export const bottleCommand = defineCommand({
  path: ['dose', 'bottle'],
  summary: 'A bottle that says what it raises: its ml, or what an amount did',
  example: '/dose bottle of:alkalinity dose:1 mL per:100 L raises:0.5 dKH use:0.8 dKH a day volume:250 L',
  options,
  run: (input): Answer => {
    const label = labelOf(input);
    if (input.with !== undefined) return made(label, input, input.with);
    if (input.use !== undefined) return replaced(label, input.use);
    if (input.goal !== undefined) return raised(label, input, input.goal);
    return effect(label, input.amount ?? input.dose);
  },
});

function labelOf(input: Input): Label {
  const id = askedParameter(input.of);
  const { kind, unit } = parameter(id);
  const dose = readQuantity('volume', input.dose, { field: 'dose' });
  const per = readQuantity('volume', input.per, { field: 'per' });
  const raises = readQuantity(kind, input.raises, { field: 'raises', fallback: unit });
  const water = askedWater(input.volume);
  const words = `its strength as ${volume(dose.value)} raises ${volume(per.value)} by ${shown(id, raises.value)}`;
  return {
    id,
    strength: { doseL: dose.value, perL: per.value, raises: raises.value },
    water,
    read: [words, ...dose.notes, ...per.notes, ...raises.notes, ...water.read],
  };
}

function raised(label: Label, input: Input, goal: string): Answer {
  const { id, strength, water } = label;
  const change = askedChange(id, input.now, goal);
  const read = [...label.read, ...change.read];
  if (change.now !== undefined && !believable(id, change.now)) return retestFirst(id, change.now, read);
  if (change.goal !== undefined && withinKit(id, change.rise)) return sameToTheKit(id, change);
  if (change.rise <= 0) return noDose(id, change);
  const asked =
    change.goal === undefined
      ? undefined
      : askFirst({
          id,
          goal: inOwnUnit(id, change.goal),
          now: change.now === undefined ? undefined : inOwnUnit(id, change.now),
          sure: input.sure,
          again: (words, changed) => action(words, 'dose bottle', { ...input, ...changed }),
        });
  if (asked !== undefined) return asked;
  const litres = bottleFor(strength, change.rise, water.volumeL);
  const { words, days } = millilitresByDay(id, change.rise, litres);
  const main = `${words} of it ${water.where}: ${parameter(id).label} ${change.words}`;
  const whole = `${main}, if it is as strong as said.`;
  return answer({
    headline: whole.length <= shortLimits.headline ? whole : `${main}.`,
    read,
    steps: [
      days > 1
        ? 'Retest before each further portion, and stop at the goal.'
        : 'Retest the next day before any more.',
    ],
    working: [
      `${shown(id, change.rise)} / ${shown(id, strength.raises)} x ${volume(strength.doseL)} x ${significant(water.volumeL)} / ${significant(strength.perL)} = ${volume(litres)}`,
    ],
    cautions: BOTTLE_CAUTIONS,
    sources: ['practice'],
  });
}

function replaced({ id, strength, water, read }: Label, use: string): Answer {
  const { perDay, notes } = readPerDay(id, use, 'use');
  if (moreThanAnyTank(id, inOwnUnit(id, perDay)))
    return retest(`${shown(id, perDay)} of ${parameter(id).label} a day`, [...read, ...notes]);
  const most = limitsOf(id).pace?.up;
  const isMuch = most !== undefined && inOwnUnit(id, perDay) > most;
  const daily = millilitres(bottleFor(strength, perDay, water.volumeL));
  return answer({
    facts: [{ label: 'of it', value: `${daily} ${water.where}` }],
    headline: `${daily} of it a day ${water.where} replaces ${shown(id, perDay)} of ${parameter(id).label} a day, if it is as strong as said.`,
    read: [...read, ...notes],
    steps: [
      HOLDS_ONLY,
      'Start with a little less, in several parts over the day, and test at the same hour after two or three days.',
      ...(isMuch
        ? ['That is a lot for a day: measure the use again before you dose for it (/dose use).']
        : []),
    ],
    cautions: BOTTLE_CAUTIONS,
    sources: ['practice'],
  });
}

function effect({ id, strength, water, read }: Label, amount: string): Answer {
  const { value, notes } = readQuantity('volume', amount, { field: 'amount' });
  const rise = riseOfBottle(strength, value, water.volumeL);
  possible(id, 'amount', inOwnUnit(id, rise));
  const { days } = millilitresByDay(id, rise, value);
  return answer({
    headline: `${volume(value)} of it raises ${parameter(id).label} by ${shown(id, rise)} ${water.where}, if it is as strong as said.`,
    read: [...read, ...notes],
    steps: [
      days > 1
        ? `Not in one day: spread it over ${days} days or more, and retest before each part.`
        : 'Within a day\u2019s pace; retest before any more.',
    ],
    cautions: BOTTLE_CAUTIONS,
    sources: ['practice'],
  });
}

/** The powder in a litre that makes a solution do what the label says. */
function made({ id, strength, read }: Label, { bottle }: Input, salt: string): Answer {
  const asked = askedCompound(salt, id);
  const form = oneForm(asked, salt);
  const gL = amountG(form, id, strength.raises, strength.perL) / strength.doseL;
  const { tooMuch, limit, source } = stockOf(form, gL, 1);
  const finalL = bottle === undefined ? 1 : readQuantity('volume', bottle, { field: 'bottle' }).value;
  const grams = `${significant(gL * finalL)} g of ${form.name} made up to ${volume(finalL)} (${significant(gL)} g per litre)`;
  return answer({
    headline:
      tooMuch === undefined
        ? `${grams}: then ${volume(strength.doseL)} raises ${volume(strength.perL)} by ${shown(id, strength.raises)}.`
        : `${form.name} cannot be that strong: it would take ${significant(gL)} g per litre. Dose more of a weaker one.`,
    read: [...read, asked.read],
    facts: [{ label: 'What dissolves', value: limit }],
    steps: ['Dissolve in about three quarters of the water, then fill up to the mark with fresh (RO) water.'],
    dangers: hazard(form.hazard).dangers,
    cautions: BOTTLE_CAUTIONS,
    sources: ['iupac21', source, hazard(form.hazard).basis],
  });
}
