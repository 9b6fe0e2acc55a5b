import type { Said } from './said.ts';
import type { Scanned } from './tokens.ts';

/** "50x40", "60 by 45": what joins the sides of one box, before a side and behind it. */
export const JOINED_BEFORE = /(?:(?:\b|\d)(?:x|by)|\*)\s*$/;
const JOINED_BEHIND = /^\s*(?:x|by\b|\*)/;

/** Lengths of a tank and its sump, in order; a bare number taken for a volume only where it is joined to another side. */
export function lengthsSaid({ text }: Scanned, said: readonly Said[]): readonly Said[] {
  const found = said.filter(({ part, of, number: { kinds, start, end } }) => {
    if (kinds.some((kind) => kind !== 'length' && kind !== 'scoops' && kind !== 'times')) return false;
    if (part === 'length') return true;
    const isLength = kinds.includes('length');
    const isJoined = JOINED_BEFORE.test(text.slice(0, start)) || JOINED_BEHIND.test(text.slice(end));
    return (part === 'system' || (part === 'part' && of === 'sump')) && (isLength || isJoined);
  });
  // "a 45 cube", "20 x": what stands behind is no unit of a length.
  return found.map((one) => (one.number.kinds.includes('length') ? one : withoutUnit(one)));
}

function withoutUnit(one: Said): Said {
  return { ...one, number: { ...one.number, unit: '', kinds: [] }, text: one.number.number };
}
