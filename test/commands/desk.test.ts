import { describe, expect, it } from 'vitest';
import { deskCommands } from '../../commands/desk.ts';
import { MOST_PUBLIC } from '../../commands/desk/public.ts';
import type { Context } from '../../commands/command.ts';
import type { Answer } from '../../commands/answer.ts';
import { quietSettings } from '../../commands/server.ts';
import { Problem } from '../../core/problem.ts';
import { here, managed } from './desk/managed.ts';

const [first, second] = ['1100000000000000301', '1100000000000000302'];

function run(name: string, input: Record<string, unknown>, context: Context): Answer {
  const command = deskCommands.find(({ path }) => path[1] === name);
  if (command === undefined) throw new Error(`no /desk ${name}`);
  return command.run(input, context);
}

function problemOf(name: string, input: Record<string, unknown>, context: Context): Problem {
  try {
    run(name, input, context);
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
  throw new Error('no problem');
}

describe('/desk', () => {
  it('is private and for managers in every part', () => {
    expect(deskCommands.every((command) => command.private && command.managers)).toBe(true);
  });

  it.each(deskCommands.map(({ path }) => path[1] ?? ''))('%s is one sentence without a server', (name) => {
    const problem = problemOf(name, name === 'clear' ? { what: 'units' } : {}, { nowMs: 0 });
    expect(problem.message).toBe('/desk holds the settings of a server: use it in a channel of that server.');
    expect(problem.hint).toBeUndefined();
  });

  it.each([
    ['show', {}],
    ['set', { volume: 'litres' }],
    ['public', { add: first }],
    ['clear', { what: 'everything' }],
  ])('%s is refused to whoever may not manage the server, and changes nothing', (name, input) => {
    const someone = managed({ mayManage: false });
    expect(problemOf(name, input, someone.context).limit).toBe('the permission Manage Server');
    expect(someone.settings).toBe(quietSettings);
  });

  it('sets what is named and leaves the rest', () => {
    const server = managed();
    run('set', { volume: 'US gallons', reminders: first }, server.context);
    run('set', { alkalinity: 'ppm CaCO3', temperature: 'fahrenheit', helpers: second }, server.context);
    expect(server.settings).toEqual({
      units: { volume: 'US gal', alkalinity: 'ppm CaCO3', temperature: '°F' },
      reminderChannelId: first,
      publicChannelIds: [],
      helperRoleId: second,
    });
    expect(problemOf('set', {}, server.context).field).toBe('options');
  });

  it.each([
    ['units', 'units', {}],
    ['reminders', 'reminderChannelId', undefined],
    ['helpers', 'helperRoleId', undefined],
    ['public', 'publicChannelIds', []],
  ])('takes back %s alone', (what, key, expected) => {
    const server = managed();
    run('set', { volume: 'litres', reminders: first, helpers: second }, server.context);
    run('public', { add: first }, server.context);
    const before = server.settings;
    run('clear', { what }, server.context);
    expect(server.settings).toEqual({ ...before, [key]: expected });
  });

  it('takes no channel for reminders in which the manager may not write', () => {
    const server = managed({ mayWrite: (id) => id !== first });
    expect(problemOf('set', { reminders: first }, server.context).field).toBe('reminders');
    expect(server.settings).toBe(quietSettings);
  });

  it('lists public channels once each, to a limit', () => {
    const server = managed();
    const ids = Array.from({ length: MOST_PUBLIC }, (_, index) => `11000000000000004${10 + index}`);
    for (const id of [...ids, ids[0]]) run('public', { add: id }, server.context);
    expect([...server.settings.publicChannelIds].sort()).toEqual(ids);
    expect(problemOf('public', { add: first }, server.context).limit).toBe(`at most ${MOST_PUBLIC} channels`);
    run('public', { add: first, remove: ids[3] }, server.context);
    expect(server.settings.publicChannelIds).toHaveLength(MOST_PUBLIC);
    expect(problemOf('public', {}, server.context).limit).toBe('add or remove');
    expect(problemOf('public', { remove: second }, server.context).field).toBe('remove');
  });

  it('names what is lacked in each channel, and how to put it right', () => {
    const lacks = (id: string): readonly string[] => (id === first ? ['Send Messages', 'Attach Files'] : []);
    const server = managed({ lacks });
    run('set', { reminders: first }, server.context);
    const shown = run('show', {}, server.context);
    expect(shown.headline).toContain('I lack permissions in one channel.');
    expect(shown.facts).toContainEqual({
      label: 'reminders go to',
      value: 'I lack Send Messages, Attach Files',
      verdict: 'incomplete',
      channelId: first,
    });
    expect(shown.facts).toContainEqual(expect.objectContaining({ verdict: 'complete', channelId: here }));
    expect(shown.steps[0]).toContain('Edit Channel, then Permissions');
    expect(run('show', {}, managed().context).steps).toEqual([]);
  });
});
