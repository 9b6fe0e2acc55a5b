import { danger, isDangerous, isRight } from './calibrate.ts';
import type { Kind } from './kinds.ts';
import { marksOf, type Line, type Mark } from './labelled.ts';
import { isLevelPart } from './parts.ts';
import type { Reader, Reading } from './reading.ts';
import type { Said } from './said.ts';

/** How well a batch is read; shares of one. */
export interface Figures {
  readonly messages: number;
  /** The first guess is right, or one of the first three is. */
  readonly kindFirst: number;
  readonly kindInThree: number;
  /** Of messages below a kind with cards: the first card of that kind is right. */
  readonly card: number;
  /** Of numbers: the part is right; and what a level is of as well. */
  readonly part: number;
  readonly partAndOf: number;
  /** The same, of the numbers a sum can take: no counts, ages, sizes, days. */
  readonly taken: number;
  /** Of messages with numbers: all of them right. */
  readonly allNumbers: number;
  /** Answered outright, and of those wrong. */
  readonly outright: number;
  readonly outrightWrong: number;
  /** Of emergencies: shown at once; shown or asked about. */
  readonly dangerShown: number;
  readonly dangerAsked: number;
  /** Of calm messages with alarming words: an alarm. */
  readonly falseAlarms: number;
}

/** What went wrong with one message. */
export interface Miss {
  readonly text: string;
  readonly kind: Kind;
  readonly read: readonly string[];
  readonly numbers: readonly string[];
}

/** Parts that fill no slot of a sum. */
const UNTAKEN: ReadonlySet<Mark['part']> = new Set(['none', 'length', 'moment']);

/** Reads every message of a batch once and compares with its labels. */
export function measured(
  lines: readonly Line[],
  { read, thresholds }: Reader,
): { readonly figures: Figures; readonly misses: readonly Miss[] } {
  const all = lines.map((line) => ({ line, reading: read(line.text) }));
  const numbers = all.flatMap(({ line, reading }) => {
    const marks = marksOf(line);
    return marks === undefined ? [] : [{ marks, said: reading.said }];
  });
  const marks = numbers.flatMap(({ marks: own, said }) =>
    own.map((mark) => ({ mark, found: saidAt(said, mark) })),
  );
  const emergencies = all.filter(({ line }) => isDangerous(line) && line.calm !== true);
  const calm = all.filter(({ line }) => line.calm === true && !isDangerous(line));
  const sure = all.filter(({ reading }) => (reading.kinds[0]?.probability ?? 0) >= thresholds.answer);
  const carded = all.filter(({ line }) => line.card !== undefined && line.calm !== true);
  return {
    figures: {
      messages: all.length,
      kindFirst: share(all, ({ line, reading }) => isRight(line, reading.kinds[0]?.name ?? '')),
      kindInThree: share(all, ({ line, reading }) =>
        reading.kinds.slice(0, 3).some(({ name }) => isRight(line, name)),
      ),
      card: share(carded, ({ line, reading }) => reading.cards(line.kind)[0]?.name === line.card),
      part: share(marks, ({ mark, found }) => hasPart(mark, found)),
      partAndOf: share(marks, ({ mark, found }) => isRightNumber(mark, found)),
      taken: share(
        marks.filter(({ mark }) => !UNTAKEN.has(mark.part)),
        ({ mark, found }) => isRightNumber(mark, found),
      ),
      allNumbers: share(numbers, ({ marks: own, said }) =>
        own.every((mark) => isRightNumber(mark, saidAt(said, mark))),
      ),
      outright: sure.length / Math.max(all.length, 1),
      outrightWrong: share(sure, ({ line, reading }) => !isRight(line, reading.kinds[0]?.name ?? '')),
      dangerShown: share(emergencies, ({ reading }) => danger(reading) >= thresholds.danger),
      dangerAsked: share(emergencies, ({ reading }) => danger(reading) >= thresholds.maybeDanger),
      falseAlarms: share(calm, ({ reading }) => danger(reading) >= thresholds.danger),
    },
    misses: all.flatMap(({ line, reading }) => missOf(line, reading)),
  };
}

function missOf(line: Line, reading: Reading): Miss[] {
  const numbers = (marksOf(line) ?? []).flatMap((mark) => {
    const found = saidAt(reading.said, mark);
    if (isRightNumber(mark, found)) return [];
    const as = found === undefined ? 'not seen' : `${found.part} ${found.of}`;
    return [`${line.text.slice(mark.start, mark.end)}: ${mark.part} ${mark.of}, read as ${as}`];
  });
  const [first] = reading.kinds;
  if (numbers.length === 0 && first !== undefined && isRight(line, first.name)) return [];
  const read = reading.kinds.slice(0, 3).map(({ name, probability }) => `${name} ${probability.toFixed(2)}`);
  return [{ text: line.text, kind: line.kind, read, numbers }];
}

function saidAt(said: readonly Said[], { start, end }: Mark): Said | undefined {
  return said.find(({ number }) => number.start < end && start < number.end);
}

/** A count or a price that is not seen as a number plays no part, which is right. */
function hasPart({ part }: Mark, found: Said | undefined): boolean {
  return (found?.part ?? 'none') === part;
}

/** What it is of counts for levels; for the other parts no sum asks. */
function isRightNumber(mark: Mark, found: Said | undefined): boolean {
  return hasPart(mark, found) && (!isLevelPart(mark.part) || found?.of === mark.of);
}

function share<T>(all: readonly T[], test: (one: T) => boolean): number {
  return all.length === 0 ? 1 : all.filter(test).length / all.length;
}
