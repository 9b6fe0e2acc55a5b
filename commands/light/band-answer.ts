import { lightBand, lightBandWords, par } from '../../core/light/band.ts';
import { answer, type Answer } from '../answer.ts';
import type { SaidPar } from '../coral/par-verdict.ts';
import { TOO_MUCH_IS_COMMONER, usualFact } from './words.ts';

/** Which band a light is in, where no coral is named. */
export function bandAnswer(reading: SaidPar): Answer {
  return answer({
    headline: `${par(reading.value)} is ${lightBand(reading.value)} light. Whether it is too much depends on the coral and on what it is used to.`,
    read: [`${reading.text} as light at the coral`],
    facts: [usualFact('large-polyp')],
    steps: [
      'Start a new coral lower and raise by about 10 % a week (/light ramp).',
      'Name the coral, its spot, and the hours of light for a better answer.',
    ],
    working: [`words for light, in PAR: ${lightBandWords}`],
    cautions: [TOO_MUCH_IS_COMMONER],
    sources: ['practice'],
  });
}
