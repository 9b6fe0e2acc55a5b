import type { Box, Scene } from '../corals/scene.ts';
import { troubleWords, type Shown, type Trouble } from './tank-map-shown.ts';
import { wholeOf, type Region } from './tank-map-view.ts';

/** More corals than this crowd a picture of the whole tank. */
export const CROWDED = 10;
/** Shown beyond the corals of the conflict, cm, and the narrowest that is shown. */
const MARGIN_CM = 6;
const LEAST_CM = 24;

/** A conflict near to, from above: what is in sight, and what it is about. */
export interface Zoom {
  readonly side: 'above';
  readonly heading: string;
  /** The corals, and what is wrong. */
  readonly about: string;
  readonly region: Region;
  readonly shown: readonly Shown[];
  readonly troubles: readonly Trouble[];
}

/** The worst conflict of a crowded tank; undefined where there is none, or the whole is clear enough. */
export function zoomOf(
  { box }: Scene,
  shown: readonly Shown[],
  troubles: readonly Trouble[],
): Zoom | undefined {
  const [worst] = troubles;
  if (worst === undefined || shown.length <= CROWDED) return undefined;
  const about = new Set(worst.corals.map(({ id }) => id));
  const them = shown.filter(({ coral }) => about.has(coral.id));
  const region = regionOf(them, box);
  const inSight = shown.filter((one) => isIn(one, region));
  return {
    side: 'above',
    heading: 'Near to, the worst conflict',
    about: troubleWords(worst),
    region,
    shown: inSight,
    troubles: [worst],
  };
}

function regionOf(them: readonly Shown[], box: Box): Region {
  const whole = wholeOf(box, 'above');
  const around = (middle: (one: Shown) => number): readonly [number, number] => {
    const low = Math.min(...them.map((one) => middle(one) - outOf(one)));
    const high = Math.max(...them.map((one) => middle(one) + outOf(one)));
    const missing = Math.max(0, LEAST_CM - (high - low)) / 2;
    return [low - missing, high + missing];
  };
  const [fromCm, toCm] = around(({ coral }) => coral.spot.xCm);
  const [lowCm, highCm] = around(({ coral }) => coral.spot.yCm);
  return {
    fromCm: Math.max(whole.fromCm, fromCm),
    toCm: Math.min(whole.toCm, toCm),
    lowCm: Math.max(whole.lowCm, lowCm),
    highCm: Math.min(whole.highCm, highCm),
  };
}

/** How far from its middle a coral and what it reaches are shown, cm. */
function outOf({ coral, reachCm }: Shown): number {
  return coral.diameterCm / 2 + reachCm + MARGIN_CM;
}

function isIn({ coral }: Shown, { fromCm, toCm, lowCm, highCm }: Region): boolean {
  const { xCm, yCm } = coral.spot;
  return xCm >= fromCm && xCm <= toCm && yCm >= lowCm && yCm <= highCm;
}
