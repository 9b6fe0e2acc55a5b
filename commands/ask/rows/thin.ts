import { say } from '../../../core/wording/say.ts';
import { answer } from '../../answer.ts';
import { action } from '../../calls.ts';
import { personAction } from '../../urgent/hurt.ts';
import type { Row } from '../row.ts';
import { fishTogetherRow } from './fish-together.ts';

/** Kinds that only cards on particular questions answer, and a step whose case is not known. */
export const thinRows: readonly Row[] = [
  fishTogetherRow,
  {
    kind: 'compat-animals',
    label: 'ask.kindCompatAnimals',
    uses: ['corals'],
    answer: () => undefined,
  },
  {
    kind: 'next-step',
    label: 'ask.kindNextStep',
    uses: [],
    answer: () =>
      answer({
        headline: say('ask.tellWhatItIsAbout'),
        tone: 'question',
        next: [
          personAction(),
          action(say('urgent.goingWrong'), 'urgent', {}),
          action(say('triage.looksWrong'), 'triage', {}),
          action(say('help.whatICanDo'), 'help', {}),
        ],
      }),
  },
];
