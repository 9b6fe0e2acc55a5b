import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import { parameter, type ParameterId } from '../../../core/water/parameter.ts';
import type { Answer } from '../../answer.ts';
import { oftenSaid } from './stock-said.ts';

/**
 * A level that still moves although something is dosed: a fall is replaced on top of it, a rise is what the dose is too
 * much by. Nothing is said where nothing is dosed yet.
 */
export function besidesDose({ slots, reading: { scanned } }: Frame, of: ParameterId, given: Answer): Answer {
  const { amount, amountDays } = slots;
  const isRise = met(scanned, 'events.wentUp') && !met(scanned, 'events.wentDown');
  const dosed =
    amount === undefined
      ? 'you dose'
      : `${amount}${amountDays === undefined ? '' : ` ${oftenSaid(amountDays)}`}`;
  const [first] = given.facts;
  if (isRise) {
    const worth =
      first === undefined ? given.headline : `${first.value} of ${first.label.replace(/ a day$/, '')}`;
    return {
      ...given,
      headline: `${parameter(of).label} rises, so dose less: what ${dosed} is too much by is worth ${worth} a day.`,
      steps: [
        'Lower the dose by about that, test at the same hour after two or three days, and lower it again if it still rises.',
        'Look for another source as well: water changes, top-off, limewater.',
      ],
    };
  }
  if (amount === undefined) return given;
  return { ...given, headline: `On top of the ${dosed} you dose now: ${given.headline}` };
}
