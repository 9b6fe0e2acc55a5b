import { basisName, basisWords } from '../../core/corals/basis-words.ts';
import type { Bases, Statement } from '../../core/corals/basis.ts';

/** "75 to 200 PAR (common practice)". Where only a part is published, the notes say which. */
export function based(text: string, ...bases: readonly Bases[]): string {
  return `${text} (${onWhat(...bases)})`;
}

/** What values rest on, short; with its notes where only a part is published. */
function onWhat(...bases: readonly Bases[]): string {
  const kinds = new Set(bases.flat().map(({ kind }) => kind));
  return kinds.has('published') && kinds.size > 1 ? basisWords(...bases) : basisName(...bases);
}

export function basedStatement({ text, basis }: Statement): string {
  return based(text, basis);
}

/** Statements that rest on the same are told together: "hammers, frogspawn (from memory)". */
export function basedList(statements: readonly Statement[]): string {
  const told = new Map<string, string[]>();
  for (const { text, basis } of statements) {
    const words = onWhat(basis);
    told.set(words, [...(told.get(words) ?? []), text]);
  }
  return [...told].map(([words, texts]) => `${texts.join(', ')} (${words})`).join('; ');
}
