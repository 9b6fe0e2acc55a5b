import type { CoralEntry } from '../../core/corals/entry.ts';
import { lightFor } from '../../core/corals/light-need.ts';
import { judgedLight, type LightVerdict } from '../../core/corals/light-verdict.ts';
import type { NamedCoral } from '../../core/corals/named.ts';
import { answer, type Answer } from '../answer.ts';
import { fullName } from './asked-kind.ts';
import { palytoxinCautions } from './palytoxin-cautions.ts';
import type { SaidPar } from './par-verdict.ts';

const OTHER_CAUSES = [
  'Look that nothing irritates it: is it shut for part of the day, are there pests on the stalks, does a neighbour touch it?',
  'Test nitrate and phosphate: fading also comes when both read zero.',
] as const;

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
    headline: `${judged === undefined ? '' : `${judged.headline} `}Not to the top in one go. Stretching usually means too little light: raise ${name} one step at a time, or brighten by about 10 % a week.`,
    read: [`${named.name} as ${named.entries.map(fullName).join(', or ')}, stretched`],
    facts: [
      {
        label: `light for ${entry.names.common[0]}`,
        value: `${lowPpfd} to ${highPpfd} PAR (${rangeBasis}); a piece from a dim spot begins near ${startPpfd}`,
      },
      { label: 'how fast', value: `about ${raisePercentAWeek} to 10 % a week (common practice)` },
    ],
    steps: [
      ...(judged === undefined ? [] : [judged.advice]),
      'First a PAR reading at its spot and a photo by white light, if you can: shade from a rock, and low flow in a corner, look the same.',
      'Move it up one step (sand, then low rock, then middle), and leave it one to two weeks at each; or leave it and brighten the lamp by about 10 % a week.',
      ...OTHER_CAUSES,
      'If it pales, stays tight or melts after a step, go back one step: too much light harms faster than too little.',
    ],
    cautions: [
      'A coral from a dim spot bleaches when it goes straight to the top.',
      ...palytoxinCautions([entry]),
    ],
    sources: ['practice', 'memory'],
  });
}
/** Stretched in light that fits or is too much: the light is left or lowered, and the cause looked for elsewhere. */
function notTheLight({ headline, advice, side }: LightVerdict, entry: CoralEntry, name: string): Answer {
  return answer({
    headline: `${headline} So too little light is not why ${name} stretches: do not raise it.`,
    steps: [
      side === 'fits' ? 'Leave the light as it is.' : advice,
      'Measure at the coral itself, with the pumps as they run: shade from a rock makes one side of it dim.',
      ...OTHER_CAUSES,
    ],
    cautions: palytoxinCautions([entry]),
    sources: ['practice', 'memory'],
  });
}
