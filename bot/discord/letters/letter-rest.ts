import { setTimeout as wait } from 'node:timers/promises';
import { DefaultRestOptions, RateLimitError, REST } from 'discord.js';
import type { Turn } from '../../clock/pace.ts';
import { restOptions } from '../rest.ts';

export interface LetterRestParts {
  readonly token: string;
  readonly apiBase: string;
  /** Waited for right before every request. */
  readonly turn: Turn;
}

/** Discord gives an answer sooner, or none. */
const timeoutMs = 10_000;
/** A rate limit that is over sooner is waited for. */
const shortWaitMs = 2000;

/**
 * A REST client for letters alone: it neither repeats a request nor waits for a rate limit by itself, so that every
 * request takes its turn, and trouble with letters does not hold up answers.
 */
export function letterRest({ token, apiBase, turn }: LetterRestParts): REST {
  const rest = new REST({
    ...restOptions(apiBase),
    retries: 0,
    timeout: timeoutMs,
    rejectOnRateLimit: () => true,
    makeRequest: async (url, init) => {
      await turn();
      return DefaultRestOptions.makeRequest(url, init);
    },
  });
  return rest.setToken(token);
}

export type Ask = <T>(request: (signal: AbortSignal) => Promise<T>) => Promise<T>;

/** Makes requests that end with `signal`, and makes them again after a short rate limit. */
export function asking(signal: AbortSignal): Ask {
  return async (request) => {
    for (;;) {
      try {
        return await request(signal);
      } catch (error) {
        if (!(error instanceof RateLimitError) || error.retryAfter > shortWaitMs) throw error;
        await wait(error.retryAfter, undefined, { signal });
      }
    }
  };
}
