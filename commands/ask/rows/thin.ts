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
    label: 'Whether it bothers corals',
    uses: ['corals'],
    answer: () => undefined,
  },
  {
    kind: 'next-step',
    label: 'What to do next',
    uses: [],
    answer: () =>
      answer({
        headline:
          'Tell me what it is about: what you see or measured, of which animal, and in how much water.',
        tone: 'question',
        next: [
          personAction,
          action('Something is going wrong now', 'urgent', {}),
          action('Something looks wrong', 'triage', {}),
          action('What I can do', 'help', {}),
        ],
      }),
  },
];
