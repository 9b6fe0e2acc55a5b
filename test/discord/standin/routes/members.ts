import { guildId, userIds } from '../world.ts';
import { ok, param, refuse, type Route } from './route.ts';

/** Who is in the guild. */
export const memberRoutes: readonly Route[] = [
  {
    method: 'GET',
    pattern: '/guilds/:guild/members/:user',
    handle: (call) => {
      const { world } = call.state;
      const userId = param(call, 'user');
      if (param(call, 'guild') !== guildId || world.left.has(userIds.bot)) {
        return refuse(404, 10004, 'Unknown Guild');
      }
      if (!world.users.has(userId)) return refuse(404, 10013, 'Unknown User');
      return world.left.has(userId) ? refuse(404, 10007, 'Unknown Member') : ok(world.member(userId));
    },
  },
];
