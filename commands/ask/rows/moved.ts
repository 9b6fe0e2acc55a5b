import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import { movedCommand } from '../../water/moved.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';
import { notUsedOf, readTwice } from './levels-of.ts';
import { moveTime } from './move-time.ts';

export const movedRows: readonly Row[] = [
  {
    kind: 'moved',
    label: 'Why a reading moved',
    needs: [{ oneOf: ['of'], ask: 'Which reading moved: alkalinity, salinity, pH, nitrate?' }],
    uses: ['of', 'levels', 'was', 'now', 'change', 'span', 'spans', 'moments', 'salinity', 'temperature'],
    answer: (frame, context) => {
      const { of } = frame.slots;
      const { was, now } = readTwice(frame.slots) ?? frame.slots;
      if (of === undefined) return undefined;
      const over = moveTime(frame, context);
      const given = call(
        movedCommand,
        { of, was, now, way: wayOf(frame), over, without: withoutOf(frame) },
        context,
      );
      return { ...given, read: [...given.read, ...notUsedOf(frame.slots, [of])] };
    },
  },
];

/** Which way it went by the words, where two readings do not say. */
function wayOf({ reading: { scanned } }: Frame): 'up' | 'down' | undefined {
  const [up, down] = [met(scanned, 'events.wentUp'), met(scanned, 'events.wentDown')];
  if (up === down) return undefined;
  return up ? 'up' : 'down';
}

/** What the message says was not done. */
function withoutOf({ reading: { scanned } }: Frame): 'dosing' | 'changes' | 'both' | undefined {
  const [dosing, changes] = [met(scanned, 'deeds.dosesNothing'), met(scanned, 'deeds.changesNothing')];
  if (dosing && changes) return 'both';
  return dosing ? 'dosing' : changes ? 'changes' : undefined;
}
