/**
 * A text broken in two, the first of at most so many letters: only behind a "; " or ". " that stands in no brackets, so
 * that a first part longer than that stays whole. "a (x; y); b" in 12 letters: "a (x; y)", "b"; a text that fits has no rest.
 */
export function brokenLine(text: string, letters: number): readonly [string, string] {
  if (text.length <= letters) return [text, ''];
  const breaks = breaksOf(text);
  const at = breaks.findLast((one) => one <= letters) ?? breaks[0];
  return at === undefined ? [text, ''] : [text.slice(0, at), text.slice(at + 2)];
}

/** Where the dividing signs stand. */
function breaksOf(text: string): readonly number[] {
  let depth = 0;
  return [...text].flatMap((letter, at) => {
    if (letter === '(') depth++;
    if (letter === ')') depth--;
    return depth === 0 && text[at + 1] === ' ' && /[;.]/.test(letter) ? [at] : [];
  });
}
