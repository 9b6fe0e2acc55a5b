import type { OfName, PartName } from '../../../core/language/parts.ts';
import { saidAs, type Said } from '../../../core/language/said.ts';
import { scan, type Scanned } from '../../../core/language/tokens.ts';

/** A message with the part of each of its numbers, in order, as a reader would give them. */
export function saidOf(
  text: string,
  ...parts: readonly (readonly [PartName, OfName])[]
): { readonly scanned: Scanned; readonly said: readonly Said[] } {
  const scanned = scan(text);
  if (scanned.numbers.length !== parts.length)
    throw new Error(`${scanned.numbers.length} numbers in: ${text}`);
  const said = scanned.numbers.map((number, at) => {
    const [part, of] = parts[at] ?? ['none', 'nothing'];
    return saidAs(part, of, number, 1);
  });
  return { scanned, said };
}
