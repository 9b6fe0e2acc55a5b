import { runsOf, withoutMarks, wordsOf } from './letters.ts';
import { MOST_STEPS, pack, STEP, type Packed } from './packed.ts';
import { tongues, type Tongue, type TongueSentences } from './tongues.ts';

/** Runs that are kept: those that tell most; the file stays below 300 kB. */
const MOST_RUNS = 16_000;
/** Share of a sentence without its marks beside the same with them. */
const PLAIN_SHARE = 0.5;
/** Letters a language may have that were in none of its sentences. */
const ALPHABET = 60;

/** How often each run was seen, and what stood behind each beginning: all of it, and how many different letters. */
interface Counts {
  readonly runs: Map<string, number>;
  readonly total: Map<string, number>;
  readonly kinds: Map<string, number>;
}

/**
 * The letter model of every language: for runs of one to four letters, how likely the last one is behind the others
 * (Witten and Bell's interpolation of all lengths). The same sentences give the same result.
 */
export function fitTongues(sentences: TongueSentences): Packed {
  const counts = tongues.map((tongue) => counted(sentences, tongue));
  const every = new Set(counts.flatMap(({ runs }) => [...runs.keys()]));
  const logs = new Map([...every].map((run) => [run, counts.map((each) => -Math.log(chance(each, run)))]));
  const worth = [...every].map((run): [string, number] => [run, worthOf(run, counts, logs)]);
  const kept = worth
    .sort(([a, x], [b, y]) => y - x || (a < b ? -1 : 1))
    .slice(0, MOST_RUNS)
    .map(([run]): [string, readonly number[]] => [run, (logs.get(run) ?? []).map(stepsOf)]);
  return pack(new Map(kept));
}

function stepsOf(log: number): number {
  return Math.min(MOST_STEPS, Math.round(log / STEP));
}

function counted(sentences: TongueSentences, tongue: Tongue): Counts {
  const counts: Counts = { runs: new Map(), total: new Map(), kinds: new Map() };
  for (const sentence of sentences[tongue])
    for (const word of wordsOf(sentence)) {
      count(counts, word, 1 - PLAIN_SHARE);
      count(counts, withoutMarks(word), PLAIN_SHARE);
    }
  return counts;
}

function count({ runs, total, kinds }: Counts, word: string, share: number): void {
  for (const longest of runsOf(word))
    for (let from = 0; from < longest.length; from++) {
      const run = longest.slice(from);
      const lead = run.slice(0, -1);
      if (!runs.has(run)) kinds.set(lead, (kinds.get(lead) ?? 0) + 1);
      runs.set(run, (runs.get(run) ?? 0) + share);
      total.set(lead, (total.get(lead) ?? 0) + share);
    }
}

function chance(counts: Counts, run: string): number {
  if (run === '') return 1 / ALPHABET;
  const lead = run.slice(0, -1);
  const total = counts.total.get(lead) ?? 0;
  const kinds = counts.kinds.get(lead) ?? 0;
  const shorter = chance(counts, run.slice(1));
  return total === 0 ? shorter : ((counts.runs.get(run) ?? 0) + kinds * shorter) / (total + kinds);
}

/** What would be lost if the shorter run stood for this one; single letters are always kept. */
function worthOf(
  run: string,
  counts: readonly Counts[],
  logs: ReadonlyMap<string, readonly number[]>,
): number {
  if (run.length === 1) return Infinity;
  const own = logs.get(run) ?? [];
  const shorter = logs.get(run.slice(1)) ?? [];
  return counts.reduce(
    (sum, { runs }, index) =>
      sum + (runs.get(run) ?? 0) * Math.abs((own[index] ?? 0) - (shorter[index] ?? 0)),
    0,
  );
}
