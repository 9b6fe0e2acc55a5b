import { basisWords } from '../basis-words.ts';
import type { Bases } from '../basis.ts';
import { spotErrorCm } from '../distance.ts';
import { lightFor, type CoralLight } from '../light-need.ts';
import { lightAround, READING_RADIUS_CM, type LightHere } from '../par-field.ts';
import { cm, parRange } from '../say.ts';
import type { Finding, Placed, Scene, Verdict } from '../scene.ts';

/** A coral in its first weeks is judged by its start value, days: project rule. */
const NEW_DAYS = 28;
/** New, and this many times its start value: too bright at once. Project rule. */
const BURNT_TIMES = 2;
/** New, and this many times its start value: brighter than it should begin. Project rule. */
const BRIGHT_TIMES = 1.25;

const readingBasis: Bases = [{ kind: 'project rule', note: 'between readings by distance' }];
const newBasis: Bases = [
  { kind: 'project rule', note: 'twice the start value is too bright for a new piece' },
];

export interface LightJudged {
  readonly verdict: Verdict;
  readonly here: LightHere | undefined;
  readonly need: CoralLight;
  readonly why: 'too much' | 'too much to begin' | 'perhaps too much' | 'too little' | 'fits' | 'unknown';
}

/** Light at a spot against the range and the start; too much comes first as the commoner harm. Unknown is settled. */
export function judgeLight(scene: Pick<Scene, 'light' | 'box'>, coral: Placed): LightJudged {
  const need = lightFor(coral.entry, coral.origin);
  const here = lightAround(scene.light, coral.spot, spotErrorCm(coral, scene.box));
  if (here === undefined) return { verdict: 'settled', here, need, why: 'unknown' };
  const judged = (verdict: Verdict, why: LightJudged['why']): LightJudged => ({ verdict, here, need, why });
  if (here.lowPpfd > need.highPpfd) {
    return judged(coral.entry.photosynthetic ? 'move' : 'watch', 'too much');
  }
  const isNew = coral.entry.photosynthetic && coral.daysHere !== undefined && coral.daysHere <= NEW_DAYS;
  if (isNew && here.lowPpfd >= need.startPpfd * BURNT_TIMES) return judged('move', 'too much to begin');
  if (here.highPpfd > need.highPpfd) return judged('watch', 'perhaps too much');
  if (isNew && here.lowPpfd > need.startPpfd * BRIGHT_TIMES) return judged('watch', 'too much to begin');
  if (here.highPpfd < need.lowPpfd && here.highPpfd < need.startPpfd) return judged('watch', 'too little');
  return judged('settled', 'fits');
}

export function lightFindings(scene: Scene, coral: Placed): readonly Finding[] {
  const judged = judgeLight(scene, coral);
  if (judged.verdict === 'settled') return [];
  const { need, why } = judged;
  const cures: Partial<Record<LightJudged['why'], string>> = {
    'too much': coral.entry.photosynthetic
      ? `Lower it or dim the lamp until it gets ${need.highPpfd} PAR or less; begin near ${need.startPpfd}.`
      : need.tooMuch.action,
    'too much to begin': `Begin near ${need.startPpfd} PAR and go up by about ${need.raisePercentAWeek} % a week.`,
    'perhaps too much': `Measure at the coral; ${need.highPpfd} PAR is the most.`,
    'too little': `Raise it in steps, or brighten by about ${need.raisePercentAWeek} % a week, to ${need.startPpfd} PAR first. Not to the top in one go.`,
  };
  return [
    {
      rule: 'light',
      verdict: judged.verdict,
      corals: [coral.id],
      reason: lightWords(judged, coral) + signWords(judged),
      basis: basisWords(
        coral.entry.light.basis,
        readingBasis,
        ...(why === 'too much to begin' ? [newBasis] : []),
      ),
      cure: cures[why],
      weight: weights[why] + (judged.verdict === 'move' ? 60 : 0),
    },
  ];
}

const weights: Readonly<Record<LightJudged['why'], number>> = {
  'too much': 30,
  'too much to begin': 27,
  'perhaps too much': 24,
  'too little': 15,
  fits: 0,
  unknown: 0,
};

/** What is known of the light here, and what the coral wants, in one or two sentences. */
export function lightWords({ here, need, why }: LightJudged, coral: Placed): string {
  const wants = `For ${coral.label}: ${need.lowPpfd} to ${need.highPpfd} PAR, beginning near ${need.startPpfd} (${need.startBasis}).`;
  if (here === undefined) {
    return `No reading within ${READING_RADIUS_CM} cm, so the light here is not known. ${wants}`;
  }
  const where = here.nearestCm === 0 ? 'measured here' : `${cm(here.nearestCm)} from the nearest reading`;
  const light = `${parRange(here.lowPpfd, here.highPpfd)} here (${where})`;
  const words = {
    'too much': `Too bright: ${light}. `,
    'too much to begin': `Too bright for a new piece: ${light}. `,
    'perhaps too much': `Perhaps too bright: ${light}. `,
    'too little': `Too dim: ${light}. `,
    fits: `Light fits: ${light}. `,
    unknown: '',
  };
  return words[why] + wants;
}

function signWords({ need, why }: LightJudged): string {
  const signs = why === 'too little' ? need.tooLittle : need.tooMuch;
  return ` Look whether ${signs.signs[0]}.`;
}
