import { anyLampLuxPerPpfd } from '../../core/light/lamp.ts';
import { significant } from '../../core/quantity/format.ts';
import { answer, type Answer } from '../answer.ts';
import type { SaidPar } from '../coral/par-verdict.ts';

/** PAR in lux: no one number. */
export function parToLuxAnswer(par: SaidPar): Answer {
  const { low, high } = anyLampLuxPerPpfd;
  const [least, most] = [low, high].map((factor) => significant(par.value * factor, 2));
  return answer({
    headline: `${par.text} cannot be turned into one lux value: by the colour of the lamp it is anything from about ${least} to ${most} lux.`,
    read: [`${par.text} as light at the coral, no lamp named`],
    steps: ['Measure PAR with a quantum meter that goes under water, and leave lux out of it.'],
    working: [`lux = PAR x lux per PAR, ${significant(low, 2)} for pure blue to ${significant(high, 2)}`],
    sources: ['si19', 'cie15', 'th83'],
  });
}
