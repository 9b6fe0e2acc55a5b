import type { Heard } from '../../core/words/hear.ts';
import { tankVolume } from '../../core/words/tank-volume.ts';
import type { OwnContext } from '../command.ts';
import { leftOut } from '../fill.ts';

/** The volume said, else that of the tank in use with the sentence that says so. */
export function waterSaid(
  heard: Heard,
  { keep }: OwnContext,
): { readonly text: string | undefined; readonly read: readonly string[] } {
  const said = tankVolume(heard)?.text;
  const tank = keep?.tankInUse();
  if (said !== undefined || keep === undefined || tank === undefined) return { text: said, read: [] };
  const found = leftOut('volume', tank, keep);
  return { text: found?.value, read: found === undefined ? [] : [found.read] };
}
