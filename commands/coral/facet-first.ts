import { brokenLine } from '../../core/words/broken-line.ts';
import type { CoralEntry } from '../../core/corals/entry.ts';
import type { Answer, Fact } from '../answer.ts';
import { shortLimits } from '../short/limits.ts';
import { hazardLines } from './hazard-lines.ts';
import { aboutLines } from './about-lines.ts';
import { shortFirst } from './short-first.ts';

/** A page of the guide with these of its lines as the answer. */
export function withFirst(page: Answer, entry: CoralEntry, lines: readonly Fact[]): Answer {
  const room = (shortLimits.headline - entry.names.common[0].length) / lines.length;
  const broken = lines.map(({ label, value }) => {
    const [first, more] = brokenLine(`${label}: ${value}`, room - 2);
    return { first, more: more === '' ? [] : [{ label: `more on ${label}`, value: more }] };
  });
  const others = aboutLines(entry).filter(({ label }) => !lines.some((line) => line.label === label));
  const heads = broken.map(({ first }) => first.replace(/[.]$/, ''));
  const withHeads = (count: number): string =>
    `${entry.names.common[0]}, ${heads.slice(0, count).join('. ')}.`;
  const fits = heads.findLastIndex((_, at) => withHeads(at + 1).length <= shortLimits.headline) + 1;
  const shown = Math.max(1, fits);
  return {
    ...page,
    headline: withHeads(shown),
    facts: [
      ...broken.slice(0, shown).flatMap(({ more }) => more),
      ...lines.slice(shown),
      ...shortFirst(others),
    ],
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
