import { readIn } from '../../../corals/basis-words.ts';
import type { SymptomCard } from '../card.ts';

export const paleOnTop: SymptomCard = {
  group: 'colour',
  label: 'Pale or burnt only on the side to the lamp',
  causes: {
    light: { name: 'too much light', why: 'only the lit side suffers', signs: ['bright', 'new light'] },
    moved: {
      name: 'moved up, or brightened, too quickly',
      why: 'a coral needs weeks to get used to more',
      signs: ['new coral', 'handled'],
    },
  },
  questions: [
    {
      ask: 'Does the shaded side look normal?',
      choices: {
        yes: { label: 'yes, normal', up: ['light'], because: 'the shaded side is well, so it is the light' },
        no: {
          label: 'no, pale too',
          up: ['moved'],
          because: 'the shaded side is pale too: see "whole coral pale" as well',
        },
      },
    },
  ],
  first: 'Move it lower or shade it, once, and leave it there.',
  steps: [
    'Come back up over three to four weeks (/light ramp).',
    'Measure PAR at the spot, if somebody can lend a meter.',
  ],
  never: ['Do not move it again and again.'],
  stop: 'Bare skeleton on the burnt patch: post a photo and ask.',
  published: [
    `getting used to new light: 3 to 5 days in a shade coral, more than 20 in an Acropora (${readIn('DiPerna2018')}), within 21 days in another (${readIn('Lohr2019')})`,
  ],
  sources: ['practice'],
};
