import { describe, expect, it } from 'vitest';
import type { Command } from '../../commands/command.ts';
import { optionsOf } from '../../commands/options.ts';
import { taskCommand } from '../../commands/remind/task.ts';
import { doneCommand } from '../../commands/remind/done.ts';
import { suggest } from '../../commands/suggest.ts';
import { readZone, zoneOf } from '../../commands/zone.ts';
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
    const mine = suggest(option(doneCommand, 'reminder'), '', owner.keep);
    expect(mine[1]).toBe('2: glass');
    expect(Math.max(...mine.map(({ length }) => length))).toBeLessThanOrEqual(100);
    for (const reminder of mine) owner.press({ label: '', command: 'remind done', input: { reminder } });
    expect(owner.keep.reminders().every(({ lastDoneMs }) => lastDoneMs !== undefined)).toBe(true);
    expect(suggest(option(doneCommand, 'reminder'), '', other.keep)).toEqual([]);
  });
});

describe('a zone as written', () => {
  it.each([
    ['Europe/Berlin', 'Europe/Berlin'],
    ['europe/berlin', 'Europe/Berlin'],
    ['new york', 'America/New_York'],
    ['utc', 'UTC'],
    ['asia/kolkata', 'Asia/Kolkata'],
  ])('%s', (given, zone) => expect(readZone(given)).toBe(zone));

  it.each(['EST', 'UTC+2', '+02:00', 'Mars/Base', '../etc/passwd', ''])('%j is none', (given) =>
    expect(problemOf(() => readZone(given)).field).toBe('zone'),
  );

  it('names those that fit', () => {
    expect(problemOf(() => readZone('indiana')).choices).toContain('America/Indiana/Knox');
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
