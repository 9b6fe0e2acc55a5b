import type { Json } from './json.ts';

export interface Matcher {
  readonly method?: string;
  /** Found anywhere in the path, which has no `/api/v10`. */
  readonly path?: string | RegExp;
}

/** A failure to come: the next `times` requests that match get this answer. Status 0 cuts the connection. */
export interface Fault {
  readonly matcher: Matcher;
  readonly status: number;
  readonly body: Json;
  readonly headers: Readonly<Record<string, string>>;
  /** The request is served as ever and only its answer is lost. */
  readonly served: boolean;
  times: number;
}

const usualBodies: Readonly<Record<number, Json>> = {
  403: { message: 'Missing Permissions', code: 50013 },
  404: { message: 'Unknown interaction', code: 10062 },
  429: { message: 'You are being rate limited.', retry_after: 0.05, global: false },
  500: { message: '500: Internal Server Error', code: 0 },
};

export function makeFault(
  matcher: Matcher,
  status: number,
  body: Json = usualBodies[status] ?? { message: `${status}`, code: 0 },
  headers: Readonly<Record<string, string>> = {},
  times = 1,
  served = false,
): Fault {
  const retryAfter = body['retry_after'];
  const usual: Record<string, string> = retryAfter === undefined ? {} : { 'retry-after': String(retryAfter) };
  if (body['global'] === true) usual['x-ratelimit-global'] = 'true';
  return { matcher, status, body, headers: { ...usual, ...headers }, served, times };
}

/** Takes the first fault that matches, counting it down. */
export function takeFault(faults: readonly Fault[], method: string, path: string): Fault | undefined {
  const fault = faults.find((each) => each.times > 0 && matches(each.matcher, method, path));
  if (fault) fault.times -= 1;
  return fault;
}

function matches(matcher: Matcher, method: string, path: string): boolean {
  if (matcher.method !== undefined && matcher.method.toUpperCase() !== method) return false;
  if (matcher.path === undefined) return true;
  return typeof matcher.path === 'string' ? path.includes(matcher.path) : matcher.path.test(path);
}
