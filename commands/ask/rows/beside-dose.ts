import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import { parameter, type ParameterId } from '../../../core/water/parameter.ts';
import { say } from '../../../core/wording/say.ts';
import type { Answer, Fact } from '../../answer.ts';
import { led } from './led.ts';
import { oftenSaid } from './stock-said.ts';

/**
 * A level that still moves although something is dosed: a fall is replaced on top of it, a rise is what the dose is too
 * much by. Nothing is said where nothing is dosed yet.
 */
export function besidesDose({ slots, reading: { scanned } }: Frame, of: ParameterId, given: Answer): Answer {
  const { amount, amountDays, amounts = [], container } = slots;
  const isRise = met(scanned, 'events.wentUp') && !met(scanned, 'events.wentDown');
  const dosed =
    amount === undefined || amounts.length > 1
      ? 'you dose'
      : `${amount}${amountDays === undefined ? '' : ` ${oftenSaid(amountDays)}`}`;
  const [first] = given.facts;
  // A question, or a use that no tank has: nothing was worked out.
  if (first === undefined) return given;
  if (isRise) {
    const worth = perDay(first);
    return {
      ...given,
      headline: `Dose less, for ${parameter(of).label} rises: what ${dosed} is too much by is worth ${worth}.`,
      steps: [
        'Lower the dose by about that, test at the same hour after two or three days, and lower it again if it still rises.',
        'Look for another source as well: water changes, top-off, limewater.',
      ],
    };
  }
  // A powder weighed into a bottle is no dose.
  const isStock = amountDays === undefined && (container !== undefined || first.label === 'of it');
  if (amount === undefined || isStock) return given;
  if (isLiquid(amount) && first.label !== 'of it')
    return {
      ...given,
      headline: say('ask.howStrong', { dosed }),
      facts: [{ label: 'as a powder, on top of it', value: given.headline }, ...given.facts],
    };
  return led(`On top of the ${dosed} you dose now:`, given);
}

/** "7 mL in 100 L" of a bottle as "7 mL a day in 100 L", "0.44 g per 100 L" of a salt with its name. */
function perDay({ label, value }: Fact): string {
  const [, salt] = /^(.*) a day$/.exec(label) ?? [];
  const named = salt === undefined ? '' : ` of ${salt}`;
  return value.replace(/^([\d.]+ \S+)/, (amount) => `${amount}${named} a day`);
}

/** Millilitres of something: without its strength nobody can say how many more. */
function isLiquid(amount: string): boolean {
  return /(?:ml|cc)$/i.test(amount);
}
