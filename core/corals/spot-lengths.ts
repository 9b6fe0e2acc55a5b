import { Problem } from '../problem.ts';
import { definitionOf } from '../quantity/unit.ts';
import { say } from '../wording/say.ts';
import type { Box } from './scene.ts';

export type Axis = 'x' | 'y' | 'z';

interface MeasuredAxes {
  /** cm from the left, from the front, up from the bottom; only the axes that were given as a length. */
  readonly lengths: Partial<Record<Axis, number>>;
  /** What is left of the text. */
  readonly rest: string;
}

const NUMBER = String.raw`(\d+(?:[.,]\d+)?)`;
const UNIT = String.raw`\s*(centimet(?:re|er)s?|cm|mm|m|inches|inch|in|"|ft)?(?![a-z])`;
const BY = String.raw`\s*(?:x|\*|by)\s*`;
const TRIPLE = new RegExp(`^${NUMBER}${UNIT}${BY}${NUMBER}${UNIT}${BY}${NUMBER}${UNIT}$`);
const FROM = new RegExp(
  String.raw`(?<![\d.,])${NUMBER}${UNIT}\s*(?:off|away from|from|above|below|under|over)\s*(?:the\s+)?(left|right|front|back|rear|bottom|floor|sand|surface|top|water line|waterline)\b(?: (?:hand )?side| glass| wall| pane| bed)?`,
  'g',
);
const UP = new RegExp(String.raw`(?<![\d.,])${NUMBER}${UNIT}\s*(?:up|high)\b`, 'g');

/**
 * Takes the lengths out of a cleaned text: "12 x 30 x 20 cm", "30 cm from the left", "10 from the back", "20 cm up". A
 * number without a unit takes the last unit named; with none at all it is asked for. 1 in = 2.54 cm.
 *
 * @throws Problem asking for the unit, or when a side is given twice.
 */
export function measuredAxes(text: string, box: Box, field: string): MeasuredAxes {
  const fallback = unitIn(text);
  const cm = (number: string | undefined, unit: string | undefined): number => {
    const name = unit ?? fallback;
    if (name === undefined) {
      throw new Problem(say('coral.whichUnit'), {
        field,
        given: text,
        choices: [inUnit(text, 'cm'), inUnit(text, 'in')],
      });
    }
    return Number(number?.replace(',', '.')) * factorOf(name);
  };
  const triple = TRIPLE.exec(text);
  if (triple !== null) {
    const [, x, xUnit, y, yUnit, z, zUnit] = triple;
    return { lengths: { x: cm(x, xUnit), y: cm(y, yUnit), z: cm(z, zUnit) }, rest: '' };
  }
  const lengths: Partial<Record<Axis, number>> = {};
  const put = (axis: Axis, value: number): string => {
    if (lengths[axis] !== undefined)
      throw new Problem(say('coral.sideTwice'), { field, given: text, hint: say('coral.hintSideOnce') });
    lengths[axis] = value;
    return ' ';
  };
  const rest = text
    .replace(FROM, (_, number: string, unit: string | undefined, side: string) =>
      put(...alongAxis(side, cm(number, unit), box)),
    )
    .replace(UP, (_, number: string, unit: string | undefined) => put('z', cm(number, unit)));
  return { lengths, rest };
}

function alongAxis(side: string, cm: number, box: Box): [Axis, number] {
  if (side === 'left') return ['x', cm];
  if (side === 'right') return ['x', box.lengthCm - cm];
  if (side === 'front') return ['y', cm];
  if (side === 'back' || side === 'rear') return ['y', box.widthCm - cm];
  return ['z', /bottom|floor|sand/.test(side) ? cm : box.heightCm - cm];
}

/** The last unit in the text, for numbers written without one. */
function unitIn(text: string): string | undefined {
  return [...text.matchAll(/\d\s*(centimet(?:re|er)s?|cm|mm|m|inches|inch|in|"|ft)(?![a-z])/g)].at(-1)?.[1];
}

/** The text with a unit after its last number: a complete replacement to choose. */
function inUnit(text: string, unit: string): string {
  return text.replace(/(\d)(?!.*\d)/, `$1 ${unit}`);
}

function factorOf(name: string): number {
  const unit = name.startsWith('centimet') ? 'cm' : name;
  return definitionOf('length').units.find(({ names }) => names.includes(unit))?.factor ?? Number.NaN;
}
