import { counted } from '../../core/quantity/format.ts';
import type { Source } from '../../core/source.ts';
import type { Answer } from '../answer.ts';
import { shortLimits } from './limits.ts';

/** The first values that fit a line, and everything that was not used. */
export function readLine({ read, unused }: Answer): string {
  let room: number = shortLimits.read;
  const tooLong = read.findIndex((line) => (room -= line.length + 2) < -2);
  const fitting = tooLong < 0 ? read : read.slice(0, tooLong);
  return [...fitting, ...(unused.length === 0 ? [] : [`not used: ${unused.join(', ')}`])].join('; ');
}

const BASIS: Readonly<Record<Source['kind'], string>> = {
  standard: 'standards',
  published: 'papers',
  practice: 'common practice',
  memory: 'memory',
  project: 'own rules',
};

/** What kinds of source it rests on, the surest first. */
export function restsOn(cited: readonly Source[]): string {
  const kinds = Object.entries(BASIS).filter(([kind]) => cited.some((source) => source.kind === kind));
  return kinds.map(([, words]) => words).join(', ');
}

/** Lines that only the long form has. */
export interface Left {
  readonly facts: number;
  readonly steps: number;
  readonly isTable: boolean;
}

/** "2 more steps, the table": lines of the answer itself that only the long form has. */
export function leftWords({ facts, steps, isTable }: Left): string {
  return [
    ...(steps > 0 ? [counted(steps, 'more step')] : []),
    ...(facts > 0 ? [counted(facts, 'more line')] : []),
    ...(isTable ? ['the table'] : []),
  ].join(', ');
}
