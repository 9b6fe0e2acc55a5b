import { DiscordAPIError, DiscordjsError, DiscordjsErrorCodes, GatewayCloseCodes } from 'discord.js';
import { Problem } from '../../core/problem.ts';

const token = 'DISCORD_TOKEN';

const sentences: Readonly<Partial<Record<number, string>>> = {
  [GatewayCloseCodes.AuthenticationFailed]: 'Discord does not accept the token.',
  [GatewayCloseCodes.InvalidShard]: 'Discord does not accept the connection: wrong shard.',
  [GatewayCloseCodes.ShardingRequired]: 'The bot is in too many servers for one connection.',
  [GatewayCloseCodes.InvalidAPIVersion]: 'Discord no longer knows this version of its interface.',
  [GatewayCloseCodes.InvalidIntents]: 'Discord does not know the intents asked for.',
  [GatewayCloseCodes.DisallowedIntents]: 'Discord does not allow the intents asked for.',
};

/** What the operator must put right when the gateway closes with `code`, or undefined if trying again may help. */
export function gatewayRefusal(code: number): Problem | undefined {
  const sentence = sentences[code];
  return sentence === undefined ? undefined : refusal(sentence);
}

/** The same for an error of a request. */
export function tokenRefusal(error: unknown): Problem | undefined {
  const unauthorized = error instanceof DiscordAPIError && error.status === 401;
  const invalid = error instanceof DiscordjsError && error.code === DiscordjsErrorCodes.TokenInvalid;
  return unauthorized || invalid ? gatewayRefusal(GatewayCloseCodes.AuthenticationFailed) : undefined;
}

function refusal(sentence: string): Problem {
  const hint = `Check ${token} and the bot's page in the developer portal, then start again.`;
  return new Problem(sentence, { field: token, hint });
}
