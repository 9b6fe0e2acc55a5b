import { sayInstant } from '../../core/schedule/say.ts';
import { instantOf, nextClockChange, type ClockChange } from '../../core/schedule/zone.ts';
import { TIME } from '../../core/words/repeat-said.ts';
import { localTime } from '../../core/words/when.ts';
import { readClock } from '../../core/quantity/dated.ts';
import type { Heard } from '../../core/words/hear.ts';
import { answer, type Fact } from '../answer.ts';
import { howOften } from '../checkup/how-often.ts';
import { knownZone } from '../zone.ts';
import { says, type Intent } from './intent.ts';

/** "how often do I test what": the usual table, and reminders for it. */
export const howOftenIntent: Intent = (heard, context) => {
  const asks =
    says(heard, 'how often', 'how regularly', 'what schedule', 'which schedule', 'test(?:ing)? schedule') &&
    says(heard, 'tests?', 'testing', 'tested', 'measure');
  if (!asks && !asksWhat(heard)) return undefined;
  return howOften(context);
};

/** "what should i test weekly", "which tests do i need", "do i have to test magnesium every week". */
function asksWhat(heard: Heard): boolean {
  return (
    heard.said.length === 0 &&
    says(
      heard,
      '(?:what|which)(?: else)? (?:should|do|must|to) (?:i |we )?(?:have to |need to )?(?:test|measure)(?: for)?(?! kit)',
      '(?:what|which) tests do i (?:need|do|run)',
      '(?:do i (?:need|have) to|must i|should i) test [a-z0-9]+ (?:every|each|daily|weekly|monthly)',
    )
  );
}

/** The clock change: what to do with the lights, and that a reminder in the hour that goes missing comes once. */
export const clockChangeIntent: Intent = (heard, context) => {
  const asks = says(
    heard,
    'clocks? (?:go(?:es)?|going|will go|change|changes|are changing|move|shift)(?: (?:forward|back))?',
    'daylight[- ]saving(?:s)?(?: time)?',
    'dst',
    'time change',
  );
  if (!asks) return undefined;
  const zone = knownZone(context, context.keep?.tankInUse());
  const change = zone === undefined ? undefined : nextClockChange(zone, context.nowMs);
  return answer({
    headline:
      'Your lights may stay as they are or move with the clock, and a daily reminder still comes, once.',
    facts: zone === undefined ? UNKNOWN : knownFacts(zone, change, heard.text),
    steps: [
      'Lights: keep the length of the day. Leave the timer on standard time, or move it by the hour: at once does no harm, a quarter of an hour a day over four days is smoother.',
      'See that timers, dosing pumps and feeders do the same: some follow the clock by themselves, and then only look that none dosed twice.',
      'Nothing to do for reminders: they keep the time on your clock. A time that is skipped comes an hour on, one that is there twice comes the first time only.',
    ],
    cautions: [
      'Reminders that repeat every so many hours count hours that pass, so their time on the clock moves.',
    ],
    sources: ['practice'],
  });
};

const UNKNOWN: readonly Fact[] = [
  {
    label: 'For example Chicago',
    value:
      '8 March 2026: 02:30 is not there, a reminder then comes once, at 03:30. 1 November 2026: 01:30 is there twice, it comes once, the first time.',
  },
  { label: 'Europe', value: '29 March and 25 October 2026; many zones never change' },
];

function knownFacts(zone: string, change: ClockChange | undefined, text: string): readonly Fact[] {
  if (change === undefined)
    return [{ label: 'Your clock', value: `${zone} has no change of the clock to come; nothing moves` }];
  const { atMs, minutes } = change;
  const way = minutes > 0 ? 'forward' : 'back';
  const before = localTime(atMs - 1000, zone).slice(0, 10);
  const facts: Fact[] = [
    {
      label: 'Your clock',
      value: `${zone}: ${Math.abs(minutes)} minutes ${way}, ${sayInstant(atMs, zone)}`,
      atMs,
    },
  ];
  const time = saidTime(text);
  if (time === undefined) return facts;
  const comesMs = instantOf(`${before} ${time}`, zone);
  const there = localTime(comesMs, zone).slice(11);
  const how = there === time ? `once, at ${time}` : `once, at ${there}: ${time} is not there that day`;
  const twice =
    there === time && localTime(comesMs + Math.abs(minutes) * 60_000, zone).slice(11) === time
      ? `${how}, the first of the two`
      : how;
  return [...facts, { label: `Your reminder at ${time}, ${before}`, value: twice, atMs: comesMs }];
}

function saidTime(text: string): string | undefined {
  const found = new RegExp(TIME.source, 'i').exec(text)?.[1];
  const time = found === undefined ? undefined : readClock(found.toLowerCase());
  if (time === undefined || time.hour > 23 || time.minute > 59) return undefined;
  return `${String(time.hour).padStart(2, '0')}:${String(time.minute).padStart(2, '0')}`;
}
