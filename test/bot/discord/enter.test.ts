import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { callId } from '../../../bot/discord/asked/call.ts';
import type { NextAction } from '../../../commands/answer.ts';
import { dueAnswer } from '../../../commands/remind/due-answer.ts';
import { doneCommand } from '../../../commands/remind/done.ts';
import { enterCommand } from '../../../commands/remind/enter.ts';
import { laterCommand } from '../../../commands/remind/later.ts';
import type { Plan, Reminder } from '../../../commands/reminder.ts';
import { list, record, text } from '../../discord/standin/json.ts';
import { userIds } from '../../discord/standin/world.ts';
import { nowMs, openClub } from './club.ts';
import type { Club } from './club.ts';
import { formCommands } from './asked/form-commands.ts';
import { memberCommands, moveIn } from './members.ts';

const { keeper, second } = userIds;
const week = 7 * 86_400_000;

let club: Club;
let reminder: Reminder;

beforeEach(async () => {
  const commands = [...memberCommands, ...formCommands, enterCommand, doneCommand, laterCommand];
  club = await openClub({ commands });
  const keep = club.store.keepFor(keeper);
  moveIn(keep, 'Pantry', 251, 'before');
  const anchor = new Date(nowMs - week).toISOString().slice(0, 16).replace('T', ' ');
  const rule = { every: 'days', count: 7 } as const;
  const about = {
    text: 'test alkalinity',
    parameters: ['alkalinity'],
    tankId: keep.tankInUse()?.id,
  } as const;
  const plan: Plan = { ...about, anchor, zone: 'UTC', rule, place: { kind: 'direct' } };
  reminder = keep.addReminder(plan, { nextMs: nowMs - week });
});

afterEach(() => club.close());

/** The buttons of the message that is sent when it is due. */
function actions(): readonly NextAction[] {
  const tank = club.store.keepFor(keeper).tankInUse();
  if (tank === undefined) throw new Error('no tank');
  const parts = { reminder, tank, last: [], dueMs: nowMs - week, nowMs, zone: 'UTC', to: 'owner' } as const;
  return dueAnswer(parts).next;
}

async function press(label: string, userId: string) {
  const action = actions().find((each) => each.label === label);
  const id = action && callId(action);
  if (id === undefined) throw new Error(`no button ${label}`);
  await club.standIn.slash('hold', { with: id }).reply;
  return club.standIn.component(id, { userId });
}

const readings = () =>
  club.store
    .keepFor(keeper)
    .readings(1, { parameter: 'alkalinity' })
    .map(({ value }) => value);

describe('the buttons of a reminder', () => {
  it('all fit into custom ids', () => {
    expect(actions().map((each) => callId(each))).not.toContain(undefined);
  });

  it('enter a reading by a form: it is logged, answered, and the reminder done, after a restart too', async () => {
    const pressed = await press('Enter reading', keeper);
    const [label] = list((await pressed.modal)['components']).map(record);
    expect(text(label?.['label'])).toBe('Alkalinity, dKH');
    await club.restart();
    const reply = await club.standIn.submitModal(pressed, { 'reading.alkalinity': '7.9' }).reply;
    expect(reply.ephemeral).toBe(true);
    expect(reply.text).toContain('7.9 dKH');
    expect(reply.text).toMatch(/Next test: <t:\d+:f>\n/);
    expect(readings()).toEqual([8.3, 7.9]);
    expect(club.store.keepFor(keeper).reminders()[0]?.lastDoneMs).toBe(nowMs);
  });

  it('do nothing for anybody else', async () => {
    const before = JSON.stringify(club.store.keepFor(keeper).reminders());
    const pressed = await press('Enter reading', second);
    await pressed.modal;
    const forms = club.standIn.submitModal(pressed, { 'reading.alkalinity': '7.9' }, { userId: second });
    const done = await press('Done', second);
    for (const asked of [forms, done]) {
      const reply = await asked.reply;
      expect(reply.text).toMatch(/not one of your reminders/i);
      expect(reply.ephemeral).toBe(true);
    }
    expect(readings()).toEqual([8.3]);
    expect(JSON.stringify(club.store.keepFor(keeper).reminders())).toBe(before);
  });

  it('ask until when, by buttons that work', async () => {
    const asked = await (await press('Later', keeper)).reply;
    expect(asked.ephemeral).toBe(true);
    const ids = JSON.stringify(asked.components).match(/run:remind later\?[^"]*/g) ?? [];
    expect(ids.length).toBeGreaterThan(1);
    const [first = ''] = ids;
    expect((await club.standIn.component(first).reply).ephemeral).toBe(true);
    expect(club.store.keepFor(keeper).reminders()[0]?.againMs).toBeGreaterThan(nowMs);
  });
});
