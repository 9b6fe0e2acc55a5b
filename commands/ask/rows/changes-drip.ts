import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import { readQuantity } from '../../../core/quantity/read.ts';
import { WEEKDAY } from '../../../core/weekday.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { dripCommand } from '../../waterchange/drip.ts';
import { goalCommand } from '../../waterchange/goal.ts';
import { sumCommand } from '../../waterchange/sum.ts';
import { call } from '../../called.ts';
import { goalSaid } from './changes-said.ts';
import { MOST_TIMES } from './changes-sum.ts';
import { pouredSaid, shareSaid, type ShareSaid } from './water-said.ts';

/** A change with the share it is of the system and how often it comes. */
interface Each {
  readonly share: number;
  readonly everyDays: number | undefined;
}

/** Two sums of water this near, as parts of the larger, are the same water; own choice. */
const SAME = 0.02;

/**
 * Small changes against a large one: the same water bit by bit, or so many small ones; one alone against the same in one
 * batch. Undefined where no change was said.
 */
export function bitByBit(frame: Frame, context: OwnContext): Answer | undefined {
  const { of, now, other } = frame.slots;
  const said = shareSaid(frame.slots, context);
  if (said === undefined) return undefined;
  const reading = now === undefined ? {} : { of, now, fresh: other };
  const against = compared(frame);
  if (against !== undefined) {
    const { small, large, periodDays } = against;
    const times = periodDays / (small.everyDays ?? periodDays);
    const isSame = Math.abs(times * small.share - large.share) <= SAME * large.share;
    const isFlow = met(frame.reading.scanned, 'sums.drip', 'times.always') || small.everyDays === HOUR_DAYS;
    if (isSame && isFlow)
      return call(
        dripCommand,
        { share: percent(large.share), every: `${periodDays} days`, volume: said.volume, ...reading },
        context,
      );
    const single = percent(large.share);
    return call(
      sumCommand,
      { share: percent(small.share), times: Math.max(1, Math.round(times)), single, volume: said.volume },
      context,
    );
  }
  return alone(frame, context);
}

/** A part of the water that a day by itself says nothing of; own choice. */
const SMALL = 0.1;
const WEEK_DAYS = 7;
const MONTH_DAYS = 30;
const weekday = new RegExp(`^${WEEKDAY}`);

/** One slow exchange: how long it takes to a level, else the same water in one batch. The first share said is its own. */
function alone({ slots, ...frame }: Frame, context: OwnContext): Answer | undefined {
  const said = shareSaid({ ...slots, shares: undefined }, context);
  if (said === undefined) return undefined;
  const { of, now, other, changed, span, everyDays, moments = [] } = slots;
  const { share, every } = inDays(said, everyDays);
  const goal = goalSaid({ ...frame, slots });
  if (of !== undefined && now !== undefined && goal !== undefined && every !== undefined)
    return call(goalCommand, { of, now, goal, share, every, fresh: other, volume: said.volume }, context);
  const over = every ?? (changed === undefined ? span : undefined);
  const summed = now === undefined && every !== undefined ? inPeriod(share, every, moments) : undefined;
  if (summed !== undefined) return call(sumCommand, { share, ...summed, volume: said.volume }, context);
  const reading = now === undefined ? {} : { of, now, fresh: other };
  return call(dripCommand, { share, every: over, volume: said.volume, ...reading }, context);
}

/** A small share that comes each day or oftener, over a week where its days are named, else a month, against one change. */
function inPeriod(
  share: string,
  every: string,
  moments: readonly string[],
): { readonly times: number; readonly single: string } | undefined {
  const small = Number.parseFloat(share) / 100;
  const everyDays = readQuantity('days', every, { field: 'every' }).value;
  if (everyDays > 1 || small >= SMALL) return undefined;
  const periodDays = moments.some((text) => weekday.test(text)) ? WEEK_DAYS : MONTH_DAYS;
  const times = Math.round(periodDays / everyDays);
  return times > MOST_TIMES || times * small >= 1 ? undefined : { times, single: percent(times * small) };
}

/** What flows by the hour or the minute is counted by the day, where a day does not take all the water. */
function inDays(
  { share, every }: ShareSaid,
  everyDays: number | undefined,
): { readonly share: string; readonly every: string | undefined } {
  const daily = Number.parseFloat(share) / (100 * (everyDays ?? 1));
  if (everyDays === undefined || everyDays >= 1 || daily > 1) return { share, every };
  return { share: percent(daily), every: '1 day' };
}

const HOUR_DAYS = 1 / 24;

function percent(share: number): string {
  return `${Number((100 * share).toPrecision(4))} %`;
}

/** The small change that comes often and the large one; the time in which the large one comes once. */
function compared(
  frame: Frame,
): { readonly small: Each; readonly large: Each; readonly periodDays: number } | undefined {
  const all = eachOf(frame);
  const [small] = all
    .filter(({ everyDays }) => everyDays !== undefined)
    .toSorted((a, b) => a.share - b.share);
  const large = all.toSorted((a, b) => b.share - a.share)[0];
  if (small?.everyDays === undefined || large === undefined || large.share <= small.share) return undefined;
  const periodDays = large.everyDays ?? (large.share / small.share) * small.everyDays;
  return periodDays > small.everyDays ? { small, large, periodDays } : undefined;
}

/** Every change as a share, the same size once; those that are no share of a known system are left out. */
function eachOf({ slots, reading: { said } }: Frame): readonly Each[] {
  const { shares = [], batches = [], volume } = slots;
  const found = new Map<number, Each>();
  for (const text of [...shares, ...batches]) {
    const { share, amount } = pouredSaid({
      share: shares.includes(text) ? text : undefined,
      changed: text,
      volume,
    });
    const part = share === undefined ? partOf(amount, volume) : Number.parseFloat(share) / 100;
    if (part === undefined) continue;
    const own = said.find(
      (one) =>
        one.part === 'changed' &&
        one.number.everyDays !== undefined &&
        Number.parseFloat(text) === one.number.value,
    );
    found.set(part, { share: part, everyDays: own?.number.everyDays ?? found.get(part)?.everyDays });
  }
  return [...found.values()];
}

/** @throws Problem that asks for the unit of a bare number beside one with a unit. */
function partOf(amount: string | undefined, volume: string | undefined): number | undefined {
  if (amount === undefined || volume === undefined) return undefined;
  return litres(amount) / litres(volume);
}

function litres(text: string): number {
  return readQuantity('volume', text, { field: 'volume' }).value;
}
