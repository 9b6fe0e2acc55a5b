import { printed } from '../../core/log/value.ts';
import { fixed } from '../../core/quantity/format.ts';
import {
  followsSalinity,
  isOff,
  judge,
  readingOf,
  usualRange,
  type Judged,
} from '../../core/water/assess.ts';
import { parameter } from '../../core/water/parameter.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { aimWords } from '../log/ranges.ts';
import { headline, type Judging } from './headline.ts';
import { stepsFor } from './advice.ts';

/** Judges a line of readings: urgent and doubtful ones first, then what to do in which order, often nothing. */
export function judgedAnswer(judging: Judging): Answer {
  const { values, read, rangeOf = usualRange, units = {}, steps = [], trouble, moves = [] } = judging;
  const judged = judge(values, rangeOf);
  const acting = judged.filter(isOff);
  const salinity = readingOf(values, 'salinity')?.value;
  return answer({
    headline: headline(judged, judging),
    read,
    tone: judged[0]?.verdict === 'urgent' ? 'urgent' : 'plain',
    facts: judged.map((one) => fact(one, judging)),
    isList: true,
    steps: [
      ...acting.flatMap((one) => stepsFor(one, units)),
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
    dangers: urgentDangers(judged),
    cautions: [
      ...edgeCautions(judged),
      'Ranges are common practice, not law. Numbers that hold still matter more than numbers that are perfect.',
    ],
    sources: ['practice'],
    next: trouble === undefined ? [] : [{ label: say('checkup.whatISee'), command: 'triage', input: {} }],
  });
}

const MOVED_STEP =
  'Test what moved once more, same hour, same kit; /water moved tells what may have moved it.';

function troubleStep(trouble: string): string {
  return `For what you see (${trouble}): look at light, flow, neighbours and recent changes, then /triage.`;
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
    `Measure salinity before you act on ${moved.map(({ parameter: id }) => parameter(id).label).join(' or ')}: it moves both.`,
  ];
}

function edgeCautions(judged: readonly Judged[]): readonly string[] {
  if (!judged.some(({ verdict }) => verdict === 'at the edge')) return [];
  return [
    'Salinity is outside its range by no more than the instrument can be off: check it on a 35 ppt standard before you change anything.',
  ];
}

function urgentDangers(judged: readonly Judged[]): readonly string[] {
  if (!judged.some(({ verdict }) => verdict === 'urgent')) return [];
  const isAmmonia = judged.some(({ parameter: id, verdict }) => id === 'ammonia' && verdict === 'urgent');
  return [
    ...(isAmmonia ? ['Ammonia harms gills within hours, the more the higher the pH.'] : []),
    'Fish gasping or lying down: ask a vet who knows fish; I name no medicine and no dose of one.',
    'Switch off at the wall what you work on before your hands go into the water.',
  ];
}
