import { fold } from '../fold.ts';
import { built } from './built.ts';
import { asImperial, isImperial } from './imperial.ts';
import { momentsIn } from './moments.ts';
import type { NumberSpan } from './number-span.ts';
import { commaIsDecimal, plainNumber } from './plain-number.ts';
import { rateAt } from './rate.ts';
import { beginsNumber, spoken } from './spoken.ts';
import { unitAt } from './units.ts';

/** Digits with their marks; a letter right before makes them part of a word ("no3", "t5"). */
const DIGITS = /(?<=^|[^\w.,/]|\d\s?x)(?<sign>[-+])?(?<number>\d+(?:[.,]\d+)*|[.,]\d+)/g;
const WORD = /[a-z]+/g;
/** "1/2", "1 1/2": a part, before a unit or "of". */
const PART = /^(?:(\d{1,2})[ -])?([1-7])\/([2-8])(?![\d/])/;
const SIGNS: Readonly<Record<string, number>> = { '½': 0.5, '¼': 0.25, '¾': 0.75, '⅓': 1 / 3, '⅔': 2 / 3 };
/** "5/8" alone is a day or a score. */
const MOST_TOP = 3;
const PART_SIGN = /[½¼¾⅓⅔]/g;
const RANGE = /^(?:\s?-\s?|\s(?:or|to)\s(?=\d))(\d+(?:[.,]\d+)?)(?![\d.,]*[/:-]\d)/;
const HYPHEN_RANGE = /^\s?-\s?(\d+(?:[.,]\d+)?)(?!\d|[.,]\d|[/:-]\d)/;
const ROUNDLY = /(?:\b(?:high|upper|mid|middle|low|lower)[ -]+(?:the )?)$/;

/** Every number of a text, in order, each once: digits, words, and moments. `text` may be as it was written. */
export function numbersIn(given: string): readonly NumberSpan[] {
  const text = fold(given);
  const isCommaDecimal = commaIsDecimal(text);
  const moments = momentsIn(text);
  const taken = [...moments];
  const free = (span: { start: number; end: number }): boolean =>
    !taken.some((other) => span.start < other.end && other.start < span.end);
  for (const span of [...ofSigns(text), ...ofDigits(text, isCommaDecimal)]) if (free(span)) taken.push(span);
  for (const span of ofWords(text)) if (free(span)) taken.push(span);
  const spans = taken.sort((a, b) => a.start - b.start);
  return isImperial(text) ? spans.map(asImperial) : spans;
}

function ofDigits(text: string, isCommaDecimal: boolean): NumberSpan[] {
  const found: NumberSpan[] = [];
  let from = 0;
  DIGITS.lastIndex = 0;
  for (let match = DIGITS.exec(text); match !== null; match = DIGITS.exec(text)) {
    const { number = '', sign = '' } = match.groups ?? {};
    const start = match.index + sign.length;
    if (start < from) continue;
    const span = partAt(text, start) ?? plainAt(text, start, number, isCommaDecimal);
    if (span === undefined) continue;
    found.push(span);
    from = span.end;
    DIGITS.lastIndex = Math.max(DIGITS.lastIndex, span.end);
  }
  return found;
}

/** "1/2 tsp", "1 1/2 cups". */
function partAt(text: string, start: number): NumberSpan | undefined {
  const match = PART.exec(text.slice(start, start + 12));
  if (match === null) return undefined;
  const [all, whole = '0', top = '', low = ''] = match;
  const unit = unitAt(text, start + all.length);
  const isOf = /^\s*(?:of|a|an|the|dead|full|gone|tank|hour|glass)\b/.test(
    text.slice(start + all.length, start + all.length + 8),
  );
  // "47 5/8": parts of an inch as a rule has them need no unit.
  const isRule = Number(whole) > 0 && ['2', '4', '8', '16'].includes(low);
  if (unit === undefined && !isOf && !isRule) return undefined;
  if (Number(top) > MOST_TOP && !isRule) return undefined;
  const value = Number(whole) + Number(top) / Number(low);
  return built(text, start, start + all.length, String(Number(value.toFixed(4))), value, 'digits');
}

function plainAt(
  text: string,
  start: number,
  written: string,
  isCommaDecimal: boolean,
): NumberSpan | undefined {
  const trimmed = written.replace(/[.,]+$/, '');
  const number = plainNumber(trimmed, isCommaDecimal);
  const value = Number(number);
  if (!Number.isFinite(value)) return undefined;
  const end = start + trimmed.length;
  const tail = text.slice(end, end + 16);
  const thousand = /^\s?k\b(?!\s*(?:\+|[=:]))/.exec(tail);
  if (thousand !== null && value >= 1 && value <= 500)
    return built(text, start, end + thousand[0].length, String(value * 1000), value * 1000, 'digits');
  const roundly = roundlySaid(text, start, end, value, number);
  if (roundly !== undefined) return roundly;
  const range = HYPHEN_RANGE.exec(tail) ?? (RANGE.test(tail) && /^\s?-/.test(tail) ? RANGE.exec(tail) : null);
  if (range !== null && /^[.\d]/.test(range[1] ?? '')) {
    const high = Number(plainNumber(range[1] ?? '', isCommaDecimal));
    if (high > value && high < value * 20 + 20) {
      const span = built(text, start, end + range[0].length, number, value, 'digits');
      return { ...span, high };
    }
  }
  return built(text, start, end, number, value, 'digits');
}

/** "high 6s", "low 400s", "mid 8's": a value inside the ten (or hundred, or one) that is named. */
function roundlySaid(
  text: string,
  start: number,
  end: number,
  value: number,
  number: string,
): NumberSpan | undefined {
  const plural = /^'?s\b/.exec(text.slice(end, end + 3));
  const lead = /\b(high|upper|mid|middle|low|lower)[ -]+(?:the )?$/.exec(
    text.slice(Math.max(0, start - 12), start),
  )?.[1];
  if (plural === null && lead === undefined) return undefined;
  if (plural === null && !ROUNDLY.test(text.slice(Math.max(0, start - 12), start))) return undefined;
  if (lead === undefined || plural === null)
    return plural === null
      ? undefined
      : { ...built(text, start, end + plural[0].length, number, value, 'digits'), about: true };
  const step = value >= 100 && value % 100 === 0 ? 100 : value >= 20 && value % 10 === 0 ? 10 : 1;
  const [from, to] = /^(?:high|upper)/.test(lead)
    ? [0.7, 0.95]
    : lead.startsWith('mid')
      ? [0.4, 0.6]
      : [0.05, 0.3];
  const low = Number((value + step * from).toFixed(3));
  const high = Number((value + step * to).toFixed(3));
  const middle = String(Number(((low + high) / 2).toFixed(3)));
  const span = built(text, start, end + plural[0].length, middle, Number(middle), 'digits');
  return { ...span, high, about: true };
}

function ofSigns(text: string): NumberSpan[] {
  return [...text.matchAll(PART_SIGN)].map((match) => {
    const before = /(\d{1,3})\s?$/.exec(text.slice(Math.max(0, match.index - 4), match.index));
    const value = Number(before?.[1] ?? 0) + (SIGNS[match[0]] ?? 0);
    const start = match.index - (before?.[0].length ?? 0);
    return built(text, start, match.index + 1, String(Number(value.toFixed(4))), value, 'digits');
  });
}

function ofWords(text: string): NumberSpan[] {
  const places = [...text.matchAll(WORD)];
  const words = places.map(([word]) => word);
  const found: NumberSpan[] = [];
  for (let at = 0; at < words.length; at++) {
    const word = words[at] ?? '';
    const place = places[at]?.index ?? 0;
    if (!beginsNumber(word) || isPartOf(text, place)) continue;
    const number = spoken(words, at) ?? undefined;
    const used = number === undefined ? undefined : unbroken(text, places, at, number.words);
    if (number !== undefined && used === number.words) {
      const last = places[at + number.words - 1];
      const end = (last?.index ?? place) + (last?.[0].length ?? word.length);
      found.push(built(text, place, end, number.text, number.value, 'words'));
      at += number.words - 1;
      continue;
    }
    const one = number === undefined ? oneUnit(text, place, word) : undefined;
    if (one !== undefined && !isRate(text, place)) found.push(one);
  }
  return found;
}

/** "20 ml a day", "a gallon a week": how often, and no span of its own. */
function isRate(text: string, place: number): boolean {
  const before =
    /(?:\d|\b(?:ml|mls|mil|mils|l|gal|gallons?|litres?|liters?|dkh|kh|ppm|points?|%|percent|g|grams?|tsp|degrees?|times|once|twice|much|many|often|soda|kalk|powder|stuff|it|up|down))\s+$/;
  return rateAt(text, place) !== undefined && before.test(text.slice(Math.max(0, place - 16), place));
}

/** "a gallon", "an hour", "a week": one of it, unless it says how often something before it happens. */
function oneUnit(text: string, place: number, word: string): NumberSpan | undefined {
  if (word !== 'a' && word !== 'an') return undefined;
  const unit = unitAt(text, place + word.length);
  if (unit === undefined || text[place + word.length] !== ' ' || unit.symbol === '') return undefined;
  if (!/[a-z]{3}|gal|tsp|inch/.test(text.slice(place + word.length + 1, unit.end))) return undefined;
  if (unit.kinds.some((kind) => kind === 'heads' || kind === 'light')) return undefined;
  return built(text, place, place + word.length, '1', 1, 'article');
}

/** Words of one number stand side by side: blanks, hyphens, nothing else between. */
function unbroken(text: string, places: readonly RegExpExecArray[], at: number, count: number): number {
  for (let next = 1; next < count; next++) {
    const before = places[at + next - 1];
    const here = places[at + next];
    if (before === undefined || here === undefined) return next;
    if (!/^[ -]{1,2}$/.test(text.slice(before.index + before[0].length, here.index))) return next;
  }
  return count;
}

function isPartOf(text: string, place: number): boolean {
  return place > 0 && /[\w'’-]/.test(text[place - 1] ?? '') && text[place - 1] !== '-';
}
