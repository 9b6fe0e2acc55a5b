import { dangersIn } from '../../core/language/danger.ts';
import type { Frame } from '../../core/language/frame.ts';
import type { Kind } from '../../core/language/kinds.ts';
import type { Thresholds } from '../../core/language/model-file.ts';
import type { Decision } from './decide.ts';

/** Kinds whose numbers are not what the tank reads, or are in doubt. */
const ELSEWHERE: ReadonlySet<Kind> = new Set<Kind>([
  'salinity-convert',
  'salinity-mix',
  'salinity-forecast',
  'instrument',
  'kits-disagree',
  'convert',
  'claim',
  'solution',
  'log',
  'person-hurt',
]);

/**
 * The emergency that a number is by itself, whatever the words are taken for; undefined where no level is one, or where the
 * message is surely about numbers that are not the tank's.
 */
export function byLevel(frames: readonly Frame[], { answer }: Thresholds): Decision | undefined {
  const [first] = frames;
  if (first === undefined || dangersIn(first.reading).length === 0) return undefined;
  if (ELSEWHERE.has(first.kind) && first.probability >= answer) return undefined;
  const frame = frames.find(({ kind }) => kind === 'urgent-water');
  const others = first.kind === 'urgent-water' ? [] : [first];
  return frame === undefined ? undefined : { kind: 'answer', frame, others };
}
