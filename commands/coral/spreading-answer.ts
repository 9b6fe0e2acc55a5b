import { CLEAR_OF_MAT_CM } from '../../core/corals/spreading.ts';
import { answer, type Answer } from '../answer.ts';

/** Something soft that spreads over its neighbours: an island, no scraping inside, and a photo before a name. */
export function spreadingAnswer(): Answer {
  return answer({
    headline:
      'Do not scrape them inside the tank: loose bits spread it. Take the rock out, or give it an island of its own, early.',
    read: ['something soft that spreads on rock; I cannot tell from words what it is'],
    steps: [
      'Post a close-up photo, pumps off, by white light: not every fuzzy polyp is a pest.',
      `Put the rock on bare sand as an island, some ${CLEAR_OF_MAT_CM} cm clear all round (common practice).`,
      'A small patch: lift the rock out, peel or chip it off outside the tank, and rinse the rock in tank water.',
      'A rock that is covered: take it out, move the corals you want to keep to other rock, and replace it.',
    ],
    dangers: [
      'With zoanthids on the rock: gloves, eye protection, no scrubbing or boiling. They may hold palytoxin.',
      'No chemicals in the tank against them.',
    ],
    cautions: [
      'Mats creep over rock, not well over sand. Star polyps, clove polyps and pulsing kinds win by growing over, not by stinging; zoanthids stop spreading when they run out of free rock.',
    ],
    sources: ['practice'],
  });
}
