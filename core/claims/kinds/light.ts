import { dailyLightMol } from '../../light/daily.ts';
import { anyLampLuxPerPpfd, lamps } from '../../light/lamp.ts';
import { ppfdSpan } from '../../light/lux.ts';
import { fixed, significant, volume } from '../../quantity/format.ts';
import { readQuantity } from '../../quantity/read.ts';
import type { Judge, Verdict } from '../claim.ts';
import { litresOf, printedBase } from '../salts.ts';
import { has, is, type Amount, type Stated } from '../stated.ts';
import { termsIn } from '../terms.ts';
import { against, againstNumber } from '../verdict.ts';

/** "lux / 50 = par", "50 lux is 1 par": lux by PAR; undefined where the rule holds other quantities. */
function luxByPar(stated: Stated): number | undefined {
  const [first, second, other] = stated.amounts;
  if (first === undefined || other !== undefined) return undefined;
  if (second === undefined) {
    const isNamed = termsIn(stated, ['lux', 'lx']).length > 0 && termsIn(stated, ['par', 'ppfd']).length > 0;
    const isPerPar = is(first, 'illuminance') && termsIn(stated, ['par', 'ppfd']).length > 0;
    return (is(first, 'bare') && isNamed) || isPerPar ? first.value : undefined;
  }
  const lux = [first, second].find((amount) => is(amount, 'illuminance'));
  const par = [first, second].find((amount) => is(amount, 'light'));
  return lux === undefined || par?.value !== 1 ? undefined : lux.value;
}

/** A reading to show the rule on, lux. */
const EXAMPLE_LUX = 9000;

/** "lux / 50 = par": one factor for every lamp. */
export const luxFactor: Judge = (stated) => {
  const claimed = luxByPar(stated);
  if (claimed === undefined || !(claimed > 0.1 && claimed < 1000)) return undefined;
  const fitting = Object.values(lamps).filter(
    ({ luxPerPpfd: { low, high } }) => claimed >= low * 0.98 && claimed <= high * 1.02,
  );
  const verdict: Verdict = fitting.length === 0 ? 'wrong' : 'depends';
  const span = ppfdSpan(EXAMPLE_LUX, anyLampLuxPerPpfd);
  const each = Object.entries({
    daylight: lamps.daylight,
    white: lamps.white,
    bluish: lamps['blue-white'],
    'blue LEDs': lamps.blue,
  });
  return {
    kind: 'lux as PAR',
    rule: `PAR = lux / ${claimed}`,
    verdict,
    figure: `no one divisor fits: ${each
      .map(
        ([
          name,
          {
            luxPerPpfd: { low, high },
          },
        ]) => `${fixed(low, 0)} to ${fixed(high, 0)} for ${name}`,
      )
      .join(', ')}`,
    working: each.map(([, { name, basis }]) => `${name}: ${basis}`),
    example: {
      words: `${EXAMPLE_LUX} lux would be called ${fixed(EXAMPLE_LUX / claimed, 0)} PAR, and can be anything from ${significant(span.low, 2)} to ${significant(span.high, 2)}`,
      low: EXAMPLE_LUX / claimed,
      high: EXAMPLE_LUX / claimed,
      unit: 'PAR',
    },
    steps: [
      'Use lux only to compare two spots under the same lamp at the same setting.',
      'For PAR borrow a quantum meter; with /light lux you get the honest range for your lamp.',
    ],
    sources: ['cie', 'cie15', 'th83', 'si19'],
  };
};

/** "200 par for 8 hours is 5.8 mol": the daily total. */
export const dailyTotal: Judge = (stated) => {
  const [light, time, total, other] = stated.amounts;
  if (light === undefined || time === undefined || total === undefined || other !== undefined)
    return undefined;
  if (!is(light, 'light') || !is(time, 'days') || !is(total, 'bare')) return undefined;
  if (termsIn(stated, ['mol', 'moles', 'dli']).length === 0) return undefined;
  const [ppfd, hours, claimed] = [light.value, hoursOf(time), total.value];
  if (ppfd < 1 || hours < 0.25 || hours > 24 || claimed <= 0) return undefined;
  const real = dailyLightMol(ppfd, { fullHours: hours, rampHours: 0 });
  return {
    kind: 'daily light',
    rule: `${ppfd} PAR for ${hours} h is ${claimed} mol a day`,
    verdict: againstNumber(claimed, real),
    figure: `it is ${significant(real, 3)} mol on each square metre a day, without ramps`,
    working: [`${ppfd} x ${hours} h x 0.0036 = ${significant(real, 4)} mol`],
    example: {
      words:
        `for ${claimed} mol the lamp would run ${fixed((hours * claimed) / real, 1)} h at ${ppfd} PAR, not ${hours}: ${against(real, claimed)} light than thought`.replace(
          'as meant light than thought',
          'as thought',
        ),
      low: (hours * claimed) / real,
      high: (hours * claimed) / real,
      unit: 'h',
    },
    sources: ['dli'],
  };
};

/** "200 par for 6 h is the same as 100 par for 12 h". */
export const sameDailyLight: Judge = (stated) => {
  const [one, over, two, under, other] = stated.amounts;
  if (one === undefined || over === undefined || two === undefined || under === undefined) return undefined;
  if (other !== undefined || ![one, two].every((amount) => is(amount, 'light'))) return undefined;
  if (![over, under].every((amount) => is(amount, 'days'))) return undefined;
  const [a, h, b, k] = [one.value, hoursOf(over), two.value, hoursOf(under)];
  if ([a, b].some((p) => p < 1 || p > 2500) || [h, k].some((t) => t < 0.25 || t > 24)) return undefined;
  const [first, second] = [
    dailyLightMol(a, { fullHours: h, rampHours: 0 }),
    dailyLightMol(b, { fullHours: k, rampHours: 0 }),
  ];
  const verdict = againstNumber(first, second);
  return {
    kind: 'same light in other hours',
    rule: `${a} PAR for ${h} h is the same as ${b} PAR for ${k} h`,
    verdict: verdict === 'right' ? 'roughly right' : verdict,
    figure: `the daily totals are ${significant(first, 3)} and ${significant(second, 3)} mol; even where they match, a coral feels the peak as well as the total (common practice)`,
    working: [
      `${a} x ${h} x 0.0036 = ${significant(first, 4)}`,
      `${b} x ${k} x 0.0036 = ${significant(second, 4)}`,
    ],
    example: {
      words: `the same daily total in ${k} h takes a peak of ${fixed((a * h) / k, 0)} PAR; the rule sets ${b}: ${against(b, (a * h) / k)}`,
      low: (a * h) / k,
      high: (a * h) / k,
      unit: 'PAR',
    },
    steps: ['Change hours or light slowly, and never raise both in one week.'],
    sources: ['dli', 'practice'],
  };
};

/** "4 watts per gallon": power says nothing about the light at the coral. */
export const wattsPerVolume: Judge = (stated) => {
  const [power, base, other] = stated.amounts;
  if (power === undefined || base === undefined || other !== undefined) return undefined;
  if (!is(power, 'watts') || !is(base, 'volume') || has(stated, 'gear.heater')) return undefined;
  const perL = power.value / litresOf(base);
  return {
    kind: 'watts by volume',
    rule: `${power.value} W of light per ${printedBase(base)}`,
    verdict: 'depends',
    figure: 'there is no right figure: watts say what the lamp takes from the wall, not what reaches a coral',
    besides: 'depth, spread, colour and efficiency decide',
    working: ['what counts is PAR at the coral and the hours: PAR x hours x 0.0036 = mol a day'],
    following: (waterL) => {
      const low = perL * waterL;
      return {
        words: `${volume(waterL)} would get ${significant(low, 3)} W, which can be far too little or far too much light`,
        low,
        high: low,
        unit: 'W',
      };
    },
    steps: [
      'Measure PAR where the coral sits, or start low and raise by about 10 % a week while you watch it.',
    ],
    sources: ['practice', 'dli'],
  };
};

function hoursOf({ text }: Amount): number {
  return readQuantity('days', text, { field: 'rule' }).value * 24;
}
