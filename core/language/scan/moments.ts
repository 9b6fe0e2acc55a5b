import type { NumberSpan } from './number-span.ts';

const DAY = String.raw`(?:mon|tues?|wed|wednes|thu(?:rs)?|fri|satur|sat|sun)(?:day)?s?`;
const MONTH = String.raw`(?:january|february|april|june|july|august|september|october|november|december|jan|feb|apr|jun|jul|aug|sept?|oct|nov|dec)`;
const MOMENT = new RegExp(
  [
    String.raw`\b\d{1,2}(?::\d{2})?\s?(?:am|pm|a\.m\.?|p\.m\.?|o'?clock)(?![a-z])`,
    String.raw`(?<![\d:])\d{1,2}:\d{2}(?![\d:])`,
    String.raw`\b(?:${MONTH})\s(?:0?[1-9]|[12]\d|3[01])(?:st|nd|rd|th)?\b(?![.,]\d|\s?%)`,
    String.raw`\b\d{1,2}(?:st|nd|rd|th)?(?: of)? (?:${MONTH}|mar|march|may)\b(?:\s\d{1,2}:\d{2})?`,
    String.raw`\b(?:the )?\d{1,2}(?:st|nd|rd|th)\b`,
    String.raw`\b\d{1,2}h(?:\d{2})?\b(?= |,|$)(?<=(?:at|since|from|until|till|by|around)\s\d{1,2}h(?:\d{2})?)`,
    String.raw`\b\d{4}-\d{2}-\d{2}\b`,
    String.raw`\b\d{1,2}/\d{1,2}/\d{2,4}\b`,
    String.raw`\b(?:${DAY})\b(?:\s(?:morning|night|evening|afternoon))?`,
    String.raw`\b(?:last|this|next)\s(?:night|week|month|year|morning|evening|afternoon|weekend|spring|summer|autumn|fall|winter)\b`,
    String.raw`\b(?:today|yesterday|ystrday|yday|tonight|tomorrow|tmrw|noon|midnight)\b`,
    String.raw`\b(?:${MONTH}|march|may|mar)\b`,
  ].join('|'),
  'g',
);
/** Ordinary words that are also a day or a month: one beside a number or behind a word of time. */
const WORDS = new Set(['sat', 'sun', 'mons', 'suns', 'sats', 'may', 'march', 'mar']);
const TIME_BEFORE = /\b(?:on|since|last|this|next|every|each|by|until|till|from|in|and|to|early|late|mid)\s$/;
const NUMBER_BEHIND = /^\s*(?:(?:it\s)?(?:was|is|at)\s)?[:=]?\s*\.?\d/;

/** Times and days of a folded text. */
export function momentsIn(text: string): readonly NumberSpan[] {
  return [...text.matchAll(MOMENT)]
    .filter(
      (match) =>
        !WORDS.has(match[0]) ||
        TIME_BEFORE.test(text.slice(Math.max(0, match.index - 8), match.index)) ||
        NUMBER_BEHIND.test(text.slice(match.index + match[0].length, match.index + match[0].length + 12)),
    )
    .map((match) => ({
      start: match.index,
      end: match.index + match[0].length,
      number: match[0],
      value: Number.parseFloat(match[0]) || 0,
      unit: '',
      kinds: ['moment'] as const,
      form: 'moment' as const,
    }));
}
