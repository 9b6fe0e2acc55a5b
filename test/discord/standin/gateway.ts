import { randomUUID } from 'node:crypto';
import type { Server } from 'node:http';
import { WebSocket, WebSocketServer } from 'ws';
import { isRecord, type Json, list, record, text, whole } from './json.ts';
import { gatewayPayloadBytes, knownIntents, privilegedIntents } from './limits.ts';

export interface GatewayEvent {
  readonly what: 'connected' | 'identified' | 'resumed' | 'refused' | 'heartbeat' | 'closed';
  readonly intents?: number;
  readonly code?: number;
}

interface Session {
  readonly id: string;
  readonly intents: number;
  readonly events: Json[];
  socket: WebSocket | undefined;
}

export interface GatewaySettings {
  readonly server: Server;
  readonly token: string;
  /** Privileged intents that are switched on for the application. */
  readonly allowedPrivileged: number;
  readonly heartbeatMs: number;
  readonly url: () => string;
  /** READY without the session's own fields, and the guilds that follow it. */
  readonly ready: () => Json;
  readonly guilds: () => readonly Json[];
  readonly onChange: () => void;
}

const op = {
  dispatch: 0,
  heartbeat: 1,
  identify: 2,
  presence: 3,
  voice: 4,
  resume: 6,
  members: 8,
  hello: 10,
  ack: 11,
} as const;
const invalidSession = 9;
const needSession: ReadonlySet<unknown> = new Set([op.presence, op.voice, op.members]);

export class Gateway {
  readonly log: GatewayEvent[] = [];
  readonly #settings: GatewaySettings;
  readonly #sockets: WebSocketServer;
  readonly #sessions = new Map<string, Session>();

  constructor(settings: GatewaySettings) {
    this.#settings = settings;
    this.#sockets = new WebSocketServer({ server: settings.server });
    this.#sockets.on('connection', (socket, request) => {
      this.#accept(socket, new URL(request.url ?? '/', 'ws://gateway').searchParams);
    });
  }

  /** Whether a bot has identified: its session may be waiting to be resumed. */
  get hasSession(): boolean {
    return this.#sessions.size > 0;
  }

  /** Sends an event to every session that asked for `intent` (0: always), now or when it resumes. */
  dispatch(name: string, intent: number, data: (intents: number) => Json): void {
    for (const session of this.#sessions.values()) {
      if (intent === 0 || (session.intents & intent) !== 0) this.#emit(session, name, data(session.intents));
    }
  }

  /** Closes every connection: with a close code, or without one as a lost network does. */
  drop(how: number | 'terminate' = 4000, { resumable = true }: { resumable?: boolean } = {}): void {
    if (!resumable) this.#sessions.clear();
    for (const socket of this.#sockets.clients) {
      if (how === 'terminate') socket.terminate();
      else socket.close(how);
    }
  }

  /** Asks every connected bot to reconnect and resume (op 7). */
  askReconnect(): void {
    for (const socket of this.#sockets.clients) send(socket, { op: 7, d: null });
  }

  close(): Promise<void> {
    this.#sessions.clear();
    for (const socket of this.#sockets.clients) socket.terminate();
    return new Promise((resolve) => this.#sockets.close(() => resolve()));
  }

  #note(event: GatewayEvent): void {
    this.log.push(event);
    this.#settings.onChange();
  }

  #refuse(socket: WebSocket, code: number): void {
    this.#note({ what: 'refused', code });
    socket.close(code);
  }

  #emit(session: Session, name: string, data: Json): void {
    const event = { op: op.dispatch, t: name, s: session.events.length + 1, d: data };
    session.events.push(event);
    if (session.socket?.readyState === WebSocket.OPEN) send(session.socket, event);
  }

  #accept(socket: WebSocket, query: URLSearchParams): void {
    this.#note({ what: 'connected' });
    let session: Session | undefined;
    socket.on('close', (code) => {
      if (session?.socket === socket) session.socket = undefined;
      if (session && (code === 1000 || code === 1001)) this.#sessions.delete(session.id);
      this.#note({ what: 'closed', code });
    });
    if (query.get('v') !== '10') return this.#refuse(socket, 4012);
    if (query.get('encoding') !== 'json') return this.#refuse(socket, 4002);
    send(socket, { op: op.hello, d: { heartbeat_interval: this.#settings.heartbeatMs } });
    socket.on('message', (raw: Buffer) => {
      const message = raw.length > gatewayPayloadBytes ? undefined : parse(raw);
      if (!message) return this.#refuse(socket, 4002);
      const data = record(message['d']);
      if (message['op'] === op.heartbeat) {
        this.#note({ what: 'heartbeat' });
        send(socket, { op: op.ack });
      } else if (message['op'] === op.identify || message['op'] === op.resume) {
        if (session) return this.#refuse(socket, 4005);
        session = message['op'] === op.identify ? this.#identify(socket, data) : this.#resume(socket, data);
      } else if (!needSession.has(message['op'])) this.#refuse(socket, 4001);
      else if (!session) this.#refuse(socket, 4003);
    });
  }

  #identify(socket: WebSocket, data: Json): Session | undefined {
    const intents = whole(data['intents']);
    const [shard, shards] = list(data['shard'] ?? [0, 1]);
    let code = 0;
    if (text(data['token']) !== this.#settings.token) code = 4004;
    else if (shard !== 0 || shards !== 1) code = 4010;
    else if ((intents & ~knownIntents) !== 0) code = 4013;
    else if ((intents & privilegedIntents & ~this.#settings.allowedPrivileged) !== 0) code = 4014;
    if (code !== 0) return void this.#refuse(socket, code);
    const session: Session = { id: randomUUID(), intents, events: [], socket };
    this.#sessions.set(session.id, session);
    const own = { session_id: session.id, resume_gateway_url: this.#settings.url(), shard: [0, 1] };
    this.#emit(session, 'READY', { ...this.#settings.ready(), ...own });
    if ((intents & 1) !== 0) {
      for (const guild of this.#settings.guilds()) this.#emit(session, 'GUILD_CREATE', guild);
    }
    this.#note({ what: 'identified', intents });
    return session;
  }

  #resume(socket: WebSocket, data: Json): Session | undefined {
    if (text(data['token']) !== this.#settings.token) return void this.#refuse(socket, 4004);
    const session = this.#sessions.get(text(data['session_id']));
    if (!session) return void send(socket, { op: invalidSession, d: false });
    const seen = whole(data['seq']);
    if (seen > session.events.length) return void this.#refuse(socket, 4007);
    session.socket = socket;
    for (const missed of session.events.slice(seen)) send(socket, missed);
    this.#emit(session, 'RESUMED', {});
    this.#note({ what: 'resumed', intents: session.intents });
    return session;
  }
}

function send(socket: WebSocket, message: Json): void {
  socket.send(JSON.stringify(message));
}

function parse(raw: Buffer): Json | undefined {
  try {
    const message: unknown = JSON.parse(raw.toString('utf8'));
    return isRecord(message) ? message : undefined;
  } catch {
    return undefined;
  }
}
