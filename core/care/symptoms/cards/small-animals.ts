import type { SymptomCard } from '../card.ts';

/** Animals that nobody put in. Most are useful: said first, for most are killed for nothing. */
export const smallAnimals: SymptomCard = {
  group: 'pests',
  label: 'Small bugs, shrimps or bristly worms nobody put in',
  causes: {
    pods: {
      name: 'copepods, amphipods or small shrimps',
      why: 'harmless, food for fish: tiny, quick, on glass and rock at night',
    },
    bristle: {
      name: 'bristle worms',
      why: 'nearly all only eat leftovers and the dead, though their bristles hurt fingers',
    },
    others: {
      name: 'other cleaners: small spiral tubes, brittle stars, tiny snails',
      why: 'harmless in nearly every tank',
    },
    pest: { name: 'a real pest', why: 'if it sits on one coral and bites or eggs show there' },
  },
  questions: [
    {
      ask: 'What does it look like?',
      choices: {
        dots: { label: 'dots that run or hop', up: ['pods'], because: 'it is tiny and quick' },
        bristles: { label: 'a worm with bristles', up: ['bristle'], because: 'it has bristles' },
        tubes: { label: 'tubes, stars or snails', up: ['others'], because: 'it is a tube, star or snail' },
      },
    },
    {
      ask: 'Where does it sit?',
      choices: {
        rock: { label: 'on glass, sand or rock', down: ['pest'], because: 'it is on glass, sand or rock' },
        coral: {
          label: 'on one coral that looks worse',
          up: ['pest'],
          because: 'that coral looks worse',
          first: 'Look with a torch at night for bites and eggs on that coral.',
        },
      },
    },
  ],
  first: 'Leave it for now: most small animals that nobody put in are harmless or useful.',
  steps: [
    'Very many of them means leftovers: feed less and clean the sand.',
    'A clear photo by white light, and one at night: show experienced keepers before anything is killed.',
    'Worms or bugs on a coral that gets worse: then look for bites, eggs and pale spots there.',
  ],
  never: [
    'Never touch bristles bare-handed: gloves or tweezers. In the skin, swelling or hurting more: a doctor.',
    'Dose nothing against it: that kills shrimps and snails too, and the dead foul the water.',
    'Do not pull worms off rock by hand.',
  ],
  stop: 'It is not urgent. Ask with a photo if a coral is eaten.',
  sources: ['practice'],
};
