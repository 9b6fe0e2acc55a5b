import { compoundsFor } from '../../core/dosing/compound.ts';
import { fixed, significant } from '../../core/quantity/format.ts';
import { daysUntil, type Until } from '../../core/trend/until.ts';
import { limitsOf, sideOf, urgentSide } from '../../core/water/limits.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { printed } from '../../core/log/value.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { action } from '../calls.ts';
import { waste } from '../waterchange/level.ts';
import { days as time } from '../waterchange/rate.ts';
import { shortLimits } from '../short/limits.ts';
import { say } from '../../core/wording/say.ts';

/** A level on its way, in the parameter's own unit; `perDay` is below 0 where it falls. */
export interface Course {
  readonly id: ParameterId;
  readonly from: number;
  readonly perDay: number;
  readonly read: readonly string[];
}

/** Nobody's use holds for longer. Own choice. */
const MOST_DAYS = 365;

/** When the goal is reached; `isSaid` where it is the member's own and not the end of the usual range. */
export function untilGoal(course: Course, goal: number, isSaid: boolean): Answer {
  const { id, from, perDay, read } = course;
  const { label, kitResolution, unit } = parameter(id);
  const until = daysUntil(from, goal, perDay, kitResolution / 2);
  const name = `${isSaid ? '' : `the end of its usual range, `}${printed(id, goal)}`;
  if (Math.abs(goal - from) < kitResolution / 2) return isThere(course, name);
  if (until === undefined || until.days > MOST_DAYS) return notThere(course, name, until);
  const line = `${capital(label)} gets from ${printed(id, from)} to ${name} in about ${time(until.days)}, if ${rate(course)} goes on`;
  const error = `${time(until.low)} to ${time(until.high)}`;
  const whole = `${line} (${error} by the kit’s own error).`;
  const isWhole = whole.length <= shortLimits.headline;
  return answer({
    headline: isWhole ? whole : `${line}.`,
    read,
    facts: [...(isWhole ? [] : [{ label: 'by the kit’s own error', value: error }]), ...marks(course, goal)],
    steps: stepsFor(course, until),
    working: [
      `(${significant(goal, 4)} - ${significant(from, 4)}) / ${significant(perDay, 3)} ${unit} a day = ${significant(until.days, 3)} days`,
      `the reading may be off by half of ${kitResolution} ${unit}: ± ${significant(kitResolution / 2 / Math.abs(perDay), 2)} days`,
    ],
    dangers: dangersFor(course),
    cautions: [A_MODEL],
    sources: ['practice'],
    next: nextFor(course),
  });
}

/** Where it is after a time. */
export function afterDays(course: Course, days: number): Answer {
  const { id, from, perDay, read } = course;
  const { label, kitResolution, unit } = parameter(id);
  const then = from + perDay * days;
  if (days > MOST_DAYS || then < 0 || sideOf(then, limitsOf(id).believable) !== undefined) {
    const [low, high] = limitsOf(id).believable;
    return untilGoal(course, perDay < 0 ? low : high, true);
  }
  const [usualLow, usualHigh] = limitsOf(id).usual;
  const side = sideOf(then, [usualLow, usualHigh]);
  const place = side === undefined ? 'still usual' : side === 'low' ? 'below the usual' : 'above the usual';
  return answer({
    headline: `In ${time(days)} ${label} reads about ${printed(id, then)}, ${place} (${usualLow} to ${usualHigh} ${unit}), if ${rate(course)} goes on.`,
    read,
    facts: marks(course, undefined),
    steps: stepsFor(course, { days, low: days, high: days }),
    working: [
      `${significant(from, 4)} ${perDay < 0 ? '-' : '+'} ${significant(Math.abs(perDay), 3)} x ${significant(days, 3)} = ${significant(then, 4)} ${unit}, give or take half of ${kitResolution} ${unit}`,
    ],
    dangers: dangersFor(course),
    cautions: [A_MODEL],
    sources: ['practice'],
    next: nextFor(course),
  });
}

/** A pace that is a slip of the pen or of the kit. */
export function tooFastToBelieve({ id, perDay, read }: Course): Answer {
  const { label, unit } = parameter(id);
  return answer({
    headline: `Retest first: ${significant(Math.abs(perDay), 3)} ${unit} of ${label} a day is more than any tank moves by itself.`,
    read,
    steps: [
      'Look at the unit, and at the time between the readings.',
      'Test again with the same kit before you reckon on.',
    ],
    sources: ['practice'],
  });
}

function isThere({ id, from, read }: Course, name: string): Answer {
  return answer({
    headline: `It is there now, as near as a kit can tell: ${parameter(id).label} ${printed(id, from)}, asked about ${name}.`,
    read,
    steps: ['Test again tomorrow at the same hour.'],
    sources: ['practice'],
  });
}

function notThere(course: Course, name: string, until: Until | undefined): Answer {
  const { id, from, perDay, read } = course;
  const { label } = parameter(id);
  const isAway = until === undefined;
  return answer({
    headline: isAway
      ? `Never that way: ${label} is at ${printed(id, from)} and ${perDay < 0 ? 'falls' : 'climbs'}, away from ${name}.`
      : `Not within a year: ${label} at ${printed(id, from)} moves too slowly to get to ${name}.`,
    read,
    facts: marks(course, undefined),
    steps: [
      isAway
        ? 'Look which way it goes: use is for a fall, rise for a climb. Test again with the same kit.'
        : 'Test again in a week or two: so slow a move may be the kit’s own error.',
    ],
    sources: ['practice'],
  });
}

/** Where it leaves the usual range and where it turns urgent, on the way it goes. */
function marks(course: Course, goal: number | undefined): readonly Fact[] {
  const { id, from, perDay } = course;
  const { usual, urgent = {} } = limitsOf(id);
  const falls = perDay < 0;
  const edges = [
    { label: 'leaves the usual range', at: falls ? usual[0] : usual[1] },
    { label: 'urgent', at: falls ? urgent.low : urgent.high },
  ];
  return edges.flatMap(({ label, at }) => {
    const until = at === undefined || at === goal ? undefined : daysUntil(from, at, perDay);
    if (at === undefined || until === undefined || until.days > MOST_DAYS) return [];
    return [{ label: `${label}, at ${printed(id, at)}`, value: `in about ${time(until.days)}` }];
  });
}

function stepsFor({ id, perDay }: Course, { days }: Until): readonly string[] {
  const { label } = parameter(id);
  return [
    `Test ${label} again at half the time, ${time(days / 2)} from now, with the same kit, and reckon anew.`,
    ...(perDay < 0 && compoundsFor(id).length > 0
      ? ['A use that is known can be replaced day by day (/dose daily), so that it never gets there.']
      : []),
    ...(perDay > 0 && waste.has(id)
      ? ['Find what makes it: feeding, dirt, dead animals. /waterchange routine says what holds it.']
      : []),
    ...(perDay > 0 && !waste.has(id) ? ['Stop or cut what adds it.'] : []),
  ];
}

const A_MODEL =
  'A steady pace is a model: growth slows as the level falls, feeding and stock change the rest.';

function dangersFor({ id, from, perDay }: Course): readonly string[] {
  const { pace } = limitsOf(id);
  const { label, unit } = parameter(id);
  const most = perDay < 0 ? pace?.down : pace?.up;
  const side = urgentSide(id, from);
  return [
    ...(side === undefined
      ? []
      : [`${capital(label)} ${printed(id, from)} is urgent already: act on that first (/urgent).`]),
    ...(most !== undefined && Math.abs(perDay) > most * (1 + 1e-9)
      ? [
          `That is faster than ${label} should move: ${most} ${unit} a day is the usual limit (common practice).`,
        ]
      : []),
  ];
}

function nextFor({ id, from, perDay }: Course): Answer['next'] {
  const { unit } = parameter(id);
  const amount = `${fixed(Math.abs(perDay), 4)} ${unit} a day`;
  if (perDay < 0 && compoundsFor(id).length > 0)
    return [action(say('water.whatReplacesEachDay'), 'dose daily', { of: id, use: amount })];
  if (perDay > 0 && (id === 'nitrate' || id === 'phosphate')) {
    const input = { of: id, rise: amount, now: `${fixed(from, 4)} ${unit}` };
    return [action(say('water.waterChangesHold'), 'waterchange routine', input, ['share'])];
  }
  return [];
}

function rate({ id, perDay }: Course): string {
  return `${perDay < 0 ? 'a fall' : 'a rise'} of ${significant(Math.abs(perDay), 3)} ${parameter(id).unit} a day`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
