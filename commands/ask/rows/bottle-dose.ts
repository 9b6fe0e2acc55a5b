import { riseOfBottle } from '../../../core/dosing/bottle.ts';
import type { Slots } from '../../../core/language/slots.ts';
import { significant } from '../../../core/quantity/format.ts';
import { readQuantity } from '../../../core/quantity/read.ts';
import { parameter } from '../../../core/water/parameter.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { bottleCommand } from '../../dose/bottle.ts';
import { call } from '../../called.ts';
import { systemSaid } from './water-said.ts';

interface Asked {
  readonly goal?: string | undefined;
  readonly now?: string | undefined;
  readonly use?: string | undefined;
  readonly amount?: string | undefined;
  readonly with?: string | undefined;
  readonly bottle?: string | undefined;
}

/** A sum with a bottle that says what it raises; undefined where none does, or the water it says so of is not known. */
export function ofBottle(slots: Slots, asked: Asked, context: OwnContext): Answer | undefined {
  const { bottle } = slots;
  const per = bottle?.per ?? systemSaid(slots, context);
  if (bottle === undefined || per === undefined) return undefined;
  const { of, dose, raises } = bottle;
  return call(bottleCommand, { of, dose, per, raises, volume: slots.volume, ...asked }, context);
}

/** The rise a day that what is dosed of such a bottle makes: "0.28 dKH a day"; undefined where nothing can be told. */
export function addedOfBottle(slots: Slots, context: OwnContext): string | undefined {
  const { bottle, amount, amountDays } = slots;
  const system = systemSaid(slots, context);
  const per = bottle?.per ?? system;
  if (bottle === undefined || amount === undefined || per === undefined || system === undefined)
    return undefined;
  const litres = (text: string): number => readQuantity('volume', text, { field: 'amount' }).value;
  const { kind, unit } = parameter(bottle.of);
  const raises = readQuantity(kind, bottle.raises, { field: 'raises', fallback: unit });
  const strength = { doseL: litres(bottle.dose), perL: litres(per), raises: raises.written };
  const rise = riseOfBottle(strength, litres(amount), litres(system)) / (amountDays ?? 1);
  return `${significant(rise, 4)} ${raises.unit === '' ? unit : raises.unit}${amountDays === undefined ? '' : ' a day'}`;
}
