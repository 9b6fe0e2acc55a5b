import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openTurns } from '../../../bot/turns.ts';
import { ask } from '../../ask.ts';
import { commands } from '../../../commands/index.ts';
import { channelIds, userIds } from '../../discord/standin/world.ts';
import { closeClean, nowMs, openClub } from './club.ts';
import type { Club } from './club.ts';
import { profile } from './members.ts';

let club: Club;
beforeEach(async () => {
  club = await openClub({ commands, ask });
});
afterEach(() => club.close());

const dose = 'raise alk 7.2 to 8.4 in 75 gal with soda ash';
const soda = /10\.2 g of sodium bicarbonate/;

describe('a talk on Discord', () => {
  it('goes on in the same channel, for the same member', async () => {
    const { standIn } = club;
    expect((await standIn.mention(dose).reply).text).toContain('6.4 g of sodium carbonate');
    expect((await standIn.mention('and with baking soda?').reply).text).toMatch(soda);
    const other = await standIn.mention('and with baking soda?', { userId: userIds.second }).reply;
    expect(other.text).not.toMatch(soda);
    const elsewhere = await standIn.mention('and with baking soda?', { channelId: channelIds.numbers }).reply;
    expect(elsewhere.text).not.toMatch(soda);
  });

  it('goes on from the answer that is replied to', async () => {
    const { standIn } = club;
    const first = await standIn.mention(dose).reply;
    await standIn.mention('nitrate 80, 55 gal, 20 % a week, how many to 10').reply;
    const how = { replyTo: String(first.message['id']) };
    expect((await standIn.mention('and with baking soda?', how).reply).text).toMatch(soda);
  });

  it('goes on in direct messages', async () => {
    const { standIn } = club;
    await standIn.directMessage(dose).reply;
    expect((await standIn.directMessage('and with baking soda?').reply).text).toMatch(soda);
  });

  it('never brings what was asked in private into a channel', async () => {
    const { standIn } = club;
    const own = 'raise alk 6.9 to 8.6 in 91 gal with soda ash';
    await standIn.directMessage(own).reply;
    club.store.keepFor(userIds.keeper).addTank(profile('Pantry', 251.7));
    const asked = await standIn.slash('ask', { question: own }).reply;
    expect([asked.ephemeral, asked.text.includes('6.9')]).toEqual([true, true]);
    expect((await standIn.mention('and with baking soda?').reply).text).not.toMatch(/6\.9|8\.6|91/);
  });
});

it('a member who asks without pause is told so kindly, once, and others are answered', async () => {
  const busy = await openClub({ commands, ask, turnOf: openTurns(() => nowMs) });
  const { standIn } = busy;
  for (let i = 0; i < 12; i++) await standIn.mention('thanks').reply;
  expect((await standIn.mention('thanks').reply).text).toContain('Slowly, please');
  const sent = standIn.sent.length;
  standIn.mention('thanks');
  const other = await standIn.mention(dose, { userId: userIds.second }).reply;
  expect(other.text).toContain('6.4 g');
  expect(standIn.sent).toHaveLength(sent + 1);
  const slash = await standIn.slash('ask', { question: dose }).reply;
  expect(slash.ephemeral).toBe(true);
  expect(slash.text).toContain('Slowly, please');
  await busy.bot.stop();
  await closeClean(standIn);
});
