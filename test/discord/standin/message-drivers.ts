import { announce } from './announce.ts';
import { channelOf, type Place } from './deliver.ts';
import { record, text } from './json.ts';
import { type Sent, type StoredMessage, storeMessage, upload } from './message.ts';
import type { GivenFile } from './slash-options.ts';
import type { State } from './state.ts';
import { until } from './until.ts';
import { userIds } from './world.ts';

export interface Writing extends Place {
  readonly files?: readonly GivenFile[];
  /** Reply to this message. */
  readonly replyTo?: string;
}

/** What a test watches of one message somebody wrote. */
export interface MessageHandle {
  readonly id: string;
  readonly message: StoredMessage;
  /** The bot's first message in answer: a reply to it, or one in its channel that replies to nothing. */
  readonly reply: Promise<Sent>;
  readonly answer: (n?: number) => Promise<Sent>;
  /** Whether the bot has shown that it is typing since. */
  readonly typing: () => boolean;
}

export interface MessageDrivers {
  /** Writes in the guild; the bot is named first unless the text names it. */
  readonly mention: (text: string, how?: Writing) => MessageHandle;
  /** Writes in the guild as given. */
  readonly channelMessage: (text: string, how?: Writing) => MessageHandle;
  readonly directMessage: (text: string, how?: Writing) => MessageHandle;
  /** The nth message (or edit) the bot sent to a channel without an interaction. */
  readonly channelSent: (channelId: string, n?: number) => Promise<Sent>;
}

export function messageDrivers(state: State): MessageDrivers {
  const named = `<@${userIds.bot}>`;
  return {
    mention: (words, how = {}) => write(state, words.includes(named) ? words : `${named} ${words}`, how),
    channelMessage: (words, how = {}) => write(state, words, how),
    directMessage: (words, how = {}) => write(state, words, { ...how, dm: true }),
    channelSent: (channelId, n = 0) => {
      const find = (): Sent | undefined =>
        state.sent.filter((each) => each.message['channel_id'] === channelId)[n];
      return until(state, find, `send message ${n + 1} to the channel`);
    },
  };
}

function write(state: State, content: string, how: Writing): MessageHandle {
  if (!state.gateway.hasSession) throw new Error('No bot is connected');
  const channelId = text(channelOf(state, how)['id']);
  const author = state.world.users.get(how.userId ?? userIds.keeper) ?? {};
  const attachments = (how.files ?? []).map((file) => upload(state, { field: '', ...file }));
  const reference = how.replyTo === undefined ? {} : { message_id: how.replyTo, channel_id: channelId };
  const reply = how.replyTo === undefined ? {} : { type: 19, message_reference: reference };
  const body = { content, message_reference: reference };
  const extra = { ...(attachments.length > 0 && { attachments }), ...reply };
  const message = storeMessage(state, { channelId, author, body, files: [], extra });
  const sentBefore = state.sent.length;
  const atMs = state.nowMs();
  announce(state, message, 'MESSAGE_CREATE');
  const answers = (): readonly Sent[] =>
    state.sent.slice(sentBefore).filter((each) => {
      const target = record(each.body['message_reference'])['message_id'];
      return target === message.id || (target === undefined && each.message['channel_id'] === channelId);
    });
  const answer = (n = 0): Promise<Sent> => until(state, () => answers()[n], `send answer ${n + 1}`);
  return {
    id: message.id,
    message,
    get reply() {
      return answer();
    },
    answer,
    typing: () => state.typing.some((each) => each.channelId === channelId && each.atMs >= atMs),
  };
}
