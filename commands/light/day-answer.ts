import { dayVerdict, usualFullHours, usualLitHours } from '../../core/light/daily.ts';
import { fixed } from '../../core/quantity/format.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { say } from '../../core/wording/say.ts';

const USUAL_DAY = `${usualFullHours.low} to ${usualFullHours.high} h of main light, ${usualLitHours.low} to ${usualLitHours.high} h with the ramps`;

/** A longer or shorter day: the peak that keeps the daily total, whatever the PAR. Hours of full light, 0 to 24. */
export function changedDayAnswer(now: number, then: number): Answer {
  const percent = fixed((100 * now) / then, 0);
  const longer = then > now;
  return answer({
    headline: longer
      ? `Dim to about ${percent} % of the PAR you have now if you go from ${now} to ${then} h: that keeps the light of a day the same.`
      : `Going from ${now} to ${then} h is less light a day and can be done at once; the same total needs ${percent} % of the PAR: go up slowly.`,
    read: [`${now} h of full light a day now, ${then} h then; no PAR given`],
    steps: [
      'Change by about half an hour a week, and look at the corals before each step.',
      `Usual: ${USUAL_DAY}, and a real night (common practice).`,
      'With a PAR reading: /light hours gives the daily total.',
    ],
    working: [`${now} h / ${then} h = ${percent} %`],
    cautions: [
      'A lamp at half its setting does not give half the PAR exactly: measure.',
      ...(longer ? ['Longer days feed algae too.'] : []),
    ],
    sources: ['dli', 'practice'],
  });
}

/** Which of two days of full light, hours, 0 to 24: the usual one, the shorter where both are, else the nearer. */
export function whichDayAnswer(one: number, other: number): Answer {
  const [short, long] = one < other ? [one, other] : [other, one];
  const verdicts = [short, long].map((fullHours) => dayVerdict({ fullHours, rampHours: 0 }));
  const [ofShort = 'usual', ofLong = 'usual'] = verdicts;
  const take = offBy(long) < offBy(short) ? long : short;
  const less = fixed(100 - (100 * short) / long, 0);
  const why =
    ofShort === ofLong
      ? `both are ${ofShort}; ${short} h is ${less} % less light a day at the same PAR, less algae and less power`
      : `${short} h of full light is ${ofShort}, ${long} h is ${ofLong}`;
  return answer({
    headline: `Take ${take} h: ${why}.`,
    facts: [
      {
        label: 'usual',
        value: `${USUAL_DAY} (common practice)`,
      },
    ],
    steps: [
      'Coming from another day: change by about half an hour a week, and look at the corals before each step.',
      'PAR counts as much as hours: with a reading I work out the daily total (/light hours).',
    ],
    sources: ['practice'],
    next: [action(say('light.withParReading'), 'light hours', {}, ['reading', 'hours'])],
  });
}

/** How far a day is from the usual hours of main light, h. */
function offBy(hours: number): number {
  return Math.max(usualFullHours.low - hours, hours - usualFullHours.high, 0);
}

/** The usual day, and how these hours of full light compare with it. */
export function usualDayAnswer(hours: number | undefined): Answer {
  const verdict =
    hours !== undefined
      ? `${hours} h of full light is ${dayVerdict({ fullHours: hours, rampHours: 0 })}. `
      : '';
  return answer({
    headline: `${verdict}Run ${usualFullHours.low} to ${usualFullHours.high} h of main light a day, ${usualLitHours.low} to ${usualLitHours.high} h with the ramps, and a real night.`,
    steps: [
      'Change what you run now by no more than half an hour a week.',
      'With a PAR reading I work out the daily total: /light hours reading:200 PAR.',
    ],
    cautions: [
      'What counts is PAR times hours. More hours make up for little PAR only in part, and feed algae.',
    ],
    sources: ['practice'],
    next: [action(say('light.withParReading'), 'light hours', {}, ['reading', 'hours'])],
  });
}
