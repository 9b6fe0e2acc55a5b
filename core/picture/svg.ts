type Attributes = Readonly<Record<string, string | number>>;

/** An SVG element: `tag('circle', { r: 4 })` -> `<circle r="4"/>`. Values are escaped, children are not. */
export function tag(name: string, attributes: Attributes, ...children: readonly string[]): string {
  let opening = `<${name}`;
  for (const key in attributes) opening += ` ${key}="${attributeText(attributes[key] ?? '')}"`;
  return children.length === 0 ? `${opening}/>` : `${opening}>${children.join('')}</${name}>`;
}

function attributeText(value: string | number): string {
  return typeof value === 'number' ? String(Math.round(value * 100) / 100) : escapeText(value);
}

/** Where words stand (their baseline) and how they look. */
export interface WordsAt {
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly fill: string;
  readonly anchor?: 'start' | 'middle' | 'end';
}

/** Any text as a `text` element. */
export function words(text: string, { x, y, size, fill, anchor = 'start' }: WordsAt): string {
  return tag('text', { x, y, 'font-size': size, fill, 'text-anchor': anchor }, escapeText(text));
}

/** Letters that stand for themselves, with single spaces: most texts, and quickly told. */
const PLAIN = /^(?:[!#-%(-;=?-~]| (?! ))*$/;

/**
 * Text as XML character data. What XML 1.0 does not allow (control characters, lone surrogates, U+FFFE and U+FFFF) and
 * marks that turn the direction of writing are left out; line breaks become spaces.
 */
export function escapeText(text: string): string {
  if (PLAIN.test(text)) return text;
  return text
    .replace(/\s+/gu, ' ')
    .replace(/[\p{Cc}\p{Cs}\u202a-\u202e\u2066-\u2069\u200e\u200f\ufffd-\uffff]/gu, '')
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;')
    .replace(/'/g, '&#39;');
}

/** Advance widths of DejaVu Sans in parts of the font size, the widest of each group. */
const WIDTHS: readonly (readonly [RegExp, number])[] = [
  [/[iIjlJfrt.,:;'"|!()[\]\-/\\ ]/, 0.46],
  [/[mMwW%@…]/, 1],
  [/[A-Z+−=<>~#_&]/, 0.84],
  [/[\u0020-\u024f]/, 0.64],
];

/** Widths looked up once; a text can bring any letter, so not without end. */
const MOST_KNOWN = 1000;
const knownWidths = new Map<string, number>();

function widthOf(character: string): number {
  const known = knownWidths.get(character);
  if (known !== undefined) return known;
  const width = WIDTHS.find(([group]) => group.test(character))?.[1] ?? 1.2;
  if (knownWidths.size < MOST_KNOWN) knownWidths.set(character, width);
  return width;
}

/** About how wide a text is at a font size: rather too wide than too narrow. */
export function textWidth(text: string, size: number): number {
  return [...text].reduce((sum, character) => sum + widthOf(character) * size, 0);
}

/** A text cut to a width, with an ellipsis where something is missing. */
export function cutTo(width: number, text: string, size: number): string {
  if (textWidth(text, size) <= width) return text;
  const kept = [...text];
  while (kept.length > 0 && textWidth(`${kept.join('')}…`, size) > width) kept.pop();
  return `${kept.join('').trimEnd()}…`;
}
