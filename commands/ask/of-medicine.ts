import { isDangerKind } from '../../core/language/kind-groups.ts';
import type { Frame } from '../../core/language/frame.ts';
import { met } from '../../core/language/met.ts';
import { namesMedicine } from '../triage/refused.ts';
import type { Decision } from './decide.ts';

/** Where an amount of a medicine is asked for: said that none is given, whatever else the message names. */
export function ofMedicine(frames: readonly Frame[]): Decision | undefined {
  const [first] = frames;
  const isDanger = isDangerKind(first?.kind);
  if (first === undefined || isDanger || !namesMedicine(first.reading.scanned)) return undefined;
  if (!met(first.reading.scanned, 'manner.askMuch', 'deeds.doses')) return undefined;
  const frame = frames.find(({ kind }) => kind === 'medicine');
  return frame === undefined ? undefined : { kind: 'answer', frame, others: [] };
}
