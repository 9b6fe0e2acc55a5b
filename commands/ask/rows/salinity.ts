import { percentOfSalt, readingOff } from '../../../core/language/reading-off.ts';
import { isByTopOff } from '../../../core/language/salt-top-off.ts';
import { inPpt } from '../../../core/water/salinity-scale.ts';
import { readSalinity } from '../../../core/water/salinity-reading.ts';
import { adjustCommand } from '../../salinity/adjust.ts';
import { checkCommand } from '../../salinity/check.ts';
import { convertSalinityCommand } from '../../salinity/convert.ts';
import { kitsCommand } from '../../water/kits.ts';
import { call } from '../../called.ts';
import type { Answer } from '../../answer.ts';
import type { Row } from '../row.ts';
import { attempt } from './attempt.ts';
import { followed } from './led.ts';
import { levelsOf } from './levels-of.ts';
import { mixRow } from './mix.ts';
import { trusting, twoSalinities } from './trusted-reading.ts';
import { asksPace, paceSaid } from './pace.ts';

export const salinityRows: readonly Row[] = [
  {
    kind: 'salinity-convert',
    label: 'ask.kindSalinityConvert',
    needs: [{ oneOf: ['levels', 'share'], ask: 'ask.instrumentReads' }],
    uses: [
      'levels',
      'now',
      'was',
      'other',
      'share',
      'shares',
      'counts',
      'temperature',
      'otherTemperature',
      'salinity',
    ],
    answer: (frame, context) => {
      const {
        slots,
        reading: { scanned, said },
      } = frame;
      const temperature = slots.otherTemperature ?? slots.temperature;
      const convert = (reading: string): Answer =>
        isConductivity(reading)
          ? call(checkCommand, { reading, temperature }, context)
          : call(convertSalinityCommand, { reading, temperature }, context);
      const off = readingOff(scanned, said);
      const [level, ...others] = levelsOf(slots, 'salinity').filter(({ text }) => text !== off?.from);
      const percent = percentOfSalt(scanned, said);
      const reading = off?.reading ?? percent ?? level?.text;
      if (reading === undefined) return undefined;
      const given = convert(reading);
      if (off !== undefined) return { ...given, read: [off.words, ...given.read] };
      if (percent !== undefined) return given;
      // "1.0266 and 36, are they the same": the other one beside it.
      const more = others.flatMap(({ text }) => attempt(() => convert(inPpt(text))) ?? []);
      return followed(
        given,
        more.map(({ headline }) => headline),
      );
    },
  },
  {
    kind: 'salinity-adjust',
    label: 'ask.kindSalinityAdjust',
    needs: [
      {
        oneOf: ['now', 'was', 'wanted'],
        ask: 'ask.tankReads',
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
      const by = isByTopOff(frame.reading.scanned) ? ('top-off' as const) : undefined;
      const goal = last('wanted', 'target') ?? last('limit');
      if (two?.trusted !== undefined) return trusting(two, { goal, volume: slots.volume, by }, context);
      // "raise 1.023 to 1.026": the first of two that are wanted is where it is.
      const [first, second] = levelsOf(slots, 'salinity', 'wanted', 'target');
      const now = last('now') ?? last('was') ?? (second === undefined ? undefined : first?.text);
      if (two !== undefined && isThere(now, goal) && last('was') === undefined)
        return call(kitsCommand, { of: 'salinity', first: two.texts[0], second: two.texts[1] }, context);
      if (now === undefined && goal === undefined) return undefined;
      const mixed = last('other');
      const fresh = by === undefined ? mixed : undefined;
      const input = { now, goal: goal ?? (by === undefined ? undefined : mixed), volume: slots.volume, by };
      if (fresh === undefined) return call(adjustCommand, input, context);
      const given = attempt(() => call(adjustCommand, { ...input, fresh }, context));
      if (given !== undefined) return given;
      // Another tank's, or too weak to raise this one with.
      const without = call(adjustCommand, input, context);
      return {
        ...without,
        unused: [...without.unused, `${fresh} (water of it would not bring the tank there)`],
      };
    },
  },
  mixRow,
];

/** Whether it reads where it should be: then another reading decides, and not this one. */
function isThere(now: string | undefined, goal = '35 ppt'): boolean {
  const [reads, aim] = [now, goal].map((text) =>
    text === undefined
      ? undefined
      : attempt(() => readSalinity(inPpt(text), { field: 'now' }).practicalSalinity),
  );
  return reads !== undefined && aim !== undefined && Math.abs(reads - aim) < 1;
}

function isConductivity(text: string): boolean {
  return attempt(() => readSalinity(text, { field: 'reading' }))?.scale === 'mS/cm';
}
