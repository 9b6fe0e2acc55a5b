import { compoundsFor, type Compound } from '../../../core/dosing/compound.ts';
import { riseOfBottle } from '../../../core/dosing/bottle.ts';
import type { Slots } from '../../../core/language/slots.ts';
import { significant } from '../../../core/quantity/format.ts';
import { readQuantity } from '../../../core/quantity/read.ts';
import { parameter, type ParameterId } from '../../../core/water/parameter.ts';
import { answer, type Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { inOwnUnit } from '../../dose/asked.ts';
import { readPerDay } from '../../waterchange/rate.ts';
import { retest } from '../../dose/daily.ts';
import { moreThanAnyTank } from '../../dose/use-answer.ts';
import { bottleCommand } from '../../dose/bottle.ts';
import { call } from '../../called.ts';
import { byPowder } from './by-powder.ts';
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
  if (bottle === undefined || amount === undefined) return undefined;
  // Without a water of its own it was said of the system, however large that is.
  const per = bottle.per ?? system ?? '100 L';
  const { kind, unit } = parameter(bottle.of);
  const raises = readQuantity(kind, bottle.raises, { field: 'raises', fallback: unit });
  const strength = { doseL: litres(bottle.dose), perL: litres(per), raises: raises.written };
  const rise =
    riseOfBottle(strength, litres(amount), litres(bottle.per === undefined ? per : (system ?? per))) /
    (amountDays ?? 1);
  return `${significant(rise, 4)} ${raises.unit === '' ? unit : raises.unit}${amountDays === undefined ? '' : ' a day'}`;
}

function litres(text: string): number {
  return readQuantity('volume', text, { field: 'amount' }).value;
}

/** What to weigh in for such a bottle, of each powder that raises it and dissolves so far. */
export function eachPowder(slots: Slots, vessel: string, context: OwnContext): Answer | undefined {
  const forms = slots.bottle === undefined ? [] : compoundsFor(slots.bottle.of).filter(isUsual);
  const [first, ...more] = forms.flatMap(({ name }) => {
    const given = ofBottle(slots, { with: name, bottle: vessel }, context);
    return given === undefined ? [] : [{ name, given }];
  });
  return first && byPowder([first, ...more]);
}

/** What a bottle may hold where its powder was not said: no lime, no crystals that nobody sells for it. */
export function isUsual({ hazard, water }: Compound): boolean {
  return hazard !== 'lime' && water <= 2;
}

/** What a tank uses that falls although such a bottle is dosed: the fall and what the bottle adds. */
export function heldUp(slots: Slots, of: ParameterId, fall: string, context: OwnContext): Answer | undefined {
  const added = slots.amountDays === undefined ? undefined : addedOfBottle(slots, context);
  if (added === undefined || slots.bottle?.of !== of) return undefined;
  const [perDay, adds] = [fall, added].map((text) => inOwnUnit(of, readPerDay(of, text, 'use').perDay));
  const { unit, label } = parameter(of);
  const all = (perDay ?? 0) + (adds ?? 0);
  const use = significant(all, 3);
  if (moreThanAnyTank(of, all)) return retest(`${use} ${unit} of ${label} a day`, []);
  return answer({
    headline: `The tank uses about ${use} ${unit} of ${label} a day: ${significant(adds ?? 0, 3)} that the dose brings, and ${significant(perDay ?? 0, 3)} that it still falls.`,
    read: [
      `${slots.amount ?? ''} a day dosed, of a solution of which ${slots.bottle.dose} raises it by ${slots.bottle.raises}`,
    ],
    steps: ['Test at the same hour after two or three days of a new dose, with the same kit.'],
    sources: ['practice'],
  });
}
