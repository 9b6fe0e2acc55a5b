/** Invisible characters people paste without knowing: zero-width, joiners, direction marks, soft hyphen. */
const INVISIBLE =
  /\u00AD|\u061C|\u180E|[\u200B-\u200F]|[\u202A-\u202E]|[\u2060-\u2064]|[\u2066-\u2069]|[\uFE00-\uFE0F]|\uFEFF/g;

/** Words of plain ASCII with single spaces between: only their case can need a change. */
const PLAIN = /^[!-~]+(?: [!-~]+)*$/;

/**
 * Brings a member's text to one form before it is read: lower case, one kind of micro sign, minus, times, space
 * and quote; no invisible characters. `"8,3 µS −1"` and its look-alikes become the same text.
 */
export function clean(text: string): string {
  if (PLAIN.test(text)) return text.toLowerCase();
  return text
    .replace(INVISIBLE, '')
    .replace(/[\u03BC]/g, 'µ')
    .replace(/[\u2212\u2010-\u2015]/g, '-')
    .replace(/[×✕✖]/g, 'x')
    .replace(/[·∙⋅]/g, '*')
    .replace(/÷/g, '/')
    .replace(/[’‘]/g, "'")
    .replace(/[“”]/g, '"')
    .replace(/º/g, '°')
    .replace(/₂/g, '2')
    .replace(/₃/g, '3')
    .replace(/₄/g, '4')
    .replace(/\s+/g, ' ')
    .toLowerCase()
    .trim();
}
