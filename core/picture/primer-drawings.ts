import { palette } from './palette.ts';
import { framed, label, LEFT, rule, type PrimerPicture } from './primer-frame.ts';
import { tag } from './svg.ts';

const stroke = { fill: 'none', stroke: palette.ink, 'stroke-width': 5, 'stroke-linecap': 'round' } as const;

const socket = (x: number, y: number): string =>
  tag('rect', {
    x,
    y,
    width: 56,
    height: 56,
    rx: 8,
    fill: palette.ground,
    stroke: palette.ink,
    'stroke-width': 4,
  }) +
  tag('circle', { cx: x + 18, cy: y + 28, r: 5, fill: palette.ink }) +
  tag('circle', { cx: x + 38, cy: y + 28, r: 5, fill: palette.ink });

const tank = (x: number): string =>
  tag('rect', {
    x,
    y: 110,
    width: 110,
    height: 120,
    fill: palette.target,
    stroke: palette.targetEdge,
    'stroke-width': 4,
  });

const drop = (x: number, y: number): string =>
  tag('path', { d: `M${x} ${y}q-11 18 0 24q11 -6 0 -24z`, fill: palette.reading });

/** A cable that hangs below its socket, beside one that leads water into it. */
export function dripLoop(): PrimerPicture {
  return {
    svg: framed(
      'The drip loop',
      430,
      tank(LEFT),
      socket(236, 170),
      tag('path', { d: 'M110 112 C150 70 190 120 196 210 C202 330 250 330 262 228', ...stroke }),
      drop(224, 316),
      label('right: water drips', { x: LEFT, y: 376 }),
      label('off at the low point', { x: LEFT, y: 406 }),
      rule(318, 90, 318, 410, palette.grid),
      tank(338),
      socket(550, 210),
      tag('path', { d: 'M424 112 C470 70 520 130 576 208', ...stroke }),
      drop(522, 150),
      label('wrong: water runs', { x: 338, y: 376, fill: palette.alert }),
      label('into the socket', { x: 338, y: 406, fill: palette.alert }),
    ),
    alt: 'Two tanks, each with a cable to a socket. Right: the cable hangs lower than the socket before it rises to it, so water drips off at the low point. Wrong: the cable runs straight down into the socket, and water runs into it.',
  };
}

const key = (row: number, mark: string, text: string): string =>
  mark + label(text, { x: LEFT + 62, y: 386 + row * 36 });

const dash = (row: number, extra: Record<string, string | number>): string =>
  tag('line', {
    x1: LEFT,
    x2: LEFT + 46,
    y1: 378 + row * 36,
    y2: 378 + row * 36,
    'stroke-width': 4,
    ...extra,
  });

/** Two corals: their bodies, their reach at full stretch, the room for a year, and the gap that takes both. */
export function roomBetween(): PrimerPicture {
  const y = 210;
  const coral = (x: number, body: number, reach: number, year: number): string =>
    tag('circle', {
      cx: x,
      cy: y,
      r: reach,
      fill: palette.target,
      stroke: palette.trend,
      'stroke-width': 4,
      'stroke-dasharray': '14 8',
    }) +
    tag('circle', {
      cx: x,
      cy: y,
      r: year,
      fill: 'none',
      stroke: palette.ink,
      'stroke-width': 4,
      'stroke-dasharray': '3 7',
    }) +
    tag('circle', { cx: x, cy: y, r: body, fill: palette.reading });
  return {
    svg: framed(
      'Room between two corals, from above',
      486,
      coral(146, 46, 112, 74),
      coral(488, 58, 134, 96),
      rule(192, y, 430, y, palette.ink, 2),
      label('gap', { x: 306, y: y - 14, anchor: 'middle' }),
      key(0, tag('circle', { cx: LEFT + 23, cy: 378, r: 12, fill: palette.reading }), 'the coral today'),
      key(1, dash(1, { stroke: palette.ink, 'stroke-dasharray': '3 7' }), 'its size in a year'),
      key(
        2,
        dash(2, { stroke: palette.trend, 'stroke-dasharray': '14 8' }),
        'its reach at full stretch, by night',
      ),
    ),
    alt: 'Two corals from above. Around each stand a dotted circle, its size in a year, and a wider dashed circle, its reach at full stretch. They are set so far apart that the dashed circles do not meet.',
  };
}
