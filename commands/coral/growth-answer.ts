import type { CoralEntry } from '../../core/corals/entry.ts';
import { cm } from '../../core/corals/say.ts';
import { answer, type Answer } from '../answer.ts';
import { action } from '../calls.ts';
import { growthLine, sizeLine, uptakeLine, widthText, yearText } from './about-lines.ts';
import { fullName, tellingName } from './asked-kind.ts';

/** How fast and how wide a coral grows, from no size in particular. */
export function growthLinesAnswer(name: string, entry: CoralEntry): Answer {
  return answer({
    headline: `${entry.names.common[0]}: ${yearText(entry.growth)}, ${widthText(entry.size)}.`,
    read: [`${name} as ${fullName(entry)}`],
    facts: [sizeLine(entry), growthLine(entry), uptakeLine(entry)],
    cautions: [
      'Ranges, not promises: light, food and room decide, and new pieces often stand still for weeks.',
    ],
    next: [action('From the size it has now', 'coral growth', { coral: tellingName(entry) }, ['size'])],
  });
}

/** Several side by side: how wide each gets and how fast. */
export function growthsAnswer(entries: readonly CoralEntry[]): Answer {
  const wide = entries.map(({ names, size }) => `${names.common[0]} ${cm(size.practicalMaxCm)}`);
  return answer({
    headline: `In the end, wide in a tank: ${wide.join(', ')}. Leave each half of that on every side, or cut it back.`,
    facts: entries.map((entry) => ({
      label: entry.names.common[0],
      value: `${yearText(entry.growth)}, ${widthText(entry.size)}`,
    })),
    cautions: ['Ranges, not promises. Room against stings comes on top: ask of each pair.'],
    next: [],
  });
}
