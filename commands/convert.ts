import { z } from 'zod';
import { Problem } from '../core/problem.ts';
import { significant, toUnit } from '../core/quantity/format.ts';
import { readQuantity, type Quantity } from '../core/quantity/read.ts';
import { definitionOf, quantities, type QuantityKind } from '../core/quantity/unit.ts';
import type { SourceCode } from '../core/sources.ts';
import { findParameter, parameter } from '../core/water/parameter.ts';
import { answer, type Answer } from './answer.ts';
import { defineCommand } from './command.ts';
import { phosphorus } from './convert/phosphorus.ts';
import { textOption } from './options.ts';
import { say } from '../core/wording/say.ts';

/** Kinds a text is tried as when nothing says what is measured: one for every unit that can be written. */
const TRIED = (Object.keys(quantities) as QuantityKind[]).filter((kind) => kind !== 'hours' && kind !== 'ph');

const basis: Partial<Record<QuantityKind, readonly SourceCode[]>> = {
  alkalinity: ['dkh', 'iupac21'],
  nitrate: ['iupac21'],
  phosphate: ['iupac21'],
  ammonia: ['iupac21'],
  nitrite: ['iupac21'],
};

export const convertCommand = defineCommand({
  path: ['convert'],
  summary: 'One value in every unit keepers use: volume, mass, alkalinity, nitrate, phosphate, temperature',
  example: '/convert amount:180 ppm of:alkalinity',
  options: z.strictObject({
    amount: textOption('The value with its unit, e.g. 75 gal, 8.3 dKH, 18 ppb P, 120 x 50 x 50 cm'),
    of: textOption('What it is, where the unit does not say: alkalinity, nitrate, phosphate, ...', {
      suggest: 'parameter',
    }).optional(),
  }),
  run: (input): Answer => convert(input.amount, input.of),
});

/** Shows `text` in every unit of its kind. */
export function convert(text: string, of?: string): Answer {
  const read = of === undefined ? readAny(text) : readQuantity(kindOf(of), text, { field: 'amount' });
  const inPpb = phosphorus(read);
  if (inPpb !== undefined) return inPpb;
  const { units } = definitionOf(read.kind);
  const symbols = [...new Set(units.map((unit) => unit.symbol))].filter((symbol) => symbol !== '');
  const shown = `${significant(read.written, 5)} ${read.unit}`.trim();
  const others = symbols.filter((symbol) => symbol !== read.unit);
  const main = others
    .slice(0, 3)
    .map((symbol) => `${significant(toUnit(read.kind, read.value, symbol), 4)} ${symbol}`);
  if (main.length === 0) {
    throw new Problem(say('convert.hasNoOtherUnit', { label: definitionOf(read.kind).label }), {
      field: 'amount',
      given: text,
      hint: say('convert.haveReadingJudgedCheckup'),
    });
  }
  return answer({
    headline: `${shown} is ${main.join(', ')}.`,
    read: [`${shown} as ${definitionOf(read.kind).label}`, ...read.notes],
    facts: symbols.map((symbol) => ({
      label: symbol,
      value: significant(toUnit(read.kind, read.value, symbol), 5),
    })),
    sources: ['si19', ...(basis[read.kind] ?? [])],
  });
}

function kindOf(of: string): QuantityKind {
  const id = findParameter(of);
  if (id !== undefined) return parameter(id).kind;
  const wanted = of.trim().toLowerCase();
  const kind = (Object.keys(quantities) as QuantityKind[]).find((k) => k === wanted);
  if (kind !== undefined) return kind;
  throw new Problem(say('convert.iDoNotKnow', { of }), {
    field: 'of',
    given: of,
    limit: say('convert.alkalinityNitratePhosphateVolume'),
  });
}

function readAny(text: string): Quantity {
  const found = TRIED.flatMap((kind) => attempt(kind, text));
  const [first, second] = found;
  if (first === undefined) {
    throw new Problem(say('convert.iCouldNotRead'), {
      field: 'amount',
      given: text,
      hint: say('convert.example75Gal8'),
    });
  }
  if (second === undefined) return first;
  throw new Problem(say('convert.whatAnswerDependsOn', { trim: text.trim() }), {
    field: 'of',
    choices: found.map((q) => q.kind),
  });
}

/** Reads only where the text names a unit of that kind, so that a bare number is never claimed by chance. */
function attempt(kind: QuantityKind, text: string): Quantity[] {
  if (!/[a-zµ°%"'³]/i.test(text)) return [];
  try {
    return [readQuantity(kind, text, { field: 'amount' })];
  } catch (error) {
    if (error instanceof Problem) return [];
    throw error;
  }
}
