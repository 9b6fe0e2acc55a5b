import { describe, expect, it } from 'vitest';
import { ask } from '../../ask.ts';
import type { Answer } from '../../../commands/answer.ts';
import type { Keep } from '../../../commands/keep.ts';
import { openTalks } from '../../../bot/talks.ts';
import { keepMarked, NOW_MS } from '../marked.ts';
import { textOf } from '../text.ts';
import { wholeStore } from '../whole-store.ts';

interface Talking {
  readonly keep: Keep;
  readonly say: (line: string) => Answer;
  readonly rows: () => string;
}

/** One who talks with the bot over the real store, in a direct message. */
function talking(): Talking {
  const { keepFor, rows } = wholeStore(() => NOW_MS);
  const keep = keepFor('100000000000000001');
  keepMarked(keep, NOW_MS);
  for (const { id } of keep.reminders()) keep.removeReminder(id);
  const { talkOf } = openTalks(() => NOW_MS);
  const say = (line: string): Answer =>
    ask(line, { nowMs: NOW_MS, zone: 'UTC', keep, talk: talkOf('me', ['own messages']) });
  return { keep, say, rows };
}

const reminder = 'remind me to change 20 gal every saturday 9am';
const dose = 'raise alk 7.2 to 8.4 in 75 gal with soda ash';
const goingOn = [
  'make it 30 gal',
  "it's 30 gallons",
  'and at 9',
  'and at 9am?',
  'and with baking soda?',
  'over 4 days',
  'no its litres',
  'what about sundays',
  'and every sunday',
] as const;

function sets(line: string): void {
  const { keep, say, rows } = talking();
  expect(say(reminder).headline).toMatch(/^Set as reminder/);
  const set = keep.reminders();
  const before = rows();
  expect(say(line).headline).not.toMatch(/^(?:Set as|That is set already)/);
  expect(keep.reminders()).toEqual(set);
  expect(rows()).toBe(before);
}

function brings(line: string): void {
  const { keep, say, rows } = talking();
  say(reminder);
  for (const { id } of keep.reminders()) keep.removeReminder(id);
  const before = rows();
  say(line);
  expect(keep.reminders()).toEqual([]);
  expect(rows()).toBe(before);
}

describe('after a reminder was set in plain words', () => {
  it.each(goingOn)('"%s" sets no other and changes none', sets);
  it.each(goingOn)('and removed, "%s" does not bring it back', brings);

  it('what goes on is the question before it, says so and changes no reminder', () => {
    const { keep, say, rows } = talking();
    say(dose);
    say(reminder);
    const [set, before] = [keep.reminders(), rows()];
    expect(textOf(say('make it 30 gal'))).toContain(
      'with what you said before: alkalinity 7.2, alkalinity 8.4 wanted, 30 gal, soda ash',
    );
    expect(keep.reminders()).toEqual(set);
    expect(rows()).toBe(before);
  });

  it('another question is gone on from as ever', () => {
    const { say } = talking();
    say(reminder);
    say(dose);
    expect(textOf(say('and with baking soda?'))).toContain(
      'with what you said before: alkalinity 7.2, alkalinity 8.4 wanted, 75 gal, baking soda',
    );
  });

  it('the same said again is set already, once', () => {
    const { keep, say } = talking();
    say(reminder);
    expect(say(reminder).headline).toMatch(/^That is set already/);
    expect(keep.reminders()).toHaveLength(1);
  });
});

function writesAsAlone(first: string, second: string): void {
  const { keep, say, rows } = talking();
  attempt(() => say(first));
  const before = keep.reminders().length;
  const rowsBefore = rows();
  attempt(() => say(second));
  const own = talking();
  attempt(() => own.say(second));
  const alone = own.keep.reminders().length;
  expect(keep.reminders().length - before).toBe(alone);
  if (alone === 0) expect(rows()).toBe(rowsBefore);
}

describe('finding out what a sentence goes on from', () => {
  it.each([
    [dose, 'and with baking soda?'],
    [dose, 'and remind me every saturday 9am'],
    [dose, 'and change floss every sat, water change every other sat, test alk mondays'],
    ['remind me to test alk', 'and on saturdays'],
    ['remind me to test alk', 'every saturday 9am'],
    ['what should my alk be', 'and calcium'],
    ['my torch is closed', 'and it is 75 gal'],
  ])('%s, then %s: writes nothing the sentence itself does not', writesAsAlone);
});

/** A question asked back is fine. */
function attempt(work: () => unknown): void {
  try {
    work();
  } catch (error) {
    expect(error).toHaveProperty('field');
  }
}
