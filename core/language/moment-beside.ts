import type { Said } from './said.ts';

/** The day or time said closest to a number, if one was said. */
export function momentBeside({ number }: Said, said: readonly Said[]): { moment?: string } {
  const near = said
    .filter(({ part }) => part === 'moment')
    .map((one) => ({
      text: one.text,
      far: Math.min(Math.abs(one.number.start - number.end), Math.abs(number.start - one.number.end)),
    }))
    .sort((a, b) => a.far - b.far)[0];
  return near === undefined || near.far > 12 ? {} : { moment: near.text };
}
