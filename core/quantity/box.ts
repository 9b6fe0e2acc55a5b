import { Problem } from '../problem.ts';
import { say } from '../wording/say.ts';
import { definitionOf } from './unit.ts';

const NUMBER = String.raw`(\d+(?:\.\d+)?)`;
const UNIT = String.raw`\s*(cm|mm|m|in|inch|inches|ft|feet|foot|"|'|″|′)?`;
const BY = String.raw`\s*(?:x|\*|by)\s*`;
const BOX = new RegExp(`^${NUMBER}${UNIT}${BY}${NUMBER}${UNIT}${BY}${NUMBER}${UNIT}$`);

/** Centimetres of a length unit by any of its names. */
function centimetres(name: string): number {
  return definitionOf('length').units.find((unit) => unit.names.includes(name))?.factor ?? 0;
}

/**
 * Volume of a rectangular box written as "120 x 50 x 50 cm", in litres (1 L = 1000 cm3), or undefined when the
 * text is not of that form. A side without a unit takes the last unit named. 120 x 50 x 50 cm -> 300 L;
 * 36 x 18 x 18 in -> 191.1 L.
 *
 * @throws Problem where no side has a unit: as litres the three numbers would be multiplied into nonsense.
 */
export function boxVolume(
  text: string,
  field: string,
): { value: number; written: number; unit: string; notes: readonly string[] } | undefined {
  const found = BOX.exec(text);
  if (found === null) return undefined;
  const [, a, aUnit, b, bUnit, c, cUnit] = found;
  const shared = cUnit ?? bUnit ?? aUnit;
  if (shared === undefined) throw sidesIn(text, field);
  const side = (length: string | undefined, unit: string | undefined): number =>
    Number(length) * centimetres(unit ?? shared);
  const litres = (side(a, aUnit) * side(b, bUnit) * side(c, cUnit)) / 1000;
  return {
    value: litres,
    written: litres,
    unit: 'L',
    notes: ['worked out from the three sides as a full box; rock, sand and the air gap take away from it'],
  };
}

function sidesIn(text: string, field: string): Problem {
  return new Problem(say('convert.whichUnit', { text }), {
    field,
    given: text,
    choices: ['cm', 'in'].map((unit) => `${text} ${unit}`),
  });
}
