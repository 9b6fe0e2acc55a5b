import { par, shownPpfd } from '../light/band.ts';
import type { CoralEntry } from './entry.ts';
import { lightFor, type CoralLight } from './light-need.ts';
import type { LightHere } from './par-field.ts';
import type { Origin, Verdict } from './scene.ts';

/** A piece in its first weeks is judged by where it begins, one that has lived here for longer by its whole range. */
export type Standing = 'new' | 'settled';

/** New, and this many times its start value: too bright at once. Project rule. */
const BURNT_TIMES = 2;
/** New, and this many times its start value: brighter than it should begin. Project rule. */
const BRIGHT_TIMES = 1.25;

export type LightWord =
  | 'too bright'
  | 'too bright to begin with'
  | 'perhaps too bright'
  | 'fits'
  | 'perhaps too dim'
  | 'too dim'
  | 'not known';

/** All that is said of the light at a coral comes from here, so that word, sentence and advice cannot disagree. */
export interface LightVerdict {
  readonly side: 'bright' | 'fits' | 'dim' | 'unknown';
  /** False where only a part of the range that the light lies in is on that side. */
  readonly sure: boolean;
  readonly verdict: Verdict;
  readonly word: LightWord;
  /** The light it is judged by, as it is printed: the middle, or the end of the range that may be wrong. */
  readonly figurePpfd: number;
  /** What it should get first; the figure itself where it fits. */
  readonly goalPpfd: number;
  /** How far the figure is from there, never negative. */
  readonly offPpfd: number;
  /** "Too bright: 300 PAR, 190 PAR over the 110 PAR a new piece begins near." */
  readonly headline: string;
  readonly advice: string;
}

/** What light is judged against: of one coral, or of all that a name can mean. */
export type LightSpan = Pick<
  CoralLight,
  'photosynthetic' | 'lowPpfd' | 'highPpfd' | 'startPpfd' | 'raisePercentAWeek' | 'tooMuch'
>;

/** The verdict on a reading for a coral of some origin. Check: torch, tank-grown (75 to 200, start 110), new, at 300: too bright by 190. */
export function lightVerdict(
  entry: CoralEntry,
  origin: Origin,
  standing: Standing,
  ppfd: number,
): LightVerdict {
  return judgedLight(lightFor(entry, origin), standing, { lowPpfd: ppfd, ppfd, highPpfd: ppfd });
}

/**
 * The same where the light is known as a range, umol m-2 s-1. The middle decides where both ends are on its side;
 * where only the bright end is too bright that end does, as the commoner harm, and it asks for a measurement.
 */
export function judgedLight(
  need: LightSpan,
  standing: Standing,
  here: Pick<LightHere, 'lowPpfd' | 'ppfd' | 'highPpfd'>,
): LightVerdict {
  const [low, middle, high] = [here.lowPpfd, here.ppfd, here.highPpfd].map(shownPpfd) as [
    number,
    number,
    number,
  ];
  const side = (ppfd: number): Side => sideOf(need, standing, ppfd);
  const isSure = side(low) === side(middle) && side(high) === side(middle);
  if (isSure) return said(need, standing, side(middle), middle, true);
  if (side(high) === 'bright') return said(need, standing, 'bright', high, false);
  return said(need, standing, side(middle), middle, false);
}

/** Where no light is known. */
export const lightUnknown: LightVerdict = {
  side: 'unknown',
  sure: false,
  verdict: 'settled',
  word: 'not known',
  figurePpfd: 0,
  goalPpfd: 0,
  offPpfd: 0,
  headline: 'The light here is not known.',
  advice: 'Measure PAR at the coral.',
};

type Side = 'bright' | 'fits' | 'dim';

/** A piece that begins below its range is not too dim at its start; what lives by food never is. */
function sideOf(
  { photosynthetic, lowPpfd, highPpfd, startPpfd }: LightSpan,
  standing: Standing,
  ppfd: number,
): Side {
  if (ppfd > highPpfd) return 'bright';
  if (!photosynthetic) return 'fits';
  if (standing === 'new' && ppfd > startPpfd * BRIGHT_TIMES) return 'bright';
  const least = standing === 'new' ? Math.min(lowPpfd, startPpfd) : lowPpfd;
  return ppfd < least ? 'dim' : 'fits';
}

function said(
  need: LightSpan,
  standing: Standing,
  side: Side,
  figurePpfd: number,
  sure: boolean,
): LightVerdict {
  const goalPpfd = goalOf(need, standing, side, figurePpfd);
  const offPpfd = shownPpfd(Math.abs(figurePpfd - goalPpfd));
  const parts: Parts = { side, sure, figurePpfd, goalPpfd, offPpfd };
  const word = wordOf(need, side, figurePpfd, sure);
  return {
    ...parts,
    verdict: verdictOf(need, standing, parts),
    word,
    headline: `${word.charAt(0).toUpperCase()}${word.slice(1)}: ${headlineRest(need, standing, parts)}`,
    advice: adviceOf(need, standing, parts),
  };
}

interface Parts extends Pick<LightVerdict, 'sure' | 'figurePpfd' | 'goalPpfd' | 'offPpfd'> {
  readonly side: Side;
}

function goalOf(need: LightSpan, standing: Standing, side: Side, figurePpfd: number): number {
  if (side === 'fits') return figurePpfd;
  if (side === 'bright')
    return standing === 'settled' || !need.photosynthetic ? need.highPpfd : need.startPpfd;
  return standing === 'settled' ? Math.max(need.lowPpfd, need.startPpfd) : need.startPpfd;
}

function wordOf({ highPpfd }: LightSpan, side: Side, figurePpfd: number, sure: boolean): LightWord {
  if (side === 'fits') return 'fits';
  if (side === 'dim') return sure ? 'too dim' : 'perhaps too dim';
  if (!sure) return 'perhaps too bright';
  return figurePpfd > highPpfd ? 'too bright' : 'too bright to begin with';
}

function verdictOf(need: LightSpan, standing: Standing, { side, sure, figurePpfd }: Parts): Verdict {
  if (side === 'fits') return 'settled';
  if (side === 'dim' || !sure || !need.photosynthetic) return 'watch';
  const isBurnt = standing === 'new' && figurePpfd >= need.startPpfd * BURNT_TIMES;
  return isBurnt || figurePpfd > need.highPpfd ? 'move' : 'watch';
}

function headlineRest(
  need: LightSpan,
  standing: Standing,
  { side, sure, figurePpfd, goalPpfd, offPpfd }: Parts,
): string {
  const light = sure ? par(figurePpfd) : `${side === 'bright' ? 'up to ' : 'about '}${par(figurePpfd)}`;
  if (side === 'fits') {
    return need.photosynthetic
      ? `${light}, and it begins near ${need.startPpfd} of ${need.lowPpfd} to ${need.highPpfd} PAR.`
      : `${light} does no harm, and it lives by food.`;
  }
  const way = side === 'bright' ? 'over' : 'under';
  const goal = goalWords(need, standing, side, goalPpfd);
  return `${light}, ${par(offPpfd)} ${way} ${goal}.`;
}

function goalWords(need: LightSpan, standing: Standing, side: Side, goalPpfd: number): string {
  if (side === 'dim') return `the ${goalPpfd} PAR it begins near (range ${need.lowPpfd} to ${need.highPpfd})`;
  return standing === 'settled' || !need.photosynthetic
    ? `the ${goalPpfd} PAR it is kept at most`
    : `the ${goalPpfd} PAR it begins near (range ${need.lowPpfd} to ${need.highPpfd})`;
}

function adviceOf(
  need: LightSpan,
  standing: Standing,
  { side, sure, figurePpfd, goalPpfd, offPpfd }: Parts,
): string {
  if (side === 'fits') return 'Leave it there.';
  if (!need.photosynthetic) return need.tooMuch.action;
  if (!sure)
    return `Measure at the coral first: ${standing === 'new' || side === 'dim' ? 'it begins near' : 'the most is'} ${goalPpfd} PAR.`;
  if (side === 'dim') {
    return `Brighten by about ${need.raisePercentAWeek} % a week, or raise it in steps, to ${goalPpfd} PAR first: ${par(offPpfd)} more. Not to the top in one go.`;
  }
  const percent = Math.ceil((1 - goalPpfd / figurePpfd) * 100);
  const goal = standing === 'new' ? `Begin near ${goalPpfd} PAR` : `Bring it to ${goalPpfd} PAR or less`;
  return `${goal}: find it a dimmer spot or shade it. Where nothing else under the lamp needs more, take about ${percent} % of the light away. Less light needs no ramp.`;
}
