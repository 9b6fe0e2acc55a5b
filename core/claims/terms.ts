import type { Stated } from './stated.ts';

/** A unit or substance named without a number, where it stands. */
export interface Term {
  readonly start: number;
  readonly end: number;
}

/** Where one of the names stands as whole words outside the numbers, the longest at each place; in order. */
export function termsIn({ text, scanned: { tokens } }: Stated, names: readonly string[]): readonly Term[] {
  const longest = [...names].sort((a, b) => b.length - a.length);
  const found: Term[] = [];
  for (const { start, number } of tokens) {
    if (number !== undefined || start < (found.at(-1)?.end ?? 0)) continue;
    const name = longest.find((each) => text.startsWith(each, start) && isEnd(text, start + each.length));
    if (name !== undefined) found.push({ start, end: start + name.length });
  }
  return found;
}

function isEnd(text: string, at: number): boolean {
  return at >= text.length || !/[a-z0-9-]/.test(text[at] ?? '') || /^-\s/.test(text.slice(at, at + 2));
}
