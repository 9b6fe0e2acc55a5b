import type { Frame } from '../../../core/language/frame.ts';
import type { SlotName } from '../../../core/language/slots.ts';
import { waste } from '../../waterchange/level.ts';
import { isSum } from './changes-sum.ts';
import { isWarmth } from './warmth.ts';

/** Slots that tell of readings, in every question of water changes. */
export const CHANGE_LEVELS: readonly SlotName[] = [
  'of',
  'levels',
  'now',
  'was',
  'wanted',
  'limit',
  'other',
  'rate',
  'rateDays',
];
/** Slots that tell of water. */
export const CHANGE_WATER: readonly SlotName[] = [
  'share',
  'shares',
  'changed',
  'batches',
  'everyDays',
  'volume',
  'waterRate',
  'waterRateDays',
  'counts',
];

/** Whether the question is of a reading, and not of water or warmth alone. */
export function needsLevels(frame: Frame): boolean {
  return !isSum(frame) && !isWarmth(frame);
}

/**
 * Where it should be: said as such, as a border, or as how far it should move. Changes move towards the new water; what
 * builds up moves down.
 */
export function goalSaid({ slots }: Frame): string | undefined {
  const { of, now, was, wanted, limit, change, other } = slots;
  const reads = now ?? was;
  if (wanted !== undefined || limit !== undefined) return wanted ?? limit;
  if (change === undefined || reads === undefined || of === undefined) return undefined;
  const gap = other === undefined ? undefined : Number.parseFloat(other) - Number.parseFloat(reads);
  const sign = gap === undefined ? (waste.has(of) ? '-' : undefined) : gap < 0 ? '-' : '+';
  const unit = unitOf(reads) || unitOf(change);
  return sign === undefined ? undefined : `${inUnit(reads, unit)} ${sign} ${inUnit(change, unit)}`;
}

function unitOf(text: string): string {
  return text.split(' ').slice(1).join(' ');
}

/** A bare number takes the unit of the other. */
function inUnit(text: string, unit: string): string {
  return unitOf(text) === '' ? `${text} ${unit}`.trim() : text;
}
