import { coralsIn } from '../../core/words/corals.ts';
import type { Heard } from '../../core/words/hear.ts';
import { is } from '../../core/words/mention.ts';
import { changedDayAnswer, usualDayAnswer } from '../light/day-answer.ts';
import { newLampAnswer, settingAnswer } from '../light/lamp-answers.ts';
import { parToLuxAnswer } from '../light/par-to-lux.ts';
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
  return parToLuxAnswer(par);
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
  return changedDayAnswer(now, then);
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
  return usualDayAnswer(isJudged ? hours : undefined);
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
  return settingAnswer(share?.text);
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
  return newLampAnswer();
};
