import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { answer, type Answer } from '../answer.ts';
import { shown } from './asked.ts';
import type { Change } from './change.ts';
import { limitsOf } from '../../core/water/limits.ts';

const lowering: Readonly<Partial<Record<ParameterId, readonly string[]>>> = {
  alkalinity: [
    'Stop every source of alkalinity, limewater included, and retest with a fresh sample or a second kit.',
    'Let the tank use it up; where corals suffer, change a moderate part for water of lower alkalinity.',
  ],
  calcium: ['Stop dosing calcium and let growth use it up, or change water with a mix of lower calcium.'],
  magnesium: ['Stop dosing magnesium; water changes with a mix of lower magnesium bring it down.'],
};

/** What is said when the reading already is at or above the goal. */
export function noDose(id: ParameterId, change: Change): Answer {
  const { label } = parameter(id);
  const already =
    change.rise > -1e-9
      ? `${label} already is at the goal`
      : `${label} already is above the goal, and nothing dosed brings it down`;
  return answer({
    headline: `No dose: ${already}.`,
    read: change.read,
    steps: lowering[id] ?? ['Stop what adds it, retest, and let use or a water change bring it down.'],
    dangers:
      id === 'alkalinity'
        ? ['Never pour acid or CO2 into a tank to pull alkalinity down: pH collapses first.']
        : [],
    sources: ['practice'],
  });
}

/** What is said when the dose is less than a tenth of a millilitre of a weak stock: nobody can measure it out. */
export function tooLittle(id: ParameterId, change: Change): Answer {
  const { label } = parameter(id);
  return answer({
    headline: `No dose: what would move ${label} ${change.words} in this much water is too little to measure out.`,
    read: change.read,
    steps: ['Let food or the next water change do it, and test again.'],
    sources: ['practice'],
  });
}

/** What is said when reading and goal are closer than a kit can tell. */
export function sameToTheKit(id: ParameterId, change: Change): Answer {
  const { label, kitResolution, unit } = parameter(id);
  return answer({
    headline: `No dose: ${label} is as near to the goal as a hobby kit can tell.`,
    read: [...change.read, `a kit tells about ${kitResolution} ${unit} apart (common practice)`],
    steps: ['Keep doing what you do, and test again at the usual time.'],
    sources: ['practice'],
  });
}

/** What is said when the reading cannot be believed: no number until it is settled. */
export function retestFirst(id: ParameterId, value: number, read: readonly string[]): Answer {
  const { label, unit } = parameter(id);
  return answer({
    headline: `Retest first: ${label} ${shown(id, value)} is outside what a reef tank shows (${limitsOf(id).believable.join(' to ')} ${unit}), so nothing is worked out from it yet.`,
    read,
    steps: [
      'Check the unit you wrote and the one your kit prints.',
      'Test again with a fresh sample, and once with a second kit or a standard; look at the reagents’ dates.',
      'Measure salinity with a calibrated instrument: everything dissolved rises and falls with it.',
      'Then ask again with the reading you trust.',
    ],
    sources: ['practice'],
  });
}
