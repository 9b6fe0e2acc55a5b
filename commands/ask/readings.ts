import { fixed, significant, toUnit } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { judge, SALINITY_TARGET, usual, type Judged } from '../../core/water/assess.ts';
import { parameter, type ParameterId } from '../../core/water/parameter.ts';
import { readSalinity, type SalinityReading } from '../../core/water/salinity-reading.ts';
import type { Heard } from '../../core/words/hear.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { says, type Intent } from './intent.ts';

/** How many readings make a line of readings rather than a question about one of them. */
const LINE = 4;

/** A pasted line of readings: each judged, the doubtful first, then what to do, often nothing. */
export const readingsIntent: Intent = (heard) => judged(heard, LINE);

/** "my alk is 6.5, what's up": one or two readings and no other question. */
export const readingIntent: Intent = (heard) => judged(heard, 1);

function judged(heard: Heard, fewest: number): Answer | undefined {
  if (heard.said.some(({ role }) => role === 'goal' || role === 'step')) return undefined;
  const values = latest(heard);
  const salinity = salinityOf(heard);
  if (values.length === 0 || values.length + (salinity === undefined ? 0 : 1) < fewest) return undefined;
  return judgeLine(heard, values, salinity);
}

interface Value {
  readonly parameter: ParameterId;
  readonly value: number;
  readonly notes: readonly string[];
}

/** The first number said of each parameter, in its own unit; a line pasted twice counts once. */
function latest(heard: Heard): Value[] {
  const seen = new Map<ParameterId, Value>();
  for (const { parameter: id, mention, role } of heard.said) {
    if (id === 'salinity' || seen.has(id) || role === 'rise' || role === 'use') continue;
    const { kind, unit } = parameter(id);
    const read = readQuantity(kind, mention.text, {
      field: id,
      fallback: id === 'temperature' ? undefined : unit,
    });
    seen.set(id, { parameter: id, value: toUnit(kind, read.value, unit), notes: read.notes });
  }
  return [...seen.values()];
}

function salinityOf(heard: Heard): SalinityReading | undefined {
  const said = heard.said.find(({ parameter: id }) => id === 'salinity');
  return said === undefined ? undefined : readSalinity(said.mention.text, { field: 'salinity' });
}

function judgeLine(heard: Heard, values: readonly Value[], salinity: SalinityReading | undefined): Answer {
  const judged = judge(values, salinity?.practicalSalinity);
  const doubtful = judged.filter(({ verdict }) => verdict === 'doubtful');
  const off = judged.filter(({ verdict }) => verdict === 'low' || verdict === 'high');
  const salt = salinity === undefined ? undefined : saltVerdict(salinity.practicalSalinity);
  const steps = [
    ...doubtful.map(doubt),
    ...saltSteps(salinity, salt),
    ...off.map(advice),
    ...ageSteps(heard, judged),
  ];
  return answer({
    headline: headline(doubtful, off, salt),
    read: [...(salinity?.notes ?? []), ...values.flatMap(({ notes }) => notes)],
    facts: [...judged.map(fact), ...(salinity === undefined ? [] : [saltFact(salinity, salt)])],
    steps,
    working: judged.flatMap((one) =>
      one.at35 === undefined || salinity === undefined
        ? []
        : [
            `${parameter(one.parameter).label} at salinity 35: ${print(one.parameter, one.value)} x 35 / ${fixed(salinity.practicalSalinity, 1)} = ${print(one.parameter, one.at35)}`,
          ],
    ),
    cautions: [
      'Ranges are common practice, not law. Numbers that hold still matter more than numbers that are perfect.',
    ],
    sources: ['practice', 'm08'],
  });
}

function headline(doubtful: readonly Judged[], off: readonly Judged[], salt: string | undefined): string {
  const [first] = doubtful;
  if (first !== undefined) {
    return `Test ${parameter(first.parameter).label} again first: ${print(first.parameter, first.value)} is hard to believe. Dose nothing until then.`;
  }
  const names = [
    ...(salt === undefined || salt === 'fine' ? [] : [`salinity ${salt}`]),
    ...off.map((o) => `${parameter(o.parameter).label} ${o.verdict}`),
  ];
  if (names.length === 0)
    return 'All of it is in the usual range. No dose needed: nothing to do but keep it there.';
  return `Worth a look: ${names.join(', ')}. The rest is in the usual range.`;
}

function print(id: ParameterId, value: number): string {
  const { unit, decimals } = parameter(id);
  return `${fixed(value, decimals)} ${unit}`.trim();
}

function fact({ parameter: id, value, verdict }: Judged): Fact {
  const { label, target, decimals, unit } = parameter(id);
  const range = `usual ${fixed(target[0], decimals)} to ${fixed(target[1], decimals)} ${unit}`.trim();
  return { label, value: `${print(id, value)} (${range})`, verdict };
}

function saltVerdict(practicalSalinity: number): 'low' | 'high' | 'fine' {
  if (usual(practicalSalinity)) return 'fine';
  return practicalSalinity < SALINITY_TARGET[0] ? 'low' : 'high';
}

function saltFact(salinity: SalinityReading, verdict: string | undefined): Fact {
  const range = `usual ${SALINITY_TARGET[0]} to ${SALINITY_TARGET[1]}`;
  return {
    label: 'salinity',
    value: `${fixed(salinity.practicalSalinity, 1)} ppt (${range})`,
    ...(verdict === undefined ? {} : { verdict }),
  };
}

function doubt({ parameter: id, value, at35 }: Judged): string {
  const { label } = parameter(id);
  const scaled = at35 === undefined ? '' : `; at salinity 35 it would be ${print(id, at35)}`;
  return `Retest ${label} with a fresh sample and, if you can, another kit: ${print(id, value)} is more likely a test error${scaled}. Do not dose anything to balance it.`;
}

function saltSteps(salinity: SalinityReading | undefined, verdict: string | undefined): string[] {
  if (salinity === undefined || verdict === undefined || verdict === 'fine') return [];
  const way = verdict === 'low' ? 'raise' : 'lower';
  return [
    `Check the salinity instrument, then ${way} slowly towards 35, about 1 ppt (0.001) a day, before any other correction: it moves calcium and magnesium with it.`,
  ];
}

function advice({ parameter: id, value, verdict }: Judged): string {
  const { label, target, kitResolution } = parameter(id);
  if ((id === 'nitrate' || id === 'phosphate') && value < kitResolution && verdict === 'low') {
    return `${label} ${significant(value)} on a kit means below its limit, not none. Retest, and feed a little more before dosing any.`;
  }
  if (verdict === 'low')
    return `${label} is below the usual ${print(id, target[0])}: retest, then raise it slowly if it is confirmed.`;
  return `${label} is above the usual ${print(id, target[1])}: retest, find what brings it in, and let it come down slowly.`;
}

function ageSteps(heard: Heard, judged: readonly Judged[]): string[] {
  const young = says(
    heard,
    String.raw`(?:a |one |two |[1-8] )?(?:day|week|month)s?[- ]old`,
    'new tank',
    'just cycled',
  );
  const bare = judged.some(
    ({ parameter: id, verdict }) => (id === 'nitrate' || id === 'phosphate') && verdict === 'low',
  );
  if (young) {
    return [
      `A tank this young is still changing${bare ? ', and its nutrients read zero' : ''}: wait some weeks more, or begin with one hardy soft coral and watch it.`,
    ];
  }
  if (!says(heard, 'add', 'coral', 'corals', 'acros?', 'acropora', 'sps', 'lps', 'ready')) return [];
  return [
    'How old is the tank, and how long have these numbers held? Age and steadiness say more about new corals than one good line.',
  ];
}
