import { readIn } from '../../../corals/basis-words.ts';
import type { SymptomCard } from '../card.ts';

export const flatBrownWorms: SymptomCard = {
  group: 'pests',
  label: 'Small flat brown worms on corals, rock or glass',
  causes: {
    harmless: { name: 'acoels in small numbers', why: 'they live off light and do little' },
    bloom: { name: 'a bloom of acoels', why: 'they shade corals and eat their slime' },
    eater: { name: 'flatworms that eat Acropora', why: 'clear and hidden, on Acropora only' },
  },
  questions: [
    {
      ask: 'Where, and how many?',
      choices: {
        few: { label: 'a few, on glass or rock', up: ['harmless'], because: 'a few on glass do little' },
        many: {
          label: 'everywhere, many',
          up: ['bloom'],
          down: ['harmless'],
          because: 'many of them are a bloom',
          first: 'Before any treatment: ask, and have carbon and a large volume of new water ready.',
        },
        acropora: { label: 'on Acropora only', up: ['eater'], because: 'only Acropora has them' },
      },
    },
  ],
  first: 'Suck them out with a thin hose into a filter sock, and feed less.',
  steps: [
    'Dip and look over new corals before they go in.',
    'Suck out again every few days: numbers fall.',
    'A treatment only with a plan.',
  ],
  never: ['Do not treat a heavy bloom without carbon and water ready: dying acoels can release toxins.'],
  stop: 'A heavy bloom: ask experienced keepers before you treat.',
  published: [
    `acoels eat coral slime, shade, and tissue loss is recorded (${readIn('HoeksemaFarenzena2012')})`,
  ],
  sources: ['practice'],
};
