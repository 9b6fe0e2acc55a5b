import { primer } from '../../../core/care/primers/cards.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { inUnit, volume as volumeText } from '../../../core/quantity/format.ts';
import { forms } from '../../../core/tank/size.ts';
import { say } from '../../../core/wording/say.ts';
import { answer, type Answer } from '../../answer.ts';
import { action } from '../../calls.ts';
import { call } from '../../called.ts';
import type { OwnContext } from '../../command.ts';
import { netCommand } from '../../dose/net.ts';
import { cardAnswer } from '../../primer/card-answer.ts';
import { askedVolume } from '../../tank/asked-volume.ts';
import type { Row } from '../row.ts';
import { attempt } from './attempt.ts';
import { whichUnit } from './box-unit.ts';
import { readableAs } from './readable-as.ts';
import { sumpBySides } from './tank-contents.ts';
import { HAND_CM, tankSaidIn, tankSizeIn } from './tank-size.ts';

export const volumeRows: readonly Row[] = [
  {
    kind: 'volume',
    label: 'ask.kindVolume',
    keepsAll: true,
    uses: ['box', 'lengths', 'volume', 'container', 'salt', 'change', 'amount', 'amounts'],
    answer: (frame, context) =>
      ofSides(frame) ??
      ofSump(frame) ??
      ofGlass(frame, context) ??
      ofShape(frame) ??
      cardAnswer(primer('net volume')),
  },
];

/** More lengths without a place than these: nothing is worked out. Own choice. */
const MOST_LEFT = 2;

/** The full glass, and what takes away from it. */
function ofSides(frame: Frame): Answer | undefined {
  const tank = tankSizeIn(frame);
  if (tank === undefined) return undefined;
  const { said, sides, input, left } = tank;
  if (left.length > MOST_LEFT)
    return answer({
      headline: say('ask.whichSides'),
      tone: 'question',
      read: [`sides ${sides.text}`],
      facts: [{ label: say('ask.couldNotPlace'), value: left.join(', ') }],
      steps: [say('ask.tankAndSumpApart')],
    });
  if (sides.unit === undefined)
    return whichUnit(sides.text, (size, label) => action(label, 'tank new', { ...input, size }));
  const { points, steps = [], sources } = primer('net volume');
  const water = askedVolume(input, undefined);
  const missing = (['rock', 'sand'] as const).filter((what) => input[what] === undefined);
  const less =
    missing.length === 0
      ? ''
      : `, less what ${missing.join(' and ')} ${missing.length > 1 ? 'take' : 'takes'}`;
  const apart = left.length === 0 ? '' : ` Not counted in: ${left.join(', ')}.`;
  return answer({
    headline: `About ${litresAndGallons(water.netL.likely)} of water${less}.${apart}`,
    read: [
      ...(said.measured === undefined && input.glass === undefined
        ? ['whether inside or outside the glass is not said: taken as inside']
        : []),
      ...(said.isHand ? [`a hand’s width of air taken as ${HAND_CM} cm (common practice)`] : []),
      ...water.read,
    ],
    unused: told(frame),
    facts: [...water.facts, ...points.slice(1).map(([label, value]) => ({ label, value }))],
    steps,
    working: water.working,
    cautions: water.cautions,
    sources: [...new Set([...water.sources, ...sources])],
    next: [action(say('ask.keepThisTank'), 'tank new', input)],
  });
}

/** Volumes somebody said of it: what the sides hold is worked out without them. */
function told({ rest }: Frame): readonly string[] {
  return rest.flatMap(({ part, text, number }) =>
    part === 'system' && !number.kinds.includes('length') ? [text] : [],
  );
}

/** The water of a sump by its sides, with the volume of the tank above it where that was said. */
function ofSump(frame: Frame): Answer | undefined {
  const {
    slots,
    reading: { scanned, said },
  } = frame;
  const { sump: sides = [], sides: others = [] } = tankSaidIn(frame) ?? {};
  const sump = sumpBySides(scanned, said, sides, undefined);
  if (sump === undefined) return undefined;
  const tank = slots.volume ?? said.find(({ part, of }) => part === 'part' && of === 'display')?.text;
  const all = tank === undefined ? undefined : readableAs('volume', `${tank} + ${sump}`);
  const open = others.length > 0 ? ' Say the sides of the tank as well for both together.' : '';
  const beside =
    all === undefined
      ? open
      : ` With the ${tank ?? ''} that is ${litresAndGallons(all)}, less what rock and sand take.`;
  return answer({ headline: `The sump holds about ${sump} by its sides.${beside}`, sources: ['geometry'] });
}

/** What to measure of a shape whose sides were not all said; how to find the water of one that has no sum. */
function ofShape(frame: Frame): Answer | undefined {
  const said = tankSaidIn(frame);
  if (said === undefined || said.shape === 'box') return undefined;
  const { steps = [], sources } = primer('net volume');
  const headline =
    said.shape === 'other'
      ? 'I have no sum for that shape from these sides: count the litres when you fill it, or measure by a small known dose.'
      : `A ${said.shape} needs: ${forms[said.shape].join(', ')}. Say them all with their unit.`;
  return answer({ headline, steps, sources });
}

/** Both, since glass is sold in either. */
function litresAndGallons(volumeL: number): string {
  return `${volumeText(volumeL)} (${inUnit('volume', volumeL, 'US gal', 0)})`;
}

/** "my 50 only holds 38": what it does to dose for the glass. */
function ofGlass({ slots, reading: { said } }: Frame, context: OwnContext) {
  const { volume, container, lengths = [], salt, change } = slots;
  // Buckets counted, or a tank and its sump: nothing that a glass holds less of.
  if (
    said.some(({ of }) => of === 'sump') ||
    said.filter(({ part }) => part === 'system' || part === 'part').length > 2 ||
    volume?.includes('+') === true
  )
    return undefined;
  const glass = container ?? lengths[0];
  if (glass === undefined || volume === undefined) return undefined;
  const goal = change === undefined ? undefined : `+${change}`;
  return attempt(() => call(netCommand, { glass, volume, with: salt, goal }, context));
}
