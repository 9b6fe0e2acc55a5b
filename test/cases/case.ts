/** What must stand in an answer, and what must not, whatever shows it. */
export interface Expected {
  /** Number that must be printed: the first group that takes part is compared within the tolerance (share). */
  readonly values: readonly { readonly at: RegExp; readonly value: number; readonly tolerance?: number }[];
  readonly says: readonly RegExp[];
  readonly never: readonly RegExp[];
}

/** A member's question as typed, and when it is asked. */
export interface Case extends Expected {
  readonly asked: string;
  readonly nowMs?: number;
}

/** Everything that is wrong with a text; empty when it is as expected. */
export function faults(text: string, { values, says, never }: Expected): readonly string[] {
  const wrong = values.flatMap(({ at, value, tolerance = 0.02 }) => {
    const found = at
      .exec(text)
      ?.slice(1)
      .find((part) => part !== undefined);
    if (found === undefined) return [`no ${value} at ${String(at)}`];
    const off = Math.abs(Number(found) / value - 1);
    return off <= tolerance + 1e-12 ? [] : [`${found} where ${value} belongs at ${String(at)}`];
  });
  return [
    ...wrong,
    ...says.filter((pattern) => !pattern.test(text)).map((pattern) => `does not say ${String(pattern)}`),
    ...never.filter((pattern) => pattern.test(text)).map((pattern) => `says ${String(pattern)}`),
  ];
}
