import type { Frame } from '../../../core/language/frame.ts';
import type { Said } from '../../../core/language/said.ts';
import type { NumberSpan } from '../../../core/language/scan/number-span.ts';
import { parameter } from '../../../core/water/parameter.ts';
import { convertCommand } from '../../convert.ts';
import { convertSalinityCommand } from '../../salinity/convert.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';

export const convertRows: readonly Row[] = [
  {
    kind: 'convert',
    label: 'The same in other units',
    uses: [
      'of',
      'levels',
      'now',
      'was',
      'wanted',
      'change',
      'volume',
      'container',
      'amount',
      'box',
      'lengths',
      'lux',
      'light',
      'span',
      'temperature',
      'otherTemperature',
    ],
    answer: (frame, context) => {
      const { of, box } = frame.slots;
      if (box !== undefined) return call(convertCommand, { amount: box }, context);
      const said = oneIn(frame);
      if (said === undefined) return undefined;
      const { text, number } = said;
      const { temperature } = frame.slots;
      if (isSalinity(said)) return call(convertSalinityCommand, { reading: text, temperature }, context);
      const named = isClear(number) || of === undefined ? undefined : parameter(of);
      const isOf = named !== undefined && (number.unit === '' || number.kinds.includes(named.kind));
      const amount = number.unit === '' && isOf ? `${text} ${named.unit}` : text;
      return call(convertCommand, { amount, of: isOf ? named.label : undefined }, context);
    },
  },
];

/** The one quantity of a message: with a unit, else a level, else the first. */
function oneIn({ reading: { said } }: Frame): Said | undefined {
  const withUnit = said.find(({ number }) => number.kinds.length > 0 && !number.kinds.includes('moment'));
  return withUnit ?? said.find(({ of }) => of !== 'nothing') ?? said[0];
}

function isSalinity({ of, number: { kinds } }: Said): boolean {
  const isBare = kinds.length === 0 && of === 'salinity';
  return isBare || kinds.some((kind) => kind === 'salinity' || kind === 'gravity' || kind === 'conductivity');
}

/** Whether the unit says by itself what is measured: "ppm" does not. */
function isClear({ kinds }: NumberSpan): boolean {
  return kinds.length === 1;
}
