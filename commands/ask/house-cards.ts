import { hurtWays } from '../../core/care/house-cards/hurt.ts';
import type { Way } from '../../core/care/house-cards/way.ts';
import { hurtIds, type HurtGroupId, type HurtId } from '../../core/care/hurt/cards.ts';
import type { Moment } from '../../core/language/case.ts';
import { cardsTold } from '../../core/language/evidence.ts';
import type { Frame } from '../../core/language/frame.ts';
import { met } from '../../core/language/met.ts';
import { isHurt } from '../urgent/hurt.ts';
import { hurtOf, PETS } from '../urgent/of-reading.ts';

/** From this probability the words of a message may say how somebody was hurt. Own choice. */
const PERHAPS = 0.2;

/** How a message says somebody was hurt, by its own words: they are not kept, and a later "ice on it?" leans on them. */
function hurtSaid(frames: readonly Frame[]): NonNullable<Moment['cards']> {
  const frame = frames.find(({ kind, probability }) => kind === 'person-hurt' && probability >= PERHAPS);
  const name = frame === undefined ? undefined : hurtOf(frame.reading).first;
  return frame === undefined || name === undefined || !isHurt(name)
    ? []
    : [{ kind: 'person-hurt', name, probability: frame.probability }];
}

/** The hurt a case tells of: below its plainest learnt card what the words of any message said of it. */
export function hurtTold(said: readonly Moment[]): HurtId | undefined {
  const told = cardsTold(said, 'person-hurt', 0);
  const ways = told.map((name) => waysOf[name]).find((found) => found !== undefined) ?? [];
  const below = hurtIds.filter((id) => told.includes(id) && ways.some(({ card }) => card === id));
  return below.length === 1 ? below[0] : undefined;
}

const waysOf: Readonly<Record<string, readonly Way<HurtId | HurtGroupId>[]>> = hurtWays;

/** A card that a case keeps for an animal out of the water, and words that bear it out. */
const OUT = 'out of the water';
const OUT_WORDS = ['lives.jumps', 'places.floor', 'places.houseCarpet'] as const;
/** Surer than this a card needs no words. Own choice. */
const SURE = 0.65;

/** The cards of a message as its case keeps them: a fish found dead behind the rock is none out of the water. */
export function cardsKept(
  cards: NonNullable<Moment['cards']>,
  frames: readonly Frame[],
): NonNullable<Moment['cards']> {
  const scanned = frames[0]?.reading.scanned;
  const isOut = scanned !== undefined && met(scanned, ...OUT_WORDS);
  const left = cards.filter(({ name, probability }) => name !== OUT || isOut || probability >= SURE);
  return [...left, ...hurtSaid(frames)];
}

/** "the dog is ok": a pet that was hurt is told to be well. */
export function isPetWell({ scanned }: Frame['reading']): boolean {
  const words = scanned.tokens.map(({ word }) => word);
  const isWell = words.some((word, at) => WELL.has(word) && IS.has(words[at - 1] ?? ''));
  return isWell && met(scanned, ...PETS) && !met(scanned, 'manner.negation') && !words.includes('?');
}

const WELL: ReadonlySet<string> = new Set(['ok', 'okay', 'fine', 'alright', 'well']);
const IS: ReadonlySet<string> = new Set(['is', "it's", 'its', "dog's", "cat's"]);
