import { isEither } from '../../../core/language/either.ts';
import { met } from '../../../core/language/met.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { primer } from '../../../core/care/primers/cards.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { changedDayAnswer, usualDayAnswer, whichDayAnswer } from '../../light/day-answer.ts';
import { dimCommand } from '../../light/dim.ts';
import { hoursCommand } from '../../light/hours.ts';
import { newLampAnswer, settingAnswer } from '../../light/lamp-answers.ts';
import { luxCommand } from '../../light/lux.ts';
import { parToLuxAnswer } from '../../light/par-to-lux.ts';
import { rampCommand } from '../../light/ramp.ts';
import { rangeCommand } from '../../light/range.ts';
import { percent } from '../../waterchange/pour.ts';
import { cardAnswer } from '../../primer/card-answer.ts';
import { clockChangeAnswer } from '../../remind/clock-change.ts';
import { call } from '../../called.ts';
import { isUnclear } from '../../primer/particular.ts';
import type { Row } from '../row.ts';
import { allLuxOf, coralsOf, originOf, parsOf } from './coral-said.ts';
import { readableAs } from './readable-as.ts';
import { lampKind, lampStrength } from './lamp-said.ts';

export const lightRows: readonly Row[] = [
  {
    kind: 'light-hours',
    label: 'ask.kindLightHours',
    uses: ['hours', 'light', 'span'],
    answer: hoursOf,
  },
  {
    kind: 'light-lamp',
    label: 'ask.kindLightLamp',
    uses: ['percents', 'light', 'corals'],
    computes: (frame) => {
      const { percents = [], light = [] } = frame.slots;
      // One setting and no card that is clear: what a setting can tell.
      const isLone = percents.length === 1 && light.length === 0 && isUnclear(frame);
      return (
        rampOf(frame) !== undefined || isLone || (light.length > 0 && percents.length + light.length > 1)
      );
    },
    answer: lampOf,
  },
  {
    kind: 'lux',
    label: 'ask.kindLux',
    uses: ['lux', 'light', 'percents', 'corals'],
    answer: (frame, context) => {
      const [lux, ...others] = allLuxOf(frame);
      if (lux !== undefined) {
        const given = call(luxCommand, { reading: lux, lamp: lampKind(frame) }, context);
        return { ...given, facts: [...besides(lux, others), ...given.facts] };
      }
      const [reading] = parsOf(frame);
      if (reading !== undefined) return parToLuxAnswer(reading);
      const [one] = coralsOf(frame);
      return one === undefined
        ? cardAnswer(primer('PAR'))
        : call(
            rangeCommand,
            {
              coral: one.name,
              origin: originOf(frame),
              setting: frame.slots.percents?.[0],
              lamp: lampStrength(frame),
            },
            context,
          );
    },
  },
];

/** Other readings of the same meter: what lux can tell is the part of the first, under one lamp. */
function besides(first: string, others: readonly string[]): Answer['facts'] {
  const base = readableAs('illuminance', first);
  return others.flatMap((text) => {
    const value = readableAs('illuminance', text);
    if (value === undefined || base === undefined) return [];
    return [{ label: text, value: `${percent(value / base)} of the light at ${first}, under the same lamp` }];
  });
}

/** The longest day there is, h. */
const DAY_HOURS = 24;

function hoursOf(frame: Frame, context: OwnContext): Answer {
  const { scanned, given } = frame.reading;
  if (met(scanned, 'times.clockChange')) return clockChangeAnswer(given, context);
  const [first, second, third] = hoursSaid(frame);
  const reading = parsOf(frame).find(({ text, value }) => text !== String(value) || value > DAY_HOURS);
  const isChange = first !== undefined && second !== undefined && third === undefined && first !== second;
  const isTwoChannels = met(scanned, 'looks.blue');
  if (reading !== undefined)
    return call(
      hoursCommand,
      {
        reading: reading.text,
        hours: first === undefined ? undefined : `${first} h`,
        goal: isChange && !isTwoChannels ? `${second} h` : undefined,
      },
      context,
    );
  if (isTwoChannels) return usualDayAnswer(undefined);
  if (isChange && isEither(scanned, first, second)) return whichDayAnswer(first, second);
  return isChange ? changedDayAnswer(first, second) : usualDayAnswer(first);
}

/** Hours of light that were said: as settings of the lamp, or as how long it burns. "A day" is no such time. */
function hoursSaid({ slots: { hours = [], spans = [] } }: Frame): readonly number[] {
  return [...hours, ...spans]
    .flatMap((text) => readableAs('hours', text) ?? [])
    .filter((value) => value > 0 && value <= DAY_HOURS);
}

/** Cards that a rise from one setting to another is about. */
const OF_PACE: ReadonlySet<string> = new Set(['raise pace', 'back up']);

/** Two settings of one lamp, where asked is how fast from one to the other. */
function rampOf({ slots: { percents = [], light = [] }, cards: [card], reading: { scanned } }: Frame) {
  const [now, goal, more] = percents;
  const isPace = OF_PACE.has(card?.name ?? '') || met(scanned, 'manner.askPace');
  if (now === undefined || goal === undefined || more !== undefined || light.length > 0) return undefined;
  return isPace ? { now, goal } : undefined;
}

function lampOf(frame: Frame, context: OwnContext): Answer | undefined {
  const ramp = rampOf(frame);
  if (ramp !== undefined) return call(rampCommand, ramp, context);
  const [reading, goal] = parsOf(frame);
  const [one, other] = coralsOf(frame);
  const [setting] = frame.slots.percents ?? [];
  const isNew = met(
    frame.reading.scanned,
    'deeds.acclimates',
    'times.newAge',
    'parts.change',
    'deeds.setsUp',
  );
  if (reading !== undefined && goal !== undefined && setting === undefined)
    return call(rampCommand, { now: reading.text, goal: goal.text }, context);
  if (reading !== undefined && goal !== undefined && setting !== undefined && !isNew)
    return call(dimCommand, { reading: reading.text, at: setting, goal: goal.text }, context);
  if (isNew && (reading === undefined || goal !== undefined)) return newLampAnswer();
  if (one === undefined || other !== undefined) return settingAnswer(setting);
  return call(
    rangeCommand,
    { coral: one.name, origin: originOf(frame), reading: reading?.text, setting, lamp: lampStrength(frame) },
    context,
  );
}
