import { inPpt } from '../../../core/water/salinity-scale.ts';
import { primer } from '../../../core/care/primers/cards.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { namesStandard } from '../../../core/language/standard-named.ts';
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
import { again, onTwoPoints } from './instrument-twice.ts';
import { levelsOf } from './levels-of.ts';
import { isFresh, isName, readable, sizeOf } from './shown-salinity.ts';
import { trusting, twoSalinities } from './trusted-reading.ts';

export const instrumentRows: readonly Row[] = [
  {
    kind: 'instrument',
    label: 'ask.kindInstrument',
    uses: ['levels', 'now', 'was', 'other', 'temperature', 'otherTemperature', 'salinity', 'volume'],
    answer: (frame, context) =>
      trusted(frame, context) ??
      again(frame, context) ??
      known(frame, context) ??
      checked(frame, context) ??
      (readsTank(frame) && !isOfBuffers(frame) ? compared(frame, context) : undefined) ??
      cardFor(frame),
  },
  {
    kind: 'kits-disagree',
    label: 'ask.kindKitsDisagree',
    needs: [{ oneOf: ['levels'], ask: 'ask.whatWasTested' }],
    uses: ['levels', 'now', 'was', 'other', 'of', 'salinity', 'temperature', 'volume'],
    answer: (frame, context) =>
      trusted(frame, context) ?? compared(frame, context) ?? checked(frame, context) ?? cardFor(frame),
  },
];

/** One of two instruments is trusted: what to do with its reading where that was asked, else how far they are apart. */
function trusted(frame: Frame, context: OwnContext): Answer | undefined {
  const two = twoSalinities(frame);
  if (two?.trusted === undefined) return undefined;
  if (met(frame.reading.scanned, 'manner.rise', 'manner.lower', 'sums.riseBy', 'sums.fallBy'))
    return trusting(two, { volume: frame.slots.volume }, context);
  return compared(frame, context);
}

/** Whether one of the readings is of the tank: two of standards are no comparison. */
function readsTank({ slots: { levels = [] } }: Frame): boolean {
  return levels.some(({ part }) => part === 'now' || part === 'was');
}

/** A pH probe read in its buffers as well: those are no readings of the tank. */
function isOfBuffers({ slots: { levels = [] } }: Frame): boolean {
  return levels.filter(({ of, part }) => of === 'ph' && part === 'other').length > 1;
}

/** What it shows in water that is known: fresh, or a standard without a reading of the tank. */
function known({ slots, reading: { scanned } }: Frame, context: OwnContext): Answer | undefined {
  const both = onTwoPoints(slots, scanned);
  if (both !== undefined) return attempt(() => call(checkCommand, both, context));
  const all = levelsOf(slots, 'salinity', 'other', 'now', 'was');
  const [name, more] = all.filter((level) => isName(level) && namesStandard(scanned));
  // "it reads 37 on the 35 fluid": the other number is what it shows there, and none of the tank.
  if (name !== undefined && more === undefined && all.length === 2) {
    const shown = all.find((level) => level !== name);
    return shown === undefined ? undefined : onStandard(shown, context);
  }
  const others = levelsOf(slots, 'salinity', 'other');
  // Of several it is not said which one was the tank's.
  const [read, second] = levelsOf(slots, 'salinity', 'now', 'was');
  const tank = second === undefined ? read?.text : undefined;
  const fresh = others.findLast(({ value }) => isFresh(value));
  if (fresh !== undefined && met(scanned, 'substances.roWater')) {
    const scale = fresh.value >= 1 && fresh.value < 1.01 ? fresh.text : inPpt(fresh.text);
    return attempt(() => call(checkCommand, { fresh: scale, reading: tank }, context));
  }
  if (read !== undefined || others.length === 0 || others.length > 2) return undefined;
  if (!met(scanned, 'hardware.calibration', 'parts.fresh')) return undefined;
  const shown = others.find((level) => !isName(level)) ?? others[0];
  return shown === undefined ? undefined : onStandard(shown, context);
}

function onStandard({ text }: Level, context: OwnContext): Answer | undefined {
  return attempt(() => call(checkCommand, { standard: inPpt(text) }, context));
}

/** A reading of the tank beside one of the standard, or a conductivity at a temperature. */
function checked({ slots, reading: { scanned } }: Frame, context: OwnContext): Answer | undefined {
  const said = levelsOf(slots, 'salinity');
  const reading = said.find(({ part }) => part === 'now' || part === 'was')?.text;
  const others = said.filter(({ part }) => part === 'other');
  const isNamed = said.length > 2 || others.length > 1;
  const isLabel = (level: Level): boolean =>
    (isNamed && isName(level)) || (others.length > 1 && isStandardGravity(level));
  const standard = others.find((level) => !isLabel(level));
  const isOnStandard =
    standard !== undefined && met(scanned, 'hardware.calibration', 'parts.fresh', 'sums.recipe');
  if (reading === undefined) return undefined;
  const temperature = slots.otherTemperature ?? slots.temperature;
  const isProbe = attempt(() => readSalinity(reading, { field: 'reading' }))?.scale === 'mS/cm';
  if (!isOnStandard && !isProbe) return undefined;
  const input = { reading, standard: isOnStandard ? standard.text : undefined, temperature };
  return call(checkCommand, input, context);
}

/** "1.026 on the label, reads 1.023": the gravity that a 35 ppt standard is sold as, 1.0264 rounded or not. */
function isStandardGravity({ value }: Level): boolean {
  return value > 1.0259 && value < 1.0266;
}

/** Two readings of one parameter, by two kits or instruments. */
function compared({ slots }: Frame, context: OwnContext): Answer | undefined {
  const { levels = [], of } = slots;
  const read = levels.filter(({ part }) => part === 'now' || part === 'was' || part === 'other');
  const about = read.find((level) => level.of === of) ?? read[0];
  const mine = read.filter((level) => level.of === about?.of).toSorted((a, b) => sizeOf(a) - sizeOf(b));
  const [first, last] = [mine[0], mine.at(-1)];
  if (first === undefined || last === undefined || mine.length < 2) return undefined;
  const [one, other] =
    mine.length === 2 ? (read.filter((level) => mine.includes(level)) as [Level, Level]) : [first, last];
  const given = call(kitsCommand, { of: one.of, first: readable(one), second: readable(other) }, context);
  if (mine.length === 2) return given;
  const between = mine.slice(1, -1).map(({ text }) => text);
  return {
    ...given,
    read: [
      `the lowest and the highest of ${mine.length}; between them: ${between.join(', ')}`,
      ...given.read,
    ],
  };
}

/** The card of the instrument where there is no sum to make. */
function cardFor({ slots: { of }, reading: { scanned } }: Frame): Answer {
  if (of === 'ph' || met(scanned, 'hardware.phMeter')) return cardAnswer(primer('pH'));
  if (of === 'salinity' || met(scanned, 'hardware.salinityMeter')) return cardAnswer(primer('salinity'));
  return cardAnswer(primer('test kits'));
}
