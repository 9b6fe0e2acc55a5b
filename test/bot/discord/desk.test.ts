import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { definitions } from '../../../bot/discord/register/definition.ts';
import { ask } from '../../ask.ts';
import { deskCommands } from '../../../commands/desk.ts';
import { quietSettings } from '../../../commands/server.ts';
import { checkCommandList } from '../../discord/standin/check-command.ts';
import { spot } from '../../discord/standin/spot.ts';
import type { Issue } from '../../discord/standin/spot.ts';
import { channelIds, guildId, stewardRole, userIds } from '../../discord/standin/world.ts';
import { nowMs, openClub } from './club.ts';
import type { Club } from './club.ts';
import { wholeText } from './whole-text.ts';
import { formCommands } from './asked/form-commands.ts';
import { memberCommands, moveIn } from './members.ts';
import { probeCommands } from './probe-commands.ts';

const { chat, numbers, notices } = channelIds;
const { keeper, steward, second } = userIds;

let club: Club;

beforeEach(async () => {
  const commands = [...deskCommands, ...memberCommands, ...formCommands, ...probeCommands];
  club = await openClub({ commands, ask });
});

afterEach(async () => {
  await club.close();
  if (club.log.join('').includes('errorId')) throw new Error(club.log.join(''));
});

const settings = () => club.store.settingsOf(guildId);
const openIn = (...ids: string[]): void =>
  club.store.changeSettings(guildId, { ...settings(), publicChannelIds: ids });

const desk = async (subcommand: string, options = {}, how = {}) =>
  club.standIn.slash('desk', options, { subcommand, userId: steward, ...how }).reply;

describe('the definition of /desk', () => {
  it('is for managers, in servers only, inside every limit', () => {
    const found = definitions(deskCommands);
    const issues: Issue[] = [];
    checkCommandList(spot(issues), found);
    expect(issues).toEqual([]);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ name: 'desk', contexts: [0], default_member_permissions: '32' });
  });

  it('cannot be for managers in part', () => {
    const [first, other] = deskCommands;
    if (first === undefined || other === undefined) throw new Error('no command');
    expect(() => definitions([first, { ...other, managers: false }])).toThrow('in part for managers');
  });
});

describe('/desk', () => {
  it('sets, shows and takes back, across a restart', async () => {
    const given = {
      volume: 'US gallons',
      alkalinity: 'meq/L',
      reminders: { channel: numbers },
      helpers: { role: stewardRole },
    };
    const set = await desk('set', given);
    expect(set.ephemeral).toBe(true);
    expect(set.text).toContain('### Set. I have every permission I need.');
    await club.restart();
    await desk('set', { temperature: 'celsius' });
    const shown = await desk('show');
    const whole = await wholeText(club, shown, { userId: steward });
    for (const part of [
      'volumes: US gal',
      'alkalinities: meq/L',
      'temperatures: °C',
      `helpers: those with the role <@&${stewardRole}>`,
      `reminders go to: I may do all I need (complete) <#${numbers}>`,
      `this channel: I may do all I need (complete) <#${chat}>`,
      'answers are public in every channel',
    ]) {
      expect(whole).toContain(part);
    }
    expect(shown.pings).toEqual([]);
    await desk('clear', { what: 'everything' });
    expect(settings()).toEqual(quietSettings);
    expect(await wholeText(club, await desk('show'), { userId: steward })).toContain('helpers: no role');
  });

  it('names public channels and what the bot lacks in each, with where to put it right', async () => {
    await desk('public', { add: { channel: numbers } });
    const reply = await desk('public', { add: { channel: notices } });
    expect(reply.text).toContain('I lack permissions in one channel.');
    expect(await wholeText(club, reply, { userId: steward })).toContain(
      `public answers in: I lack Send Messages (incomplete) <#${notices}>`,
    );
    expect(reply.text).toContain('Edit Channel, then Permissions');
    expect((await club.standIn.component('run:desk show?', { userId: steward }).reply).text).toContain(
      'I lack permissions',
    );
    await desk('public', { remove: { channel: notices } });
    expect(settings().publicChannelIds).toEqual([numbers]);
    const last = await desk('public', { remove: { channel: numbers } });
    expect(last.text).toContain('No channel is listed, so answers are public in all of them.');
    expect((await desk('public', { remove: { channel: numbers } })).text).toContain('not on the list');
  });

  it('takes no reminders where the manager may not write, nor in another server', async () => {
    const byOther = await desk('set', { reminders: { channel: '1100000000000000999' } });
    expect(byOther.text).toContain('Nobody can be reminded there.');
    expect(settings().reminderChannelId).toBeUndefined();
  });

  it.each([
    ['show', {}],
    ['set', { volume: 'litres' }],
    ['public', { add: { channel: chat } }],
    ['clear', { what: 'everything' }],
  ])('%s is refused to a member, though Discord let it through', async (subcommand, options) => {
    openIn(numbers);
    const reply = await desk(subcommand, options, { userId: keeper });
    expect(reply.text).toContain('for those who may manage it');
    expect(reply.text).toContain('Manage Server');
    expect(reply.ephemeral).toBe(true);
    expect(settings().publicChannelIds).toEqual([numbers]);
  });

  it('is refused to a member who presses a button of a manager', async () => {
    for (const customId of ['run:desk clear?what=everything', 'run:desk show?', 'ask:desk clear?!what']) {
      openIn(numbers);
      await club.standIn.slash('hold', { with: customId }).reply;
      const pressed = club.standIn.component(customId, { userId: second });
      if (customId.startsWith('ask')) await pressed.modal;
      const asked = customId.startsWith('ask')
        ? club.standIn.submitModal(pressed, { what: 'everything' }, { userId: second })
        : pressed;
      expect((await asked.reply).text).toContain('for those who may manage it');
      expect(settings().publicChannelIds).toEqual([numbers]);
    }
  });

  it('is one sentence in direct messages', async () => {
    const reply = await desk('show', {}, { dm: true });
    expect(reply.text).toContain('### /desk holds the settings of a server: use it in a channel');
  });
});

describe('a server the bot leaves', () => {
  it('is forgotten after a month, unless it comes back', async () => {
    const { standIn, store } = club;
    const day = 86_400_000;
    const gone = async (): Promise<number> => {
      standIn.gateway.dispatch('GUILD_DELETE', 1, () => ({ id: guildId }));
      await standIn.directMessage('done?').reply;
      return store.forgetServersLeftBefore(nowMs - 1);
    };
    openIn(numbers);
    expect(await gone()).toBe(0);
    standIn.gateway.dispatch('GUILD_CREATE', 1, standIn.world.guild);
    await standIn.directMessage('back?').reply;
    expect(store.forgetServersLeftBefore(nowMs + day)).toBe(0);
    await gone();
    expect(settings().publicChannelIds).toEqual([numbers]);
    expect(store.forgetServersLeftBefore(nowMs + day)).toBe(1);
    expect(settings()).toEqual(quietSettings);
  });
});

const asked = (channelId: string) => club.standIn.slash('pool', { volume: '75 gal' }, { channelId }).reply;

describe('where answers are public', () => {
  it('is everywhere until channels are named, then there alone', async () => {
    expect((await asked(chat)).ephemeral).toBe(false);
    openIn(numbers);
    expect((await asked(chat)).ephemeral).toBe(true);
    expect((await asked(numbers)).ephemeral).toBe(false);
    expect((await club.standIn.slash('pool', { volume: '75 gal' }, { dm: true }).reply).ephemeral).toBe(
      false,
    );
  });

  it('never makes an answer about a tank public', async () => {
    openIn(chat);
    moveIn(club.store.keepFor(keeper), 'Pantry', 251, 'own');
    expect((await club.standIn.slash('pool').reply).ephemeral).toBe(true);
  });

  it('counts threads by the channel they are in', async () => {
    const id = '1100000000000000261';
    const since = '2024-03-01T12:00:00.000000+00:00';
    const thread_metadata = {
      archived: false,
      locked: false,
      auto_archive_duration: 60,
      archive_timestamp: since,
    };
    const fixed = {
      name: 'talk',
      owner_id: keeper,
      message_count: 0,
      member_count: 1,
      rate_limit_per_user: 0,
    };
    const thread = { id, type: 11, guild_id: guildId, parent_id: numbers, ...fixed, thread_metadata };
    club.standIn.world.channels.set(id, thread);
    club.standIn.gateway.dispatch('THREAD_CREATE', 1, () => thread);
    openIn(numbers);
    await vi.waitFor(async () => expect((await asked(id)).ephemeral).toBe(false));
    openIn(notices);
    expect((await asked(id)).ephemeral).toBe(true);
    expect((await club.standIn.mention('75 gal', { channelId: id }).reply).text).toContain('/ask');
  });

  it('answers a mention elsewhere in at most two lines that tell nothing', async () => {
    openIn(numbers);
    const question = 'raise alk 7.2 to 8.4 with soda ash in 75 gal';
    const reply = await club.standIn.mention(question).reply;
    expect(reply.text.split('\n').length).toBeLessThanOrEqual(2);
    expect(reply.text).toContain('/ask');
    expect((await club.standIn.mention(question, { channelId: numbers }).reply).text).toContain('6.4 g');
    expect((await club.standIn.directMessage(question).reply).text).toContain('6.4 g');
  });
});

describe('units of the server', () => {
  beforeEach(() => club.store.changeSettings(guildId, { ...settings(), units: { volume: 'US gal' } }));

  it('read a bare number, say so, and keep the answer public', async () => {
    const reply = await club.standIn.slash('pool', { volume: '75' }).reply;
    expect(reply.text).toContain('### volume 75 US gal');
    expect(reply.text).toContain("75 read in this server's unit, US gal");
    expect(reply.ephemeral).toBe(false);
    const direct = await club.standIn.slash('pool', { volume: '75' }, { dm: true }).reply;
    expect(direct.text).toContain('### volume 75');
    expect(direct.text).not.toContain('gal');
  });

  it('give way to the unit of the tank in use, and stand in where the tank has none', async () => {
    const keep = club.store.keepFor(keeper);
    moveIn(keep, 'Pantry', 251, 'own');
    const silent = await club.standIn.slash('pool', { volume: '75' }).reply;
    expect(silent.text).toContain('75 US gal');
    expect(silent.ephemeral).toBe(false);
    const tank = keep.tankInUse();
    if (tank !== undefined) keep.editTank(tank.id, { ...tank, units: { volume: 'L' } });
    const own = await club.standIn.slash('pool', { volume: '75' }).reply;
    expect(own.text).toContain('75 read in your preferred unit, L');
    expect(own.ephemeral).toBe(true);
  });
});
