import { LONGEST_RUN } from './letters.ts';
import { tongues } from './tongues.ts';

/** Minus the logarithm of how likely the last letter of a run is behind the others, in each language, in steps. */
export type Runs = ReadonlyMap<string, readonly number[]>;

/** One string a length of run: run, then one character a language, without anything between. */
export type Packed = readonly string[];

/** Nats a step. */
export const STEP = 0.25;
/** First character of the steps; the last one is "[", so that no quote and no backslash is among them. */
const FIRST = '('.charCodeAt(0);
export const MOST_STEPS = '['.charCodeAt(0) - FIRST;

export function pack(runs: Runs): Packed {
  const sorted = [...runs].sort(([a], [b]) => (a < b ? -1 : 1));
  return Array.from({ length: LONGEST_RUN }, (_, index) =>
    sorted
      .filter(([run]) => run.length === index + 1)
      .map(([run, steps]) => run + String.fromCharCode(...steps.map((step) => FIRST + step)))
      .join(''),
  );
}

export function unpack(packed: Packed): Runs {
  const runs = new Map<string, readonly number[]>();
  for (const [index, text] of packed.entries()) {
    const length = index + 1;
    const width = length + tongues.length;
    for (let at = 0; at < text.length; at += width) {
      const steps = tongues.map((_, tongue) => text.charCodeAt(at + length + tongue) - FIRST);
      runs.set(text.slice(at, at + length), steps);
    }
  }
  return runs;
}
