import type { Heard } from './hear.ts';

/** Letters `start` to `end` of an earlier text become `put`; at its end they are added. */
export interface Change {
  readonly start: number;
  readonly end: number;
  readonly put: string;
}

export function added(was: Heard, put: string): Change {
  const end = was.text.length;
  return { start: end, end, put: ` ${put}` };
}
