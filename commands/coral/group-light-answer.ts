import { USUAL_LIGHT_RULE, usualLight, usualLightWords } from '../../core/corals/group-light.ts';
import type { CoralGroup } from '../../core/corals/kind.ts';
import { judgedLight } from '../../core/corals/light-verdict.ts';
import { sentencesOf } from '../../core/words/sentence.ts';
import { answer, type Answer } from '../answer.ts';
import { usualFact } from '../light/words.ts';
import type { SaidPar } from './par-verdict.ts';

/** What light is usual in a group, and that each of its kinds has its own range. */
export function groupLightAnswer(group: CoralGroup, reading: SaidPar | undefined): Answer {
  const verdict =
    reading === undefined
      ? undefined
      : judgedLight(usualLight(group), 'new', {
          lowPpfd: reading.value,
          ppfd: reading.value,
          highPpfd: reading.value,
        });
  return answer({
    headline: verdict?.headline ?? usualLightWords(group),
    read: reading === undefined ? [] : [`${reading.text} as light at the coral`],
    facts: verdict === undefined ? [] : [usualFact(group)],
    steps: [
      ...(verdict === undefined ? [] : sentencesOf(verdict.advice)),
      'Name the coral and I give its own range: "how much light for a torch".',
      'Begin low and go up by about 10 % a week.',
    ],
    cautions: ['Each kind has its own range. Too much light harms more often than too little.'],
    working: [USUAL_LIGHT_RULE],
    sources: ['practice', 'memory'],
  });
}
