import { Problem } from '../../core/problem.ts';
import { significant, volume } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import type { Added } from './added.ts';
import { asWritten, shown } from './asked.ts';
import { say } from '../../core/wording/say.ts';

interface SwapInput {
  readonly changed?: string | undefined;
  readonly new?: string | undefined;
  readonly volume?: string | undefined;
}

/**
 * What a water change between two readings did by itself: share x (new water - tank), the tank taken at `meanLevel`
 * (canonical), since the day of the change is not known. Check: 20 % of 11 dKH into 8.9 dKH -> +0.42 dKH.
 *
 * @throws Problem where the share cannot be told.
 */
export function askedSwap(
  id: ParameterId,
  input: SwapInput,
  meanLevel: number,
): Pick<Added, 'rise'> & { readonly read: readonly string[] } {
  const { changed, new: mix } = input;
  if (changed === undefined || mix === undefined) return { rise: 0, read: [] };
  const { kind, unit, label } = parameter(id);
  const share = shareOf(changed, input.volume);
  const fresh = readQuantity(kind, mix, { field: 'new', fallback: unit });
  const rise = share * (fresh.value - meanLevel);
  const words = `${significant(share * 100)} % of the water changed for water of ${label} ${asWritten(id, fresh)}`;
  return {
    rise,
    read: [
      `${words} in between, worth ${rise < 0 ? '\u2212' : '+'}${shown(id, Math.abs(rise))}`,
      ...fresh.notes,
    ],
  };
}

function shareOf(changed: string, system: string | undefined): number {
  if (/%|per ?cent|pct/.test(changed))
    return readQuantity('share', changed, { field: 'changed' }).value / 100;
  if (system === undefined)
    throw new Problem(say('dose.howMuchWaterSystem'), {
      field: 'volume',
    });
  const part = readQuantity('volume', changed, { field: 'changed' }).value;
  const whole = readQuantity('volume', system, { field: 'volume' }).value;
  if (part < whole) return part / whole;
  throw new Problem(say('ask.moreThanHolds'), {
    field: 'changed',
    given: changed,
    limit: say('dose.lessThan', { whole: volume(whole) }),
  });
}
