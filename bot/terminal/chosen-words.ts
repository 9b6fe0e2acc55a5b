/** Answers that leave the choice to the one who asked: the first is the likeliest. */
const LEFT_TO_ASKER = /^(?:you (?:choose|pick|decide)|any(?: of them)?|either|whichever)$/;
/** A longer line says something else. */
const MOST_WORDS = 5;

/** The place among `choices` of the one that typed words name, or undefined: "middle" of "low", "middle rock", "top". */
export function chosenByWords(typed: string, choices: readonly string[]): number | undefined {
  const said = wordsOf(typed);
  if (said.length === 0 || said.length > MOST_WORDS || choices.length === 0) return undefined;
  if (LEFT_TO_ASKER.test(said.join(' '))) return 0;
  const words = choices.map(wordsOf);
  const same = words.findIndex((choice) => choice.join(' ') === said.join(' '));
  if (same >= 0) return same;
  const within = words.flatMap((choice, at) => (said.every((word) => choice.includes(word)) ? [at] : []));
  return within.length === 1 ? within[0] : undefined;
}

function wordsOf(text: string): readonly string[] {
  return text.toLowerCase().match(/[\p{L}\p{N}]+(?:[.,]\p{N}+)?/gu) ?? [];
}
