import { isDangerKind } from '../../core/language/kind-groups.ts';
import { danger } from '../../core/language/calibrate.ts';
import { dangersIn } from '../../core/language/danger.ts';
import { framesOf } from '../../core/language/frame.ts';
import type { Reading } from '../../core/language/reading.ts';
import type { Answer } from '../answer.ts';
import type { UrgentId } from '../../core/care/urgent/cards.ts';
import { cardAnswer } from './card-answer.ts';
import { despairAnswer } from './despair.ts';
import { eitherHurt, eitherUrgent, isEither, personOrTank } from './either.ts';
import { hurtAction, hurtAnswer, isHurt } from './hurt.ts';
import type { UrgentInput } from './input.ts';
import { menuAnswer } from './menu.ts';
import { hurtOf, personLead, shareOf, urgentOf } from './of-reading.ts';
import { urgentAction } from './action.ts';
import { urgentSaid } from './said.ts';

/** From this probability a hurt person comes before what is likelier; own choice. */
const PERSON = 0.25;
/** And from this share of what a tank in danger has. Own choice. */
const PERSON_FIRST = 0.5;

/** First aid for a text that is known to ask for it: people first, then the water; the menu where neither is clear. */
export function firstAidFor(reading: Reading, input: UrgentInput): Answer {
  const sad = despairAnswer(reading.scanned);
  if (sad !== undefined) return sad;
  const ofPerson = shareOf(reading, 'person-hurt');
  const lead = personLead(reading, PERSON_FIRST);
  const [frame] = framesOf(reading);
  const saidFor = (id: UrgentId): UrgentInput => ({
    ...(frame === undefined ? {} : urgentSaid(id, frame.slots, reading)),
    ...input,
  });
  if (ofPerson >= PERSON && ofPerson >= shareOf(reading, 'urgent-water') * lead) {
    const both = personOrTank(reading, saidFor);
    if (both !== undefined) return both;
    const hurt = hurtOf(reading);
    if (isEither(hurt, 'hurt')) return eitherHurt(hurt.near);
    return withMore(hurtAnswer(hurt.first), hurt.others.filter(isHurt).map(hurtAction));
  }
  const tank = urgentOf(reading);
  const { first, others } = tank;
  if (isEither(tank, 'tank')) return eitherUrgent(tank.near, saidFor);
  if (first === undefined) return menuAnswer(undefined);
  return withMore(cardAnswer(first, saidFor(first)), others.map(urgentAction));
}

/** Whether a text tells of somebody or something in danger now, by its words or by a number. */
export function isAlarm(reading: Reading, from: number): boolean {
  return danger(reading) >= from || dangersIn(reading).length > 0;
}

/** Whether danger is the likeliest thing a text tells of, be it ever so unsure: no sign in a tank is answered for it. */
export function mayBeAlarm({ kinds }: Pick<Reading, 'kinds'>): boolean {
  return isDangerKind(kinds[0]?.name);
}

function withMore(given: Answer, more: Answer['next']): Answer {
  const labels = new Set(given.next.map(({ label }) => label));
  return { ...given, next: [...given.next, ...more.filter(({ label }) => !labels.has(label))] };
}
