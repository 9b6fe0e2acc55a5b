import type { Frame } from '../../../core/language/frame.ts';
import { isRoomShut } from '../../../core/language/room-shut.ts';
import { met, type Met } from '../../../core/language/met.ts';
import { ruledOut, type RuledOut } from '../../../core/water/what-moves.ts';
import { movedCommand } from '../../water/moved.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';
import { levelsOf, notUsedOf, readTwice } from './levels-of.ts';
import { isDayAndNight, moveTime } from './move-time.ts';

export const movedRows: readonly Row[] = [
  {
    kind: 'moved',
    label: 'ask.kindMoved',
    needs: [{ oneOf: ['of'], ask: 'ask.whichMoved' }],
    uses: ['of', 'levels', 'was', 'now', 'change', 'span', 'spans', 'moments', 'salinity', 'temperature'],
    answer: (frame, context) => {
      const { of } = frame.slots;
      if (of === undefined) return undefined;
      const without = withoutOf(frame);
      const { was, now } = pairOf(frame, without) ?? frame.slots;
      const given = call(
        movedCommand,
        {
          of,
          was,
          now,
          way: wayOf(frame),
          over: moveTime(frame, context),
          without: without.length === 0 ? undefined : without.join(', '),
          shut: isRoomShut(frame.reading.scanned) || undefined,
          swing: isDayAndNight(frame) || undefined,
        },
        context,
      );
      return {
        ...given,
        read: [...given.read, ...between(frame, was, now)],
        unused: [...given.unused, ...notUsedOf(frame.slots, [of])],
      };
    },
  },
];

/** The two readings it is about: of several read at one hour, the first at which it was another. */
function pairOf({ slots }: Frame, without: readonly RuledOut[]): ReturnType<typeof readTwice> {
  const pair = readTwice(slots);
  if (pair === undefined || !without.includes('hour')) return pair;
  return { ...pair, now: readingsOf(slots)[1] ?? pair.now };
}

/** Readings beside the two, which are not lost. */
function between({ slots }: Frame, was: string | undefined, now: string | undefined): readonly string[] {
  const others = readingsOf(slots).filter((text) => text !== was && text !== now);
  return others.length === 0 ? [] : [`also read: ${others.join(', ')}`];
}

function readingsOf(slots: Frame['slots']): readonly string[] {
  return slots.of === undefined ? [] : levelsOf(slots, slots.of, 'was', 'now').map(({ text }) => text);
}

/** Which way it went by the words, where two readings do not say. */
function wayOf({ reading: { scanned } }: Frame): 'up' | 'down' | undefined {
  const [up, down] = [met(scanned, 'events.wentUp'), met(scanned, 'events.wentDown')];
  if (up === down) return undefined;
  return up ? 'up' : 'down';
}

const RULES_OUT = {
  dosing: 'deeds.dosesNothing',
  changes: 'deeds.changesNothing',
  feeding: 'deeds.feedsNoMore',
  'top-off': 'deeds.topsOffNothing',
  hour: 'times.sameHour',
} as const satisfies Record<RuledOut, Met>;

/** What the message says was not done, or was the same. */
function withoutOf({ slots: { moments = [] }, reading: { scanned } }: Frame): readonly RuledOut[] {
  const isHourTwice = new Set(moments).size < moments.length;
  return ruledOut.filter((one) => met(scanned, RULES_OUT[one]) || (one === 'hour' && isHourTwice));
}
