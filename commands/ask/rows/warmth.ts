import type { Frame } from '../../../core/language/frame.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { warmCommand } from '../../water/warm.ts';
import { call } from '../../called.ts';

/** A change of water of another temperature, and nothing else that was read. */
export function isWarmth({ slots: { levels = [], otherTemperature, other, of } }: Frame): boolean {
  const isOther = otherTemperature !== undefined || (of === 'temperature' && other !== undefined);
  return isOther && levels.every((level) => level.of === 'temperature');
}

/** The temperature that comes out, or how warm the new water must be. */
export function mixedWarmth({ slots }: Frame, context: OwnContext): Answer | undefined {
  const { temperature, now, otherTemperature, other, wanted, share, changed, volume } = slots;
  const there = now ?? temperature;
  if (there === undefined) return undefined;
  const input = {
    now: there,
    fresh: otherTemperature ?? other,
    goal: wanted,
    share,
    amount: changed,
    volume,
  };
  return call(warmCommand, input, context);
}
