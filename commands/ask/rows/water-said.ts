import type { Slots } from '../../../core/language/slots.ts';
import { significant, volume } from '../../../core/quantity/format.ts';
import { readQuantity } from '../../../core/quantity/read.ts';
import { Problem } from '../../../core/problem.ts';
import type { OwnContext } from '../../command.ts';
import { leftOut } from '../../fill.ts';

/** The water of the system as it was said, else that of the tank in use; undefined where neither is known. */
export function systemSaid({ volume: said }: Slots, { keep }: OwnContext): string | undefined {
  const tank = keep?.tankInUse();
  if (said !== undefined || keep === undefined || tank === undefined) return said;
  return leftOut('volume', tank, keep)?.value;
}

/** The share of a change: said as such, or a volume out of the system's. */
export interface ShareSaid {
  readonly share: string;
  /** How often, where that was said. */
  readonly every: string | undefined;
}

/**
 * The share of the water in one change; undefined where no change was named.
 *
 * @throws Problem where a volume was named and the system's is not known.
 */
export function shareSaid(slots: Slots, context: OwnContext): ShareSaid | undefined {
  const { share, changed, everyDays, waterRate, waterRateDays } = slots;
  const amount = share ?? changed ?? waterRate;
  if (amount === undefined) return undefined;
  const days = everyDays ?? (amount === waterRate ? waterRateDays : undefined);
  const every = days === undefined ? undefined : `${significant(days, 4)} days`;
  return { share: isShare(amount) ? amount : outOf(amount, systemSaid(slots, context)), every };
}

function isShare(text: string): boolean {
  return /%|per ?cent|pct/.test(text);
}

function outOf(amount: string, system: string | undefined): string {
  if (system === undefined)
    throw new Problem('I need the volume of the system to see what share that is.', { field: 'volume' });
  const part = readQuantity('volume', amount, { field: 'amount' }).value;
  const whole = readQuantity('volume', system, { field: 'volume' }).value;
  if (part < whole) return `${significant((100 * part) / whole, 4)} %`;
  throw new Problem('That is more water than the system holds.', {
    field: 'amount',
    given: amount,
    limit: `less than ${volume(whole)}`,
  });
}
