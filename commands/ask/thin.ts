import { coralsIn } from '../../core/words/corals.ts';
import { tellMore } from '../triage/tell-more.ts';
import { says, type Intent } from './intent.ts';

/** Words of a state, where a verb says that something is in it. */
const STATES = [
  'dead',
  'sick',
  'ill',
  'bad',
  'badly',
  'poor',
  'poorly',
  'rough',
  'sad',
  'terrible',
  'awful',
  'horrible',
  'unhappy',
  'unwell',
  'off',
  'weird',
  'strange',
  'wrong',
  'pale',
  'pal(?:er|ing)',
  'white',
  'dull',
  'closed',
  'deflated',
  'droopy',
  'wilted',
  'shrunk',
  'shrivell?ed',
  'slimy',
];
const IS = String.raw`(?:is|are|was|were|look(?:s|ing)?|seem(?:s|ing)?|do(?:es|ing)?|act(?:s|ing)?|feel(?:s|ing)?|get(?:s|ting)?|got|go(?:es|ing|ne)?|went|turn(?:s|ed|ing)?|stay(?:s|ed|ing)?|all|half|what'?s|something'?s|something)(?: (?:all|so|really|very|pretty|quite|a bit|kinda|totally|still|going|gone|not|like|be|is|been))*`;
const NOT = String.raw`(?:not|isn'?t|aren'?t|won'?t|never|don'?t|doesn'?t|stopped)`;

const TROUBLE = [
  'dying',
  'dies',
  'died',
  String.raw`bleach(?:ed|es|ing)`,
  'crash(?:ed|es|ing)?',
  'fading',
  String.raw`melt(?:ed|s|ing)?`,
  'rotting',
  'receding',
  'recession',
  'peeling',
  'shrinking',
  'shrivell?ing',
  'drooping',
  'wilting',
  'struggling',
  'suffering',
  'declining',
  'sucks',
  'losing',
  String.raw`disintegrat\w*`,
  'gaping',
  'detached',
  'upside ?down',
  'gasping',
  String.raw`(?:lying|laying|lays|lies|swim(?:s|ming)?|float(?:s|ing)?) (?:on (?:its|his|her|their|the) (?:side|back)|weird(?:ly)?|funny|in circles|sideways|head ?(?:up|down)|at the bottom)`,
  String.raw`(?:won'?t|wo ?nt|not|stopped|does ?n'?t|is ?n'?t|never|refus\w*) (?:eat|eating|to eat)`,
  String.raw`smells? (?:\w+ )?(?:bad|awful|terrible|rotten|foul|off|like (?:rotten )?eggs?|fishy)`,
  String.raw`fell (?:on|over)`,
  String.raw`(?:got|was|being|been) stung`,
  String.raw`${IS} (?:${STATES.join('|')})(?! to\b)`,
  String.raw`${NOT} (?:(?:look(?:ing)?|do(?:ing)?|be(?:ing)?) )?(?:so |very |too |all that )?(?:good|right|well|great|happy|healthy|open(?:ing|ed)?|thriving|growing|eating)`,
  String.raw`(?:have|having|has|got|with|some|my|more|big) (?:a |an |some |big |many )*(?:problems?|issues?|trouble)`,
];

const ANIMALS = [
  'tank',
  'reef',
  'aquarium',
  'system',
  'nano',
  'corals?',
  'sps',
  'lps',
  'softies',
  'frags?',
  'colon(?:y|ies)',
  'anemones?',
  'nems?',
  'polyps?',
  'zoas?',
  'fish(?:es)?',
  'shrimps?',
  'snails?',
  'clams?',
  'urchins?',
  'crabs?',
  'invert(?:s|ebrates)?',
  'animals?',
  'livestock',
  String.raw`clown\w*`,
  'tangs?',
  String.raw`(?:sea )?star ?fish`,
  'mandarin',
  'seahorses?',
  'water',
  'everything',
  'all of (?:them|it)',
  'things?',
];

/** Trouble with nothing to work with: no number, no event. */
export const thinIntent: Intent = (heard) => {
  const named = coralsIn(heard.text);
  const isAbout = named.length > 0 || says(heard, ...ANIMALS);
  if (heard.said.length > 0 || !isAbout || !says(heard, ...TROUBLE)) return undefined;
  return tellMore(
    named.map(({ name }) => name),
    named.flatMap(({ entries }) => entries.slice(0, 1)),
  );
};
