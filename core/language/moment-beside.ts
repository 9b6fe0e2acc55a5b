import type { Said } from './said.ts';

/** Characters between a number and its day at most. Own choice. */
const NEAR = 12;

/**
 * The day or time said closest to a number, if one was said near it; else the last one before it, where no other number
 * stands between: "friday, since I ran out of the stuff, it was 8.4".
 */
export function momentBeside(one: Said, said: readonly Said[]): { readonly moment?: string } {
  const { number } = one;
  const near = said
    .filter(({ part }) => part === 'moment')
    .map((moment) => ({
      text: moment.text,
      far: Math.min(Math.abs(moment.number.start - number.end), Math.abs(number.start - moment.number.end)),
    }))
    .sort((a, b) => a.far - b.far)[0];
  if (near !== undefined && near.far <= NEAR) return { moment: near.text };
  const before = said.findLast((other) => other.number.end <= number.start);
  return before?.part === 'moment' ? { moment: before.text } : {};
}
