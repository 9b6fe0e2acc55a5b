import { GatewayIntentBits } from 'discord.js';
import { describe, expect, it } from 'vitest';
import { WebSocket } from 'ws';
import { onSlash } from './sample-bot.ts';
import { startStandIn } from './server.ts';
import { clientFor, intents, withBot } from './with-bot.ts';

const nothing = (): void => undefined;
const echo = onSlash((interaction) => interaction.reply(interaction.commandName));
const identify = (token: string, intentBits: number): unknown => ({
  op: 2,
  d: { token, intents: intentBits },
});

describe('the gateway', () => {
  it.each([4000, 'terminate'] as const)('resumes after %s and replays what was missed', (how) =>
    withBot(echo, async (standIn) => {
      standIn.dropGateway(how);
      const handle = standIn.slash('missed');
      expect((await handle.reply).content).toBe('missed');
      expect((await standIn.slash('after').reply).content).toBe('after');
      const log = standIn.gateway.log.map((each) => each.what);
      expect(log.filter((each) => each === 'identified')).toHaveLength(1);
      expect(log).toContain('resumed');
    }),
  );

  it('makes the bot identify anew when the session is gone', () =>
    withBot(
      echo,
      async (standIn) => {
        standIn.dropGateway(4000, { resumable: false });
        const twice = (): true | undefined =>
          standIn.gateway.log.filter((each) => each.what === 'identified').length === 2 || undefined;
        await standIn.until(twice, 'identify again');
        expect((await standIn.slash('after').reply).content).toBe('after');
      },
      { waitMs: 10_000 },
    ));

  it('closes with 4014 for a privileged intent and notes the intents otherwise', async () => {
    const standIn = await startStandIn();
    const client = clientFor(standIn, { intents: [...intents, GatewayIntentBits.MessageContent] });
    try {
      await expect(client.login(standIn.token)).rejects.toThrow('disallowed intents');
      expect(standIn.gateway.log).toContainEqual({ what: 'refused', code: 4014 });
    } finally {
      await client.destroy();
      await standIn.close();
    }
    await withBot(nothing, async (other) => {
      expect(other.gateway.log.find((each) => each.what === 'identified')?.intents).toBe(
        1 | (1 << 9) | (1 << 12),
      );
    });
  });

  it.each([
    ['a wrong token', identify('wrong', 0), 4004],
    ['an intent that is none', identify('stand-in-token', 1 << 30), 4013],
    ['a token that resumes wrongly', { op: 6, d: { token: 'wrong' } }, 4004],
    ['something before identifying', { op: 3, d: {} }, 4003],
    ['an unknown operation', { op: 77, d: {} }, 4001],
    ['too long a message', { op: 3, d: 'x'.repeat(4096) }, 4002],
  ])('closes for %s', async (_what, message, code) => {
    const standIn = await startStandIn();
    const socket = new WebSocket(
      `${standIn.apiBase.replace(/^http/, 'ws').replace('/api', '')}/?v=10&encoding=json`,
    );
    try {
      const closed = new Promise((resolve) => socket.once('close', resolve));
      socket.once('message', () => socket.send(JSON.stringify(message)));
      expect(await closed).toBe(code);
    } finally {
      socket.terminate();
      await standIn.close();
    }
  });
});
