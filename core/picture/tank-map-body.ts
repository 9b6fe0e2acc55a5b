import { isFlat } from '../corals/distance.ts';
import type { Verdict } from '../corals/scene.ts';
import { palette } from './palette.ts';
import { tag } from './svg.ts';
import { SMALL, verdictColours } from './tank-map-badge.ts';
import { verdicts, type Shown } from './tank-map-shown.ts';
import { round, type Point, type View } from './tank-map-view.ts';

/** How reach and growth are drawn. */
export const bodyLines = {
  reach: { fill: 'none', stroke: palette.reach, 'stroke-width': 2, 'stroke-dasharray': '10 6' },
  year: {
    fill: 'none',
    stroke: palette.quietInk,
    'stroke-width': 2.5,
    'stroke-dasharray': '1 6',
    'stroke-linecap': 'round',
  },
} as const;

/**
 * Corals as the placement rules take them: from above all are discs; from the front a flat kind is a thin slab on its
 * ground, any other the upper half of a ball about its spot. Dashed: its reach at full stretch. Dotted: its width in a
 * year at the most. A spot said in words has a soft edge. The far ones first.
 */
export function bodies(shown: readonly Shown[], view: View): string {
  const far = [...shown].sort((a, b) =>
    view.side === 'above' ? a.coral.spot.zCm - b.coral.spot.zCm : b.coral.spot.yCm - a.coral.spot.yCm,
  );
  const growing = far.filter(({ yearCm, coral }) => yearCm > coral.diameterCm);
  return [
    tag('g', { class: 'reach', ...bodyLines.reach }, ...far.map((one) => reach(one, view))),
    tag('g', { class: 'year', ...bodyLines.year }, ...growing.map((one) => body(one, one.yearCm, {}, view))),
    ...far.map((one) => body(one, one.coral.diameterCm, present(one, view), view)),
  ].join('');
}

/** Room over the middle of a coral for its number, where it would hide all of it. */
const OVER = 17;

/** Where the number of a coral is best: in the middle of what is seen of it, or just over it. */
export function middleOf({ coral }: Shown, view: View): Point {
  const { x, y } = view.at(coral.spot);
  const radius = (coral.diameterCm / 2) * view.pxPerCm;
  if (view.side === 'above') return { x, y: radius < SMALL ? y - radius - OVER : y };
  const high = isFlat(coral) ? slabPx(coral.diameterCm, view) : radius;
  return { x, y: high < 1.5 * SMALL ? y - high - OVER : y - high * 0.45 };
}

type Look = Readonly<Record<string, string | number>>;

function present({ coral, verdict }: Shown, view: View): Look {
  const { line: stroke, tint } = verdictColours[verdict];
  const id = `${view.side}-${coral.id}`;
  if (coral.rough) return { id, fill: softPaint(verdict, view.side === 'front' && !isFlat(coral)) };
  return { id, fill: tint, 'fill-opacity': 0.85, stroke, 'stroke-width': 2.5 };
}

function body({ coral }: Shown, diameterCm: number, look: Look, view: View): string {
  const { x, y } = view.at(coral.spot);
  const radius = (diameterCm / 2) * view.pxPerCm;
  if (view.side === 'above') return tag('circle', { cx: x, cy: y, r: radius, ...look });
  if (isFlat(coral)) {
    const height = slabPx(coral.diameterCm, view);
    return tag('rect', { x: x - radius, y: y - height, width: 2 * radius, height, rx: height / 3, ...look });
  }
  const [left, right, r] = [x - radius, x + radius, radius].map(round);
  return tag('path', { d: `M${left} ${round(y)}A${r} ${r} 0 0 1 ${right} ${round(y)}Z`, ...look });
}

function slabPx(diameterCm: number, { pxPerCm }: View): number {
  return Math.max(5, (diameterCm / 8) * pxPerCm);
}

function reach({ coral, reachCm }: Shown, view: View): string {
  if (reachCm === 0) return '';
  const { x, y } = view.at(coral.spot);
  const out = reachCm * view.pxPerCm;
  const radius = (coral.diameterCm / 2) * view.pxPerCm;
  if (view.side === 'above' || !isFlat(coral)) return tag('circle', { cx: x, cy: y, r: radius + out });
  const size = { x: x - radius - out, y: y - out, width: 2 * (radius + out), height: 2 * out, rx: out };
  return tag('rect', size);
}

/** The paint of a soft edge; `dome`: for the upper half of a ball. */
export function softPaint(verdict: Verdict, dome = false): string {
  return `url(#${softId(verdict, dome)})`;
}

function softId(verdict: Verdict, dome: boolean): string {
  return `soft-${verdict}${dome ? '-dome' : ''}`;
}

/** What `softPaint` paints with. */
export function softPaints(): string {
  return verdicts.flatMap((verdict) => [gradient(verdict, false), gradient(verdict, true)]).join('');
}

function gradient(verdict: Verdict, dome: boolean): string {
  const { line: colour } = verdictColours[verdict];
  const stop = (offset: number, opacity: number): string =>
    tag('stop', { offset, 'stop-color': colour, 'stop-opacity': opacity });
  const where = dome ? 'translate(0.5 1) scale(0.5 1)' : 'translate(0.5 0.5) scale(0.5)';
  const circle = { id: softId(verdict, dome), cx: 0, cy: 0, r: 1, gradientTransform: where };
  return tag('radialGradient', circle, stop(0, 0.6), stop(0.5, 0.5), stop(1, 0));
}
