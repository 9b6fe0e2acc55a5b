const epochMs = 1_420_070_400_000n;

/** Makes ids that carry the time, as Discord's do, and never repeat. */
export function idMaker(nowMs: () => number): () => string {
  let counter = 0n;
  return () => {
    counter += 1n;
    return String(((BigInt(Math.floor(nowMs())) - epochMs) << 22n) | (counter & 0x3fffffn));
  };
}
