import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { lazyReader } from '../../../bot/reader/load.ts';
import { openStore } from '../../../bot/store/open.ts';
import type { Store } from '../../../bot/store/open.ts';
import { readLine } from '../../../bot/terminal/read.ts';
import { answer } from '../../../commands/answer.ts';
import type { Answer } from '../../../commands/answer.ts';
import { ask } from '../../ask.ts';
import type { Command } from '../../../commands/command.ts';
import { runWithDefaults, withDefaults } from '../../../commands/defaults.ts';
import { commands } from '../../../commands/index.ts';
import { optionsOf } from '../../../commands/options.ts';
import type { Option } from '../../../commands/options.ts';
import { withInstants } from '../../../commands/instants.ts';
import { forAsker, wordsOf } from '../../../commands/for-asker.ts';
import { localAnswer } from '../../../commands/local-answer.ts';
import { Problem } from '../../../core/problem.ts';
import { everyComponent } from '../../discord/standin/component.ts';
import type { InteractionHandle } from '../../discord/standin/interaction-handle.ts';
import type { GivenOptions } from '../../discord/standin/slash-options.ts';
import { channelIds, stewardRole, userIds } from '../../discord/standin/world.ts';
import { managed } from '../../commands/desk/managed.ts';
import { nowMs, openClub } from './club.ts';
import type { Club } from './club.ts';
import { whyOf, wholeText } from './whole-text.ts';

let club: Club;
/** Goes through the same commands in the same order as the bot's own. */
let beside: Store;

/** The custom ids of all buttons shown. */
const offered = new Set<string>();

beforeAll(async () => {
  club = await openClub({ commands, ask });
  beside = openStore({ file: ':memory:', nowMs: () => nowMs });
});

afterAll(async () => {
  beside.close();
  await club.close();
});

const csv = 'time,parameter,value,unit,note\n2023-11-01T10:00:00Z,alkalinity,8.1,dKH,\n';
const given = { name: 'log.csv', contentType: 'text/csv', data: new TextEncoder().encode(csv) };

/** What stands for an option whose example cannot be sent as it is: how it is sent, and what the command gets. */
const stands: Readonly<Partial<Record<Option['kind'], { sent: unknown; run: unknown }>>> = {
  file: { sent: { file: given }, run: { name: given.name, text: csv } },
  member: { sent: { user: userIds.second }, run: userIds.second },
  channel: { sent: { channel: channelIds.numbers }, run: channelIds.numbers },
  role: { sent: { role: stewardRole }, run: stewardRole },
};

/** The options of an example, with a file in place of each path, and someone or something there is for each id. */
function inputs(command: Command) {
  const line = readLine(command.example, commands);
  if (line.kind !== 'command') throw new Error('the example is no command');
  const used = optionsOf(command.options).filter(({ name }) => name in line.input);
  const each = (way: 'sent' | 'run') =>
    Object.fromEntries(used.map(({ name, kind }) => [name, stands[kind]?.[way] ?? line.input[name]]));
  const hasFile = used.some(({ kind }) => kind === 'file');
  return { sent: each('sent') as GivenOptions, run: each('run'), hasFile };
}

const stampOf = (atMs: number): string => `<t:${Math.floor(atMs / 1000)}:f>`;

function expected(command: Command, input: Record<string, unknown>): { answer: Answer; hidden: boolean } {
  const keep = beside.keepFor(userIds.keeper);
  const { hidden } = withDefaults(command, input, { ...managed().context, isShared: true, keep });
  try {
    const found = runWithDefaults(command, input, { nowMs, keep, reader: lazyReader });
    const asking = { nowMs, locale: 'en-GB', ...(hidden ? { keep } : { units: keep.units() }) };
    const told = forAsker(found, wordsOf(input), asking);
    return {
      answer: localAnswer(withInstants(told, stampOf), 'en-GB'),
      hidden: hidden || found.file !== undefined,
    };
  } catch (error) {
    if (error instanceof Problem) return { answer: answer({ headline: error.message }), hidden: true };
    throw error;
  }
}

/** Pressed last: what is held for the member is gone then. */
const erases = (id: string): number => (id.includes('mydata erase') ? 1 : 0);

/** Presses a button, unless an earlier press changed something and so took it off its message. */
function pressedIfShown(id: string): InteractionHandle | undefined {
  try {
    return club.standIn.component(id);
  } catch (error) {
    if (error instanceof Error && error.message.startsWith('No message shows')) return undefined;
    throw error;
  }
}

describe('the real commands on Discord', () => {
  const everyones = commands.filter(({ managers }) => !managers);

  it.each(everyones.map((command) => [command.example, command] as const))('%s', async (_, command) => {
    const { sent, run, hasFile } = inputs(command);
    const [name, subcommand] = command.path;
    const how = subcommand === undefined ? {} : { subcommand };
    const reply = await club.standIn.slash(name, sent, how).reply;
    const { answer: told, hidden } = expected(command, run);
    for (const { custom_id: id } of everyComponent(reply.components))
      if (id && id !== whyOf(reply)) offered.add(String(id));
    const shown = reply.text.replaceAll(/[\\\u200b]/g, '');
    expect(reply.ephemeral).toBe(hidden || hasFile);
    expect(shown).toContain(told.headline.slice(0, 60));
    expect(reply.text.split('\n').filter((text) => /^\d+\. /.test(text)).length).toBeGreaterThanOrEqual(
      Math.min(told.steps.length, 1),
    );
    for (const danger of told.dangers) expect(shown).toContain(danger);
    const whole = (await wholeText(club, reply)).replaceAll(/[\\\u200b]/g, '');
    for (const line of [...told.cautions, ...told.working]) expect(whole).toContain(line);
    for (const { value } of told.facts) expect(whole).toContain(value);
  });

  it('computes the dose', async () => {
    const options = { of: 'alkalinity', now: '7.2', goal: '8.4', with: 'sodium carbonate', volume: '75 gal' };
    const used = club.standIn.slash('dose', options, { subcommand: 'amount' });
    const reply = await used.reply;
    expect(reply.text).toContain('6.4 g');
    expect((await used.acknowledged).elapsedMs).toBeLessThan(3000);
  });

  it('names what is wrong to the asker only', async () => {
    const options = { of: 'alkalinity', now: '7.2', goal: '8.4', with: 'sodium carbonate', volume: 'lots' };
    const reply = await club.standIn.slash('dose', options, { subcommand: 'amount' }).reply;
    expect(reply.ephemeral).toBe(true);
    expect(reply.text).toMatch(/option: volume\n- given: lots/);
  });

  it('answers plain words', async () => {
    const reply = await club.standIn.mention(
      'my alk is 7.2 and I want 8.4 in 75 gal, how much sodium carbonate?',
    ).reply;
    expect(reply.text).toContain('6.4 g');
  });

  it('runs every next action it offers', async () => {
    expect(offered.size).toBeGreaterThan(0);
    const gone: string[] = [];
    for (const id of [...offered].toSorted((a, b) => erases(a) - erases(b))) {
      const pressed = pressedIfShown(id);
      if (pressed === undefined) gone.push(id);
      else if ((await pressed.acknowledged).type === 9)
        expect(JSON.stringify(await pressed.modal)).toContain('"custom_id"');
      else expect((await pressed.reply).text).not.toMatch(/Error [0-9a-f]{8}|no longer (?:works|here|kept)/);
    }
    expect(gone.length).toBeLessThan(offered.size / 4);
  });
});
