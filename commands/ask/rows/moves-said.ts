import type { Frame } from '../../../core/language/frame.ts';
import { isLongPast } from '../../../core/language/long-past.ts';
import { met } from '../../../core/language/met.ts';
import type { Level } from '../../../core/language/slots.ts';
import { readLogged } from '../../../core/log/value.ts';
import { readQuantity } from '../../../core/quantity/read.ts';
import { usualSwing, type Move } from '../../../core/water/move.ts';
import type { ParameterId } from '../../../core/water/parameter.ts';
import type { OwnContext } from '../../command.ts';
import { attempt } from './attempt.ts';
import { isDayAndNight, moveTime } from './move-time.ts';
import { readableAs } from './readable-as.ts';

/** From so many days on a move is told as of long ago; own choice. */
const LONG_DAYS = 7;

/** A level that was read twice: the earlier reading, and how it moved to the one that is judged. */
export interface MovedLevel {
  readonly before: Level;
  readonly move: Move;
  /** A day and night of what swings by itself: both ends are of now. */
  readonly isBothNow: boolean;
}

/** How a level came to the reading that is judged, `value` in its own unit; undefined where it was read once. */
export function movedTo(
  frame: Frame,
  levels: readonly Level[],
  latest: Level,
  value: number,
  context: OwnContext,
): MovedLevel | undefined {
  const id = latest.of;
  const before = levels.find(
    (level) => level.of === id && level !== latest && (level.part === 'was' || level.part === 'now'),
  );
  const first = before === undefined ? undefined : attempt(() => readLogged(id, before.text, id).value);
  if (before === undefined || first === undefined || first === value) return undefined;
  const isSwing = isDayAndNight(frame) || met(frame.reading.scanned, 'events.swings');
  const days = isSwing ? undefined : daysOf(frame, id, context);
  const move = { id, by: value - first, days, isSwing, isSlow: isSlow(frame) };
  return { before, move, isBothNow: isSwing && usualSwing(id) !== undefined };
}

function daysOf(frame: Frame, id: ParameterId, context: OwnContext): number | undefined {
  const over = frame.slots.of === id ? moveTime(frame, context) : undefined;
  return over === undefined
    ? undefined
    : readQuantity('days', over, { field: 'over', fallback: 'days' }).value;
}

/** Whether the message tells of weeks or months between them. */
function isSlow({ reading: { scanned, said } }: Frame): boolean {
  const times = said.filter(({ part }) => part === 'moment' || part === 'span');
  return (
    met(scanned, 'times.weeksAgo', 'times.longAgo', 'times.month', 'times.season') ||
    times.some(
      ({ text, number }) => isLongPast(scanned, number.start) || (readableAs('days', text) ?? 0) >= LONG_DAYS,
    )
  );
}
