import { featuresOf } from './learn/features.ts';
import { probabilities, type Packed } from './learn/packed.ts';
import { vectorOf, vocabularyIn } from './learn/vocabulary.ts';
import type { StoryShares } from './in-story.ts';
import type { Kind } from './kinds.ts';
import { kinds as allKinds } from './kinds.ts';
import type { Likely } from './likely.ts';
import { modelIn, type Thresholds } from './model-file.ts';
import { rolesIn, type Learnt } from './roles.ts';
import type { Said } from './said.ts';
import { scan, type Scanned } from './tokens.ts';

/** A message read: what is in it and what it may want, likeliest first. Nothing is decided yet. */
export interface Reading {
  readonly given: string;
  readonly scanned: Scanned;
  readonly said: readonly Said[];
  readonly kinds: readonly Likely<Kind>[];
  /** The cards below a kind, each with its probability among them, likeliest first; none where it has no cards. */
  readonly cards: (kind: Kind) => readonly Likely[];
  /** What buttons said of its numbers (unsure.ts). */
  readonly chosen?: string;
}

export interface Reader {
  readonly thresholds: Thresholds;
  readonly story: StoryShares;
  /** SHA-256 of the sentences it was made from. */
  readonly sentences: string;
  readonly read: (text: string) => Reading;
}

/** A reader from the bytes that `npm run train` wrote. Takes some 100 ms; reading is pure. */
export function openReader(bytes: Uint8Array): Reader {
  const model = modelIn(bytes);
  const [kinds, parts, ofs] = [learnt(model.kinds), learnt(model.parts), learnt(model.ofs)];
  const cards = new Map(Object.entries(model.cards).map(([kind, packed]) => [kind, learnt(packed)]));
  return {
    thresholds: model.thresholds,
    story: model.story,
    sentences: model.sentences,
    read: (text) => {
      const scanned = scan(text);
      const groups = featuresOf(scanned);
      const likely = ranked(kinds, groups).flatMap(({ name, probability }) => {
        const kind = allKinds.find((each) => each === name);
        return kind === undefined ? [] : [{ name: kind, probability }];
      });
      return {
        given: text,
        scanned,
        said: rolesIn(scanned, likely, parts, ofs),
        kinds: likely,
        cards: (kind) => {
          const below = cards.get(kind);
          return below === undefined ? [] : ranked(below, groups);
        },
      };
    },
  };
}

function learnt(packed: Packed): Learnt {
  return { packed, vocabulary: vocabularyIn(packed.hashes) };
}

function ranked({ packed, vocabulary }: Learnt, groups: ReturnType<typeof featuresOf>): readonly Likely[] {
  const chances = probabilities(packed, vectorOf(groups, vocabulary));
  return packed.labels
    .map((name, at) => ({ name, probability: chances[at] ?? 0 }))
    .sort((a, b) => b.probability - a.probability);
}
