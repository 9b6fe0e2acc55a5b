/** Does the work for each item, `lanes` at a time, until `ended` says so; returns the items that were not begun. */
export async function inLanes<T>(
  items: readonly T[],
  lanes: number,
  ended: () => boolean,
  work: (item: T) => Promise<void>,
): Promise<readonly T[]> {
  const waiting = [...items];
  const lane = async (): Promise<void> => {
    while (!ended()) {
      const item = waiting.shift();
      if (item === undefined) return;
      await work(item);
    }
  };
  await Promise.all(Array.from({ length: Math.min(lanes, items.length) }, lane));
  return waiting;
}
