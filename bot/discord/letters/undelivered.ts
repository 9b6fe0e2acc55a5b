import { DiscordAPIError, RateLimitError, RESTJSONErrorCodes } from 'discord.js';
import type { Posted } from '../../clock/post.ts';
import { logFailure } from '../../log.ts';
import type { Logger } from '../../log.ts';

type Ids = Readonly<Record<string, string>>;

/** Codes of Discord's documented list of JSON error codes that say why a letter cannot be delivered. */
const reasons: Readonly<Partial<Record<number | string, string>>> = {
  [RESTJSONErrorCodes.CannotSendMessagesToThisUser]:
    'direct messages from me are not taken there; they are switched off, or we no longer share a server',
  [RESTJSONErrorCodes.CannotSendMessagesToThisUserDueToHavingNoMutualGuilds]: 'we no longer share a server',
  [RESTJSONErrorCodes.UnknownUser]: 'that account is no longer there',
  [RESTJSONErrorCodes.InvalidRecipients]: 'that account cannot be written to',
  [RESTJSONErrorCodes.UnknownChannel]: 'the channel is no longer there',
  [RESTJSONErrorCodes.UnknownGuild]: 'I am no longer in that server',
  [RESTJSONErrorCodes.UnknownMember]: 'you are no longer in that server',
  [RESTJSONErrorCodes.MissingAccess]: 'I may not see the channel',
  [RESTJSONErrorCodes.MissingPermissions]: 'I may not write in the channel',
  [RESTJSONErrorCodes.CannotSendMessagesInNonTextChannel]: 'that channel takes no messages',
  [RESTJSONErrorCodes.InvalidActionOnArchivedThread]: 'the thread is closed',
  [RESTJSONErrorCodes.ThreadLocked]: 'the thread is closed',
  [RESTJSONErrorCodes.MessageWasBlockedByAutomaticModeration]: 'the rules of the server hold it back',
};

const general: Readonly<Partial<Record<number, string>>> = {
  403: 'Discord does not let me write there',
  404: 'the place is no longer there',
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
  return { kind: 'gone', why };
}

/** A letter that we made wrong; trying again would not help. */
export function ours(log: Logger, error: unknown, ids: Ids): Posted {
  const errorId = logFailure(log, error, 'a letter was not delivered', ids);
  return { kind: 'gone', why: `something went wrong on our side (error ${errorId})` };
}
