import { z } from 'zod';
import type { StoryShares } from './in-story.ts';
import { kinds as allKinds } from './kinds.ts';
import { halved, whole, type Packed } from './learn/packed.ts';

/** What a reader has learnt: its linear models, and which sentences they were made from. */
export interface Model {
  /** SHA-256 of the sentences, as `npm run train` computes it. */
  readonly sentences: string;
  readonly kinds: Packed;
  /** For each kind with cards below it: which. */
  readonly cards: Readonly<Record<string, Packed>>;
  readonly parts: Packed;
  readonly ofs: Packed;
  readonly thresholds: Thresholds;
  readonly story: StoryShares;
}

const thresholdsSchema = z.strictObject({
  /** From which probability of the first kind it is answered outright. */
  answer: z.number(),
  /** How far ahead of the second it must be. */
  margin: z.number(),
  /** From which probability of danger (a person, an animal, a tank) the card is shown, or asked about. */
  danger: z.number(),
  /** From which it may be asked about. */
  maybeDanger: z.number(),
  /** Below which probability of its first kind a message is far from everything. */
  far: z.number(),
});
export type Thresholds = z.infer<typeof thresholdsSchema>;

const packedHead = z.strictObject({ labels: z.array(z.string()), rows: z.int(), temperature: z.number() });
const headSchema = z.strictObject({
  sentences: z.string(),
  thresholds: thresholdsSchema,
  story: z.partialRecord(z.enum(allKinds), z.strictObject({ fresh: z.number(), again: z.number() })),
  kinds: packedHead,
  parts: packedHead,
  ofs: packedHead,
  cards: z.record(z.string(), packedHead),
});
type PackedHead = z.infer<typeof packedHead>;

/** The model as bytes: length of the head, the head as JSON, then hashes, scales and weights of each linear model. */
export function modelBytes({ sentences, thresholds, story, kinds, parts, ofs, cards }: Model): Uint8Array {
  const head: z.infer<typeof headSchema> = {
    sentences,
    thresholds,
    story,
    kinds: headOf(kinds),
    parts: headOf(parts),
    ofs: headOf(ofs),
    cards: Object.fromEntries(Object.entries(cards).map(([kind, packed]) => [kind, headOf(packed)])),
  };
  const text = new TextEncoder().encode(JSON.stringify(head));
  const models = [kinds, parts, ofs, ...Object.values(cards)].flatMap(({ hashes, scales, weights }) => [
    bytesOf(hashes),
    bytesOf(scales),
    halved(weights),
  ]);
  const pieces = [bytesOf(Uint32Array.of(text.length)), text, ...models];
  const all = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  pieces.reduce((at, piece) => (all.set(piece, at), at + piece.length), 0);
  return all;
}

/** Reads what `modelBytes` wrote. @throws Error where the bytes are no model. */
export function modelIn(bytes: Uint8Array): Model {
  let at = 0;
  const take = (length: number): Uint8Array => {
    // Copied: `slice` of what Node reads from a file shares the bytes of the whole file.
    const part = new Uint8Array(bytes.subarray(at, at + length));
    if (part.length !== length) throw new Error('the model is cut short');
    at += length;
    return part;
  };
  const packed = ({ labels, rows, temperature }: PackedHead): Packed => {
    const hashes = new Uint32Array(take(rows * 4).buffer);
    const scales = new Float32Array(take(rows * 4).buffer);
    const count = rows * labels.length;
    const weights = whole(take(Math.ceil(count / 2)), count);
    return { labels, hashes, scales, weights, temperature };
  };
  const [length = 0] = new Uint32Array(take(4).buffer);
  const head = headSchema.parse(JSON.parse(new TextDecoder().decode(take(length))));
  const { sentences, thresholds, story } = head;
  const [kinds, parts, ofs] = [packed(head.kinds), packed(head.parts), packed(head.ofs)];
  const cards = Object.fromEntries(Object.entries(head.cards).map(([kind, one]) => [kind, packed(one)]));
  return { sentences, thresholds, story, kinds, parts, ofs, cards };
}

function headOf({ labels, hashes, temperature }: Packed): PackedHead {
  return { labels: [...labels], rows: hashes.length, temperature };
}

function bytesOf(array: Uint32Array | Float32Array | Int8Array | Uint8Array): Uint8Array {
  return new Uint8Array(array.buffer, array.byteOffset, array.byteLength);
}
