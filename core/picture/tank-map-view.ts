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

/** The part of the tank a view shows, cm from the left and from its lower edge in the picture. */
export interface Region {
  readonly fromCm: number;
  readonly toCm: number;
  readonly lowCm: number;
  readonly highCm: number;
}

/** All of the glass, as it is seen from a side. */
export function wholeOf(box: Box, side: View['side']): Region {
  return { fromCm: 0, toCm: box.lengthCm, lowCm: 0, highCm: side === 'above' ? box.widthCm : box.heightCm };
}

/** The tank from a side (from above the front is the lower edge), as wide as the picture or as high as `mostPx`. */
export function viewOf(side: View['side'], region: Region, top: number, mostPx: number): View {
  const { fromCm, toCm, lowCm, highCm } = region;
  const pxPerCm = Math.min((WIDTH - 2 * PAD) / (toCm - fromCm), mostPx / (highCm - lowCm));
  const left = (WIDTH - (toCm - fromCm) * pxPerCm) / 2;
  const upper = top + HEAD;
  const bottom = upper + (highCm - lowCm) * pxPerCm;
  const up = (spot: Spot): number => (side === 'above' ? spot.yCm : spot.zCm);
  return {
    side,
    pxPerCm,
    left,
    right: WIDTH - left,
    top: upper,
    bottom,
    at: (spot) => ({
      x: left + (spot.xCm - fromCm) * pxPerCm,
      y: bottom - (up(spot) - lowCm) * pxPerCm,
    }),
  };
}

export function round(px: number): number {
  return Math.round(px * 10) / 10;
}
