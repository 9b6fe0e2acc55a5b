import { placeOf, type Scanned, type Token } from './tokens.ts';
import type { NumberSpan } from './scan/number-span.ts';

/** Letters on either side of a number that can say what it is of. Own choice. */
const NEAR = 40;

/** The words beside a number, up to the next stop or number on either side. */
export function clauseWords({ tokens, ...rest }: Scanned, number: NumberSpan): Scanned {
  const { start, end } = number;
  const at = placeOf(tokens, number);
  const isEnd = ({ word, number: other, ...token }: Token): boolean =>
    /^[.,;!?]$/.test(word) || other !== undefined || token.start > end + NEAR || token.end < start - NEAR;
  const from = tokens.slice(0, at).findLastIndex(isEnd);
  const to = tokens.slice(at + 1).findIndex(isEnd);
  return { ...rest, tokens: tokens.slice(from + 1, to < 0 ? undefined : at + 1 + to) };
}
