import type { Json } from '../json.ts';
import { applicationId, userIds } from '../world.ts';
import { ok, param, refuse, type Route } from './route.ts';

const application: Json = {
  id: applicationId,
  name: 'Sumpside',
  icon: null,
  description: '',
  bot_public: false,
  bot_require_code_grant: false,
  verify_key: '0'.repeat(64),
  flags: 0,
  owner: { id: userIds.steward, username: 'steward', discriminator: '0', avatar: null, global_name: null },
  team: null,
};

/** Who the bot is and where its gateway is. */
export const applicationRoutes: readonly Route[] = [
  { method: 'GET', pattern: '/gateway', handle: ({ state }) => ok({ url: gatewayUrl(state.origin()) }) },
  {
    method: 'GET',
    pattern: '/gateway/bot',
    handle: ({ state }) => {
      const limit = { total: 1000, remaining: 1000, reset_after: 0, max_concurrency: 1 };
      return ok({ url: gatewayUrl(state.origin()), shards: 1, session_start_limit: limit });
    },
  },
  { method: 'GET', pattern: '/applications/@me', handle: () => ok(application) },
  { method: 'GET', pattern: '/oauth2/applications/@me', handle: () => ok(application) },
  {
    method: 'GET',
    pattern: '/users/:user',
    handle: (call) => {
      const id = param(call, 'user') === '@me' ? userIds.bot : param(call, 'user');
      const user = call.state.world.users.get(id);
      return user ? ok(user) : refuse(404, 10013, 'Unknown User');
    },
  },
];

export function gatewayUrl(origin: string): string {
  return origin.replace('http', 'ws');
}
