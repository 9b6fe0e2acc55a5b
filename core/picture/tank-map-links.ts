import { ruleWords } from '../corals/rule-words.ts';
import { tag } from './svg.ts';
import { badge, badgeSize, verdictColours } from './tank-map-badge.ts';
import type { Room } from './tank-map-room.ts';
import type { Trouble } from './tank-map-shown.ts';
import type { Point, View } from './tank-map-view.ts';

/** How the line of a conflict looks: thick for move, thin for watch. */
export const linkLines = {
  move: { stroke: verdictColours.move.line, 'stroke-width': 5 },
  watch: { stroke: verdictColours.watch.line, 'stroke-width': 2.5 },
} as const;

type Pair = Trouble & { readonly from: Point; readonly to: Point };

/** More lines than this say nothing: the worst are drawn. */
export const MOST_LINKS = 60;

/** The pairs that are not settled, from the middle of one coral to that of the other; at most `MOST_LINKS`. */
export function pairsIn(troubles: readonly Trouble[], view: View): readonly Pair[] {
  return troubles
    .flatMap((trouble) => {
      const [one, other] = trouble.corals;
      if (one === undefined || other === undefined) return [];
      return [{ ...trouble, from: view.at(one.spot), to: view.at(other.spot) }];
    })
    .slice(0, MOST_LINKS);
}

/** The worse on top. */
export function links(pairs: readonly Pair[]): string {
  return (['watch', 'move'] as const)
    .map((verdict) => {
      const lines = pairs
        .filter((pair) => pair.verdict === verdict)
        .map(({ from, to }) => tag('line', { x1: from.x, y1: from.y, x2: to.x, y2: to.y }));
      return tag('g', { class: `conflict-${verdict}`, ...linkLines[verdict] }, ...lines);
    })
    .join('');
}

/** More words than this hide the corals. */
const MOST_WORDS = 20;

/** The words of each pair on or beside its line, the worst first, as far as there is room. */
export function linkWords(
  pairs: readonly Pair[],
  room: Room,
): { readonly svg: string; readonly left: number } {
  const parts: string[] = [];
  for (const { from, to, verdict, rules } of pairs) {
    if (parts.length === MOST_WORDS) break;
    const words = rules.map((rule) => ruleWords[rule]).join(', ');
    const { width, height } = badgeSize(words);
    const middle = room.take(width, height, alongLine(from, to));
    if (middle !== undefined) parts.push(badge(verdict, words, middle));
  }
  return { svg: parts.join(''), left: pairs.length - parts.length };
}

/** Points on the line from its middle outwards, then further and further to both sides of it. */
function* alongLine(from: Point, to: Point): Generator<Point> {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const length = Math.sqrt(dx * dx + dy * dy) || 1;
  for (const aside of [0, 20, -20, 36, -36, 52, -52, 70, -70]) {
    for (const part of [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8]) {
      yield {
        x: from.x + part * dx - (aside * dy) / length,
        y: from.y + part * dy + (aside * dx) / length,
      };
    }
  }
}
