import type { Answer } from '../../../commands/answer.ts';
import { Problem } from '../../../core/problem.ts';
import type { Call } from '../asked/call.ts';
import { say } from '../../../core/wording/say.ts';
import { readAnswer, readCall } from './body.ts';
import type { HeldDesk } from './holder.ts';

type Store = Pick<HeldDesk, 'held'>;

/** @throws Problem when it is gone, or not for this person. */
export function heldAnswer({ held }: Store, id: string, personId: string): Answer {
  const found = held.find(id, 'answer', personId);
  return (found && readAnswer(found.body)) ?? gone();
}

/** @throws Problem when it is gone, or not for this person. */
export function heldCall({ held }: Store, id: string, personId: string): Call {
  const found = held.find(id, 'call', personId);
  return (found && readCall(found.body)) ?? gone();
}

function gone(): never {
  throw new Problem(say('discord.answerGone'), { field: 'button' });
}
