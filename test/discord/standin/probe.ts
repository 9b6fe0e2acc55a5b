import { WebSocket } from 'ws';
import { record, text, whole } from './json.ts';
import type { Rule } from './limits.ts';
import { type StandIn, startStandIn } from './server.ts';
import { channelIds, userIds } from './world.ts';

/** Where a payload is sent to: a way of the API that checks it. */
export type Via =
  | 'message'
  | 'edit'
  | 'history'
  | 'command'
  | 'commands'
  | 'dm'
  | 'reply'
  | 'defer'
  | 'update'
  | 'choices'
  | 'modal';

export interface Verdict {
  readonly status: number;
  readonly code: number;
  /** Rules this one payload broke, each once. */
  readonly rules: readonly Rule[];
}

/** Sends payloads to a stand-in with plain HTTP, as no client library would let through. */
export interface Probe {
  readonly send: (via: Via, payload: unknown, files?: readonly Blob[]) => Promise<Verdict>;
  readonly close: () => Promise<void>;
}

export async function startProbe(): Promise<Probe> {
  const standIn = await startStandIn();
  const api = `${standIn.apiBase}/v10`;
  const socket = await identify(standIn);
  const call = async (
    method: string,
    path: string,
    payload: unknown,
    files: readonly Blob[] = [],
  ): Promise<Response> => {
    const json = JSON.stringify(payload);
    const headers = { authorization: `Bot ${standIn.token}` };
    if (method === 'GET') return fetch(`${api}${path}?limit=${json}`, { headers });
    if (files.length === 0) {
      return fetch(api + path, {
        method,
        headers: { ...headers, 'content-type': 'application/json' },
        body: json,
      });
    }
    const form = new FormData();
    form.append('payload_json', json);
    files.forEach((file, index) => form.append(`files[${index}]`, file, `f${index}.png`));
    return fetch(api + path, { method, headers, body: form });
  };
  const messages = `/channels/${channelIds.chat}/messages`;
  const target = text(record(await (await call('POST', messages, { content: 'before' })).json())['id']);
  const commands = `/applications/${userIds.bot}/commands`;
  const callback = (type: number, kind: 'slash' | 'autocomplete'): string => {
    standIn.commands.clear();
    const handle =
      kind === 'slash'
        ? standIn.slash('probe')
        : standIn.autocomplete('probe', { word: 'a' }, { focused: 'word' });
    callbackType = type;
    return `/interactions/${handle.id}/${handle.interaction.token}/callback`;
  };
  let callbackType = 0;
  const places: Readonly<Record<Via, () => readonly [string, string]>> = {
    message: () => ['POST', messages],
    edit: () => ['PATCH', `${messages}/${target}`],
    history: () => ['GET', messages],
    dm: () => ['POST', '/users/@me/channels'],
    command: () => ['POST', commands],
    commands: () => ['PUT', commands],
    reply: () => ['POST', callback(4, 'slash')],
    defer: () => ['POST', callback(5, 'slash')],
    update: () => ['POST', callback(7, 'slash')],
    choices: () => ['POST', callback(8, 'autocomplete')],
    modal: () => ['POST', callback(9, 'slash')],
  };
  return {
    send: async (via, payload, files) => {
      const before = standIn.violations.length;
      if (via === 'command' || via === 'commands') standIn.commands.clear();
      const [method, path] = places[via]();
      const body = path.endsWith('/callback') ? { type: callbackType, data: payload } : payload;
      const response = await call(method, path, body, files);
      const answer: unknown = response.status === 204 ? undefined : await response.json();
      const rules = new Set(standIn.violations.slice(before).map((each) => each.rule));
      return { status: response.status, code: whole(record(answer)['code']), rules: [...rules] };
    },
    close: async () => {
      socket.terminate();
      await standIn.close();
    },
  };
}

/** Connects to the gateway and identifies, with no intents. */
async function identify(standIn: StandIn): Promise<WebSocket> {
  const socket = new WebSocket(
    `${standIn.apiBase.replace('http', 'ws').replace('/api', '')}/?v=10&encoding=json`,
  );
  socket.once('message', () => {
    socket.send(JSON.stringify({ op: 2, d: { token: standIn.token, intents: 0, properties: {} } }));
  });
  await standIn.until(() => standIn.gateway.log.find((each) => each.what === 'identified'), 'identify');
  return socket;
}
