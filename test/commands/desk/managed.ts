import type { Context } from '../../../commands/command.ts';
import { quietSettings } from '../../../commands/server.ts';
import type { DeskSettings, Server } from '../../../commands/server.ts';

export const here = '1100000000000000201';

/** A server in which everything is allowed, and its settings. */
export function managed(changes: Partial<Server> = {}): {
  readonly context: Context;
  settings: DeskSettings;
} {
  const kept = { settings: quietSettings };
  const server: Server = {
    id: '1100000000000000100',
    channelId: here,
    settings: () => kept.settings,
    mayManage: true,
    change: (settings) => void (kept.settings = settings),
    mayWrite: () => true,
    lacks: () => [],
    ...changes,
  };
  return Object.assign(kept, { context: { nowMs: 0, server } });
}
