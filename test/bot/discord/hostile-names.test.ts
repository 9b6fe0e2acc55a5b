import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { render } from '../../../bot/discord/message/render.ts';
import { run } from '../../../bot/discord/outcome.ts';
import { openStore } from '../../../bot/store/open.ts';
import type { Store } from '../../../bot/store/open.ts';
import { readLine } from '../../../bot/terminal/read.ts';
import { ask } from '../../ask.ts';
import type { Command } from '../../../commands/command.ts';
import { commands } from '../../../commands/index.ts';
import { optionsOf } from '../../../commands/options.ts';
import { suggest } from '../../../commands/suggest.ts';
import { alkalinity, HOUR_MS, NOW_MS, placing, planned, profile } from '../store/place.ts';
import { deskOf } from './club.ts';

const member = '100000000000000011';
const sitter = '100000000000000012';
const hostile = '@everyone <@12345678901234567> \u202e``` # 5';

let store: Store;

/** Everything a member can name is named so that it would ping, close a block of code or turn the direction of text. */
beforeEach(() => {
  store = openStore({ file: ':memory:', nowMs: () => NOW_MS });
  const keep = store.keepFor(member);
  const { id } = keep.addTank(profile(hostile.slice(0, 40), { volumeBasis: hostile }));
  keep.setZone('Asia/Tokyo');
  keep.setGlass(id, { box: { lengthCm: 121, widthCm: 51, heightCm: 49 } });
  keep.addCoral(id, placing({ label: hostile }));
  keep.addCoral(id, placing({ label: '||@here|| # **x** ```', coralId: 'hammer-coral-branching' }));
  for (let day = 9; day > 0; day -= 1) keep.addEntry(id, alkalinity(8 - day / 10, -24 * day, hostile));
  keep.addReminder(planned(hostile, { tankId: id, parameters: ['alkalinity'] }), {
    nextMs: NOW_MS + HOUR_MS,
  });
  keep.addHandOver({ sitterId: sitter, fromMs: NOW_MS, untilMs: NOW_MS + HOUR_MS });
  keep.showTo(id, sitter);
});

afterEach(() => store.close());

/** A command as in its example, without options, and with each of its texts hostile. */
function callsOf({ options, example }: Command): readonly Readonly<Record<string, unknown>>[] {
  const line = readLine(example, commands);
  const input = line.kind === 'command' ? line.input : {};
  const texts = optionsOf(options).filter(({ kind, choices }) => kind === 'string' && choices === undefined);
  return [{}, input, ...texts.map(({ name }) => ({ ...input, [name]: hostile }))];
}

/** What Discord would read as a mention, outside of blocks of code; names that Discord puts in itself are not counted. */
function mentionsIn(content: string): readonly string[] {
  const outside = content.split('```').filter((_, at) => at % 2 === 0);
  expect(outside.length * 2 - 1, content).toBe(content.split('```').length);
  const found = outside.join('').match(/@everyone|@here|(?<!\\)<@[!&]?\d+>|\u202e/g) ?? [];
  return found.filter((each) => !/^<@1000000000000000\d\d>$/.test(each));
}

/** Every text of the message that answers. */
function contentsOf(command: string, values: Readonly<Record<string, unknown>>): readonly string[] {
  const desk = deskOf(store, { commands, ask, nowMs: () => NOW_MS });
  const input = Object.fromEntries(Object.entries(values).map(([name, value]) => [name, String(value)]));
  const asker = { personId: member, place: undefined };
  const { body } = render(run(desk, { ...asker, command, values, call: { command, input } }).answer);
  expect(body.allowed_mentions).toEqual({ parse: [], replied_user: false });
  return [...JSON.stringify(body).matchAll(/"content":("(?:[^"\\]|\\.)*")/g)].map(
    ([, content = '""']) => JSON.parse(content) as string,
  );
}

describe('whatever a member names things', () => {
  it.each(commands.map((command) => [command.path.join(' '), command] as const))(
    '/%s pings nobody and stays in its place',
    (name, command) => {
      for (const values of callsOf(command)) {
        const contents = contentsOf(name, values);
        expect(contents.length).toBeGreaterThan(0);
        expect(contents.flatMap(mentionsIn)).toEqual([]);
      }
    },
  );

  it('what is offered while typing fits, for every option', () => {
    const keep = store.keepFor(member);
    for (const option of commands.flatMap(({ options }) => optionsOf(options)))
      for (const typed of ['', '1', 'a', '75', '@'.repeat(300)]) {
        const offered = suggest(option, typed, { keep, commands });
        expect(offered.length, option.name).toBeLessThanOrEqual(25);
        for (const value of offered) expect(value.trim(), option.name).toMatch(/^.{1,100}$/su);
      }
  });
});
