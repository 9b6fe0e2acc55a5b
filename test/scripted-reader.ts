import { marksOf } from '../core/language/labelled.ts';
import type { Kind } from '../core/language/kinds.ts';
import type { Reader } from '../core/language/reading.ts';
import { saidAs } from '../core/language/said.ts';
import { scan } from '../core/language/tokens.ts';

/** A message with its numbers marked as in the batches of sentences, and what it may want, likeliest first. */
export interface Scripted {
  /** "raise alk [7.2](now alkalinity) to [8.4](wanted alkalinity)". */
  readonly marked: string;
  readonly kinds: readonly (readonly [Kind, number])[];
  readonly card?: string;
}

const MARK = /\[([^\]]*)\]\([^)]*\)/g;

/** A reader that knows these messages alone, so that what follows from a reading hangs on no weights. */
export function scriptedReader(messages: readonly Scripted[]): Reader {
  const known = new Map(messages.map((one) => [one.marked.replaceAll(MARK, '$1'), one]));
  return {
    thresholds: { answer: 0.6, margin: 0.2, danger: 0.3, maybeDanger: 0.1, far: 0.1 },
    story: {},
    sentences: 'of a test',
    read: (text) => {
      const found = known.get(text);
      if (found === undefined) throw new Error(`not scripted: ${text}`);
      const { marked, kinds, card } = found;
      const scanned = scan(text);
      const marks = marksOf({ text, kind: 'off-topic', roles: marked }) ?? [];
      return {
        given: text,
        scanned,
        said: scanned.numbers.map((number) => {
          const mark = marks.find(({ start, end }) => start <= number.start && number.start < end);
          return saidAs(mark?.part ?? 'none', mark?.of ?? 'nothing', number, 1);
        }),
        kinds: kinds.map(([name, probability]) => ({ name, probability })),
        cards: (kind) =>
          card === undefined || kind !== kinds[0]?.[0] ? [] : [{ name: card, probability: 1 }],
      };
    },
  };
}

/** The text of a scripted message. */
export function plain(marked: string): string {
  return marked.replaceAll(MARK, '$1');
}
