import { evenDays, swapDays } from '../../core/change/day-plan.ts';
import { drySaltToAddG, mixRange } from '../../core/change/salt.ts';
import { fixed, mass } from '../../core/quantity/format.ts';
import { densityKgM3 } from '../../core/water/seawater.ts';
import { ppt, seawaterPpt } from '../salinity/print.ts';
import { percent } from '../waterchange/pour.ts';
import { fact, type Numbers } from './facts.ts';
import type { Known } from './input.ts';
import { limitsOf, sideOf } from '../../core/water/limits.ts';
import { salinityPacePpt } from '../../core/water/salinity-pace.ts';

/** How much stronger swap water is mixed, ppt; own choice, as /salinity adjust. */
const STRONGER = 5;

/** How far off, how many days back, and the first day's swap. */
export function salinityNumbers({ water, salinity: now, goal, missing }: Known): Numbers {
  const { volumeL, part, poured, read } = water;
  if (now === undefined)
    return { read, facts: [], working: [], sources: [], missing: ['salinity', ...missing] };
  const s = now.value;
  const { usual } = limitsOf('salinity');
  const goalS = goal?.value ?? seawaterPpt;
  const told = [...read, `salinity ${ppt(s)}, back to ${ppt(goalS)}`, ...now.notes, ...(goal?.notes ?? [])];
  if (sideOf(s, usual) === undefined) {
    const facts = [fact('salinity', `${ppt(s)} is no crash: give what it reads now`)];
    return { read: told, facts, working: [], sources: [], missing: ['salinity'] };
  }
  const rising = s < goalS;
  const pacePpt = rising ? salinityPacePpt.up : salinityPacePpt.down;
  const sourceS = rising ? Math.min(goalS + STRONGER, mixRange.max) : 0;
  const days = swapDays(s, evenDays(s, goalS, pacePpt, 0.01), sourceS, poured);
  const first = days[0]?.fraction ?? 0;
  const saltG = rising ? drySaltToAddG((volumeL * densityKgM3(s, 25)) / 1000, s, goalS) : 0;
  const what = rising ? `salt water mixed to ${ppt(sourceS)}` : 'fresh water';
  return {
    read: told,
    facts: [
      fact('way back', `${days.length} days, at most ${pacePpt} ppt a day (common practice)`),
      fact('first day', `swap ${part(first)} of tank water for ${what}`),
      ...(rising
        ? [
            fact(
              'salt missing in all',
              `${mass(saltG)} of dry salt, only ever as mixed water, never as powder`,
            ),
          ]
        : [
            fact(
              'in one go it would be',
              `${percent(1 - goalS / s)} of the water, ${part(1 - goalS / s)}: too much at once`,
            ),
          ]),
    ],
    working: [
      `first day: (${fixed(s, 2)} - ${fixed(days[0]?.toS ?? goalS, 2)})/(${fixed(s, 2)} - ${fixed(sourceS, 1)}) = ${percent(first)}`,
    ],
    sources: ['mixing', 'practice'],
    missing,
  };
}
