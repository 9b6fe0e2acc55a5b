import { z } from 'zod';
import type { Packed } from './learn/packed.ts';

/** What a reader has learnt: three linear models, and which sentences they were made from. */
export interface Model {
  /** SHA-256 of the sentences, as `npm run train` computes it. */
  readonly sentences: string;
  readonly kinds: Packed;
  readonly cards: Packed;
  readonly parts: Packed;
  readonly ofs: Packed;
  readonly thresholds: Thresholds;
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
  kinds: packedHead,
  cards: packedHead,
  parts: packedHead,
  ofs: packedHead,
});
const NAMES = ['kinds', 'cards', 'parts', 'ofs'] as const;

/** The model as bytes: length of the head, the head as JSON, then hashes, scales and weights of each part. */
export function modelBytes(model: Model): Uint8Array {
  const head = new TextEncoder().encode(
    JSON.stringify({
      sentences: model.sentences,
      thresholds: model.thresholds,
      ...Object.fromEntries(
        NAMES.map((name) => {
          const { labels, hashes, temperature } = model[name];
          return [name, { labels, rows: hashes.length, temperature }];
        }),
      ),
    }),
  );
  const parts = NAMES.flatMap((name) => {
    const { hashes, scales, weights } = model[name];
    return [bytesOf(hashes), bytesOf(scales), bytesOf(weights)];
  });
  const all = [bytesOf(Uint32Array.of(head.length)), head, ...parts];
  const whole = new Uint8Array(all.reduce((sum, part) => sum + part.length, 0));
  all.reduce((at, part) => (whole.set(part, at), at + part.length), 0);
  return whole;
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
  const [length = 0] = new Uint32Array(take(4).buffer);
  const head = headSchema.parse(JSON.parse(new TextDecoder().decode(take(length))));
  const packed = NAMES.map((name): [string, Packed] => {
    const { labels, rows, temperature } = head[name];
    const hashes = new Uint32Array(take(rows * 4).buffer);
    const scales = new Float32Array(take(rows * 4).buffer);
    const weights = new Int8Array(take(rows * labels.length).buffer);
    return [name, { labels, hashes, scales, weights, temperature }];
  });
  const of = Object.fromEntries(packed) as Record<(typeof NAMES)[number], Packed>;
  return { sentences: head.sentences, thresholds: head.thresholds, ...of };
}

function bytesOf(array: Uint32Array | Float32Array | Int8Array | Uint8Array): Uint8Array {
  return new Uint8Array(array.buffer, array.byteOffset, array.byteLength);
}
