import { Problem } from '../../core/problem.ts';
import type { ParameterId } from '../../core/water/parameter.ts';
import type { Repeat } from '../../core/words/repeat.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { action } from '../calls.ts';
import type { OwnContext } from '../command.ts';
import type { Keep, Tank } from '../keep.ts';
import { MOST_REMINDERS, type Place, type Plan, type Progress, type Reminder } from '../reminder.ts';
import type { AskedZone } from '../zone.ts';
import { askedTank, keepOf } from '../tank/asked-tank.ts';
import { firstTimes } from './first-times.ts';
import { started } from './progress.ts';
import { named, ruleWords } from './times.ts';
import { dueOf } from './wake.ts';
import { say } from '../../core/wording/say.ts';

/** What a member wants to be reminded of. */
export interface Wish {
  readonly text: string;
  readonly parameters: readonly ParameterId[];
  readonly tank: Tank | undefined;
  readonly zone: string;
  readonly repeat: Repeat;
  readonly times?: number | undefined;
  readonly place?: Place | undefined;
}

/** The tank that was named, or else the one in use; a reminder needs none. @throws Problem for a name not theirs. */
export function tankOf(context: OwnContext, name: string | undefined): Tank | undefined {
  const keep = keepOf(context);
  return name === undefined ? keep.tankInUse() : askedTank(keep, name);
}

export function planOf({ text, parameters, tank, zone, repeat, times, place }: Wish): Plan {
  const { anchor, rule } = repeat;
  return {
    text,
    parameters,
    tankId: tank?.id,
    anchor,
    zone,
    rule,
    times,
    place: place ?? { kind: 'direct' },
  };
}

/** Sets one and reads it back. `read` is what was understood before. */
export function setReminder(
  wish: Wish,
  context: OwnContext,
  { read, next }: Pick<AskedZone, 'read' | 'next'>,
): Answer {
  const keep = keepOf(context);
  const { nowMs } = context;
  const plan = planOf(wish);
  const before = sameAs(plan, keep.reminders());
  if (before !== undefined) return setAlready(before, nowMs);
  const progress = startedOr(plan, nowMs);
  makeRoom(keep, 1, nowMs);
  const reminder = keep.addReminder(plan, progress);
  return answer({
    headline: `Set as reminder ${reminder.id}: ${plan.text}, ${ruleWords(plan)}.`,
    read: [...tankLines(wish.tank), ...read, ...wish.repeat.notes],
    facts: [...firstTimes(plan, nowMs), placeFact(plan.place)],
    cautions: placeCautions(plan.place),
    next: [
      ...next,
      action(say('remind.otherTime'), 'remind change', { reminder: String(reminder.id) }, ['when']),
      action(say('remind.remove'), 'remind remove', { reminder: String(reminder.id) }),
      action(say('remind.myReminders'), 'remind list', {}),
    ],
  });
}

/** @throws Problem where every time of it is past. */
export function startedOr(plan: Plan, nowMs: number): Progress {
  const progress = started(plan, nowMs);
  if (progress.nextMs !== undefined) return progress;
  throw new Problem(say('remind.allItsTimesPast'), {
    field: 'when',
    hint: say('remind.nameLaterStartOr'),
  });
}

/** One that says the same and still comes: a button pressed twice sets nothing twice. */
export function sameAs(plan: Plan, reminders: readonly Reminder[]): Reminder | undefined {
  return reminders.find((one) => dueOf(one) !== undefined && sameness(one) === sameness(plan));
}

function sameness({ text, tankId, rule, anchor, zone, place, times }: Plan): string {
  return JSON.stringify([text, tankId, rule, anchor, zone, place, times]);
}

function setAlready(reminder: Reminder, nowMs: number): Answer {
  return answer({
    headline: `That is set already: reminder ${named(reminder)}, ${ruleWords(reminder)}.`,
    facts: firstTimes(reminder, nowMs),
    next: [action(say('remind.myReminders'), 'remind list', {})],
  });
}

/** Where there is no room, those that are over and done with make it, the oldest first. */
export function makeRoom(keep: Keep, wanted: number, nowMs: number): void {
  const all = keep.reminders();
  const over = all.filter((one) => isOver(one, nowMs));
  for (const { id } of over.slice(0, Math.max(0, all.length + wanted - MOST_REMINDERS)))
    keep.removeReminder(id);
}

const WEEK_MS = 7 * 86_400_000;

/** Nothing more comes of it, and its last message is a week old. */
function isOver(reminder: Reminder, nowMs: number): boolean {
  const { rule, trouble } = reminder;
  if (dueOf(reminder) !== undefined || trouble !== undefined || rule.every === 'after') return false;
  return started(reminder, nowMs - WEEK_MS).nextMs === undefined;
}

export function tankLines(tank: Tank | undefined): readonly string[] {
  return tank === undefined ? [] : [`for your tank ${tank.name}`];
}

export function placeFact(place: Place): Fact {
  return place.kind === 'direct'
    ? { label: 'Where', value: 'a direct message to you' }
    : { label: 'Where', value: 'posted in', channelId: place.channelId };
}

export function placeCautions(place: Place): readonly string[] {
  return place.kind === 'direct'
    ? []
    : [
        'Others read it in a channel: it shows your text and when it was due, no tank and no reading. Only you can use its buttons.',
      ];
}
