import { describe, expect, it, vi } from 'vitest';
import { createBot } from '../../../bot/discord/client.ts';
import { openStore } from '../../../bot/store/open.ts';
import type { Problem } from '../../../core/problem.ts';
import { closeClean, deskOf, nowMs, openClub } from './club.ts';
import { demoAsk, demoCommands } from './demo.ts';

describe('stopping', () => {
  it('finishes the answer under way and closes the connection', async () => {
    const club = await openClub();
    const asked = club.standIn.mention('one more');
    await club.standIn.until(
      () => club.standIn.requests.find(({ path }) => path.endsWith('/messages')),
      'begin to answer',
    );
    await club.bot.stop();
    expect((await asked.reply).text).toContain('one more');
    expect(club.standIn.gateway.log.at(-1)?.what).toBe('closed');
    await closeClean(club.standIn);
  });
});

describe('stopping before it is ready', () => {
  it('ends the login without an error', async () => {
    const { standIn, bot } = await openClub({ start: false });
    const started = bot.start();
    await bot.stop();
    await expect(started).resolves.toBeUndefined();
    await closeClean(standIn);
  });
});

describe('refusals', () => {
  it('reports a bad token once, without it, and does not try again', async () => {
    const club = await openClub({ token: 'bad-token-1234' });
    expect(club.refusals.map((each) => each.message)).toEqual(['Discord does not accept the token.']);
    expect(club.log.join('')).not.toContain('bad-token');
    expect(club.standIn.gateway.log).toEqual([]);
    await club.close();
  });

  it.each([
    [4004, 'Discord does not accept the token.'],
    [4014, 'Discord does not allow the intents asked for.'],
  ])('reports the close code %i', async (code, sentence) => {
    const club = await openClub();
    club.standIn.dropGateway(code);
    await vi.waitFor(() => expect(club.refusals.map((each) => each.message)).toEqual([sentence]));
    expect(club.standIn.gateway.log.filter((event) => event.what === 'identified')).toHaveLength(1);
    await club.close();
  });

  it('throws when Discord cannot be reached, which is no refusal', async () => {
    const refusals: Problem[] = [];
    const bot = createBot({
      ...deskOf(openStore({ file: ':memory:', nowMs: () => nowMs }), {
        commands: demoCommands,
        ask: demoAsk,
      }),
      token: 'token',
      apiBase: 'http://127.0.0.1:1/api',
      onRefused: (problem) => void refusals.push(problem),
    });
    await expect(bot.start()).rejects.toThrow(/ECONNREFUSED/);
    expect(refusals).toEqual([]);
  });
});
