import type { Said } from './said.ts';
import type { Scanned } from './tokens.ts';

const HEADS: ReadonlySet<string> = new Set(['head', 'heads', 'headed', 'polyp', 'polyps']);

/** "2 head", "1 polyp" as a size is typed: heads of one coral, not a count of corals or fish. */
export function headsOf(
  { text }: Scanned,
  said: readonly Said[],
): { readonly text: string; readonly from: Said } | undefined {
  const found = said.find(
    ({ number }) =>
      number.kinds.includes('heads') &&
      HEADS.has(
        text
          .slice(number.start, number.end)
          .split(/[^a-z]+/)
          .at(-1) ?? '',
      ),
  );
  return found === undefined ? undefined : { text: `${found.number.number} heads`, from: found };
}
