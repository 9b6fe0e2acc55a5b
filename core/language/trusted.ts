import { met } from './met.ts';
import type { Said } from './said.ts';
import type { Scanned, Token } from './tokens.ts';

/** Whose an instrument is, where it is not said by its name. */
const OWN = new Set(['mine', "mine's", 'mines']);
const THEIRS = new Set(['hers', 'his', 'theirs', 'yours', 'ours']);
/** Words of no more letters than these name no instrument. Own choice. */
const SMALL = 3;
/** Words behind "trust" that may say which. Own choice. */
const NEAR = 4;

/**
 * Of readings of one water the one that is said to be trusted: "I trust hers", "the lab, which I believe", "and that's the
 * one I trust". Undefined where none is, or it cannot be told.
 */
export function trustedOf(scanned: Scanned, readings: readonly Said[]): Said | undefined {
  const { tokens } = scanned;
  if (readings.length < 2 || !met(scanned, 'manner.trusts')) return undefined;
  const at = tokens.findIndex(({ word }) => TRUSTS.test(word));
  const behind = tokens.slice(at + 1, at + 1 + NEAR).map(({ word }) => word);
  const clauses = readings.map((one, index) => ({
    one,
    words: wordsBetween(tokens, readings[index - 1]?.number.end ?? 0, one.number.start),
  }));
  const own = clauses.filter(({ words }) => words.some((word) => OWN.has(word)));
  const others = clauses.filter((clause) => !own.includes(clause));
  if (behind.some((word) => OWN.has(word))) return only(own);
  if (behind.some((word) => THEIRS.has(word))) return only(others);
  const named = clauses.filter(({ words }) =>
    behind.some((word) => word.length > SMALL && words.includes(word)),
  );
  if (named.length > 0) return only(named);
  const isBehind = tokens[at - 1]?.word === 'i' || tokens[at - 1]?.word === 'we';
  const place = tokens[at]?.start ?? 0;
  return isBehind ? readings.findLast(({ number }) => number.end <= place) : undefined;
}

const TRUSTS = /^(?:trust|believe|rely)/;

function wordsBetween(tokens: readonly Token[], from: number, to: number): readonly string[] {
  return tokens.filter(({ start, end }) => start >= from && end <= to).map(({ word }) => word);
}

function only(found: readonly { readonly one: Said }[]): Said | undefined {
  return found.length === 1 ? found[0]?.one : undefined;
}
