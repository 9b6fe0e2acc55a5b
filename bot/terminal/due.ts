import type { Reminder } from '../../commands/reminder.ts';
import { localTime } from '../../core/words/when.ts';
import { dueOf, wakeOf } from '../../commands/remind/wake.ts';
import { say } from '../../core/wording/say.ts';
import type { Desk } from './desk.ts';
import { page } from './render.ts';
import { zoneHere } from './told.ts';
import { wrap, type Style } from './wrap.ts';

const MOST = 3;

/** What is due in the room. */
export interface Due {
  /** What is due now and was not shown before in this session; empty where there is none. */
  readonly show: (style: Style) => string;
  /** What was shown last and is still due. */
  readonly now: () => readonly Reminder[];
}

/** Nothing is sent here: what is due is shown with the next line. */
export function openDue(desk: Pick<Desk, 'keep' | 'nowMs' | 'zone'>): Due {
  const shown = new Set<string>();
  let last: readonly Reminder[] = [];
  const allDue = (): readonly Reminder[] => {
    const nowMs = desk.nowMs();
    return desk.keep.reminders().filter((reminder) => (wakeOf(reminder) ?? Infinity) <= nowMs);
  };
  const isNew = (reminder: Reminder): boolean => {
    const key = `${reminder.id} ${dueOf(reminder)}`;
    return !shown.has(key) && Boolean(shown.add(key));
  };
  const show = (style: Style): string => {
    const fresh = allDue().filter(isNew);
    if (fresh.length === 0) return '';
    last = fresh;
    const zone = zoneHere(desk);
    const lines = fresh.slice(0, MOST).map((reminder) => sentence(reminder, zone));
    const more = fresh.length > MOST ? [say('terminal.moreDue', { count: String(fresh.length - MOST) })] : [];
    return page([...lines, ...more].flatMap((text) => wrap(text, style.width, `${say('terminal.due')} `)));
  };
  return { show, now: () => allDue().filter(({ id }) => last.some((one) => one.id === id)) };
}

function sentence(reminder: Reminder, zone: string): string {
  const since = localTime(dueOf(reminder) ?? 0, zone);
  return say('terminal.dueSince', { text: reminder.text, time: since });
}
