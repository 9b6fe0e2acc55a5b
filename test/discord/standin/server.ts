import { EventEmitter } from 'node:events';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { type Fault, makeFault, type Matcher } from './faults.ts';
import { Gateway } from './gateway.ts';
import { answerRequest } from './http.ts';
import { idMaker } from './ids.ts';
import { type InteractionDrivers, interactionDrivers } from './interaction-drivers.ts';
import type { Json } from './json.ts';
import { type MessageDrivers, messageDrivers } from './message-drivers.ts';
import { gatewayUrl } from './routes/application.ts';
import type { State } from './state.ts';
import { until } from './until.ts';
import { applicationId, createWorld, guildId, userIds } from './world.ts';

export interface StandInOptions {
  readonly token?: string;
  /** The clock of the stand-in, for times of interactions and messages. */
  readonly nowMs?: () => number;
  /** How long a handle waits for the bot. */
  readonly waitMs?: number;
  readonly heartbeatMs?: number;
  /** Privileged intents that are switched on; none by default. */
  readonly allowedPrivileged?: number;
  /** Answer 429 past 50 requests in a second; off by default. */
  readonly enforceGlobalLimit?: boolean;
}

type Records = Pick<
  State,
  'requests' | 'violations' | 'unknownRoutes' | 'rateBreaches' | 'faults' | 'sent' | 'world' | 'commands'
>;

export interface StandIn extends Records, InteractionDrivers, MessageDrivers {
  /** `http://127.0.0.1:PORT/api`, for the `rest.api` option of the client. */
  readonly apiBase: string;
  readonly token: string;
  readonly gateway: Gateway;
  /** The next `times` requests that match get this answer instead. Status 0 cuts the connection. */
  readonly failNext: (
    matcher: Matcher,
    status: number,
    body?: Json,
    headers?: Readonly<Record<string, string>>,
    times?: number,
  ) => Fault;
  /** The next `times` requests that match are served, but their answers never arrive: the connection is cut. */
  readonly loseNext: (matcher: Matcher, times?: number) => Fault;
  /** A message as it stands now. */
  readonly messageNow: (id: unknown) => Json | undefined;
  readonly dropGateway: Gateway['drop'];
  /** Waits until `find` gives something, looking after everything the bot does. */
  readonly until: <T>(find: () => T | undefined, what: string) => Promise<T>;
  readonly close: () => Promise<void>;
}

/** Starts a stand-in for Discord's API and gateway on a free port of the loopback interface. */
export async function startStandIn(options: StandInOptions = {}): Promise<StandIn> {
  const server = createServer();
  const world = createWorld();
  const changes = new EventEmitter().setMaxListeners(0);
  const token = options.token ?? 'stand-in-token';
  const nowMs = options.nowMs ?? Date.now;
  const origin = (): string => `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  const gateway = new Gateway({
    server,
    token,
    allowedPrivileged: options.allowedPrivileged ?? 0,
    heartbeatMs: options.heartbeatMs ?? 41_250,
    url: () => gatewayUrl(origin()),
    ready: () => ({
      v: 10,
      user: world.users.get(userIds.bot),
      guilds: [{ id: guildId, unavailable: true }],
      application: { id: applicationId, flags: 0 },
    }),
    guilds: () => [world.guild()],
    onChange: () => changes.emit('change'),
  });
  const state: State = {
    nowMs,
    nextId: idMaker(nowMs),
    token,
    origin,
    world,
    gateway,
    changes,
    waitMs: options.waitMs ?? 5e3,
    enforceGlobalLimit: options.enforceGlobalLimit ?? false,
    commands: new Map(),
    messages: new Map(),
    interactions: new Map(),
    uploads: new Map(),
    sent: [],
    typing: [],
    requests: [],
    violations: [],
    unknownRoutes: [],
    rateBreaches: [],
    faults: [],
  };
  server.on('request', (request, response) => {
    answerRequest(state, request, response).catch((error: unknown) => {
      state.unknownRoutes.push(`${request.method} ${request.url}: ${String(error)}`);
      response.destroy();
    });
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    ...interactionDrivers(state),
    ...messageDrivers(state),
    requests: state.requests,
    violations: state.violations,
    unknownRoutes: state.unknownRoutes,
    rateBreaches: state.rateBreaches,
    faults: state.faults,
    sent: state.sent,
    world,
    commands: state.commands,
    gateway,
    token,
    apiBase: `${origin()}/api`,
    failNext: (matcher, status, body, headers, times) => {
      const fault = makeFault(matcher, status, body, headers, times);
      state.faults.push(fault);
      return fault;
    },
    loseNext: (matcher, times) => {
      const fault = makeFault(matcher, 0, {}, {}, times, true);
      state.faults.push(fault);
      return fault;
    },
    messageNow: (id) => state.messages.get(String(id))?.wire,
    dropGateway: (how, what) => gateway.drop(how, what),
    until: (find, what) => until(state, find, what),
    close: async () => {
      await gateway.close();
      const closed = new Promise<void>((resolve) => server.close(() => resolve()));
      server.closeAllConnections();
      await closed;
    },
  };
}
