import { Problem } from '../../core/problem.ts';
import { significant, volume } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { readSalinity } from '../../core/water/salinity-reading.ts';
import type { GravityPair } from '../../core/water/specific-gravity.ts';
import { percent, type Water } from '../waterchange/pour.ts';
import { splitRate } from '../waterchange/rate.ts';
import { say } from '../../core/wording/say.ts';

/** Evaporation as a part of the volume a day. */
export interface Evaporation {
  readonly aDay: number;
  readonly read: readonly string[];
}

/** More than this a day and no tank keeps its water; own choice. */
const MOST_A_DAY = 0.2;

/**
 * Reads "2 L a day", "1 % a day", or "10 L" for all of the time. `water` is undefined where no volume was given: litres
 * say nothing then.
 *
 * @throws Problem where it is no amount of water, or more than a tank loses.
 */
export function readEvaporation(text: string, water: Water | undefined, days: number): Evaporation {
  const { amount, everyDays } = splitRate(text);
  const over = everyDays ?? days;
  const isShare = /%|per ?cent/i.test(amount);
  if (!isShare && water === undefined)
    throw new Problem(say('ask.howMuchInSystem'), {
      field: 'volume',
      hint: say('salinity.orGiveEvaporationAs'),
    });
  const found = readQuantity(isShare ? 'share' : 'volume', amount, { field: 'evaporation' });
  const part = isShare ? found.value / 100 : found.value / (water?.volumeL ?? 100);
  const aDay = part / over;
  if (aDay <= 0 || aDay > MOST_A_DAY)
    throw new Problem(say('salinity.tankDoesNotLose'), {
      field: 'evaporation',
      given: text,
      limit: say('salinity.above0AtMost', { percent: percent(MOST_A_DAY) }),
    });
  const amountWords = isShare ? percent(part) : `${volume(found.value)} (${significant(part * 100, 2)} %)`;
  const when =
    everyDays === undefined
      ? 'in all that time'
      : everyDays === 1
        ? 'a day'
        : `in ${significant(everyDays, 3)} days`;
  return { aDay, read: [`${amountWords} evaporates ${when}`, ...found.notes] };
}

/** What replaces the water: nothing, fresh water (0 ppt), or salt water. */
export interface TopOff {
  /** Undefined where nothing does. */
  readonly salinityPpt: number | undefined;
  readonly words: string;
  readonly read: readonly string[];
}

const NONE = /^(?:none|no|nothing|off|without)$/i;
const FRESH = /^(?:fresh|ro|rodi|ro\/di|freshwater|fresh water|0(?:[.,]0+)?(?:\s*ppt)?)$/i;

/** @throws Problem where it is none of the words and no salinity. */
export function readTopOff(text: string, pair: GravityPair): TopOff {
  const said = text.trim();
  if (NONE.test(said))
    return { salinityPpt: undefined, words: 'nothing added', read: ['nothing is added for it'] };
  if (FRESH.test(said))
    return { salinityPpt: 0, words: 'fresh water', read: ['topped off with fresh (RO) water'] };
  const { practicalSalinity, notes } = readSalinity(said, { field: 'top-off', pair });
  const words = `salt water of ${significant(practicalSalinity, 3)} ppt`;
  return { salinityPpt: practicalSalinity, words, read: [`topped off with ${words}`, ...notes] };
}
