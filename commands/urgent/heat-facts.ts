import { iceKg, warmWaterL } from '../../core/care/urgent/heat.ts';
import { fixed, mass, span, volume } from '../../core/quantity/format.ts';
import type { Fact } from '../answer.ts';
import { fact, worked, type Numbers } from './facts.ts';
import type { Known } from './input.ts';
import { oxygenLost } from './oxygen-facts.ts';
import { limitsOf } from '../../core/water/limits.ts';

/** Where the danger ends and the slow part begins, and where it ends, °C: own choice within the usual range. */
const HOT = { safe: 28, aim: 26 } as const;
const COLD = { safe: 22, aim: 25 } as const;
/** Most an hour in danger (from memory), most and least a day after it (common practice), °C. */
const PACE = { anHour: 1, aDay: 1, gentle: 0.5 } as const;
/** A closed bottle of water that hands can still hold, °C; own choice. */
const BOTTLE_C = 40;

/** How long the way back takes, what closed bottles do, and what heat does to oxygen. */
export function heatNumbers(known: Known, side: 'hot' | 'cold'): Numbers {
  const { temperature: reading, water, missing } = known;
  const { read, volumeL } = water;
  const all = { working: [], sources: ['practice', 'memory', 'fm83'] } as const;
  if (reading === undefined) return { ...all, read, facts: [], missing: ['temperature', ...missing] };
  const tempC = reading.value;
  const [low, high] = limitsOf('temperature').usual;
  const shown = `${fixed(tempC, 1)} °C`;
  const told = [...read, `temperature ${shown}`, ...reading.notes];
  if (side === 'hot' ? tempC <= high : tempC >= low) {
    const value = `${shown} is not too ${side}: give what it reads now`;
    return { ...all, read: told, facts: [fact('temperature', value)], missing: ['temperature'] };
  }
  const { safe, aim } = side === 'hot' ? HOT : COLD;
  const step = Math.abs(tempC - aim) < 1 ? Math.abs(tempC - aim) : 1;
  const to = side === 'hot' ? tempC - step : tempC + step;
  const bottles = (): string =>
    side === 'hot'
      ? `about ${mass(iceKg(volumeL, step, to) * 1000)} of frozen water takes ${fixed(step, 1)} °C out of ${volume(volumeL)}, and more while the room heats on`
      : `about ${volume(warmWaterL(volumeL, step, to, BOTTLE_C))} of water at ${BOTTLE_C} °C brings ${fixed(step, 1)} °C into ${volume(volumeL)}, and more while the room cools`;
  const s = known.salinity?.value ?? 35;
  return {
    read: told,
    facts: [
      ...(isPast(tempC, safe, side) ? outOfDanger(tempC, safe) : []),
      fact('the slow part', slow(Math.abs((isPast(tempC, safe, side) ? safe : tempC) - aim), aim)),
      worked('closed bottles', bottles),
      ...(side === 'hot' ? [worked('oxygen', () => oxygenLost(s, tempC, aim))] : []),
    ],
    working: [
      side === 'hot'
        ? 'ice: litres x density x 3.99 kJ/kg per °C over 334 + 4.18 x °C kJ/kg (constants from memory)'
        : 'bottles: litres x density x 3.99 kJ/kg per °C over 4.18 x (bottle - tank) kJ/kg (constants from memory)',
    ],
    sources: [...all.sources, ...(side === 'hot' ? (['gg92'] as const) : [])],
    missing,
  };
}

function outOfDanger(from: number, until: number): readonly Fact[] {
  const hours = Math.ceil(Math.abs(from - until) / PACE.anHour);
  const value = `${fixed(from, 1)} to ${until} °C in no less than ${hours} ${hours === 1 ? 'hour' : 'hours'}, at most ${PACE.anHour} °C an hour (from memory)`;
  return [fact('out of danger', value)];
}

function isPast(tempC: number, safe: number, side: 'hot' | 'cold'): boolean {
  return side === 'hot' ? tempC > safe : tempC < safe;
}

function slow(degrees: number, aim: number): string {
  const [quick, gentle] = [degrees / PACE.aDay, degrees / PACE.gentle].map((days) => Math.ceil(days));
  return `to ${aim} °C over ${span(String(quick), String(gentle))} days, ${PACE.gentle} to ${PACE.aDay} °C a day (common practice)`;
}
