import { CLEAR_OF_MAT_CM } from '../../../core/corals/spreading.ts';
import { palytoxinCaution, palytoxinCleaning } from '../../../core/corals/cautions.ts';
import { coralsIn } from '../../../core/words/corals.ts';
import type { Heard } from '../../../core/words/hear.ts';
import { answer } from '../../answer.ts';
import { says, type Intent } from '../intent.ts';

const CUT = [
  'cut(?:ting|s)?',
  'scissors',
  '(?:to|i|you|how|safely|and|&) frag',
  'fragging',
  'glu(?:e|ed|ing)',
  'blade',
  'scalpel',
  'bone cutters?',
  'split(?:ting)?',
] as const;
const BESIDE = ['side by side', 'stings?', 'next to', 'together', 'touch(?:ing)?'] as const;

const OTHER_ANIMALS = ['clams?', 'tridacna', 'anemones?', 'nems?', 'fish', 'shrimps?', 'sponges?'] as const;

/** Zoanthids beside each other, or being cut: palytoxin before all else. */
export const zoanthidsIntent: Intent = (heard) => {
  const headline = zoanthidsHeadline(heard);
  if (headline === undefined) return undefined;
  const zoas = coralsIn(heard.text).some(({ entries }) => entries.some(({ group }) => group === 'zoanthid'));
  if (!zoas) return undefined;
  return answer({
    headline,
    steps: [
      'Not in the kitchen: outside or in a room with open windows, away from food, children and pets.',
      'Gloves and eye protection before you touch them, and a face shield if water can spray. Cut under water or keep them wet, and let nothing spray.',
      'Keep the tools for this alone, and wash hands and table afterwards.',
      `${palytoxinCleaning.text}.`,
      'Leave 2 to 5 cm (1 to 2 in) between kinds, and group them by vigour: the large Palythoa kinds grow over and irritate the small ones (common practice).',
    ],
    cautions: [
      `${palytoxinCaution.text}.`,
      'Numb lips or fingers, a metallic taste, fever, cough or weakness after handling them: get medical help at once and say palytoxin. It can come hours later.',
      'How much toxin a kind holds cannot be seen, and differs from colony to colony: treat all of them alike.',
    ],
    sources: ['practice', 'memory', 'CDC2015', 'Pelin2016', 'Schulz2019'],
  });
};

/** Cutting first, then room; what heats or sprays them has a card of its own (core/care/urgent/zoanthid-rock.ts). */
function zoanthidsHeadline(heard: Heard): string | undefined {
  const beside = says(heard, ...BESIDE);
  if (says(heard, ...CUT) && !beside && !says(heard, 'lights?', 'par'))
    return 'Gloves and eye protection first, and keep them wet: zoanthids may hold palytoxin. Then cut through the mat between the polyps, not through a polyp.';
  return beside && !says(heard, ...OTHER_ANIMALS)
    ? 'Mostly yes: zoanthids seldom sting each other, they grow over each other. Mind the palytoxin first when you cut them.'
    : undefined;
}

const POLYPS = [
  'polyps?',
  'xenia',
  'gsp',
  'star polyps?',
  'clove',
  'fluffy',
  'fuzzy',
  'zoas?',
  'mats?',
  'anthelia',
] as const;
const SMOTHER = [
  'smother(?:s|ed|ing)?',
  'overgr(?:ow|ows|ew|own|owing)',
  'tak(?:e|es|ing) over',
  'scrap(?:e|ed|ing)',
  'invad(?:e|es|ed|ing)',
  '(?:is|are|its) everywhere',
  '(?:kill|remove|get(?:ting)? rid of|stop) (?:off )?(?:the |my |all )*(?:xenia|gsp|green star polyps?|star polyps?|clove polyps?|anthelia)',
] as const;

/** Pests and algae that want another answer. */
const OTHERS = [
  'aiptasia',
  'majanos?',
  'algae',
  'cyano\\w*',
  'slime',
  'bryopsis',
  'hydroids?',
  'vermetids?',
] as const;

/** Something soft that spreads over its neighbours: an island, no scraping inside, and a photo before a name. */
export const spreadingIntent: Intent = (heard) => {
  if (!says(heard, ...POLYPS) || !says(heard, ...SMOTHER) || says(heard, ...OTHERS)) return undefined;
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
};
