import { namesOn, scaleOfName, spaced, type NameOnLine } from '../log/line-names.ts';
import { readLogged, type OwnUnits } from '../log/value.ts';
import { MAX_MESSAGE_LENGTH } from '../message-length.ts';
import { Problem } from '../problem.ts';
import type { Value } from '../water/assess.ts';
import { isBelievable } from '../water/limits.ts';
import { parameter, type ParameterId } from '../water/parameter.ts';
import { clean } from '../quantity/clean.ts';
import { oneMark } from '../quantity/marks.ts';
import { is, mentions as numbersOf, type Mention } from './mention.ts';
import { oneForm } from './one-form.ts';
import { fold } from '../language/fold.ts';
import { numbersWritten } from './time-words.ts';

/** A reading out of a line, in the parameter's own unit. */
export interface LineValue extends Value {
  /** What had to be interpreted. */
  readonly notes: readonly string[];
  /** Whether it lies where a reading can be believed. */
  readonly plausible: boolean;
}

export interface Line {
  readonly values: readonly LineValue[];
  /** Every part of the line that was not used, as read; nothing is dropped silently. */
  readonly unread: readonly string[];
}

/** What may stand between a name and its number, or be left over without a word about it. */
const GLUE =
  /^(?:[\s:=~≈<>(),;|/&+-]|\.(?!\d)|\b(?:is|are|at|of|on|and|my|the|a|an|now|reads?|reading|readings|about|around|approx|level|levels|test|tests|tested|params?|parameters?|values?|numbers?|results?|today|ppm|mg\/l|dkh)\b)*$/;
/** Reference temperatures behind a specific gravity. */
const PAIR = /^\s*(?:at|@)?\s*\(?(?:60|20|25)\s*°?[cf]?\s*\/\s*(?:60|20|25)\s*°?[cf]?\)?/;
/** "5-10", "7 to 8", "8.2 -> 8.4": two numbers, so no reading. */
const SPAN = /^\s*(?:-|to\b|->|=>|→)\s*\.?\d/;

/**
 * Reads a typed line of readings: "420/8.1/1350 sg 1.025 78f no3 8 po4 .06" (calcium, alkalinity and magnesium in any
 * order), "alk 8,3 ca 420 mg 1350", "kh=8.2", "8.2 alk 420 ca". A number belongs to the name beside it (before it,
 * unless the line puts numbers first), else to the parameter its unit can only be of. The first reading of a parameter
 * counts; one that differs from it stays unread.
 *
 * `field` is the option the line was typed in. `units` are the member's own for numbers whose size leaves several.
 *
 * @throws Problem where a value must be asked; its `choices` are the whole line with the value put right.
 */
export function readLine(text: string, field: string, units: OwnUnits = {}): Line {
  const [marked = ''] = oneMark([clean(spaced(numbersWritten(fold(text)))).slice(0, MAX_MESSAGE_LENGTH)]);
  const line = oneForm(marked);
  const mentions = numbersOf(line);
  const names = namesOn(line, mentions, (between) => GLUE.test(between));
  const isFirst = isNumbersFirst(line, mentions, names);
  const scope: Scope = { line, field, units, names, numbersFirst: isFirst };
  const [first] = mentions;
  if (first === undefined || !beginsWithNumber(line, first, names)) return inOrder(mentions, scope);
  return better(
    () => inOrder(mentions, scope),
    () => inOrder(mentions, { ...scope, numbersFirst: !isFirst }),
  );
}

/** Of two ways to read a line that begins with a number, the one that leaves less unread or hard to believe. */
function better(one: () => Line, other: () => Line): Line {
  const second = orProblem(other);
  const first = orProblem(one);
  if (first instanceof Problem) {
    if (second instanceof Problem || faultsOf(second) > 0) throw first;
    return second;
  }
  return second instanceof Problem || faultsOf(first) <= faultsOf(second) ? first : second;
}

function orProblem(read: () => Line): Line | Problem {
  try {
    return read();
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
}

function faultsOf({ values, unread }: Line): number {
  const numbers = unread.flatMap((part) => part.match(/\d+(?:[.,]\d+)*/g) ?? []);
  return numbers.length + values.filter(({ plausible }) => !plausible).length;
}

function inOrder(mentions: readonly Mention[], scope: Scope): Line {
  const { line } = scope;
  const used: Span[] = [];
  const values = new Map<ParameterId, LineValue>();
  const left: Problem[] = [];
  for (const mention of mentions.filter(({ end }) => !SPAN.test(line.slice(end)))) {
    const owner = ownerOf(mention, scope, used);
    if (owner === undefined) continue;
    const read = readOrLeave(owner, mention, scope, left);
    if (read === undefined) continue;
    const known = values.get(owner.id);
    if (known !== undefined && known.value !== read.value) continue;
    used.push(owner.span);
    if (known === undefined)
      values.set(owner.id, { ...read, plausible: isBelievable(read.parameter, read.value) });
  }
  const [refused] = left;
  if (values.size === 0 && refused !== undefined) throw refused;
  return { values: [...values.values()], unread: leftOver(line, used) };
}

interface Span {
  readonly start: number;
  readonly end: number;
}

interface Scope {
  readonly line: string;
  readonly field: string;
  readonly units: OwnUnits;
  readonly names: readonly NameOnLine[];
  readonly numbersFirst: boolean;
}

/** The parameter of a number, the name that says so, and what of the line both take up. */
interface Owner {
  readonly id: ParameterId;
  readonly word: string | undefined;
  readonly span: Span;
}

/** "8.3 alk 420 ca": begins with a number and its name, and does not end in a number without either. */
function isNumbersFirst(line: string, mentions: readonly Mention[], [name]: readonly NameOnLine[]): boolean {
  const [first] = mentions;
  const last = mentions.at(-1);
  if (first === undefined || last === undefined || name === undefined) return false;
  const ends = is(last, 'bare') && GLUE.test(line.slice(last.end));
  return beginsWithNumber(line, first, [name]) && !ends;
}

function beginsWithNumber(line: string, first: Mention, [name]: readonly NameOnLine[]): boolean {
  if (name === undefined || name.start < first.end || unitOwner(first) !== undefined) return false;
  return GLUE.test(line.slice(first.end, name.start));
}

function ownerOf(mention: Mention, scope: Scope, used: readonly Span[]): Owner | undefined {
  const { line, names, numbersFirst } = scope;
  const byUnit = unitOwner(mention);
  const end = mention.end + pairBehind(byUnit, line, mention).length;
  const free = names.filter(
    (name) =>
      (byUnit ?? name.id) === name.id && !used.some((span) => name.start < span.end && name.end > span.start),
  );
  const before = free.findLast((name) => name.end <= mention.start);
  const behind = free.find((name) => name.start >= end);
  const isBefore = before !== undefined && GLUE.test(line.slice(before.end, mention.start));
  const isBehind =
    behind !== undefined &&
    GLUE.test(line.slice(end, behind.start)) &&
    (numbersFirst || !/^\s*\.?\d/.test(line.slice(behind.end)));
  if (isBehind && (numbersFirst || !isBefore))
    return { id: behind.id, word: behind.word, span: { start: mention.start, end: behind.end } };
  if (isBefore) {
    const whole = mention.end + pairBehind(before.id, line, mention).length;
    return { id: before.id, word: before.word, span: { start: before.start, end: whole } };
  }
  return byUnit === undefined
    ? undefined
    : { id: byUnit, word: undefined, span: { start: mention.start, end } };
}

/** The one parameter a number's unit can be of; "1350 mg" of that size is the metal, not milligrams. */
function unitOwner(mention: Mention): ParameterId | undefined {
  if (is(mention, 'salinity') || is(mention, 'conductivity')) return 'salinity';
  if (mention.kinds.length !== 1) return undefined;
  if (is(mention, 'temperature')) return 'temperature';
  if (is(mention, 'alkalinity')) return 'alkalinity';
  const isMetal = isMilligrams(mention) && isBelievable('magnesium', mention.value);
  return isMetal ? 'magnesium' : undefined;
}

function isMilligrams(mention: Mention): boolean {
  return is(mention, 'mass') && /\d ?mg$/.test(mention.text);
}

/** What is read on several scales, which a name or reference temperatures tell apart. */
function isSalinity(id: ParameterId | undefined): boolean {
  return id !== undefined && parameter(id).kind === 'salinity';
}

function pairBehind(id: ParameterId | undefined, line: string, mention: Mention): string {
  return isSalinity(id) ? (PAIR.exec(line.slice(mention.end))?.[0] ?? '') : '';
}

function readMention({ id, word }: Owner, mention: Mention, scope: Scope): Omit<LineValue, 'plausible'> {
  const { line, field, units } = scope;
  const text = isMilligrams(mention) ? mention.text.replace(/ ?mg$/, '') : mention.text;
  const pair = pairBehind(id, line, mention);
  const scale = isSalinity(id) ? scaleOfName(word) : '';
  try {
    const { value, notes } = readLogged(id, `${scale} ${text}${pair}`.trim(), field, units);
    const isBelow = /<\s*$/.test(line.slice(0, mention.start));
    return {
      parameter: id,
      value,
      notes: isBelow ? [...notes, `less than ${text} taken as ${text}`] : notes,
    };
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    const { message, limit, hint } = error;
    const [head, tail] = [line.slice(0, mention.start), line.slice(mention.end + pair.length)];
    const choices = error.choices.map((choice) => `${head}${choice}${tail}`.replace(/\s+/g, ' ').trim());
    throw new Problem(message, { field, given: mention.text, limit, hint, choices });
  }
}

/** A number that no water can have takes no other reading away: it stays unread, and its Problem is put down. */
function readOrLeave(
  owner: Owner,
  mention: Mention,
  scope: Scope,
  left: Problem[],
): Omit<LineValue, 'plausible'> | undefined {
  try {
    return readMention(owner, mention, scope);
  } catch (error) {
    if (!(error instanceof Problem) || error.choices.length > 0) throw error;
    left.push(error);
    return undefined;
  }
}

/** The parts of the line between what was used, without mere connecting words. */
function leftOver(line: string, used: readonly Span[]): string[] {
  const sorted = [...used].sort((a, b) => a.start - b.start);
  const ends = [0, ...sorted.map(({ end }) => end)];
  const starts = [...sorted.map(({ start }) => start), line.length];
  return starts
    .map((start, index) => line.slice(ends[index] ?? 0, start))
    .filter((part) => !GLUE.test(part))
    .map((part) => part.replace(/^[\s,;:|/.]+(?!\d)|[\s,;:|/(.]+$/g, '').trim())
    .filter((part) => part !== '');
}
