import { met } from '../../../core/language/met.ts';
import type { Frame } from '../../../core/language/frame.ts';
import type { NumberSpan } from '../../../core/language/scan/number-span.ts';
import type { UnitKind } from '../../../core/language/scan/units.ts';
import { wattHoursOf } from '../../../core/gear/battery.ts';
import { significant } from '../../../core/quantity/format.ts';
import type { Answer } from '../../answer.ts';
import { batteryAnswer, runTimeAnswer } from '../../gear/battery-answer.ts';
import { heaterAnswer, stuckAnswer, type HeaterSaid } from '../../gear/heater-answer.ts';
import { particularOf } from '../../primer/particular.ts';
import { readableAs } from './readable-as.ts';
import { tokensWithin } from './words-beside.ts';

/** The card a message is after with the sum for what it says: a heater's watts, a battery; undefined where it lacks a number. */
export function gearSum(frame: Frame): Answer | undefined {
  const card = particularOf(frame);
  if (card === undefined) return undefined;
  switch (frame.cards[0]?.name) {
    case 'heater size':
    case 'heater failure':
      return heaterSum(frame, card);
    case 'backup power':
      return batterySum(frame, card);
    default:
      return undefined;
  }
}

function heaterSum(frame: Frame, card: Answer): Answer | undefined {
  const said = heaterSaid(frame);
  if (said === undefined) return undefined;
  const { scanned } = frame.reading;
  const isSize = frame.cards[0]?.name === 'heater size' || met(scanned, 'sums.enough');
  if (isSize || (said.watts === undefined && said.roomC !== undefined)) return heaterAnswer(card, said);
  return said.watts === undefined ? undefined : stuckAnswer(card, said, said.watts);
}

function heaterSaid(frame: Frame): HeaterSaid | undefined {
  const { volume, otherTemperature } = frame.slots;
  if (volume === undefined) return undefined;
  const isBare = /^[\d.]+$/.test(volume);
  // Whoever gives the room in Fahrenheit has a tank in US gallons.
  const text = isBare && /f/i.test(otherTemperature ?? '') ? `${volume} gal` : volume;
  const volumeL = readableAs('volume', text);
  if (volumeL === undefined) return undefined;
  const roomC = otherTemperature === undefined ? undefined : readableAs('temperature', otherTemperature);
  const litres = `${significant(volumeL, 3)} L`;
  const water = /^[\d.]+ ?(?:l|lit)/i.test(text)
    ? litres
    : `${text.replace(/^([\d.]+) .*gal.*/i, '$1 gal')} (${litres})`;
  return { water, volumeL, roomC, watts: onlyOf(wattsOf(frame)) };
}

/** Amounts of watts, "two 150 w" both of them. */
function wattsOf(frame: Frame): readonly number[] {
  const { scanned } = frame.reading;
  const { numbers } = scanned;
  return ofKind(frame, 'watts').map((one) => {
    const before = numbers[numbers.indexOf(one) - 1];
    const isCount =
      before !== undefined &&
      Number.isInteger(before.value) &&
      before.value >= 2 &&
      before.value <= MOST_HEATERS &&
      tokensWithin(scanned, before.end, one.start).every(({ word }) => word === '-');
    return isCount ? before.value * one.value : one.value;
  });
}

/** More than this is no count of heaters. Own choice. */
const MOST_HEATERS = 4;

/** Of several there is no telling which are the ones that run. */
function onlyOf([only, other]: readonly number[]): number | undefined {
  return other === undefined ? only : undefined;
}

function batterySum(frame: Frame, card: Answer): Answer | undefined {
  const watts = wattsOf(frame);
  if (watts.length === 0 || met(frame.reading.scanned, 'gear.heater')) return undefined;
  // What was comes before what is wanted.
  const hours = (frame.slots.spans ?? []).flatMap((text) => readableAs('hours', text) ?? []).at(-1);
  const [wh] = ofKind(frame, 'wattHours');
  const [ah] = ofKind(frame, 'ampHours');
  const load = { watts, hours };
  if (wh !== undefined) return runTimeAnswer(card, `${significant(wh.value)} Wh`, wh.value, load);
  if (ah !== undefined)
    return runTimeAnswer(card, `${significant(ah.value)} Ah at 12 V`, wattHoursOf(ah.value), load);
  return hours === undefined ? undefined : batteryAnswer(card, watts, hours);
}

function ofKind({ reading }: Frame, kind: UnitKind): readonly NumberSpan[] {
  return reading.scanned.numbers.filter(({ kinds }) => kinds.includes(kind));
}
