import { primer } from '../../../core/care/primers/cards.ts';
import { met } from '../../../core/language/met.ts';
import type { Slots } from '../../../core/language/slots.ts';
import { answer, type Answer } from '../../answer.ts';
import { action } from '../../calls.ts';
import type { OwnContext } from '../../command.ts';
import { fixed, volume as volumeText } from '../../../core/quantity/format.ts';
import { readQuantity } from '../../../core/quantity/read.ts';
import { askedVolume } from '../../tank/asked-volume.ts';
import { rangeFact } from '../../tank/volume-parts.ts';
import { netCommand } from '../../dose/net.ts';
import { cardAnswer } from '../../primer/card-answer.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';
import { attempt } from './attempt.ts';
import { boxWithUnit, whichUnit } from './box-unit.ts';

export const volumeRows: readonly Row[] = [
  {
    kind: 'volume',
    label: 'How much water my tank holds',
    uses: ['box', 'lengths', 'volume', 'container', 'salt', 'change', 'amounts'],
    answer: ({ slots, reading: { scanned } }, context) =>
      ofBox(met(scanned, 'looks.cube') ? cubed(slots) : slots) ??
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
function ofBox({ box, lengths = [], amounts = [], container }: Slots): Answer | undefined {
  if (box === undefined) return undefined;
  const amount = boxWithUnit(box, lengths);
  if (amount === undefined)
    return whichUnit(box, (size, label) => action(label, 'convert', { amount: size }));
  const { points, steps = [], sources } = primer('net volume');
  const rock = amounts.find((text) => /(?:kg|lbs?)$/.test(text));
  const water = askedVolume({ size: amount, measured: 'inside', rock, sump: container }, undefined);
  return answer({
    headline: `About ${litresAndGallons(water.netL.likely)} of water${rock === undefined ? ', less what rock and sand take' : ''}.`,
    read: [
      'whether inside or outside the glass is not said: taken as inside',
      ...water.read,
      ...lengths.slice(SIDES).map((text) => `not used: ${text}`),
    ],
    facts: [rangeFact(water.netL), ...water.facts, ...points.map(([label, value]) => ({ label, value }))],
    steps,
    working: water.working,
    cautions: water.cautions,
    sources: [...new Set([...water.sources, ...sources])],
    next: [action('Keep this tank', 'tank new', { size: amount, rock, sump: container })],
  });
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
