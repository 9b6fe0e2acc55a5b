import type { Answer } from '../../answer.ts';
import { opened } from '../../short/remark-first.ts';

/** The answer with a sentence before its first line, or as its first fact where that has no room for it. */
export function led(lead: string, given: Answer, label = 'mind'): Answer {
  return opened([{ value: given.headline }, { label, value: lead, isBefore: true }], given);
}

/** The answer behind the first line that is asked for: its own follows, or is the first fact. */
export function under(first: string, given: Answer, label: string): Answer {
  return opened([{ value: first }, { label, value: given.headline }], given);
}

/** The answer with the first lines of others behind its own, or as facts. */
export function followed(given: Answer, others: readonly string[]): Answer {
  const more = new Set(others.filter((line) => line !== given.headline));
  return opened([{ value: given.headline }, ...[...more].map((value) => ({ label: 'and', value }))], given);
}
