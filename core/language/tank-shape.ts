import type { Shape } from '../tank/shape.ts';
import { met } from './met.ts';
import type { Said } from './said.ts';
import type { Scanned } from './tokens.ts';

/** The shape a tank is said to have; `other` where there is no sum for it, a box where nothing was said. */
export function shapeIn(scanned: Scanned): Shape | 'other' {
  if (met(scanned, 'looks.quarterRound')) return 'quarter round';
  const isCurved = met(scanned, 'looks.bowFront');
  if (isCurved && met(scanned, 'places.corner', 'looks.cornerTank')) return 'quarter round';
  if (met(scanned, 'looks.otherShape', 'looks.cornerTank')) return 'other';
  if (met(scanned, 'looks.hexagon')) return met(scanned, 'looks.across') ? 'other' : 'hexagon';
  if (isCurved) return 'bow front';
  return met(scanned, 'looks.cylinder') ? 'cylinder' : 'box';
}

/** Where the tape was laid: of both words, the one nearest to the sides. */
export function measuredIn(
  { tokens, ...rest }: Scanned,
  sides: readonly Said[],
): 'inside' | 'outside' | undefined {
  const [start, end] = [sides[0]?.number.start ?? 0, sides.at(-1)?.number.end ?? 0];
  const found = tokens.flatMap((token) => {
    const one = { ...rest, tokens: [token] };
    const side = met(one, 'places.innerSide')
      ? 'inside'
      : met(one, 'places.outerSide')
        ? 'outside'
        : undefined;
    const far = token.end <= start ? start - token.end : Math.max(0, token.start - end);
    return side === undefined ? [] : [{ side, far } as const];
  });
  return found.toSorted((a, b) => a.far - b.far)[0]?.side;
}
