import { z } from 'zod';
import { Problem } from '../../core/problem.ts';
import { printed } from '../../core/log/value.ts';
import { fixed, fromUnit, inUnit, toUnit } from '../../core/quantity/format.ts';
import { readAlike, type Quantity } from '../../core/quantity/read.ts';
import { levelCard } from '../../core/care/urgent/level-card.ts';
import { isBelievable, limitsOf, sideOf, urgentSide, type Side } from '../../core/water/limits.ts';
import { findParameter, parameter, parameterIds, type ParameterId } from '../../core/water/parameter.ts';
import { possible } from '../../core/water/possible.ts';
import { twoReadings } from '../../core/water/two-readings.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { fittingHeadline } from '../fitting.ts';
import { textOption } from '../options.ts';
import { comparedSalinity } from '../salinity/compared.ts';
import { proofSteps } from './kit-proof.ts';
import { say } from '../../core/wording/say.ts';

export const kitsCommand = defineCommand({
  path: ['water', 'kits'],
  summary: 'Two kits or instruments on one water: whether they agree, and which to believe',
  example: '/water kits of:alkalinity first:180 ppm second:240 ppm',
  options: z.strictObject({
    of: textOption('What both measured: alkalinity, nitrate, pH, ...', { suggest: 'parameter' }),
    first: textOption('What one shows, with its unit'),
    second: textOption('What the other shows'),
  }),
  run: ({ of, first, second }): Answer => {
    const id = findParameter(of);
    if (id === undefined) {
      const limit = parameterIds.map((one) => parameter(one).label).join(', ');
      throw new Problem(say('water.iDoNotKnow', { of }), { field: 'of', given: of, limit });
    }
    if (id === 'salinity') return comparedSalinity({ text: first }, { text: second });
    const texts = [
      { text: first, field: 'first' },
      { text: second, field: 'second' },
    ];
    const { kind, unit } = parameter(id);
    const [a, b] = readAlike(kind, texts);
    if (a === undefined || b === undefined) throw new Error('readAlike lost a reading');
    const [one, other] = [a, b].map(({ value }, index) =>
      possible(id, texts[index]?.field ?? 'first', toUnit(kind, value, unit)),
    );
    return compared(id, [a, b], one ?? 0, other ?? 0);
  },
});

function compared(id: ParameterId, readings: readonly Quantity[], one: number, other: number): Answer {
  const { agree, units } = twoReadings(id, one, other);
  const each = readings.map((reading) => shown(id, reading));
  const apart = apartBy(id, one, other);
  const isUsual = [one, other].every((value) => sideOf(value, limitsOf(id).usual) === undefined);
  const urgent = oddHeadline(id, [one, other]) ?? worst(id, [one, other]);
  const calm = agree
    ? fittingHeadline(
        `${each.join('; ')}: ${apart}, which is within what kits scatter.`,
        `The two are ${apart}, which is within what kits scatter.`,
      )
    : disagree(id, each, apart);
  const headline = urgent ?? calm;
  return answer({
    headline,
    tone: urgent === undefined ? 'plain' : 'urgent',
    read: [...new Set(readings.flatMap(({ notes }) => notes))],
    facts: [
      ...(headline.includes(each.join('; ')) ? [] : each.map((value) => ({ label: 'shown', value }))),
      ...(urgent === undefined
        ? []
        : [{ label: 'the two', value: agree ? `${apart}, within what kits scatter` : apart }]),
      ...meaning(id, units, isUsual),
      ...(id === 'alkalinity' ? [eightDkh] : []),
    ],
    steps: proofSteps(id),
    working: id === 'alkalinity' ? ['1 meq/L = 2.804 dKH = 50.04 mg/L CaCO3'] : [],
    cautions: ['A mean of a right and a wrong reading is wrong: do not take it.'],
    sources: id === 'alkalinity' ? ['dkh', 'iupac21', 'practice'] : ['iupac21', 'practice'],
  });
}

function disagree(id: ParameterId, each: readonly string[], apart: string): string {
  const then = `${id === 'temperature' || id === 'ph' ? 'Change' : 'Dose'} nothing until you know which is right.`;
  return fittingHeadline(
    `The kits disagree: ${each.join('; ')}, ${apart}. ${then}`,
    `The kits disagree: ${each.map((one) => one.split(' = ').at(-1)).join('; ')}, ${apart}. ${then}`,
    `The kits disagree: ${apart}. ${then}`,
  );
}

/** 8 dKH in the unit kits of other places print. */
const eightDkh: Fact = {
  label: '8 dKH would read',
  value: inUnit('alkalinity', fromUnit('alkalinity', 8, 'dKH'), 'ppm CaCO3', 0),
};

function meaning(id: ParameterId, units: string | undefined, isUsual: boolean): readonly Fact[] {
  const [low, high] = limitsOf(id).usual;
  return [
    ...(units === undefined
      ? []
      : [
          {
            label: 'perhaps one number in two units',
            value: `${units}: look what each kit prints`,
          },
        ]),
    ...(isUsual
      ? [
          {
            label: 'by either one',
            value: `${parameter(id).label} is where reefs are kept (${`${low} to ${high} ${parameter(id).unit}`.trim()}): nothing to do today`,
          },
        ]
      : []),
  ];
}

/** "180 ppm CaCO3 = 3.6 meq/L = 10.1 dKH", "2.3 mg/L NO3-N = 10.2 mg/L". */
function shown(id: ParameterId, { value, written, unit }: Quantity): string {
  const { kind, unit: own, decimals } = parameter(id);
  const text = `${fixed(written, decimals + 1)} ${unit}`.trim();
  const others = id === 'alkalinity' ? ['meq/L', own] : [own];
  const same = others.filter((symbol) => symbol !== unit);
  return [text, ...same.map((symbol) => inUnit(kind, value, symbol, symbol === 'meq/L' ? 2 : decimals))].join(
    ' = ',
  );
}

/** From so many times on a percentage is hard to read. */
const MANY = 2;

/** Where one of the two would be an emergency, nobody waits for the proof. */
function worst(id: ParameterId, values: readonly number[]): string | undefined {
  const side = values.map((value) => urgentSide(id, value)).find((one) => one !== undefined);
  return side === undefined
    ? undefined
    : `One of the two would be urgent: look at the animals now, and until you know act as if it were right (${urgentCall(id, side)}).`;
}

function urgentCall(id: ParameterId, side: Side): string {
  const card = levelCard(id, side);
  return `/urgent${card === undefined ? '' : ` what:${card}`}`;
}

/** Of a reading that would show on the animals at once. */
function oddHeadline(id: ParameterId, values: readonly number[]): string | undefined {
  const odd = oddOne(id, values);
  const side = odd === undefined ? undefined : urgentSide(id, odd);
  if (odd === undefined || side === undefined) return undefined;
  return `Look at the animals now. If they are well, ${printed(id, odd)} cannot be true; if not, ${urgentCall(id, side)}.`;
}

/** Levels that show on the animals at once, where they are beyond belief. Common practice, no source. */
const SHOWS_AT_ONCE: ReadonlySet<ParameterId> = new Set(['temperature', 'ph']);

/** The one reading no animal would look well in, where the other is usual. */
function oddOne(id: ParameterId, values: readonly number[]): number | undefined {
  if (!SHOWS_AT_ONCE.has(id)) return undefined;
  const isUsual = values.some((value) => sideOf(value, limitsOf(id).usual) === undefined);
  return isUsual ? values.find((value) => !isBelievable(id, value)) : undefined;
}

/** "33 % apart", or by how much where a share says nothing. */
function apartBy(id: ParameterId, one: number, other: number): string {
  const { unit, decimals } = parameter(id);
  const least = Math.min(one, other);
  const isShare = id !== 'ph' && id !== 'temperature' && least > 0;
  const ratio = Math.max(one, other) / least;
  if (isShare && ratio >= MANY) return `one ${fixed(ratio, 1)} times the other`;
  return isShare
    ? `${fixed((100 * Math.abs(one - other)) / least, 0)} % apart`
    : `${fixed(Math.abs(one - other), decimals)} ${unit} apart`.replace('  ', ' ');
}
