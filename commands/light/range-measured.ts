import type { CoralEntry } from '../../core/corals/entry.ts';
import type { CoralLight } from '../../core/corals/light-need.ts';
import { whyWords } from '../../core/corals/light-words.ts';
import type { LightHere } from '../../core/corals/par-field.ts';
import type { LightJudged } from '../../core/corals/rules/light.ts';
import type { Origin } from '../../core/corals/scene.ts';
import { dimmerSetting } from '../../core/light/dimmer.ts';
import { fixed } from '../../core/quantity/format.ts';
import type { Fact } from '../answer.ts';
import { planWords, raisePlan, settingFor, type RaisePlan } from './range-plan.ts';
import { judgedThere, type RangePart, type View } from './range-view.ts';
import { par } from './words.ts';

/** A coral at a spot whose light is known, and the lamp's setting where it was said. */
export interface Measured {
  readonly entry: CoralEntry;
  readonly origin: Origin;
  readonly need: CoralLight;
  readonly view: View;
  readonly here: LightHere;
  readonly settingPercent: number | undefined;
}

/** Today's verdict, the setting for the start value, and the raise from there. */
export function measuredPart(measured: Measured): RangePart {
  const { entry, origin, need, view, here, settingPercent } = measured;
  const { ppfd } = here;
  const asNew = judgedThere(view, entry, origin, 0);
  const asSettled = judgedThere(view, entry, origin, undefined);
  const isBright = asNew.why !== 'fits' && asNew.why !== 'too little';
  const settingOf =
    settingPercent === undefined || !entry.photosynthetic ? undefined : settingFor({ ppfd, settingPercent });
  const beginPpfd = isBright ? Math.min(ppfd, need.startPpfd) : ppfd;
  const plan = entry.photosynthetic ? raisePlan(need, beginPpfd, settingOf) : undefined;
  return {
    headline: headline(measured, asNew, settingOf),
    read: [
      ...(view.rough || here.nearestCm > 0 ? [`I reckon with ${par(ppfd)} there`] : view.read),
      ...(settingPercent === undefined ? [] : [`the lamp at ${fixed(settingPercent, 1)} % now`]),
    ],
    facts: [
      { label: 'as a new piece', value: whyWords[asNew.why], verdict: asNew.verdict },
      { label: 'as a piece long here', value: whyWords[asSettled.why], verdict: asSettled.verdict },
      ...startFacts(measured),
    ],
    ...(plan === undefined ? {} : { table: plan.table }),
    steps: [...todaySteps(measured, isBright, settingOf), ...planSteps(measured, plan)],
    working: workingOf(measured),
    cautions: [
      ...(settingOf === undefined ? [] : [ROUGHLY]),
      'The lamp lights every coral below it: if only this one has too much, lower or shade this one instead.',
    ],
  };
}

const ROUGHLY =
  'Light goes with the setting only roughly, since lamps are not linear: measure again at each new setting.';

function headline(
  { entry, need, here: { ppfd }, settingPercent }: Measured,
  { why, verdict }: LightJudged,
  settingOf: ((ppfd: number) => string) | undefined,
): string {
  const name = entry.names.common[0];
  const wants = `${name} begins near ${need.startPpfd} of ${need.lowPpfd} to ${need.highPpfd} PAR`;
  if (!entry.photosynthetic) {
    return `${name} lives by food and needs no light: ${par(ppfd)} ${why === 'fits' ? 'does no harm' : `is ${whyWords[why]}`} (${verdict}).`;
  }
  const toStart =
    settingOf === undefined ? '' : ` The lamp at about ${settingOf(need.startPpfd)} gives that.`;
  if (why === 'too little') {
    const isLampAtEnd = settingPercent !== undefined && (100 * ppfd) / settingPercent < need.startPpfd;
    const how = isLampAtEnd ? 'The lamp gives no more there: move it up in steps.' : 'Go up slowly.';
    return `Too dim today (${verdict}): ${par(ppfd)}, and ${wants}. ${how}`;
  }
  if (why === 'fits') return `It fits (${verdict}): ${par(ppfd)}, and ${wants}.`;
  const dim = settingPercent === undefined ? ' Dim, shade or lower it today.' : toStart;
  return `For a new piece ${whyWords[why]} (${verdict}): ${par(ppfd)}, and ${wants}.${dim}`;
}

/** The setting that gives the start value, and how far the lamp can go there. */
function startFacts({ entry, need, here: { ppfd }, settingPercent }: Measured): readonly Fact[] {
  if (settingPercent === undefined || !entry.photosynthetic) return [];
  const found = dimmerSetting({ ppfd, settingPercent }, need.startPpfd);
  const full = `full power gives about ${par(found.ppfdAtFull)} here`;
  return [
    {
      label: `setting for ${par(need.startPpfd)}`,
      value: found.reached
        ? `about ${settingFor({ ppfd, settingPercent })(need.startPpfd)}; ${full}`
        : `not reached: ${full}. Move it up instead`,
    },
  ];
}

function todaySteps(
  { entry, need, here: { ppfd } }: Measured,
  isBright: boolean,
  settingOf: ((ppfd: number) => string) | undefined,
): readonly string[] {
  if (!isBright) return [];
  if (!entry.photosynthetic) return [need.tooMuch.action];
  const share = fixed((1 - need.startPpfd / ppfd) * 100, 0);
  const how =
    settingOf === undefined
      ? `take about ${share} % of the light away today`
      : `dim to about ${settingOf(need.startPpfd)} today`;
  return [
    `A new piece: find a spot that reads ${par(need.startPpfd)}, or shade it. Where nothing else under the lamp needs more, ${how}. Less light needs no ramp.`,
  ];
}

function planSteps({ need, entry }: Measured, plan: RaisePlan | undefined): readonly string[] {
  if (!entry.photosynthetic) return ['Mind its food rather than its light (/coral feed).'];
  if (plan === undefined) return ['There is nothing to raise: it is at the middle of its range or above.'];
  return [
    planWords(plan, need.raisePercentAWeek),
    'Pale, shut or shrinking after a step: go back to the last setting the same day, and wait two weeks.',
  ];
}

function workingOf({ entry, need, here: { ppfd }, settingPercent }: Measured): readonly string[] {
  if (settingPercent === undefined || !entry.photosynthetic) return [];
  const at = fixed(settingPercent, 1);
  return [
    `${at} % x ${need.startPpfd} PAR / ${fixed(ppfd, 0)} PAR = ${fixed((settingPercent * need.startPpfd) / ppfd, 1)} %, light taken to go with the setting`,
  ];
}
