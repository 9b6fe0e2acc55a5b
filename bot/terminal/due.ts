import type { Reminder } from '../../commands/reminder.ts';
import { localTime } from '../../core/words/when.ts';
import { dueOf, wakeOf } from '../../commands/remind/wake.ts';
import type { Desk } from './reply.ts';
import { page } from './render.ts';
import { zoneHere } from './told.ts';
import { wrap, type Style } from './wrap.ts';

const MOST = 3;

/**
 * What is due now and was not shown before in this session; nothing is sent here, so it is shown with the next line.
 * Empty where there is none.
 */
export function openDue(desk: Pick<Desk, 'keep' | 'nowMs' | 'zone'>): (style: Style) => string {
  const shown = new Set<string>();
  const isNew = (reminder: Reminder): boolean => {
    const key = `${reminder.id} ${dueOf(reminder)}`;
    return !shown.has(key) && Boolean(shown.add(key));
  };
  return (style) => {
    const nowMs = desk.nowMs();
    const due = desk.keep.reminders().filter((reminder) => (wakeOf(reminder) ?? Infinity) <= nowMs);
    const fresh = due.filter(isNew);
    if (fresh.length === 0) return '';
    const zone = zoneHere(desk);
    const lines = fresh.slice(0, MOST).map((reminder) => sentence(reminder, zone));
    const more = fresh.length > MOST ? [`${fresh.length - MOST} more: /remind list`] : [];
    return page([...lines, ...more].flatMap((text) => wrap(text, style.width, 'Due: ')));
  };
}

function sentence(reminder: Reminder, zone: string): string {
  const since = localTime(dueOf(reminder) ?? 0, zone);
  return `${reminder.text}, ${since}. When it is done: /remind done reminder:${reminder.id}`;
}
