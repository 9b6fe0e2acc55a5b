import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { registerCli } from '../../../../bot/discord/register/register-cli.ts';
import { startStandIn } from '../../../discord/standin/server.ts';
import type { StandIn } from '../../../discord/standin/server.ts';
import { guildId } from '../../../discord/standin/world.ts';
import { closeClean } from '../club.ts';

let standIn: StandIn;

beforeAll(async () => {
  standIn = await startStandIn();
});

afterAll(() => closeClean(standIn));

async function register(args: readonly string[], token = standIn.token) {
  const written = { out: '', err: '' };
  const env = { DISCORD_TOKEN: token, DISCORD_API_BASE: standIn.apiBase };
  const code = await registerCli(args, env, {
    out: (text) => void (written.out += text),
    err: (text) => void (written.err += text),
  });
  return { code, ...written };
}

describe.each([
  ['--global', 'global', ['--global']],
  ['--guild', guildId, ['--guild', guildId]],
] as const)('register %s', (_, scope, args) => {
  it('shows, writes and then leaves as it is', async () => {
    const dry = await register([...args, '--dry']);
    expect(dry).toMatchObject({ code: 0, err: '' });
    expect(dry.out).toMatch(
      /^added: .*dose.*\nchanged: none\nremoved: none\nunchanged: none\nNothing written/,
    );
    expect(standIn.commands.get(scope)).toBeUndefined();

    expect((await register(args)).out).toContain('Written.');
    const registered = standIn.commands.get(scope);
    expect(registered?.map((command) => command['name'])).toEqual(
      expect.arrayContaining(['dose', 'Work out the numbers', 'Check these readings']),
    );

    const again = await register(args);
    expect(again.out).toMatch(
      /^added: none\nchanged: none\nremoved: none\nunchanged: .*dose.*\nNothing to write/,
    );
    expect(standIn.commands.get(scope)).toBe(registered);
  });
});

describe('register', () => {
  it.each([
    { args: [] },
    { args: ['--global', '--guild', guildId] },
    { args: ['--guild', 'here'] },
    { args: ['--all'] },
    { args: ['--global', 'x'] },
  ])('says how it is used for $args', async ({ args }) => {
    const { code, err } = await register(args);
    expect(code).toBe(64);
    expect(err).toMatch(/^Usage: /);
  });

  it('ends with 78 for a token that is refused or missing', async () => {
    const refused = await register(['--global'], 'not-the-token');
    expect(refused).toMatchObject({ code: 78, out: '' });
    expect(refused.err).toContain('Discord does not accept the token.');
    expect(refused.err).not.toContain('not-the-token');
    const missing = await register(['--global'], '');
    expect(missing.code).toBe(78);
    expect(missing.err).toContain('DISCORD_TOKEN is missing.');
  });

  it('ends with 1 for a server the bot is not in', async () => {
    const { code, err } = await register(['--guild', '1100000000000000999']);
    expect(code).toBe(1);
    expect(err).toContain('Discord did not take the registration');
  });
});
