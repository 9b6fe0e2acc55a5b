import type { Source } from '../../core/source.ts';
import { say } from '../../core/wording/say.ts';
import type { Answer } from '../answer.ts';
import { shortLimits } from './limits.ts';

/** The first values that fit a line, and everything that was not used. */
export function readLine({ read, unused }: Answer): string {
  let room: number = shortLimits.read;
  const tooLong = read.findIndex((line) => (room -= line.length + 2) < -2);
  const fitting = tooLong < 0 ? read : read.slice(0, tooLong);
  return [
    ...fitting,
    ...(unused.length === 0 ? [] : [say('answer.notUsed', { words: unused.join(', ') })]),
  ].join('; ');
}

/** The surest first. */
const KINDS = [
  'standard',
  'published',
  'practice',
  'memory',
  'project',
] as const satisfies readonly Source['kind'][];

/** What kinds of source it rests on. */
export function restsOn(cited: readonly Source[]): string {
  const kinds = KINDS.filter((kind) => cited.some((source) => source.kind === kind));
  return kinds.map((kind) => say(`answer.${kind}`)).join(', ');
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
    ...(steps > 0 ? [say('answer.moreSteps', { steps })] : []),
    ...(facts > 0 ? [say('answer.moreLines', { facts })] : []),
    ...(isTable ? [say('answer.theTable')] : []),
  ].join(', ');
}
