import * as fc from 'fast-check';
import { compounds } from '../../../core/dosing/compound.ts';
import { parameter, type ParameterId } from '../../../core/water/parameter.ts';
import { limitsOf } from '../../../core/water/limits.ts';

type Input = Readonly<Record<string, string>>;

/** Numbers as people and machines write them: round ones, long ones, the ends of a range and beyond. */
const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.oneof(
    fc.constantFrom(min, max),
    fc.double({ min, max, noNaN: true }).map((value) => Number(value.toFixed(1))),
    fc.double({ min, max, noNaN: true }).map((value) => Number(value.toPrecision(3))),
    fc.double({ min, max, noNaN: true }).map((value) => Number(value.toFixed(9))),
  );

/** From very small to very large. */
const anySize = (min: number, max: number): fc.Arbitrary<string> =>
  fc
    .tuple(
      fc.double({ min: Math.log10(min), max: Math.log10(max), noNaN: true }),
      fc.integer({ min: 1, max: 8 }),
    )
    .map(([power, figures]) => plain(Number((10 ** power).toPrecision(figures))));

const plain = (value: number): string => value.toFixed(12).replace(/\.?0+$/, '');

const volume = fc
  .tuple(anySize(0.02, 1e5), fc.constantFrom('L', 'gal', 'imp gal', 'mL', 'm3'))
  .map(([amount, unit]) => `${amount} ${unit}`);
const percent = fc.oneof(between(0.1, 100).map(plain), anySize(0.001, 300)).map((share) => `${share} %`);
const days = anySize(0.01, 400).map((many) => `${many} days`);
const gravityOrPpt = fc.oneof(
  between(0, 45).map((s) => `${plain(s)} ppt`),
  between(1, 1.035).map((sg) => sg.toFixed(4)),
  between(1, 70).map((mS) => `${plain(mS)} mS/cm`),
);

function level(id: ParameterId): fc.Arbitrary<string> {
  const { unit } = parameter(id);
  const { believable } = limitsOf(id);
  const units = id === 'alkalinity' ? ['dKH', 'meq/L', 'ppm'] : [unit];
  const value = fc.oneof(
    { arbitrary: between(0, believable[1] * 1.2).map(plain), weight: 6 },
    { arbitrary: anySize(1e-4, 1e6), weight: 1 },
  );
  return fc.tuple(value, fc.constantFrom(...units)).map(([amount, symbol]) => `${amount} ${symbol}`);
}

const optional = (text: fc.Arbitrary<string>): fc.Arbitrary<string | undefined> =>
  fc.option(text, { nil: undefined });

function inputs(fields: Readonly<Record<string, fc.Arbitrary<string | undefined>>>): fc.Arbitrary<Input> {
  return fc
    .record(fields)
    .map((found) =>
      Object.fromEntries(
        Object.entries(found).filter((entry): entry is [string, string] => entry[1] !== undefined),
      ),
    );
}

const dosed = compounds.flatMap((compound) => compound.raises.map((id) => ({ id, compound })));
const salt = fc.constantFrom(...dosed);
const mixed = fc.constantFrom<ParameterId>(
  'alkalinity',
  'calcium',
  'magnesium',
  'nitrate',
  'phosphate',
  'ammonia',
  'iodine',
);
const waste = fc.constantFrom<ParameterId>('nitrate', 'phosphate', 'ammonia', 'nitrite');
const rise = (id: ParameterId): fc.Arbitrary<string> =>
  fc.tuple(level(id), fc.constantFrom(' a week', ' a day')).map((parts) => parts.join(''));

/** What may be typed behind each command that answers with numbers, as its options. */
export const asked: Readonly<Record<string, fc.Arbitrary<Input>>> = {
  'dose amount': salt.chain(({ id, compound }) =>
    inputs({
      of: fc.constant(id),
      with: fc.constant(compound.name),
      now: optional(level(id)),
      goal: fc.oneof(
        level(id),
        level(id).map((by) => `+${by}`),
      ),
      volume: optional(volume),
      purity: optional(percent),
    }),
  ),
  'dose effect': salt.chain(({ compound }) =>
    inputs({
      with: fc.constant(compound.name),
      amount: fc.oneof(
        anySize(1e-4, 1e5).map((g) => `${g} g`),
        anySize(0.001, 1e4).map((ml) => `${ml} mL`),
      ),
      volume: optional(volume),
      strength: optional(anySize(0.001, 1e4).map((gL) => `${gL} g/L`)),
    }),
  ),
  'dose solution': salt.chain(({ id, compound }) =>
    inputs({
      with: fc.constant(compound.name),
      amount: anySize(1e-4, 1e5).map((g) => `${g} g`),
      volume,
      goal: optional(
        fc.oneof(
          level(id),
          level(id).map((by) => `+${by}`),
        ),
      ),
      now: optional(level(id)),
    }),
  ),
  'dose use': salt.chain(({ id }) =>
    inputs({
      of: fc.constant(id),
      before: level(id),
      now: level(id),
      over: days,
      amount: optional(level(id)),
      volume: optional(volume),
    }),
  ),
  'dose limewater': inputs({
    amount: volume,
    volume: optional(volume),
    goal: optional(anySize(1e-3, 30).map((dkh) => `${dkh} dKH`)),
    temperature: optional(between(-2, 45).map((c) => `${plain(c)} C`)),
  }),
  'waterchange once': mixed.chain((id) =>
    inputs({
      of: fc.constant(id),
      now: level(id),
      goal: optional(level(id)),
      fresh: optional(level(id)),
      share: optional(percent),
      amount: optional(volume),
      volume: optional(volume),
    }),
  ),
  'waterchange goal': mixed.chain((id) =>
    inputs({
      of: fc.constant(id),
      now: level(id),
      goal: level(id),
      share: percent,
      fresh: optional(level(id)),
      every: optional(days),
      rise: optional(rise(id)),
      volume: optional(volume),
    }),
  ),
  'waterchange routine': waste.chain((id) =>
    inputs({
      of: fc.constant(id),
      rise: rise(id),
      share: percent,
      goal: optional(level(id)),
      now: optional(level(id)),
      fresh: optional(level(id)),
      every: optional(days),
      volume: optional(volume),
    }),
  ),
  'waterchange drip': mixed.chain((id) =>
    inputs({
      of: fc.constant(id),
      now: level(id),
      fresh: level(id),
      share: percent,
      every: optional(days),
      volume: optional(volume),
    }),
  ),
  'salinity adjust': inputs({
    now: gravityOrPpt,
    goal: optional(gravityOrPpt),
    volume: optional(volume),
    pace: optional(between(0, 3).map((ppt) => `${plain(ppt)} ppt`)),
    fresh: optional(gravityOrPpt),
  }),
  'salinity mix': inputs({
    volume,
    goal: optional(gravityOrPpt),
    amount: optional(anySize(0.001, 1000).map((kg) => `${kg} kg`)),
  }),
  'salinity check': inputs({
    reading: gravityOrPpt,
    standard: optional(gravityOrPpt),
    temperature: optional(between(0, 40).map((c) => `${plain(c)} C`)),
  }),
  'salinity convert': inputs({
    reading: gravityOrPpt,
    temperature: optional(between(0, 40).map((c) => `${plain(c)} C`)),
  }),
  convert: inputs({
    value: fc
      .tuple(
        anySize(1e-6, 1e7),
        fc.constantFrom('dKH', 'meq/L', 'gal', 'L', 'F', 'C', 'g', 'oz', 'mS/cm', 'mg/L', 'ppb P'),
      )
      .map((parts) => parts.join(' ')),
  }),
};
