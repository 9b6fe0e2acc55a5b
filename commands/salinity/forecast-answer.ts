import { afterEvaporation, goneUntil } from '../../core/change/evaporation.ts';
import { mixRange, saltTopOffFraction } from '../../core/change/salt.ts';
import { fixed, significant } from '../../core/quantity/format.ts';
import { limitsOf } from '../../core/water/limits.ts';
import { salinityPacePpt } from '../../core/water/salinity-pace.ts';
import type { SalinityReading } from '../../core/water/salinity-reading.ts';
import { salinityOff } from '../../core/water/salinity-remark.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { action } from '../calls.ts';
import { percent, type Water } from '../waterchange/pour.ts';
import { days as time } from '../waterchange/rate.ts';
import type { TopOff } from './evaporation.ts';
import { both, ppt, remarkOn } from './print.ts';
import { opened, withSalinity } from '../short/remark-first.ts';
import { say } from '../../core/wording/say.ts';

/** Water that evaporates, and what it is replaced with. `aDay` is a part of the volume. */
export interface Course {
  readonly now: SalinityReading;
  readonly water: Water;
  readonly days: number;
  readonly aDay: number;
  readonly topOff: TopOff;
  readonly read: readonly string[];
}

/** Where salinity is after the days; salt stays in the tank, only water goes. */
export function forecast(course: Course): Answer {
  const { now, days, topOff, read } = course;
  const s = now.practicalSalinity;
  const then = after(course, days);
  const beyond = then === undefined;
  const headline = beyond
    ? `Not for so long: with ${topOff.words} it passes ${mixRange.max} ppt, where the scale ends, after about ${time(daysTo(course, mixRange.max) ?? days)}.`
    : topOff.salinityPpt === 0
      ? `It stays at ${both(s, now.pair)}: fresh water replaces what evaporates, and the salt never left.`
      : `After ${time(days)} with ${topOff.words} it reads about ${both(then, now.pair)}, up from ${ppt(s)}.`;
  const remark = beyond || topOff.salinityPpt === 0 ? undefined : salinityOff(then);
  const given = answer({
    headline: '',
    read,
    facts: factsOf(course, then),
    steps: stepsOf(course),
    working: workingOf(course, then),
    dangers: dangersOf(course, then),
    cautions: staysUsual(then) ? [SEASON] : [],
    sources: ['mixing', 'fm83', 'practice'],
    next: beyond ? [] : nextOf(course, then),
  });
  const off = remark === undefined ? [] : [{ label: 'then', value: remark }];
  return opened(withSalinity(remarkOn(now), [{ label: 'as asked', value: headline }, ...off]), given);
}

const SEASON =
  'Evaporation changes with the season, the fan and the lid: measure it by what the top-off uses.';

function staysUsual(then: number | undefined): boolean {
  const { usual, error = 0 } = limitsOf('salinity');
  return then !== undefined && then <= usual[1] + error;
}

/** Practical salinity after so many days; undefined beyond the scale. */
function after({ now, aDay, topOff }: Course, days: number): number | undefined {
  const s = now.practicalSalinity;
  const { salinityPpt } = topOff;
  const gone = aDay * days;
  if (salinityPpt === undefined && gone > goneUntil(s, mixRange.max)) return undefined;
  const then = salinityPpt === undefined ? afterEvaporation(s, gone) : s + salinityPpt * gone;
  return then > mixRange.max ? undefined : then;
}

/** Days until a higher salinity; undefined where it is not on the way. */
function daysTo({ now, aDay, topOff }: Course, toS: number): number | undefined {
  const s = now.practicalSalinity;
  const { salinityPpt } = topOff;
  if (toS <= s || salinityPpt === 0) return undefined;
  if (salinityPpt === undefined) return goneUntil(s, toS) / aDay;
  return saltTopOffFraction(s, toS, salinityPpt) / aDay;
}

function factsOf(course: Course, then: number | undefined): readonly Fact[] {
  const { water, aDay, days, topOff, now } = course;
  const { usual, error = 0, urgent } = limitsOf('salinity');
  const marks = [
    { label: 'leaves the usual range', at: usual[1] + error },
    { label: 'urgent', at: urgent?.high },
  ];
  return [
    {
      label: 'water that goes',
      value:
        then === undefined
          ? `${water.part(aDay)} a day`
          : `${water.part(aDay)} a day, ${water.part(aDay * days)} in all`,
    },
    ...(then === undefined || topOff.salinityPpt === 0
      ? []
      : [
          {
            label: 'rise a day',
            value: `about ${significant((then - now.practicalSalinity) / days, 2)} ppt`,
          },
        ]),
    ...marks.flatMap(({ label, at }) => {
      const when = at === undefined ? undefined : daysTo(course, at);
      return at === undefined || when === undefined
        ? []
        : [{ label: `${label}, at ${ppt(at)}`, value: `after about ${time(when)}` }];
    }),
  ];
}

function stepsOf({ topOff, water, aDay }: Course): readonly string[] {
  return [
    topOff.salinityPpt === 0
      ? 'Keep topping off with fresh water, to the same mark, best several times a day.'
      : `Top off with fresh (RO) water, ${water.part(aDay)} a day: only water evaporates.`,
    ...(topOff.salinityPpt === undefined
      ? ['Missed days are made up for slowly, over a day or two, not in one pour.']
      : []),
    'Salt water goes in only where salt water came out: spills, skimmate, water changes.',
    'Read it with an instrument checked on a 35 ppt standard, and go on from the reading.',
  ];
}

function workingOf({ now, aDay, days, topOff }: Course, then: number | undefined): readonly string[] {
  if (then === undefined || topOff.salinityPpt === 0) return [];
  const s = fixed(now.practicalSalinity, 2);
  const gone = aDay * days;
  return [
    topOff.salinityPpt === undefined
      ? `salt stays: ${s} / (1 - ${fixed(gone, 4)} x weight of fresh over tank water) = ${fixed(then, 2)} ppt`
      : `salt adds up: ${s} + ${fixed(topOff.salinityPpt, 2)} x ${percent(gone)} = ${fixed(then, 2)} ppt`,
  ];
}

function dangersOf({ now, days, topOff }: Course, then: number | undefined): readonly string[] {
  const aDay = then === undefined ? Infinity : (then - now.practicalSalinity) / days;
  return [
    ...(topOff.salinityPpt === undefined
      ? ['A falling sump runs return pump and heater dry: unplug a heater that is out of the water.']
      : []),
    ...(topOff.salinityPpt !== 0 && aDay > salinityPacePpt.up
      ? [`That is a faster rise than the usual ${salinityPacePpt.up} ppt a day (common practice).`]
      : []),
    ...(staysUsual(then) ? [] : ['Snails, shrimps and corals suffer from it before fish do.']),
  ];
}

function nextOf({ now, topOff }: Course, then: number): Answer['next'] {
  if (topOff.salinityPpt === 0 || then - now.practicalSalinity < 1) return [];
  return [
    action(say('salinity.backDownDayBy'), 'salinity adjust', {
      now: `${fixed(then, 2)} ppt`,
      goal: `${fixed(now.practicalSalinity, 2)} ppt`,
    }),
  ];
}
