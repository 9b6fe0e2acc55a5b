import { inRange, Problem } from '../problem.ts';
import { clean } from '../quantity/clean.ts';
import { hasAmbiguousComma, normaliseNumbers } from '../quantity/number.ts';
import { definitionOf } from '../quantity/unit.ts';
import { say } from '../wording/say.ts';
import type { Shape, Size } from './shape.ts';

/** The lengths each shape is described by, in the order they are written. */
export const forms: Readonly<Record<Shape, readonly string[]>> = {
  box: ['length', 'width', 'height'],
  cylinder: ['diameter', 'height'],
  'bow front': ['length', 'depth at the ends', 'depth in the middle', 'height'],
  'quarter round': ['side', 'height'],
  'corner pentagon': ['wall side', 'short side', 'height'],
  hexagon: ['one of the six sides', 'height'],
};

/** Longest and shortest side taken for a tank, cm: a shot glass to a public aquarium. */
const SIDE_CM = { min: 2, max: 3000 } as const;

/**
 * Reads "120 x 50 x 50 cm", "36x18x18 in" or "4 ft x 18 in x 24 in" as a size, in the order of `forms`. A side without
 * a unit takes the last unit named; 1 in = 2.54 cm and 1 ft = 30.48 cm exactly.
 *
 * @throws Problem naming the lengths wanted, or asking for the unit.
 */
export function readSize(text: string, shape: Shape, field: string): Size {
  const sides = readSides(text, field);
  const wanted = forms[shape];
  if (sides.length !== wanted.length) {
    throw new Problem(say('tank.sizeLengths', { shape, count: wanted.length }), {
      field,
      given: text.trim(),
      limit: say('tank.sizeForm', { sides: wanted.join(' x '), shape }),
    });
  }
  const [a = 0, b = 0, c = 0, d = 0] = sides.map((side) =>
    inRange(field, side, SIDE_CM.min, SIDE_CM.max, 'cm'),
  );
  switch (shape) {
    case 'box':
      return { shape, lengthCm: a, widthCm: b, heightCm: c };
    case 'cylinder':
      return { shape, diameterCm: a, heightCm: b };
    case 'hexagon':
      return { shape, edgeCm: a, heightCm: b };
    case 'quarter round':
      return { shape, sideCm: a, insetCm: 0, heightCm: b };
    case 'bow front':
      ordered(b < c && c - b <= a / 2, text, field, say('tank.limitBowFront'));
      return { shape, lengthCm: a, endDepthCm: b, middleDepthCm: c, heightCm: d };
    case 'corner pentagon':
      ordered(b < a, text, field, say('tank.limitPentagon'));
      return { shape, wallCm: a, shortCm: b, heightCm: c };
  }
}

function ordered(right: boolean, text: string, field: string, limit: string): void {
  if (!right) throw new Problem(say('tank.noFit'), { field, given: text.trim(), limit });
}

function readSides(text: string, field: string): number[] {
  const cleaned = clean(text);
  if (hasAmbiguousComma(cleaned)) {
    throw new Problem(say('tank.whichComma'), {
      field,
      given: text.trim(),
      hint: say('tank.hintComma'),
    });
  }
  const parts = normaliseNumbers(cleaned, field, 'decimal')
    .split(/\s*(?:x|\*|\bby\b)\s*/)
    .map((part) => /^(\d+(?:\.\d+)?)\s*([a-z"'″′]*)$/.exec(part));
  const { units } = definitionOf('length');
  const factors = parts.map((part) => units.find(({ names }) => names.includes(part?.[2] ?? ''))?.factor);
  const unreadable = parts.some((part, i) => part === null || (part[2] !== '' && factors[i] === undefined));
  if (unreadable) {
    throw new Problem(say('tank.noSize'), {
      field,
      given: text.trim(),
      limit: say('tank.sizeExamples'),
    });
  }
  const shared = factors.findLast((factor) => factor !== undefined);
  if (shared === undefined) {
    throw new Problem(say('convert.whichUnit', { text: text.trim() }), {
      field,
      given: text.trim(),
      choices: [`${text.trim()} cm`, `${text.trim()} in`],
    });
  }
  return parts.map((part, i) => Number(part?.[1]) * (factors[i] ?? shared));
}
