import { classesIn } from '../language/lexicon/classes.ts';
import { relates, type Relation } from '../language/relations.ts';
import { quantityText, type NumberSpan } from '../language/scan/number-span.ts';
import { rateAt } from '../language/scan/rate.ts';
import { unitAt, type UnitKind } from '../language/scan/units.ts';
import type { Scanned, Token } from '../language/tokens.ts';
import { findParameter, type ParameterId } from '../water/parameter.ts';
import { readQuantity } from '../quantity/read.ts';
import { saltsIn, type NamedSalt } from './named-salts.ts';

/** A quantity of a rule with what its unit lets it be; "per litre" is one of it. */
export interface Amount {
  /** Number and unit, ready for `readQuantity`. */
  readonly text: string;
  readonly value: number;
  readonly kinds: readonly (UnitKind | 'moment')[];
  readonly start: number;
  readonly end: number;
  /** Days of "a day", "per week". */
  readonly everyDays?: number;
}

/** A word of a rule with the classes it is met in. */
interface Word {
  readonly token: Token;
  readonly classes: readonly string[];
}

/** A rule taken apart. What the asker says of their own tank is no part of it. */
export interface Stated {
  readonly text: string;
  readonly amounts: readonly Amount[];
  readonly salts: readonly NamedSalt[];
  /** Parameters named, by a word or by a unit that is of one alone; each once. */
  readonly parameters: readonly ParameterId[];
  readonly words: readonly Word[];
  readonly scanned: Scanned;
  /** The asker's own water, as text for `readQuantity`. */
  readonly tank: string | undefined;
}

export function state(scanned: Scanned): Stated {
  const { text, tokens, names } = scanned;
  const classes = classesIn(tokens.map(({ word }) => word));
  const words = tokens.map((token, at) => ({ token, classes: classes[at] ?? [] }));
  const all = withoutRates(
    text,
    tokens.flatMap((token, at) => amountAt(text, tokens, token, at)),
  );
  const own = all.filter((amount) => isOwn(words, amount));
  const rest = all.filter((amount) => !own.includes(amount));
  return {
    text,
    amounts: rest,
    salts: saltsIn(names),
    parameters: [
      ...new Set([
        ...names.flatMap((name) => (name.class === 'parameter' ? (findParameter(name.id) ?? []) : [])),
        ...rest.flatMap(byUnit),
      ]),
    ],
    words,
    scanned,
    tank: own.find((amount) => is(amount, 'volume'))?.text,
  };
}

/** Whether an amount can be of that kind; `bare` has no unit at all. */
export function is({ kinds }: Amount, kind: UnitKind | 'bare'): boolean {
  return kind === 'bare' ? kinds.length === 0 : kinds.includes(kind);
}

/** The only parameter a unit can be of. */
export function byUnit({ kinds }: Amount): readonly ParameterId[] {
  const [only, more] = kinds;
  if (only === undefined || more !== undefined) return [];
  return only === 'alkalinity' || only === 'nitrate' || only === 'phosphate' ? [only] : [];
}

/** Whether words of one of these classes occur; `domain.class`. */
export function has({ words }: Stated, ...names: readonly string[]): boolean {
  return words.some(({ classes }) => classes.some((name) => names.includes(name)));
}

/** Whether a word between two places ties what stands there in that way. */
export function tied({ words }: Stated, from: number, to: number, relation: Relation): boolean {
  return between(words, from, to).some(({ token }) => relates(token.word, relation));
}

/** Whether the word right before an amount, past "a" and "every", makes it what the rule is counted for. */
export function isBase({ words }: Stated, { start }: Amount): boolean {
  const [before] = words.filter(({ token }) => token.end <= start && token.number === undefined).slice(-1);
  if (before === undefined) return false;
  return relates(before.token.word, 'per') || before.classes.includes('manner.rise');
}

/** Whether one speaks of an own reading or wish: "my alk is 7.2", "mine now 8, want 9". */
export function isOwn(words: readonly Word[], { start }: Amount): boolean {
  const lead = words.filter(({ token }) => token.end <= start).slice(-4);
  const from = lead.findLastIndex(({ token }) => token.number !== undefined || STOPS.has(token.word));
  const near = new Set(lead.slice(from + 1).flatMap(({ classes }) => classes));
  return near.has('manner.ownThing') && !SOMEBODY.some((name) => near.has(name));
}

const STOPS: ReadonlySet<string> = new Set([',', '.', ';', '?']);
/** "my friend says": somebody's word, not one's own reading. */
const SOMEBODY = ['manner.hearsay', 'body.otherPeople', 'places.store'];

function between(words: readonly Word[], from: number, to: number): readonly Word[] {
  return words.filter(({ token }) => token.start >= from && token.end <= to);
}

function amountAt(text: string, tokens: readonly Token[], token: Token, at: number): readonly Amount[] {
  const { number } = token;
  if (number?.form === 'moment') return [];
  if (number !== undefined)
    return isSaidPerLitre(text, number) ? perLitre(number) : [ofNumber(text, tokens[at + 1], number)];
  return relates(token.word, 'per') || token.word === 'a' ? oneOf(text, tokens, at) : [];
}

function ofNumber(text: string, next: Token | undefined, number: NumberSpan): Amount {
  const everyDays = number.everyDays ?? (next?.name === undefined ? undefined : rateAt(text, next.end));
  return {
    text: quantityText(number),
    value: number.value,
    kinds: number.kinds,
    start: number.start,
    end: number.end,
    ...(everyDays === undefined ? {} : { everyDays }),
  };
}

/** "1 g per litre" in words is a weight and what it is for; "1 g/L" is one quantity. */
function isSaidPerLitre(text: string, { unit, start, end }: NumberSpan): boolean {
  return unit === 'g/l' && !text.slice(start, end).includes('/');
}

function perLitre({ value, start, end }: NumberSpan): readonly Amount[] {
  return [
    { text: `${value} g`, value, kinds: ['mass'], start, end },
    { text: '1 l', value: 1, kinds: ['volume'], start: end, end },
  ];
}

/** Units a rule counts by without a number of their own. */
const COUNTED: ReadonlySet<UnitKind | 'moment'> = new Set([
  'volume',
  'mass',
  'alkalinity',
  'salinity',
  'light',
]);

/** "per gallon", "g/L": one of the unit behind it. */
function oneOf(text: string, tokens: readonly Token[], at: number): readonly Amount[] {
  const next = tokens[at + 1];
  const before = tokens[at - 1];
  if (next === undefined || next.number !== undefined || next.name?.class === 'salt') return [];
  if (tokens[at]?.word === '/' && before?.number === undefined && before?.name === undefined) return [];
  const unit = unitAt(text, next.start);
  if (unit === undefined || !unit.kinds.some((kind) => COUNTED.has(kind))) return [];
  const isOf = tokens[at]?.word === 'of' || tokens[at]?.word === 'to';
  if (isOf) return [];
  return [{ text: `1 ${unit.symbol}`, value: 1, kinds: unit.kinds, start: next.start, end: unit.end }];
}

/** "1 ppt in 24 h", "5 ppm a week": how often is said of the amount before it and is no amount of its own. */
function withoutRates(text: string, all: readonly Amount[]): readonly Amount[] {
  return all.flatMap((amount, at) => {
    const [before, next] = [all[at - 1], all[at + 1]];
    if (is(amount, 'days') && before !== undefined && isRateOf(text, before, amount)) return [];
    if (next === undefined || amount.everyDays !== undefined || !is(next, 'days')) return [amount];
    return isRateOf(text, amount, next) ? [{ ...amount, everyDays: daysIn(next) }] : [amount];
  });
}

/** Levels and shares come at a rate; hours of light do not. */
function isRateOf(text: string, before: Amount, days: Amount): boolean {
  if (is(before, 'days') || is(before, 'light')) return false;
  const words = text.slice(before.end, days.start).trim().split(' ');
  if (before.everyDays !== undefined) return words.length <= 2;
  return words.length <= 2 && words.every((word) => relates(word, 'rate'));
}

function daysIn({ text }: Amount): number {
  return readQuantity('days', text, { field: 'rule' }).value;
}
