/** Look-alikes of one character each, so that a place in the folded text is the same place in what was written. */
const LIKE: Readonly<Record<string, string>> = {
  '\u2019': "'",
  '\u2018': "'",
  '\u201C': '"',
  '\u201D': '"',
  '\u2033': '"',
  '\u2032': "'",
  '\u2212': '-',
  '\u2010': '-',
  '\u2011': '-',
  '\u2012': '-',
  '\u2013': '-',
  '\u2014': '-',
  '\u00D7': 'x',
  '\u2715': 'x',
  '\u2716': 'x',
  '\u00B7': '*',
  '\u2219': '*',
  '\u22C5': '*',
  '\u03BC': '\u00B5',
  '\u00BA': '\u00B0',
  '\u2080': '0',
  '\u2081': '1',
  '\u2082': '2',
  '\u2083': '3',
  '\u2084': '4',
  '\u2192': '>',
  '\u21D2': '>',
};

/** Invisible characters people paste without knowing, and every kind of white space. */
const BLANK =
  /\s|\u00AD|\u061C|\u180E|[\u200B-\u200F]|[\u202A-\u202E]|[\u2060-\u2064]|[\u2066-\u2069]|[\uFE00-\uFE0F]|\uFEFF/u;

/** Plain characters, the bulk of what is written, need no look-up. */
const PLAIN = /^[ -~]*$/;

/**
 * Brings a text to one alphabet without moving anything: lower case, one kind of quote, minus, times and micro sign,
 * blanks for what is not seen. The result has the length of what was given. Check: "Alk 8\u201C9" -> `alk 8"9`.
 */
export function fold(text: string): string {
  if (PLAIN.test(text)) return text.toLowerCase();
  let folded = '';
  for (let at = 0; at < text.length; at++) {
    const char = text[at] ?? '';
    const lower = (LIKE[char] ?? char).toLowerCase();
    folded += BLANK.test(char) ? ' ' : lower.length === 1 ? lower : char;
  }
  return folded;
}
