import { Problem } from '../../core/problem.ts';
import { fixed, inUnit, significant, toUnit } from '../../core/quantity/format.ts';
import { readAlike, readQuantity } from '../../core/quantity/read.ts';
import { possible } from '../../core/water/possible.ts';
import {
  findParameter,
  parameter,
  parameterIds,
  type Parameter,
  type ParameterId,
} from '../../core/water/parameter.ts';
import { limitsOf } from '../../core/water/limits.ts';
import { say } from '../../core/wording/say.ts';

/** Waste that builds up: new salt water should hold next to none of it. */
export const waste: ReadonlySet<ParameterId> = new Set(['nitrate', 'phosphate', 'ammonia', 'nitrite']);
/** Not carried by the water in proportion, or, as salinity, with sums of its own. */
const notMixed: ReadonlySet<ParameterId> = new Set(['ph', 'temperature', 'salinity']);

/** Whether the water carries it, so that it mixes in proportion. */
export function mixes(id: ParameterId): boolean {
  return !notMixed.has(id);
}

/** The levels of a question about one parameter, in its canonical unit; `show` prints one. */
export interface Levels {
  readonly id: ParameterId;
  readonly about: Parameter;
  readonly waste: boolean;
  readonly now: number;
  readonly goal: number | undefined;
  readonly fresh: number;
  readonly read: readonly string[];
  /** How the units were read: behind everything else that was. */
  readonly notes: readonly string[];
  readonly doubts: readonly string[];
  readonly show: (level: number) => string;
}

export interface LevelTexts {
  readonly of: string;
  readonly now: string;
  readonly goal?: string | undefined;
  readonly fresh?: string | undefined;
}

/** The parameter a water change is asked about. @throws Problem for one that does not mix in proportion. */
export function mixedParameter(of: string): ParameterId {
  const id = findParameter(of);
  const mixed = parameterIds.filter(mixes);
  const limit = mixed.map((each) => parameter(each).label).join(', ');
  if (id !== undefined && mixed.includes(id)) return id;
  const salinity = /^(?:salinity|salt|sg|specific gravity)$/i.test(of.trim());
  throw new Problem(
    id === undefined
      ? say('change.iDoNotKnow', { of })
      : say('change.doesNotMixProportion', { label: parameter(id).label }),
    { field: 'of', given: of, limit, ...(salinity ? { hint: say('change.salinityUseSalinityAdjust') } : {}) },
  );
}

/** Prints a level of a parameter in the unit keepers use: 0.107 meq/L -> "0.3 dKH". */
export function shownAs(id: ParameterId): (level: number) => string {
  const { kind, unit, decimals } = parameter(id);
  return (level) => {
    const text = inUnit(kind, level, unit, decimals);
    // What is there is not printed as none.
    return level !== 0 && Number.parseFloat(text) === 0
      ? `${significant(toUnit(kind, level, unit), 1)} ${unit}`
      : text;
  };
}

/** Reads now, goal and fresh in one unit. @throws Problem where the new water's level is needed and missing. */
export function readLevels({ of, now, goal, fresh }: LevelTexts): Levels {
  const id = mixedParameter(of);
  const about = parameter(id);
  const isWaste = waste.has(id);
  if (fresh === undefined && !isWaste) {
    throw new Problem(say('change.iNeedNewSalt', { label: about.label }), {
      field: 'fresh',
      hint: say('change.mixBatchTestGive'),
    });
  }
  const texts = [
    { field: 'now', text: now },
    { field: 'goal', text: goal },
    { field: 'fresh', text: fresh },
  ].filter((each): each is { field: string; text: string } => each.text !== undefined);
  const plausible = about.kind === 'alkalinity' ? undefined : limitsOf(id).believable;
  const found = readAlike(about.kind, texts, { plausible });
  for (const [index, { value }] of found.entries())
    possible(id, texts[index]?.field ?? 'now', toUnit(about.kind, value, about.unit));
  const valueOf = (field: string): number | undefined =>
    found[texts.findIndex((each) => each.field === field)]?.value;
  const show = shownAs(id);
  const nowValue = valueOf('now') ?? 0;
  const freshValue = valueOf('fresh') ?? 0;
  const assumed = `new salt water taken as ${show(0)} ${about.label}; test it, mixes and top-off water can hold some`;
  return {
    id,
    about,
    waste: isWaste,
    now: nowValue,
    goal: valueOf('goal'),
    fresh: freshValue,
    show,
    read: [
      `${about.label} now ${show(nowValue)}`,
      ...(fresh === undefined ? [assumed] : [`new salt water ${show(freshValue)}`]),
    ],
    notes: [...new Set(found.flatMap((each) => each.notes))],
    doubts: doubts(id, about, nowValue, show),
  };
}

function doubts(
  id: ParameterId,
  about: Parameter,
  now: number,
  show: (level: number) => string,
): readonly string[] {
  const [low, high] = limitsOf(id).believable;
  const level = toUnit(about.kind, now, about.unit);
  if (level >= low && level <= high) return [];
  return [
    `Test again before you act: ${show(now)} is an unusual ${about.label} reading (${low} to ${high} ${about.unit} is believable).`,
  ];
}

/** A level to be reached and where it is now, in the parameter's own unit: what the guard of unusual goals looks at. */
export function plannedOf(
  { id, about, now }: Levels,
  goal: number,
): { id: ParameterId; goal: number; now: number } {
  const own = (level: number): number => toUnit(about.kind, level, about.unit);
  return { id, goal: own(goal), now: own(now) };
}

/** A single amount of the parameter, such as a rise. */
export function readLevel(id: ParameterId, text: string, field: string): number {
  const { kind, unit } = parameter(id);
  const { value } = readQuantity(kind, text, { field });
  possible(id, field, toUnit(kind, value, unit));
  return value;
}

/** A level as a bare number in the unit answers are given in, for the working. */
export function plain({ about }: Levels, level: number): string {
  return fixed(toUnit(about.kind, level, about.unit), about.decimals + 1);
}
