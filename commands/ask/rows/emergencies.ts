import { urgentCard, type UrgentId } from '../../../core/care/urgent/cards.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { met } from '../../../core/language/met.ts';
import type { Answer, NextAction } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { urgentCommand } from '../../urgent.ts';
import { urgentAction } from '../../urgent/action.ts';
import { eitherHurt, eitherUrgent, isEither } from '../../urgent/either.ts';
import { despairAnswer } from '../../urgent/despair.ts';
import { hurtAction, hurtAnswer, isHurt } from '../../urgent/hurt.ts';
import { hurtOf, urgentOf } from '../../urgent/of-reading.ts';
import { overdoseAnswer } from '../overdose-answer.ts';
import { urgentSaid } from '../../urgent/said.ts';
import { withWhyItMoved } from '../../urgent/why-it-moved.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';

/** People first; then what goes wrong in a tank now. */
export const emergencyRows: readonly Row[] = [
  {
    kind: 'person-hurt',
    label: 'ask.kindPersonHurt',
    uses: [],
    answer: ({ reading }) => {
      const sad = despairAnswer(reading.scanned);
      if (sad !== undefined) return sad;
      const hurt = hurtOf(reading);
      const { first, others } = hurt;
      if (isEither(hurt, 'hurt')) return eitherHurt(hurt.near);
      return offering(hurtAnswer(first), others.filter(isHurt).map(hurtAction), first === undefined);
    },
  },
  {
    kind: 'urgent-water',
    label: 'urgent.goingWrong',
    uses: ['of', 'now', 'was', 'wanted', 'volume', 'temperature', 'salinity', 'salt', 'amount'],
    answer: (frame, context) => {
      const tank = urgentOf(frame.reading);
      const { first, others } = tank;
      if (isEither(tank, 'tank')) return eitherUrgent(tank.near, saidFor(frame));
      const given = first === undefined ? call(urgentCommand, {}, context) : cardOf(first, frame, context);
      return offering(given, others.map(urgentAction), first === undefined);
    },
  },
];

/** What a message says, as options of the card of one emergency. */
function saidFor({ slots, reading }: Frame): (what: UrgentId) => ReturnType<typeof urgentSaid> {
  return (what) => urgentSaid(what, slots, reading);
}

/** Words of a day to come: it may be announced, and it may be now. */
const ANNOUNCED = ['times.soon', 'times.weekday', 'times.month', 'manner.planning'] as const;

function cardOf(what: UrgentId, frame: Frame, context: OwnContext): Answer {
  if (what === 'overdose' || what === 'other overdose') return overdoseAnswer(what, frame, context);
  const { scanned } = frame.reading;
  const card = call(urgentCommand, { what, ...saidFor(frame)(what) }, context);
  const { ahead } = urgentCard(what);
  if (ahead !== undefined && met(scanned, ...ANNOUNCED)) return { ...card, steps: [ahead, ...card.steps] };
  return what === 'shredded anemone' ? withWhyItMoved(card, scanned) : card;
}

/** What else it may be, as buttons behind the one for people; a menu, which is full, has its likeliest first. */
function offering(given: Answer, likely: readonly NextAction[], isMenu: boolean): Answer {
  const { next } = given;
  const [first, ...rest] = next;
  const added = likely.filter((each) => each.label !== first?.label && isIn(next, each) === isMenu);
  const others = isMenu ? rest.filter((each) => !isIn(added, each)) : rest;
  return { ...given, next: [...(first === undefined ? [] : [first]), ...added, ...others] };
}

function isIn(list: readonly NextAction[], { label }: NextAction): boolean {
  return list.some((each) => each.label === label);
}
