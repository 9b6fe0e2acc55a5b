import { readSentences } from '../bot/reader/files.ts';
import type { Line } from '../core/language/labelled.ts';

/** Sentences of the project's own earlier tests: many hands, every kind. */
export const earlier: readonly Line[] = readSentences().find(({ name }) => name === 'w')?.lines ?? [];

/** The texts of those a test is about. */
export function textsOf(test: (line: Line) => boolean): readonly string[] {
  return earlier.filter(test).map(({ text }) => text);
}
