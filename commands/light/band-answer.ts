import { usualLightWords } from '../../core/corals/group-light.ts';
import { lightBand, lightBandWords, par } from '../../core/light/band.ts';
import { answer, type Answer } from '../answer.ts';
import type { SaidPar } from '../coral/par-verdict.ts';

/** Which band a light is in, where no coral is named. */
export function bandAnswer(reading: SaidPar): Answer {
  return answer({
    headline: `${par(reading.value)} is ${lightBand(reading.value)} light. Whether it is too much depends on the coral and on what it is used to.`,
    read: [`${reading.text} as light at the coral`],
    facts: [
      { label: 'words for light, in PAR', value: lightBandWords },
      { label: 'large-polyp stony corals', value: usualLightWords('large-polyp') },
    ],
    steps: [
      'Start a new coral lower and raise by about 10 % a week (/light ramp). Too much light harms more often than too little.',
      'Name the coral, its spot, and the hours of light for a better answer.',
    ],
    sources: ['practice'],
  });
}
