import { saidIn } from '../said.ts';

const PERSON = String.raw`(?:i|i'?m|i'?ve|we|he|she|me|my (?:wife|husband|partner|kid|kids|son|daughter|child|children|mum|mom|dad|girlfriend|boyfriend|friend|flatmate|baby)|someone|somebody)`;
const ANIMAL = String.raw`(?:fish|clown\w*|anemone|nem|coral|torch|plate|tang|eel|crab|shrimp|acan|scoly|star|wrasse|goby|grouper)`;
const ILL = ['fever\\w*', 'cough\\w*', 'chills?', 'shaking', 'dizzy', 'nause\\w*', 'vomit\\w*', 'throwing up', 'headache', 'chest', 'weak', 'ach(?:e|es|ing)', 'sick', 'ill', 'tingl\\w*', 'numb\\w*', 'sweating', 'burning eyes?', 'sore eyes?'] as const; // prettier-ignore
const HANDLED = ['frag(?:ged|ging)?', 'cut(?:ting)?', 'scrub(?:bed|bing)?', 'boil(?:ed|ing)?', 'handl(?:ed|ing)', 'touch(?:ed|ing)', 'clean(?:ed|ing)', 'brush(?:ed|ing)', 'zoas?', 'zoanthids?', 'palys?', 'palytoxin', 'rocks?', 'dinos?'] as const; // prettier-ignore

/**
 * Whether a cleaned text speaks of a person who is hurt or ill: rather once too often. Animals that swallow something
 * and corals that get a shock of light are left out.
 */
export const isPersonHurt = saidIn([
  {
    all: [
      [
        String.raw`(?:in|into|got in) (?:my|his|her|their|the) (?:eyes?|mouth|face)`,
        'drank',
        'drunk',
        'inhaled',
        'breathed in',
        String.raw`burn(?:s|ed|t|ing)? (?:my|his|her|their|on (?:my|the)) (?:skin|hands?|fingers?|arms?|eyes?|throat)`,
        'electrocuted',
        'electric shock',
        String.raw`(?:feel|felt|get|got|getting|gave me|gives me) (?:an? )?(?:little |small |electric )?(?:tingl\w*|zap|shock|buzz)`,
        'numb',
        '(?:metallic|bitter|metal) taste',
        'tast(?:e|es|ed|ing) (?:of |like )?metal(?:lic)?',
        'cannot breathe',
        "can'?t breathe",
        'palytoxin poison\\w*',
      ],
    ],
  },
  { all: [['got (?:shocked|zapped)']], not: [String.raw`${ANIMAL}s? (?:\w+ )?got (?:shocked|zapped)`] },
  { all: [['swallow(?:ed|s)?']], not: [String.raw`${ANIMAL} (?:has |have |just |had )?swallow(?:ed|s)?`] },
  { all: [[`${PERSON} (?:just |got |was |were |have been |been |got badly )*stung`]] },
  { all: [[PERSON], [...ILL], [...HANDLED]], not: [`${ANIMAL}s? (?:is|are|looks?) (?:sick|ill|weak)`] },
]);
