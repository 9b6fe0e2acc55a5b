import { z } from 'zod';
import type { CoralEntry } from '../../core/corals/entry.ts';
import { lampStrengths, lightFor, type CoralLight, type LightSigns } from '../../core/corals/light-need.ts';
import { origins, type Origin } from '../../core/corals/scene.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { action } from '../calls.ts';
import { defineCommand } from '../command.ts';
import { askedKind, tellingName } from '../coral/asked-kind.ts';
import { shortFirst } from '../coral/short-first.ts';
import { quantityOption, textOption } from '../options.ts';
import { measuredPart } from './range-measured.ts';
import { unmeasuredPart } from './range-unmeasured.ts';
import { hereFact, readingView, tankView, type View } from './range-view.ts';
import { readPar, readSetting, TOO_MUCH_IS_COMMONER } from './words.ts';
import { say } from '../../core/wording/say.ts';

export const rangeCommand = defineCommand({
  path: ['light', 'range'],
  summary: 'How much light a coral wants, where it begins, and the raise week by week',
  example: '/light range coral:torch origin:wild reading:180 PAR setting:60 %',
  options: z.strictObject({
    coral: textOption('A coral by any name', { suggest: 'coral', max: 80 }),
    origin: z.enum(origins).describe('Where the piece grew: it sets how bright it begins').optional(),
    reading: quantityOption('light', 'PAR measured at its spot, e.g. 120 PAR').optional(),
    setting: quantityOption('share', 'The lamp setting now, e.g. 60 %').optional(),
    lamp: z
      .enum(lampStrengths)
      .describe('Without a meter: a weak lamp for this tank, or a strong one')
      .optional(),
    at: textOption('A spot in your tank, for its light readings: "left, back, low"').optional(),
  }),
  run: (input): Answer => rangeAnswer(input, undefined),
  own: {
    when: ({ at }) => at !== undefined,
    run: ({ at, ...input }, context): Answer =>
      rangeAnswer(input, at === undefined ? undefined : { at, ...tankView(at, context) }),
  },
});

interface RangeInput {
  readonly coral: string;
  readonly origin?: Origin | undefined;
  readonly reading?: string | undefined;
  readonly setting?: string | undefined;
  readonly lamp?: (typeof lampStrengths)[number] | undefined;
}

function rangeAnswer(input: RangeInput, place: (View & { readonly at: string }) | undefined): Answer {
  const { entry, read } = askedKind(input.coral);
  const origin = input.origin ?? 'unknown';
  const need = lightFor(entry, origin);
  const reading = input.reading === undefined ? undefined : readPar(input.reading, 'reading');
  const view = reading === undefined ? place : readingView(reading.value);
  const setting = input.setting === undefined ? undefined : readSetting(input.setting, 'setting');
  const part =
    view?.here === undefined
      ? unmeasuredPart(entry, need, setting?.value, input.lamp)
      : measuredPart({ entry, need, here: view.here, settingPercent: setting?.value });
  const coral = tellingName(entry);
  return answer({
    ...part,
    read: [
      ...read,
      ...(entry.photosynthetic ? [originRead(input.origin)] : []),
      ...(place?.read ?? []),
      ...part.read,
      ...(reading?.notes ?? []),
      ...(setting?.notes ?? []),
    ],
    facts: shortFirst([
      ...(place === undefined ? [] : [hereFact(place)]),
      ...part.facts,
      ...needFacts(entry, need),
      ...signFacts(need),
    ]),
    cautions: [
      ...(entry.photosynthetic ? [TOO_MUCH_IS_COMMONER] : []),
      ...part.cautions,
      ...(place?.cautions ?? []),
    ],
    sources: ['practice'],
    next: [
      ...(view?.here === undefined
        ? [
            action(
              say('light.withParReading'),
              'light range',
              { coral, ...(input.origin === undefined ? {} : { origin: input.origin }) },
              ['reading', 'setting'],
            ),
          ]
        : []),
      ...(place === undefined || place.here !== undefined
        ? []
        : [action(say('light.enterReadingSpot'), 'light measured', { at: place.at }, ['par'])]),
      action(say('light.about', { value: entry.names.common[0] }), 'coral about', { coral }),
    ],
  });
}

function originRead(origin: Origin | undefined): string {
  return origin === undefined ? 'where it grew is not said, so it begins a little lower' : `grown: ${origin}`;
}

function needFacts(entry: CoralEntry, need: CoralLight): readonly Fact[] {
  const { lowPpfd, highPpfd, startPpfd, rangeBasis, startBasis, why } = need;
  return [
    {
      label: entry.photosynthetic ? 'range' : 'kept at, without needing it',
      value: `${lowPpfd} to ${highPpfd} PAR (${rangeBasis})`,
    },
    ...(entry.photosynthetic
      ? [{ label: 'begins near', value: `${startPpfd} PAR (${startBasis}). ${why}` }]
      : []),
  ];
}

/** Too much first: it is the commoner harm. */
function signFacts({ tooMuch, tooLittle, signsBasis }: CoralLight): readonly Fact[] {
  const words = (seen: LightSigns): string => `${seen.signs.join('; ')} (${signsBasis}). ${seen.action}`;
  return [
    { label: 'signs of too much', value: words(tooMuch) },
    { label: 'signs of too little', value: words(tooLittle) },
  ];
}
