import { describe, expect, it } from 'vitest';
import type { Command } from '../../commands/command.ts';
import { optionsOf } from '../../commands/options.ts';
import { taskCommand } from '../../commands/remind/task.ts';
import { doneCommand } from '../../commands/remind/done.ts';
import { suggest } from '../../commands/suggest.ts';
import { readZone, zoneOf } from '../../commands/zone.ts';
import { zoneCommand } from '../../commands/remind/zone.ts';
import { club } from './remind/person.ts';
import { problemOf } from './text.ts';

function option(command: Command, name: string) {
  const found = optionsOf(command.options).find((one) => one.name === name);
  if (found === undefined) throw new Error(`no option ${name}`);
  return found;
}

describe('suggested zones', () => {
  it.each([
    ['berl', 'Europe/Berlin'],
    ['BERL', 'Europe/Berlin'],
    ['new y', 'America/New_York'],
    ['europe/lon', 'Europe/London'],
    ['kolk', 'Asia/Kolkata'],
    ['kyiv', 'Europe/Kyiv'],
  ])('%s begins with %s', (typed, zone) => expect(suggest(option(taskCommand, 'zone'), typed)[0]).toBe(zone));

  it('are at most 25', () => {
    expect(suggest(option(taskCommand, 'zone'), '')).toHaveLength(25);
    expect(suggest(option(taskCommand, 'zone'), 'zzzz')).toEqual([]);
  });
});

describe('suggested reminders', () => {
  it('are one’s own, and read back', () => {
    const { owner, other } = club();
    owner.run(`/remind task text:change ${'long '.repeat(20)}floss when:saturdays`);
    owner.run('/remind task text:glass when:saturdays');
    const mine = suggest(option(doneCommand, 'reminder'), '', { keep: owner.keep });
    expect(mine[1]).toBe('2: glass');
    expect(Math.max(...mine.map(({ length }) => length))).toBeLessThanOrEqual(100);
    for (const reminder of mine) owner.press({ label: '', command: 'remind done', input: { reminder } });
    expect(owner.keep.reminders().every(({ lastDoneMs }) => lastDoneMs !== undefined)).toBe(true);
    expect(suggest(option(doneCommand, 'reminder'), '', { keep: other.keep })).toEqual([]);
  });
});

/** Northern summer. */
const NOW_MS = Date.UTC(2026, 6, 1, 12);

describe('a zone as written', () => {
  it.each([
    ['Europe/Berlin', 'Europe/Berlin'],
    ['europe/berlin', 'Europe/Berlin'],
    ['new york', 'America/New_York'],
    ['utc', 'UTC'],
    ['asia/kolkata', 'Asia/Kolkata'],
  ])('%s', (given, zone) => expect(readZone(given, { nowMs: NOW_MS })).toBe(zone));

  it.each(['EST', 'UTC+2', '+02:00', 'Mars/Base', '../etc/passwd', ''])('%j is none', (given) =>
    expect(problemOf(() => readZone(given, { nowMs: NOW_MS })).field).toBe('zone'),
  );

  // Offsets on 1 July 2026 and the sign of Etc/GMT+5: IANA time zone database, from memory.
  it.each([
    ['UTC+2', 'de', 'Europe/Berlin'],
    ['gmt-4', 'en-US', 'America/New_York'],
    ['-07:00', 'en-US', 'America/Los_Angeles'],
    ['+05:30', 'hi', 'Asia/Kolkata'],
    ['Etc/GMT+5', 'en-US', 'America/Chicago'],
  ])('%s does not move with the clocks: for %s it asks for %s first', (given, locale, zone) => {
    const { message, choices } = problemOf(() => readZone(given, { nowMs: NOW_MS, locale }));
    expect(message).toContain('fixed offset');
    expect(choices[0]).toBe(zone);
    expect(choices.length).toBeLessThanOrEqual(8);
  });

  it.each([
    ['2pm', 'de', 'Europe/Berlin'],
    ['8am', 'en-US', 'America/New_York'],
    ['it is 5:10 am here', 'en-US', 'America/Los_Angeles'],
    ['21:00', 'ja', 'Asia/Tokyo'],
    ["it's 1pm", undefined, 'Europe/London'],
  ])('the clock shows %s, for %s: %s first', (given, locale, zone) => {
    const problem = problemOf(() => readZone(given, { nowMs: NOW_MS, ...(locale && { locale }) }));
    expect(problem.choices[0]).toBe(zone);
  });

  it('is asked for with the likeliest first', () => {
    const { owner } = club({});
    for (const [locale, first] of [
      ['pt-BR', 'America/Sao_Paulo'],
      ['en-US', 'America/New_York'],
      ['sv-SE', 'Europe/Stockholm'],
      [undefined, 'Europe/London'],
    ] as const) {
      const context = { nowMs: NOW_MS, keep: owner.keep, ...(locale && { locale }) };
      const { choices } = problemOf(() => zoneOf(context));
      expect([choices[0], choices.length]).toEqual([first, 8]);
    }
  });

  it('is suggested with the likeliest first', () => {
    const zone = option(zoneCommand, 'zone');
    expect(suggest(zone, 'america', { locale: 'pt-BR' })[0]).toBe('America/Sao_Paulo');
    expect(suggest(zone, '', { locale: 'de' })[0]).toBe('Europe/Berlin');
    for (const offered of suggest(zone, 'eu')) expect(readZone(offered, { nowMs: NOW_MS })).toBe(offered);
  });

  it('names those that fit', () => {
    expect(problemOf(() => readZone('indiana', { nowMs: NOW_MS })).choices).toContain('America/Indiana/Knox');
  });
});

describe('the zone that holds', () => {
  it('is that of the tank, then of the member, then of the machine', () => {
    const { owner } = club();
    owner.run('/tank new name:Far volume:100 L zone:Asia/Tokyo');
    const context = { nowMs: 0, keep: owner.keep, zone: 'Europe/Berlin' };
    expect(zoneOf(context)).toBe('Europe/Berlin');
    owner.keep.setZone('America/Chicago');
    expect(zoneOf(context)).toBe('America/Chicago');
    expect(zoneOf(context, owner.keep.tankInUse())).toBe('Asia/Tokyo');
    expect(problemOf(() => zoneOf({ nowMs: 0, keep: undefined })).choices).toHaveLength(8);
  });
});
