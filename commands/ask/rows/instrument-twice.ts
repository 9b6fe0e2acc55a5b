import { inPpt } from '../../../core/water/salinity-scale.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { checkCommand } from '../../salinity/check.ts';
import { call } from '../../called.ts';
import { under } from './led.ts';
import { levelsOf } from './levels-of.ts';
import { isFresh, isName, readable, sizeOf } from './shown-salinity.ts';

/** One instrument read at two times and the same: steady, which says nothing of right. */
export function again({ slots }: Frame, context: OwnContext): Answer | undefined {
  const read = levelsOf(slots, 'salinity');
  const [one, other, more] = read;
  if (one === undefined || other === undefined || more !== undefined || slots.moments === undefined)
    return undefined;
  if (one.part === 'other' || other.part === 'other' || sizeOf(one) !== sizeOf(other)) return undefined;
  const given = call(checkCommand, { reading: readable(other) }, context);
  const first = under(
    'The same number twice says that it is steady, not that it is right.',
    given,
    'what it reads',
  );
  return {
    ...first,
    steps: [
      'Rinse it, and tap or brush off every bubble: bubbles on a swing arm lift it, so that it reads too high.',
      ...given.steps,
    ],
  };
}

/** What it shows on fresh water and on the standard, where both were said and nothing of the tank. */
export function onTwoPoints(
  slots: Frame['slots'],
  scanned: Frame['reading']['scanned'],
): { readonly fresh: string; readonly standard: string } | undefined {
  const others = levelsOf(slots, 'salinity', 'other');
  if (levelsOf(slots, 'salinity', 'now', 'was').length > 0) return undefined;
  if (!met(scanned, 'substances.roWater')) return undefined;
  const high = others.filter(({ value }) => !isFresh(value));
  const shown = high.length > 1 ? (high.find((level) => !isName(level)) ?? high[0]) : high[0];
  if (shown === undefined || high.length > 2) return undefined;
  const isGravity = shown.value < 2;
  const fresh = others.find(
    ({ value }) => isFresh(value) && (isGravity ? value > 0.99 && value < 1.01 : true),
  );
  if (fresh === undefined) return undefined;
  return {
    fresh: isGravity ? fresh.text : inPpt(fresh.text),
    standard: isGravity ? shown.text : inPpt(shown.text),
  };
}
