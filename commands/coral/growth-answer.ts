import type { CoralEntry } from '../../core/corals/entry.ts';
import { cm, cmRange, fittingOf } from '../../core/corals/say.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { growthLine, sizeLine, uptakeLine, widthText, yearText } from './about-lines.ts';
import { fullName, tellingName } from './asked-kind.ts';
import { shortFirst } from './short-first.ts';

/** How fast and how wide a coral grows, from no size in particular. */
export function growthLinesAnswer(name: string, entry: CoralEntry): Answer {
  const { lowCmPerYear, highCmPerYear } = entry.growth;
  return answer({
    headline: `${entry.names.common[0]}: ${cmRange(lowCmPerYear, highCmPerYear)} wider a year, up to some ${cm(entry.size.practicalMaxCm)} in a tank.`,
    read: [`${name} as ${fullName(entry)}`],
    facts: shortFirst([growthLine(entry), sizeLine(entry), uptakeLine(entry)]),
    cautions: [
      'Ranges, not promises: light, food and room decide, and new pieces often stand still for weeks.',
    ],
    next: [action(say('coral.fromItsSize'), 'coral growth', { coral: tellingName(entry) }, ['size'])],
  });
}

/** So many letters of names and widths stand in the headline. */
const MOST_WIDE = 70;

/** Several side by side: how wide each gets and how fast. */
export function growthsAnswer(entries: readonly CoralEntry[]): Answer {
  const wide = entries.map(({ names, size }) => `${names.common[0]} ${cm(size.practicalMaxCm)}`);
  return answer({
    headline: `In the end, wide in a tank: ${fittingOf(wide, MOST_WIDE)}. Leave half of that on every side.`,
    facts: entries.map((entry) => ({
      label: entry.names.common[0],
      value: `${yearText(entry.growth)}, ${widthText(entry.size)}`,
    })),
    isList: true,
    cautions: ['Ranges, not promises. Room against stings comes on top: ask of each pair.'],
    next: [],
  });
}
