import { DiscordAPIError, RateLimitError, RESTJSONErrorCodes } from 'discord.js';
import type { Posted } from '../../clock/post.ts';
import type { SentenceKey } from '../../../core/wording/language.ts';
import { logFailure } from '../../log.ts';
import type { Logger } from '../../log.ts';
import { say } from '../../../core/wording/say.ts';

type Ids = Readonly<Record<string, string>>;

/** Codes of Discord's documented list of JSON error codes that say why a letter cannot be delivered. */
const reasons: Readonly<Partial<Record<number | string, SentenceKey>>> = {
  [RESTJSONErrorCodes.CannotSendMessagesToThisUser]: 'discord.messagesClosed',
  [RESTJSONErrorCodes.CannotSendMessagesToThisUserDueToHavingNoMutualGuilds]: 'discord.noSharedServer',
  [RESTJSONErrorCodes.UnknownUser]: 'discord.accountGone',
  [RESTJSONErrorCodes.InvalidRecipients]: 'discord.accountClosed',
  [RESTJSONErrorCodes.UnknownChannel]: 'discord.channelGone',
  [RESTJSONErrorCodes.UnknownGuild]: 'discord.serverLeft',
  [RESTJSONErrorCodes.UnknownMember]: 'discord.memberLeft',
  [RESTJSONErrorCodes.MissingAccess]: 'discord.channelHidden',
  [RESTJSONErrorCodes.MissingPermissions]: 'discord.channelReadOnly',
  [RESTJSONErrorCodes.CannotSendMessagesInNonTextChannel]: 'discord.channelNoText',
  [RESTJSONErrorCodes.InvalidActionOnArchivedThread]: 'discord.threadClosed',
  [RESTJSONErrorCodes.ThreadLocked]: 'discord.threadClosed',
  [RESTJSONErrorCodes.MessageWasBlockedByAutomaticModeration]: 'discord.heldByRules',
};

const general: Readonly<Partial<Record<number, SentenceKey>>> = {
  403: 'discord.writingRefused',
  404: 'discord.placeGone',
};

/** Refusals that pass: asked for too much too fast, or Discord has too much to do. */
const passing: ReadonlySet<unknown> = new Set([
  RESTJSONErrorCodes.OpeningDirectMessagesTooFast,
  RESTJSONErrorCodes.ServiceResourceIsBeingRateLimited,
  RESTJSONErrorCodes.ActionCannotBePerformedDueToSlowmodeRateLimit,
  RESTJSONErrorCodes.ChannelWriteRateLimit,
  RESTJSONErrorCodes.ServerWriteRateLimit,
  RESTJSONErrorCodes.SendMessagesHasBeenTemporarilyDisabled,
  RESTJSONErrorCodes.APIResourceOverloaded,
  401,
  408,
  429,
]);

/** What an error of a request means for the letter. Silence, a cut and trouble at Discord's end mean `later`. */
export function undelivered(log: Logger, error: unknown, ids: Ids): Posted {
  if (!(error instanceof DiscordAPIError) || passing.has(error.code) || passing.has(error.status)) {
    log.warn({ ...ids, err: error }, 'a letter has to wait');
    return { kind: 'later', afterMs: error instanceof RateLimitError ? error.retryAfter : undefined };
  }
  const { code, status } = error;
  const why = reasons[code] ?? general[status];
  if (why === undefined) return ours(log, error, ids);
  log.info({ ...ids, code, status }, 'a letter cannot be delivered');
  return { kind: 'gone', why: say(why) };
}

/** A letter that we made wrong; trying again would not help. */
export function ours(log: Logger, error: unknown, ids: Ids): Posted {
  const errorId = logFailure(log, error, 'a letter was not delivered', ids);
  return { kind: 'gone', why: say('discord.letterFailed', { errorId }) };
}
