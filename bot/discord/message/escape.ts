import { stamped } from './stamp.ts';

/** Characters that start some Markdown, wherever they stand. */
const active = /[\\*_~|`<>[\]]/g;
/** At the start of a line: headings, subtext, lists. A plain minus sign before a number stays. */
const atStart = /^(?:#|[-+](?=[#\s])|\d+(?=[.)]\s))/;
/** `:name:` would become an emoji, `https://` a link with a preview. */
const colons = /:(?=\/\/|[A-Za-z][\w~-]*:)/g;
/** What Discord reads as a mention; a zero-width space after the @ keeps the look and ends the meaning. */
const mentions = /@(?=everyone|here|[!&\d])/gi;
/** Control characters, line breaks and marks that turn the direction of text, and so the order of numbers after them. */
const invisible = /[\p{Cc}\p{Zl}\p{Zp}\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]+/gu;

/** Most lines hold nothing the patterns above could find; one look tells. */
const harmless =
  /^(?![-+#\s]|\d+[.)]\s)(?:[^\\*_~|`<>[\]:@\p{Cc}\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]|:(?= ))*(?<!\s)$/u;

/** One line of plain text, written so that Discord shows it exactly as it is. */
export function escapeText(text: string): string {
  if (harmless.test(text)) return stamped(text);
  const line = text.replace(invisible, ' ').trim();
  const escaped = line
    .replace(active, String.raw`\$&`)
    .replace(atStart, (start) => (/^\d/.test(start) ? `${start}\\` : `\\${start}`))
    .replace(colons, String.raw`\:`)
    .replace(mentions, '@\u200b');
  return stamped(escaped);
}

/** One line of plain text for a code block, which nothing in it can close. */
export function codeText(text: string): string {
  return text.replace(invisible, ' ').trimEnd().replaceAll('`', '\u02cb');
}

/** Escaped text, shortened with "…" so that the written form has at most `most` characters. */
export function escapeWithin(text: string, most: number): string {
  const whole = escapeText(text);
  if (whole.length <= most) return whole;
  const points = [...text];
  let [fits, tooMany] = [0, points.length];
  while (tooMany - fits > 1) {
    const middle = Math.floor((fits + tooMany) / 2);
    if (escapeText(points.slice(0, middle).join('')).length < most) fits = middle;
    else tooMany = middle;
  }
  return `${escapeText(points.slice(0, fits).join(''))}…`;
}
