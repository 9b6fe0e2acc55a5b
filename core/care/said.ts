/** Ways to say one thing: the text must hold a word of each list of one way, and none of `not`. */
export interface Way {
  readonly all: readonly (readonly string[])[];
  readonly not?: readonly string[];
}

/** A test for one list of words or patterns: whole words of a cleaned text. */
export function anyOf(words: readonly string[]): (text: string) => boolean {
  const pattern = new RegExp(String.raw`(?<![a-z0-9])(?:${words.join('|')})(?![a-z0-9])`);
  return (text) => pattern.test(text);
}

/** A test for several ways; the patterns are built once. */
export function saidIn(ways: readonly Way[]): (text: string) => boolean {
  const tests = ways.map(({ all, not = [] }) => ({
    all: all.map(anyOf),
    not: not.length === 0 ? () => false : anyOf(not),
  }));
  return (text) => tests.some(({ all, not }) => all.every((test) => test(text)) && !not(text));
}
