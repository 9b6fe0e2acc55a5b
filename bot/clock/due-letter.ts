import { forAsker } from '../../commands/for-asker.ts';
import type { Keep } from '../../commands/keep.ts';
import type { Place } from '../../commands/reminder.ts';
import { dueAnswer } from '../../commands/remind/due-answer.ts';
import { say } from '../../core/wording/say.ts';
import type { DueReminder } from './due.ts';
import type { Letter } from './post.ts';

const direct: Place = { kind: 'direct' };

/** The letter of a due reminder: to the sitter where there is one, else where its owner wants it. */
export function dueLetter(due: DueReminder, keep: Keep, nowMs: number): Letter {
  const { reminder, ownerId, handOver } = due;
  if (handOver !== undefined) return letter(due, keep, nowMs, handOver.sitterId, direct, 'sitter');
  const { place } = reminder;
  return letter(due, keep, nowMs, ownerId, place, place.kind === 'channel' ? 'channel' : 'owner');
}

/** The same in a direct message to its owner, after it could not be delivered elsewhere; undefined where that was it. */
export function elsewhere(due: DueReminder, keep: Keep, nowMs: number, why: string): Letter | undefined {
  const { reminder, ownerId, handOver } = due;
  if (handOver === undefined && reminder.place.kind === 'direct') return undefined;
  const own = letter(due, keep, nowMs, ownerId, direct, 'owner');
  const value = say(handOver === undefined ? 'schedule.notInChannel' : 'schedule.notToSitter', { why });
  const facts = [{ label: say('schedule.whyHere'), value }, ...own.answer.facts];
  return { ...own, answer: { ...own.answer, facts } };
}

function letter(
  { reminder, dueMs, attempts }: DueReminder,
  keep: Keep,
  nowMs: number,
  toPersonId: string,
  place: Place,
  to: 'owner' | 'sitter' | 'channel',
): Letter {
  const { id, tankId, parameters, zone } = reminder;
  const tank = keep.tanks().find((each) => each.id === tankId);
  const newest = tank === undefined ? [] : keep.latest(tank.id);
  const last = newest.filter(({ parameter }) => parameters.includes(parameter));
  const plain = dueAnswer({ reminder, ...(tank && { tank }), last, dueMs, nowMs, zone, to });
  const due = forAsker(plain, reminder.text, { nowMs, keep });
  const mark = due.next.find(({ command }) => command === 'remind done');
  const nonce = `r${id}-${Math.floor(dueMs / 1000)}`;
  // In a channel many read it, and of a sitter nothing is looked up.
  const locale = to === 'owner' ? keep.locale() : undefined;
  return { toPersonId, place, answer: due, nonce, mark, attempts, locale };
}
