import { REST } from 'discord.js';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { definitions } from '../../bot/discord/definition.ts';
import { register } from '../../bot/discord/registration.ts';
import { restOptions } from '../../bot/discord/rest.ts';
import { commands } from '../../commands/index.ts';
import { startStandIn } from '../discord/standin/server.ts';
import type { StandIn } from '../discord/standin/server.ts';
import { build, patience } from './discord/built.ts';
import type { Built, Child } from './discord/built.ts';
import { closeClean } from './discord/club.ts';

let built: Built;
let standIn: StandIn;

vi.setConfig({ testTimeout: patience, hookTimeout: patience });

beforeAll(async () => {
  built = build();
  standIn = await startStandIn({ waitMs: patience });
  const rest = new REST(restOptions(standIn.apiBase)).setToken(standIn.token);
  await register(rest, definitions(commands), 'global', false);
});

afterAll(async () => {
  built.remove();
  await closeClean(standIn);
});

function start(env: NodeJS.ProcessEnv = {}): Child {
  return built.start('bot/main.js', [], { DISCORD_API_BASE: standIn.apiBase, ...env });
}

async function startReady(): Promise<Child> {
  const bot = start({ DISCORD_TOKEN: standIn.token });
  await vi.waitFor(() => expect(bot.written.err).toContain('"msg":"ready"'), { timeout: patience });
  return bot;
}

describe('main without a token', () => {
  it('opens the terminal room, and ends with the input', async () => {
    const room = start();
    room.process.stdin?.end(
      '/dose amount of:alkalinity now:7.2 goal:8.4 with:sodium carbonate volume:75 gal\n',
    );
    expect(await room.exit).toBe(0);
    expect(room.written.out).toContain('6.4 g');
    expect(room.written.err).toBe('');
  });

  it('leaves the room on SIGTERM', async () => {
    const room = start();
    room.process.stdin?.write('/about\n');
    await vi.waitFor(() => expect(room.written.out).not.toBe(''), { timeout: patience });
    room.process.kill('SIGTERM');
    expect(await room.exit).toBe(0);
  });
});

describe('main with a token', () => {
  it('answers on Discord and ends cleanly on SIGTERM, the answer under way included', async () => {
    const bot = await startReady();
    const options = { of: 'alkalinity', now: '7.2', goal: '8.4', with: 'sodium carbonate', volume: '75 gal' };
    expect((await standIn.slash('dose', options, { subcommand: 'amount' }).reply).text).toContain('6.4 g');
    const last = standIn.slash('about');
    await last.callback();
    bot.process.kill('SIGTERM');
    expect((await last.reply).text).toContain('Sumpside');
    expect(await bot.exit).toBe(0);
    expect(standIn.gateway.log.at(-1)?.what).toBe('closed');
  });

  it('ends with 78 and a sentence for a token that is refused', async () => {
    const bot = start({ DISCORD_TOKEN: 'not-the-token' });
    expect(await bot.exit).toBe(78);
    expect(bot.written.err).toMatch(/^Discord does not accept the token\. .*\n$/);
    expect(bot.written.err).not.toContain('not-the-token');
  });

  it.each([
    [4004, 'Discord does not accept the token.'],
    [4014, 'Discord does not allow the intents asked for.'],
  ])('ends with 78 when the gateway closes with %i', async (code, sentence) => {
    const bot = await startReady();
    standIn.dropGateway(code);
    expect(await bot.exit).toBe(78);
    expect(bot.written.err).toContain(sentence);
  });

  it('ends with 78 for a setting that is wrong', async () => {
    const bot = start({ DISCORD_TOKEN: 'x', DISCORD_API_BASE: `${standIn.apiBase}/v10` });
    expect(await bot.exit).toBe(78);
    expect(bot.written.err).toBe('DISCORD_API_BASE is not right: leave out the version at the end.\n');
  });

  it('ends with 1 and an id when Discord cannot be reached', async () => {
    const bot = start({ DISCORD_TOKEN: 'x', DISCORD_API_BASE: 'http://127.0.0.1:1/api' });
    expect(await bot.exit).toBe(1);
    const id = /error ([0-9a-f]{8}) in the log/.exec(bot.written.err)?.[1];
    expect(bot.written.err).toContain(`"errorId":"${id}"`);
    expect(bot.written.err).toContain('ECONNREFUSED');
  });
});

describe('register as a process', () => {
  it('ends with the code of what it did', async () => {
    const registering = (token: string, ...args: string[]): Child => {
      const env = { DISCORD_API_BASE: standIn.apiBase, DISCORD_TOKEN: token };
      return built.start('bot/discord/register.js', args, env);
    };
    const ends = [
      registering(standIn.token, '--global'),
      registering('not-the-token', '--global'),
      registering('', '--all'),
    ];
    expect(await Promise.all(ends.map((child) => child.exit))).toEqual([0, 78, 64]);
    expect(ends[0]?.written.out).toContain('Nothing to write.');
  });
});
