import { corals } from '../../../core/corals/coral-list.ts';
import type { NamedCoral } from '../../../core/corals/named.ts';
import { coralsIn } from '../../../core/words/corals.ts';
import type { Heard } from '../../../core/words/hear.ts';
import { says } from '../intent.ts';
import { isTrouble } from './named.ts';

const BESIDE = [
  'next to',
  '(?:cm|in|inch|inches) (?:away )?from',
  'away from',
  'beside',
  'besides',
  'side by side',
  'near',
  'close',
  'together',
  'touch(?:ing|es)?',
  'stings?',
  'stinging',
  'apart',
  'between',
  'neighbou?rs?',
  'get along',
  'get on',
  'fight(?:ing|s)?',
  'same rock',
  'same tank',
  'how far',
  'each other',
] as const;
/** Besides two names and these words nothing else can be asked. */
const LITTLE: ReadonlySet<string> = new Set(
  'a an and are be big bowl by can do does fine frag frags friends good have i in is it keep little mix mixed my n nem nems new ok okay on or our plus problem reef rock safe same small tank the these this too w will with anemone anemones & + coral corals'.split(
    ' ',
  ),
);
const LINK = /(?:\b(?:and|with|by|w|plus|n)\b|[&+])/;
/** "two torches together", "2 acro frags how far apart": one kind, twice. */
const TWICE = ['two', '2', 'both', 'another', 'each other', 'same (?:kind|type|species)'] as const;
const ANEMONE = ['nems?', 'anemones?'] as const;

/** The two a sentence sets side by side; a nem or anemone of no kind named is any that hosts. */
export function pairIn(heard: Heard): readonly [NamedCoral, NamedCoral] | undefined {
  const [one, second] = coralsIn(heard.text);
  if (one === undefined) return undefined;
  const isBeside = says(heard, ...BESIDE);
  const other = second ?? anyAnemone(heard, one) ?? (isBeside && isTwice(heard, one) ? one : undefined);
  if (other === undefined) return undefined;
  return isBeside || isOnlyTwoNames(heard, [one, other]) ? [one, other] : undefined;
}

function isTwice(heard: Heard, { name }: NamedCoral): boolean {
  const isSeveral =
    name.endsWith('s') || says(heard, 'frags', 'pieces', 'colonies', 'corals', 'another', 'each other');
  return isSeveral && says(heard, ...TWICE) && !isTrouble(heard);
}

function isOnlyTwoNames({ text, mentions }: Heard, names: readonly NamedCoral[]): boolean {
  const rest = names.reduce((left, { name }) => left.replace(name, ' '), text.replace(/[?!.,]/g, ' '));
  const words = rest.split(/\s+/).filter((word) => word !== '');
  return mentions.length === 0 && LINK.test(rest) && words.every((word) => LITTLE.has(word));
}

function anyAnemone(heard: Heard, { entries }: NamedCoral): NamedCoral | undefined {
  if (!says(heard, ...ANEMONE) || entries[0].group === 'anemone') return undefined;
  const [first, ...more] = corals.filter(({ group }) => group === 'anemone');
  return first === undefined ? undefined : { name: 'anemone', entries: [first, ...more] };
}
