import { Problem } from '../problem.ts';
import { findPhrase } from '../schedule/phrase.ts';
import { WEEKDAY } from '../weekday.ts';
import { say } from '../wording/say.ts';
import { START } from './repeat-day.ts';
import type { RepeatContext } from './repeat-said.ts';
import { readRepeat, type Repeat } from './repeat.ts';
import { localTime } from './when.ts';

/** Most repeats read out of one text. */
export const MOST_REPEATS = 12;
const LEAD =
  /^\s*(?:hi|hello|hey)?[\s,]*(?:please )?(?:i )?(?:want|need|remind me(?: to| of| about)?|reminders?(?: for)?|set(?: up)?|schedule)\s*[:,]?\s*/i;
const BETWEEN = /,? ?\bon the (?:mon|tues|wednes|thurs|fri|satur|sun)days (?:in )?between\b/i;
/** A piece that only goes on with the one before: "wed and fri", "9am". */
const GOES_ON =
  /^(?:and )?(?:(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*(?:\s*(?:and|&|,)\s*)?)+(?: (?:at )?[\d:]+ ?(?:[ap]m)?)?$|^(?:at )?(?:\d{1,2}(?::\d{2}|(?::\d{2})? ?[ap]m))$/i;

/** A weekday left over, as in "feed corals mon, wed": it belongs to a time that was not read. */
const LOOSE_DAY = new RegExp(String.raw`\s${WEEKDAY}(?=\s*(?:,|&|and\b))`, 'i');

/**
 * Several repeats in one text, cut at commas, semicolons and lines: "change floss every sat, water change every other
 * sat, trace elements on the saturdays between. start 3 jan 2026". A start said once holds for all. "Between" is the
 * other week of the repeat before it.
 *
 * @throws Problem for a part without a time or without a subject, and as `readRepeat`.
 */
export function readRepeats(text: string, context: RepeatContext): readonly Repeat[] {
  const starts = text.match(new RegExp(START.source, 'gi')) ?? [];
  const common = starts.length === 1 ? (starts[0] ?? '') : '';
  const body = (common === '' ? text : text.replace(common, ' ')).replace(LEAD, '');
  const pieces = piecesOf(body, context.field);
  if (pieces.length > MOST_REPEATS) {
    throw new Problem(
      say('parse.tooManyRepeats', { count: String(pieces.length), most: String(MOST_REPEATS) }),
      {
        field: context.field,
      },
    );
  }
  const ends = common === '' ? [] : [common.replace(/^[\s,]+/, '')];
  const found: Repeat[] = [];
  for (const piece of pieces) {
    const whole = (instead: string): string =>
      [...pieces.map((each) => (each === piece ? instead : each)), ...ends].join(', ');
    const one = BETWEEN.test(piece)
      ? between(piece, found.at(-1), context)
      : inWhole(whole, ends, () => readRepeat([piece, ...ends].join(', '), context));
    if (!/[\p{L}\p{N}]/u.test(one.rest) || LOOSE_DAY.test(one.rest)) {
      throw new Problem(say('parse.whatWhen'), {
        field: context.field,
        given: piece,
        hint: say('parse.hintWhatWhen'),
      });
    }
    found.push(one);
  }
  return found;
}

/** Pieces with one time each: a piece without one begins the next, a bare weekday or hour goes on with the last. */
export function piecesOf(text: string, field: string): readonly string[] {
  const cut = text
    .split(/[,;\n]|\.(?=\s|$)/)
    .flatMap((part) => atAnd(part, field))
    .map((part) => part.trim().replace(/^and /i, ''));
  const pieces: string[] = [];
  let open = '';
  for (const part of cut.filter((each) => each !== '')) {
    const last = pieces.at(-1);
    if (open === '' && last !== undefined && GOES_ON.test(part)) {
      pieces[pieces.length - 1] = `${last}, ${part}`;
      continue;
    }
    open = open === '' ? part : `${open}, ${part}`;
    if (!BETWEEN.test(part) && findPhrase(part, field) === undefined) continue;
    pieces.push(open);
    open = '';
  }
  return open === '' ? pieces : [...pieces, open];
}

/** "clean pumps every sunday and test ca every 2 weeks": two pieces, each with a time and words of its own. */
function atAnd(part: string, field: string): readonly string[] {
  for (const { index, 0: and } of part.matchAll(/ and /gi)) {
    const sides = [part.slice(0, index), part.slice(index + and.length)];
    const isWhole = sides.every((side) => {
      const phrase = findPhrase(side, field);
      return phrase !== undefined && /[a-z]{3}/i.test(side.replace(phrase.words, ''));
    });
    if (isWhole) return [sides[0] ?? '', ...atAnd(sides[1] ?? '', field)];
  }
  return [part];
}

/** Choices for one part as choices for the whole text. */
function inWhole(whole: (instead: string) => string, ends: readonly string[], read: () => Repeat): Repeat {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof Problem) || error.choices.length === 0) throw error;
    const { field, given } = error;
    const end = ends.map((each) => `, ${each}`).join('');
    const choices = error.choices.map((choice) =>
      whole(choice.endsWith(end) ? choice.slice(0, choice.length - end.length) : choice),
    );
    throw new Problem(error.message, { field, given, choices });
  }
}

function between(piece: string, before: Repeat | undefined, context: RepeatContext): Repeat {
  const rule = before?.rule;
  if (before === undefined || rule?.every !== 'weeks' || rule.count !== 2) {
    throw new Problem(say('parse.noBetweenThere'), {
      field: context.field,
      given: piece,
      hint: say('parse.hintBetween'),
    });
  }
  const [day = '', time = ''] = before.anchor.split(' ');
  const first = localTime(Date.parse(`${day}T00:00Z`) + WEEK_MS).slice(0, 10);
  return { rule, anchor: `${first} ${time}`, rest: piece.replace(BETWEEN, '').trim(), notes: [] };
}

const WEEK_MS = 7 * 86_400_000;
