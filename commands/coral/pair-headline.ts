import type { PairEffect } from '../../core/corals/pair-rules.ts';
import type { PairNeed } from '../../core/corals/reach.ts';
import { cm } from '../../core/corals/say.ts';
import { isSoft } from '../../core/corals/spreading.ts';
import { fittingHeadline } from '../fitting.ts';
import type { Gap } from './gap.ts';
import type { Pair } from './pair-worst.ts';

const kind: ReadonlySet<PairEffect> = new Set(['tolerated', 'usually tolerated']);

function getOn({ facts }: PairNeed): boolean {
  return facts.ally !== undefined || facts.rules.some(({ rule }) => kind.has(rule.effect));
}

/** Yes or no to the two side by side, or to the gap that was said. */
export function pairHeadline(
  { a, b, room: { need }, moveBelowCm, watchBelowCm, spreads }: Pair,
  gap: Gap | undefined,
): string {
  const [one, other] = [a.names.common[0], b.names.common[0]];
  const pair = one === other ? `two pieces of ${one}` : `${one} and ${other}`;
  const room = moveBelowCm > 0 ? cm(moveBelowCm) : cm(watchBelowCm);
  if (gap === undefined) {
    if (moveBelowCm > 0) return `Not touching: ${pair} want ${room} or more between them, at full stretch.`;
    if (spreads !== undefined && isSoft(spreads))
      return `Not on one rock: ${spreads.names.common[0]} grows over its neighbours. Keep the two ${room} apart or more, with bare sand between.`;
    if (getOn(need))
      return `Usually yes: ${pair} are mostly left standing close; ${watchBelowCm > 0 ? `watch them below ${room}` : 'leave room to grow'}.`;
    return watchBelowCm > 0
      ? `Perhaps: give ${pair} ${room} or more, and watch them at night.`
      : `I know of nothing against ${pair} side by side; leave room to grow.`;
  }
  const enough = `Room enough as far as is known: ${cm(gap.cm)} between ${pair}`;
  if (gap.cm < moveBelowCm)
    return `Too close: ${pair} want ${room} or more at full stretch, and ${cm(gap.cm)} is not enough.`;
  return gap.cm < watchBelowCm
    ? `Watch them: ${cm(gap.cm)} between ${pair} is within what one of them can reach or grow over.`
    : fittingHeadline(
        `${enough}${watchBelowCm > 0 ? `, who want ${room}` : ''}. Watch the first nights.`,
        `${enough}. Watch the first nights.`,
      );
}
