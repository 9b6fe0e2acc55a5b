import type { FlowDirection, Scene } from '../corals/scene.ts';
import { fixed } from '../quantity/format.ts';
import { cmOf, type LengthUnit } from '../quantity/chosen-units.ts';
import { palette } from './palette.ts';
import { WORDS } from './panel.ts';
import { tag, words } from './svg.ts';
import { PAD, round, type View } from './tank-map-view.ts';
import { WIDTH } from './trend.ts';

/** "120 x 50 x 46 cm", and whether that is a guess. */
export function glassWords(
  { box, boxGuessed }: Scene,
  unit: LengthUnit = 'cm',
  guess = 'the size of the glass is a guess',
): string {
  const sides = [box.lengthCm, box.widthCm, box.heightCm].map((side) => fixed(side / cmOf(unit), 1));
  return `${sides.join(' x ')} ${unit}${boxGuessed ? `, ${guess}` : ''}`;
}

/** The names of a view's sides stand at least this far from its middle. */
const LEAST_HALF = 150;

/** The water of one view, with the names of its sides and the way the water goes. */
export function glass(view: View, flow: FlowDirection | undefined): string {
  const { left, right, top, bottom, side } = view;
  const [up, down] = side === 'above' ? ['back', 'front'] : ['water line', 'sand'];
  const half = Math.max(LEAST_HALF, (right - left) / 2);
  const [middle, under] = [WIDTH / 2, bottom + 62];
  const quiet = { size: WORDS, fill: palette.quietInk };
  return [
    tag('rect', { x: left, y: top, width: right - left, height: bottom - top, fill: palette.water }),
    words(up, { ...quiet, x: PAD, y: top - 12 }),
    words('left', { ...quiet, x: middle - half, y: under }),
    words(down, { ...quiet, x: middle, y: under, anchor: 'middle' }),
    words('right', { ...quiet, x: middle + half, y: under, anchor: 'end' }),
    flow === undefined ? '' : flowMark(flow, view),
  ].join('');
}

/** The frame, over what the glass cuts off; the water line and the sand stand out. */
export function frame({ left, right, top, bottom, side }: View): string {
  const edge = { x: left, y: top, width: right - left, height: bottom - top };
  const across = { x1: left, x2: right };
  const rim = tag('rect', { ...edge, fill: 'none', stroke: palette.frame, 'stroke-width': 2 });
  if (side === 'above') return rim;
  return (
    rim +
    tag('line', { ...across, y1: top, y2: top, stroke: palette.surface, 'stroke-width': 3 }) +
    tag('line', { ...across, y1: bottom, y2: bottom, stroke: palette.sand, 'stroke-width': 6 })
  );
}

/** Where the arrow points, in picture units; undefined where no arrow can show it from that side. */
const arrows: Readonly<Record<View['side'], Partial<Record<FlowDirection, readonly [number, number]>>>> = {
  above: {
    'left to right': [1, 0],
    'right to left': [-1, 0],
    'front to back': [0, -1],
    'back to front': [0, 1],
  },
  front: { 'left to right': [1, 0], 'right to left': [-1, 0] },
};

/** In words, and as an arrow where one can be drawn. */
function flowMark(flow: FlowDirection, { side, top }: View): string {
  const way = arrows[side][flow];
  const text = `flow ${flow}`;
  const end = WIDTH - PAD - (way === undefined ? 0 : 62);
  const label = words(text, { x: end, y: top - 12, size: WORDS, fill: palette.ink, anchor: 'end' });
  return way === undefined ? label : label + arrow(WIDTH - PAD - 26, top - 20, way);
}

function arrow(x: number, y: number, [dx, dy]: readonly [number, number]): string {
  const half = dx === 0 ? 15 : 25;
  const [tipX, tipY] = [x + dx * half, y + dy * half];
  const [baseX, baseY] = [tipX - dx * 14, tipY - dy * 14];
  const points = [
    [tipX, tipY],
    [baseX - dy * 9, baseY - dx * 9],
    [baseX + dy * 9, baseY + dx * 9],
  ];
  const shaft = { x1: x - dx * half, y1: y - dy * half, x2: baseX, y2: baseY };
  return tag(
    'g',
    { class: 'flow' },
    tag('line', { ...shaft, stroke: palette.ink, 'stroke-width': 5 }),
    tag('polygon', { points: points.map((pair) => pair.map(round).join()).join(' '), fill: palette.ink }),
  );
}
