import { z } from 'zod';
import { altText } from '../../core/picture/alt.ts';
import { MOST_PANELS } from '../../core/picture/trend-data.ts';
import { trendSvg } from '../../core/picture/trend.ts';
import { Problem } from '../../core/problem.ts';
import { significant } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { MS_PER_DAY } from '../../core/trend/dated.ts';
import { findParameter, parameter, type ParameterId } from '../../core/water/parameter.ts';
import { MOST_READINGS, USE_DAYS } from '../../core/trend/use.ts';
import { answer, type Answer } from '../answer.ts';
import { defineCommand, type Context } from '../command.ts';
import type { Reading, Tank } from '../keep.ts';
import { quantityOption, textOption } from '../options.ts';
import { askedTank, keepOf } from '../tank/asked-tank.ts';
import { inZone } from '../zone.ts';
import { askedMeasured } from './asked-measured.ts';
import { loggedSince, type Logged } from './logged-use.ts';
import { oneTrend, type Method, type OneTrend } from './trend-one.ts';
import { alertsOf, factsOf, headlineOf, listed, workingOf } from './trend-words.ts';
import { momentsOf, timeOf, zoneLine } from './words.ts';
import { firstSentence, sentencesOf } from '../../core/words/sentence.ts';
import { fittingHeadline } from '../fitting.ts';
import { say } from '../../core/wording/say.ts';

const USUAL: readonly ParameterId[] = ['alkalinity', 'calcium', 'nitrate', 'phosphate'];
const ONLY_LOGGED =
  'I only see what is logged: between two readings a value may have moved faster, and back.';

export const trendCommand = defineCommand({
  path: ['log', 'trend'],
  summary: 'Where your readings are heading, with the error of it, as numbers and a picture',
  example: '/log trend of:alk, ca over:90 days',
  private: true,
  options: z.strictObject({
    of: textOption('One or several: alk, ca, nitrate', { suggest: 'parameter' }).optional(),
    over: quantityOption('days', 'How far back, e.g. 30 days; 90 days if left out').optional(),
    method: z
      .enum(['robust', 'straight'])
      .describe('robust bears a wild reading (if left out); straight is least squares')
      .optional(),
    tank: textOption('Which of your tanks, if not the one in use', { suggest: 'tank' }).optional(),
  }),
  run: (input, context): Answer => {
    const keep = keepOf(context);
    const tank = askedTank(keep, input.tank);
    const here = inZone(context, tank);
    const days = askedDays(input.over);
    const fromMs = context.nowMs - days * MS_PER_DAY;
    const ids = input.of === undefined ? USUAL : askedSeveral(input.of);
    const logged = ids
      .map((id) => ({ id, ...loggedSince(keep, tank, id, fromMs, context.nowMs) }))
      .filter(({ readings }) => input.of !== undefined || readings.length > 0);
    const read = [
      `${tank.name}, the last ${significant(days, 3)} days: since ${timeOf(fromMs, here)} (${zoneLine(here)})`,
      ...logged.flatMap(({ id, readings }) => countLines(id, readings)),
    ];
    const method = input.method ?? 'robust';
    const all = trendsOf(tank, logged, method);
    const instants = momentsOf([fromMs], here);
    if (all.every(({ trend }) => trend === undefined))
      return { ...tooFew(tank, input.of === undefined, ids, read), instants };
    return { ...trendAnswer(tank, all, method, read, days, here), instants };
  },
});

type LoggedOne = Logged & { readonly id: ParameterId };

function askedDays(text: string | undefined): number {
  if (text === undefined) return USE_DAYS;
  const { value } = readQuantity('days', text, { field: 'over', fallback: 'days' });
  if (value >= 1 && value <= 3660) return value;
  throw new Problem(say('log.iCanLookBack'), {
    field: 'over',
    given: text,
    limit: say('log.limitDaysBack'),
  });
}

/** "alk, ca", "alk and ca", "alk ca", each once. @throws Problem for a word that names none, or for too many. */
function askedSeveral(text: string): readonly ParameterId[] {
  const parts = text.split(/[,;+&/]|\band\b/i).map((part) => part.trim());
  const words = parts.flatMap((part) => (findParameter(part) === undefined ? part.split(/\s+/) : [part]));
  const ids = [...new Set(words.filter((word) => word !== '').map(askedMeasured))];
  if (ids.length > 0 && ids.length <= MOST_PANELS) return ids;
  throw new Problem(say('log.onePictureHolds1', { MOSTPANELS: MOST_PANELS }), {
    field: 'of',
    given: text,
    limit: say('log.limitPanels', { MOSTPANELS: MOST_PANELS }),
  });
}

function countLines(id: ParameterId, readings: readonly Reading[]): readonly string[] {
  const { label } = parameter(id);
  if (readings.length === 0) return [`no reading of ${label} in that time`];
  return readings.length < MOST_READINGS ? [] : [`of ${label} the newest ${MOST_READINGS} readings`];
}

function trendsOf(tank: Tank, logged: readonly LoggedOne[], method: Method): readonly OneTrend[] {
  return logged
    .filter(({ readings }) => readings.length > 0)
    .map(({ id, readings, additions, use }) => oneTrend(tank, id, readings, additions, use, method));
}

function tooFew(tank: Tank, isUsual: boolean, ids: readonly ParameterId[], read: readonly string[]): Answer {
  const labels = listed(ids.map((id) => parameter(id).label));
  return answer({
    headline: fittingHeadline(
      `No trend yet: it takes two readings a day or more apart, and in this span ${tank.name} has no such pair of ${isUsual ? labels.replace(' and ', ' or ') : labels}.`,
      `No trend yet: it takes two readings a day or more apart, and in this span ${tank.name} has no such pair.`,
    ),
    read,
    steps: [
      'Log a line of readings each time you test: /log add readings:alk 8.1 ca 420.',
      'Look further back, if you have logged before: /log trend over:365 days.',
    ],
    cautions: ['How fast a value moved within a day is said when you log it.'],
    sources: ['practice'],
  });
}

function trendAnswer(
  tank: Tank,
  all: readonly OneTrend[],
  method: Method,
  read: readonly string[],
  days: number,
  { zone = 'UTC' }: Context,
): Answer {
  const alerts = all.flatMap((one) => alertsOf(one, tank));
  const shown = {
    title: `${tank.name}: last ${significant(days, 3)} days`,
    zone,
    panels: all.map((one) => ({ ...one.panel, alerts: alertsOf(one, tank) })),
  };
  return answer({
    headline: headlineOf(all),
    read,
    facts: all.flatMap((one) => factsOf(one, zone)),
    steps: stepsFor(all, alerts.length > 0),
    working: all.flatMap((one) => workingOf(one, method)),
    dangers: all.flatMap(({ fast }) => (fast === undefined ? [] : [firstSentence(fast)])),
    cautions: [
      ...all.flatMap((one) =>
        alertsOf(one, tank).map((text) => (text === one.fast ? afterFirst(text) : text)),
      ),
      ...(all.some(({ fast }) => fast !== undefined) ? [] : [ONLY_LOGGED]),
    ],
    sources: [method === 'robust' ? 'sen68' : 'nist', 'practice'],
    pictures: [{ name: 'trend', svg: trendSvg(shown), alt: altText(shown) }],
  });
}

/** What a fast move asks for, its first sentence being told among the dangers. */
function afterFirst(text: string): string {
  return sentencesOf(text).slice(1).join(' ');
}

function stepsFor(all: readonly OneTrend[], isAlerted: boolean): readonly string[] {
  const isMoving = all.some(({ trend }) => trend !== undefined && trend.verdict !== 'within error');
  const isThin = all.some(({ trend }) => trend === undefined || trend.kitOnly);
  return [
    ...(isAlerted ? ['Test again with the same kit before you change a dose or correct anything.'] : []),
    isMoving
      ? 'Change one thing at a time, by a small step, and test again after two or three days at the same hour.'
      : 'Change nothing on this alone: what moves is within the error of the tests.',
    ...(isThin
      ? ['Log five readings of each or more, same hour, same kit: their scatter tells how sure the trend is.']
      : []),
  ];
}
