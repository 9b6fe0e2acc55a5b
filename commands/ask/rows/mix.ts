import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import { inVessels } from '../../../core/language/vessels.ts';
import type { Slots } from '../../../core/language/slots.ts';
import { limitsOf } from '../../../core/water/limits.ts';
import { readSalinity } from '../../../core/water/salinity-reading.ts';
import { batchCommand } from '../../salinity/batch.ts';
import { mixCommand } from '../../salinity/mix.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';
import { attempt } from './attempt.ts';
import { levelsOf } from './levels-of.ts';
import { readableAs } from './readable-as.ts';
import { isMass } from './stock-said.ts';
import { vesselSaid } from './vessel-said.ts';

export const mixRow: Row = {
  kind: 'salinity-mix',
  label: 'ask.kindSalinityMix',
  needs: [
    {
      oneOf: ['container', 'volume'],
      ask: 'ask.howMuchMixed',
      when: (frame) => batchIn(frame) === undefined && !isPerLitre(frame),
    },
  ],
  uses: [
    'container',
    'volume',
    'box',
    'lengths',
    'levels',
    'now',
    'other',
    'wanted',
    'amount',
    'amounts',
    'salt',
    'strength',
    'counts',
  ],
  answer: (frame, context) => {
    const slots = withReached(frame);
    const [made, tank] = [lastOf(slots, 'other'), lastOf(slots, 'now')];
    // The new water that reads so is brought to the tank's, where no goal is named.
    const goal = goalIn(slots) ?? (made === undefined ? undefined : tank);
    const volume = batchIn(frame) ?? (isPerLitre(frame) ? '1 L' : undefined);
    if (volume === undefined) return undefined;
    const reads = made ?? tank;
    if (reads !== undefined) return call(batchCommand, { volume, now: reads, goal }, context);
    const salt = [...(slots.amounts ?? []), ...cupsIn(frame)].filter(isSalt);
    const scoop = scoopIn(frame, salt);
    const one = salt.find((text) => text !== scoop);
    const { scanned, said } = frame.reading;
    const amount = one === undefined ? undefined : inVessels(one, scanned, said);
    const parts = partsIn(frame);
    return call(mixCommand, { volume, goal, label: labelIn(slots), amount, scoop, parts }, context);
  },
};

/** "grams per litre for 1.025", "36 g per litre gave 32": a litre of it, where no vessel is told by its sides. */
function isPerLitre({ slots }: Frame): boolean {
  return (goalIn(slots) ?? labelIn(slots)) !== undefined && slots.lengths === undefined;
}

function lastOf(slots: Slots, part: 'now' | 'other'): string | undefined {
  return levelsOf(slots, 'salinity', part).at(-1)?.text;
}

function goalIn(slots: Slots): string | undefined {
  return levelsOf(slots, 'salinity', 'wanted', 'target').at(-1)?.text;
}

/** "the scoop is about 150 g": what one holds, where the salt is counted in it. */
function scoopIn({ reading: { scanned } }: Frame, salt: readonly string[]): string | undefined {
  return met(scanned, 'hardware.saltScoop') ? salt.find(isMass) : undefined;
}

/** "can I weigh it in two goes": so many equal parts. */
function partsIn({ slots: { counts = [] }, reading: { scanned } }: Frame): number | undefined {
  return met(scanned, 'sums.inGoes')
    ? counts.find((count) => Number.isInteger(count) && count > 1)
    : undefined;
}

/** "only got to 1.021 so far": what it reached, and no goal. */
function withReached({ slots, reading: { scanned } }: Frame): Slots {
  const { levels = [] } = slots;
  const aims = levelsOf(slots, 'salinity', 'wanted', 'target');
  const [only, more] = aims;
  if (only === undefined || more !== undefined || !met(scanned, 'times.soFar')) return slots;
  const isWeak = attempt(() => readSalinity(only.text, { field: 'goal' }).practicalSalinity < USUAL_LOW);
  return isWeak === true
    ? { ...slots, levels: levels.map((level) => (level === only ? { ...level, part: 'now' } : level)) }
    : slots;
}

const [USUAL_LOW] = limitsOf('salinity').usual;

/** The batch: a vessel by its volume or its sides, the system, or a volume that was taken for an amount. */
function batchIn(frame: Frame): string | undefined {
  const { amounts = [] } = frame.slots;
  const { scanned, said } = frame.reading;
  const vessel = vesselIn(frame);
  return (
    (vessel === undefined ? undefined : inVessels(vessel, scanned, said)) ??
    vesselSaid(frame) ??
    amounts.find((text) => !isSalt(text) && readableAs('volume', text) !== undefined)
  );
}

/** A bin beside cups: the salt was counted in the cups. */
function vesselIn({ slots: { container, volume }, reading: { said } }: Frame): string | undefined {
  if (container === undefined || !isSalt(container)) return container ?? volume;
  const vessel = said.find(({ part, text }) => (part === 'part' || part === 'system') && !isSalt(text));
  return vessel?.text ?? volume ?? container;
}

/** Cups that were taken for the vessel, where another is the vessel. */
function cupsIn(frame: Frame): readonly string[] {
  const { container } = frame.slots;
  return container === undefined || !isSalt(container) || vesselIn(frame) === container ? [] : [container];
}

/** Grams in a litre by the label of the mix. */
function labelIn({ strength }: Slots): string | undefined {
  return strength !== undefined && strength.endsWith('g/l') ? strength : undefined;
}

/** Salt is weighed, or measured in cups. */
function isSalt(text: string): boolean {
  return isMass(text) || /\bcups?\b/.test(text);
}
