import { PassThrough, Readable } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { openStore } from '../../../bot/store/open.ts';
import { LOCAL_PERSON } from '../../../bot/store/people.ts';
import { openDue } from '../../../bot/terminal/due.ts';
import { replyTo } from '../../../bot/terminal/reply.ts';
import { openRoom } from '../../../bot/terminal/room.ts';
import { answer } from '../../../commands/answer.ts';
import type { Plan } from '../../../commands/reminder.ts';
import { leaveNotice } from '../noticed.ts';
import { sampleDesk } from './sample.ts';

const style = { width: 80, bold: false };
const dueMs = Date.UTC(2026, 0, 3, 8);

function plan(text: string): Plan {
  const anchor = '2026-01-03 09:00';
  const rule = { every: 'days', count: 1 } as const;
  return { text, parameters: [], anchor, zone: 'Europe/Berlin', rule, place: { kind: 'direct' } };
}

function dueDesk(nowMs: () => number = () => dueMs) {
  return { ...sampleDesk(), nowMs };
}

describe('what is due in the room', () => {
  it('is shown once, with its local time and how to settle it', () => {
    const desk = dueDesk();
    const due = openDue(desk);
    expect(due.show(style)).toBe('');
    desk.keep.addReminder(plan('rinse the sponge'), { nextMs: dueMs });
    desk.keep.addReminder(plan('not yet'), { nextMs: dueMs + 1 });
    desk.keep.setZone('Europe/Berlin');
    expect(due.show(style).replaceAll(/\s+/g, ' ')).toBe(
      `Due: rinse the sponge, 2026-01-03 09:00. When it is done, type done. `,
    );
    expect(due.show(style)).toBe('');
    expect(openDue(desk).show(style)).not.toBe('');
  });

  it('is shown again for the next occurrence', () => {
    let now = dueMs;
    const desk = dueDesk(() => now);
    const { id } = desk.keep.addReminder(plan('rinse the sponge'), { nextMs: dueMs });
    const due = openDue(desk);
    expect(due.show(style)).toContain('08:00');
    now += 86_400_000;
    expect(due.show(style)).toBe('');
    desk.keep.changeReminder(id, plan('rinse the sponge'), { nextMs: now });
    expect(due.show(style)).toContain('2026-01-04 08:00');
  });

  it('is three at most, and the number of the others', () => {
    const desk = dueDesk();
    for (const text of ['one', 'two', 'three', 'four', 'five']) {
      desk.keep.addReminder(plan(text), { nextMs: dueMs });
    }
    const text = openDue(desk).show(style);
    expect(text.match(/^Due: /gm)).toHaveLength(4);
    expect(text).toContain('Due: three');
    expect(text).toContain('Due: 2 more: /remind list');
  });

  it('leaves out what is paused, stopped or over, and counts a later time', () => {
    const desk = dueDesk();
    desk.keep.addReminder(plan('paused'), { nextMs: dueMs, pause: { fromMs: dueMs - 1 } });
    desk.keep.addReminder(plan('stopped'), { nextMs: dueMs, trouble: 'closed' });
    desk.keep.addReminder(plan('over'), {});
    desk.keep.addReminder(plan('put off'), { nextMs: dueMs + 5000, againMs: dueMs });
    expect(openDue(desk).show(style)).toMatch(/^Due: put off[^]*$/);
    expect(openDue(desk).show(style)).not.toMatch(/paused|stopped|over,/);
  });

  it('comes before the answer to the next line, and steers no terminal', async () => {
    const desk = dueDesk();
    desk.keep.addReminder(plan('rinse\u001B[2J'), { nextMs: dueMs });
    const output = new PassThrough();
    let text = '';
    output.on('data', (chunk) => (text += String(chunk)));
    await openRoom({ ...desk, input: Readable.from(['\n', 'hello\n', 'again\n']), output });
    expect(text).toMatch(/^> hello\nDue: rinse␛\[2J, [^]*\n\nHeard: hello\n\n> again\nHeard: again\n/);
  });
});

describe('a notice in the room', () => {
  it('is the first thing read, once', async () => {
    const store = openStore({ file: ':memory:', nowMs: () => dueMs });
    const desk = { ...sampleDesk(), keep: store.keepFor(LOCAL_PERSON) };
    leaveNotice(store, LOCAL_PERSON, dueMs, 'It was not delivered.');
    const reply = async () => (await replyTo('/tide', { offers: [] }, desk, style)).text;
    expect(await reply()).toContain('It was not delivered.\n');
    expect(await reply()).not.toContain('delivered');
    store.close();
  });
});

it('tells someone by their id', async () => {
  const facts = [{ label: 'sitter', value: 'asked', personId: '1100000000000000012' }];
  const desk = { ...sampleDesk(), ask: () => answer({ headline: 'x', facts }) };
  const { text } = await replyTo('x', { offers: [] }, desk, style);
  expect(text).toContain('sitter  asked 1100000000000000012\n');
});
