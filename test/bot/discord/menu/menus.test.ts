import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openTurns } from '../../../../bot/turns.ts';
import { menus } from '../../../../bot/discord/menu/menus.ts';
import { ask } from '../../../ask.ts';
import { firstPage } from '../../../../commands/help.ts';
import { channelIds, guildId, userIds } from '../../../discord/standin/world.ts';
import type { StandIn } from '../../../discord/standin/server.ts';
import { nowMs, openClub } from '../club.ts';
import type { Club } from '../club.ts';
import { longReply, whyOf, wholeText } from '../whole-text.ts';
import { memberCommands, moveIn } from '../members.ts';

const { keeper, second } = userIds;
const numbers = 'Work out the numbers';
const readings = 'Check these readings';
const question = 'raise alk 7.2 to 8.4 with soda ash in 75 gal';

let club: Club;

beforeEach(async () => {
  club = await openClub({ commands: memberCommands, ask });
});

afterEach(async () => {
  await club.close();
  if (club.log.join('').includes('errorId')) throw new Error(club.log.join(''));
});

const written = (text: string, how: Parameters<StandIn['channelMessage']>[1] = {}): string =>
  club.standIn.channelMessage(text, how).id;

/** What the second member is answered about a message of the keeper. */
const chosen = async (menu: string, message: string, how = {}) =>
  club.standIn.contextMenu(menu, { message }, { userId: second, ...how }).reply;

describe('a menu on a message', () => {
  it('works out the numbers for the helper alone', async () => {
    const reply = await chosen(numbers, written(question));
    // 1 dKH in 100 L = 1.890 g Na2CO3 (molar masses IUPAC 2021), 283.9 L, 1.2 dKH: 6.44 g.
    expect(reply.text).toContain('6.4 g of sodium carbonate');
    expect(reply.ephemeral).toBe(true);
    expect(reply.pings).toEqual([]);
    expect(reply.allowedMentions).toEqual({ parse: [], replied_user: false });
  });

  it('checks pasted readings, over several lines and with markup', async () => {
    const text = `hey <@${second}> my **params**:\n> alk 8.1\n> ca 420\nmg 1350 https://example.org/7/123.png`;
    const reply = await chosen(readings, written(text));
    expect(reply.ephemeral).toBe(true);
    for (const part of ['alkalinity: 8.1 dKH', 'calcium: 420 mg/L', 'magnesium: 1350 mg/L']) {
      expect(reply.text).toContain(part);
    }
    expect(reply.text).not.toMatch(/example|123|1100000000000000012/);
  });

  it("looks into nobody's tank, and leaves no trace of the words", async () => {
    moveIn(club.store.keepFor(keeper), 'Pantry', 251.7, 'sesame');
    moveIn(club.store.keepFor(second), 'Tide pool', 91.3, 'own');
    const before = [keeper, second].map((id) => JSON.stringify(club.store.keepFor(id).exportAll()));
    const dosed = await chosen(numbers, written('raise alk 6.9 to 8.6 with soda ash'));
    expect(dosed.text).toContain('per 100 L');
    const checked = await chosen(readings, written('alk 8.1 ca 420'));
    for (const { text } of [dosed, checked]) expect(text).not.toMatch(/Pantry|Tide|251|91\.3/);
    expect([keeper, second].map((id) => JSON.stringify(club.store.keepFor(id).exportAll()))).toEqual(before);
    const mention = await club.standIn.mention('and with baking soda?', { userId: second }).reply;
    expect(mention.text).not.toMatch(/6\.9|8\.6/);
    expect(club.log.join('')).not.toMatch(/soda|alk/);
  });

  it("leaves the buttons to the writer: none here works with the helper's tank", async () => {
    const reply = await chosen(numbers, written('raise alk 3.2 to 3.6 in 75 gal with soda ash'));
    expect(reply.text).toMatch(/buttons for its writer: .*meq\/L/);
    expect(JSON.stringify(reply.components)).not.toContain('run:');
  });

  it('shows the helper what everybody would see, and the rest at a press, held in memory alone', async () => {
    const reply = await chosen(numbers, written(question));
    expect(reply.text).not.toContain('How it adds up');
    const long = await longReply(club, reply, { userId: second });
    expect(long.text).toContain('How it adds up');
    const strange = club.standIn.component(whyOf(reply) ?? '', { messageId: String(reply.message['id']) });
    expect((await strange.reply).text).not.toContain('sodium');
    for (const id of [keeper, second])
      expect(JSON.stringify(club.store.keepFor(id).exportAll())).not.toContain('sodium');
  });

  it('works in direct messages, without a way to post', async () => {
    const { id } = club.standIn.directMessage(question, { userId: second });
    const reply = await chosen(numbers, id, { dm: true });
    expect(reply.text).toContain('6.4 g');
    expect(JSON.stringify(reply.components)).not.toMatch(/post:|can not be posted/);
  });
});

const kindly = async (menu: string, message: string): Promise<string> => {
  const reply = await chosen(menu, message);
  expect(reply.ephemeral).toBe(true);
  expect(JSON.stringify(reply.components)).not.toContain('post:');
  return reply.text;
};

describe('a message that can not be read', () => {
  it.each([numbers, readings])('%s: only a picture', async (menu) => {
    const file = { name: 'tank.png', contentType: 'image/png', data: Buffer.from('not looked at') };
    expect(await kindly(menu, written('', { files: [file] }))).toContain('pictures I can not read');
  });

  it.each([numbers, readings])("%s: a bot's own", async (menu) => {
    const { message } = await club.standIn.mention(question).reply;
    expect(await kindly(menu, String(message['id']))).toContain('A bot wrote that');
  });

  it('too long', async () => {
    for (const menu of [numbers, readings])
      expect(await kindly(menu, written(`${question} ${'please '.repeat(580)}`))).toContain('at most 4000');
  });

  it('no reading in it', async () => {
    expect(await kindly(readings, written('look at my new fish'))).toContain('I found no reading in that.');
  });
});

it('is told of on the first page of help', () => {
  const told = firstPage(memberCommands).steps.join(' ');
  for (const { name } of menus) expect(told).toContain(name);
});

it('counts as an answer the helper had', async () => {
  const busy = await openClub({ commands: memberCommands, ask, turnOf: openTurns(() => nowMs) });
  const { id } = busy.standIn.channelMessage(question);
  const use = () => busy.standIn.contextMenu(numbers, { message: id }, { userId: second }).reply;
  for (let i = 0; i < 12; i++) expect((await use()).text).toContain('6.4 g');
  expect((await use()).text).toContain('Slowly, please');
  await busy.close();
});

it('reads a bare number in the unit of the server, and says so', async () => {
  const settings = club.store.settingsOf(guildId);
  club.store.changeSettings(guildId, { ...settings, units: { alkalinity: 'meq/L' } });
  const reply = await chosen(numbers, written('raise alk 3.2 to 3.6 in 75 gal with soda ash'), {
    channelId: channelIds.chat,
  });
  expect(await wholeText(club, reply, { userId: second })).toContain("this server's unit, meq/L");
});
