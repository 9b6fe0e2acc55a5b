import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { ask } from '../../../commands/ask.ts';
import { commands } from '../../../commands/index.ts';
import { channelIds, userIds } from '../../discord/standin/world.ts';
import { plain, scriptedReader } from '../../scripted-reader.ts';
import { forumId, openForum, openThread, threadId } from './a-thread.ts';
import { openClub, type Club } from './club.ts';

const { keeper, second } = userIds;
const DAY_MS = 24 * 3_600_000;
const dose = '[75 gal](system), alk [7.2](now alkalinity) to [8.4](wanted alkalinity) with soda ash';
const rest = 'and to [9](wanted alkalinity)?';
const kinds = [['dose-amount', 0.7]] as const;
const reader = scriptedReader([dose, rest].map((marked) => ({ marked, kinds })));
const [first, more] = [plain(dose), plain(rest)];
/** IUPAC 2021: 1.8 dKH in 283.9 L = 1.8 * 2.839 * 1.890 g Na2CO3. */
const GOES_ON = /9\.6\d? g of sodium carbonate|9\.7 g of sodium carbonate/;

let nowMs: number;
let club: Club;

beforeEach(async () => {
  nowMs = 1_700_000_000_000;
  club = await openClub({ commands, ask, reader, nowMs: () => nowMs });
});
afterEach(() => club.close());

const here = { channelId: threadId };

describe.each([
  ['a thread', () => openThread(club, channelIds.numbers)],
  ['a post of a forum', () => (openForum(club), openThread(club, forumId))],
])('what is told in %s', (_, open) => {
  beforeEach(() => open());

  it('lasts three days and a restart, for its member alone', async () => {
    await club.standIn.mention(first, here).reply;
    await club.restart();
    open();
    nowMs += 3 * DAY_MS;
    expect((await club.standIn.mention(more, { ...here, userId: second }).reply).text).not.toMatch(GOES_ON);
    expect((await club.standIn.mention(more, here).reply).text).toMatch(GOES_ON);
    nowMs += 3 * DAY_MS + 1;
    expect((await club.standIn.mention(more, here).reply).text).not.toMatch(GOES_ON);
  });

  it('keeps the buttons of the last answer for the one who asked', async () => {
    const asked = await club.standIn.mention(first, here).reply;
    await club.restart();
    open();
    const how = { ...here, messageId: String(asked.message['id']) };
    const elses = await club.standIn.component('run:ask?not=dose-amount', { ...how, userId: second }).reply;
    expect([elses.ephemeral, elses.text.includes('no longer have your message')]).toEqual([true, true]);
    const pressed = await club.standIn.component('run:ask?not=dose-amount', how).reply;
    expect(pressed.text).toContain('I did not understand that');
    expect(pressed.text).toContain('75 gal');
  });

  it('is shown and erased by /mydata', async () => {
    await club.standIn.mention(first, here).reply;
    const erase = (given: Record<string, string> = {}) =>
      club.standIn.slash('mydata', given, { subcommand: 'erase' }).reply;
    expect((await erase()).text).toContain('threads and posts remembered for 3 days: 1');
    expect(JSON.stringify(club.store.keepFor(keeper).exportAll())).toContain(first);
    await erase({ sure: 'yes' });
    expect(club.store.personCount()).toBe(0);
    expect((await club.standIn.mention(more, here).reply).text).not.toMatch(GOES_ON);
  });
});

it('a channel is no such place: nothing is written there', async () => {
  await club.standIn.mention(first).reply;
  expect(club.store.personCount()).toBe(0);
  await club.restart();
  expect(club.store.keepFor(keeper).told()).toEqual([]);
});
