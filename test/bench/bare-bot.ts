import { Client, Events, GatewayIntentBits, MessageFlags } from 'discord.js';

/** The least a discord.js bot can do: answers every slash command with a fixed text. */
const client = new Client({
  intents: [GatewayIntentBits.Guilds, GatewayIntentBits.GuildMessages, GatewayIntentBits.DirectMessages],
  rest: { api: process.env['DISCORD_API_BASE'] ?? '' },
});

client.on(Events.InteractionCreate, (interaction) => {
  if (interaction.isChatInputCommand())
    void interaction.reply({ content: 'fixed text', flags: MessageFlags.SuppressNotifications });
});

await client.login(process.env['DISCORD_TOKEN']);
