import { Client, type ClientOptions, Events, GatewayIntentBits, Partials } from 'discord.js';
import { type StandIn, type StandInOptions, startStandIn } from './server.ts';

export const intents = [
  GatewayIntentBits.Guilds,
  GatewayIntentBits.GuildMessages,
  GatewayIntentBits.DirectMessages,
];

/** A client of the real library that talks to the stand-in; not logged in. */
export function clientFor(standIn: StandIn, more: Partial<ClientOptions> = {}): Client {
  return new Client({ intents, partials: [Partials.Channel], rest: { api: standIn.apiBase }, ...more });
}

/** Runs a test with a stand-in and a bot that is ready; closes both whatever happens. */
export async function withBot(
  setUp: (client: Client) => void,
  run: (standIn: StandIn, client: Client) => Promise<void>,
  options: StandInOptions = {},
): Promise<void> {
  const standIn = await startStandIn(options);
  const client = clientFor(standIn);
  try {
    setUp(client);
    const ready = new Promise((resolve) => client.once(Events.ClientReady, resolve));
    await client.login(standIn.token);
    await ready;
    await run(standIn, client);
  } finally {
    await client.destroy();
    await standIn.close();
  }
}
