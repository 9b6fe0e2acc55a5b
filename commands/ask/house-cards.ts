import { hurtWays } from '../../core/care/house-cards/hurt.ts';
import { hurtIds, type HurtId } from '../../core/care/hurt/cards.ts';
import type { Moment } from '../../core/language/case.ts';
import { cardsTold } from '../../core/language/evidence.ts';
import type { Frame } from '../../core/language/frame.ts';
import { isHurt } from '../urgent/hurt.ts';
import { hurtOf } from '../urgent/of-reading.ts';

/** From this probability the words of a message may say how somebody was hurt. Own choice. */
const PERHAPS = 0.2;

/** How a message says somebody was hurt, by its own words: they are not kept, and a later "ice on it?" leans on them. */
export function hurtSaid(frames: readonly Frame[]): NonNullable<Moment['cards']> {
  const frame = frames.find(({ kind, probability }) => kind === 'person-hurt' && probability >= PERHAPS);
  const name = frame === undefined ? undefined : hurtOf(frame.reading).first;
  return frame === undefined || name === undefined || !isHurt(name)
    ? []
    : [{ kind: 'person-hurt', name, probability: frame.probability }];
}

/** The hurt a case tells of: below its plainest learnt card what the words of any message said of it. */
export function hurtTold(said: readonly Moment[]): HurtId | undefined {
  const told = cardsTold(said, 'person-hurt', 0);
  const learnt = told.find((name) => hurtWays[name as keyof typeof hurtWays] !== undefined);
  if (learnt === undefined) return undefined;
  const ways = hurtWays[learnt as keyof typeof hurtWays];
  const below = hurtIds.filter((id) => told.includes(id) && ways.some(({ card }) => card === id));
  return below.length === 1 ? below[0] : undefined;
}
