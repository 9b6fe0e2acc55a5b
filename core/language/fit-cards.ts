import { foldOf } from './fold-of.ts';
import { kinds, type Kind } from './kinds.ts';
import type { Batch, Line } from './labelled.ts';
import { featuresOf, type FeatureGroup } from './learn/features.ts';
import { fitted as fittedLinear } from './learn/fitted.ts';
import { probabilities, type Packed } from './learn/packed.ts';
import type { Fitting } from './learn/softmax.ts';
import { vectorOf, vocabularyIn } from './learn/vocabulary.ts';
import { scan } from './tokens.ts';

/** What a card below a kind says: its words are learnt from beside the messages that mean it. */
export interface CardText {
  readonly kind: Kind;
  readonly card: string;
  readonly texts: readonly string[];
}

/** Features kept of each kind's cards. */
const MOST = 6000;
const FITTING: Fitting = { epochs: 16, rate: 0.7, decay: 1e-4, seed: 8, dropped: 0.5 };

/** A message, or words of a card, of which the card below its kind is known. */
interface Carded {
  readonly kind: Kind;
  readonly card: string;
  readonly groups: readonly FeatureGroup[];
}

/** For every kind whose messages have several cards below it: which of them it is; with honest probabilities. */
export function fitCards(
  batches: readonly Batch[],
  cardTexts: readonly CardText[],
): Readonly<Record<string, Packed>> {
  const own = batches.map(({ head, lines }) => ({ batch: head.batch, lines: cardedIn(lines) }));
  const said = cardTexts.flatMap(({ kind, card, texts }) => texts.map((text) => ({ kind, card, text })));
  const words = cardedIn(said);
  return fitted(
    own.flatMap(({ lines }) => lines),
    words,
    cardTemperature(unseenCards(own, words)),
  );
}

function cardedIn(lines: readonly Pick<Line, 'kind' | 'card' | 'text'>[]): readonly Carded[] {
  return lines.flatMap(({ kind, card, text }) =>
    card === undefined ? [] : [{ kind, card, groups: featuresOf(scan(text)) }],
  );
}

function fitted(
  messages: readonly Carded[],
  words: readonly Carded[],
  temperature: number,
): Readonly<Record<string, Packed>> {
  const models = kinds.flatMap((kind): [string, Packed][] => {
    const own = messages.filter((one) => one.kind === kind);
    const labels = [...new Set(own.map(({ card }) => card))].sort();
    if (labels.length < 2) return [];
    const said = words.filter((one) => one.kind === kind && labels.includes(one.card));
    const wanted = [...own, ...said].map(({ card, groups }) => ({
      groups,
      target: [[labels.indexOf(card), 1]] as const,
    }));
    return [[kind, fittedLinear(wanted, labels, MOST, FITTING, temperature)]];
  });
  return Object.fromEntries(models);
}

/** A message whose card was guessed by weights that have not seen its batch: the probability of each card. */
export interface UnseenCard {
  readonly card: string;
  readonly guessed: Readonly<Record<string, number>>;
}

/** Groups of batches left out in turn. */
const FOLDS = 5;

/** The card of every labelled message, guessed by weights made without its own batch. */
function unseenCards(
  batches: readonly { readonly batch: string; readonly lines: readonly Carded[] }[],
  words: readonly Carded[],
): readonly UnseenCard[] {
  return Array.from({ length: FOLDS }, (_, fold) => fold).flatMap((fold) => {
    const isOut = ({ batch }: { readonly batch: string }): boolean => foldOf(batch, FOLDS) === fold;
    const seen = batches.filter((one) => !isOut(one)).flatMap(({ lines }) => lines);
    const models = fitted(seen, words, 1);
    const readers = new Map(
      Object.entries(models).map(([kind, packed]) => [
        kind,
        { packed, vocabulary: vocabularyIn(packed.hashes) },
      ]),
    );
    const left = batches.filter(isOut).flatMap(({ lines }) => lines);
    return left.flatMap(({ kind, card, groups }): UnseenCard[] => {
      const reader = readers.get(kind);
      if (reader === undefined) return [];
      const { packed, vocabulary } = reader;
      const chances = probabilities(packed, vectorOf(groups, vocabulary));
      return [
        { card, guessed: Object.fromEntries(packed.labels.map((name, at) => [name, chances[at] ?? 0])) },
      ];
    });
  });
}

/** No probability is taken as less, so that one surprise does not outweigh everything. */
const LEAST = 1e-6;
const TEMPERATURES = Array.from({ length: 26 }, (_, at) => 0.5 + at * 0.1);

/**
 * What scores of cards are divided by so that the probabilities are honest: of messages not seen, the likeliest
 * temperature. Guo et al., Proc. ICML 70 (2017) 1321, section 4.2 (from memory).
 */
export function cardTemperature(unseen: readonly UnseenCard[]): number {
  const lossAt = (temperature: number): number => {
    const raised = (probability: number): number => Math.max(probability, LEAST) ** (1 / temperature);
    return unseen.reduce((sum, { card, guessed }) => {
      const total = Object.values(guessed).reduce((all, one) => all + raised(one), 0);
      return sum - Math.log(raised(guessed[card] ?? 0) / total);
    }, 0);
  };
  const losses = TEMPERATURES.map((temperature) => ({ temperature, loss: lossAt(temperature) }));
  return losses.reduce((best, one) => (one.loss < best.loss ? one : best)).temperature;
}
