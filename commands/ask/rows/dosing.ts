import { parameterSlots } from '../../../core/language/slots.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import { raisedBy } from '../../../core/dosing/raised-by.ts';
import { answer } from '../../answer.ts';
import { PH_BY_AIR } from '../../checkup/beside-numbers.ts';
import { effectCommand } from '../../dose/effect.ts';
import { adjustCommand } from '../../salinity/adjust.ts';
import { call } from '../../called.ts';
import { noCleaner } from '../../triage/no-amount.ts';
import type { Row } from '../row.ts';
import { byLabel, hasLabel } from './by-label.ts';
import { ofBottle } from './bottle-dose.ts';
import { isCaustic } from './caustic.ts';
import { eachSalt } from './each-salt.ts';
import { amountFor } from './dose-for.ts';
import { isMishap, overdosed } from './overdose.ts';
import { asksPace, paceSaid } from './pace.ts';
import { withRemarks } from './said-remarks.ts';
import { solutionOf } from './solution.ts';
import { strengthSaid } from './stock-said.ts';
import { isSwap, swapped } from './swap.ts';

export const dosingRows: readonly Row[] = [
  {
    kind: 'dose-amount',
    label: 'ask.kindDoseAmount',
    needs: [
      {
        oneOf: ['of'],
        ask: 'ask.whatToRaise',
        when: (frame) => !hasLabel(frame) && !isRefused(frame),
      },
      {
        oneOf: ['wanted', 'change'],
        ask: 'ask.readsNowAndShould',
        when: (frame) => isOpen(frame) && frame.slots.now === undefined,
      },
      {
        oneOf: ['wanted', 'change'],
        ask: 'ask.andShouldBe',
        when: (frame) => isOpen(frame) && restoredIn(frame) === undefined,
      },
    ],
    uses: [
      'levels',
      ...parameterSlots,
      'salt',
      'volume',
      'salinity',
      'amount',
      'strength',
      'bottle',
      'container',
    ],
    answer: (frame, context) => {
      const labelled = byLabel(frame, context);
      if (labelled !== undefined) return labelled;
      if (isCaustic(frame)) return noCleaner(false);
      const { of, now, was, wanted, volume } = frame.slots;
      if (asksPace(frame)) return paceSaid(frame, context);
      if (isOfPh(frame)) return answer({ headline: PH_BY_AIR, sources: ['practice'] });
      if (of === 'salinity' && wanted !== undefined)
        return call(adjustCommand, { now: now ?? was, goal: wanted, volume }, context);
      const given = amountFor(toRestore(frame), context);
      return given === undefined ? undefined : withRemarks(frame, given);
    },
  },
  {
    kind: 'dose-effect',
    label: 'ask.kindDoseEffect',
    needs: [
      {
        oneOf: ['salt', 'bottle'],
        ask: 'ask.whichPowderOrSolution',
        when: (frame) => isUnknown(frame) && eachSalt(frame) === undefined,
      },
      {
        oneOf: ['amount', 'strength', 'bottle'],
        ask: 'ask.howMuchOfIt',
        when: isUnknown,
      },
    ],
    uses: ['salt', 'salts', 'amount', 'strength', 'bottle', 'container', 'volume', 'of', 'now', 'was'],
    answer: (frame, context) => {
      if (isMishap(frame)) return overdosed(frame, context);
      if (isSwap(frame)) return swapped(frame, context);
      const { salt, of, amount, volume, now, was } = frame.slots;
      const labelled = byLabel(frame, context) ?? ofBottle(frame.slots, { amount }, context);
      if (labelled !== undefined) return labelled;
      if (salt === undefined) return eachSalt(frame);
      if (amount === undefined) return solutionOf(frame, context);
      const looked = of !== undefined && raisedBy(salt).includes(of) ? of : undefined;
      const strength = strengthSaid(frame.slots);
      const input = { with: salt, amount, strength, volume, of: looked };
      const given = withRemarks(frame, call(effectCommand, input, context));
      const read = [was, now].filter((one) => one !== undefined);
      if (read.length === 0) return given;
      const before = was ?? (isAhead(frame) ? now : undefined);
      if (before !== undefined && read.length === 1)
        return withRemarks(frame, call(effectCommand, { ...input, now: before }, context));
      return { ...given, facts: [...given.facts, { label: 'You read', value: read.join(', then ') }] };
    },
  },
];

/** "short of the 430 it had, what restores it": the level it fell from is the goal. */
function restoredIn({ slots: { was, now }, reading: { scanned } }: Frame): string | undefined {
  const isLost = was !== undefined && now !== undefined && Number.parseFloat(now) < Number.parseFloat(was);
  return isLost && met(scanned, 'manner.restores') ? was : undefined;
}

function toRestore(frame: Frame): Frame {
  const { slots } = frame;
  if (slots.wanted !== undefined || slots.change !== undefined) return frame;
  return { ...frame, slots: { ...slots, wanted: restoredIn(frame) } };
}

/** Whether it is still to go in, so that the reading is the one before it. */
function isAhead({ reading: { scanned } }: Frame): boolean {
  return met(scanned, 'manner.supposition', 'manner.planning', 'sums.settles', 'times.soon');
}

/** Whether a goal is needed: no label and no pace says what to do, and it is nothing that is never dosed. */
function isOpen(frame: Frame): boolean {
  return !hasLabel(frame) && !asksPace(frame) && !isRefused(frame);
}

/** What no amount is given of, whatever the goal. */
function isRefused(frame: Frame): boolean {
  return isCaustic(frame) || isOfPh(frame);
}

/** "raise ph from 7.8 to 8.2": pH alone is named and no goal is read, whatever 8.2 was taken for. */
function isOfPh({ slots: { of, wanted, change }, reading: { scanned } }: Frame): boolean {
  const named = scanned.names.filter((name) => name.class === 'parameter');
  const isNamed = named.length > 0 && named.every(({ id }) => id === 'ph');
  return of === 'ph' || (isNamed && wanted === undefined && change === undefined);
}

function isUnknown(frame: Frame): boolean {
  return !hasLabel(frame) && !isMishap(frame);
}
