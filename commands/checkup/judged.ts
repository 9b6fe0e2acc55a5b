import type { OwnUnits } from '../../core/log/value.ts';
import { printed } from '../../core/log/value.ts';
import { fixed } from '../../core/quantity/format.ts';
import {
  followsSalinity,
  isOff,
  judge,
  usualRange,
  type Judged,
  type RangeOf,
  type Value,
} from '../../core/water/assess.ts';
import { loggable, type LoggableId } from '../../core/water/loggable.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { aimWords } from '../log/ranges.ts';
import type { PreferredUnits } from '../keep.ts';
import { stepFor } from './advice.ts';

/** Readings to judge, and whose. */
export interface Judging {
  readonly values: readonly Value[];
  readonly read: readonly string[];
  /** The usual ranges where left out. */
  readonly rangeOf?: RangeOf;
  /** What the range of a parameter is called: "usual" where left out. */
  readonly rangeName?: (id: LoggableId) => string;
  readonly units?: PreferredUnits;
  /** Steps that follow from something else than the numbers. */
  readonly steps?: readonly string[];
}

/** Judges a line of readings: urgent and doubtful ones first, then what to do in which order, often nothing. */
export function judgedAnswer(judging: Judging): Answer {
  const { values, read, rangeOf = usualRange, units = {}, steps = [] } = judging;
  const judged = judge(values, rangeOf);
  const acting = judged.filter(isOff);
  const salinity = values.find(({ parameter }) => parameter === 'salinity')?.value;
  return answer({
    headline: headline(judged, units, rangeOf === usualRange ? 'in the usual range' : 'where it should be'),
    read,
    facts: judged.map((one) => fact(one, judging)),
    steps: [
      ...acting.map((one) => stepFor(one, units)),
      ...unmeasuredSalinity(judged, salinity),
      ...(acting.length > 1
        ? ['One thing at a time, in this order; test again before each further step.']
        : []),
      ...steps,
    ],
    working: judged.flatMap(({ parameter: id, value, at35 }) =>
      at35 === undefined || salinity === undefined
        ? []
        : [
            `${loggable(id).label} at salinity 35: ${printed(id, value)} x 35 / ${fixed(salinity, 1)} = ${printed(id, at35)}`,
          ],
    ),
    cautions: [
      ...urgentCautions(judged),
      ...edgeCautions(judged),
      'Ranges are common practice, not law. Numbers that hold still matter more than numbers that are perfect.',
    ],
    sources: ['practice'],
  });
}

function headline(judged: readonly Judged[], units: OwnUnits, place: string): string {
  const named = ({ parameter: id, value }: Judged): string =>
    `${loggable(id).label} ${printed(id, value, units)}`;
  const [first] = judged;
  if (first?.verdict === 'urgent')
    return `Urgent: ${named(first)}. Confirm it with a second test now, and act today.`;
  if (first?.verdict === 'doubtful') {
    return `Test ${loggable(first.parameter).label} again first: ${printed(first.parameter, first.value, units)} is hard to believe. Dose nothing until then.`;
  }
  const notable = judged.filter(({ verdict }) => verdict !== 'fine');
  if (notable.length === 0) return `All of it is ${place}. No dose needed: nothing to do but keep it there.`;
  const names = notable.map(({ parameter: id, verdict }) => `${loggable(id).label} ${verdict}`);
  const rest = notable.length === judged.length ? '' : ` The rest is ${place}.`;
  return `${notable.some(isOff) ? 'Worth a look' : 'Nothing to act on'}: ${names.join(', ')}.${rest}`;
}

function fact({ parameter: id, value, verdict, range, at35 }: Judged, judging: Judging): Fact {
  const { units = {}, rangeName = () => 'usual' } = judging;
  const scaled = at35 === undefined ? '' : `, ${printed(id, at35, units)} at salinity 35`;
  const aim = aimWords(id, range, rangeName(id), units);
  return { label: loggable(id).label, value: `${printed(id, value, units)}${scaled} (${aim})`, verdict };
}

/** Calcium and magnesium say little where the salinity they belong to is not known. */
function unmeasuredSalinity(judged: readonly Judged[], salinity: number | undefined): readonly string[] {
  const moved = judged.filter(({ parameter: id, verdict }) => followsSalinity(id) && verdict !== 'fine');
  if (salinity !== undefined || moved.length === 0) return [];
  return [
    `Measure salinity before you act on ${moved.map(({ parameter: id }) => loggable(id).label).join(' or ')}: low salinity alone reads as too little of both, high salinity as too much.`,
  ];
}

function edgeCautions(judged: readonly Judged[]): readonly string[] {
  if (!judged.some(({ verdict }) => verdict === 'at the edge')) return [];
  return [
    'Salinity is outside its range by no more than the instrument can be off: check it on a 35 ppt standard before you change anything.',
  ];
}

function urgentCautions(judged: readonly Judged[]): readonly string[] {
  if (!judged.some(({ verdict }) => verdict === 'urgent')) return [];
  const isAmmonia = judged.some(({ parameter: id, verdict }) => id === 'ammonia' && verdict === 'urgent');
  return [
    isAmmonia
      ? 'Ammonia harms gills within hours, the more the higher the pH. Fish gasping or lying down: ask a vet who knows fish; I name no medicine and no dose of one.'
      : 'Fish gasping or lying down: ask a vet who knows fish; I name no medicine and no dose of one.',
    'Switch off at the wall what you work on before your hands go into the water.',
  ];
}
