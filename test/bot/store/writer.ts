import { writeSync } from 'node:fs';
import { openStore } from '../../../bot/store/open.ts';
import type { Plan } from '../../../commands/reminder.ts';
import { Problem } from '../../../core/problem.ts';

/**
 * Adds entries and settles a reminder as fast as it can, and says the id of each entry once both are kept. Arguments:
 * file, first value, how many.
 */
const [file = '', first = '0', most = '0'] = process.argv.slice(2);
const person = '100000000000000001';

try {
  const store = openStore({ file, nowMs: Date.now });
  const keep = store.keepFor(person);
  const { id } = keep.tankInUse() ?? keep.addTank(tank());
  if (keep.reminders().length === 0) keep.addReminder(reminder(), { nextMs: Number(first) });
  for (let i = Number(first); i < Number(first) + Number(most); i++) {
    const entry = keep.addEntry(id, {
      atMs: i,
      values: [
        { parameter: 'alkalinity', value: i },
        { parameter: 'calcium', value: i + 0.5 },
      ],
      note: `entry ${i}`,
    });
    for (const { reminder: due, dueMs } of store.due.claim(i, 1, 1))
      store.due.settle(due.id, dueMs, { nextMs: i + 1 });
    writeSync(1, `${entry?.id} ${i}\n`);
  }
} catch (error) {
  if (!(error instanceof Problem)) throw error;
  writeSync(2, error.message);
  process.exitCode = 78;
}

function tank() {
  return { name: 'Reef', kind: 'mixed', netVolumeL: 100, volumeBasis: '', units: {}, targets: {} } as const;
}

function reminder(): Plan {
  const rule = { every: 'once' } as const;
  const place = { kind: 'direct' } as const;
  return { text: 'test', parameters: [], anchor: '1970-01-01 00:00', zone: 'UTC', rule, place };
}
