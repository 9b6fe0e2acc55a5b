import type { IncomingMessage, ServerResponse } from 'node:http';
import { takeFault } from './faults.ts';
import type { Json } from './json.ts';
import { globalRequestsPerWindow, time } from './limits.ts';
import { parseBody } from './multipart.ts';
import { isLimited } from './rate.ts';
import { applicationRoutes } from './routes/application.ts';
import { callbackRoutes } from './routes/callbacks.ts';
import { channelRoutes } from './routes/channels.ts';
import { commandRoutes } from './routes/commands.ts';
import { memberRoutes } from './routes/members.ts';
import { matchPath, refuse, type Reply, type Route } from './routes/route.ts';
import { webhookRoutes } from './routes/webhooks.ts';
import type { LoggedRequest, State } from './state.ts';

const routes: readonly Route[] = [
  ...applicationRoutes,
  ...commandRoutes,
  ...callbackRoutes,
  ...webhookRoutes,
  ...channelRoutes,
  ...memberRoutes,
];
const prefix = '/api/v10';

interface Outcome extends Reply {
  readonly headers?: Readonly<Record<string, string>>;
  /** Cut the connection instead of answering. */
  readonly cut?: boolean;
}

/** Answers one HTTP request: an attachment, or a call of the API. */
export async function answerRequest(
  state: State,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const url = new URL(request.url ?? '/', state.origin());
  const chunks: Uint8Array[] = [];
  for await (const chunk of request) chunks.push(chunk as Uint8Array);
  const file = state.uploads.get(url.pathname);
  if (file) {
    response.writeHead(200, { 'content-type': file.contentType || 'application/octet-stream' });
    response.end(file.data);
    return;
  }
  const outcome = await answerCall(state, request, url, Buffer.concat(chunks));
  state.changes.emit('change');
  if (outcome.cut) {
    request.socket.destroy();
    return;
  }
  if (outcome.body === undefined) {
    response.writeHead(outcome.status, outcome.headers).end();
    return;
  }
  response.writeHead(outcome.status, { 'content-type': 'application/json', ...outcome.headers });
  response.end(JSON.stringify(outcome.body));
}

async function answerCall(
  state: State,
  request: IncomingMessage,
  url: URL,
  raw: Buffer<ArrayBuffer>,
): Promise<Outcome> {
  const method = request.method ?? 'GET';
  const path = url.pathname.startsWith(`${prefix}/`) ? url.pathname.slice(prefix.length) : url.pathname;
  const atMs = state.nowMs();
  const parsed = await parseBody(raw, request.headers['content-type'] ?? '').catch(() => undefined);
  const { body, files } = parsed ?? { body: undefined, files: [] };
  const logged: LoggedRequest = {
    method,
    path,
    query: url.searchParams,
    body,
    files,
    atMs,
    status: 0,
    answer: undefined,
  };
  state.requests.push(logged);
  const outcome = parsed ? decide(state, logged, request.headers.authorization) : badJson;
  logged.status = outcome.status;
  logged.answer = outcome.body;
  return outcome;
}

const badJson = refuse(400, 50109, 'The request body contains invalid JSON.');

function decide(state: State, logged: LoggedRequest, authorization: string | undefined): Outcome {
  const { method, path } = logged;
  const fault = takeFault(state.faults, method, path);
  if (fault?.served) return { ...serve(state, logged, authorization), cut: true };
  if (fault) {
    return { status: fault.status, body: fault.body, headers: fault.headers, cut: fault.status === 0 };
  }
  return serve(state, logged, authorization);
}

function serve(state: State, logged: LoggedRequest, authorization: string | undefined): Outcome {
  const { method, path, query, body, files } = logged;
  for (const route of routes) {
    const params = route.method === method ? matchPath(route.pattern, path) : undefined;
    if (!params) continue;
    if (!route.open && authorization !== `Bot ${state.token}`) return refuse(401, 0, '401: Unauthorized');
    if (!route.open && overGlobalLimit(state, logged)) return tooMany;
    return route.handle({ state, method, path, params, query, body, files });
  }
  state.unknownRoutes.push(`${method} ${path}`);
  return refuse(404, 0, '404: Not Found');
}

const tooManyBody: Json = { message: 'You are being rate limited.', retry_after: 1, global: true };
const tooMany: Outcome = {
  status: 429,
  body: tooManyBody,
  headers: { 'retry-after': '1', 'x-ratelimit-global': 'true', 'x-ratelimit-scope': 'global' },
};

/** Whether this is one more request than a second may hold. */
function overGlobalLimit(state: State, logged: LoggedRequest): boolean {
  if (!state.enforceGlobalLimit) return false;
  const since = logged.atMs - time.globalWindowMs;
  let recent = 0;
  for (let at = state.requests.length - 1; at >= 0; at -= 1) {
    const each = state.requests[at];
    if (each === undefined || each.atMs <= since) break;
    if (each !== logged && each.status !== 429 && isLimited(each)) recent += 1;
  }
  if (recent < globalRequestsPerWindow) return false;
  state.rateBreaches.push({ atMs: logged.atMs, path: logged.path });
  return true;
}
