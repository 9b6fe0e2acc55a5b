import { z } from 'zod';
import { anyLampLuxPerPpfd, lamp, lampIds, type LampId } from '../../core/light/lamp.ts';
import { ppfdSpan, type Span } from '../../core/light/lux.ts';
import { fixed, significant } from '../../core/quantity/format.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { answer, type Answer, type Fact } from '../answer.ts';
import { defineCommand } from '../command.ts';
import { quantityOption } from '../options.ts';

export const luxCommand = defineCommand({
  path: ['light', 'lux'],
  summary: 'What a reading in lux says about PAR, and what not: a range, and why',
  example: '/light lux reading:9000 lux lamp:led',
  options: z.strictObject({
    reading: quantityOption('illuminance', 'What the lux meter or phone shows, e.g. 9000 lux'),
    lamp: z
      .enum(lampIds)
      .optional()
      .describe('What shines: blue-white = blue, up to half white; blue = blue only; led = mix unknown'),
  }),
  run: (input): Answer => {
    const reading = readQuantity('illuminance', input.reading, { field: 'reading' });
    const known = input.lamp === undefined ? undefined : lamp(input.lamp);
    const factors = known?.luxPerPpfd ?? anyLampLuxPerPpfd;
    const span = spanText(ppfdSpan(reading.value, factors));
    const lux = `${fixed(reading.value, 0)} lux`;
    const mixUnknown = input.lamp === undefined || input.lamp === 'led';
    const mayBeBlue = mixUnknown || input.lamp === 'blue' || input.lamp === 'blue-white';
    return answer({
      headline: `${lux} under ${known?.name ?? 'an unnamed lamp'} cannot be turned into one PAR: it could be anything from ${span}.`,
      read: [
        `${lux}, ${known === undefined ? 'no lamp named, so every kind is counted' : `taken as ${known.name}`}`,
        'light at the spot of the sensor; at the coral, under water, it is less',
        ...reading.notes,
      ],
      isList: true,
      facts: shownFor(input.lamp).map((id) => lampFact(id, reading.value)),
      steps: [
        'Borrow or rent a quantum meter that goes under water, and measure at the coral.',
        'Use the phone only to compare: same phone, same spot, same colour setting, before and after a change.',
        ...(mixUnknown
          ? [
              'Which channels are on? Name the mix as lamp (white, blue-white or blue): the range gets narrower.',
            ]
          : []),
      ],
      working: [
        `PAR = lux / (lux per PAR): ${lux} / ${significant(factors.high, 3)} to ${lux} / ${significant(factors.low, 3)}`,
        ...(known === undefined ? [] : [`lux per PAR: ${known.basis}`]),
        'lux weights light as the eye does, most in the green and hardly at all in the blue corals are lit with',
      ],
      dangers: ['Do not set light for corals by this range.'],
      cautions: [
        'A phone clips in bright light and may not see violet or blue as a lux meter should. Never take it under water or hold it loosely over the tank.',
        ...(mayBeBlue ? ['Strong violet channels push the true PAR higher still.'] : []),
      ],
      sources: ['cie', ...(known?.sources ?? (['si19', 'cie15', 'th83'] as const))],
    });
  },
});

/** The kinds listed for comparison: those the lamp may turn out to be. */
function shownFor(named: LampId | undefined): readonly LampId[] {
  if (named === undefined) return lampIds.filter((id) => id !== 'led');
  return named === 'led' ? ['white', 'blue-white', 'blue'] : [named];
}

function lampFact(id: LampId, lux: number): Fact {
  const { name, luxPerPpfd } = lamp(id);
  const factor = `${significant(luxPerPpfd.low, 3)} to ${significant(luxPerPpfd.high, 3)} lux per PAR`;
  return { label: name, value: `${spanText(ppfdSpan(lux, luxPerPpfd))} (${factor})` };
}

/** Both ends to two figures: the range is too wide for more, but where they would print the same. */
function spanText({ low, high }: Span): string {
  const digits = rough(low, 2) === rough(high, 2) ? 3 : 2;
  const [from, to] = [rough(low, digits), rough(high, digits)];
  return from === to ? `about ${to} PAR` : `about ${from} to ${to} PAR`;
}

function rough(value: number, digits: number): string {
  return significant(Number(value.toPrecision(digits)), digits);
}
