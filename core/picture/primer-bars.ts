import { afterChanges } from '../change/exchange.ts';
import { lightBands, lightBandWords } from '../light/band.ts';
import { fixed } from '../quantity/format.ts';
import { palette } from './palette.ts';
import { framed, label, LEFT, RIGHT, rule, type PrimerPicture } from './primer-frame.ts';
import { tag } from './svg.ts';

/** Old water left after each of four changes of 20 %. */
export function changesAdded(): PrimerPicture {
  const left = [0, 1, 2, 3, 4].map((count) => afterChanges({ now: 100, fresh: 0, fraction: 0.2 }, count));
  const [top, bottom, width] = [86, 336, 84];
  const bars = left.map((percent, index) => {
    const x = LEFT + 22 + index * 116;
    const y = bottom - (percent / 100) * (bottom - top);
    return [
      tag('rect', {
        x,
        y: top,
        width,
        height: bottom - top,
        fill: palette.target,
        stroke: palette.targetEdge,
        'stroke-width': 2,
      }),
      tag('rect', { x, y, width, height: bottom - y, fill: palette.reading }),
      label(`${fixed(percent, 0)} %`, {
        x: x + width / 2,
        y: y + 32,
        anchor: 'middle',
        fill: palette.ground,
      }),
      label(String(index), { x: x + width / 2, y: bottom + 32, anchor: 'middle' }),
    ].join('');
  });
  return {
    svg: framed(
      'Old water left after changes of 20 %',
      424,
      ...bars,
      label('changes done (filled: old water, framed: new)', {
        x: (LEFT + RIGHT) / 2,
        y: 404,
        anchor: 'middle',
        fill: palette.quietInk,
      }),
    ),
    alt: `Old water left after changes of 20 % each: ${left.map((percent, index) => `${fixed(percent, 0)} % after ${index}`).join(', ')}. Four changes replace ${fixed(100 - (left[4] ?? 0), 0)} %, not 80 %.`,
  };
}

/** The words for light at the coral, one bar each, the brighter the more light there is on the dark ground. */
export function lightWordBars(): PrimerPicture {
  const [top, height] = [88, 64];
  const strength = [0.08, 0.28, 0.5, 0.75, 1];
  const rows = lightBands.map(({ word, borders }, index) => {
    const y = top + index * (height + 8);
    return [
      tag('rect', {
        x: LEFT,
        y,
        width: 132,
        height,
        fill: palette.ink,
        'fill-opacity': strength[index] ?? 1,
        stroke: palette.ink,
        'stroke-width': 2,
      }),
      label(word, { x: LEFT + 156, y: y + 40 }),
      label(`${borders} PAR`, { x: RIGHT, y: y + 40, anchor: 'end' }),
      rule(LEFT + 150, y + height + 4, RIGHT, y + height + 4, palette.grid),
    ].join('');
  });
  return {
    svg: framed('Words for light at the coral', top + 5 * (height + 8) + 12, ...rows),
    alt: `Words for light at the coral, in PAR (project rule): ${lightBandWords}.`,
  };
}
