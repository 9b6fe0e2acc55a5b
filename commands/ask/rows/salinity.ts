import { readSalinity } from '../../../core/water/salinity-reading.ts';
import { adjustCommand } from '../../salinity/adjust.ts';
import { batchCommand } from '../../salinity/batch.ts';
import { checkCommand } from '../../salinity/check.ts';
import { convertSalinityCommand } from '../../salinity/convert.ts';
import { mixCommand } from '../../salinity/mix.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';
import { attempt } from './attempt.ts';
import { levelsOf } from './levels-of.ts';
import { asksPace, paceSaid } from './pace.ts';

export const salinityRows: readonly Row[] = [
  {
    kind: 'salinity-convert',
    label: 'A salinity on every scale',
    needs: [{ oneOf: ['levels'], ask: 'What does the instrument read?' }],
    uses: ['levels', 'now', 'was', 'other', 'temperature', 'otherTemperature', 'salinity'],
    answer: ({ slots }, context) => {
      const [level] = levelsOf(slots, 'salinity');
      if (level === undefined) return undefined;
      const temperature = slots.otherTemperature ?? slots.temperature;
      return isConductivity(level.text)
        ? call(checkCommand, { reading: level.text, temperature }, context)
        : call(convertSalinityCommand, { reading: level.text, temperature }, context);
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
      const now = last('now') ?? last('was');
      const goal = last('wanted', 'target') ?? last('limit');
      const input = { now, goal, volume: slots.volume, fresh: last('other') };
      return now === undefined && goal === undefined ? undefined : call(adjustCommand, input, context);
    },
  },
  {
    kind: 'salinity-mix',
    label: 'Salt for a batch of new water',
    needs: [{ oneOf: ['container', 'volume'], ask: 'How much salt water do you mix?' }],
    uses: ['container', 'volume', 'levels', 'now', 'other', 'wanted', 'amount', 'salt'],
    answer: ({ slots }, context) => {
      const volume = slots.container ?? slots.volume;
      if (volume === undefined) return undefined;
      const goal = levelsOf(slots, 'salinity', 'wanted', 'target').at(-1)?.text;
      const reads = levelsOf(slots, 'salinity', 'other', 'now').at(-1)?.text;
      return reads === undefined
        ? call(mixCommand, { volume, goal, amount: slots.amount }, context)
        : call(batchCommand, { volume, now: reads, goal }, context);
    },
  },
];

function isConductivity(text: string): boolean {
  return attempt(() => readSalinity(text, { field: 'reading' }))?.scale === 'mS/cm';
}
