import { list, record, text, whole } from './json.ts';
import { flag } from './limits.ts';
import type { StoredMessage } from './message.ts';
import type { State } from './state.ts';
import { applicationId, guildId } from './world.ts';

const guildMessages = 1 << 9;
const directMessages = 1 << 12;
const messageContent = 1 << 15;

/** Tells the bot of a new or changed message, without the text a bot without the content intent may not read. */
export function announce(
  state: State,
  stored: StoredMessage,
  event: 'MESSAGE_CREATE' | 'MESSAGE_UPDATE',
): void {
  if ((whole(stored.wire['flags']) & flag.ephemeral) !== 0) return;
  const inGuild = state.world.channels.get(stored.channelId)?.['guild_id'] === guildId;
  const author = text(record(stored.wire['author'])['id']);
  const addressed = list(stored.wire['mentions']).some((each) => record(each)['id'] === applicationId);
  const readable = !inGuild || author === applicationId || addressed;
  const { user: _, ...member } = state.world.member(author);
  const place = inGuild ? { guild_id: guildId, member } : { channel_type: 1 };
  const blank = { content: '', embeds: [], components: [], attachments: [] };
  state.gateway.dispatch(event, inGuild ? guildMessages : directMessages, (intents) => {
    const hidden = readable || (intents & messageContent) !== 0 ? {} : blank;
    return { ...stored.wire, ...place, ...hidden };
  });
}
