import type { Frame } from '../../../core/language/frame.ts';
import { met, type Met } from '../../../core/language/met.ts';
import { readSize } from '../../../core/tank/size.ts';
import { floorCm2, type Shape } from '../../../core/tank/shape.ts';
import { attempt } from './attempt.ts';
import { boxWithUnit } from './box-unit.ts';

/**
 * The water in a bin that is told by its sides, or in a round one by how wide it is and how deep the water stands; undefined
 * where no unit, or no shape, is told. Check: 22 in across, 18 in deep -> 112.1 L; 60 x 40 x 30 cm -> 72 L.
 */
export function vesselSaid(frame: Frame): string | undefined {
  const { box, lengths = [] } = frame.slots;
  const [first, second, more] = lengths;
  if (box !== undefined) return litresIn('box', boxWithUnit(box, lengths));
  if (first === undefined || second === undefined || more !== undefined) return undefined;
  const wide = widthOf(frame, first, second);
  if (wide === undefined) return undefined;
  const size = `${wide} x ${wide === first ? second : first}`;
  return litresIn('cylinder', boxWithUnit(size, lengths));
}

function litresIn(shape: Shape, text: string | undefined): string | undefined {
  const size = text === undefined ? undefined : attempt(() => readSize(text, shape, 'volume'));
  return size === undefined || !('heightCm' in size)
    ? undefined
    : `${Number(((floorCm2(size) * size.heightCm) / 1000).toPrecision(4))} L`;
}

/** Which of two lengths goes across a round vessel; undefined where none is said to be round. */
function widthOf({ reading: { scanned, said } }: Frame, first: string, second: string): string | undefined {
  const [one, other] = said.filter(({ number }) => number.kinds.includes('length') || number.unit === '');
  if (one === undefined || other === undefined || !met(scanned, 'looks.round')) return undefined;
  const isSaid = (from: number, to: number, word: Met): boolean =>
    met({ ...scanned, tokens: scanned.tokens.filter(({ start, end }) => start >= from && end <= to) }, word);
  const [between, behind] = [
    [one.number.end, other.number.start],
    [other.number.end, scanned.text.length],
  ] as const;
  if (isSaid(...between, 'looks.across')) return first;
  if (isSaid(...between, 'looks.high') || isSaid(...behind, 'looks.across')) return second;
  return isSaid(0, one.number.start, 'looks.high') && !isSaid(...behind, 'looks.high') ? second : first;
}
