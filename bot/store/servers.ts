import type Database from 'better-sqlite3';
import { quietSettings, type DeskSettings } from '../../commands/server.ts';

/** What the managers of each server set. Held in memory: a look costs no query. */
export interface Servers {
  readonly settingsOf: (serverId: string) => DeskSettings;
  readonly changeSettings: (serverId: string, settings: DeskSettings) => void;
  /** The bot was removed from the server; its settings stay for a while, for when it comes back. */
  readonly serverLeft: (serverId: string, nowMs: number) => void;
  readonly serverJoined: (serverId: string) => void;
  /** The bot is in these servers and no others: what it has left meanwhile counts as left now. */
  readonly onlyServers: (serverIds: readonly string[], nowMs: number) => void;
  /** Returns how many were forgotten. */
  readonly forgetServersLeftBefore: (ms: number) => number;
}

export function openServers(db: Database.Database): Servers {
  const change = db.prepare<[string, string]>(`
    INSERT INTO server (id, settings) VALUES (?, ?)
    ON CONFLICT (id) DO UPDATE SET settings = excluded.settings, left_ms = NULL`);
  const leave = db.prepare<[number | null, string]>('UPDATE server SET left_ms = ? WHERE id = ?');
  const forget = db.prepare<[number], string>('DELETE FROM server WHERE left_ms < ? RETURNING id').pluck();
  const staying = db.prepare<[], string>('SELECT id FROM server WHERE left_ms IS NULL').pluck();
  const rows = db.prepare<[], { id: string; settings: string }>('SELECT id, settings FROM server').all();
  const known = new Map(rows.map(({ id, settings }) => [id, read(settings)]));

  return {
    settingsOf: (serverId) => known.get(serverId) ?? quietSettings,
    changeSettings: (serverId, settings) => {
      const text = JSON.stringify(settings);
      change.run(serverId, text);
      known.set(serverId, read(text));
    },
    serverLeft: (serverId, nowMs) => void leave.run(nowMs, serverId),
    serverJoined: (serverId) => void leave.run(null, serverId),
    onlyServers: (serverIds, nowMs) => {
      const here = new Set(serverIds);
      for (const id of staying.all()) if (!here.has(id)) leave.run(nowMs, id);
      for (const id of serverIds) if (known.has(id)) leave.run(null, id);
    },
    forgetServersLeftBefore: (ms) => {
      const forgotten = forget.all(ms);
      for (const id of forgotten) known.delete(id);
      return forgotten.length;
    },
  };
}

function read(settings: string): DeskSettings {
  return { ...quietSettings, ...(JSON.parse(settings) as Partial<DeskSettings>) };
}
