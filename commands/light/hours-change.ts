import { lightBand, par, shownPpfd } from '../../core/light/band.ts';
import {
  dailyLightMol,
  dayVerdict,
  fullHoursFor,
  peakFor,
  usualFullHours,
  usualLitHours,
  type Photoperiod,
} from '../../core/light/daily.ts';
import { USUAL_RAISE_PERCENT } from '../../core/light/ramp.ts';
import { fixed } from '../../core/quantity/format.ts';
import type { Answer, Fact, NextAction } from '../answer.ts';
import { fittingHeadline } from '../fitting.ts';
import { action } from '../calls.ts';
import { daily, duration, TOO_MUCH_SIGNS } from './words.ts';
import { say } from '../../core/wording/say.ts';

/** A peak and the hours it is held. */
export interface Lighting {
  readonly ppfd: number;
  readonly period: Photoperiod;
}

/** What is asked to change: hours of full light, the peak, or both. */
export interface Wanted {
  readonly fullHours?: number | undefined;
  readonly ppfd?: number | undefined;
}

export function totalOf({ ppfd, period }: Lighting): number {
  return dailyLightMol(ppfd, period);
}

/** "8 h full and 2 ramps of 1 h" */
export function periodText({ fullHours, rampHours }: Photoperiod): string {
  return rampHours === 0
    ? duration(fullHours)
    : `${duration(fullHours)} full and 2 ramps of ${duration(rampHours)}`;
}

/** The formula with its numbers: "200 x (8 h + 1 h) x 0.0036 = 6.5 mol/m² a day". */
export function totalWorking(lighting: Lighting): string {
  const { fullHours, rampHours } = lighting.period;
  const hours =
    rampHours === 0 ? `${fixed(fullHours, 2)} h` : `(${fixed(fullHours, 2)} h + ${fixed(rampHours, 2)} h)`;
  return `${fixed(lighting.ppfd, 1)} x ${hours} x 0.0036 = ${daily(totalOf(lighting))}`;
}

export function totalFact(label: string, lighting: Lighting): Fact {
  const value = `${par(lighting.ppfd)}, ${periodText(lighting.period)}: ${daily(totalOf(lighting))}`;
  return { label, value, verdict: dayVerdict(lighting.period) };
}

type Change = Pick<Answer, 'headline' | 'facts' | 'steps' | 'working' | 'dangers' | 'cautions' | 'next'>;

/** Answers a change of hours, of peak, or of both: the missing one is what keeps the daily total. */
export function changeAnswer(now: Lighting, wanted: Wanted): Change {
  const then = lightingThen(now, wanted);
  const tooLong = dayVerdict(then.period) === 'too long';
  const said = `${periodText(now.period)} at ${par(now.ppfd)}`;
  const rises = tooLong ? [] : riseDangers(now, then);
  return {
    headline: tooLong
      ? againstLong(then)
      : fittingHeadline(headline(now, then, wanted, said), headline(now, then, wanted, 'now')),
    facts: [totalFact('now', now), totalFact('then', then)],
    steps: tooLong || isSame(now, then) ? [] : changeSteps(now, then, wanted),
    working: [totalWorking(now), totalWorking(then)],
    dangers: rises,
    cautions: rises.length === 0 ? [] : [TOO_MUCH_SIGNS],
    next: tooLong ? [] : rampNext(now, then),
  };
}

function isSame(now: Lighting, then: Lighting): boolean {
  return now.ppfd === then.ppfd && duration(now.period.fullHours) === duration(then.period.fullHours);
}

/** Per cent by which the daily total changes; 0 where the total is kept. */
function totalChangePercent(now: Lighting, then: Lighting): number {
  return (totalOf(then) / totalOf(now) - 1) * 100;
}

function riseDangers(now: Lighting, then: Lighting): string[] {
  const rises = [
    { of: 'the peak', percent: (then.ppfd / now.ppfd - 1) * 100 },
    { of: 'the daily total', percent: totalChangePercent(now, then) },
  ].filter(({ percent }) => Math.round(percent) > USUAL_RAISE_PERCENT);
  const said = rises.map(({ of, percent }) => `${of} by ${fixed(percent, 0)} %`).join(' and ');
  return [
    ...(said === ''
      ? []
      : [`This raises ${said}: go up about ${USUAL_RAISE_PERCENT} % a week, not in one go.`]),
    ...(lightBand(then.ppfd) === 'very bright'
      ? [`${par(then.ppfd)} is more than most corals are kept at.`]
      : []),
  ];
}

/** What is worked out is rounded to what can be set, whole PAR and minutes, so that the totals are those of what is printed. */
function lightingThen(now: Lighting, wanted: Wanted): Lighting {
  const { rampHours } = now.period;
  const total = totalOf(now);
  if (wanted.fullHours === undefined) {
    const ppfd = wanted.ppfd ?? now.ppfd;
    const hours = fullHoursFor(total, ppfd, rampHours);
    return { ppfd, period: { fullHours: Math.floor(hours * 60 + 1e-6) / 60, rampHours } };
  }
  const period = { fullHours: wanted.fullHours, rampHours };
  return { ppfd: wanted.ppfd ?? shownPpfd(peakFor(total, period)), period };
}

function againstLong({ period }: Lighting): string {
  return `Do not run ${periodText(period)}: stay at ${usualFullHours.low} to ${usualFullHours.high} h of main light, at most ${usualLitHours.high} h with the ramps.`;
}

/** `before` is what is run now, in full or as that word. */
function headline(now: Lighting, then: Lighting, wanted: Wanted, before: string): string {
  const after = `${periodText(then.period)} at ${par(then.ppfd)}`;
  if (isSame(now, then)) return `Change nothing: ${after} is what you run now, ${daily(totalOf(now))}.`;
  if (wanted.fullHours === undefined) return `Run ${after}: ${keeps(now, then, before)}.`;
  if (wanted.ppfd === undefined) {
    return `Set the peak to ${par(then.ppfd)}: ${periodText(then.period)} then ${keeps(now, then, before)}.`;
  }
  const changePercent = totalChangePercent(now, then);
  const size = fixed(Math.abs(changePercent), 0);
  if (size === '0') return `${after}: ${keeps(now, then, before)}.`;
  const direction = changePercent > 0 ? 'more' : 'less';
  return `${after} gives ${daily(totalOf(then))}, ${size} % ${direction} than ${before}.`;
}

/** "gives the same 5.8 mol/m² a day as 8 h at 200 PAR", or both totals where rounding down parts them. */
function keeps(now: Lighting, then: Lighting, before: string): string {
  const [was, is] = [daily(totalOf(now)), daily(totalOf(then))];
  return was === is ? `gives the same ${is} as ${before}` : `gives ${is}, about the ${was} of ${before}`;
}

function changeSteps(now: Lighting, then: Lighting, wanted: Wanted): readonly string[] {
  if (wanted.fullHours !== undefined && wanted.ppfd !== undefined) {
    return [
      `Change slowly: hours by about half an hour a week, a brighter peak by at most ${USUAL_RAISE_PERCENT} % a week.`,
      'One of the two at a time.',
    ];
  }
  const longer = then.period.fullHours > now.period.fullHours;
  const order = longer ? 'lower the peak first, then add hours' : 'take hours off first, then raise the peak';
  return [`Change by about half an hour of light a week, the peak to match: ${order}.`];
}

function rampNext(now: Lighting, then: Lighting): NextAction[] {
  if (then.ppfd <= now.ppfd) return [];
  return [action(say('light.planBrighterPeak'), 'light ramp', { now: par(now.ppfd), goal: par(then.ppfd) })];
}
