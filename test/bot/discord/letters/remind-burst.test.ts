import { setTimeout as wait } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { createBot } from '../../../../bot/discord/client.ts';
import { reminderLoop } from '../../../../bot/discord/letters/reminders.ts';
import { openStore } from '../../../../bot/store/open.ts';
import { mostInASecond } from '../../../discord/standin/rate.ts';
import { startStandIn } from '../../../discord/standin/server.ts';
import { closeClean, deskOf } from '../club.ts';
import { demoAsk, demoCommands } from '../demo.ts';

const people = 12;
const each = 20;
const idOf = (person: number): string => String(1_100_000_000_000_002_000n + BigInt(person));

describe('a burst', () => {
  it('goes out within the global limit while interactions are answered', { timeout: 60_000 }, async () => {
    const standIn = await startStandIn({ enforceGlobalLimit: true });
    const nowMs = Date.now();
    const store = openStore({ file: ':memory:', nowMs: () => nowMs });
    for (let person = 0; person < people; person++) {
      standIn.world.addPerson(idOf(person), `Keeper ${person}`);
    }
    for (let index = 0; index < people * each; index++) {
      const plan = { text: 'top off', parameters: [], anchor: '2026-01-05 09:00', zone: 'UTC' } as const;
      const whole = { ...plan, rule: { every: 'once' }, place: { kind: 'direct' } } as const;
      store.keepFor(idOf(index % people)).addReminder(whole, { nextMs: nowMs });
    }
    const { apiBase, token } = standIn;
    const { due } = store;
    const desk = deskOf(store, { commands: demoCommands, ask: demoAsk });
    const loop = reminderLoop({ ...desk, token, apiBase, due });
    const bot = createBot({ ...desk, token, apiBase, loop, onRefused: () => undefined });
    await bot.start();
    const asked: Promise<{ elapsedMs: number }>[] = [];
    while (standIn.sent.length < people * each) {
      asked.push(standIn.slash('echo', { reading: '8.3 dKH' }).acknowledged);
      await wait(200);
    }
    for (const { elapsedMs } of await Promise.all(asked)) expect(elapsedMs).toBeLessThan(3000);
    expect(asked.length).toBeGreaterThan(5);
    expect(standIn.sent).toHaveLength(people * each);
    expect(new Set(standIn.sent.map(({ body }) => body['nonce'])).size).toBe(people * each);
    expect(mostInASecond(standIn.requests)).toBeLessThanOrEqual(50);
    expect(standIn.rateBreaches).toEqual([]);
    await bot.stop();
    store.close();
    await closeClean(standIn);
  });
});
