import type { CoralEntry } from '../../core/corals/entry.ts';
import type { Answer, Fact } from '../answer.ts';
import { hazardLines } from './hazard-lines.ts';

/** A page of the guide with these of its lines as the answer. */
export function withFirst(page: Answer, entry: CoralEntry, lines: readonly Fact[]): Answer {
  const words = lines.map(({ label, value }) => `${label}: ${value}`).join('. ');
  return {
    ...page,
    headline: `${entry.names.common[0]}, ${words}${/[.]$/.test(words) ? '' : '.'}`,
    facts: page.facts.filter(({ label }) => !lines.some((line) => line.label === label)),
  };
}

/** Harm to people, or that none is known of. */
export function peopleLines(entry: CoralEntry): readonly Fact[] {
  const lines = hazardLines([entry]);
  if (lines.length > 0) return lines.map((line) => ({ ...line, label: 'people' }));
  return [
    {
      label: 'people',
      value:
        'I know of no special hazard, but any coral can irritate skin or cut it: gloves, and wash your hands (common practice)',
    },
  ];
}
