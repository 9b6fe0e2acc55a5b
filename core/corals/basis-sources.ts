import type { SourceCode } from '../sources.ts';
import type { Bases } from './basis.ts';

/** Codes of what values rest on: the papers first, then habit, then memory. A project rule is no source. */
export function sourceCodes(...bases: readonly Bases[]): readonly SourceCode[] {
  const all = bases.flat();
  const papers = all.flatMap((basis) => (basis.kind === 'published' ? [basis.source] : []));
  const has = (kind: 'practice' | 'memory'): readonly SourceCode[] =>
    all.some((basis) => basis.kind === kind) ? [kind] : [];
  return [...new Set<SourceCode>([...papers, ...has('practice'), ...has('memory')])];
}
