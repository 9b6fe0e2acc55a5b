import { palytoxinCleaning } from '../../corals/cautions.ts';
import type { Primer } from './primer.ts';

/** Habits of keeping; hazards to people as in core/care/hazards.ts and the papers on palytoxin. */
export const keepingCards: readonly Primer[] = [
  {
    id: 'cycle',
    names: ['cycling', 'the cycle', 'nitrogen cycle', 'new tank', 'cycled'],
    headline:
      'A new tank must first grow the bacteria that turn ammonia into nitrite and nitrite into nitrate.',
    points: [
      ['How long', 'often three to six weeks, with seeded rock less (common practice)'],
      ['Done', 'ammonia you add is gone a day later, nitrite too, and nitrate has risen'],
      ['Nitrite', 'harms sea fish far less than fresh-water fish; it tells the stage'],
      ['Then', 'brown dust and algae: a usual stage, wait'],
    ],
    steps: [
      'Feed it with a pinch of food or a measured ammonia source, no live fish.',
      'Test ammonia, nitrite and nitrate twice a week and write it down.',
      'Change water before the first animals; add them slowly.',
    ],
    see: ['first corals', 'test kits', 'nutrients'],
    sources: ['practice', 'memory'],
  },
  {
    id: 'palytoxin',
    names: [
      'zoanthid poison',
      'zoa poison',
      'zoanthid toxin',
      'palytoxins',
      'are zoas dangerous',
      'zoanthids poisonous',
    ],
    headline:
      'Some zoanthids hold palytoxin, one of the strongest poisons known: never boil or dry-scrub them, and never cut them unprotected.',
    points: [
      ['How it enters', 'steam, spray and dust by the lungs; cuts, eyes, mouth; others in the room too'],
      [
        'Signs',
        'bitter or metal taste, fever, cough, muscle pain, weakness, numbness, burning eyes, even hours later',
      ],
      ['Remedy', 'no antidote is known'],
    ],
    steps: [
      'Gloves, goggles, open windows, work under water.',
      'Children and pets out; bag waste wet.',
      'Signs: leave, fresh air, call emergency or poison services, say palytoxin.',
      `${palytoxinCleaning.text}.`,
    ],
    cautions: ['Do not wait: medical help first.'],
    see: ['dips and quarantine', 'first corals'],
    sources: ['CDC2015', 'Pelin2016', 'Schulz2019', 'practice', 'memory'],
  },
  {
    id: 'water and mains',
    names: ['electricity', 'drip loop', 'electric safety', 'mains', 'gfci', 'rcd', 'stray voltage'],
    headline:
      'Salt water and mains kill: a residual-current switch, drip loops, and power off before your hands go in.',
    points: [
      ['Drip loop', 'each cable hangs below its socket before it rises to it'],
      ['Switch', 'a residual-current device (RCD, GFCI) on every tank circuit; test it monthly'],
      ['Sockets', 'high and to the side; one extension lead, off the floor, never one in another'],
      ['Probe', 'a grounding probe replaces no switch'],
      ['Heater', 'unplug it before the water falls; cracked glass is scrap'],
    ],
    steps: [
      'Wipe salt creep from plugs, power off.',
      'A tingle: do not touch again, cut power at the breaker, then look.',
    ],
    cautions: [
      'Someone is shocked: power off before you touch them, then call for medical help. Wiring is for an electrician.',
    ],
    see: ['top-off', 'holiday', 'moving house'],
    sources: ['practice'],
  },
  {
    id: 'moving house',
    names: ['moving', 'move', 'moving a tank', 'moving the tank', 'move the tank'],
    headline:
      'Move the animals first and the glass empty: plan for one day, with new salt water ready at both ends.',
    points: [
      ['Before', 'mix enough new water for half the tank; feed nothing on the last day'],
      ['Bags and tubs', 'corals apart, lids on, battery air for fish, warm boxes'],
      ['Rock', 'keep it wet and warm; it carries the bacteria'],
      ['Sand', 'old deep beds hold filth: rinse well or replace'],
    ],
    steps: [
      'Power off before hands go in. Never lift a tank with water in it.',
      'Glass, rock, water, heat, flow; animals when salinity and temperature match.',
      'Light low for some days; test ammonia daily for a week.',
    ],
    see: ['acclimation', 'mixing salt water', 'water and mains'],
    sources: ['practice'],
  },
  {
    id: 'holiday',
    names: ['holidays', 'vacation', 'travel', 'tank sitter', 'going away', 'away from home'],
    headline: 'Change nothing new in the last two weeks, and leave a sitter one page with portions ready.',
    points: [
      ['Top-off', 'is the first thing to fail: fill the reservoir, and have it checked every other day'],
      ['Food', 'portions by the day in boxes; fish bear some days without better than too much'],
      ['Doses', 'full bottles, labelled; a stop rule: when unsure, leave it off'],
      ['Rehearse', 'let the sitter do one day while you watch'],
    ],
    steps: [
      'Test and change water some days before, not the last evening.',
      'Write down: what is normal, whom to ring, which switch is which.',
      'Ask for a photo each visit.',
    ],
    see: ['top-off', 'feeding', 'water and mains'],
    sources: ['practice'],
  },
];
