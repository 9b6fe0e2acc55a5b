import { lampBand } from '../../core/corals/light-need.ts';
import { anyLampLuxPerPpfd } from '../../core/light/lamp.ts';
import { USUAL_RAISE_PERCENT } from '../../core/light/ramp.ts';
import { dayVerdict, usualFullHours, usualLitHours } from '../../core/light/daily.ts';
import { fixed, significant } from '../../core/quantity/format.ts';
import { coralsIn } from '../../core/words/corals.ts';
import type { Heard } from '../../core/words/hear.ts';
import { is } from '../../core/words/mention.ts';
import { answer } from '../answer.ts';
import { action } from '../calls.ts';
import { TOO_MUCH_ACTION, TOO_MUCH_IS_COMMONER, TOO_MUCH_SIGNS } from '../light/words.ts';
import { isTrouble } from './coral/named.ts';
import { says, type Intent } from './intent.ts';

const LAMPS = ['lights?', 'lighting', 'lamps?', 'leds?', 'photoperiod', 'fixtures?'] as const;

function hasPar({ mentions }: Heard): boolean {
  return mentions.some((m) => is(m, 'light'));
}

/** "200 par in lux?": no one number, the other way round either. */
export const luxOfParIntent: Intent = (heard) => {
  const par = heard.mentions.find((m) => is(m, 'light'));
  if (par === undefined || !says(heard, 'lux', 'lumens?')) return undefined;
  if (heard.mentions.some((m) => is(m, 'illuminance'))) return undefined;
  const { low, high } = anyLampLuxPerPpfd;
  const [least, most] = [low, high].map((factor) => significant(par.value * factor, 2));
  return answer({
    headline: `${par.text} cannot be turned into one lux value: by the colour of the lamp it is anything from about ${least} to ${most} lux.`,
    read: [`${par.text} as light at the coral, no lamp named`],
    steps: ['Measure PAR with a quantum meter that goes under water, and leave lux out of it.'],
    working: [`lux = PAR x lux per PAR, ${significant(low, 2)} for pure blue to ${significant(high, 2)}`],
    sources: ['si19', 'cie15', 'th83'],
  });
};

const HOURS = String.raw`(\d{1,2}(?:[.,]\d+)?) ?(?:h|hrs?|hours?)?(?: a day)? ?(?:to|->|-) ?(\d{1,2}(?:[.,]\d+)?) ?(?:h|hrs?|hours?)(?![a-z])`;

/** "lights from 8 to 12 hours, should I dim?": the peak that keeps the daily total, whatever the PAR. */
export const longerDayIntent: Intent = (heard) => {
  const [, first, second] = new RegExp(HOURS).exec(heard.text) ?? [];
  if (first === undefined || second === undefined || hasPar(heard)) return undefined;
  if (!says(heard, ...LAMPS, 'dim(?:med|ming)?')) return undefined;
  const [now, then] = [first, second].map((text) => Number(text.replace(',', '.')));
  if (
    now === undefined ||
    then === undefined ||
    now <= 0 ||
    then <= 0 ||
    now > 24 ||
    then > 24 ||
    now === then
  )
    return undefined;
  const percent = fixed((100 * now) / then, 0);
  const longer = then > now;
  return answer({
    headline: longer
      ? `Dim to about ${percent} % of the PAR you have now if you go from ${first} to ${second} h: that keeps the light of a day the same.`
      : `Going from ${first} to ${second} h is less light a day, and can be done at once; the same total would need ${percent} % of the PAR, which you go up to slowly.`,
    read: [`${first} h of full light a day now, ${second} h then; no PAR given`],
    steps: [
      'Change by about half an hour a week, and look at the corals before each step.',
      `Usual: ${usualFullHours.low} to ${usualFullHours.high} h of main light, ${usualLitHours.low} to ${usualLitHours.high} h with the ramps, and a real night (common practice).`,
      'With a PAR reading: /light hours gives the daily total.',
    ],
    working: [`${first} h / ${second} h = ${percent} %`],
    cautions: [
      'A lamp at half its setting does not give half the PAR exactly: measure.',
      ...(longer ? ['Longer days feed algae too.'] : []),
    ],
    sources: ['dli', 'practice'],
  });
};

const ASKED_HOURS = /\b(\d{1,2}) ?(?:h|hrs?|hours?)\b|\bhours (\d{1,2})\b/;

/** "how many hours of light", "is 14 hours of light too much": the usual day. */
export const usualDayIntent: Intent = (heard) => {
  if (hasPar(heard) || isTrouble(heard) || !says(heard, ...LAMPS)) return undefined;
  if (
    says(heard, 'without', 'no', 'off', 'out', 'blackout', 'dark', 'acclimat\\w*', 'new', 'until', 'before')
  )
    return undefined;
  const found = ASKED_HOURS.exec(heard.text);
  const hours = Number(found?.[1] ?? found?.[2] ?? Number.NaN);
  const isJudged =
    hours >= 1 &&
    hours <= 24 &&
    says(heard, 'too? (?:much|long|short|many|few|little)', 'enough', 'ok(?:ay)?');
  if (!isJudged && !says(heard, 'how many (?:hours|hrs|h)', 'how long')) return undefined;
  const verdict = isJudged
    ? `${hours} h of full light is ${dayVerdict({ fullHours: hours, rampHours: 0 })}. `
    : '';
  return answer({
    headline: `${verdict}Run ${usualFullHours.low} to ${usualFullHours.high} h of main light a day, ${usualLitHours.low} to ${usualLitHours.high} h with the ramps, and a real night. What counts is PAR times hours.`,
    steps: [
      'Change what you run now by no more than half an hour a week.',
      'With a PAR reading I work out the daily total: /light hours reading:200 PAR.',
    ],
    cautions: ['More hours make up for little PAR only in part, and feed algae.'],
    sources: ['practice'],
    next: [action('With a PAR reading', 'light hours', {}, ['reading', 'hours'])],
  });
};

/** "what per cent should my LEDs run at": a setting is no light; a wide band, and a meter. */
export const settingIntent: Intent = (heard) => {
  const share = heard.mentions.find((m) => is(m, 'share'));
  if (hasPar(heard) || isTrouble(heard) || coralsIn(heard.text).length > 0) return undefined;
  if (
    !says(heard, ...LAMPS) ||
    (share === undefined && !says(heard, 'percent(?:age)?', 'per cent', 'settings?', '%'))
  )
    return undefined;
  if (
    !says(
      heard,
      'too (?:much|high|low|bright|strong)',
      '(?:what|which|how (?:much|high|many)) ',
      'ok(?:ay)?',
      'should i',
      'run',
    )
  )
    return undefined;
  if (says(heard, 'water ?changes?', 'chang(?:e|ing) (?:the )?water')) return undefined;
  const [weak, strong] = [lampBand('weak'), lampBand('strong')];
  return answer({
    headline: `A setting alone does not tell the light at a coral: try a weak lamp at ${weak.lowPercent} to ${weak.highPercent} %, a strong one at ${strong.lowPercent} to ${strong.highPercent} % (project rule).`,
    read: share === undefined ? [] : [`${share.text} as the setting of the lamp`],
    steps: [
      'Begin at the low end of the band and borrow a PAR meter: PAR at the coral is what counts.',
      `Up by about ${USUAL_RAISE_PERCENT} % of what it is a week, never to the top in one go.`,
      TOO_MUCH_SIGNS,
      TOO_MUCH_ACTION,
    ],
    cautions: [TOO_MUCH_IS_COMMONER],
    sources: ['practice'],
    next: [action('From a PAR reading', 'light dim', {}, ['reading', 'at', 'goal'])],
  });
};

/** "new LED, how do I acclimate the corals to it": low, then up by a tenth a week. */
export const newLampIntent: Intent = (heard) => {
  if (hasPar(heard) || isTrouble(heard) || coralsIn(heard.text).length > 0) return undefined;
  if (
    !says(heard, ...LAMPS) ||
    !says(
      heard,
      'acclimat\\w*',
      'get used to',
      'switch(?:ed|ing)?',
      'swap(?:ped|ping)?',
      'chang(?:e|ed|ing) (?:my |the )?(?:lights?|lamps?|leds?)',
    )
  )
    return undefined;
  if (!says(heard, 'corals?', 'frags?', 'tank', 'reef')) return undefined;
  return answer({
    headline: `Begin well below the light they have had, and go up by about ${USUAL_RAISE_PERCENT} % a week: three to four weeks is usual (common practice).`,
    steps: [
      'Best: measure PAR at the corals under the old lamp, set the new one to no more than that, then raise.',
      'Without a meter: begin at about half the setting you mean to end at, or hang the lamp higher, and go by the corals.',
      'A new coral begins at the start of its range: /light range names it for each kind.',
      TOO_MUCH_SIGNS,
      TOO_MUCH_ACTION,
    ],
    cautions: [TOO_MUCH_IS_COMMONER],
    sources: ['practice'],
    next: [action('Week by week', 'light ramp', {}, ['now', 'goal'])],
  });
};
