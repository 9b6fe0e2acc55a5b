import { compoundsFor, findCompound } from '../../../core/dosing/compound.ts';
import { raisedBy } from '../../../core/dosing/raised-by.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import { Problem } from '../../../core/problem.ts';
import { say } from '../../../core/wording/say.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { overdosable } from '../../urgent/input.ts';
import { diluteCommand } from '../../water/dilute.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';
import { amountFor } from './dose-for.ts';

type Overdosed = (typeof overdosable)[number];

export const overdoseRows: readonly Row[] = [
  {
    kind: 'overdose',
    label: 'ask.kindOverdose',
    uses: ['salt', 'of', 'amount', 'strength', 'volume', 'now', 'levels'],
    answer: overdosed,
  },
];

/** An accident told: it is in, so first aid and what it did, never a plan for it. */
export function isMishap({ reading: { scanned } }: Frame): boolean {
  if (met(scanned, 'events.mishap')) return true;
  return met(scanned, 'events.runsAway') && !met(scanned, 'manner.supposition');
}

/** First aid by the card of what went in, and what the amount did to the water. */
export function overdosed(frame: Frame, context: OwnContext): Answer {
  const { slots } = frame;
  if (isLack(frame)) return amountFor(frame, context) ?? askGoal();
  const { salt, amount, strength, volume, levels = [] } = slots;
  const of = overdosedOf(slots);
  const measured = of === 'limewater' ? 'alkalinity' : of;
  const now = levels.findLast((level) => level.of === measured && level.part === 'now')?.text;
  return call(diluteCommand, { what: salt, amount, strength, volume, of, now }, context);
}

/** By the salt that was named, else by what was said to be too much. */
function overdosedOf({ salt, of }: Frame['slots']): Overdosed | undefined {
  if (salt !== undefined) {
    const found = findCompound(salt);
    const forms = found === undefined ? [] : 'name' in found ? [found] : found;
    if (forms.some(({ hazard }) => hazard === 'lime')) return 'limewater';
    return overdosable.find((id) => raisedBy(salt).some((raised) => raised === id));
  }
  return overdosable.find((id) => id === of) ?? (of === 'ph' ? 'limewater' : undefined);
}

/** "alk dropped to 6, sodium bicarbonate": it fell and nothing went in, so it is to be raised. */
function isLack(frame: Frame): boolean {
  const { of, now, amount } = frame.slots;
  const { scanned } = frame.reading;
  if (of === undefined || now === undefined || amount !== undefined || isMishap(frame)) return false;
  return (
    compoundsFor(of).length > 0 &&
    met(scanned, 'events.wentDown') &&
    !met(scanned, 'events.wentUp', 'manner.over')
  );
}

function askGoal(): never {
  throw new Problem(say('ask.andShouldBe'), { field: 'goal' });
}
