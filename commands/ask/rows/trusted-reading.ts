import { inPpt } from '../../../core/water/salinity-scale.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { trustedOf } from '../../../core/language/trusted.ts';
import { limitsOf, sideOf } from '../../../core/water/limits.ts';
import { readSalinity } from '../../../core/water/salinity-reading.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { adjustCommand } from '../../salinity/adjust.ts';
import { call } from '../../called.ts';
import { attempt } from './attempt.ts';

/** Readings nearer than this are one number with such instruments, ppt. Common practice, no source. */
const CLOSE_PPT = 1;

/** Two readings of the tank's salinity that differ, and the one of them that is trusted, where that was said. */
export interface TwoSaid {
  readonly texts: readonly [string, string];
  readonly trusted: string | undefined;
}

/** Undefined where there are not two, or they are as near as instruments are. */
export function twoSalinities({ reading: { scanned, said } }: Frame): TwoSaid | undefined {
  const read = said.flatMap((one) => {
    const isRead = one.part === 'now' || one.part === 'was' || one.part === 'other';
    const isOf = one.of === 'salinity' || one.of === 'nothing';
    const text = inPpt(one.text);
    const value = isRead && isOf ? attempt(() => readSalinity(text, { field: 'now' })) : undefined;
    const ppt = value?.practicalSalinity ?? 0;
    return sideOf(ppt, limitsOf('salinity').believable) === undefined ? [{ one, text, ppt }] : [];
  });
  const [first, second, more] = read;
  if (first === undefined || second === undefined || more !== undefined) return undefined;
  if (Math.abs(first.ppt - second.ppt) < CLOSE_PPT) return undefined;
  const trusted = trustedOf(scanned, [first.one, second.one]);
  return {
    texts: [first.text, second.text],
    trusted: read.find(({ one }) => one === trusted)?.text,
  };
}

/** From the reading that is trusted; what the other instrument shows is said to be its error. */
export function trusting(
  { texts, trusted }: TwoSaid,
  asked: {
    readonly goal?: string | undefined;
    readonly volume?: string | undefined;
    readonly by?: 'top-off' | undefined;
  },
  context: OwnContext,
): Answer {
  const other = texts.find((text) => text !== trusted) ?? '';
  const given = call(adjustCommand, { now: trusted, ...asked }, context);
  return {
    ...given,
    read: [
      `taken as the tank: ${trusted ?? ''}, which you trust; the instrument that shows ${other} is off`,
      ...given.read,
    ],
    steps: [
      ...given.steps,
      'Set or replace the other instrument on a 35 ppt standard before you read with it again.',
    ],
  };
}
