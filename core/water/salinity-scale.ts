import { significant } from '../quantity/format.ts';
import { Problem } from '../problem.ts';
import { fixed } from '../quantity/format.ts';
import { readQuantity } from '../quantity/read.ts';
import { say } from '../wording/say.ts';

/** Scales a salinity is written on: specific gravity, practical salinity (called ppt), g salt per kg, conductivity. */
export type SalinityScale = 'SG' | 'ppt' | 'g/kg' | 'mS/cm';

interface Given {
  readonly field: string;
  readonly given: string;
}

interface OnScale {
  readonly scale: SalinityScale;
  readonly value: number;
  readonly notes: readonly string[];
}

const GRAVITY = /^(?:sg|s\.g\.|specific gravity|density)$/;
const PRACTICAL = /^(?:ppt|psu|pss|‰|o\/oo|parts per thousand)$/;
const CONDUCTIVITY = /^(?:ms|ms\/cm|µs|us|µs\/cm|us\/cm|s\/m|millisiemens|microsiemens)$/;

/** Bounds of a bare number: this project's own choice, everything a marine tank and its instruments can show. */
const gravity = { min: 1, max: 1.04 } as const;
const barePpt = { min: 30, max: 42 } as const;
const bareMicrosiemens = { min: 5000, max: 65_000 } as const;

/**
 * Which scale `value` with the word `unit` ("" for none) is on.
 *
 * @throws Problem with `choices` where it can be several or is surely another one.
 */
export function scaleOf(value: number, unit: string, given: Given): OnScale {
  const word = unit
    .replace(/^(?:salinity|sal)\s*/, '')
    .replace(/^(?:sg|s\.g\.|specific gravity)\s+(?=\S)/, '');
  if (word === '') return bare(value, given);
  if (GRAVITY.test(word)) return specific(value, given);
  if (PRACTICAL.test(word)) return practical(value, given);
  if (/^g\/kg$/.test(word)) return { scale: 'g/kg', value, notes: [] };
  const electric = word.replace(/^conductivity\s*/, '');
  if (electric === '') return conductivity(value, '', given);
  if (CONDUCTIVITY.test(electric)) return conductivity(value, electric, given);
  throw unreadableSalinity(given.field, given.given);
}

function isGravity(value: number): boolean {
  return value >= gravity.min && value <= gravity.max;
}

/** 1025 and 1025.5 are the density in kg/m3 or the gravity without its point; either way 1.025. */
function isThousandfold(value: number): boolean {
  return isGravity(value / 1000);
}

function specific(value: number, { field, given }: Given): OnScale {
  if (isGravity(value)) return { scale: 'SG', value, notes: [] };
  if (isThousandfold(value))
    return { scale: 'SG', value: value / 1000, notes: [`read ${value} as ${significant(value / 1000, 6)}`] };
  throw new Problem(say('salinity.gravityBetween'), {
    field,
    given,
    choices: value >= barePpt.min && value <= barePpt.max ? [`${value} ppt`] : [],
    hint: say('salinity.hintGravity'),
  });
}

function practical(value: number, { field, given }: Given): OnScale {
  if (isGravity(value) && value > gravity.min) {
    return { scale: 'SG', value, notes: [`${value} is a specific gravity, not ppt; read it so`] };
  }
  if (isThousandfold(value)) return specific(value, { field, given });
  return { scale: 'ppt', value, notes: [] };
}

function conductivity(value: number, unit: string, { field }: Given): OnScale {
  const read = readQuantity('conductivity', `${value} ${unit}`.trim(), { field });
  if (read.unit === 'µS/cm' && read.value < 1) {
    const notes = ['read µS as mS: seawater is near 53 mS/cm, and 53 µS/cm would be nearly pure water'];
    return { scale: 'mS/cm', value: read.written, notes };
  }
  return { scale: 'mS/cm', value: read.value, notes: read.notes };
}

function bare(value: number, { field, given }: Given): OnScale {
  if (isGravity(value)) return { scale: 'SG', value, notes: [] };
  if (isThousandfold(value)) return specific(value, { field, given });
  if (value >= barePpt.min && value <= barePpt.max)
    return { scale: 'ppt', value, notes: [`read ${value} as ppt`] };
  if (value >= bareMicrosiemens.min && value <= bareMicrosiemens.max) {
    return { scale: 'mS/cm', value: value / 1000, notes: [`read ${value} as µS/cm`] };
  }
  throw new Problem(say('salinity.whichScale', { given }), {
    field,
    given,
    choices: candidates(value),
    hint: say('salinity.hintScale'),
  });
}

/** What a bare number could be: 26 is 26 ppt, short for 1.026, or 26 mS/cm; 53 only mS/cm. */
function candidates(value: number): string[] {
  if (value > barePpt.max && value <= 65) return [`${value} mS/cm`];
  if (value < 10 || value > barePpt.max) return [];
  const short = value >= 15 ? [`${fixed(1 + value / 1000, 4)} SG`] : [];
  return [`${value} ppt`, ...short, `${value} mS/cm`];
}

export function unreadableSalinity(field: string, given: string): Problem {
  return new Problem(say('salinity.noSalinity'), {
    field,
    given,
    limit: say('salinity.salinityForms'),
  });
}

/**
 * A bare number of an instrument, or of a tank, in ppt: up to what is ppt and no conductivity, and no specific gravity. Other
 * texts stay. Checks: "35" -> "35 ppt", "2" -> "2 ppt", "1.025", "53" and "35 ppt" as they are.
 */
export function inPpt(text: string): string {
  const isBare = /^\d{1,2}(?:\.\d+)?$/.test(text) && !/^1(?:\.0\d*)?$/.test(text);
  return isBare && Number(text) <= barePpt.max ? `${text} ppt` : text;
}
