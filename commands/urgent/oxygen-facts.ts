import { oxygenMgPerL } from '../../core/care/urgent/oxygen.ts';
import { fixed, mass, volume } from '../../core/quantity/format.ts';
import { fact, nothing, orWhy, type Numbers } from './facts.ts';
import type { Known } from './input.ts';

/** Where nothing was read: the middle of the usual ranges, common practice. */
const USUAL = { tempC: 26, salinity: 35 } as const;

/** What fully aired water holds at this temperature, and the whole tank with it. */
export function oxygenHeld(known: Known): Numbers {
  const { missing } = known;
  return orWhy(
    () => held(known),
    (why) => ({ ...nothing, facts: [fact('oxygen at most', why)], missing }),
  );
}

function held({ temperature, salinity, water, missing }: Known): Numbers {
  const tempC = temperature?.value ?? USUAL.tempC;
  const s = salinity?.value ?? USUAL.salinity;
  const { volumeL, read } = water;
  const mgL = oxygenMgPerL(s, tempC);
  return {
    read: [
      ...read,
      `${temperature === undefined ? 'temperature taken as' : 'temperature'} ${fixed(tempC, 1)} °C, ${salinity === undefined ? 'salinity taken as' : 'salinity'} ${fixed(s, 1)} ppt`,
      ...(temperature?.notes ?? []),
      ...(salinity?.notes ?? []),
    ],
    facts: [
      fact(
        'oxygen at most',
        `${fixed(mgL, 1)} mg/L at ${fixed(tempC, 1)} °C, so ${mass((mgL * volumeL) / 1000)} in ${volume(volumeL)}; it comes in through the surface only`,
      ),
    ],
    working: [`${fixed(mgL, 2)} mg/L x ${volume(volumeL)} = ${mass((mgL * volumeL) / 1000)} of oxygen`],
    sources: ['gg92', 'fm83'],
    missing,
  };
}

/** A line on how much less oxygen one temperature holds than another. */
export function oxygenLost(salinity: number, warmC: number, coolC: number): string {
  const [warm, cool] = [oxygenMgPerL(salinity, warmC), oxygenMgPerL(salinity, coolC)];
  return `at most ${fixed(warm, 1)} mg/L at ${fixed(warmC, 1)} °C against ${fixed(cool, 1)} at ${fixed(coolC, 1)}, ${fixed((1 - warm / cool) * 100, 0)} % less`;
}
