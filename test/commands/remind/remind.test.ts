import { describe, expect, it } from 'vitest';
import { remindCommands } from '../../../commands/remind.ts';
import { problemOf, textOf } from '../text.ts';
import { button, club, HOUR_MS, START_MS, type Club } from './person.ts';

const DAY = 24;

/** A club whose owner keeps a tank called Pantry. */
function withTank(): Club {
  const found = club();
  found.owner.run('/tank new name:Pantry volume:240 L kind:mixed');
  return found;
}

describe('the commands', () => {
  it('are at most 25, private, and each with an example', () => {
    expect(remindCommands.length).toBeLessThanOrEqual(25);
    expect(remindCommands.filter((command) => !command.private)).toEqual([]);
  });
});

describe('/remind test and task', () => {
  it('read the rule back in words with the next three times as instants', () => {
    const { owner } = withTank();
    const set = owner.run('/remind test of:alk when:every other saturday 9am');
    expect(set.headline).toBe(
      'Set as reminder 1: test alkalinity, every 2 weeks on Saturday at 09:00 (Europe/Berlin).',
    );
    const times = set.facts.filter(({ instant }) => instant !== undefined);
    expect(times.map(({ label }) => label)).toEqual(['Next', 'Then', 'Then']);
    expect(times.map(({ instant }) => instant?.atMs)).toEqual(
      [3, 17, 31].map((day) => Date.UTC(2026, 0, day, 8)),
    );
    expect(set.read).toContain('for your tank Pantry');
    expect(owner.keep.reminders()[0]).toMatchObject({ parameters: ['alkalinity'], zone: 'Europe/Berlin' });
  });

  it('takes several readings in one test, in any of their spellings', () => {
    const { owner } = withTank();
    owner.run('/remind test of:alk, ca and mg when:sundays');
    owner.run('/remind test of:no3 po4 when:sundays');
    expect(owner.keep.reminders().map(({ text }) => text)).toEqual([
      'test alkalinity, calcium and magnesium',
      'test nitrate and phosphate',
    ]);
    expect(problemOf(() => owner.run('/remind test of:alk, luck when:sundays')).field).toBe('of');
  });

  it('asks "biweekly" back with choices that work when picked', () => {
    const { owner } = withTank();
    const problem = problemOf(() => owner.run('/remind task text:floss when:biweekly 9am'));
    expect(problem.field).toBe('when');
    expect(problem.choices).toEqual(['twice a week 9am', 'every 2 weeks 9am']);
    for (const when of problem.choices) {
      expect(
        owner.press({ label: '', command: 'remind task', input: { text: 'floss', when } }).headline,
      ).toMatch(/^Set as/);
    }
    expect(owner.keep.reminders().map(({ rule }) => rule)).toEqual([
      { every: 'weeks', count: 1, on: [2, 6] },
      { every: 'weeks', count: 2, on: [6] },
    ]);
  });

  it('refuses words left over in the time, a time that is past, and times of what comes once', () => {
    const { owner } = withTank();
    expect(problemOf(() => owner.run('/remind task text:floss when:every saturday wobble')).message).toMatch(
      /wobble/,
    );
    expect(problemOf(() => owner.run('/remind task text:floss when:1 jan 2026 9am')).message).toMatch(/past/);
    expect(problemOf(() => owner.run('/remind task text:floss when:in 3 days times:4')).field).toBe('times');
    expect(owner.keep.reminders()).toEqual([]);
  });

  it('sets nothing twice when a button is pressed twice', () => {
    const { owner } = withTank();
    const line = '/remind task text:3.2 g of sodium carbonate when:daily 9am times:4';
    owner.run(line);
    expect(owner.run(line).headline).toMatch(/^That is set already: reminder 1/);
    expect(owner.keep.reminders()).toHaveLength(1);
  });

  it('ends after its times', () => {
    const { owner, wait } = withTank();
    owner.run('/remind task text:dose when:daily 9am times:3');
    expect(wait(10 * DAY)).toEqual([
      '2026-01-03T08:00 dose',
      '2026-01-04T08:00 dose',
      '2026-01-05T08:00 dose',
    ]);
    expect(textOf(owner.run('/remind list'))).toMatch(/over/);
  });
});

describe('the time zone', () => {
  it('is asked once, with choices that are taken and kept', () => {
    const { owner } = club({});
    const problem = problemOf(() => owner.run('/remind task text:floss when:saturdays 9am'));
    expect(problem.field).toBe('zone');
    expect(problem.choices).toHaveLength(8);
    const set = owner.run('/remind task text:floss when:saturdays 9am zone:America/Chicago');
    expect(set.read).toContain('your time zone is America/Chicago from now on');
    expect(set.facts[0]?.instant?.atMs).toBe(Date.UTC(2026, 0, 3, 15));
    expect(owner.run('/remind task text:glass when:sundays 9am').headline).toMatch(/America\/Chicago/);
  });

  it('of a tank elsewhere goes before that of its keeper', () => {
    const { owner } = club();
    owner.run('/tank new name:Far volume:100 L zone:australia/sydney');
    expect(textOf(owner.run('/tank show'))).toMatch(/time zone of the tank: Australia\/Sydney/);
    const set = owner.run('/remind task text:floss when:sundays 9am');
    expect(set.headline).toMatch(/Australia\/Sydney/);
    expect(set.facts[0]?.instant?.atMs).toBe(Date.UTC(2026, 0, 3, 22));
    owner.run('/tank edit zone:mine');
    expect(owner.run('/remind task text:glass when:sundays 9am').headline).toMatch(/Europe\/Berlin/);
  });

  it('is used where readings are logged and shown', () => {
    const { owner } = club({});
    owner.run('/tank new name:Pantry volume:240 L');
    owner.keep.setZone('America/Chicago');
    const logged = owner.run('/log add readings:alk 8.1 at:today 1am');
    expect(logged.read[0]).toBe('Pantry, tested at 2026-01-03 01:00 (times by the clock of America/Chicago)');
    expect(owner.keep.latest(1)[0]?.atMs).toBe(Date.UTC(2026, 0, 3, 7));
    owner.run('/tank edit zone:Europe/Berlin');
    expect(owner.run('/log show').headline).toMatch(/2026-01-03 08:00/);
  });
});

function due(): Club {
  const found = withTank();
  found.owner.run('/remind task text:change floss when:saturdays 9am');
  expect(found.wait(2)).toEqual(['2026-01-03T08:00 change floss']);
  return found;
}

describe('done, later, skip', () => {
  const first = { reminder: '1', due: String(Date.UTC(2026, 0, 3, 8) / 1000) };

  it('count an occurrence once, however often its button is pressed', () => {
    const { owner, wait } = due();
    const done = { label: 'Done', command: 'remind done' as const, input: first };
    expect(owner.press(done).headline).toBe('Done: change floss.');
    expect(owner.press(done).headline).toMatch(/^That was done already/);
    for (const command of ['remind skip', 'remind later'] as const) {
      expect(owner.press({ label: '', command, input: first }).headline).toMatch(/^That was done already/);
    }
    wait(60 * DAY);
    expect(owner.press(done).headline).toMatch(/^That was done already/);
    expect(owner.keep.reminders()[0]?.nextMs).toBe(Date.UTC(2026, 2, 7, 8));
  });

  it('done by its number, twice, does not leave out the next', () => {
    const { owner } = due();
    owner.run('/remind done reminder:1');
    expect(owner.run('/remind done reminder:1').headline).toMatch(/already/);
    expect(owner.keep.reminders()[0]?.nextMs).toBe(Date.UTC(2026, 0, 10, 8));
  });

  it('done the day before counts for the next', () => {
    const { owner, wait } = due();
    owner.run('/remind done reminder:floss');
    wait(6 * DAY);
    expect(owner.run('/remind done reminder:floss').read[0]).toMatch(
      /done early, counted for Saturday 2026-01-10/,
    );
    expect(owner.keep.reminders()[0]?.nextMs).toBe(Date.UTC(2026, 0, 17, 8));
  });

  it('takes when it was done, by the clock of the reminder', () => {
    const { owner } = due();
    owner.run('/remind done reminder:1 at:today 9:30');
    expect(owner.keep.reminders()[0]?.lastDoneMs).toBe(Date.UTC(2026, 0, 3, 8, 30));
  });

  it('later asks until when, and each choice works', () => {
    const { owner } = due();
    const later = { label: 'Later', command: 'remind later' as const, input: first };
    const { choices, field } = problemOf(() => owner.press(later));
    expect(field).toBe('until');
    expect(choices).toEqual(['in 1 hour', 'in 3 hours', 'this evening', 'tomorrow same time']);
    const instants = choices.map((until) => {
      owner.press(later, { until });
      return owner.keep.reminders()[0]?.againMs;
    });
    // It is 10:00 in Berlin; the occurrence was at 09:00.
    expect(instants).toEqual([
      START_MS + 3 * HOUR_MS,
      START_MS + 5 * HOUR_MS,
      Date.UTC(2026, 0, 3, 18),
      Date.UTC(2026, 0, 4, 8),
    ]);
  });

  it('later comes once more, and the next as ever', () => {
    const { owner, wait } = due();
    owner.run('/remind later reminder:1 until:in 3 hours');
    owner.run('/remind later reminder:1 until:tonight');
    expect(wait(8 * DAY)).toEqual(['2026-01-03T18:00 change floss', '2026-01-10T08:00 change floss']);
  });

  it('later is before the next one, and not in the past', () => {
    const { owner } = due();
    expect(problemOf(() => owner.run('/remind later reminder:1 until:in 9 days')).message).toMatch(
      /by itself/,
    );
    expect(problemOf(() => owner.run('/remind later reminder:1 until:every sunday')).field).toBe('until');
    expect(owner.keep.reminders()[0]?.againMs).toBeUndefined();
  });

  it('skip leaves out the one that was sent, and long after that the one to come', () => {
    const { owner, wait } = due();
    expect(owner.run('/remind skip reminder:1').headline).toMatch(/2026-01-03/);
    expect(owner.keep.reminders()[0]?.nextMs).toBe(Date.UTC(2026, 0, 10, 8));
    wait(5 * DAY);
    expect(owner.run('/remind skip reminder:1').headline).toMatch(/2026-01-10/);
    expect(owner.keep.reminders()[0]?.nextMs).toBe(Date.UTC(2026, 0, 17, 8));
  });

  it('does not believe a time to come in a button', () => {
    const { owner } = due();
    owner.press({ label: '', command: 'remind done', input: { reminder: '1', due: '4102444800' } });
    expect(owner.keep.reminders()[0]?.nextMs).toBe(Date.UTC(2026, 0, 10, 8));
  });

  it('counts days from when it was last done', () => {
    const { owner, wait } = withTank();
    const set = owner.run('/remind task text:clean pump when:30 days after I last did it at 9am');
    expect(set.facts.map(({ label, value }) => `${label} ${value}`)).toContain(
      'Then 30 days after you say it is done',
    );
    expect(wait(40 * DAY)).toEqual(['2026-02-02T08:00 clean pump']);
    expect(textOf(owner.run('/remind list'))).toMatch(/waits until you say it is done/);
    expect(owner.run('/remind done reminder:pump').facts[0]?.value).toBe('Saturday 2026-03-14 09:00');
  });
});

describe('/remind enter', () => {
  it('logs a bare number for a test of one thing, says what to do, and counts it as done', () => {
    const { owner, wait } = withTank();
    owner.run('/remind test of:alk when:saturdays 9am');
    wait(2);
    const entered = owner.run('/remind enter reminder:1 readings:6.2');
    expect(entered.headline).toMatch(/^Logged for Pantry: alkalinity 6\.2 dKH/);
    expect(textOf(entered)).toMatch(/at most 1 dKH a day/);
    expect(textOf(entered)).toMatch(/reminder 1 is done, counted for Saturday 2026-01-03 09:00/);
    expect(textOf(entered)).toMatch(/Next test: Saturday 2026-01-10 09:00/);
    expect(owner.keep.latest(1)[0]).toMatchObject({ parameter: 'alkalinity', value: 6.2 });
  });

  it.each([
    ['salinity', '1.0264', 'salinity'],
    ['temp', '78f', 'temperature'],
    ['alk', '2.9 meq/L', 'alkalinity'],
    ['po4', '0.04', 'phosphate'],
  ])('of %s reads %s', (of, readings, parameter) => {
    const { owner } = withTank();
    owner.run(`/remind test of:${of} when:saturdays 9am`);
    owner.run(`/remind enter reminder:1 readings:${readings}`);
    expect(owner.keep.latest(1)[0]?.parameter).toBe(parameter);
  });

  it('done twice logs both and counts once', () => {
    const { owner, wait } = withTank();
    owner.run('/remind test of:alk when:saturdays 9am');
    wait(2);
    owner.run('/remind enter reminder:1 readings:8.1');
    wait(1);
    expect(textOf(owner.run('/remind enter reminder:1 readings:8.2'))).toMatch(/counted once/);
    expect(owner.keep.readings(1, {})).toHaveLength(2);
    expect(owner.keep.reminders()[0]?.nextMs).toBe(Date.UTC(2026, 0, 10, 8));
  });

  it('does not count what it could not read', () => {
    const { owner, wait } = withTank();
    owner.run('/remind test of:alk, ca when:saturdays 9am');
    wait(2);
    expect(problemOf(() => owner.run('/remind enter reminder:1 readings:8.1')).field).toBe('readings');
    expect(owner.keep.reminders()[0]?.lastDoneMs).toBeUndefined();
  });

  it('logs for the tank of the reminder, whichever is in use', () => {
    const { owner } = withTank();
    owner.run('/remind test of:alk when:saturdays 9am');
    owner.run('/tank new name:Nano volume:40 L');
    owner.run('/tank use tank:Nano');
    owner.run('/remind enter reminder:1 readings:8.1');
    expect(owner.keep.latest(1)).toHaveLength(1);
    expect(owner.keep.latest(2)).toEqual([]);
  });
});

describe('change, pause, resume, remove', () => {
  it('change moves the times and keeps what was done', () => {
    const { owner, wait } = withTank();
    owner.run('/remind task text:floss when:saturdays 9am');
    wait(2);
    owner.run('/remind done reminder:1');
    const after = owner.run('/remind change reminder:1 when:every sunday 10am text:new floss');
    expect(after.headline).toBe(
      'Changed reminder 1: new floss, every week on Sunday at 10:00 (Europe/Berlin).',
    );
    expect(owner.keep.reminders()[0]).toMatchObject({
      nextMs: Date.UTC(2026, 0, 4, 9),
      lastDoneMs: START_MS + 2 * HOUR_MS,
    });
    expect(problemOf(() => owner.run('/remind change reminder:1')).field).toBe('when');
  });

  it('change of the text only leaves the times', () => {
    const { owner } = withTank();
    owner.run('/remind task text:floss when:every other saturday 9am');
    const before = owner.keep.reminders()[0];
    owner.run('/remind change reminder:1 text:floss and socks');
    expect(owner.keep.reminders()[0]).toEqual({ ...before, text: 'floss and socks' });
  });

  it('pauses all from one day to another: before it and on the day of return they come', () => {
    const { owner, wait } = withTank();
    owner.run('/remind task text:feed when:daily 9am');
    owner.run('/remind task text:once when:12 jan 9am');
    const paused = owner.run('/remind pause from:10 jan until:20 jan');
    expect(paused.headline).toBe('All 2 reminders are paused.');
    const sent = wait(19 * DAY);
    expect(sent.filter((line) => line.endsWith('feed')).map((line) => line.slice(8, 10))).toEqual([
      '03',
      '04',
      '05',
      '06',
      '07',
      '08',
      '09',
      '20',
      '21',
    ]);
    expect(sent.filter((line) => line.endsWith('once'))).toEqual(['2026-01-19T23:00 once']);
  });

  it('pauses one without an end, until it is resumed', () => {
    const { owner, wait } = withTank();
    owner.run('/remind task text:feed when:daily 9am');
    owner.run('/remind task text:glass when:daily 10am');
    owner.run('/remind pause reminder:feed');
    expect(new Set(wait(3 * DAY).map((line) => line.slice(17)))).toEqual(new Set(['glass']));
    expect(textOf(owner.run('/remind list'))).toMatch(/feed.*paused/);
    expect(owner.run('/remind resume').headline).toBe('Reminder 1: feed goes on.');
    expect(owner.run('/remind resume').headline).toBe('Nothing is paused or stopped.');
    expect(wait(DAY).some((line) => line.endsWith('feed'))).toBe(true);
  });

  it('a pause ends after it begins, and needs something to pause', () => {
    const { owner } = withTank();
    expect(problemOf(() => owner.run('/remind pause')).message).toMatch(/no reminder/);
    owner.run('/remind task text:feed when:daily 9am');
    expect(problemOf(() => owner.run('/remind pause from:20 jan until:10 jan')).field).toBe('until');
  });

  it('resume starts what was stopped, and clears why', () => {
    const { owner } = withTank();
    owner.run('/remind task text:feed when:daily 9am');
    const [one] = owner.keep.reminders();
    owner.keep.moveReminder(1, one?.anchor ?? '', {
      trouble: 'Due 2026-01-03 09:00 and not delivered: closed.',
    });
    expect(textOf(owner.run('/remind list'))).toMatch(
      /stopped. Due 2026-01-03 09:00 and not delivered: closed/,
    );
    owner.run('/remind resume reminder:feed');
    expect(owner.keep.reminders()[0]).toMatchObject({ nextMs: Date.UTC(2026, 0, 3, 8), trouble: undefined });
  });

  it('remove asks once', () => {
    const { owner } = withTank();
    owner.run('/remind task text:feed when:daily 9am');
    const asked = owner.run('/remind remove reminder:feed');
    expect(asked.headline).toMatch(/Nothing is removed yet/);
    expect(owner.keep.reminders()).toHaveLength(1);
    owner.press(button(asked, 'Yes, remove it'));
    expect(owner.keep.reminders()).toEqual([]);
  });
});

describe('/remind plan', () => {
  it('shows the usual tests of the kind of tank, says what gets none and why, and sets them after a yes', () => {
    const { owner } = withTank();
    const shown = owner.run('/remind plan');
    expect(owner.keep.reminders()).toEqual([]);
    const text = textOf(shown);
    expect(text).toMatch(/no reminder of ammonia and nitrite: it is tested only in trouble/);
    expect(text).toMatch(/no reminder of pH: it is optional/);
    expect(text).toMatch(/common practice/);
    const set = owner.press(button(shown, 'Yes, set them'));
    expect(set.headline).toBe('4 reminders are set.');
    expect(owner.keep.reminders().map(({ text: what, rule }) => [what, rule])).toEqual([
      ['test alkalinity', { every: 'weeks', count: 1, on: [2, 6] }],
      ['test salinity, nitrate and phosphate', { every: 'weeks', count: 1, on: [6] }],
      ['test calcium', { every: 'weeks', count: 2, on: [6] }],
      ['test magnesium', { every: 'weeks', count: 4, on: [6] }],
    ]);
    expect(owner.press(button(shown, 'Yes, set them')).headline).toBe('All of that is set already.');
    expect(owner.keep.reminders()).toHaveLength(4);
    expect(owner.run('/remind plan').headline).toMatch(/all the usual tests already/);
  });

  it('takes the test day and hour, and a new tank has a plan of its own', () => {
    const { owner } = club();
    owner.run('/tank new name:Young volume:100 L started:2025-12-20');
    const set = owner.run('/remind plan at:sunday 6pm sure:yes');
    expect(textOf(set)).toMatch(/first three months/);
    expect(owner.keep.reminders().map(({ text, rule, anchor }) => [text, rule.every, anchor])).toEqual([
      ['test salinity and ammonia', 'days', '2026-01-03 18:00'],
      ['test nitrite', 'days', '2026-01-03 18:00'],
      ['test nitrate and phosphate', 'weeks', '2026-01-04 18:00'],
    ]);
  });
});

describe('/remind calendar', () => {
  it('gives a file of what is to come', () => {
    const { owner } = withTank();
    expect(problemOf(() => owner.run('/remind calendar')).message).toMatch(/time to come/);
    owner.run('/remind task text:floss, then glass when:saturdays 9am');
    owner.run('/remind task text:dose when:daily 9am times:3');
    const { file } = owner.run('/remind calendar');
    expect(file?.name).toBe('reminders.ics');
    expect(file?.text).toContain('SUMMARY:Pantry: floss\\, then glass');
    expect(file?.text).toContain('COUNT=3');
    expect(file?.text.match(/BEGIN:VEVENT/g)).toHaveLength(2);
  });
});
