import { primer } from '../../../core/care/primers/cards.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import type { Level } from '../../../core/language/slots.ts';
import { readSalinity } from '../../../core/water/salinity-reading.ts';
import type { Answer } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { cardAnswer } from '../../primer/card-answer.ts';
import { checkCommand } from '../../salinity/check.ts';
import { kitsCommand } from '../../water/kits.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';
import { attempt } from './attempt.ts';
import { levelsOf } from './levels-of.ts';

export const instrumentRows: readonly Row[] = [
  {
    kind: 'instrument',
    label: 'Can this instrument be believed',
    uses: ['levels', 'now', 'was', 'other', 'temperature', 'otherTemperature', 'salinity'],
    answer: (frame, context) =>
      checked(frame, context) ?? (readsTank(frame) ? compared(frame, context) : undefined) ?? cardFor(frame),
  },
  {
    kind: 'kits-disagree',
    label: 'Two tests of one water',
    needs: [{ oneOf: ['levels'], ask: 'What was tested, and what did the one and the other read?' }],
    uses: ['levels', 'now', 'was', 'other', 'of', 'salinity', 'temperature'],
    answer: (frame, context) => compared(frame, context) ?? checked(frame, context) ?? cardFor(frame),
  },
];

/** Whether one of the readings is of the tank: two of standards are no comparison. */
function readsTank({ slots: { levels = [] } }: Frame): boolean {
  return levels.some(({ part }) => part === 'now' || part === 'was');
}

/** The salinity of a 35 ppt standard, and how near a reading of it must be to be its name and not its reading. */
const STANDARD_PPT = 35;
const NEAR_PPT = 0.05;

/** A reading of the tank beside one of the standard, or a conductivity at a temperature. */
function checked({ slots, reading: { scanned } }: Frame, context: OwnContext): Answer | undefined {
  const said = levelsOf(slots, 'salinity');
  const reading = said.find(({ part }) => part === 'now' || part === 'was')?.text;
  const others = said.filter(({ part }) => part === 'other');
  const isNamed = said.length > 2 || others.length > 1;
  const standard = others.find((level) => !isNamed || !isName(level));
  const isOnStandard =
    standard !== undefined && met(scanned, 'hardware.calibration', 'parts.fresh', 'sums.recipe');
  if (reading === undefined) return undefined;
  const temperature = slots.otherTemperature ?? slots.temperature;
  const isProbe = attempt(() => readSalinity(reading, { field: 'reading' }))?.scale === 'mS/cm';
  if (!isOnStandard && !isProbe) return undefined;
  const input = { reading, standard: isOnStandard ? standard.text : undefined, temperature };
  return call(checkCommand, input, context);
}

/** "the 35 ppt fluid": what it is, and not what an instrument showed. */
function isName({ text }: Level): boolean {
  const read = attempt(() => readSalinity(text, { field: 'standard' }));
  return read?.scale !== 'SG' && Math.abs((read?.practicalSalinity ?? 0) - STANDARD_PPT) < NEAR_PPT;
}

/** Two readings of one parameter, by two kits or instruments. */
function compared({ slots }: Frame, context: OwnContext): Answer | undefined {
  const { levels = [], of } = slots;
  const read = levels.filter(({ part }) => part === 'now' || part === 'was' || part === 'other');
  const about = read.find((level) => level.of === of) ?? read[0];
  const [first, second, more] = read.filter((level) => level.of === about?.of);
  if (first === undefined || second === undefined || more !== undefined) return undefined;
  return call(kitsCommand, { of: first.of, first: first.text, second: second.text }, context);
}

/** The card of the instrument where there is no sum to make. */
function cardFor({ slots: { of }, reading: { scanned } }: Frame): Answer {
  if (of === 'ph' || met(scanned, 'hardware.phMeter')) return cardAnswer(primer('pH'));
  if (of === 'salinity' || met(scanned, 'hardware.salinityMeter')) return cardAnswer(primer('salinity'));
  return cardAnswer(primer('test kits'));
}
