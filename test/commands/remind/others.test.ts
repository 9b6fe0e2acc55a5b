import { describe, expect, it } from 'vitest';
import {
  askSitterAnswer,
  carePlanAnswer,
  handOverNewsAnswer,
} from '../../../commands/remind/hand-over-answers.ts';
import { dueAnswer } from '../../../commands/remind/due-answer.ts';
import { MOST_REMINDERS, type Reminder } from '../../../commands/reminder.ts';
import { quietSettings, type Server } from '../../../commands/server.ts';
import { problemOf, textOf } from '../text.ts';
import { button, club, HOUR_MS, START_MS } from './person.ts';

const SITTER = '100000000000000002';
const CHANNEL = '300000000000000001';

describe('a reminder of someone else', () => {
  it.each([
    '/remind done reminder:1',
    '/remind skip reminder:1',
    '/remind later reminder:1 until:in 1 hour',
    '/remind enter reminder:1 readings:8.1',
    '/remind change reminder:1 text:mine',
    '/remind pause reminder:1',
    '/remind resume reminder:1',
    '/remind remove reminder:1 sure:yes',
    '/remind done reminder:1: floss',
    '/remind done reminder:floss',
  ])('%s is as if there were none', (line) => {
    const { owner, other } = club();
    owner.run('/remind task text:floss when:saturdays 9am');
    const before = owner.keep.reminders();
    const problem = problemOf(() => other.run(line));
    const none = problemOf(() => other.run(line.replace(/reminder:\S+(?: floss)?/, 'reminder:999')));
    expect(problem.message).toBe('That is not one of your reminders.');
    expect([problem.message, problem.hint, problem.choices]).toEqual([none.message, none.hint, none.choices]);
    expect(owner.keep.reminders()).toEqual(before);
  });

  it.each(['0', '-1', '1e3', '９９', '999999999999999999999', '1; 2', 'NaN', '%00', ' '])(
    'an id of %j is none',
    (id) => {
      const { other } = club();
      const action = { label: '', command: 'remind done' as const, input: { reminder: id } };
      expect(problemOf(() => other.press(action)).field).toBe('reminder');
    },
  );
});

function handedOver() {
  const found = club();
  const { owner, other } = found;
  owner.run('/tank new name:Pantry volume:240 L');
  owner.run('/tank new name:Nano volume:40 L');
  owner.run('/remind test of:alk when:saturdays 9am tank:Pantry');
  owner.run('/remind task text:feed 1 g of pellets when:daily 9am tank:Nano');
  owner.run(`/remind hand-over to:${SITTER} until:20 jan tank:Pantry`);
  return { ...found, accept: () => other.run('/remind sit hand-over:1 answer:yes') };
}

describe('a sitter', () => {
  it('gets nothing before they accept, and may then do, put off and skip, of that tank only', () => {
    const { other, owner, accept, wait } = handedOver();
    expect(problemOf(() => other.run('/remind done reminder:1')).field).toBe('reminder');
    expect(accept().headline).toMatch(/^You have accepted/);
    wait(2);
    expect(other.run('/remind later reminder:1 until:in 2 hours').headline).toMatch(
      /^Later: test alkalinity/,
    );
    expect(textOf(other.run('/remind done reminder:1'))).toMatch(/its owner sees that it is done/);
    expect(owner.keep.reminders()[0]?.lastDoneMs).toBe(START_MS + 2 * HOUR_MS);
    expect(other.run('/remind skip reminder:1').headline).toMatch(/^Left out/);
    expect(problemOf(() => other.run('/remind done reminder:2')).field).toBe('reminder');
  });

  it.each([
    '/remind change reminder:1 text:mine',
    '/remind pause reminder:1',
    '/remind remove reminder:1 sure:yes',
    '/remind enter reminder:1 readings:8.1',
    '/remind resume reminder:1',
  ])('may not %s', (line) => {
    const { other, owner, accept } = handedOver();
    accept();
    const before = owner.keep.reminders();
    expect(problemOf(() => other.run(line)).message).toBe('Only its owner can do that.');
    expect(owner.keep.reminders()).toEqual(before);
    expect(owner.keep.latest(1)).toEqual([]);
  });

  it('is over at its end, and whenever either ends it', () => {
    const { other, owner, accept, wait } = handedOver();
    accept();
    other.run('/remind sit hand-over:1 answer:no');
    expect(problemOf(() => other.run('/remind done reminder:1')).field).toBe('reminder');
    owner.run(`/remind hand-over to:${SITTER} until:20 jan`);
    other.run('/remind sit hand-over:2 answer:yes');
    wait(18 * 24);
    expect(problemOf(() => other.run('/remind done reminder:2')).field).toBe('reminder');
    expect(other.run('/remind sit hand-over:2 answer:yes').headline).toMatch(/^That is over/);
  });

  it('only the one who was asked can accept; the owner can take it back', () => {
    const { other, owner } = handedOver();
    expect(owner.run('/remind sit hand-over:1 answer:yes').headline).toMatch(/^Only the sitter/);
    expect(problemOf(() => other.run('/remind sit hand-over:7 answer:yes')).field).toBe('hand-over');
    owner.press(button(owner.run('/remind list'), 'End hand-over 1'));
    expect(problemOf(() => other.run('/remind sit hand-over:1 answer:yes')).field).toBe('hand-over');
  });

  it('can not be oneself, nor without an end', () => {
    const { owner } = handedOver();
    expect(
      problemOf(() => owner.run('/remind hand-over to:100000000000000001 until:20 jan')).message,
    ).toBeTruthy();
    expect(problemOf(() => owner.run(`/remind hand-over to:${SITTER} until:3 years`)).field).toBe('until');
    expect(problemOf(() => owner.run('/remind hand-over to:someone until:20 jan')).field).toBe('to');
  });
});

describe('what is sent', () => {
  const { owner } = club();
  owner.run('/tank new name:Pantry volume:240 L');
  owner.run('/log add readings:alk 8.1');
  owner.run('/remind test of:alk when:saturdays 9am');
  const [reminder] = owner.keep.reminders() as readonly [Reminder];
  const [tank] = owner.keep.tanks();
  const dueMs = Date.UTC(2026, 0, 3, 8);
  const due = (to: 'owner' | 'sitter' | 'channel', lateMs = 0) =>
    dueAnswer({
      reminder,
      ...(tank && { tank }),
      last: owner.keep.latest(1),
      dueMs,
      nowMs: dueMs + lateMs,
      zone: 'Europe/Berlin',
      to,
    });

  it('to the owner names the tank, what is due, the last reading, and has four buttons of this occurrence', () => {
    const sent = due('owner');
    expect(sent.headline).toBe('Pantry: test alkalinity.');
    expect(textOf(sent)).toMatch(/Last alkalinity: 8\.1 dKH, 60 minutes ago/);
    expect(sent.next.map(({ label }) => label)).toEqual(['Enter reading', 'Done', 'Later', 'Skip']);
    for (const { input } of sent.next) expect(input).toEqual({ reminder: '1', due: String(dueMs / 1000) });
    expect(sent.next[0]?.ask).toEqual(['readings']);
  });

  it('to a channel says nothing of the tank', () => {
    expect(textOf(due('channel'))).not.toMatch(/Pantry|8\.1|240/);
  });

  it('to a sitter has no form for readings', () => {
    expect(due('sitter').next.map(({ label }) => label)).toEqual(['Done', 'Later', 'Skip']);
  });

  it('says when it is late, and since when', () => {
    expect(textOf(due('owner', 3 * 24 * HOUR_MS))).toMatch(/due 3 days ago; I was away/);
    expect(textOf(due('owner', 60_000))).not.toMatch(/late|away/);
  });

  it('of a hand-over holds amounts, targets and the first steps, and no medicine', () => {
    owner.run('/remind task text:3.2 g of sodium carbonate when:daily 9am times:4');
    owner.run(`/remind hand-over to:${SITTER} until:20 jan`);
    const [handOver] = owner.keep.handOvers();
    if (handOver === undefined) throw new Error('no hand-over');
    const parts = {
      handOver,
      news: 'accepted',
      tanks: owner.keep.tanks(),
      reminders: owner.keep.reminders(),
      latest: owner.keep.latest,
      nowMs: START_MS,
      zone: 'Europe/Berlin',
      to: 'sitter',
    } as const;
    const plan = textOf(carePlanAnswer(parts));
    for (const part of [
      /240 L/,
      /alkalinity 7 to 11 dKH/,
      /alkalinity 8\.1 dKH/,
      /3\.2 g of sodium carbonate/,
      /Power cut/,
      /Too warm/,
      /breaker/,
      /No medicine/,
    ]) {
      expect(plan).toMatch(part);
    }
    const asked = askSitterAnswer({ ...parts, news: 'ask the sitter' });
    expect(asked.next.map(({ command, input }) => [command, input])).toEqual([
      ['remind sit', { 'hand-over': '1', answer: 'yes' }],
      ['remind sit', { 'hand-over': '1', answer: 'no' }],
    ]);
    expect(textOf(asked)).not.toMatch(/8\.1|sodium/);
    expect(handOverNewsAnswer({ ...parts, news: 'ended', to: 'owner' }).headline).toMatch(
      /come to you again/,
    );
  });
});

describe('a channel', () => {
  const server = (changes: Partial<Server> = {}): Server => ({
    id: '200000000000000001',
    channelId: CHANNEL,
    settings: () => quietSettings,
    mayManage: false,
    change: () => undefined,
    mayWrite: () => true,
    lacks: () => [],
    ...changes,
  });
  const line = `/remind task text:floss when:saturdays 9am channel:${CHANNEL}`;

  it('is taken where both may write, and the answer says who reads it', () => {
    const { owner } = club({ zone: 'Europe/Berlin', server: server() });
    expect(textOf(owner.run(line))).toMatch(/Others read it/);
    expect(owner.keep.reminders()[0]?.place).toEqual({
      kind: 'channel',
      serverId: '200000000000000001',
      channelId: CHANNEL,
    });
    owner.run('/remind change reminder:1 where:direct message');
    expect(owner.keep.reminders()[0]?.place).toEqual({ kind: 'direct' });
  });

  it.each([
    ['the member may not write in', server({ mayWrite: () => false }), /can not write/],
    ['the bot can not post in', server({ lacks: () => ['Send Messages'] }), /I can not post/],
  ])('%s is refused', (_, one, message) => {
    const { owner } = club({ zone: 'Europe/Berlin', server: one });
    const problem = problemOf(() => owner.run(line));
    expect(problem.message).toMatch(message);
    expect(problem.field).toBe('channel');
    expect(owner.keep.reminders()).toEqual([]);
  });

  it('of no server is refused, and that of a server without one', () => {
    expect(problemOf(() => club().owner.run(line)).field).toBe('channel');
    const { owner } = club({ zone: 'Europe/Berlin', server: server() });
    expect(problemOf(() => owner.run('/remind task text:a when:mondays where:reminder channel')).field).toBe(
      'where',
    );
    const settings = () => ({ ...quietSettings, reminderChannelId: CHANNEL });
    const set = club({ zone: 'Europe/Berlin', server: server({ settings }) }).owner;
    set.run('/remind task text:a when:mondays where:reminder channel');
    expect(set.keep.reminders()[0]?.place).toMatchObject({ channelId: CHANNEL });
  });
});

describe('limits and odd texts', () => {
  it('keeps 60, then says so; those that are long over make room', () => {
    const { owner, wait } = club();
    for (let index = 0; index < MOST_REMINDERS; index++)
      owner.run(`/remind task text:task ${index} when:4 jan 9am`);
    expect(problemOf(() => owner.run('/remind task text:more when:5 jan 9am')).limit).toMatch(/60/);
    wait(20 * 24);
    owner.run('/remind task text:more when:1 feb 9am');
    const texts = owner.keep.reminders().map(({ text }) => text);
    expect(texts).toHaveLength(MOST_REMINDERS);
    expect([texts[0], texts.at(-1)]).toEqual(['task 1', 'more']);
  });

  it.each([
    ['**bold** @everyone <@1> `x`', '**bold** @everyone <@1> `x`'],
    ['flo\u200Bss\u202E', 'floss'],
    ['a\nb\tc', 'a b c'],
  ])('%j is kept as %j', (text, kept) => {
    const { owner } = club();
    owner.press({ label: '', command: 'remind task', input: { text, when: 'saturdays 9am' } });
    expect(owner.keep.reminders()[0]?.text).toBe(kept);
  });

  it.each(['\u200B', '...', 'x'.repeat(121)])('%j is no text', (text) => {
    const { owner } = club();
    const action = { label: '', command: 'remind task' as const, input: { text, when: 'saturdays 9am' } };
    expect(problemOf(() => owner.press(action)).field).toBe('text');
  });

  it('a text that fits several asks which, with choices that work', () => {
    const { owner } = club();
    owner.run('/remind task text:clean pump when:saturdays 9am');
    owner.run('/remind task text:clean glass when:saturdays 9am');
    const { choices } = problemOf(() => owner.run('/remind skip reminder:clean'));
    expect(choices).toEqual(['1: clean pump', '2: clean glass']);
    expect(owner.run(`/remind skip reminder:${choices[1]}`).headline).toMatch(/clean glass/);
  });
});
