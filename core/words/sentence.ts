/** The sentences of a text, each with its full stop: "Keep it wet. Cut it." gives two; "9.8 cm" and "et al. 2004" are whole. */
export function sentencesOf(text: string): readonly string[] {
  return text.split(/(?<=[.!?]) (?=[A-Z])/);
}

/** The first sentence alone. */
export function firstSentence(text: string): string {
  return sentencesOf(text)[0] ?? text;
}
