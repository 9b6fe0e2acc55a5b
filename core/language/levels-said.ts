import { raisedBy } from '../dosing/raised-by.ts';
import { findParameter, parameter, type ParameterId } from '../water/parameter.ts';
import { isBelievable } from '../water/limits.ts';
import { isWater } from './kinds-of-said.ts';
import { isLongPast } from './long-past.ts';
import { momentBeside } from './moment-beside.ts';
import { isLevelPart, type OfName } from './parts.ts';
import { phosphorusText } from './phosphorus-said.ts';
import type { Said } from './said.ts';
import type { NumberSpan } from './scan/number-span.ts';
import type { Level } from './slots.ts';
import type { Scanned } from './tokens.ts';

/** A level and the number that says it. */
interface LevelSaid {
  readonly level: Level;
  readonly from: Said;
}

/** The levels of a message in order. What is months past is no reading of now. */
export function levelsSaid(scanned: Scanned, said: readonly Said[]): readonly LevelSaid[] {
  return said.flatMap((from): LevelSaid[] => {
    if (!isLevelPart(from.part) || isWater(from)) return [];
    const part = from.part === 'now' && isLongPast(scanned, from.number.start) ? 'was' : from.part;
    const of = parameterOf(from.of) ?? likeOthers(from, said);
    if (of === undefined) return [];
    const { everyDays } = from.number;
    const level = {
      of,
      part: part === 'rate' && everyDays === undefined ? 'change' : part,
      text: levelText(from.number, of, scanned.text),
      value: from.number.value,
      ...(everyDays === undefined ? {} : { everyDays }),
      ...momentBeside(from, said),
    } as const;
    return [{ level, from }];
  });
}

/** "hers says 31 where mine says 35": another reading without a name is of the one parameter that was read, where it can be. */
function likeOthers({ part, of, number }: Said, said: readonly Said[]): ParameterId | undefined {
  if (part !== 'other' || of !== 'nothing' || number.kinds.length > 0) return undefined;
  const read = said.filter((each) => isLevelPart(each.part));
  const [only, more] = new Set(read.flatMap((each) => parameterOf(each.of) ?? []));
  return only !== undefined && more === undefined && isBelievable(only, number.value) ? only : undefined;
}

/** "8 ppm no3": a unit that is also a name says no more than the name; "31 in the tank" are no inches, "2 wk 9" no weeks. */
export function levelText(span: NumberSpan, of: ParameterId, text: string): string {
  const { number, unit, kinds } = span;
  const phosphorus = of === 'phosphate' ? phosphorusText(text, span) : undefined;
  if (phosphorus !== undefined) return phosphorus;
  const isBare = unit === '' || unit === of || kinds.includes('length') || kinds.includes('days');
  const isName = findParameter(unit) === of && parameter(of).kind !== 'alkalinity';
  return isBare || isName ? number : `${number} ${unit}`;
}

/** The parameter a message is about: what should change, else what was named first, else what its salt raises. */
export function mainParameter(
  levels: readonly Level[],
  named: readonly ParameterId[],
  salts: readonly string[],
): ParameterId | undefined {
  const asked = levels.find(({ part }) => part === 'wanted' || part === 'change' || part === 'target');
  const counted = levels.find(({ part }) => part === 'rate' || part === 'was' || part === 'other');
  const [raised] = salts.flatMap(raisedBy);
  return (
    asked?.of ??
    counted?.of ??
    levels.find(({ of }) => of !== 'temperature')?.of ??
    named[0] ??
    raised ??
    levels[0]?.of
  );
}

export function parametersNamed({ names }: Scanned): readonly ParameterId[] {
  return names.flatMap(({ class: kind, id }) => (kind === 'parameter' ? [id as ParameterId] : []));
}

export function parameterOf(of: OfName): ParameterId | undefined {
  return findParameter(of);
}
