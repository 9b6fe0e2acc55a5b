import type { Scanned, Token } from '../../../core/language/tokens.ts';

/** The words of a message that stand whole between two places of it. */
export function tokensWithin({ tokens }: Scanned, from: number, to: number): readonly Token[] {
  return tokens.filter(({ start, end }) => start >= from && end <= to);
}

/** The words before a place, the nearest first. */
export function wordsBefore(scanned: Scanned, start: number): readonly string[] {
  return tokensWithin(scanned, 0, start)
    .map(({ word }) => word)
    .toReversed();
}
