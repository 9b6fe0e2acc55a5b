import { Problem } from '../../core/problem.ts';
import { say } from '../../core/wording/say.ts';
import type { Context } from '../command.ts';
import type { Server } from '../server.ts';

/**
 * The server whose settings are asked for.
 *
 * @throws Problem outside a server, and to those who may not manage it.
 */
export function managedServer({ server }: Context): Server {
  if (server === undefined) {
    throw new Problem(say('desk.inAServer'), {
      field: 'server',
    });
  }
  if (!server.mayManage) throw notManaging();
  return server;
}

export function notManaging(): Problem {
  return new Problem(say('desk.forManagers'), {
    field: 'server',
    limit: say('desk.limitManageServer'),
    hint: say('desk.hintAskManager'),
  });
}
