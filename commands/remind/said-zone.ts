import { zoneSaid } from '../../core/schedule/zone-words.ts';
import { without } from '../../core/words/repeat-said.ts';
import { say } from '../../core/wording/say.ts';
import type { OwnContext } from '../command.ts';
import type { Tank } from '../keep.ts';
import { askedZone, knownZone, type AskedZone } from '../zone.ts';

/** A text without the zone that was said in it, and the zone its times are in. */
export interface InZone extends AskedZone {
  readonly text: string;
}

/**
 * "8pm lisbon time" is by the clock of Lisbon; without such words the zone is the one of the option, the tank or the
 * member. The first zone a member ever says is kept as theirs.
 */
export function inSaidZone(
  text: string,
  given: string | undefined,
  context: OwnContext,
  tank?: Tank,
): InZone {
  const said = given === undefined ? zoneSaid(text) : undefined;
  if (said === undefined) return { text, ...askedZone(context, given, tank) };
  const left = without(text, said.words);
  if (knownZone(context, tank) === undefined) return { text: left, ...askedZone(context, said.zone, tank) };
  return { text: left, zone: said.zone, read: [say('remind.clockAsSaid', { zone: said.zone })], next: [] };
}
