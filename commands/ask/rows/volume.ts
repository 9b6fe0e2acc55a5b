import { primer } from '../../../core/care/primers/cards.ts';
import { takenOff, type TakenOff } from '../../../core/language/air-gap.ts';
import { met } from '../../../core/language/met.ts';
import type { Said } from '../../../core/language/said.ts';
import type { Slots } from '../../../core/language/slots.ts';
import { answer, type Answer } from '../../answer.ts';
import { action } from '../../calls.ts';
import type { OwnContext } from '../../command.ts';
import { fixed, volume as volumeText } from '../../../core/quantity/format.ts';
import { readQuantity } from '../../../core/quantity/read.ts';
import { readSize } from '../../../core/tank/size.ts';
import { askedVolume } from '../../tank/asked-volume.ts';
import { rangeFact } from '../../tank/volume-parts.ts';
import { netCommand } from '../../dose/net.ts';
import { cardAnswer } from '../../primer/card-answer.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';
import { attempt } from './attempt.ts';
import { boxWithUnit, unitOf, whichUnit } from './box-unit.ts';

export const volumeRows: readonly Row[] = [
  {
    kind: 'volume',
    label: 'How much water my tank holds',
    uses: ['box', 'lengths', 'volume', 'container', 'salt', 'change', 'amount', 'amounts'],
    answer: ({ slots, reading: { scanned, said } }, context) =>
      ofBox(met(scanned, 'looks.cube') ? cubed(slots) : slots, takenOff(scanned, said.filter(isLength))) ??
      ofGlass(slots, context) ??
      cardAnswer(primer('net volume')),
  },
];

/** "an 18 inch cube": one side stands for three. */
function cubed(slots: Slots): Slots {
  const [side] = slots.lengths ?? [];
  if (slots.box !== undefined || side === undefined) return slots;
  const [number = '', ...unit] = side.split(' ');
  return { ...slots, box: [`${number} x ${number} x ${number}`, ...unit].join(' ') };
}

/** The box is the first of the lengths. */
const SIDES = 3;

/** The full box, and what takes away from it. */
function ofBox({ box, lengths = [], amounts = [], container }: Slots, off: TakenOff): Answer | undefined {
  if (box === undefined) return undefined;
  const amount = boxWithUnit(box, lengths);
  if (amount === undefined)
    return whichUnit(box, (size, label) => action(label, 'convert', { amount: size }));
  const { points, steps = [], sources } = primer('net volume');
  const rock = amounts.find((text) => /(?:kg|lbs?)$/.test(text));
  const height = waterHeight(amount, off.gap);
  const contents = { height, sand: inLength(off.sand, amount), rock, sump: container };
  const water = askedVolume({ size: amount, measured: 'inside', ...contents }, undefined);
  const isFull = rock === undefined && off.sand === undefined;
  return answer({
    headline: `About ${litresAndGallons(water.netL.likely)} of water${isFull ? ', less what rock and sand take' : rock === undefined ? ', less what rock takes' : ''}.`,
    read: [
      'whether inside or outside the glass is not said: taken as inside',
      ...(off.isHand === true ? [`a hand’s width of air taken as ${off.gap ?? ''} (common practice)`] : []),
      ...water.read,
      ...lengths
        .slice(SIDES)
        .filter((text) => text !== off.gap && text !== off.sand)
        .map((text) => `not used: ${text}`),
    ],
    facts: [rangeFact(water.netL), ...water.facts, ...points.map(([label, value]) => ({ label, value }))],
    steps,
    working: water.working,
    cautions: water.cautions,
    sources: [...new Set([...water.sources, ...sources])],
    next: [action('Keep this tank', 'tank new', { size: amount, ...contents })],
  });
}

/** Lengths of a message in order, as `lengths` has them. */
function isLength({ part, number }: Said): boolean {
  const isOther = number.kinds.includes('volume') || number.kinds.includes('heads');
  return (part === 'length' || part === 'system') && !isOther;
}

/** How high the water stands in a box with so much air at the top; undefined where neither is known. */
function waterHeight(box: string, gap: string | undefined): string | undefined {
  if (gap === undefined) return undefined;
  const air = inLength(gap, box);
  return attempt(() => {
    const high =
      readSize(box, 'box', 'size').heightCm - readQuantity('length', air ?? '', { field: 'height' }).value;
    return high > 0 ? `${Number(high.toFixed(2))} cm` : undefined;
  });
}

/** A bare length has the unit of the box. */
function inLength(text: string | undefined, box: string): string | undefined {
  return text === undefined || unitOf(text) !== undefined ? text : `${text} ${unitOf(box) ?? 'cm'}`;
}

/** Both, since glass is sold in either. */
function litresAndGallons(volumeL: number): string {
  return `${volumeText(volumeL)} (${fixed(volumeL / LITRES_PER_US_GALLON, 0)} US gal)`;
}

const LITRES_PER_US_GALLON = readQuantity('volume', '1 us gal', { field: 'volume' }).value;

/** "my 50 only holds 38": what it does to dose for the glass. */
function ofGlass({ volume, container, lengths = [], salt, change }: Slots, context: OwnContext) {
  const glass = container ?? lengths[0];
  if (glass === undefined || volume === undefined) return undefined;
  const goal = change === undefined ? undefined : `+${change}`;
  return attempt(() => call(netCommand, { glass, volume, with: salt, goal }, context));
}
