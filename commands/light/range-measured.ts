import type { CoralEntry } from '../../core/corals/entry.ts';
import type { CoralLight } from '../../core/corals/light-need.ts';
import { judgedLight, type LightVerdict } from '../../core/corals/light-verdict.ts';
import { hereWords } from '../../core/corals/rules/light.ts';
import type { LightHere } from '../../core/corals/par-field.ts';
import { par, shownPpfd } from '../../core/light/band.ts';
import { dimmerSetting } from '../../core/light/dimmer.ts';
import { fixed } from '../../core/quantity/format.ts';
import { sentencesOf } from '../../core/words/sentence.ts';
import type { Fact } from '../answer.ts';
import { fittingHeadline } from '../fitting.ts';
import { planWords, raisePlan, settingText, type LampReading, type RaisePlan } from './range-plan.ts';
import type { RangePart } from './range-view.ts';

/** A coral at a spot whose light is known, and the lamp's setting where it was said. */
export interface Measured {
  readonly entry: CoralEntry;
  readonly need: CoralLight;
  readonly here: LightHere;
  readonly settingPercent: number | undefined;
}

/** Today's verdict on a new piece, what to do about it, and the raise from there. */
export function measuredPart(measured: Measured): RangePart {
  const { entry, need, here, settingPercent } = measured;
  const asNew = judgedLight(need, 'new', here);
  const asSettled = judgedLight(need, 'settled', here);
  const lamp = lampOf(measured);
  const plan = planOf(need, asNew, lamp);
  const name = entry.names.common[0];
  const verdict = asNew.headline.replace(':', ` (${asNew.verdict}):`);
  const [said, brief] = [
    `${name}, a new piece: ${verdict}`,
    `${name}: ${verdict.replace(/ \(range .*?\)/, '')}`,
  ];
  const lampSaid = lampWords(need, asNew, lamp);
  return {
    headline: fittingHeadline(said + lampSaid, brief + lampSaid, said, brief),
    read: [
      `light at the spot: ${hereWords(here)}`,
      ...(settingPercent === undefined ? [] : [`the lamp at ${fixed(settingPercent, 1)} % now`]),
    ],
    facts: [
      ...startFacts(need, asNew, lamp),
      { label: 'as a piece long here', value: asSettled.word, verdict: asSettled.verdict },
      { label: 'as a new piece', value: asNew.word, verdict: asNew.verdict },
    ],
    ...(plan === undefined ? {} : { table: plan.table }),
    steps: [...sentencesOf(asNew.advice), ...planSteps(need, asNew, plan)],
    working: workingOf(need, asNew, lamp),
    cautions: [
      ...(lamp === undefined ? [] : [ROUGHLY]),
      'The lamp lights every coral below it: if only this one has too much, lower or shade this one instead.',
    ],
  };
}

const ROUGHLY =
  'Light goes with the setting only roughly, since lamps are not linear: measure again at each new setting.';

function lampOf({ need, here, settingPercent }: Measured): LampReading | undefined {
  return settingPercent === undefined || !need.photosynthetic
    ? undefined
    : { ppfd: shownPpfd(here.ppfd), settingPercent };
}

/** From where it stands, or from where it should begin; none before the light is known for sure. */
function planOf(need: CoralLight, asNew: LightVerdict, lamp: LampReading | undefined): RaisePlan | undefined {
  if (!need.photosynthetic || !asNew.sure) return undefined;
  return raisePlan(need, asNew.side === 'bright' ? asNew.goalPpfd : asNew.figurePpfd, lamp);
}

/** What the lamp can do about it; nothing where it fits. */
function lampWords(need: CoralLight, asNew: LightVerdict, lamp: LampReading | undefined): string {
  if (lamp === undefined || !asNew.sure || asNew.side === 'fits') return '';
  const text = settingText(lamp, need.startPpfd);
  if (text === 'over 100 %') return ' The lamp gives no more there: move it up in steps.';
  return asNew.side === 'dim'
    ? ` The lamp at about ${text} gives the start: go up slowly.`
    : ` The lamp at about ${text} gives the start.`;
}

/** The setting that gives the start value, and how far the lamp can go there. */
function startFacts(need: CoralLight, asNew: LightVerdict, lamp: LampReading | undefined): readonly Fact[] {
  if (lamp === undefined || !asNew.sure) return [];
  const found = dimmerSetting(lamp, need.startPpfd);
  const full = `full power gives about ${par(found.ppfdAtFull)} here`;
  return [
    {
      label: `setting for ${par(need.startPpfd)}`,
      value: found.reached ? `about ${settingText(lamp, need.startPpfd)}; ${full}` : `not reached: ${full}`,
    },
  ];
}

function planSteps(need: CoralLight, asNew: LightVerdict, plan: RaisePlan | undefined): readonly string[] {
  if (!need.photosynthetic) return ['Mind its food rather than its light (/coral feed).'];
  if (plan === undefined) return asNew.sure && asNew.side !== 'dim' ? ['There is nothing to raise.'] : [];
  return [
    ...planWords(plan, need.raisePercentAWeek),
    'Pale, shut or shrinking after a step: go back to the last setting the same day, and wait two weeks.',
  ];
}

function workingOf(need: CoralLight, asNew: LightVerdict, lamp: LampReading | undefined): readonly string[] {
  if (lamp === undefined || !asNew.sure) return [];
  const { ppfd, settingPercent } = lamp;
  return [
    `${fixed(settingPercent, 1)} % x ${need.startPpfd} PAR / ${fixed(ppfd, 1)} PAR = ${fixed((settingPercent * need.startPpfd) / ppfd, 1)} %, light taken to go with the setting`,
  ];
}
