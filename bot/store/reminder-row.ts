import { MOST_REMINDER_LETTERS, type Plan, type Progress, type Reminder } from '../../commands/reminder.ts';
import { Problem } from '../../core/problem.ts';
import type { Rule } from '../../core/schedule/rule.ts';
import { say } from '../../core/wording/say.ts';
import { instant, shortEnough, zoneName } from './limits.ts';
import { parameterCode, parameterOf } from './parameter-code.ts';

export interface PlanRow {
  readonly tank: number | null;
  readonly text: string;
  readonly parameters: string;
  readonly anchor: string;
  readonly zone: string;
  readonly rule: string;
  readonly times: number | null;
  readonly server: string | null;
  readonly channel: string | null;
}

export interface ProgressRow {
  readonly nextMs: number | null;
  readonly againMs: number | null;
  readonly pauseFromMs: number | null;
  readonly pauseUntilMs: number | null;
  readonly lastDoneMs: number | null;
  readonly trouble: string | null;
}

export interface FoundReminder extends PlanRow, ProgressRow {
  readonly id: number;
  readonly person: number;
}

export const reminderColumns = `reminder.id, reminder.person, tank, text, parameters, anchor, reminder.zone, rule, times,
  server, channel, next_ms AS nextMs, again_ms AS againMs, pause_from_ms AS pauseFromMs,
  pause_until_ms AS pauseUntilMs, last_done_ms AS lastDoneMs, trouble`;

/** @throws Problem when a text is too long or a time makes no sense. */
export function planRow(plan: Plan): PlanRow {
  const text = shortEnough('text', plan.text.trim(), MOST_REMINDER_LETTERS);
  if (text === '') throw new Problem(say('schedule.needsText'), { field: 'text', given: plan.text });
  const { place } = plan;
  return {
    tank: plan.tankId ?? null,
    text,
    parameters: JSON.stringify(plan.parameters.map((id) => parameterCode[id])),
    anchor: localTime(plan.anchor),
    zone: zoneName(plan.zone),
    rule: JSON.stringify(plan.rule),
    times: plan.times ?? null,
    server: place.kind === 'channel' ? place.serverId : null,
    channel: place.kind === 'channel' ? place.channelId : null,
  };
}

export function progressRow({ nextMs, againMs, pause, lastDoneMs, trouble }: Progress): ProgressRow {
  return {
    nextMs: orNull(nextMs),
    againMs: orNull(againMs),
    pauseFromMs: orNull(pause?.fromMs),
    pauseUntilMs: orNull(pause?.untilMs),
    lastDoneMs: orNull(lastDoneMs),
    trouble: trouble ?? null,
  };
}

export function reminderOf(row: FoundReminder): Reminder {
  const { id, text, anchor, zone, tank, times, server, channel } = row;
  const codes = JSON.parse(row.parameters) as readonly number[];
  return {
    id,
    text,
    anchor,
    zone,
    parameters: codes.map(parameterOf),
    tankId: tank ?? undefined,
    rule: JSON.parse(row.rule) as Rule,
    times: times ?? undefined,
    place:
      server === null || channel === null
        ? { kind: 'direct' }
        : { kind: 'channel', serverId: server, channelId: channel },
    ...progressOf(row),
  };
}

export function progressOf(row: ProgressRow): Progress {
  const { pauseFromMs, pauseUntilMs } = row;
  return {
    nextMs: row.nextMs ?? undefined,
    againMs: row.againMs ?? undefined,
    pause: pauseFromMs === null ? undefined : { fromMs: pauseFromMs, untilMs: pauseUntilMs ?? undefined },
    lastDoneMs: row.lastDoneMs ?? undefined,
    trouble: row.trouble ?? undefined,
  };
}

export function localTime(anchor: string): string {
  if (/^\d{4}-\d\d-\d\d \d\d:\d\d$/.test(anchor)) return anchor;
  throw new Error('an anchor is a local date and time');
}

function orNull(ms: number | undefined): number | null {
  return ms === undefined ? null : instant(ms);
}
