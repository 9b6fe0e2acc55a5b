import type { Box, Spot } from '../corals/scene.ts';
import { WIDTH } from './trend.ts';

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Rect {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** One side the tank is seen from: where its water lies in the picture, and where a spot falls. */
export interface View extends Rect {
  readonly side: 'above' | 'front';
  readonly pxPerCm: number;
  readonly at: (spot: Spot) => Point;
}

/** Room over and under the water for the names of its sides. */
export const HEAD = 40;
export const FOOT = 38;
/** Room left and right. */
export const PAD = 24;
const BETWEEN = 10;

/**
 * The tank from above (the front at the lower edge) and under it from the front, to one scale and in line with each
 * other, as wide as the picture or as high as `mostPx` for both.
 */
export function viewsOf(
  box: Box,
  top: number,
  mostPx: number,
): { readonly above: View; readonly front: View } {
  const { lengthCm, widthCm, heightCm } = box;
  const pxPerCm = Math.min((WIDTH - 2 * PAD) / lengthCm, mostPx / (widthCm + heightCm));
  const left = (WIDTH - lengthCm * pxPerCm) / 2;
  const across = { left, right: WIDTH - left, pxPerCm };
  const back = top + HEAD;
  const frontEdge = back + widthCm * pxPerCm;
  const waterLine = frontEdge + FOOT + BETWEEN + HEAD;
  const sand = waterLine + heightCm * pxPerCm;
  const x = ({ xCm }: Spot): number => left + xCm * pxPerCm;
  return {
    above: {
      side: 'above',
      ...across,
      top: back,
      bottom: frontEdge,
      at: (spot) => ({ x: x(spot), y: frontEdge - spot.yCm * pxPerCm }),
    },
    front: {
      side: 'front',
      ...across,
      top: waterLine,
      bottom: sand,
      at: (spot) => ({ x: x(spot), y: sand - spot.zCm * pxPerCm }),
    },
  };
}

export function round(px: number): number {
  return Math.round(px * 10) / 10;
}
