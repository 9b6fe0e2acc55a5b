import { coralsIn } from '../../../core/words/corals.ts';
import type { Heard } from '../../../core/words/hear.ts';
import { spreadingAnswer } from '../../coral/spreading-answer.ts';
import { zoanthidAnswer } from '../../coral/zoanthid-answer.ts';
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
  const what = askedOf(heard);
  if (what === undefined) return undefined;
  const zoas = coralsIn(heard.text).some(({ entries }) => entries.some(({ group }) => group === 'zoanthid'));
  return zoas ? zoanthidAnswer(what) : undefined;
};

/** Cutting first, then room; what heats or sprays them has a card of its own (core/care/urgent/zoanthid-rock.ts). */
function askedOf(heard: Heard): 'cut' | 'beside' | undefined {
  const beside = says(heard, ...BESIDE);
  if (says(heard, ...CUT) && !beside && !says(heard, 'lights?', 'par')) return 'cut';
  return beside && !says(heard, ...OTHER_ANIMALS) ? 'beside' : undefined;
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
  return says(heard, ...POLYPS) && says(heard, ...SMOTHER) && !says(heard, ...OTHERS)
    ? spreadingAnswer()
    : undefined;
};
