import { ruleWords } from '../corals/rule-words.ts';
import { palette } from './palette.ts';
import { cutTo, tag, textWidth, words } from './svg.ts';
import { badge, badgeSize, SMALL } from './tank-map-badge.ts';
import type { Shown } from './tank-map-shown.ts';
import { PAD } from './tank-map-view.ts';
import { WIDTH } from './trend.ts';

const ROW = 32;
const BETWEEN = 24;
/** More than this stand in two columns. */
const ONE_COLUMN = 40;
/** More than this are not listed here. */
const MOST_LISTED = 150;

/** Height the list takes. */
export function listHeight(shown: readonly Shown[]): number {
  return rowsOf(shown) * ROW + (shown.length > MOST_LISTED ? ROW : 0);
}

function rowsOf({ length }: readonly Shown[]): number {
  return length <= ONE_COLUMN ? length : Math.ceil(Math.min(length, MOST_LISTED) / 2);
}

/** Every coral with its number, its name and its verdict in words, with what says so where there is room. */
export function list(shown: readonly Shown[], top: number): string {
  const rows = rowsOf(shown);
  const columns = shown.length <= ONE_COLUMN ? 1 : 2;
  const width = (WIDTH - 2 * PAD - (columns - 1) * BETWEEN) / columns;
  const numberWidth = shown.reduce((most, { coral }) => Math.max(most, badgeSize(String(coral.id)).width), 0);
  const parts = shown.slice(0, MOST_LISTED).map(({ coral, verdict, rules }, i) => {
    const left = PAD + Math.floor(i / rows) * (width + BETWEEN);
    const y = top + (i % rows) * ROW + ROW / 2;
    const place = { y: y + 8, size: SMALL, fill: palette.ink };
    const said =
      columns > 1 || rules.length === 0
        ? verdict
        : `${verdict}: ${rules.map((rule) => ruleWords[rule]).join(', ')}`;
    const saidShort = cutTo(width / 2, said, SMALL);
    const room = width - numberWidth - textWidth(saidShort, SMALL) - 24;
    return [
      badge(verdict, String(coral.id), { x: left + numberWidth / 2, y }),
      words(cutTo(room, coral.label, SMALL), { ...place, x: left + numberWidth + 10 }),
      words(saidShort, { ...place, x: left + width, anchor: 'end' }),
    ].join('');
  });
  const more = shown.length - MOST_LISTED;
  const rest = { x: PAD, y: top + rows * ROW + 26, size: SMALL, fill: palette.quietInk };
  return tag('g', { class: 'list' }, ...parts, more > 0 ? words(`and ${more} more`, rest) : '');
}
