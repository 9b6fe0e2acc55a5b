import { Problem } from '../../core/problem.ts';
import type { Context } from '../command.ts';
import type { Server } from '../server.ts';

/**
 * The server whose settings are asked for.
 *
 * @throws Problem outside a server, and to those who may not manage it.
 */
export function managedServer({ server }: Context): Server {
  if (server === undefined) {
    throw new Problem('/desk holds the settings of a server: use it in a channel of that server.', {
      field: 'server',
    });
  }
  if (!server.mayManage) throw notManaging();
  return server;
}

export function notManaging(): Problem {
  return new Problem('The settings of a server are for those who may manage it.', {
    field: 'server',
    limit: 'the permission Manage Server',
    hint: 'Ask someone who manages this server.',
  });
}
