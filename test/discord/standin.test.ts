import { ApplicationCommandOptionType, type Client, PermissionFlagsBits } from 'discord.js';
import { describe, expect, it } from 'vitest';
import { record, text } from './standin/json.ts';
import {
  deferThenEdit,
  echo,
  echoLoudly,
  nameTarget,
  onSlash,
  openForm,
  readFile,
  showButton,
  showPicture,
  suggest,
} from './standin/sample-bot.ts';
import { withBot } from './standin/with-bot.ts';
import { channelIds, guildId, userIds } from './standin/world.ts';

const nothing = (_client: Client): void => undefined;
const days = {
  type: ApplicationCommandOptionType.Integer,
  name: 'days',
  description: 'd',
  required: true,
} as const;
const dose = { name: 'probe', description: 'A test', options: [{ ...days, maxValue: 9 }] } as const;

describe('logging in', () => {
  it('gives the bot its user, its guild and its channels', () =>
    withBot(nothing, async (standIn, client) => {
      expect(client.user?.id).toBe(userIds.bot);
      expect(client.application?.id).toBe(userIds.bot);
      expect(client.guilds.cache.get(guildId)?.channels.cache.size).toBe(3);
      expect((await client.application?.fetch())?.name).toBe('Sumpside');
      expect(standIn.gateway.log.map((each) => each.what)).toEqual(['connected', 'identified']);
      expect(standIn.unknownRoutes).toEqual([]);
    }));
});

describe('commands', () => {
  it('keeps what is put, with the same id the next time', () =>
    withBot(nothing, async (standIn, client) => {
      const first = await client.application?.commands.set([dose]);
      const again = await client.application?.commands.set([{ ...dose, description: 'Another test' }]);
      const fetched = await client.application?.commands.fetch();
      expect(fetched?.first()?.description).toBe('Another test');
      expect(again?.firstKey()).toBe(first?.firstKey());
      await client.application?.commands.create({ ...dose, name: 'own' }, guildId);
      expect(standIn.commands.get(guildId)).toHaveLength(1);
      const id = first?.firstKey() ?? '';
      await client.application?.commands.edit(id, { description: 'Edited' });
      expect(standIn.commands.get('global')).toMatchObject([{ id, name: 'probe', description: 'Edited' }]);
      await client.application?.commands.delete(id);
      expect(standIn.commands.get('global')).toEqual([]);
      expect(standIn.violations).toEqual([]);
    }));

  it('delivers only what was registered', () =>
    withBot(
      onSlash((interaction) => interaction.reply(`${interaction.options.getInteger('days', true)} days`)),
      async (standIn, client) => {
        await client.application?.commands.set([dose]);
        expect((await standIn.slash('probe', { days: 3 }).reply).content).toBe('3 days');
        expect(() => standIn.slash('other')).toThrow('registered');
        expect(() => standIn.slash('probe')).toThrow('required');
        expect(() => standIn.slash('probe', { days: 10 })).toThrow('limits');
        expect(() => standIn.slash('probe', { days: 'x' })).toThrow('type 4');
        expect(() => standIn.slash('probe', { days: 3, hours: 1 })).toThrow('no option "hours"');
      },
    ));
});

describe('interactions', () => {
  it('answers a subcommand with components, files and mentions as sent', () =>
    withBot(showPicture(userIds.second), async (standIn) => {
      const handle = standIn.slash('tank', {}, { subcommand: 'export' });
      const reply = await handle.reply;
      expect(reply).toMatchObject({ ephemeral: true, text: `<@${userIds.second}> export`, pings: [] });
      expect(reply.allowedMentions).toEqual({ parse: [] });
      expect(reply.components.map((each) => each['type'])).toEqual([10, 12]);
      expect(reply.files.map(({ name, data }) => `${name} ${Buffer.from(data)}`)).toEqual(['trend.png png']);
      expect((await handle.acknowledged).type).toBe(4);
      expect(standIn.violations).toEqual([]);
    }));

  it('lets the bot fetch a file a member gives', () =>
    withBot(readFile, async (standIn) => {
      const file = { name: 'log.csv', contentType: 'text/csv', data: Buffer.from('7,8') };
      expect((await standIn.slash('log', { file: { file } }).reply).content).toBe('log.csv 3 7,8');
    }));

  it('suggests choices while an option is typed', () =>
    withBot(suggest, async (standIn) => {
      const how = { focused: 'named', subcommand: 'show' };
      const handle = standIn.autocomplete('coral', { named: 'acro' }, how);
      expect(await handle.choices).toEqual([{ name: 'named acro', value: 'acro' }]);
      expect(standIn.violations).toEqual([]);
    }));

  it('defers, edits, follows up and deletes', () =>
    withBot(deferThenEdit, async (standIn) => {
      const handle = standIn.slash('dose', {}, { dm: true });
      expect((await handle.acknowledged).type).toBe(5);
      expect((await handle.reply).content).toBe('done');
      expect(await handle.followUp()).toMatchObject({ content: 'and more', ephemeral: true });
      expect((await handle.edit(1)).content).toBe('done again');
      await standIn.until(() => handle.interaction.original?.deleted || undefined, 'delete the reply');
    }));

  it('presses the buttons the bot shows, and no others', () =>
    withBot(showButton, async (standIn) => {
      await standIn.slash('dose').reply;
      const pressed = standIn.component('again', { userId: userIds.second });
      expect((await pressed.reply).content).toBe('one two');
      expect(() => standIn.component('again')).toThrow('No message shows');
    }));

  it('opens a form and takes what is filled in', () =>
    withBot(openForm, async (standIn) => {
      const opened = standIn.slash('log');
      expect(await opened.modal).toMatchObject({ custom_id: 'log', title: 'Log' });
      expect((await standIn.submitModal(opened, { alk: '8.3 dKH' }).reply).content).toBe('8.3 dKH');
      expect(standIn.violations).toEqual([]);
    }));

  it('uses context menus on a message and on a person', () =>
    withBot(nameTarget, async (standIn) => {
      const { id } = standIn.channelMessage('Ca 560');
      expect((await standIn.contextMenu('Check this', { message: id }).reply).content).toBe('Ca 560');
      const person = standIn.contextMenu('Their tank', { user: userIds.second });
      expect((await person.reply).content).toBe('Teo Brackwell');
    }));

  it('uses a context menu where the message stands, and on none that is gone', () =>
    withBot(nameTarget, async (standIn) => {
      const asked = standIn.channelMessage('Ca 560', { channelId: channelIds.notices });
      const used = standIn.contextMenu('Check this', { message: asked.id });
      const { channel_id, member, app_permissions } = used.interaction.payload;
      expect(channel_id).toBe(channelIds.notices);
      const { SendMessages, ViewChannel } = PermissionFlagsBits;
      for (const rights of [app_permissions, record(member)['permissions']]) {
        expect(BigInt(text(rights)) & (SendMessages | ViewChannel)).toBe(ViewChannel);
      }
      await used.reply;
      asked.message.deleted = true;
      expect(() => standIn.contextMenu('Check this', { message: asked.id })).toThrow('no such message');
      expect(() => standIn.contextMenu('Check this', { message: '1' })).toThrow('no such message');
    }));
});

describe('messages', () => {
  it('carry their text when they name the bot, and none otherwise', () =>
    withBot(echo, async (standIn) => {
      const mention = standIn.mention('Alk is 7?');
      expect(await mention.reply).toMatchObject({ content: `[<@${userIds.bot}> Alk is 7?]`, pings: [] });
      expect(mention.typing()).toBe(true);
      const overheard = standIn.channelMessage('Alk is 7?', { channelId: channelIds.numbers });
      expect((await overheard.reply).content).toBe('[]');
    }));

  it('show whom an answer pings', () =>
    withBot(echoLoudly, async (standIn) => {
      const { pings } = await standIn.mention(`and <@${userIds.second}>?`).reply;
      expect([...pings].sort()).toEqual([userIds.bot, userIds.keeper, userIds.second]);
    }));

  it('reach the bot from a direct channel it has never seen', () =>
    withBot(echo, async (standIn) => {
      const asked = standIn.directMessage('Nitrate 50', { userId: userIds.second });
      expect((await asked.reply).content).toBe('[Nitrate 50]');
      expect(standIn.unknownRoutes).toEqual([]);
    }));

  it('are sent once when a nonce is enforced', () =>
    withBot(nothing, async (standIn, client) => {
      const keeper = await client.users.fetch(userIds.keeper);
      const once = { content: 'Top off', nonce: 'r1', enforceNonce: true };
      const [one, two] = [await keeper.send(once), await keeper.send(once)];
      const three = await keeper.send({ ...once, nonce: 'r2' });
      expect(two.id).toBe(one.id);
      expect(three.id).not.toBe(one.id);
      expect(standIn.sent).toHaveLength(2);
    }));
});
