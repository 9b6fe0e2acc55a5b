import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { commands } from '../../../commands/index.ts';
import { ask } from '../../ask.ts';
import { elsewhereIds } from '../../discord/standin/elsewhere.ts';
import { userIds } from '../../discord/standin/world.ts';
import { everyComponent } from '../../discord/standin/component.ts';
import { openClub } from './club.ts';
import type { Club } from './club.ts';
import { profile } from './members.ts';
import { longReply } from './whole-text.ts';

let club: Club;
beforeEach(async () => {
  club = await openClub({ commands, ask });
});
afterEach(async () => {
  await club.close();
  if (club.log.join('').includes('errorId')) throw new Error(club.log.join(''));
});

const question = 'raise alk 7.2 to 8.4 in 75 gal with soda ash';
const places = Object.entries(elsewhereIds).map(([where, channelId]) => ({ where, channelId }));

describe.each(places)('as a personal app: $where', ({ channelId }) => {
  it('answers a sum before all', async () => {
    const asked = await club.standIn.slash('ask', { question }, { channelId }).reply;
    expect(asked.text).toMatch(/6[.,]4 g of sodium carbonate/);
    expect(asked.ephemeral).toBe(false);
    expect((await longReply(club, asked, { channelId, userId: userIds.second })).text).toContain(
      'How it adds up',
    );
  });

  it("answers what is the member's own for them alone", async () => {
    club.store.keepFor(userIds.keeper).addTank(profile('Pantry', 251.7));
    const shown = await club.standIn.slash('tank', {}, { channelId, subcommand: 'show' }).reply;
    const asked = await club.standIn.slash(
      'ask',
      { question: 'raise alk 7.2 to 8.4 with soda ash' },
      { channelId },
    ).reply;
    for (const { text, ephemeral } of [shown, asked]) {
      expect(text).toMatch(/Pantry|251\.7/);
      expect(ephemeral).toBe(true);
    }
  });

  it('goes on behind its buttons, privately for whoever pressed where it is theirs', async () => {
    const asked = await club.standIn.slash('ask', { question }, { channelId }).reply;
    const run = everyComponent(asked.components)
      .map((each) => String(each['custom_id']))
      .find((id) => id.startsWith('run:dose effect'));
    const how = { channelId, messageId: String(asked.message['id']) };
    const pressed = await club.standIn.component(run ?? '', how).reply;
    expect(pressed.text).toMatch(/dKH/);
    expect(pressed.ephemeral).toBe(false);
    const strange = await club.standIn.component(run ?? '', { ...how, userId: userIds.second }).reply;
    expect(strange.ephemeral).toBe(true);
  });

  it('suggests while somebody types', async () => {
    const how = { channelId, subcommand: 'amount', focused: 'of' };
    const offered = await club.standIn.autocomplete('dose', { of: 'alk' }, how).choices;
    expect(offered.map(({ name }) => name)).toContain('alkalinity');
  });

  it('works out a message of somebody else for their eyes alone, with nothing to post', async () => {
    const { id } = club.standIn.channelMessage(question);
    const seen = await club.standIn.contextMenu('Work out the numbers', { message: id }, { channelId }).reply;
    expect(seen.ephemeral).toBe(true);
    expect(seen.text).toMatch(/6[.,]4 g/);
    expect(JSON.stringify(seen.components)).not.toContain('post:');
  });

  it('says why no reminder goes to a channel there, and keeps one that goes to the member', async () => {
    club.store.keepFor(userIds.keeper).setZone('Europe/Lisbon');
    const how = { channelId, subcommand: 'task' };
    const options = { text: 'clean the glass', when: 'every saturday 9am' };
    const refused = await club.standIn.slash('remind', { ...options, where: 'reminder channel' }, how).reply;
    expect(refused.text).toContain('only on a server that has me');
    await club.standIn.slash('remind', options, how).reply;
    expect(club.store.keepFor(userIds.keeper).reminders()).toHaveLength(1);
  });

  it('has nothing to do with settings there', async () => {
    const set = await club.standIn.slash('desk', { volume: 'US gallons' }, { channelId, subcommand: 'set' })
      .reply;
    expect(set.text).toContain('/desk holds the settings of a server');
  });
});

it('answers the asker alone where they may not use apps of their own', async () => {
  const how = { channelId: elsewhereIds.server, mayUseApps: false };
  expect((await club.standIn.slash('ask', { question }, how).reply).ephemeral).toBe(true);
});
