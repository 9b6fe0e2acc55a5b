import { sourceLabel } from './source.ts';
import { sources, type SourceCode } from './sources.ts';

/** What a text calls each source, habit and memory by their marks. */
const codes: ReadonlyMap<string, SourceCode> = new Map([
  ...(Object.keys(sources) as SourceCode[]).flatMap((code): [string, SourceCode][] => {
    const label = sourceLabel(sources[code]);
    return label === undefined ? [] : [[label, code]];
  }),
  ['common practice', 'practice'],
  ['from memory', 'memory'],
]);

/** Longer names first, so that "Lapid et al. 2004" is not taken for a shorter one it begins with. */
const NAMED = new RegExp(
  String.raw`(?<![A-Za-z])(?:${[...codes.keys()]
    .sort((a, b) => b.length - a.length)
    .map((label) => label.replace(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`))
    .join('|')})(?![A-Za-z0-9])`,
  'g',
);

/** Sources that texts name: papers first, then habit, then memory. A basis mark is printed with its source's label. */
export function sourcesNamed(texts: readonly string[]): readonly SourceCode[] {
  const named = new Set(
    texts.flatMap((text) => [...text.matchAll(NAMED)].flatMap(([label]) => codes.get(label) ?? [])),
  );
  const last = (['practice', 'memory'] as const).filter((code) => named.delete(code));
  return [...named, ...last];
}
