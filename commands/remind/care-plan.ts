import { printed } from '../../core/log/value.ts';
import { parameter } from '../../core/water/parameter.ts';
import type { Fact } from '../answer.ts';
import type { Reading, Tank } from '../keep.ts';
import { spanWords } from '../log/words.ts';
import type { Reminder } from '../reminder.ts';
import { targetsOf, waterWords } from '../tank/print.ts';
import { ruleWords, timeFact } from './times.ts';
import { wakeOf } from './wake.ts';

/** What a sitter does first. Common practice, no source. */
export const URGENT_STEPS: readonly string[] = [
  'Water on the floor, a burning smell, a tingle: touch nothing wet, breaker off first, then call the owner.',
  'Fish gasping at the surface: more movement at the surface at once, then call the owner.',
  'Power cut: lid on, tank wrapped, feed nothing, move the surface (battery air pump, or pour from a jug).',
  'Too warm (28 °C or more): heater unplugged, lights off, lid open, a fan, more surface movement. No ice.',
  'Too cold (below 23 °C): heater has power? Unplug it before you reach in; warm up about 1 °C a day.',
  'When power is back, see that every pump and the heater runs. Check a temperature with a second thermometer.',
  'Top up with fresh (RO/DI) water only, never with salt water, and only to the mark.',
];

/** The water, the targets and the last readings of a tank. */
export function tankFacts(tank: Tank, latest: readonly Reading[], nowMs: number): readonly Fact[] {
  const targets = targetsOf(tank).map(({ label, range }) => `${label} ${range}`);
  const last = latest.map(
    ({ parameter: id, value, atMs }) =>
      `${parameter(id).label} ${printed(id, value, tank.units)} (${spanWords(Math.max(0, nowMs - atMs))} ago)`,
  );
  return [
    { label: tank.name, value: waterWords(tank) },
    { label: 'Should be', value: targets.join(', ') },
    { label: 'Last read', value: last.join(', ') || 'nothing logged' },
  ];
}

/** Each reminder that is still to come with its rule; the amounts are in its text. */
export function reminderFacts(
  reminders: readonly Reminder[],
  nowMs: number,
  tanks: readonly Tank[] = [],
): readonly Fact[] {
  const live = reminders.filter((one) => isLive(one));
  const nameOf = (id: number | undefined): string => tanks.find((tank) => tank.id === id)?.name ?? '';
  return live.map((reminder) => {
    const tank = tanks.length > 1 ? nameOf(reminder.tankId) : '';
    const nextMs = wakeOf(reminder);
    return {
      label: tank === '' ? reminder.text : `${tank}: ${reminder.text}`,
      value: ruleWords(reminder),
      ...(nextMs === undefined || nextMs < nowMs ? {} : nextOf(reminder, nextMs)),
    };
  });
}

function nextOf(reminder: Reminder, nextMs: number): Pick<Fact, 'value' | 'instant'> {
  const { value, instant } = timeFact('', nextMs, reminder.zone);
  return { value: `${ruleWords(reminder)}; next ${value}`, ...(instant && { instant }) };
}

/** Whether it will be sent again, or waits only to be done. */
function isLive(reminder: Reminder): boolean {
  return (
    wakeOf(reminder) !== undefined || (reminder.rule.every === 'after' && reminder.trouble === undefined)
  );
}
