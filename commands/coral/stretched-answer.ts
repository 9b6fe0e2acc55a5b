import type { CoralEntry } from '../../core/corals/entry.ts';
import { lightFor } from '../../core/corals/light-need.ts';
import { judgedLight, type LightVerdict } from '../../core/corals/light-verdict.ts';
import type { NamedCoral } from '../../core/corals/named.ts';
import { sentencesOf } from '../../core/words/sentence.ts';
import { answer, type Answer } from '../answer.ts';
import { fullNames } from './asked-kind.ts';
import { palytoxinCautions } from './palytoxin-cautions.ts';
import type { SaidPar } from './par-verdict.ts';

const OTHER_CAUSES = [
  'Look that nothing irritates it: pests on the stalks, a neighbour that touches it, shut for part of the day.',
  'Test nitrate and phosphate: fading also comes when both read zero.',
] as const;

const STRAIGHT_UP = 'A coral from a dim spot bleaches when it goes straight to the top.';

/** So many letters of names stand in what was read. */
const MOST_NAMES = 110;

/** A coral that stretches: usually too little light; up in steps, never straight to the top. */
export function stretchedAnswer(named: NamedCoral, reading: SaidPar | undefined): Answer {
  const [entry] = named.entries;
  const need = lightFor(entry, 'unknown');
  const { lowPpfd, highPpfd, startPpfd, rangeBasis, raisePercentAWeek } = need;
  const judged =
    reading === undefined
      ? undefined
      : judgedLight(need, 'settled', {
          lowPpfd: reading.value,
          ppfd: reading.value,
          highPpfd: reading.value,
        });
  const name = named.entries.length === 1 ? entry.names.common[0] : named.name;
  if (judged !== undefined && judged.side !== 'dim') return notTheLight(judged, entry, name);
  return answer({
    headline:
      judged?.headline ??
      `Not to the top in one go. Stretching is mostly too little light: raise ${name} one step at a time.`,
    read: [`${named.name} as ${fullNames(named.entries, MOST_NAMES)}, stretched`],
    facts: [
      {
        label: `light for ${entry.names.common[0]}`,
        value: `${lowPpfd} to ${highPpfd} PAR (${rangeBasis}); a piece from a dim spot begins near ${startPpfd}`,
      },
      { label: 'how fast', value: `about ${raisePercentAWeek} to 10 % a week (common practice)` },
    ],
    steps: [
      ...(judged === undefined
        ? ['First a PAR reading at its spot and a photo by white light: shade and low flow look the same.']
        : sentencesOf(judged.advice)),
      'Move it up one step (sand, low rock, middle) and leave it one to two weeks at each.',
      'Or leave it and brighten the lamp by about 10 % a week.',
      ...OTHER_CAUSES,
      'If it pales, stays tight or melts after a step, go back one step.',
    ],
    dangers: [...palytoxinCautions([entry]), STRAIGHT_UP],
    cautions: ['Too much light harms faster than too little.'],
    sources: ['practice', 'memory'],
  });
}
/** Stretched in light that fits or is too much: the light is left or lowered, and the cause looked for elsewhere. */
function notTheLight({ headline, advice, side }: LightVerdict, entry: CoralEntry, name: string): Answer {
  return answer({
    headline: `Too little light is not why ${name} stretches: do not raise it.`,
    facts: [{ label: 'light', value: headline }],
    steps: [
      ...(side === 'fits' ? ['Leave the light as it is.'] : sentencesOf(advice)),
      'Measure at the coral itself, with the pumps running: shade from a rock makes one side of it dim.',
      ...OTHER_CAUSES,
    ],
    dangers: palytoxinCautions([entry]),
    sources: ['practice', 'memory'],
  });
}
