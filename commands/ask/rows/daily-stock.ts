import { compoundsFor, formsOf } from '../../../core/dosing/compound.ts';
import { suppliedPerMl } from '../../../core/dosing/solution.ts';
import type { Slots } from '../../../core/language/slots.ts';
import { readQuantity } from '../../../core/quantity/read.ts';
import { parameter, type ParameterId } from '../../../core/water/parameter.ts';
import type { Answer } from '../../answer.ts';
import { inOwnUnit } from '../../dose/asked.ts';
import type { OwnContext } from '../../command.ts';
import { bottleCommand } from '../../dose/bottle.ts';
import { call } from '../../called.ts';
import { attempt } from './attempt.ts';
import { byPowder } from './by-powder.ts';
import { isUsual } from './bottle-dose.ts';
import { saltFor } from './wanted.ts';
import { gramsPerLitre, stockSaid } from './stock-said.ts';

/** What a tank uses of a parameter, as `/dose daily` takes it. */
interface Use {
  readonly of: ParameterId;
  readonly use: string;
}

/** The millilitres a day of a solution whose grams in a litre were said: as each salt it may be, where none was named. */
export function ofStock(slots: Slots, asked: Use, context: OwnContext): Answer | undefined {
  const salt = saltFor(slots, asked.of);
  if (salt === undefined && (slots.salt !== undefined || slots.strength === undefined)) return undefined;
  const forms = salt === undefined ? compoundsFor(asked.of).filter(isUsual) : formsOf(salt);
  // Without a unit that is asked first, and once for all of them.
  if (slots.volume !== undefined && forms.length > 1)
    readQuantity('volume', slots.volume, { field: 'volume' });
  const done = forms.flatMap((form) => {
    const stock = stockSaid({ ...slots, salt: salt ?? form.name });
    if (stock === undefined) return [];
    const gL = attempt(() => gramsPerLitre(stock));
    if (gL === undefined) return [];
    const raises = inOwnUnit(asked.of, suppliedPerMl(form, asked.of, gL) / 100);
    const label = {
      dose: '1 mL',
      per: '100 L',
      raises: `${Number(raises.toPrecision(6))} ${parameter(asked.of).unit}`,
    };
    return [
      { name: form.name, given: call(bottleCommand, { ...asked, ...label, volume: slots.volume }, context) },
    ];
  });
  const [first, ...more] = done;
  if (first === undefined) return undefined;
  if (more.length === 0) return first.given;
  return byPowder([first, ...more]);
}
