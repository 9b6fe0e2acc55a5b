import {
  ActionRowBuilder,
  AttachmentBuilder,
  ButtonBuilder,
  ButtonStyle,
  type ChatInputCommandInteraction,
  type Client,
  Events,
  LabelBuilder,
  MediaGalleryBuilder,
  MessageFlags,
  ModalBuilder,
  TextDisplayBuilder,
  TextInputBuilder,
  TextInputStyle,
} from 'discord.js';

/** Small bots of the real library, each with one behaviour, to try the stand-in with. */
type SetUp = (client: Client) => void;

export function onSlash(answer: (interaction: ChatInputCommandInteraction) => Promise<unknown>): SetUp {
  return (client) => {
    client.on(Events.InteractionCreate, (interaction) => {
      if (interaction.isChatInputCommand()) void answer(interaction);
    });
  };
}

/** Shows a picture under words that name a person and the subcommand. */
export const showPicture = (named: string): SetUp =>
  onSlash((interaction) =>
    interaction.reply({
      flags: MessageFlags.IsComponentsV2 | MessageFlags.Ephemeral,
      components: [
        new TextDisplayBuilder({ content: `<@${named}> ${interaction.options.getSubcommand()}` }),
        new MediaGalleryBuilder({
          items: [{ media: { url: 'attachment://trend.png' }, description: 'falling' }],
        }),
      ],
      files: [new AttachmentBuilder(Buffer.from('png'), { name: 'trend.png' })],
      allowedMentions: { parse: [] },
    }),
  );

/** Says what is in the file a member gave. */
export const readFile: SetUp = onSlash(async (interaction) => {
  const file = interaction.options.getAttachment('file', true);
  const content = await (await fetch(file.url)).text();
  await interaction.reply(`${file.name} ${file.size} ${content}`);
});

export const suggest: SetUp = (client) => {
  client.on(Events.InteractionCreate, (interaction) => {
    if (!interaction.isAutocomplete()) return;
    const { name, value } = interaction.options.getFocused(true);
    void interaction.respond([{ name: `${name} ${value}`, value }]);
  });
};

export const deferThenEdit: SetUp = onSlash(async (interaction) => {
  await interaction.deferReply();
  await interaction.editReply({ content: 'done' });
  await interaction.followUp({ content: 'and more', flags: MessageFlags.Ephemeral });
  await interaction.editReply({ content: 'done again' });
  await interaction.deleteReply();
});

const press = new ButtonBuilder().setCustomId('again').setLabel('Again').setStyle(ButtonStyle.Primary);
const buttons = new ActionRowBuilder<ButtonBuilder>().addComponents(press);

/** Shows a button; pressed, it goes away. */
export const showButton: SetUp = (client) => {
  onSlash((interaction) => interaction.reply({ content: 'one', components: [buttons] }))(client);
  client.on(Events.InteractionCreate, (interaction) => {
    if (!interaction.isButton()) return;
    void interaction.update({ content: `${interaction.message.content} two`, components: [] });
  });
};

const field = new TextInputBuilder().setCustomId('alk').setStyle(TextInputStyle.Short);
const label = new LabelBuilder().setLabel('Alkalinity').setTextInputComponent(field);
const form = new ModalBuilder().setCustomId('log').setTitle('Log').addLabelComponents(label);

/** Opens a form and repeats what was filled in. */
export const openForm: SetUp = (client) => {
  onSlash((interaction) => interaction.showModal(form))(client);
  client.on(Events.InteractionCreate, (interaction) => {
    if (interaction.isModalSubmit()) void interaction.reply(interaction.fields.getTextInputValue('alk'));
  });
};

/** Names the message or the person a context menu was used on. */
export const nameTarget: SetUp = (client) => {
  client.on(Events.InteractionCreate, (interaction) => {
    if (interaction.isMessageContextMenuCommand()) void interaction.reply(interaction.targetMessage.content);
    if (interaction.isUserContextMenuCommand()) void interaction.reply(interaction.targetUser.displayName);
  });
};

/** Types, then repeats what was written to it as a reply that pings nobody. */
export const echo: SetUp = (client) => {
  client.on(Events.MessageCreate, async (message) => {
    if (message.author.bot || !message.channel.isSendable()) return;
    await message.channel.sendTyping();
    await message.reply({ content: `[${message.content}]`, allowedMentions: { repliedUser: false } });
  });
};

/** Replies with the library's defaults, which ping. */
export const echoLoudly: SetUp = (client) => {
  client.on(Events.MessageCreate, (message) => {
    if (!message.author.bot) void message.reply(message.content);
  });
};
