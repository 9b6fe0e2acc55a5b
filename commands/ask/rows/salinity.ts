import { inPpt } from '../../../core/water/salinity-scale.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import type { Slots } from '../../../core/language/slots.ts';
import { readQuantity } from '../../../core/quantity/read.ts';
import { limitsOf } from '../../../core/water/limits.ts';
import { readSalinity } from '../../../core/water/salinity-reading.ts';
import { adjustCommand } from '../../salinity/adjust.ts';
import { batchCommand } from '../../salinity/batch.ts';
import { checkCommand } from '../../salinity/check.ts';
import { convertSalinityCommand } from '../../salinity/convert.ts';
import { mixCommand } from '../../salinity/mix.ts';
import { kitsCommand } from '../../water/kits.ts';
import { call } from '../../called.ts';
import type { Answer } from '../../answer.ts';
import type { Row } from '../row.ts';
import { isMass } from './stock-said.ts';
import { attempt } from './attempt.ts';
import { levelsOf } from './levels-of.ts';
import { trusting, twoSalinities } from './trusted-reading.ts';
import { asksPace, paceSaid } from './pace.ts';

export const salinityRows: readonly Row[] = [
  {
    kind: 'salinity-convert',
    label: 'A salinity on every scale',
    needs: [{ oneOf: ['levels'], ask: 'What does the instrument read?' }],
    uses: ['levels', 'now', 'was', 'other', 'temperature', 'otherTemperature', 'salinity'],
    answer: ({ slots }, context) => {
      const temperature = slots.otherTemperature ?? slots.temperature;
      const convert = (reading: string): Answer =>
        isConductivity(reading)
          ? call(checkCommand, { reading, temperature }, context)
          : call(convertSalinityCommand, { reading, temperature }, context);
      const [level, ...others] = levelsOf(slots, 'salinity');
      if (level === undefined) return undefined;
      const given = convert(level.text);
      // "1.0266 and 36, are they the same": the other one beside it.
      const more = others.flatMap(({ text }) => attempt(() => convert(inPpt(text))) ?? []);
      return { ...given, headline: [given, ...more].map(({ headline }) => headline).join(' ') };
    },
  },
  {
    kind: 'salinity-adjust',
    label: 'Raise or lower salinity, day by day',
    needs: [
      {
        oneOf: ['now', 'was', 'wanted'],
        ask: 'What does the tank read now?',
        when: (frame) => !asksPace(frame),
      },
    ],
    uses: ['levels', 'now', 'was', 'wanted', 'other', 'limit', 'volume'],
    answer: (frame, context) => {
      const { slots } = frame;
      if (asksPace(frame)) return paceSaid(frame, context);
      const last = (...parts: Parameters<typeof levelsOf>[2][]): string | undefined =>
        levelsOf(slots, 'salinity', ...parts).at(-1)?.text;
      const two = twoSalinities(frame);
      const goal = last('wanted', 'target') ?? last('limit');
      if (two?.trusted !== undefined) return trusting(two, { goal, volume: slots.volume }, context);
      const now = last('now') ?? last('was');
      if (two !== undefined && isThere(now, goal) && last('was') === undefined)
        return call(kitsCommand, { of: 'salinity', first: two.texts[0], second: two.texts[1] }, context);
      if (now === undefined && goal === undefined) return undefined;
      const input = { now, goal, volume: slots.volume };
      const fresh = last('other');
      if (fresh === undefined) return call(adjustCommand, input, context);
      const given = attempt(() => call(adjustCommand, { ...input, fresh }, context));
      if (given !== undefined) return given;
      // Another tank's, or too weak to raise this one with.
      const without = call(adjustCommand, input, context);
      return {
        ...without,
        read: [...without.read, `not used: ${fresh}, since water of it would not bring the tank there`],
      };
    },
  },
  {
    kind: 'salinity-mix',
    label: 'Salt for a batch of new water',
    needs: [
      {
        oneOf: ['container', 'volume'],
        ask: 'How much salt water do you mix?',
        when: ({ slots }) =>
          batchIn(slots) === undefined &&
          labelIn(slots) === undefined &&
          levelsOf(slots, 'salinity', 'wanted', 'target').length === 0,
      },
    ],
    uses: [
      'container',
      'volume',
      'levels',
      'now',
      'other',
      'wanted',
      'amount',
      'amounts',
      'salt',
      'strength',
    ],
    answer: (frame, context) => {
      const slots = withReached(frame);
      const goal = levelsOf(slots, 'salinity', 'wanted', 'target').at(-1)?.text;
      // "grams per litre for 1.025", "36 g per litre gave 32": a litre of it.
      const volume = batchIn(slots) ?? ((goal ?? labelIn(slots)) === undefined ? undefined : '1 L');
      if (volume === undefined) return undefined;
      const reads = levelsOf(slots, 'salinity', 'other', 'now').at(-1)?.text;
      return reads === undefined
        ? call(
            mixCommand,
            { volume, goal, label: labelIn(slots), amount: (slots.amounts ?? []).find(isSalt) },
            context,
          )
        : call(batchCommand, { volume, now: reads, goal }, context);
    },
  },
];

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

/** Whether it reads where it should be: then another reading decides, and not this one. */
function isThere(now: string | undefined, goal = '35 ppt'): boolean {
  const [reads, aim] = [now, goal].map((text) =>
    text === undefined
      ? undefined
      : attempt(() => readSalinity(inPpt(text), { field: 'now' }).practicalSalinity),
  );
  return reads !== undefined && aim !== undefined && Math.abs(reads - aim) < 1;
}

/** The batch: a vessel, the system, or a volume that was taken for an amount. */
function batchIn({ container, volume, amounts = [] }: Slots): string | undefined {
  return (
    container ??
    volume ??
    amounts.find(
      (text) =>
        !isSalt(text) && attempt(() => readQuantity('volume', text, { field: 'volume' })) !== undefined,
    )
  );
}

/** Grams in a litre by the label of the mix. */
function labelIn({ strength }: Slots): string | undefined {
  return strength !== undefined && strength.endsWith('g/l') ? strength : undefined;
}

/** Salt is weighed, or measured in cups. */
function isSalt(text: string): boolean {
  return isMass(text) || /\bcups?\b/.test(text);
}

function isConductivity(text: string): boolean {
  return attempt(() => readSalinity(text, { field: 'reading' }))?.scale === 'mS/cm';
}
