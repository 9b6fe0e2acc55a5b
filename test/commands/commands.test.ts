import { describe, expect, it } from 'vitest';
import type { Answer } from '../../commands/answer.ts';
import type { Talk } from '../../commands/ask/talk.ts';
import type { Asking, Command } from '../../commands/command.ts';
import { runWithDefaults } from '../../commands/defaults.ts';
import { commands, findCommand } from '../../commands/index.ts';
import { optionsOf } from '../../commands/options.ts';
import type { Case } from '../../core/language/case.ts';
import { sources } from '../../core/sources.ts';
import { lazyReader } from '../../bot/reader/load.ts';
import { openStore } from '../../bot/store/open.ts';
import { typedInput } from '../../bot/discord/asked/call.ts';
import { readLine } from '../../bot/terminal/read.ts';
import { managed } from './desk/managed.ts';
import { textOf } from './text.ts';

/** Commands about what is kept, and help: they compute nothing and cite nothing. */
const KEEPING = new Set(['units', 'zone', 'tank', 'log', 'remind', 'mydata', 'desk', 'help']);

/** The names the product promises. */
const PROMISED = [
  'dose amount',
  'dose effect',
  'dose use',
  'dose solution',
  'dose limewater',
  'dose daily',
  'dose swap',
  'dose net',
  'dose label',
  'waterchange once',
  'waterchange goal',
  'waterchange routine',
  'waterchange drip',
  'waterchange sum',
  'water until',
  'water pace',
  'water kits',
  'water warm',
  'water spill',
  'water dilute',
  'salinity convert',
  'salinity adjust',
  'salinity mix',
  'salinity check',
  'salinity batch',
  'salinity compare',
  'salinity forecast',
  'salinity excess',
  'light hours',
  'light dim',
  'light ramp',
  'light lux',
  'light range',
  'light measured',
  'light dark',
  'tank new',
  'tank show',
  'tank edit',
  'tank list',
  'tank use',
  'tank share',
  'tank remove',
  'coral add',
  'coral check',
  'coral move',
  'coral list',
  'coral remove',
  'coral about',
  'coral compare',
  'coral suited',
  'coral growth',
  'coral feed',
  'log add',
  'log show',
  'log trend',
  'log undo',
  'log import',
  'checkup',
  'mydata export',
  'mydata erase',
  'coral map',
  'tank show-to',
  'tank shown',
  'urgent',
  'triage',
  'primer',
  'claim',
  'help',
  'remind test',
  'remind task',
  'remind plan',
  'remind list',
  'desk show',
  'desk set',
  'ask',
  'convert',
  'about',
];

describe('the list of commands', () => {
  it('has every promised name once', () => {
    const names = commands.map(({ path }) => path.join(' '));
    expect(new Set(names).size).toBe(names.length);
    expect(names).toEqual(expect.arrayContaining(PROMISED));
  });

  it.each(PROMISED)('finds /%s', (name) => expect(findCommand(name.split(' '))?.path.join(' ')).toBe(name));
});

const NOW_MS = Date.UTC(2026, 5, 1, 18);

/** What the examples speak of. */
const SET_UP = [
  'tank new',
  'log add',
  'log dose',
  'remind test',
  'remind task',
  'remind hand-over',
  'coral add',
];
/** What is filled in where an offer asks for it. */
const FILLED: Readonly<Record<string, string>> = {
  when: 'every sunday 10am',
  readings: 'alk 8.1',
  at: 'left, back, low',
  size: '5 cm',
  b: 'duncan',
  par: '120',
  reading: '120 PAR',
  setting: '50 %',
  standard: '1.0264',
};

/** A member with the tank and the readings that the examples speak of. */
function member(): Asking {
  const keep = openStore({ file: ':memory:', nowMs: () => NOW_MS }).keepFor('100000000000000001');
  let before: Case | undefined;
  const talk: Talk = {
    get before() {
      return before;
    },
    remember: (next) => (before = next),
  };
  const context: Asking = {
    ...managed().context,
    nowMs: NOW_MS,
    zone: 'UTC',
    keep,
    reader: lazyReader,
    talk,
  };
  for (const line of SET_UP) exampleOf(findCommand(line.split(' ')), context);
  return context;
}

/** What a command answers to its own example. */
function exampleOf(command: Command | undefined, context: Asking): Answer {
  if (command === undefined) throw new Error('no such command');
  const line = readLine(command.example, commands);
  if (line.kind !== 'command') throw new Error(`not a command: ${command.example}`);
  expect(line.path).toEqual(command.path);
  const file = optionsOf(command.options).find(({ kind }) => kind === 'file');
  const csv = {
    name: 'readings.csv',
    text: 'time,parameter,value,unit,note\n2026-01-03T18:00:00Z,alkalinity,8.2,dKH,\n',
  };
  const input = file === undefined ? line.input : { ...line.input, [file.name]: csv };
  return runWithDefaults(command, input, context);
}

describe.each(commands.map((command) => ({ name: command.path.join(' '), command })))(
  '/$name',
  ({ command }) => {
    it('answers its own example, with sources and without loose ends', () => {
      const context = member();
      if (command.path.join(' ') === 'tank new') context.keep?.removeTank(1);
      const given = exampleOf(command, context);
      expect(given.headline).toMatch(/[a-z].*[.:?!]$/s);
      for (const code of given.sources) expect(sources[code].title).not.toBe('');
      expect(
        given.sources.length + (KEEPING.has(command.path[0]) || command.path[1] === 'remove' ? 1 : 0),
      ).toBeGreaterThan(0);
      expect(textOf(given)).not.toMatch(/\b(?:NaN|Infinity|undefined)\b/);
    });

    it('can be shown on every platform', () => {
      expect(command.summary.length).toBeLessThanOrEqual(100);
      for (const word of command.path) expect(word).toMatch(/^[a-z][a-z-]{0,31}$/);
      for (const option of optionsOf(command.options)) {
        expect(option.name).toMatch(/^[a-z][a-z-]{0,31}$/);
        expect(option.description.length).toBeLessThanOrEqual(100);
      }
    });

    it('offers only next steps that work', () => {
      const context = member();
      if (command.path.join(' ') === 'tank new') context.keep?.removeTank(1);
      for (const { command: name, input, ask = [] } of exampleOf(command, context).next) {
        const target = findCommand(name.split(' '));
        if (target === undefined) throw new Error(`no command ${name}`);
        const filled = Object.fromEntries(ask.map((field) => [field, FILLED[field] ?? '']));
        const typed = typedInput(target, { ...input, ...filled });
        expect(runWithDefaults(target, typed, context).headline).not.toBe('');
      }
    });
  },
);
