import { printed } from '../../core/log/value.ts';
import { parameter } from '../../core/water/parameter.ts';
import type { OwnContext } from '../command.ts';
import type { Keep, Reading, Tank } from '../keep.ts';
import type { Instant } from '../instants.ts';
import { momentsOf, spanWords, timeOf, zoneLine } from '../log/words.ts';

/** Readings older than this say nothing of today: common practice, no source. */
const FRESH_DAYS = 30;
const DAY_MS = 86_400_000;

export interface LastLogged {
  readonly values: readonly Reading[];
  readonly read: readonly string[];
  /** The moments that `read` tells. */
  readonly instants: readonly Instant[];
  readonly steps: readonly string[];
}

/** The newest reading of each parameter, with its age; the old ones only named. */
export function lastLogged(keep: Keep, tank: Tank, context: OwnContext): LastLogged {
  const latest = [...keep.latest(tank.id)].sort((a, b) => b.atMs - a.atMs);
  const isFresh = ({ atMs }: Reading): boolean => context.nowMs - atMs <= FRESH_DAYS * DAY_MS;
  const values = latest.filter(isFresh);
  const old = latest.filter((one) => !isFresh(one));
  const named = ({ parameter: id, value, atMs }: Reading): string =>
    `${parameter(id).label} ${printed(id, value, tank.units)} of ${timeOf(atMs, context)}, ${spanWords(context.nowMs - atMs)} old`;
  return {
    values,
    instants: momentsOf(
      latest.map(({ atMs }) => atMs),
      context,
    ),
    read: [
      ...values.map(named),
      ...old.map((one) => `not judged, too old: ${named(one)}`),
      ...(latest.length === 0 ? [] : [zoneLine(context)]),
    ],
    steps:
      old.length === 0
        ? []
        : [
            `Test again, the last reading is more than ${FRESH_DAYS} days old: ${old.map(({ parameter: id }) => parameter(id).label).join(', ')}.`,
          ],
  };
}
