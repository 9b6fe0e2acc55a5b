import { NO_KIND_OF_FISH } from '../../../core/care/subjects/named-in.ts';
import { fishKinds } from '../../../core/fish/fish-kinds.ts';
import { againstThem, inLitres, type Some } from '../../../core/fish/together.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { classesIn } from '../../../core/language/lexicon/classes.ts';
import { met } from '../../../core/language/met.ts';
import { fixed, toUnit } from '../../../core/quantity/format.ts';
import { answer, type Answer } from '../../answer.ts';
import type { Row } from '../row.ts';
import { readableAs } from './readable-as.ts';

/** Questions that a list of fish in a tank does not answer. */
const OTHER_CARDS: ReadonlySet<string> = new Set([
  'chasing now',
  'order of adding',
  'bully in charge',
  'how many',
]);
/** Words of these name no kind, or are named beside one. */
const VAGUE: ReadonlySet<string> = new Set([
  ...NO_KIND_OF_FISH,
  'fish.basslet',
  'fish.dartfish',
  'fish.shoaling',
]);
/** Words between a number and the fish it counts, at most. Own choice. */
const MOST_WORDS_BETWEEN = 2;

export const fishTogetherRow: Row = {
  kind: 'fish-together',
  label: 'ask.kindFishTogether',
  uses: ['volume', 'counts'],
  computes: (frame) => judged(frame) !== undefined,
  answer: judged,
};

/** The fish named in the water said: what speaks against them, and the order they go in; undefined where a card knows better. */
function judged(frame: Frame): Answer | undefined {
  const { volume } = frame.slots;
  const litres = volume === undefined ? undefined : readableAs('volume', volume);
  const fish = fishNamed(frame);
  if (litres === undefined || fish === undefined || OTHER_CARDS.has(frame.cards[0]?.name ?? ''))
    return undefined;
  const against = againstThem(fish, litres);
  if (fish.length < 2 && against.length === 0) return undefined;
  const names = fish.map(({ kind: { name }, count }) => (count === undefined ? name : `${count} ${name}`));
  const order = fish.map(({ kind }) => kind.name).join(', then ');
  const isNo = against.length > 0;
  const lengthCm = Math.max(0, ...fish.map(({ kind: { leastCm = 0 } }) => leastCm));
  const long =
    lengthCm === 0
      ? ''
      : `, in a glass of ${lengthCm} cm (${fixed(toUnit('length', lengthCm, 'ft'), 0)} ft) or more`;
  return answer({
    headline: isNo
      ? `Not as it stands in ${inLitres(litres)}: ${against.slice(0, MOST_AT_ONCE).join('; ')}.`
      : `Mostly yes in ${inLitres(litres)}: nothing known speaks against these together${long}.`,
    read: [`judged: ${names.join(', ')}; a fish not named is not judged`],
    facts: isNo
      ? against.map((value, at) => ({ label: `${at + 1}`, value }))
      : fish.map(({ kind }) => ({ label: kind.name, value: `from ${inLitres(kind.leastL)}` })),
    steps: [
      `${isNo ? 'Strike or change these first. ' : ''}In this order, weeks apart: ${order}.`,
      ...(met(frame.reading.scanned, 'fish.parasite', 'looks.spots')
        ? [
            'One had spots: it may carry ich without them. A new fish can catch it; quarantine 4 to 6 weeks first.',
          ]
        : []),
      'Torn fins, or one kept from food: part them the same day; have a way back for the last one in.',
    ],
    sources: ['practice', 'memory'],
  });
}

/** Told in the first line. */
const MOST_AT_ONCE = 2;

/** The kinds named, in the order they go in, each with its number where one was said; undefined where one is not known here. */
function fishNamed({ reading: { scanned } }: Frame): readonly Some[] | undefined {
  const { tokens } = scanned;
  const classes = classesIn(tokens.map(({ word }) => word));
  const known = new Set<string>(fishKinds.flatMap((kind) => kind.classes));
  const isStrange = classes
    .flat()
    .some((name) => name.startsWith('fish.') && !known.has(name) && !VAGUE.has(name));
  const fish = fishKinds.flatMap((kind): Some[] => {
    const at = classes.flatMap((here, place) =>
      kind.classes.some((name) => here.includes(name)) ? [place] : [],
    );
    // A six-line is no second wrasse.
    const isNarrower =
      kind.name === 'wrasse' && at.every((place) => classes[place]?.includes('fish.sixLine'));
    if (at.length === 0 || isNarrower) return [];
    const counts = at.flatMap((place) => {
      const before = tokens.slice(Math.max(0, place - MOST_WORDS_BETWEEN), place);
      const number = before.findLast((token) => token.number !== undefined)?.number;
      return number !== undefined && number.kinds.length === 0 && Number.isInteger(number.value)
        ? [number.value]
        : [];
    });
    return [{ kind, count: counts.length === 0 ? undefined : Math.max(...counts) }];
  });
  return isStrange || fish.length === 0 ? undefined : fish;
}
