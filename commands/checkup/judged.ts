import { type OwnUnits, printed } from '../../core/log/value.ts';
import { fixed } from '../../core/quantity/format.ts';
import {
  followsSalinity,
  isOff,
  judge,
  readingOf,
  usualRange,
  type Judged,
  type RangeOf,
  type Value,
} from '../../core/water/assess.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { aimWords } from '../log/ranges.ts';
import type { PreferredUnits } from '../keep.ts';
import { namedWith, stepFor } from './advice.ts';
import { urgentSide } from '../../core/water/limits.ts';

/** Readings to judge, and whose. */
export interface Judging {
  readonly values: readonly Value[];
  readonly read: readonly string[];
  /** The usual ranges where left out. */
  readonly rangeOf?: RangeOf;
  /** What the range of a parameter is called: "usual" where left out. */
  readonly rangeName?: (id: ParameterId) => string;
  readonly units?: PreferredUnits;
  /** Steps that follow from something else than the numbers. */
  readonly steps?: readonly string[];
  /** Numbers given and not used: while there are any, nothing is called fine. The caller names them in `read`, too. */
  readonly unused?: readonly string[];
  /** The words by which trouble was reported beside the numbers. */
  readonly trouble?: string | undefined;
  /** How levels came to where they are, where that was fast: in range is not yet fine then. */
  readonly moves?: readonly string[];
  /** Other words beside them that nobody looked at. */
  readonly beside?: string | undefined;
}

/** Judges a line of readings: urgent and doubtful ones first, then what to do in which order, often nothing. */
export function judgedAnswer(judging: Judging): Answer {
  const { values, read, rangeOf = usualRange, units = {}, steps = [], trouble, moves = [] } = judging;
  const judged = judge(values, rangeOf);
  const acting = judged.filter(isOff);
  const salinity = readingOf(values, 'salinity')?.value;
  return answer({
    headline: headline(judged, judging),
    read,
    facts: judged.map((one) => fact(one, judging)),
    steps: [
      ...acting.map((one) => stepFor(one, units)),
      ...unmeasuredSalinity(judged, salinity),
      ...(acting.length > 1
        ? ['One thing at a time, in this order; test again before each further step.']
        : []),
      ...(moves.length === 0 ? [] : [MOVED_STEP]),
      ...(trouble === undefined ? [] : [troubleStep(trouble)]),
      ...steps,
    ],
    working: judged.flatMap(({ parameter: id, value, at35 }) =>
      at35 === undefined || salinity === undefined
        ? []
        : [
            `${parameter(id).label} at salinity 35: ${printed(id, value)} x 35 / ${fixed(salinity, 1)} = ${printed(id, at35)}`,
          ],
    ),
    cautions: [
      ...urgentCautions(judged),
      ...edgeCautions(judged),
      'Ranges are common practice, not law. Numbers that hold still matter more than numbers that are perfect.',
    ],
    sources: ['practice'],
    next: trouble === undefined ? [] : [{ label: 'What I see in the tank', command: 'triage', input: {} }],
  });
}

function headline(judged: readonly Judged[], judging: Judging): string {
  const { units = {} } = judging;
  const [first] = judged;
  if (first === undefined) return 'There is no reading to judge.';
  const named = namedWith(first, units);
  if (first.verdict === 'urgent')
    return `Urgent: ${urgentWords(judged, units)}. Confirm ${isOne(judged) ? 'it' : 'them'} with a second test now, and act today.${alsoSalinity(judged, units)}`;
  if (first.verdict === 'doubtful') {
    return `Test ${parameter(first.parameter).label} again first: ${named} is hard to believe. Dose nothing until then.${alsoSalinity(judged, units)}`;
  }
  const notable = judged.filter(({ verdict }) => verdict !== 'fine');
  const place = placeOf(judging);
  if (notable.length === 0) return fine(judging, place);
  const names = notable.map(({ parameter: id, verdict, at35 }) => {
    const by = at35 === undefined ? '' : ' at salinity 35';
    return `${parameter(id).label} ${verdict}${by}`;
  });
  const rest = notable.length === judged.length ? '' : ` The rest is ${place}.`;
  const { trouble, moves = [] } = judging;
  const lead = trouble === undefined ? '' : `You tell of trouble (${trouble}): look at that first. `;
  const also = moves.length === 0 ? '' : ` And ${moves.join('; ')}.`;
  return `${lead}${notable.some(isOff) ? 'Worth a look' : nothingElse(judging)}: ${names.join(', ')}.${also}${rest}`;
}

/** Every urgent reading, in the order to act in. */
function urgentWords(judged: readonly Judged[], units: OwnUnits): string {
  return judged
    .filter(({ verdict }) => verdict === 'urgent')
    .map((one) => `${namedWith(one, units)} is too ${urgentSide(one.parameter, one.value) ?? 'high'}`)
    .join(', ');
}

function isOne(judged: readonly Judged[]): boolean {
  return judged.filter(({ verdict }) => verdict === 'urgent').length === 1;
}

function placeOf({ rangeOf = usualRange }: Judging): string {
  return rangeOf === usualRange ? 'in the usual range' : 'where it should be';
}

/** "Fine" only where every number was used and no trouble was reported. */
function fine({ unused = [], trouble, beside, moves = [] }: Judging, place: string): string {
  if (moves.length > 0) return `In range now, but ${moves.join('; ')}. Find out why first.`;
  if (trouble !== undefined)
    return `These numbers are ${place}, so what you see (${trouble}) has another cause: look for that next.`;
  if (unused.length > 0) return `What I could read is ${place}. I did not use: ${unused.join('; ')}.`;
  if (beside !== undefined)
    return `No dose needed: these numbers are ${place}. I judged only the numbers, not "${beside}".`;
  return `All of it is ${place}. No dose needed: nothing to do but keep it there.`;
}

function nothingElse({ unused = [], trouble }: Judging): string {
  return trouble === undefined && unused.length === 0 ? 'Nothing to act on' : 'By these numbers';
}

/** Salinity that is off is in the first line, whatever else is worse. */
function alsoSalinity([, ...others]: readonly Judged[], units: OwnUnits): string {
  const off = readingOf(
    others.filter((one) => isOff(one) && one.verdict !== 'urgent'),
    'salinity',
  );
  return off === undefined ? '' : ` And ${namedWith(off, units)} is off, too.`;
}

const MOVED_STEP =
  'Test what moved once more, at the same hour with the same kit; /water moved tells what may have moved it.';

function troubleStep(trouble: string): string {
  return `You tell of trouble (${trouble}): look at light, flow, neighbours and what was changed lately, and go through /triage.`;
}

function fact({ parameter: id, value, verdict, range, at35 }: Judged, judging: Judging): Fact {
  const { units = {}, rangeName = () => 'usual' } = judging;
  const scaled = at35 === undefined ? '' : `, ${printed(id, at35, units)} at salinity 35`;
  const aim = aimWords(id, range, rangeName(id), units);
  return { label: parameter(id).label, value: `${printed(id, value, units)}${scaled} (${aim})`, verdict };
}

/** Calcium and magnesium say little where the salinity they belong to is not known. */
function unmeasuredSalinity(judged: readonly Judged[], salinity: number | undefined): readonly string[] {
  const moved = judged.filter(({ parameter: id, verdict }) => followsSalinity(id) && verdict !== 'fine');
  if (salinity !== undefined || moved.length === 0) return [];
  return [
    `Measure salinity before you act on ${moved.map(({ parameter: id }) => parameter(id).label).join(' or ')}: low salinity alone reads as too little of both, high salinity as too much.`,
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
