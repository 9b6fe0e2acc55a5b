import { CLEAR_OF_MAT_CM } from '../../core/corals/spreading.ts';
import { answer, type Answer } from '../answer.ts';

/** Something soft that spreads over its neighbours: an island, no scraping inside, and a photo before a name. */
export function spreadingAnswer(): Answer {
  return answer({
    headline:
      'Do not scrape them inside the tank: loose bits settle and spread it. Take the rock out, or give it an island of its own, and act early.',
    read: ['something soft that spreads on rock; I cannot tell from words what it is'],
    steps: [
      'Post a close-up photo with the pumps off, by white light, so that keepers can tell what it is. Not every fuzzy polyp is a pest.',
      `Put the rock on bare sand as an island, some ${CLEAR_OF_MAT_CM} cm clear all round: mats creep over rock, not well over sand (common practice).`,
      'A small patch: lift the rock out, peel the mat off or chip away the rock surface under it outside the tank, and rinse the rock in tank water before it goes back.',
      'A rock that is covered: take it out, move the corals you want to keep to other rock, and replace it.',
    ],
    cautions: [
      'Star polyps, clove polyps and pulsing kinds win by growing over, not by stinging; zoanthids stop spreading when they run out of free rock.',
      'No chemicals in the tank against them. If the rock also carries zoanthids: gloves, eye protection, and no scrubbing or boiling, for they may hold palytoxin.',
    ],
    sources: ['practice'],
  });
}
