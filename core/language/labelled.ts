import { z } from 'zod';
import { kinds } from './kinds.ts';
import { ofNames, partNames } from './parts.ts';

/** One line of a batch of sentences: a message and what it is. */
const lineSchema = z.strictObject({
  text: z.string().min(1),
  kind: z.enum(kinds),
  card: z.string().optional(),
  /** Other kinds that are wanted as well, or are as right a reading. */
  also: z.array(z.enum(kinds)).optional(),
  /** The same text with every number marked: `[8.2](was alkalinity)`. */
  roles: z.string().optional(),
  /** True where alarming words are used and nothing is wrong. */
  calm: z.boolean().optional(),
  /** The story it is a message of, in order; labelled as it stands alone. */
  story: z.string().optional(),
});

/** Who wrote a batch, how and when; `measured` names the day a measuring batch had its figure. */
const headSchema = z.strictObject({
  batch: z.string(),
  voices: z.string(),
  written: z.string().optional(),
  measured: z.string().optional(),
  locked: z.boolean().optional(),
});

export type Line = z.infer<typeof lineSchema>;
export type Head = z.infer<typeof headSchema>;

/** A marked number: where it stands in the text, the part it plays and what it is of. */
export interface Mark {
  readonly start: number;
  readonly end: number;
  readonly part: (typeof partNames)[number];
  readonly of: (typeof ofNames)[number];
}

export interface Batch {
  readonly head: Head;
  readonly lines: readonly Line[];
}

/** Reads a batch: its head, then a message a line. @throws Error naming the line that is wrong. */
export function readBatch(text: string): Batch {
  const [first = '{}', ...rest] = text.split('\n').filter((line) => line.trim() !== '');
  return {
    head: headSchema.parse(JSON.parse(first)),
    lines: rest.map((line) => lineSchema.parse(JSON.parse(line))),
  };
}

const MARK = /\[([^\]]*)\]\(([^)]*)\)/g;

/** The marks of a line, in places of its text; undefined where its numbers are not marked. */
export function marksOf({ roles }: Line): readonly Mark[] | undefined {
  if (roles === undefined) return undefined;
  let removed = 0;
  return [...roles.matchAll(MARK)].map((match) => {
    const [all, words = '', label = ''] = match;
    const start = match.index - removed;
    removed += all.length - words.length;
    const [part = '', ...of] = label.trim().split(' ');
    return { start, end: start + words.length, part: partOf(part), of: ofOf(part, of.join(' ')) };
  });
}

function partOf(word: string): Mark['part'] {
  return partNames.find((name) => name === word) ?? 'none';
}

/** Many words say what a number is of; those that no slot asks for are one. */
function ofOf(part: string, word: string): Mark['of'] {
  const known = ofNames.find((name) => name === word.toLowerCase().replace('ph', 'pH') || name === word);
  if (known !== undefined) return known;
  if (word === '') return 'nothing';
  return part === 'amount' || part === 'rate' || part === 'strength' ? 'substance' : 'nothing';
}
