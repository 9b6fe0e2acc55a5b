import { logFailure } from '../../log.ts';
import type { Logger } from '../../log.ts';
import type { Held, HeldBodies } from '../../store/held.ts';
import type { Holder } from '../message/holder.ts';
import { answerBody, callBody } from './body.ts';

/** Where what buttons stand for is kept. */
export interface HeldDesk {
  readonly held: Pick<HeldBodies, 'hold' | 'find'>;
  /** A short id, never the same twice, that nobody guesses: letters, digits, - and _. */
  readonly newHeldId: () => string;
  readonly log: Logger;
}

/** For whom a message is, and whether only they see it. */
export interface Whose {
  readonly personId: string;
  readonly isPrivate: boolean;
}

/** Holds for one message; what cannot be held is logged. */
export function holderFor({ held, newHeldId, log }: HeldDesk, whose: Whose): Holder {
  const hold = (kind: Held['kind'], body: string): string | undefined => {
    try {
      const id = newHeldId();
      held.hold({ ...whose, id, kind, body });
      return id;
    } catch (error) {
      logFailure(log, error, 'an answer was not held');
      return undefined;
    }
  };
  return {
    answer: (given) => hold('answer', answerBody(given)),
    call: (call) => hold('call', callBody(call)),
  };
}
