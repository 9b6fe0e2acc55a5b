import { printed } from '../../core/log/value.ts';
import { parameter } from '../../core/water/parameter.ts';
import { answer, type Answer, type Fact, type NextAction } from '../answer.ts';
import { action } from '../calls.ts';
import type { Reading, Tank } from '../keep.ts';
import { spanWords } from '../log/words.ts';
import type { Reminder } from '../reminder.ts';
import { occurrenceAfter, placeWords } from './progress.ts';
import { ruleWords, timeFact } from './times.ts';
import { say } from '../../core/wording/say.ts';

/** A reminder that is due, and who reads the message. */
export interface DueParts {
  readonly reminder: Reminder;
  readonly tank?: Tank;
  /** The newest reading of each of its parameters. */
  readonly last: readonly Reading[];
  readonly dueMs: number;
  readonly nowMs: number;
  /** IANA zone the times are told in. */
  readonly zone: string;
  readonly to: 'owner' | 'sitter' | 'channel';
}

/** Later than this is said to be late; a full minute of sending is not. */
const LATE_MS = 10 * 60_000;

/** The message that is sent. In a channel others read it: nothing of the tank but what the member's own text says. */
export function dueAnswer(parts: DueParts): Answer {
  const { reminder, tank, last, dueMs, nowMs, zone, to } = parts;
  const named = tank === undefined || to === 'channel' ? '' : `${tank.name}: `;
  const isLate = nowMs - dueMs > LATE_MS;
  const place = placeWords(reminder, dueMs);
  const readings =
    to === 'channel' || tank === undefined ? [] : last.map((one) => lastFact(one, tank, nowMs));
  return answer({
    headline: `${named}${reminder.text}${isLate ? ', late' : ''}.`.replace(/([.!?])\.$/, '$1'),
    read: isLate
      ? [`It was due ${spanWords(nowMs - dueMs)} ago; I was away. One message stands for all I missed of it.`]
      : [],
    facts: [
      timeFact(isLate ? 'Was due' : 'Due', dueMs, zone),
      ...(place === undefined ? [] : [{ label: 'Which', value: place }]),
      ...readings,
      ...followFacts(parts),
    ],
    next: actions(parts),
  });
}

function lastFact({ parameter: id, value, atMs }: Reading, { units }: Tank, nowMs: number): Fact {
  const age = atMs > nowMs ? '' : `, ${spanWords(nowMs - atMs)} ago`;
  return { label: `Last ${parameter(id).label}`, value: `${printed(id, value, units)}${age}` };
}

function followFacts({ reminder, dueMs, nowMs, zone, to }: DueParts): readonly Fact[] {
  const { rule } = reminder;
  if (to === 'channel' || rule.every === 'once') return [];
  if (rule.every === 'after') {
    const days = `${rule.days} ${rule.days === 1 ? 'day' : 'days'}`;
    return [{ label: 'Next', value: `${days} after you press Done` }];
  }
  const nextMs = occurrenceAfter(reminder, Math.max(dueMs, nowMs));
  return [
    { label: 'Repeats', value: ruleWords(reminder) },
    nextMs === undefined
      ? { label: 'Next', value: 'none, this was the last' }
      : timeFact('Next', nextMs, zone),
  ];
}

/** Calls that say which occurrence they belong to, so that they work for months and count once. */
function actions({ reminder, dueMs, to }: DueParts): readonly NextAction[] {
  const input = { reminder: String(reminder.id), due: String(Math.floor(dueMs / 1000)) };
  const enter: NextAction = action(say('remind.enterReading'), 'remind enter', input, ['readings']);
  const measures = reminder.parameters.length > 0 && to !== 'sitter';
  return [
    ...(measures ? [enter] : []),
    action(say('remind.done'), 'remind done', input),
    action(say('remind.later'), 'remind later', input),
    action(say('remind.skip'), 'remind skip', input),
  ];
}
