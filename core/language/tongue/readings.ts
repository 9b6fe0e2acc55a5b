import { readLogged } from '../../log/value.ts';
import { Problem } from '../../problem.ts';
import { isBelievable } from '../../water/limits.ts';
import { parameter, type ParameterId } from '../../water/parameter.ts';
import { fold } from '../fold.ts';
import type { NumberSpan } from '../scan/number-span.ts';
import { numbersIn } from '../scan/numbers.ts';
import { withoutMarks } from './letters.ts';
import { parametersNamedIn } from './parameters-named.ts';
import { goesOnFrom, isReading, MOST_BETWEEN } from './reading-words.ts';
import type { Unread } from './tongues.ts';
import { unitOf } from './unit-words.ts';

/** A number that belongs to the name before it, as text `readLogged` takes: alkalinity, "5.8". */
export interface ForeignReading {
  readonly id: ParameterId;
  readonly text: string;
}

/** What can be read safely in a message in another language. */
export interface ForeignNumbers {
  /** The first reading of each parameter. */
  readonly readings: readonly ForeignReading[];
  /** The first amount of water that can be a tank: "200 L". */
  readonly volume: string | undefined;
  /** Numbers that were not used, as they are written. */
  readonly unused: readonly string[];
}

/** Numbers are looked for so far into a message. */
const MOST_CHARACTERS = 1500;
/** So many names are looked at: nobody names more, and what repeats them costs time. */
const MOST_NAMES = 40;
/** Litres below which a volume measures a dose or a bucket, not a tank (common practice, no source). */
const LEAST_TANK_L = 15;

/**
 * Numbers of a message of which only digits, units and names of what is measured are understood. A number belongs to
 * a name only right behind it, or behind a word such as "is", and only where its unit and its size fit.
 */
export function numbersReadIn(given: string, tongue: Unread): ForeignNumbers {
  const text = fold(given.slice(0, MOST_CHARACTERS));
  const numbers = numbersIn(text).filter(({ form }) => form === 'digits');
  const used = new Set<NumberSpan>();
  const readings = new Map<ParameterId, ForeignReading>();
  for (const { id, start: from, end } of parametersNamedIn(text, tongue).slice(0, MOST_NAMES)) {
    const number = numbers.find(({ start }) => start >= end);
    if (number === undefined || readings.has(id) || used.has(number)) continue;
    if (number.start - end > MOST_BETWEEN || goesOnFrom(text, number)) continue;
    if (!isReading(withoutMarks(text.slice(end, number.start)))) continue;
    const unit = unitOf(text, number) || unitNamed(text.slice(from, end));
    const written = readingText(id, number, unit);
    if (written === undefined) continue;
    readings.set(id, { id, text: written });
    used.add(number);
  }
  const tank = numbers.find((number) => !used.has(number) && volumeText(text, number) !== undefined);
  if (tank !== undefined) used.add(tank);
  return {
    readings: [...readings.values()],
    volume: tank === undefined ? undefined : volumeText(text, tank),
    unused: numbers.filter((each) => !used.has(each)).map((each) => asWritten(given, text, each)),
  };
}

/** KH is a hardness in degrees by its name; "alkalinity" may be in meq/L as well. */
function unitNamed(name: string): string {
  return /^d?kh/.test(name) ? parameter('alkalinity').unit : '';
}

/** The reading with its unit; undefined for a unit of something else and for a value nobody measures. */
function readingText(id: ParameterId, number: NumberSpan, unit: string): string | undefined {
  const text = `${number.number} ${unit === '°' ? degrees(id) : unit}`.trim();
  try {
    return isBelievable(id, readLogged(id, text, id).value) ? text : undefined;
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    const isUnitOpen = unit === '' && error.choices.length > 0;
    return isUnitOpen && isBelievable(id, number.value) ? text : undefined;
  }
}

/** Degrees of heat or of hardness; of anything else they are no unit. */
function degrees(id: ParameterId): string {
  return id === 'alkalinity' || id === 'temperature' ? parameter(id).unit : '°';
}

/** The digits with their unit; what only looks like an English unit ("2 par") is left out. */
function asWritten(given: string, text: string, number: NumberSpan): string {
  if (number.unit === '' && number.kinds.length === 0)
    return `${given.slice(number.start, number.end)} ${unitOf(text, number)}`.trim();
  return `${number.number} ${unitOf(text, number)}`.trim();
}

function volumeText(text: string, number: NumberSpan): string | undefined {
  const unit = unitOf(text, number);
  if ((unit !== 'L' && unit !== 'gal') || goesOnFrom(text, number)) return undefined;
  return unit === 'L' && number.value < LEAST_TANK_L ? undefined : `${number.number} ${unit}`;
}
