import { answer } from '../../answer.ts';
import { action } from '../../calls.ts';
import { personAction } from '../../urgent/hurt.ts';
import { noPage } from '../no-page.ts';
import type { Row } from '../row.ts';

/** Kinds that are understood and have no page yet, and a step whose case is not known. */
export const thinRows: readonly Row[] = [
  {
    kind: 'fish-together',
    label: 'Which fish go together',
    uses: [],
    answer: () => noPage('fish-together'),
  },
  {
    kind: 'compat-animals',
    label: 'Whether it bothers corals',
    uses: ['corals'],
    answer: () => noPage('compat-animals'),
  },
  {
    kind: 'next-step',
    label: 'What to do next',
    uses: [],
    answer: () =>
      answer({
        headline:
          'Tell me what it is about: what you see or measured, of which animal, and in how much water.',
        next: [
          personAction,
          action('Something is going wrong now', 'urgent', {}),
          action('Something looks wrong', 'triage', {}),
          action('What I can do', 'help', {}),
        ],
      }),
  },
];
