import { z } from 'zod';
import { par } from '../../core/light/band.ts';
import {
  dayVerdict,
  litHours,
  peakFor,
  usualFullHours,
  usualFullHoursBeside,
  usualLitHours,
} from '../../core/light/daily.ts';
import { Problem } from '../../core/problem.ts';
import { fixed } from '../../core/quantity/format.ts';
import { answer, type Answer } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { quantityOption } from '../options.ts';
import { changeAnswer, periodText, totalFact, totalOf, totalWorking, type Lighting } from './hours-change.ts';
import { bandFact, daily, duration, readHours, readPar } from './words.ts';
import { say } from '../../core/wording/say.ts';

/** Days compared when no hours are given: from short to what is too long but heard of. */
const SHOWN_HOURS = [6, 8, 10, 12, 16] as const;

const ADVICE_STEPS = [
  `Run ${usualFullHours.low} to ${usualFullHours.high} h of main light, ${usualLitHours.low} to ${usualLitHours.high} h with the ramps (common practice).`,
  'Keep the rest really dark: a night without lamp or room light.',
];
const ADVICE_CAUTIONS = [
  'Longer hours feed algae more than they feed corals.',
  'How many mol a day each kind of coral wants is poorly known: use the total to compare, and watch the coral.',
];

export const hoursCommand = defineCommand({
  path: ['light', 'hours'],
  summary: 'How long to run the light, and the peak or hours that keep the same daily total',
  example: '/light hours reading:200 PAR hours:8 h goal:12 h',
  options: z.strictObject({
    reading: quantityOption('light', 'PAR at the coral at full light, e.g. 200 PAR'),
    hours: quantityOption('hours', 'Hours of full light a day now, e.g. 8 h', 'hours').optional(),
    ramp: quantityOption('hours', 'Length of the ramp up, the same again down, e.g. 1 h').optional(),
    goal: quantityOption('hours', 'Hours of full light you want; I work out the peak').optional(),
    peak: quantityOption('light', 'The peak you want; I work out the hours').optional(),
  }),
  run: (input): Answer => {
    const reading = readPar(input.reading, 'reading');
    const [hours, ramp, goal] = (['hours', 'ramp', 'goal'] as const).map((field) => {
      const text = input[field];
      return text === undefined ? undefined : readHours(text, field);
    });
    const peak = input.peak === undefined ? undefined : readPar(input.peak, 'peak');
    const rampHours = ramp?.value ?? 0;
    const asked = { fullHours: goal?.value, ppfd: peak?.value };
    const main = mainPart(reading.value, hours?.value, rampHours, asked);
    return answer({
      ...main,
      read: [
        `${par(reading.value)} at the coral at full light; 1 PAR is 1 µmol/m²/s`,
        hours === undefined
          ? 'no hours given, so several are compared'
          : `${duration(hours.value)} of full light a day`,
        ramp === undefined
          ? 'no ramp given, taken as none'
          : `a ramp of ${duration(rampHours)} up and ${duration(rampHours)} down, taken as linear`,
        ...[reading, hours, ramp, goal, peak].flatMap((part) => part?.notes ?? []),
      ],
      steps: [...main.steps, ...ADVICE_STEPS],
      working: ['daily light = PAR x hours x 0.0036; a linear ramp counts half', ...main.working],
      cautions: [...main.cautions, ...ADVICE_CAUTIONS],
      sources: ['dli', 'practice'],
    });
  },
});

interface Asked {
  readonly fullHours: number | undefined;
  readonly ppfd: number | undefined;
}

function mainPart(ppfd: number, fullHours: number | undefined, rampHours: number, asked: Asked): Answer {
  const changes = asked.fullHours !== undefined || asked.ppfd !== undefined;
  if (fullHours === undefined) {
    if (!changes) return overview(ppfd, rampHours);
    throw new Problem(say('light.howManyHoursFull'), {
      field: 'hours',
      hint: say('light.sameDailyTotalCan'),
    });
  }
  const now = { ppfd, period: { fullHours, rampHours } };
  return changes ? answer(changeAnswer(now, asked)) : asItIs(now);
}

function overview(ppfd: number, rampHours: number): Answer {
  const day = (fullHours: number, ramp = rampHours): Lighting => ({
    ppfd,
    period: { fullHours, rampHours: ramp },
  });
  const days = SHOWN_HOURS.map((fullHours) => day(fullHours)).filter(({ period }) => litHours(period) <= 24);
  const usual = usualFullHoursBeside(rampHours);
  const [low, high] = [day(usual.low), day(usual.high)];
  const hours = usual.low === usual.high ? duration(usual.high) : `${usual.low} to ${usual.high} h`;
  const total =
    usual.low === usual.high ? daily(totalOf(high)) : `${fixed(totalOf(low), 1)} to ${daily(totalOf(high))}`;
  const twelve = day(12).period;
  return answer({
    headline: `Run ${hours} of main light, ${usualLitHours.low} to ${usualLitHours.high} h with the ramps: at ${par(ppfd)} that is ${total}.`,
    isList: true,
    facts: [
      ...days.map((one) => totalFact(duration(one.period.fullHours), one)),
      ...(rampHours === 0 ? [totalFact('8 h with ramps', day(8, 1))] : []),
      ...(litHours(twelve) > 24
        ? []
        : [
            {
              label: '12 h with the total of 8 h',
              value: `peak of ${par(peakFor(totalOf(day(8)), twelve))} instead of ${par(ppfd)}`,
              verdict: dayVerdict(twelve),
            },
          ]),
      bandFact('light at the coral', ppfd),
    ],
    steps: ['Change slowly from what you run now, about half an hour a week.'],
    working: days.map(totalWorking),
  });
}

function asItIs(now: Lighting): Answer {
  const verdict = dayVerdict(now.period);
  const what = `${par(now.ppfd)} for ${periodText(now.period)} is ${daily(totalOf(now))}`;
  const long = verdict === 'too long';
  return answer({
    headline: long
      ? `${what}, but the day is too long: cut it to ${usualLitHours.low} to ${usualLitHours.high} h with the ramps.`
      : `${what}; the length is ${verdict === 'usual' ? 'fine' : verdict}.`,
    facts: [totalFact('now', now), bandFact('light at the coral', now.ppfd)],
    steps: long ? ['Take the hours off at the same peak; less light needs no ramp.'] : [],
    working: [totalWorking(now)],
  });
}
