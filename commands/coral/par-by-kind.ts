import type { CoralEntry } from '../../core/corals/entry.ts';
import { lightFor } from '../../core/corals/light-need.ts';
import { lightVerdict, type LightVerdict } from '../../core/corals/light-verdict.ts';
import { fittingOf } from '../../core/corals/say.ts';
import type { Fact } from '../answer.ts';
import { lightFact } from './name-light.ts';
import type { SaidPar } from './par-verdict.ts';

/** Kinds that are named one by one; of more only how many. */
const MOST_NAMED = 2;

/** A reading for each kind a name can mean, as a new piece; undefined where all of them come out alike. */
export function byKind(entries: readonly CoralEntry[], { value, text }: SaidPar): ByKind | undefined {
  const judged = entries.map((entry) => ({
    entry,
    light: lightVerdict(entry, 'unknown', 'new', value),
  }));
  const words = [...new Set(judged.map(({ light }) => light.word))];
  if (words.length < 2) return undefined;
  const groups = words
    .map((word) => ({ word, of: judged.filter(({ light }) => light.word === word) }))
    .toSorted((a, b) => b.of.length - a.of.length);
  const said = groups.map(({ word, of }) => `${word} for ${kinds(of, entries.length)}`);
  return {
    headline: `${text.replace(/ ?par$/i, '')} PAR: ${said.join('; ')}.`,
    facts: judged.map(({ entry, light }) => ({
      ...lightFact(entry),
      verdict: light.word,
    })),
    steps: [
      'Look which kind it is: the line of that kind counts.',
      ...groups
        .filter(({ word }) => word !== 'fits')
        .map(({ word, of }) => `${startCase(word)}, ${names(of)}: ${adviceOf(of)}`),
    ],
  };
}

export interface ByKind {
  readonly headline: string;
  readonly facts: readonly Fact[];
  readonly steps: readonly string[];
}

type Judged = readonly { readonly entry: CoralEntry; readonly light: LightVerdict }[];

/** So many letters of names stand in a sentence. */
const NAMES_LETTERS = 40;

/** "staghorn acropora and table acropora", or "4 of the 7 kinds". */
function kinds(of: Judged, all: number): string {
  return of.length > MOST_NAMED ? `${of.length} of the ${all} kinds it can be` : names(of);
}

function names(of: Judged): string {
  return fittingOf(
    of.map(({ entry }) => entry.names.common[0].toLowerCase()),
    NAMES_LETTERS,
  );
}

/** Where they begin: one number, or from the lowest to the highest. */
function adviceOf(of: Judged): string {
  const starts = of.map(({ entry }) => lightFor(entry, 'unknown').startPpfd);
  const [least, most] = [Math.min(...starts), Math.max(...starts)];
  const near = least === most ? `${least}` : `${least} to ${most}`;
  return `a new piece begins near ${near} PAR; one long open here stays.`;
}

function startCase(word: string): string {
  return `${word.charAt(0).toUpperCase()}${word.slice(1)}`;
}
