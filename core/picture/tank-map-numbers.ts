import { tag } from './svg.ts';
import { badge, badgeSize, verdictColours } from './tank-map-badge.ts';
import { middleOf } from './tank-map-body.ts';
import { ringsAround, type Room } from './tank-map-room.ts';
import { verdicts, type Shown } from './tank-map-shown.ts';
import type { Point, View } from './tank-map-view.ts';

/** A number further than this from its coral says nothing. */
const MOST_AWAY = 110;

/** The number of each coral in it, or near it with a line to it; the worst first, as far as there is room. */
export function numbers(
  shown: readonly Shown[],
  view: View,
  room: Room,
): { readonly svg: string; readonly left: number } {
  const [ties, badges]: [string[], string[]] = [[], []];
  for (const one of verdicts.flatMap((verdict) => shown.filter((each) => each.verdict === verdict))) {
    const text = String(one.coral.id);
    const { width, height } = badgeSize(text);
    const best = middleOf(one, view);
    const middle = room.take(width, height, ringsAround(best, MOST_AWAY, inner(view, width, height)));
    if (middle === undefined) continue;
    if (isAway(best, middle)) ties.push(tie(one, view, middle));
    badges.push(badge(one.verdict, text, middle));
  }
  return { svg: [...ties, ...badges].join(''), left: shown.length - badges.length };
}

function isAway(best: Point, middle: Point): boolean {
  return Math.abs(best.x - middle.x) > 12 || Math.abs(best.y - middle.y) > 12;
}

function tie({ verdict, coral }: Shown, view: View, to: Point): string {
  const from = view.at(coral.spot);
  const { line } = verdictColours[verdict];
  const look = { stroke: line, 'stroke-width': 1.5 };
  const inside = { x: clamp(from.x, view.left, view.right), y: clamp(from.y, view.top, view.bottom) };
  return (
    tag('line', { x1: inside.x, y1: inside.y, x2: to.x, y2: to.y, ...look }) +
    tag('circle', { cx: inside.x, cy: inside.y, r: 3.5, fill: line })
  );
}

/** Where the middle of a mark of that size may lie. */
function inner({ left, right, top, bottom }: View, width: number, height: number) {
  const [x, y] = [width / 2 + 3, height / 2 + 3];
  return { left: left + x, right: right - x, top: top + y, bottom: bottom - y };
}

function clamp(value: number, low: number, high: number): number {
  return Math.max(low, Math.min(high, value));
}
