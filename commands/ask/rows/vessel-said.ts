import type { Frame } from '../../../core/language/frame.ts';
import { met, type Met } from '../../../core/language/met.ts';
import type { Said } from '../../../core/language/said.ts';
import { sidesText } from '../../../core/language/side-units.ts';
import type { Scanned } from '../../../core/language/tokens.ts';
import { readSize } from '../../../core/tank/size.ts';
import { floorCm2, type Shape } from '../../../core/tank/shape.ts';
import { attempt } from './attempt.ts';
import { boxWithUnit } from './box-unit.ts';
import { tokensWithin } from './words-beside.ts';

/**
 * The water in a bin that is told by its sides, or in a round one by how wide it is and how deep the water stands; undefined
 * where no unit, or no shape, is told. Check: 22 in across, 18 in deep -> 112.1 L; 60 x 40 x 30 cm -> 72 L.
 */
export function vesselSaid(frame: Frame): string | undefined {
  const {
    slots: { box, lengths = [] },
    reading: { scanned, said },
  } = frame;
  if (box !== undefined) return litresIn('box', boxWithUnit(frame));
  const all = lengths.flatMap((text) => said.find((one) => one.text === text) ?? []);
  const [first, second, more] = all;
  if (first === undefined || second === undefined || more !== undefined) return undefined;
  if (!met(scanned, 'looks.round')) return undefined;
  const sides = isSecondAcross(scanned, first, second) ? [second, first] : all;
  const { text, unit } = sidesText(scanned.text, sides, []);
  return unit === undefined ? undefined : litresIn('cylinder', text);
}

function litresIn(shape: Shape, text: string | undefined): string | undefined {
  const size = text === undefined ? undefined : attempt(() => readSize(text, shape, 'volume'));
  return size === undefined || !('heightCm' in size)
    ? undefined
    : `${Number(((floorCm2(size) * size.heightCm) / 1000).toPrecision(4))} L`;
}

/** Whether the first of two lengths of a round vessel is its depth. */
function isSecondAcross(scanned: Scanned, { number: first }: Said, { number: second }: Said): boolean {
  const isSaid = (from: number, to: number, word: Met): boolean =>
    met({ ...scanned, tokens: tokensWithin(scanned, from, to) }, word);
  const [between, behind] = [
    [first.end, second.start],
    [second.end, scanned.text.length],
  ] as const;
  if (isSaid(...between, 'looks.across')) return false;
  if (isSaid(...between, 'looks.high') || isSaid(...behind, 'looks.across')) return true;
  return isSaid(0, first.start, 'looks.high') && !isSaid(...behind, 'looks.high');
}
