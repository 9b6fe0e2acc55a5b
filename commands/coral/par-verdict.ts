import type { CoralLight } from '../../core/corals/light-need.ts';
import { judgedLight, type LightVerdict } from '../../core/corals/light-verdict.ts';
import { par } from '../../core/light/band.ts';
import { sentencesOf } from '../../core/words/sentence.ts';
import type { Fact } from '../answer.ts';
import { fittingHeadline } from '../fitting.ts';

/** Light read at a spot, PAR, as it was written. */
export interface SaidPar {
  readonly text: string;
  readonly value: number;
}

export function judgedFact(reading: SaidPar, need: CoralLight): Fact {
  const { value } = reading;
  const asNew = asNewAt(reading, need);
  return {
    label: `at ${reading.text}`,
    value: `${par(value)}, for a new piece: ${asNew.word}`,
    verdict: asNew.verdict,
  };
}

export function asNewAt({ value }: SaidPar, need: CoralLight): LightVerdict {
  return judgedLight(need, 'new', { lowPpfd: value, ppfd: value, highPpfd: value });
}

/** "Too bright: 300 PAR, 190 PAR over ... For Zoas as a new piece.", where one reading is asked about. */
export function onlyVerdict(
  readings: readonly SaidPar[],
  need: CoralLight,
  name: string,
): string | undefined {
  const [one, other] = readings;
  if (one === undefined || other !== undefined) return undefined;
  const { value } = one;
  const asNew = asNewAt(one, need);
  const asSettled = judgedLight(need, 'settled', { lowPpfd: value, ppfd: value, highPpfd: value });
  const stays = asNew.side === 'bright' && asSettled.side === 'fits' ? ' One long here may have it.' : '';
  const said = `${asNew.headline}${stays}`;
  return fittingHeadline(`${said} For ${name} as a new piece.`, said);
}

/** What to do at the one reading, or where to begin among several. */
export function adviceOn(readings: readonly SaidPar[], need: CoralLight): readonly string[] {
  const [one, other] = readings;
  if (one === undefined) return [];
  if (other === undefined) return sentencesOf(asNewAt(one, need).advice);
  const values = readings.map(({ value }) => value);
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const { startPpfd } = need;
  if (most <= startPpfd) return [];
  if (least >= startPpfd) return ['Begin at the dimmest of these spots, or shade it for the first weeks.'];
  const from = Math.round((startPpfd * 3) / 20) * 5;
  return [
    `Begin between the two, low to middle height, where it reads ${from} to ${startPpfd} PAR; later further up.`,
  ];
}
