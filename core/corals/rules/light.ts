import { par, parRange } from '../../light/band.ts';
import { basisWords } from '../basis-words.ts';
import type { Bases } from '../basis.ts';
import { spotErrorCm } from '../distance.ts';
import { lightFor, type CoralLight } from '../light-need.ts';
import { judgedLight, lightUnknown, type LightVerdict, type LightWord } from '../light-verdict.ts';
import { lightAround, READING_RADIUS_CM, type LightHere } from '../par-field.ts';
import { cm } from '../say.ts';
import type { Finding, Placed, Scene } from '../scene.ts';

/** A coral in its first weeks is judged by its start value, days: project rule. */
const NEW_DAYS = 28;

const readingBasis: Bases = [{ kind: 'project rule', note: 'between readings by distance' }];
const newBasis: Bases = [
  { kind: 'project rule', note: 'twice the start value is too bright for a new piece' },
];

export interface LightJudged extends LightVerdict {
  readonly here: LightHere | undefined;
  readonly need: CoralLight;
}

/** Light at a coral's spot, as far as readings near it tell. Unknown is settled. */
export function judgeLight(scene: Pick<Scene, 'light' | 'box'>, coral: Placed): LightJudged {
  const need = lightFor(coral.entry, coral.origin);
  const here = lightAround(scene.light, coral.spot, spotErrorCm(coral, scene.box));
  const isNew = coral.daysHere !== undefined && coral.daysHere <= NEW_DAYS;
  const verdict = here === undefined ? lightUnknown : judgedLight(need, isNew ? 'new' : 'settled', here);
  return { ...verdict, here, need };
}

export function lightFindings(scene: Scene, coral: Placed): readonly Finding[] {
  const judged = judgeLight(scene, coral);
  const { verdict, word, advice } = judged;
  if (verdict === 'settled') return [];
  return [
    {
      rule: 'light',
      verdict,
      corals: [coral.id],
      reason: lightWords(judged, coral) + signWords(judged),
      basis: basisWords(
        coral.entry.light.basis,
        readingBasis,
        ...(word === 'too bright to begin with' ? [newBasis] : []),
      ),
      cure: advice,
      weight: weights[word] + (verdict === 'move' ? 60 : 0),
    },
  ];
}

const weights: Readonly<Record<LightWord, number>> = {
  'too bright': 30,
  'too bright to begin with': 27,
  'perhaps too bright': 24,
  'too dim': 15,
  'perhaps too dim': 12,
  fits: 0,
  'not known': 0,
};

/** What is known of the light here, and what the coral wants, in one or two sentences. */
export function lightWords({ here, need, headline }: LightJudged, coral: Placed): string {
  if (here === undefined) {
    return `No reading within ${READING_RADIUS_CM} cm, so the light here is not known. For ${coral.label}: ${need.lowPpfd} to ${need.highPpfd} PAR, beginning near ${need.startPpfd} (${need.startBasis}).`;
  }
  const isExact = par(here.lowPpfd) === par(here.highPpfd);
  const where = isExact && here.nearestCm === 0 ? 'Measured here' : `There: ${hereWords(here)}`;
  return `${headline} ${where}; range and start for ${coral.label}: ${need.startBasis}.`;
}

/** "150 PAR, measured here", or "about 150 PAR, somewhere in 120 to 180 PAR, 8 cm from the nearest reading". */
export function hereWords({ lowPpfd, ppfd, highPpfd, nearestCm }: LightHere): string {
  const where = nearestCm === 0 ? 'measured here' : `${cm(nearestCm)} from the nearest reading`;
  const [low, high] = [par(lowPpfd), par(highPpfd)];
  return low === high
    ? `${par(ppfd)}, ${where}`
    : `about ${par(ppfd)}, somewhere in ${parRange(lowPpfd, highPpfd)}, ${where}`;
}

function signWords({ need, side }: LightJudged): string {
  const { signs } = side === 'dim' ? need.tooLittle : need.tooMuch;
  return ` Look whether ${signs[0]}.`;
}
