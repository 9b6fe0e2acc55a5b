import type { EventEmitter } from 'node:events';
import type { Fault } from './faults.ts';
import type { Gateway } from './gateway.ts';
import type { Interaction } from './interaction.ts';
import type { Json } from './json.ts';
import type { Issue } from './spot.ts';
import type { FilePart } from './multipart.ts';
import type { Sent, StoredMessage } from './message.ts';
import type { World } from './world.ts';

/** One request the bot made. `status` is 0 until it was answered. */
export interface LoggedRequest {
  readonly method: string;
  /** Without `/api/v10` and without the query. */
  readonly path: string;
  readonly query: URLSearchParams;
  readonly body: unknown;
  readonly files: readonly FilePart[];
  readonly atMs: number;
  status: number;
  answer: unknown;
}

/** A broken limit, with the request that broke it. */
export interface Violation extends Issue {
  readonly method: string;
  readonly route: string;
}

/** Everything the stand-in remembers. Only the stand-in's own parts change it. */
export interface State {
  readonly nowMs: () => number;
  readonly nextId: () => string;
  readonly token: string;
  readonly origin: () => string;
  readonly waitMs: number;
  readonly enforceGlobalLimit: boolean;
  readonly world: World;
  readonly gateway: Gateway;
  /** Emits `change` after everything a driver may wait for. */
  readonly changes: EventEmitter;
  /** Registered commands by scope: `global` or the id of a guild. */
  readonly commands: Map<string, readonly Json[]>;
  readonly messages: Map<string, StoredMessage>;
  readonly interactions: Map<string, Interaction>;
  /** Messages the bot sent to channels, oldest first: no interaction responses. */
  readonly sent: Sent[];
  readonly typing: { readonly channelId: string; readonly atMs: number }[];
  /** Bytes behind attachment addresses, by path. */
  readonly uploads: Map<string, FilePart>;
  readonly requests: LoggedRequest[];
  readonly violations: Violation[];
  readonly unknownRoutes: string[];
  readonly rateBreaches: { readonly atMs: number; readonly path: string }[];
  readonly faults: Fault[];
}
