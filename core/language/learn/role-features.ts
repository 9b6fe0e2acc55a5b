import type { Scanned, Token } from '../tokens.ts';
import { classesOfWord } from '../lexicon/classes.ts';
import { hash, type FeatureGroup } from './features.ts';
import type { Likely } from '../likely.ts';
import { kindFeatures } from './kind-features.ts';

/** Marks that end a clause. */
const ENDS = new Set(['.', ',', ';', '?', '!', '(', ')']);
const NEAR = 4;
const FEW_BETWEEN = 5;
/** Words of a long message farther off say nothing of a number. Own choice. */
const FAR = 60;
const AROUND_WEIGHT = 0.5;
const WHOLE_WEIGHT = 0.25;

/** What is known of a number's place when its part is asked for. */
export interface RoleContext {
  readonly scanned: Scanned;
  /** Index of the number's token. */
  readonly at: number;
  /** Parts of the numbers before it, in order; undefined where none are known yet. */
  readonly before: readonly string[] | undefined;
  /** Parts of the numbers after it, in order; undefined where they are not known yet. */
  readonly after?: readonly string[] | undefined;
  /** What the whole message may want, likeliest first. */
  readonly kinds: readonly Likely[];
}

/**
 * Features of one number: its unit and size, the words around it, the names near it, its place among the others and the
 * parts these play, and what the message wants.
 */
export function roleFeatures({ scanned, at, before, after, kinds }: RoleContext): readonly FeatureGroup[] {
  const { tokens } = scanned;
  const token = tokens[at];
  const number = token?.number;
  if (token === undefined || number === undefined) return [];
  const found = new Set<string>();
  const around = new Set<string>();
  const whole = new Set<string>();
  const add = (text: string): void => {
    found.add(text);
  };
  const unit = number.kinds.join('|') || 'bare';
  const size = sizeOf(number.value);
  add(`u ${unit}`);
  add(`s ${unit} ${size}`);
  add(`form ${number.form}`);
  if (number.form === 'moment') add(`m ${token.word.replace(/\d+/g, '0')}`);
  if (number.everyDays !== undefined) add(`rate ${unit}`);
  if (number.high !== undefined) add('range');
  const mask = (n: number): string => tokens[n]?.mask ?? (n < 0 ? '<' : '>');
  for (let n = 1; n <= NEAR; n++) {
    add(`l${n} ${mask(at - n)}`);
    add(`r${n} ${mask(at + n)}`);
    add(`l ${mask(at - n)}`);
    add(`r ${mask(at + n)}`);
    for (const name of classesOfWord(mask(at - n))) {
      add(`L ${name}`);
      add(`L${n} ${name}`);
      add(`Lu ${name} ${unit}`);
    }
    for (const name of classesOfWord(mask(at + n))) {
      add(`R ${name}`);
      add(`R${n} ${name}`);
      add(`Ru ${name} ${unit}`);
    }
  }
  add(`l12 ${mask(at - 2)} ${mask(at - 1)}`);
  add(`l123 ${mask(at - 3)} ${mask(at - 2)} ${mask(at - 1)}`);
  add(`r12 ${mask(at + 1)} ${mask(at + 2)}`);
  add(`r123 ${mask(at + 1)} ${mask(at + 2)} ${mask(at + 3)}`);
  add(`lr ${mask(at - 1)} ${mask(at + 1)}`);
  add(`ul ${unit} ${mask(at - 1)}`);
  add(`ur ${unit} ${mask(at + 1)}`);
  add(`ull ${unit} ${mask(at - 2)} ${mask(at - 1)}`);
  clauseWords(tokens, at).forEach((word) => {
    around.add(word);
    around.add(`${unit} ${word}`);
    for (const name of classesOfWord(word.replace(/^c-?1 /, '')))
      around.add(`C ${word.slice(0, 2)} ${name} ${unit}`);
  });
  const [left, leftFar] = nameNear(tokens, at, -1);
  const [right, rightFar] = nameNear(tokens, at, 1);
  add(`nl ${left} ${leftFar}`);
  add(`nr ${right} ${rightFar}`);
  add(`n ${left} ${right}`);
  add(`nu ${left} ${unit} ${size}`);
  const numbers = tokens.filter((each) => each.number !== undefined);
  const place = numbers.indexOf(token);
  add(`of ${Math.min(numbers.length, 6)}`);
  add(`at ${Math.min(place, 5)} ${unit}`);
  add(place === numbers.length - 1 ? 'last' : 'not last');
  const other = numbers[place - 1]?.number;
  const next = numbers[place + 1]?.number;
  if (other !== undefined)
    add(`pu ${other.kinds.join('|')} ${other.value < number.value ? 'less' : 'more'} ${unit}`);
  if (next !== undefined)
    add(`xu ${next.kinds.join('|')} ${next.value < number.value ? 'less' : 'more'} ${unit}`);
  betweenNumbers(tokens, at, unit).forEach(add);
  if (before !== undefined) amongParts(unit, before, after, mask(at - 1)).forEach(add);
  for (const { mask: word } of tokens.slice(Math.max(0, at - FAR), at + FAR)) {
    whole.add(`b ${word}`);
    for (const name of classesOfWord(word)) whole.add(`B ${name}`);
  }
  return [
    { ids: [...found].map(hash), weight: 1 },
    { ids: [...around].map(hash), weight: AROUND_WEIGHT },
    { ids: [...whole].map(hash), weight: WHOLE_WEIGHT },
    kindFeatures(kinds, tokens, at),
  ];
}

/** The words between the number and its neighbours, and the units of these. */
function betweenNumbers(tokens: readonly Token[], at: number, unit: string): readonly string[] {
  const walk = (step: -1 | 1): readonly [string, string] => {
    const words: string[] = [];
    let n = at + step;
    while (tokens[n] !== undefined && tokens[n]?.number === undefined && words.length < FEW_BETWEEN) {
      words.push(tokens[n]?.mask ?? '');
      n += step;
    }
    return [words.join(' '), tokens[n]?.number?.kinds.join('|') ?? '-'];
  };
  const [left, unitLeft] = walk(-1);
  const [right, unitRight] = walk(1);
  return [`bl ${left}`, `br ${right}`, `buu ${unitLeft} ${unit} ${unitRight}`];
}

/** The parts that the numbers before play, and those behind where they are known. */
function amongParts(
  unit: string,
  before: readonly string[],
  after: readonly string[] | undefined,
  left: string,
): readonly string[] {
  const last = before.at(-1) ?? '<';
  const ids = [
    `p1 ${last}`,
    `p1u ${last} ${unit}`,
    `p2 ${before.at(-2) ?? '<'} ${last}`,
    `p1l ${last} ${left}`,
    ...[...new Set(before)].flatMap((part) => [`pb ${part}`, `pbu ${part} ${unit}`]),
  ];
  if (after === undefined) return ids;
  const [next = '>', then = '>'] = after;
  return [
    ...ids,
    `q1 ${next}`,
    `q1u ${next} ${unit}`,
    `q2 ${next} ${then}`,
    `pq ${last} ${next} ${unit}`,
    ...[...new Set(after)].flatMap((part) => [`qb ${part}`, `qbu ${part} ${unit}`]),
  ];
}

/** The words of the number's clause, by side. */
function clauseWords(tokens: readonly Token[], at: number): readonly string[] {
  const words: string[] = [];
  for (const step of [-1, 1]) {
    for (let n = at + step; n >= 0 && n < tokens.length && Math.abs(n - at) <= 12; n += step) {
      const mask = tokens[n]?.mask ?? '';
      if (ENDS.has(mask)) break;
      words.push(`c${step} ${mask}`);
    }
  }
  return words;
}

/** The nearest name on one side, and how far it is. */
function nameNear(tokens: readonly Token[], at: number, step: -1 | 1): readonly [string, string] {
  for (let n = at + step; n >= 0 && n < tokens.length; n += step) {
    const name = tokens[n]?.name;
    if (name === undefined) continue;
    const far = Math.abs(n - at);
    return [name.class === 'parameter' ? name.id : name.class, far === 1 ? '1' : far < 4 ? 'near' : 'far'];
  }
  return ['none', ''];
}

/** Rough size: where a bare number can be of one thing and not of another. */
function sizeOf(value: number): string {
  const borders = [0.15, 1, 1.02, 1.03, 4, 7, 14, 20, 32, 37, 50, 75, 100, 200, 350, 500, 900, 1500, 5000];
  const at = borders.findIndex((border) => value < border);
  return `${at}${Number.isInteger(value) ? '' : '.'}`;
}
