import type { ChosenUnits } from '../../core/quantity/chosen-units.ts';
import { Problem } from '../../core/problem.ts';
import { clean } from '../../core/quantity/clean.ts';
import { fixed, toUnit } from '../../core/quantity/format.ts';
import { readAlike } from '../../core/quantity/read.ts';
import { type ParameterId, findParameter, parameter } from '../../core/water/parameter.ts';
import { readSalinity } from '../../core/water/salinity-reading.ts';
import type { TankProfile } from '../keep.ts';
import { limitsOf } from '../../core/water/limits.ts';
import { say } from '../../core/wording/say.ts';

type Targets = TankProfile['targets'];

const FORM = /^([a-z][a-z0-9 ]*?)(?:\s*[:=]\s*|\s+)(\d[\d.,]*)\s*(.*?)\s*(?:-|\bto\b)\s*(\d.*)$/;
const DEFAULT = /^(.+?)(?:\s*[:=]\s*|\s+)(?:default|usual|none)$/;

/**
 * Targets written as "alk 8-9, ca 420-440, salinity 1.025-1.026": `before` with these in place of the old ones;
 * "alk default" takes the own one back.
 *
 * @throws Problem for a form, a name or a range that cannot be.
 */
export function askedTargets(
  text: string,
  before: Targets,
  units: ChosenUnits,
): { readonly targets: Targets; readonly read: readonly string[] } {
  const read: string[] = [];
  const changed: Partial<Record<ParameterId, readonly [number, number]>> = { ...before };
  for (const part of clean(text).split(/;|,(?=\s*[a-z])/)) {
    if (part.trim() === '') continue;
    const reset = DEFAULT.exec(part.trim());
    if (reset !== null) {
      delete changed[named(reset[1] ?? '', part)];
      continue;
    }
    const [, name = '', low = '', unit = '', high = ''] = FORM.exec(part.trim()) ?? [];
    if (high === '') throw unreadable(part);
    const id = named(name, part);
    const { range, notes } = rangeOf(id, [`${low} ${unit}`.trim(), high], units);
    changed[id] = ordered(range, id, part);
    read.push(`target ${part.trim()}`, ...notes);
  }
  return { targets: changed, read: [...new Set(read)] };
}

function named(name: string, part: string): ParameterId {
  const found = findParameter(name === 'salt' ? 'salinity' : name);
  if (found === undefined) throw unreadable(part);
  return found;
}

interface Ends {
  readonly range: readonly [number, number];
  readonly notes: readonly string[];
}

/** Both ends in the parameter's own unit. */
function rangeOf(id: ParameterId, ends: readonly [string, string], units: ChosenUnits): Ends {
  const { kind, unit } = parameter(id);
  if (kind === 'salinity') {
    const [low, high] = ends.map((text) => readSalinity(text, { field: 'targets' }));
    const range = [rounded(low?.practicalSalinity, 2), rounded(high?.practicalSalinity, 2)] as const;
    return { range, notes: [...(low?.notes ?? []), ...(high?.notes ?? [])] };
  }
  const own = id === 'alkalinity' || id === 'temperature' ? units[id] : unit;
  const texts = ends.map((text) => ({ text, field: 'targets' }));
  const [low, high] = readAlike(kind, texts, { fallback: texts.some(hasUnit) ? undefined : own });
  const inOwn = (value: number | undefined): number => rounded(toUnit(kind, value ?? Number.NaN, unit), 4);
  return {
    range: [inOwn(low?.value), inOwn(high?.value)],
    notes: [...(low?.notes ?? []), ...(high?.notes ?? [])],
  };
}

function hasUnit({ text }: { text: string }): boolean {
  return /[^\d.,\s]/.test(text);
}

function rounded(value: number | undefined, decimals: number): number {
  return Number(fixed(value ?? Number.NaN, decimals));
}

function ordered(
  [low, high]: readonly [number, number],
  id: ParameterId,
  part: string,
): readonly [number, number] {
  const [least, most] = limitsOf(id).believable;
  const { unit } = parameter(id);
  if (low < high && low >= least && high <= most) return [low, high];
  throw new Problem(say('tank.targetGoesFromLower'), {
    field: 'targets',
    given: part.trim(),
    limit: `${least} to ${most} ${unit}`.trim(),
  });
}

function unreadable(part: string): Problem {
  return new Problem(say('tank.iCouldNotRead3'), {
    field: 'targets',
    given: part.trim(),
    limit: say('tank.alk89Ca'),
  });
}
