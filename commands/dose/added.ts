import { riseFrom } from '../../core/dosing/dose.ts';
import { Problem } from '../../core/problem.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { possible } from '../../core/water/possible.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { splitADay } from './a-day.ts';
import { askedAmount } from './asked-amount.ts';
import { askedCompound, asWritten, type AskedWater, inOwnUnit, oneForm, shown } from './asked.ts';
import { say } from '../../core/wording/say.ts';

/** What was added between two readings, as the rise it would have made alone (canonical unit). */
export interface Added {
  readonly rise: number;
  readonly read: string;
}

interface AddedInput {
  readonly amount?: string | undefined;
  readonly with?: string | undefined;
  readonly volume?: string | undefined;
}

/**
 * Reads `amount` as a rise, or as a mass of `with` in `volume`; in all or a day.
 *
 * @throws Problem when the water or the form of the compound is missing.
 */
export function askedAdded(id: ParameterId, input: AddedInput, water: AskedWater, days: number): Added {
  if (input.amount === undefined) return { rise: 0, read: 'nothing added in between' };
  const { amount: once, daily } = splitADay(input.amount);
  const times = daily ? days : 1;
  const when = daily ? 'each day' : 'in all';
  if (input.with === undefined) {
    const { kind, unit } = parameter(id);
    const rise = readQuantity(kind, once.replace(/^\+/, ''), { field: 'amount', fallback: unit });
    return { rise: rise.value * times, read: `${when} ${asWritten(id, rise)} was added in between` };
  }
  if (input.volume === undefined) {
    throw new Problem(say('dose.howMuchWaterDid'), {
      field: 'volume',
      hint: say('dose.netLitresOrGallons'),
    });
  }
  const compound = askedCompound(input.with, id);
  const form = oneForm(compound, input.with);
  const amount = askedAmount(once, compound);
  if (amount.lowG !== amount.highG)
    throw new Problem(say('dose.giveWhatWasAdded'), { field: 'amount', given: input.amount });
  const rise = riseFrom(form, id, amount.lowG, water.volumeL) * times;
  possible(id, 'amount', inOwnUnit(id, rise));
  return {
    rise,
    read: `${when} ${amount.words} of ${form.name} was added in between, together worth ${shown(id, rise)}`,
  };
}
