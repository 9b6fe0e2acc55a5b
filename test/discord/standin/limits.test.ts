import {
  ButtonBuilder,
  EmbedBuilder,
  LabelBuilder,
  MediaGalleryBuilder,
  ModalBuilder,
  SectionBuilder,
  SlashCommandBuilder,
  SlashCommandStringOption,
  StringSelectMenuBuilder,
  StringSelectMenuOptionBuilder,
  TextDisplayBuilder,
  TextInputBuilder,
  ContainerBuilder,
  ThumbnailBuilder,
} from 'discord.js';
import { describe, expect, it } from 'vitest';
import { commandNamePattern, flag, type RangeName, ranges } from './limits.ts';
import { chars, times } from './samples.ts';

const command = (): SlashCommandBuilder => new SlashCommandBuilder().setName('c').setDescription('d');
const option = (name = 'o'): SlashCommandStringOption =>
  new SlashCommandStringOption().setName(name).setDescription('d');
const select = (): StringSelectMenuBuilder => new StringSelectMenuBuilder();
const pick = (): StringSelectMenuOptionBuilder => new StringSelectMenuOptionBuilder();
const field = (name: string, value: string): EmbedBuilder => new EmbedBuilder().setFields({ name, value });
const input = (): TextInputBuilder => new TextInputBuilder().setCustomId('i').setStyle(1);
const label = (): LabelBuilder => new LabelBuilder().setLabel('l').setTextInputComponent(input());
const image = { media: { url: 'https://example.org/a.png' } };

// Source: the validators of @discordjs/builders 1.15, which others wrote after Discord's documentation. Each
// builds something of a size and throws past the greatest. That package does not check the other ranges.
const byBuilders: readonly (readonly [RangeName, (size: number) => unknown])[] = [
  ['command.name', (n) => command().setName(chars(n))],
  ['command.description', (n) => command().setDescription(chars(n))],
  ['command.options', (n) => withOptions(n).toJSON()],
  ['choice.count', (n) => option().addChoices(...times(n, (i) => ({ name: `n${i}`, value: 'v' })))],
  ['choice.name', (n) => option().addChoices({ name: chars(n), value: 'v' })],
  ['choice.value', (n) => option().addChoices({ name: 'n', value: chars(n) })],
  ['option.minLength', (n) => option().setMinLength(n)],
  ['option.maxLength', (n) => option().setMaxLength(n)],
  ['embed.title', (n) => new EmbedBuilder().setTitle(chars(n))],
  ['embed.description', (n) => new EmbedBuilder().setDescription(chars(n))],
  ['embed.fields', (n) => new EmbedBuilder().setFields(...times(n, () => ({ name: 'n', value: 'v' })))],
  ['embed.fieldName', (n) => field(chars(n), 'v')],
  ['embed.fieldValue', (n) => field('n', chars(n))],
  ['embed.footer', (n) => new EmbedBuilder().setFooter({ text: chars(n) })],
  ['embed.author', (n) => new EmbedBuilder().setAuthor({ name: chars(n) })],
  ['component.customId', (n) => new ButtonBuilder().setCustomId(chars(n))],
  ['button.label', (n) => new ButtonBuilder().setLabel(chars(n))],
  ['select.options', (n) => select().setOptions(...times(n, (i) => ({ label: 'l', value: `${i}` })))],
  ['select.placeholder', (n) => select().setPlaceholder(chars(n))],
  ['select.minValues', (n) => select().setMinValues(n)],
  ['select.maxValues', (n) => select().setMaxValues(n)],
  ['selectOption.label', (n) => pick().setLabel(chars(n)).setValue('v').toJSON()],
  ['selectOption.value', (n) => pick().setLabel('l').setValue(chars(n)).toJSON()],
  ['selectOption.description', (n) => pick().setDescription(chars(n))],
  ['text.content', (n) => new TextDisplayBuilder().setContent(chars(n))],
  ['gallery.items', (n) => new MediaGalleryBuilder({ items: [...times(n, () => image)] }).toJSON()],
  ['media.description', (n) => new ThumbnailBuilder().setDescription(chars(n))],
  ['section.texts', (n) => sectionOf(n).toJSON()],
  ['container.accent', (n) => new ContainerBuilder().setAccentColor(n)],
  ['modal.title', (n) => new ModalBuilder().setTitle(chars(n))],
  ['label.text', (n) => label().setLabel(chars(n)).toJSON()],
  ['label.description', (n) => label().setDescription(chars(n)).toJSON()],
  ['input.label', (n) => input().setLabel(chars(n))],
  ['input.placeholder', (n) => input().setPlaceholder(chars(n))],
  ['input.minLength', (n) => input().setMinLength(n)],
  ['input.maxLength', (n) => input().setMaxLength(n)],
  ['input.value', (n) => input().setValue(chars(n))],
];

function withOptions(count: number): SlashCommandBuilder {
  const built = command();
  for (const each of times(count, (i) => option(`o${i}`))) built.addStringOption(each);
  return built;
}

function sectionOf(texts: number): SectionBuilder {
  const words = times(texts, () => new TextDisplayBuilder().setContent('a'));
  return new SectionBuilder()
    .addTextDisplayComponents(...words)
    .setThumbnailAccessory(new ThumbnailBuilder(image));
}

const types = 'declarations of discord-api-types 0.38';
const memory = "Discord's developer documentation, from memory";
const byDocument: readonly (readonly [RangeName, number, string])[] = [
  ['command.text', 4000, `${memory}: 4000, later 8000`],
  ['command.count', 100, memory],
  ['command.menus', 5, `${memory}: 5, later 15`],
  ['autocomplete.choices', 25, memory],
  ['message.content', 2000, types],
  ['message.embeds', 10, memory],
  ['message.files', 10, memory],
  ['message.nonce', 25, types],
  ['history.limit', 100, types],
  ['message.rows', 5, memory],
  ['message.stickers', 3, types],
  ['mentions.ids', 100, types],
  ['file.description', 1024, types],
  ['file.bytes', 10_485_760, memory],
  ['embed.total', 6000, types],
  ['component.total', 40, memory],
  ['component.text', 4000, memory],
  ['row.buttons', 5, memory],
  ['button.url', 512, memory],
  ['modal.components', 5, memory],
];

describe('the limits against what others wrote down', () => {
  it.each(byBuilders)('%s: the builders take the greatest and refuse one more', (name, build) => {
    const { max } = ranges[name];
    expect(() => build(max)).not.toThrow();
    expect(() => build(max + 1)).toThrow(/^(Invalid|Received one or more errors|Expected)/);
  });

  it.each(byDocument)('%s is at most %i (%s)', (name, max) => {
    expect(ranges[name].max).toBe(max);
  });

  it('leaves no range out', () => {
    const named = [...byBuilders, ...byDocument].map(([name]) => name);
    expect(named.sort()).toEqual(Object.keys(ranges).sort());
  });

  // Source: MessageFlags of discord-api-types.
  it('uses the flags of the wire', async () => {
    const { MessageFlags } = await import('discord.js');
    expect(flag).toEqual({
      suppressEmbeds: MessageFlags.SuppressEmbeds,
      ephemeral: MessageFlags.Ephemeral,
      loading: MessageFlags.Loading,
      suppressNotifications: MessageFlags.SuppressNotifications,
      componentsV2: MessageFlags.IsComponentsV2,
    });
  });

  it.each(['alk', 'water-change', 'größe', 'ตู้ปลา', 'मछली', '2_part'])('takes the name %s', (name) => {
    expect(commandNamePattern.test(name)).toBe(true);
  });
});
