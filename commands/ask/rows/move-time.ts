import type { Frame } from '../../../core/language/frame.ts';
import { isRoomShut } from '../../../core/language/room-shut.ts';
import { met } from '../../../core/language/met.ts';
import type { Said } from '../../../core/language/said.ts';
import type { Slots } from '../../../core/language/slots.ts';
import { readQuantity } from '../../../core/quantity/read.ts';
import type { OwnContext } from '../../command.ts';
import { levelsOf } from './levels-of.ts';
import { spanSaid } from './span-said.ts';
import { wordsBefore } from './words-beside.ts';

/** What "overnight" is at most. Own choice. */
const NIGHT = '12 h';

/** Whether the two readings are of evening and morning: a day and a night, over and over, or one of them. */
export function isDayAndNight({ reading: { scanned } }: Frame): boolean {
  if (met(scanned, 'times.sameHour') || isRoomShut(scanned)) return false;
  const parts = (['times.morning', 'times.day', 'times.evening', 'times.night'] as const).filter((part) =>
    met(scanned, part),
  );
  return parts.length > 1 || (parts.length > 0 && met(scanned, 'events.swings'));
}

/** Words between "for" and a time: "for about a year". */
const ABOUT = new Set(['about', 'around', 'almost', 'nearly', 'over']);

/**
 * The time a move took: as it was said, from one reading to the next as often as there were readings, or since the day of
 * the first. Check: 8.6, 8.3, 7.9, 7.6 every 4 days -> 12 days.
 */
export function moveTime(frame: Frame, context: OwnContext): string | undefined {
  const { slots, reading } = frame;
  const span = slots.span;
  if (span === undefined)
    return (
      spanSaid(slots, context) ??
      spanSaid({ ...slots, moments: since(frame) }, context) ??
      (met(reading.scanned, 'times.overnight') ? NIGHT : undefined)
    );
  const start = reading.said.find((one) => one.part === 'span' && one.text === span)?.number.start ?? 0;
  const [last = '', other = ''] = wordsBefore(reading.scanned, start);
  // "for a year" is how long it stood, and not how long the move took.
  if (last === 'for' || (other === 'for' && ABOUT.has(last))) return undefined;
  const steps = stepsOf(slots);
  if (steps < 2 || (last !== 'every' && last !== 'each')) return span;
  return `${steps * readQuantity('days', span, { field: 'over', fallback: 'days' }).value} days`;
}

/** Steps from the last reading that still was as the first to the latest one. */
function stepsOf(slots: Slots): number {
  const read =
    slots.of === undefined ? [] : levelsOf(slots, slots.of, 'was', 'now').map(({ value }) => value);
  const moved = read.findIndex((value) => value !== read[0]);
  return moved < 0 ? 0 : read.length - moved;
}

/** The day nearer to the earlier reading, or behind "since", up to today. */
function since({ slots, reading: { said, scanned } }: Frame): string[] {
  const [day, other] = said.filter(({ part }) => part === 'moment');
  const [was, second] = said.filter(({ part, of }) => part === 'was' && of === slots.of);
  const now = said.find(({ part, of }) => part === 'now' && of === slots.of);
  if (day === undefined || was === undefined || other !== undefined || second !== undefined) return [];
  const far = (one: Said): number =>
    Math.max(one.number.start - day.number.end, day.number.start - one.number.end);
  const isSince = scanned.text.slice(0, day.number.start).endsWith('since ');
  return isSince || now === undefined || far(was) < far(now) ? [day.text, 'today'] : [];
}
