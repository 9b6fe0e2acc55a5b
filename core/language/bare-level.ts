import { isBelievable } from '../water/limits.ts';
import type { ParameterId } from '../water/parameter.ts';
import type { Case } from './case.ts';
import { parameterOf, parametersNamed } from './levels-said.ts';
import { met } from './met.ts';
import { isLevelPart } from './parts.ts';
import type { Reading } from './reading.ts';
import type { Said } from './said.ts';
import { ofNameOf, toldNumbers } from './told-numbers.ts';
import { isWithin } from './within.ts';

/** A number within this factor of the level told before can be the next reading of it; own choice. */
const FACTOR = 2;
/** Words of a test done once more. They are grammar: nothing is learnt of them. */
const RETEST: ReadonlySet<string> = new Set('again over redid retest retested reads shows says'.split(' '));
/** Units that many parameters share, and that name none. */
const SHARED: ReadonlySet<string> = new Set(['ppm', 'mg/l', 'mg']);

/**
 * Levels said without their name, as the case has them: "alk on the 3rd was 8.6", then "same hour on the 9th: 8.0". What a
 * bare number was guessed to be of is no name: the one parameter named in the message takes it, else the one of the case
 * whose last level is near, else the one that was spoken of last, where the number can be of it.
 */
export function withSpoken(reading: Reading, before: Case): Reading {
  const { scanned, said } = reading;
  const named = [...new Set(parametersNamed(scanned))];
  const spoken = spokenOf(before);
  const waters = new Set(
    toldNumbers(before).flatMap(({ part, value }) => (part === 'system' ? [value] : [])),
  );
  const isWarm = met(scanned, 'gear.heater', 'hardware.thermometer', 'sums.warmth', 'manner.unitTemp');
  const isRetest = scanned.tokens.some(({ word }) => RETEST.has(word));
  const all = said.map((given): Said => {
    const one = isRetest || parameterOf(given.of) !== undefined ? asReading(given, spoken) : given;
    const guessed = parameterOf(one.of);
    if (!isBareLevel(one) || (guessed === 'temperature' && isWarm)) return one;
    const of =
      named.length === 0 ? ofCase(one, guessed, spoken) : ofNamed(one, { guessed, named, spoken, said });
    const isNew = guessed !== undefined && spoken.every((each) => each.of !== guessed);
    const isAgain = named.length === 0 && isNew && waters.has(one.number.value);
    if (isAgain) return { ...one, part: 'none', of: 'nothing' };
    return of === undefined || of === guessed ? one : { ...one, of: ofNameOf(of) };
  });
  return { ...reading, said: all };
}

/** "did it over, 0.3" after 0.2: a number near the last level of one parameter is its next reading. */
function asReading(one: Said, spoken: readonly Spoken[]): Said {
  const { kinds, form, value } = one.number;
  if (one.part !== 'none' || kinds.length > 0 || form !== 'digits') return one;
  return nearTo(value, spoken).length === 1 ? { ...one, part: 'now' } : one;
}

interface Spoken {
  readonly of: ParameterId;
  /** Its last level; none where only its name was said. */
  readonly value?: number;
}

/** The parameters of a case, those spoken of last first. */
function spokenOf(before: Case): readonly Spoken[] {
  const latest = before.moments
    .toReversed()
    .flatMap(({ slots }): Spoken[] => [
      ...(slots.levels ?? []).toReversed().map(({ of, value }) => ({ of, value })),
      ...(slots.of === undefined ? [] : [{ of: slots.of }]),
    ]);
  const ids = [...new Set(latest.map(({ of }) => of))];
  return ids.map((of) => latest.find((one) => one.of === of && one.value !== undefined) ?? { of });
}

/** Of a message that names one parameter and says no other level of it. */
function ofNamed(
  one: Said,
  all: {
    readonly guessed: ParameterId | undefined;
    readonly named: readonly ParameterId[];
    readonly spoken: readonly Spoken[];
    readonly said: readonly Said[];
  },
): ParameterId | undefined {
  const { guessed, named, spoken, said } = all;
  const [only, more] = named;
  if (only === undefined || more !== undefined || guessed === undefined) return undefined;
  const isSaid = said.some((other) => parameterOf(other.of) === only && isBareLevel(other));
  const isKnown = spoken.some(({ of }) => of === guessed);
  return isSaid || isKnown || !isBelievable(only, one.number.value) ? undefined : only;
}

/** Of a message that names none. */
function ofCase(
  { part, number: { value, unit } }: Said,
  guessed: ParameterId | undefined,
  spoken: readonly Spoken[],
): ParameterId | undefined {
  if (guessed !== undefined && spoken.some(({ of }) => of === guessed)) return undefined;
  const [only, more] = nearTo(value, spoken);
  if (only !== undefined) return more === undefined ? only.of : undefined;
  const [last] = spoken;
  const isOpen = guessed !== undefined || unit !== '' || part === 'wanted' || part === 'target';
  const isStep = part === 'rate' || part === 'change';
  return isOpen && last !== undefined && (isStep || isBelievable(last.of, value)) ? last.of : undefined;
}

function nearTo(value: number, spoken: readonly Spoken[]): readonly Spoken[] {
  return spoken.filter((one) => one.value !== undefined && isWithin(FACTOR, value, one.value));
}

function isBareLevel({ part, number: { kinds, unit } }: Said): boolean {
  const isBare = kinds.length === 0 || SHARED.has(unit);
  return isBare && isLevelPart(part);
}
