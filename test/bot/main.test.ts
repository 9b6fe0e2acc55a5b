import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { REST } from 'discord.js';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { menus } from '../../bot/discord/menu/menus.ts';
import { definitions, menuDefinitions } from '../../bot/discord/register/definition.ts';
import { register } from '../../bot/discord/register/registration.ts';
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
  await register(rest, [...definitions(commands), ...menuDefinitions(menus)], 'global', false);
});

afterAll(async () => {
  built.remove();
  await closeClean(standIn);
});

function start(env: NodeJS.ProcessEnv = {}): Child {
  return built.start('bot/main.ts', [], { DISCORD_API_BASE: standIn.apiBase, ...env });
}

async function startReady(env: NodeJS.ProcessEnv = {}): Promise<Child> {
  const bot = start({ DISCORD_TOKEN: standIn.token, ...env });
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

describe('what is kept', () => {
  let folder: string;
  const env = (): NodeJS.ProcessEnv => ({ DATA_DIR: join(folder, 'var') });
  const typed = async (text: string): Promise<Child> => {
    const room = start(env());
    room.process.stdin?.end(text);
    await room.exit;
    return room;
  };

  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'sumpside-main-'));
  });

  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  it('has a file for the room, which is closed when the room ends', async () => {
    expect((await typed('/about\n')).written.err).toBe('');
    expect(readdirSync(join(folder, 'var'))).toEqual(['room.sqlite']);
    expect((await typed('/about\n')).written.out).toContain('Sumpside');
  });

  it('has a file for the members, closed on SIGTERM, and a copy of the day', async () => {
    const bot = await startReady(env());
    const copies = join(folder, 'var', 'backups');
    await vi.waitFor(() => expect(readdirSync(copies).join()).toMatch(/^sumpside-[\d-]+\.sqlite$/), {
      timeout: patience,
    });
    bot.process.kill('SIGTERM');
    expect(await bot.exit).toBe(0);
    const files = readdirSync(join(folder, 'var')).filter((name) => name !== 'heartbeat');
    expect(files.sort()).toEqual(['backups', 'sumpside.sqlite']);
  });

  it('is one process at a time: the second ends with 78 and a sentence', async () => {
    const first = start(env());
    first.process.stdin?.write('/about\n');
    await vi.waitFor(() => expect(first.written.out).not.toBe(''), { timeout: patience });
    const second = await typed('/about\n');
    expect(await second.exit).toBe(78);
    expect(second.written.out).toBe('');
    expect(second.written.err).toMatch(/^Another bot is already running on this DATA_DIR\. .*\n$/);
    first.process.stdin?.end();
    expect(await first.exit).toBe(0);
  });

  it.each([
    ['room', {}],
    ['bot', { DISCORD_TOKEN: 'x' }],
  ])('ends the %s with 78 and a sentence where it cannot be written', async (_, more) => {
    writeFileSync(join(folder, 'var'), 'a file, not a folder');
    const ended = start({ ...env(), ...more });
    expect(await ended.exit).toBe(78);
    expect(ended.written.err).toMatch(/^The bot cannot write its data file in DATA_DIR\. .*\n$/);
  });
});

describe('a bot that is started again in the middle of a talk', () => {
  it('still has the tank and its buttons, and no longer the talk', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'sumpside-main-'));
    const env = { DATA_DIR: join(folder, 'var') };
    const first = await startReady(env);
    const made = { name: 'Pantry', volume: '251.7 L', kind: 'mixed' };
    expect((await standIn.slash('tank', made, { subcommand: 'new' }).reply).text).toContain('Pantry is kept');
    const asked = await standIn.directMessage('raise alk 7.2 to 8.4 with soda ash').reply;
    expect(asked.text).toContain('in 251.7 L');
    first.process.kill('SIGTERM');
    expect(await first.exit).toBe(0);

    const second = await startReady(env);
    expect((await standIn.directMessage('and with baking soda?').reply).text).not.toContain('251.7');
    const held = standIn.component('run:tank show?tank=Pantry');
    expect((await held.reply).text).toContain('Pantry: 251.7 L');
    second.process.kill('SIGTERM');
    expect(await second.exit).toBe(0);
    rmSync(folder, { recursive: true, force: true });
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
    expect(bot.written.err).toMatch(/^Discord does not accept the token\. .*\n$/m);
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
      return built.start('bot/discord/register/register.ts', args, env);
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
