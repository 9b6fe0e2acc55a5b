import type { Slots } from '../../../core/language/slots.ts';
import { significant, volume } from '../../../core/quantity/format.ts';
import { readQuantity } from '../../../core/quantity/read.ts';
import { Problem } from '../../../core/problem.ts';
import { say } from '../../../core/wording/say.ts';
import type { OwnContext } from '../../command.ts';
import { leftOut } from '../../fill.ts';

/** The water of the system as it was said, else that of the tank in use; undefined where neither is known. */
export function systemSaid({ volume: said }: Slots, { keep }: OwnContext): string | undefined {
  const tank = keep?.tankInUse();
  if (said !== undefined || keep === undefined || tank === undefined) return said;
  return leftOut('volume', tank, keep)?.value;
}

/** Water that goes or comes again and again, and in how many days so much; ounces of water are fluid ones. */
export function waterEach({
  waterRate,
  waterRateDays = 1,
  amount,
  amountDays,
}: Slots): { readonly amount: string; readonly days: number } | undefined {
  const [text, days] = waterRate === undefined ? [amount, amountDays] : [waterRate, waterRateDays];
  if (text === undefined || days === undefined) return undefined;
  return { amount: text.replace(/ (?:oz|ounces?)$/, ' fl oz'), days };
}

/** The share of a change: said as such, or a volume out of the system's. */
export interface ShareSaid {
  readonly share: string;
  /** How often, where that was said. */
  readonly every: string | undefined;
  /** The system's water, where its unit is known. */
  readonly volume: string | undefined;
}

/** What one change takes, as the commands are given it. */
export interface PouredSaid {
  readonly share?: string | undefined;
  readonly amount?: string | undefined;
  readonly volume?: string | undefined;
}

/** A share, or a volume out of the system's; two bare numbers are a share, whatever their unit. */
export function pouredSaid({ share, changed, waterRate, volume: system }: Slots): PouredSaid {
  const amount = share ?? changed ?? waterRate;
  if (amount === undefined || isShare(amount)) return { share: amount, volume: system };
  const [part, whole] = [Number(amount), bareSum(system)];
  return part > 0 && part < whole
    ? { share: `${significant((100 * part) / whole, 4)} %` }
    : { amount, volume: system };
}

/** "80 + 12", both without a unit: 92; NaN where one has a unit. */
function bareSum(text: string | undefined): number {
  return (text ?? 'none').split(' + ').reduce((sum, each) => sum + Number(each), 0);
}

/**
 * The share of the water in one change; undefined where no change was named.
 *
 * @throws Problem where a volume was named and the system's is not known.
 */
export function shareSaid(slots: Slots, context: OwnContext): ShareSaid | undefined {
  const { changed, share, everyDays, waterRate, waterRateDays } = slots;
  const poured = pouredSaid({ ...slots, share: smallest(slots) ?? share });
  if (poured.share === undefined && poured.amount === undefined) return undefined;
  const isRate = share === undefined && changed === undefined && waterRate !== undefined;
  const days = everyDays ?? (isRate ? waterRateDays : undefined);
  const every = days === undefined ? undefined : `${significant(days, 4)} days`;
  const system = poured.volume ?? (slots.volume === undefined ? systemSaid(slots, context) : undefined);
  return { share: poured.share ?? outOf(poured.amount ?? '', system), every, volume: system };
}

/** Of several shares the smallest is the one that is done again and again. */
function smallest({ shares = [] }: Slots): string | undefined {
  return shares.toSorted((a, b) => Number.parseFloat(a) - Number.parseFloat(b))[0];
}

function isShare(text: string): boolean {
  return /%|per ?cent|pct/.test(text);
}

function outOf(amount: string, system: string | undefined): string {
  if (system === undefined && Number(amount) > 0 && Number(amount) <= 100)
    throw new Problem(say('ask.shareOrLitres', { amount }), {
      field: 'share',
      given: amount,
    });
  if (system === undefined) throw new Problem(say('ask.volumeForShare'), { field: 'volume' });
  const part = readQuantity('volume', amount, { field: 'amount' }).value;
  const whole = readQuantity('volume', system, { field: 'volume' }).value;
  if (part < whole) return `${significant((100 * part) / whole, 4)} %`;
  throw new Problem(say('ask.moreThanHolds'), {
    field: 'amount',
    given: amount,
    limit: say('ask.lessThan', { volume: volume(whole) }),
  });
}
