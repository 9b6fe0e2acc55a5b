import { sayInstant } from '../../core/schedule/say.ts';
import { instantOf, nextClockChange, type ClockChange } from '../../core/schedule/zone.ts';
import { clockTime, TIME } from '../../core/words/repeat-said.ts';
import { localTime } from '../../core/words/when.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import type { OwnContext } from '../command.ts';
import { knownZone } from '../zone.ts';

/** The clock change: what to do with the lights, and that a reminder in the hour that goes missing comes once. */
export function clockChangeAnswer(given: string, context: OwnContext): Answer {
  const zone = knownZone(context, context.keep?.tankInUse());
  return answer({
    headline:
      'Your lights may stay as they are or move with the clock, and a daily reminder still comes, once.',
    facts:
      zone === undefined ? UNKNOWN : knownFacts(zone, nextClockChange(zone, context.nowMs), saidTime(given)),
    steps: [
      'Lights: leave the timer on standard time, or move it by the hour, at once or 15 min a day over four days.',
      'See that timers, dosing pumps and feeders do the same; of those that follow the clock that none dosed twice.',
      'Nothing to do for reminders: they keep the time on your clock.',
    ],
    cautions: [
      'A time that is skipped comes an hour on, one that is there twice comes the first time only.',
      'Lights: keep the length of the day; to move them at once does no harm.',
      'Reminders that repeat every so many hours count hours that pass, so their time on the clock moves.',
    ],
    sources: ['practice'],
  });
}

/** Dates of the IANA time zone database, which the zone of the reader would say. */
const UNKNOWN: readonly Fact[] = [
  {
    label: 'For example Chicago',
    value:
      '8 March 2026: 02:30 is not there, a reminder then comes once, at 03:30. 1 November 2026: 01:30 is there twice, it comes once, the first time.',
  },
  { label: 'Europe', value: '29 March and 25 October 2026; many zones never change' },
];

function knownFacts(
  zone: string,
  change: ClockChange | undefined,
  time: string | undefined,
): readonly Fact[] {
  if (change === undefined)
    return [{ label: 'Your clock', value: `${zone} has no change of the clock to come; nothing moves` }];
  const { atMs, minutes } = change;
  const way = minutes > 0 ? 'forward' : 'back';
  const value = `${zone}: ${Math.abs(minutes)} minutes ${way}, ${sayInstant(atMs, zone)}`;
  const clock: Fact = { label: 'Your clock', value, instant: { atMs, zone } };
  return time === undefined ? [clock] : [clock, ringing(zone, change, time)];
}

/** When a daily reminder rings on the day of the change. */
function ringing(zone: string, { atMs, minutes }: ClockChange, time: string): Fact {
  const day = localTime(atMs - 1000, zone).slice(0, 10);
  const comesMs = instantOf(`${day} ${time}`, zone);
  const hourOf = (ms: number): string => localTime(ms, zone).slice(11);
  const isSkipped = hourOf(comesMs) !== time;
  const isTwice = !isSkipped && hourOf(comesMs + Math.abs(minutes) * 60_000) === time;
  const how = isSkipped ? `${hourOf(comesMs)}: ${time} is not there that day` : time;
  return {
    label: `Your reminder at ${time}, ${day}`,
    value: `once, at ${how}${isTwice ? ', the first of the two' : ''}`,
  };
}

function saidTime(given: string): string | undefined {
  const found = TIME.exec(given)?.[1];
  return found === undefined ? undefined : clockTime(found, 'question', given);
}
