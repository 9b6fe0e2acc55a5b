import type { Option } from './options.ts';

/** What an option or a command is, in its own first words: "How wide it is when open", without example and conditions. */
export function titleOf({ description }: Pick<Option, 'description'>): string {
  return firstWords(description);
}

/** The same of a command: the words before the first mark of its summary. */
export function formTitle({ summary }: { readonly summary: string }): string {
  return firstWords(summary);
}

function firstWords(text: string): string {
  return (/^.+?(?=,? e\.g\.|[,;:(]|\. |$)/.exec(text)?.[0] ?? text).trim();
}
