import type { Json } from '../../discord/standin/json.ts';
import { channelIds, guildId, userIds } from '../../discord/standin/world.ts';
import type { Club } from './club.ts';

const { numbers } = channelIds;
export const threadId = '1100000000000000251';
export const forumId = '1100000000000000252';

/** A new channel or thread, as the gateway tells of it. */
export function put(club: Club, channel: Json, event: string): void {
  const whole = { guild_id: guildId, ...channel };
  club.standIn.world.channels.set(String(channel['id']), whole);
  club.standIn.gateway.dispatch(event, 1, () => whole);
}

/** A public thread, or a post where the parent is a forum. */
export function openThread(club: Club, parentId: string, type = 11): void {
  put(
    club,
    {
      id: threadId,
      type,
      parent_id: parentId,
      name: 'pale torch',
      owner_id: userIds.keeper,
      message_count: 1,
      member_count: 1,
      rate_limit_per_user: 0,
      thread_metadata: {
        archived: false,
        locked: false,
        auto_archive_duration: 1440,
        archive_timestamp: '2024-03-01T12:00:00.000000+00:00',
      },
    },
    'THREAD_CREATE',
  );
}

export function openForum(club: Club): void {
  const like = club.standIn.world.channels.get(numbers);
  put(club, { ...like, id: forumId, name: 'help-desk', type: 15, available_tags: [] }, 'CHANNEL_CREATE');
}
