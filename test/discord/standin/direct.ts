import { type Json, list, record } from './json.ts';
import type { State } from './state.ts';
import { userIds } from './world.ts';

/** The direct-message channel with a person, opened if it is new; none with the bot itself or a stranger. */
export function directChannel(state: State, userId: string): Json | undefined {
  const { users, channels } = state.world;
  const person = users.get(userId);
  if (!person || userId === userIds.bot) return undefined;
  const open = [...channels.values()].find((each) => record(list(each['recipients'])[0])['id'] === userId);
  if (open) return open;
  const channel = { id: state.nextId(), type: 1, last_message_id: null, flags: 0, recipients: [person] };
  channels.set(channel.id, channel);
  return channel;
}
