/** What a message, or a part of it, may be, with its probability, 0 to 1. */
export interface Likely<T extends string = string> {
  readonly name: T;
  readonly probability: number;
}
