import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { PlaceHere } from '../../../bot/discord/asked/place.ts';
import { run, runApart, runWords, type Desk, type Outcome } from '../../../bot/discord/outcome.ts';
import { menus } from '../../../bot/discord/menu/menus.ts';
import { openTalks } from '../../../bot/talks.ts';
import { openStore, type Store } from '../../../bot/store/open.ts';
import { readLine } from '../../../bot/terminal/read.ts';
import { ask } from '../../ask.ts';
import { askCommand } from '../../../commands/ask.ts';
import type { Command } from '../../../commands/command.ts';
import { commands } from '../../../commands/index.ts';
import { optionsOf, type Option } from '../../../commands/options.ts';
import { quietSettings } from '../../../commands/server.ts';
import { cases } from '../../cases/all.ts';
import { asked, askedOfGuide } from '../../corpus.ts';
import { keepMarked, MARKS, NOW_MS } from '../../commands/marked.ts';
import { deskOf } from './club.ts';

const keeper = '100000000000000021';
/** Has reminders and a zone, and no tank any more. */
const moved = '100000000000000022';

let store: Store;
let desk: Desk;

beforeEach(() => {
  store = openStore({ file: ':memory:', nowMs: () => NOW_MS });
  desk = deskOf(store, { commands, ask, nowMs: () => NOW_MS, ...openTalks(() => NOW_MS) });
  keepMarked(store.keepFor(keeper), NOW_MS);
  const left = store.keepFor(moved);
  left.removeTank(keepMarked(left, NOW_MS));
  left.addReminder(
    {
      text: 'wexhollow',
      parameters: [],
      anchor: '2026-06-06 09:00',
      zone: 'Pacific/Chatham',
      rule: { every: 'days', count: 3 },
      place: { kind: 'direct' },
    },
    { nextMs: NOW_MS + 1000 },
  );
});

afterEach(() => store.close());

let channels = 0;

function inPublic(channelId = `channel ${++channels}`): PlaceHere {
  const server = {
    id: '100000000000000900',
    channelId,
    settings: () => quietSettings,
    mayManage: false,
    change: () => {},
    mayWrite: () => true,
    lacks: () => [],
  };
  return { channelId, server, isPublic: () => true, isThread: () => false };
}

type Values = Readonly<Record<string, unknown>>;

/** The marks that everybody sees and nobody typed. */
function leaks({ answer, hidden }: Outcome, typed: string): readonly string[] {
  const said = hidden ? '' : JSON.stringify(answer);
  return MARKS.filter((mark) => said.includes(mark) && !typed.includes(mark));
}

function called(personId: string, { path }: Command, values: Values): Outcome {
  return run(desk, { personId, place: inPublic(), command: path.join(' '), values, call: undefined });
}

/** The example; it with each option left out, alone or with all that is not required; and with what is the keeper's. */
function inputsOf({ example, options }: Command): readonly Values[] {
  const line = readLine(example, commands);
  if (line.kind !== 'command') throw new Error(`not a command: ${example}`);
  const { input } = line;
  const all = optionsOf(options);
  const bare = Object.fromEntries(
    all.flatMap(({ name, required }) => (required ? [[name, input[name]]] : [])),
  );
  const without = ({ name }: Option): Values =>
    Object.fromEntries(Object.entries(input).filter(([key]) => key !== name));
  const own = all.flatMap((option) =>
    (OWN[option.name] ?? option.choices ?? []).flatMap((value) => [
      { ...input, [option.name]: value },
      { ...bare, [option.name]: value },
    ]),
  );
  return [input, bare, ...all.map(without), ...own];
}

/** Values that mean something the keeper has. */
const OWN: Readonly<Record<string, readonly string[]>> = {
  tank: ['Quorvath'],
  coral: ['1', 'snirtle', 'drubbit'],
  at: ['left, back, low'],
  reminder: ['1', 'wexhollow'],
  about: ['tank', 'log'],
};

describe('what everybody sees of what a member keeps is nothing', () => {
  it.each(commands.map((command) => ({ name: command.path.join(' '), command })))('/$name', ({ command }) => {
    for (const values of inputsOf(command)) {
      const typed = JSON.stringify(values);
      const seen = (command.sharing ? [moved] : [moved, keeper]).map((id) => called(id, command, values));
      expect(seen.flatMap((outcome) => leaks(outcome, typed))).toEqual([]);
      if (command.private) expect(seen.filter(({ hidden }) => !hidden)).toEqual([]);
    }
    expect.hasAssertions();
  });

  it('holds for more than a few answers that everybody sees', () => {
    const open = commands
      .filter((command) => !command.private && !command.sharing)
      .flatMap((command) => inputsOf(command).map((values) => called(keeper, command, values)))
      .filter(({ hidden }) => !hidden);
    expect(open.length).toBeGreaterThan(100);
    expect(store.keepFor(keeper).tankInUse()?.name).toBe('Quorvath');
  });

  it('but by the one command that is for showing, and there no reading, coral, reminder or note', () => {
    expect(commands.filter(({ sharing }) => sharing).map(({ path }) => path)).toEqual([['tank', 'share']]);
    const shared = run(desk, {
      personId: keeper,
      place: inPublic(),
      command: 'tank share',
      values: {},
      call: undefined,
    });
    const seen = MARKS.filter((mark) => JSON.stringify(shared.answer).includes(mark));
    expect(seen).toEqual(['Quorvath', '617.3']);
  });

  const questions = [
    ...[cases, asked, askedOfGuide].flatMap((each) => Object.values(each)),
    'remind me to test alk every saturday 9am',
    'how is my tank',
    'check my corals',
    'show my map',
    'when do the clocks change',
    'how much alk does my tank use a day',
    'my torch is closed',
  ].map((each) => (typeof each === 'string' ? each : each.asked));

  it('in plain words: by the command, in a mention, and of a message of someone else', () => {
    let open = 0;
    for (const question of questions) {
      const place = inPublic();
      const talk = desk.talkOf(keeper, [place.channelId]);
      const seen = [
        called(keeper, askCommand, { question }),
        called(moved, askCommand, { question }),
        runWords(desk, question, { place, talk }),
        ...menus.map((menu) => runApart(desk, keeper, place, (context) => menu.run(desk, question, context))),
      ];
      expect(seen[0]?.hidden).toBe(true);
      expect(seen.flatMap((outcome) => leaks(outcome, question))).toEqual([]);
      open += seen.filter(({ hidden }) => !hidden).length;
    }
    expect(open).toBeGreaterThan(2 * questions.length);
  });

  it('nor of what they asked for their eyes only, once a question is open to all', () => {
    const place = inPublic('one channel');
    const keep = store.keepFor('100000000000000023');
    const id = keepMarked(keep, NOW_MS);
    const say = (question: string): Outcome =>
      run(desk, {
        personId: '100000000000000023',
        place,
        command: 'ask',
        values: { question },
        call: undefined,
      });
    expect(say('raise alk 7.2 to 8.4 in 61.73 gal with soda ash').hidden).toBe(true);
    keep.removeTank(id);
    const open = say('and with baking soda?');
    expect(open.hidden).toBe(false);
    expect(JSON.stringify(open.answer)).not.toContain('61.73');
  });
});
