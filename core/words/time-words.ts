import { WEEKDAY } from '../weekday.ts';
import { findParameter } from '../water/parameter.ts';
import { readQuantity } from '../quantity/read.ts';
import { quantityText, type NumberSpan } from '../language/scan/number-span.ts';
import { numbersIn } from '../language/scan/numbers.ts';

const HOUR_LEAD = /(?:\b(?:at|by|around)|@)\s*$/i;
/** "an hour and a half". */
const AND_HALF = /^\s+and\s+$/i;
const MINUTES_A_DAY = 1440;

/**
 * Numbers in words that say a time as digits, where they stand; all other words stay as they were written. Check: "Feed
 * in two weeks at nine" -> "Feed in 2 weeks at 9", "half an hour" -> "30 minutes", "at eight thirty" -> "at 8:30".
 */
export function withDigits(text: string): string {
  const spans = numbersIn(text);
  let out = '';
  let from = 0;
  spans.forEach((span, at) => {
    if (span.start < from) return;
    const next = spans[at + 1];
    const isHalf = next?.value === 0.5 && AND_HALF.test(text.slice(span.end, next.start));
    const said = spelt(text, span, isHalf);
    if (said === undefined) return;
    out += text.slice(from, span.start) + said;
    from = isHalf ? next.end : span.end;
  });
  return out + text.slice(from);
}

/** Words of a number that stand for other things just as often. */
const NO_READING: ReadonlySet<string> = new Set(
  'one once twice thrice double triple half quarter'.split(' '),
);

/** A line of readings with its numbers in digits. Check: "alk eight point three" -> "alk 8.3". */
export function numbersWritten(text: string): string {
  return numbersIn(text)
    .filter(({ form, start, end }) => form === 'words' && !NO_READING.has(text.slice(start, end)))
    .reduceRight((out, span) => out.slice(0, span.start) + quantityText(span) + out.slice(span.end), text);
}

function spelt(text: string, span: NumberSpan, isHalf: boolean): string | undefined {
  const isTime = span.kinds.includes('days') && span.kinds.length === 1;
  if (isTime && (isHalf || span.form === 'words')) return wholeTime(span, isHalf ? 0.5 : 0);
  if (span.form !== 'words' || span.kinds.length > 0 || !HOUR_LEAD.test(text.slice(0, span.start)))
    return undefined;
  return span.value < 100
    ? span.number
    : `${Math.floor(span.value / 100)}:${String(span.value % 100).padStart(2, '0')}`;
}

/** "0.5 hour" as "30 minutes", "2 weeks" as it is. */
function wholeTime(span: NumberSpan, more: number): string {
  const value = span.value + more;
  if (Number.isInteger(value)) return quantityText(span);
  const days = readQuantity('days', `${value} ${span.unit}`, { field: 'when' }).value;
  return `${Math.round(days * MINUTES_A_DAY)} minutes`;
}

/** An hour said without am or pm, and the words that say it. */
export interface BareHour {
  readonly hour: number;
  readonly words: string;
}

/** The two words right before "at": "alk stays", "alk tomorrow". */
const WORDS_BEFORE = /(?:([a-z\d]+)\s+)?([a-z]+)\s+(?:at|by|around)\s*$/i;
const TIME_WORD = new RegExp(
  String.raw`^(?:days?|daily|weeks?|weekly|months?|monthly|today|tomorrow|yesterday|morning|afternoon|evening|night|${WEEKDAY}s?)$`,
  'i',
);
const LEAD = /(?:,?\s*(?:\b(?:at|by|around)|@)\s*)$/i;

/**
 * "tomorrow at 8": its number has no unit ("at 8 dkh" has one) and is no level ("alk at 8"), unless no other time is
 * said (`isOnly`: "test alk at 8").
 */
export function bareHour(text: string, isOnly: boolean): BareHour | undefined {
  const found = numbersIn(text).find(({ kinds, value, number, start }) => {
    const before = text.slice(0, start);
    const isHour = kinds.length === 0 && /^\d{1,2}$/.test(number) && value <= 23;
    return isHour && LEAD.test(before) && (isOnly || !isLevel(before));
  });
  if (found === undefined) return undefined;
  const lead = LEAD.exec(text.slice(0, found.start))?.[0] ?? '';
  return { hour: found.value, words: text.slice(found.start - lead.length, found.end) };
}

function isLevel(before: string): boolean {
  const [, far = '', near = ''] = WORDS_BEFORE.exec(before) ?? [];
  if (TIME_WORD.test(near)) return false;
  return findParameter(near) !== undefined || findParameter(far) !== undefined;
}
