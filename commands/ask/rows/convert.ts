import type { Frame } from '../../../core/language/frame.ts';
import type { Said } from '../../../core/language/said.ts';
import type { NumberSpan } from '../../../core/language/scan/number-span.ts';
import { parameter } from '../../../core/water/parameter.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { phosphorusText } from '../../../core/language/phosphorus-said.ts';
import { convert, convertCommand } from '../../convert.ts';
import { convertSalinityCommand } from '../../salinity/convert.ts';
import { call } from '../../called.ts';
import { attempt } from './attempt.ts';
import { followed } from './led.ts';
import type { Row } from '../row.ts';

export const convertRows: readonly Row[] = [
  {
    kind: 'convert',
    label: 'ask.kindConvert',
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
      const { box } = frame.slots;
      if (box !== undefined) return call(convertCommand, { amount: box }, context);
      const said = oneIn(frame);
      if (said === undefined) return undefined;
      const given = converted(frame, said, context);
      // "78.6 F and 26 C, which is hotter": the others of its kind as well.
      const others = frame.reading.said.filter((one) => one !== said && isAlike(one, said));
      const more = others.flatMap((one) => attempt(() => converted(frame, one, context)) ?? []);
      return followed(
        given,
        more.map(({ headline }) => headline),
      );
    },
  },
];

function converted(frame: Frame, said: Said, context: OwnContext): Answer {
  const { of, temperature } = frame.slots;
  const { number } = said;
  const { text } = frame.reading.scanned;
  if (isSalinity(said)) return call(convertSalinityCommand, { reading: said.text, temperature }, context);
  const phosphorus = phosphorusText(text, number);
  if (phosphorus !== undefined) return call(convertCommand, { amount: phosphorus, of: 'phosphate' }, context);
  // "78 degrees": of warmth, by its size in one scale or the other.
  if (number.unit === '' && number.kinds.includes('temperature'))
    return call(convertCommand, { amount: said.text, of: parameter('temperature').label }, context);
  const named = isClear(number) || of === undefined ? undefined : parameter(of);
  const isOf = named !== undefined && (number.unit === '' || number.kinds.includes(named.kind));
  if (number.unit === '' && !isOf)
    return call(convertCommand, { amount: withUnitSaid(frame, said) }, context);
  // A bare alkalinity tells its unit by its size: 178 is no dKH.
  const amount = number.unit === '' && isOf && of !== 'alkalinity' ? `${said.text} ${named.unit}` : said.text;
  return call(convertCommand, { amount, of: isOf ? named.label : undefined }, context);
}

/** "gallons to litres for 37": the unit that was named first is the number's. */
function withUnitSaid({ reading: { scanned } }: Frame, { text, number }: Said): string {
  if (number.unit !== '') return text;
  const units = scanned.tokens.flatMap(({ word }) => (word === 'in' ? [] : [`${text} ${word}`]));
  return units.find((amount) => attempt(() => convert(amount)) !== undefined) ?? text;
}

function isAlike(one: Said, { number: { kinds } }: Said): boolean {
  return one.number.kinds.length > 0 && one.number.kinds.some((kind) => kinds.includes(kind));
}

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
