import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { paceCommand } from '../../water/pace.ts';
import { call } from '../../called.ts';

/** "how fast can I raise calcium", "is 3 dKH in one day ok": how far in a day, and no goal. */
export function asksPace({ slots, reading: { scanned } }: Frame): boolean {
  const { of, now, was, wanted } = slots;
  if (of === undefined || now !== undefined || was !== undefined || wanted !== undefined) return false;
  if (met(scanned, 'manner.askPace')) return true;
  return isInADay(scanned) && met(scanned, 'manner.askOk', 'manner.may');
}

/** The usual pace, and the step that was asked about against it. */
export function paceSaid({ slots: { of, change, rate } }: Frame, context: OwnContext): Answer {
  return call(paceCommand, { of: of ?? 'salinity', step: change ?? rate }, context);
}

function isInADay(scanned: Frame['reading']['scanned']): boolean {
  return (
    met(scanned, 'times.atOnce', 'sums.daily') ||
    scanned.numbers.some(({ kinds, value, unit }) => kinds.includes('days') && value === 1 && unit === 'day')
  );
}
