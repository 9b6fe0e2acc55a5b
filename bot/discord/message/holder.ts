import type { HoldCall } from '../asked/call.ts';
import type { Drawn } from './drawn.ts';

/** Keeps what the buttons of a message stand for; each gives the short id it is found under, or undefined where it cannot. */
export interface Holder {
  readonly answer: (given: Drawn) => string | undefined;
  readonly call: HoldCall;
}

export const holdsNothing: Holder = { answer: () => undefined, call: () => undefined };
