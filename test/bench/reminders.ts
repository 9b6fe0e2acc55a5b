import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { fileURLToPath } from 'node:url';
import Database from 'better-sqlite3';
import type { Plan, Progress } from '../../commands/reminder.ts';
import { openStore, type Store } from '../../bot/store/open.ts';
import { planRow, progressRow } from '../../bot/store/reminder-row.ts';
import { quantiles } from './measure.ts';
import type { Month } from './reminder-month.ts';
import { printRows } from './table.ts';

const SCHEDULES = 1_000_000;
const A_MEMBER = 10;
const BATCH = 50;
const BATCHES = 600;
const LEASE_MS = 120_000;
const DAY_MS = 86_400_000;
const NOW_MS = Date.UTC(2026, 2, 14);

/** A store of 1,000,000 reminders: what it costs to find and settle those that are due, every write on the disk. Then a month. */
export function benchReminders(): void {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  try {
    measure(join(folder, 'sumpside.sqlite'));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  const child = fileURLToPath(new URL('./reminder-month.js', import.meta.url));
  const month = JSON.parse(execFileSync(process.execPath, [child], { encoding: 'utf8' })) as Month;
  printRows(`30 days of 20,000 members with three reminders each, in ${month.seconds.toFixed(0)} s`, [
    { what: 'reminders sent', value: month.sent, unit: '' },
    { what: 'reminders late, missed or sent twice', value: month.wrong, unit: '', goal: 0 },
    { what: 'resident memory, peak', value: month.residentMb, unit: 'MB', goal: 200 },
  ]);
}

function measure(file: string): void {
  openStore({ file, nowMs: () => NOW_MS }).close();
  fill(file);
  const bytes = statSync(file).size;
  const start = performance.now();
  const store = openStore({ file, nowMs: () => NOW_MS });
  const openedMs = performance.now() - start;
  const { claims, settles, idle } = claimAll(store);
  store.close();
  printRows(`${SCHEDULES} reminders spread over a week, claimed in batches of ${BATCH}`, [
    { what: 'bytes a reminder, all in', value: bytes / SCHEDULES, unit: 'B', goal: 400 },
    { what: 'open', value: openedMs, unit: 'ms' },
    { what: 'claim of a batch, p50', value: quantiles(claims).p50, unit: 'ms' },
    { what: 'claim of a batch, p99', value: quantiles(claims).p99, unit: 'ms', goal: 5 },
    { what: 'claim of a batch, most', value: quantiles(claims).most, unit: 'ms' },
    { what: 'settle of one, p50', value: quantiles(settles).p50, unit: 'ms' },
    { what: 'settle of one, p99', value: quantiles(settles).p99, unit: 'ms' },
    { what: 'claim when none is due, p99', value: quantiles(idle).p99, unit: 'ms', goal: 1 },
  ]);
}

function claimAll({ due }: Store) {
  const [claims, settles, idle]: [number[], number[], number[]] = [[], [], []];
  const nowMs = NOW_MS + 7 * DAY_MS;
  const seen = new Set<number>();
  for (let batch = 0; batch < BATCHES; batch++) {
    const rows = timedInto(claims, () => due.claim(nowMs, BATCH, LEASE_MS));
    for (const { reminder, dueMs } of rows) {
      if (seen.has(reminder.id)) throw new Error('claimed twice');
      seen.add(reminder.id);
      timedInto(settles, () => due.settle(reminder.id, dueMs, { nextMs: dueMs + 14 * DAY_MS }));
    }
    timedInto(idle, () => due.claim(NOW_MS - 1, BATCH, LEASE_MS));
  }
  if (seen.size !== BATCH * BATCHES) throw new Error(`claimed ${seen.size}`);
  return { claims, settles, idle };
}

function timedInto<T>(values: number[], work: () => T): T {
  const start = performance.now();
  const result = work();
  values.push(performance.now() - start);
  return result;
}

const plan: Plan = {
  text: 'test alkalinity and calcium',
  parameters: ['alkalinity', 'calcium'],
  anchor: '2026-01-03 09:00',
  zone: 'Europe/Amsterdam',
  rule: { every: 'weeks', count: 1, on: [6] },
  place: { kind: 'direct' },
};

/** Nothing need outlive a fall of the machine, and no journal is kept: only while filling. */
function fill(file: string): void {
  const db = new Database(file);
  db.pragma('synchronous = OFF');
  db.pragma('journal_mode = OFF');
  db.pragma('foreign_keys = OFF');
  db.pragma('cache_size = -2000000');
  const person = db.prepare('INSERT INTO person (id, discord_id, created_ms) VALUES (?, ?, 0)');
  const tank = db.prepare(
    `INSERT INTO tank (id, person, name, kind, net_volume_l, volume_basis, units, targets)
     VALUES (?, ?, 'Reef', 'mixed', 250.5, '120 x 50 x 50 cm inside, less 15 % rock', '{}', '{}')`,
  );
  const insert = db.prepare(`
    INSERT INTO reminder (person, tank, text, parameters, anchor, zone, rule, next_ms, wake_ms)
    VALUES (@member, @member, @text, @parameters, @anchor, @zone, @rule, @nextMs, @nextMs)`);
  const row = planRow(plan);
  db.transaction(() => {
    for (let member = 1; member <= SCHEDULES / A_MEMBER; member++) {
      person.run(member, String(100_000_000_000_000_000n + BigInt(member)));
      tank.run(member, member);
      for (let i = 0; i < A_MEMBER; i++) {
        const progress: Progress = { nextMs: NOW_MS + Math.floor(Math.random() * 7 * DAY_MS) };
        insert.run({ ...row, ...progressRow(progress), member });
      }
    }
  })();
  db.close();
}
