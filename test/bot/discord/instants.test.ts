import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { commands } from '../../../commands/index.ts';
import { ask } from '../../ask.ts';
import type { GivenOptions } from '../../discord/standin/slash-options.ts';
import { userIds } from '../../discord/standin/world.ts';
import { nowMs, openClub } from './club.ts';
import type { Club } from './club.ts';
import { profile } from './members.ts';

const HOUR_MS = 3_600_000;

let club: Club;
beforeEach(async () => {
  club = await openClub({ commands, ask });
  const keep = club.store.keepFor(userIds.keeper);
  keep.setZone('America/Chicago');
  const { id } = keep.addTank(profile('Pantry', 251.7));
  const values = [{ parameter: 'alkalinity' as const, value: 2.9 }];
  for (const hours of [200, 100, 3])
    keep.addEntry(id, { atMs: nowMs - hours * HOUR_MS, values, note: undefined });
});
afterEach(() => club.close());

/** Asked one after the other: each with what it needs of the one before. */
const asked: readonly (readonly [string, string, GivenOptions])[] = [
  ['remind', 'task', { text: 'clean the glass', when: 'every saturday 9am' }],
  ['remind', 'task', { text: 'swap the carbon', when: 'tomorrow 8pm' }],
  ['remind', 'test', { of: 'alkalinity', when: 'every sunday 10am' }],
  ['remind', 'list', {}],
  ['remind', 'later', { reminder: '1', until: 'tomorrow same time' }],
  ['remind', 'skip', { reminder: '1' }],
  ['remind', 'done', { reminder: '2' }],
  ['remind', 'pause', { until: '2023-12-01' }],
  ['remind', 'list', {}],
  ['remind', 'resume', {}],
  ['remind', 'change', { reminder: '1', when: 'every friday 7pm' }],
  ['log', 'add', { readings: 'alk 8.1 ca 420' }],
  ['log', 'show', {}],
  ['log', 'undo', {}],
  ['checkup', '', {}],
  ['dose', 'use', { of: 'alkalinity' }],
  ['tank', 'show-to', { who: { user: userIds.second } }],
];

/** A day and a clock time, or a day with its weekday: an instant in text. Rules ("on Saturday at 09:00") are none. */
const IN_TEXT = /\d{4}(?:-\d\d-\d\d)? \d\d:\d\d/;

describe('a moment on Discord', () => {
  it('is told once, by a stamp and in no text', async () => {
    let stamps = 0;
    for (const [name, subcommand, options] of asked) {
      const { text } = await club.standIn.slash(name, options, subcommand === '' ? {} : { subcommand }).reply;
      const lines = text.replaceAll(/```[^]*?```/g, '').split('\n');
      for (const line of lines) {
        expect(line, text).not.toMatch(IN_TEXT);
        const told = line.match(/<t:-?\d+:\w>/g) ?? [];
        expect(new Set(told).size, line).toBe(told.length);
        expect(
          told.every((stamp) => stamp.endsWith(':f>')),
          line,
        ).toBe(true);
        stamps += told.length;
      }
    }
    expect(stamps).toBeGreaterThan(12);
  });

  it('of a member is not put into words by somebody else', async () => {
    const text = '\u{e000}1700000000\u{e001} \u{e000}17';
    const { text: shown } = await club.standIn.slash(
      'remind',
      { text, when: 'every friday 7pm' },
      { subcommand: 'task' },
    ).reply;
    expect(shown).not.toContain('<t:1700000000');
  });
});
