import { onlyEntry } from '../../../core/corals/named.ts';
import type { CoralEntry } from '../../../core/corals/entry.ts';
import { findCorals } from '../../../core/corals/find.ts';
import type { NamedCoral } from '../../../core/corals/named.ts';
import type { Heard } from '../../../core/words/hear.ts';
import type { Fact } from '../../answer.ts';
import { flowLine, hardinessLine, lawLine, roomLine, spotLine, stingLine } from '../../coral/about-lines.ts';
import { peopleLines, withFirst } from '../../coral/facet-first.ts';
import { aboutCoralCommand } from '../../coral/about.ts';
import { call } from '../call.ts';
import { says, type Intent } from '../intent.ts';
import { isTrouble, oneCoral } from './named.ts';

/** What a question can be after, the particular first. */
interface Facet {
  readonly words: readonly string[];
  /** With one of these it is after something else. */
  readonly not?: readonly string[];
  readonly lines: (entry: CoralEntry) => readonly Fact[];
}

/** "toxic to my sps": not to people. */
const TO_CORALS =
  '(?:toxic|poison(?:ous)?|dangerous|harm(?:s|ful)?) (?:to|for) (?:my |the |other |some |any )*(?:sps|lps|corals?|acros?|stonies|stony|neighbou?rs?)';

const facets: readonly Facet[] = [
  {
    words: [
      'toxic',
      'poison(?:ous)?',
      'venomous',
      'dangerous',
      'safe to (?:touch|handle)',
      'palytoxin',
      'gloves',
    ],
    not: [TO_CORALS],
    lines: peopleLines,
  },
  {
    words: ['legal(?:ly)?', 'cites', 'protected', 'endangered', 'permits?'],
    lines: (entry) => [lawLine(entry)],
  },
  { words: ['flow', 'current'], lines: (entry) => [flowLine(entry)] },
  {
    words: [
      'aggressive',
      'sting(?:s|ing)?',
      'sweepers?',
      'how much (?:room|space)',
      'how far',
      'peaceful',
      'reach',
      TO_CORALS,
    ],
    lines: (entry) => [stingLine(entry), roomLine(entry)],
  },
  {
    words: ['where', 'place(?:ment)?', 'sand', 'rock', 'spot', 'position'],
    lines: (entry) => [spotLine(entry)],
  },
  {
    words: [
      'hard(?:y|ier)?',
      'eas(?:y|ier)',
      'difficult',
      'demanding',
      'beginners?',
      'newbies?',
      'should i (?:get|buy)',
      'delicate',
      'tough',
    ],
    lines: (entry) => [hardinessLine(entry)],
  },
];

const ABOUT = [
  'tell me',
  'care',
  'info(?:rmation)?',
  "what(?: is|s|'s|\u2019s) (?:a|an|the)",
  'care (?:for|of|sheet|guide|level)',
  'caring for',
  'look after',
  'keep(?:ing)?',
  'about',
  'requirements?',
  'needs?',
] as const;

/** "tell me about gonis", "is a torch a hardy coral", "how much flow for a duncan": the guide, what was asked first. */
export const aboutIntent: Intent = (heard, context) => {
  if (heard.mentions.length > 0) return undefined;
  if (!facets.some(({ words }) => says(heard, ...words)) && !says(heard, ...ABOUT)) return undefined;
  const named = oneCoral(heard) ?? misspelt(heard);
  if (named === undefined) return undefined;
  const around = { ...heard, text: heard.text.replace(named.name, ' ') };
  const facet = facets.find(
    ({ words, not = [] }) => says(around, ...words) && !(not.length > 0 && says(around, ...not)),
  );
  if (facet === undefined && !says(around, ...ABOUT)) return undefined;
  const whole = call(aboutCoralCommand, { coral: named.name }, context);
  const entry = onlyEntry(named);
  if (facet === undefined || entry === undefined) return whole;
  return withFirst(whole, entry, facet.lines(entry));
};

const ALONE = [
  /^(?:tell me about|info(?:rmation)? (?:on|about)|caring for|care (?:for|of)|what(?:'?s| is) an?) (?:a |an |the |my )?([a-z -]{4,40}?)\??$/,
  /^([a-z -]{4,40}?) (?:care|info|requirements)\??$/,
];

/** A name that stands alone in the question is read however it is spelt: "euphilia hamer care". */
function misspelt(heard: Heard): NamedCoral | undefined {
  const name = ALONE.map((pattern) => pattern.exec(heard.text.trim())?.[1]).find(
    (found) => found !== undefined,
  );
  if (name === undefined || isTrouble(heard)) return undefined;
  const found = findCorals(name);
  const [first, ...more] =
    found.kind === 'one' ? [found.entry] : found.kind === 'several' ? found.entries : [];
  return first === undefined ? undefined : { name, entries: [first, ...more] };
}
