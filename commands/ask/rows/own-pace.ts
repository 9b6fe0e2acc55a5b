import { metBefore } from '../../../core/language/met.ts';
import type { Level } from '../../../core/language/slots.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { limitsOf } from '../../../core/water/limits.ts';
import { parameter, type ParameterId } from '../../../core/water/parameter.ts';
import { inOwnUnit } from '../../dose/asked.ts';
import { readPerDay } from '../../waterchange/rate.ts';
import { attempt } from './attempt.ts';
import { perDays } from './span-said.ts';

/** The asker's own limit for a day: what the dose is given, or why the usual one is kept. */
export interface OwnPace {
  readonly pace?: string;
  readonly read?: string;
  /** The level that told it. */
  readonly from?: Level;
}

/** "cap the rise at 0.5 per day", "not more than 10 a day". A rate that is no such limit is a use, and none of it. */
export function ownPace({ slots: { levels = [] }, reading }: Frame, of: ParameterId): OwnPace {
  const capped = reading.said.find(
    ({ part, number }) =>
      number.everyDays !== undefined &&
      number.everyDays <= 7 &&
      (part === 'limit' || part === 'rate' || part === 'change') &&
      (part === 'limit' || metBefore(reading.scanned, number.start, 'manner.caps')),
  );
  const level = levels.find(
    ({ value, everyDays }) => value === capped?.number.value && everyDays !== undefined,
  );
  if (level?.everyDays === undefined) return {};
  const { unit, label } = parameter(of);
  const { pace } = limitsOf(of);
  const perDay = attempt(() =>
    inOwnUnit(of, readPerDay(of, perDays(level.text, level.everyDays ?? 1), 'use').perDay),
  );
  if (pace === undefined || perDay === undefined || perDay <= 0) return {};
  const said = `${Number(perDay.toPrecision(3))} ${unit}`;
  if (perDay <= pace.up) return { pace: said, from: level };
  return {
    from: level,
    read: `your ${said} a day is faster than ${label} is moved here: at most ${pace.up} ${unit} a day is kept (common practice)`,
  };
}
