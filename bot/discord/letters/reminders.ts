import { steadyClock, systemClock } from '../../clock/clock.ts';
import type { Clock } from '../../clock/clock.ts';
import { openLoop } from '../../clock/loop.ts';
import type { Loop, LoopParts } from '../../clock/loop.ts';
import { createPace } from '../../clock/pace.ts';
import type { HeldDesk } from '../held/holder.ts';
import { openPost } from './post.ts';

/** Discord takes 50 requests a second of one bot in all ("Rate Limits", global); the rest is left to answers. */
const requestsPerSecond = 40;

export interface ReminderParts extends Pick<LoopParts, 'due' | 'keepFor'>, HeldDesk {
  readonly token: string;
  readonly apiBase: string;
}

/** The loop that sends what is due on Discord, not yet started. */
export function reminderLoop(parts: ReminderParts, clock: Clock = systemClock): Loop {
  const turn = createPace(steadyClock, requestsPerSecond);
  return openLoop({ ...parts, clock, post: openPost({ ...parts, turn }) });
}
