import { hurtCard, hurtGroups, type HurtGroupId, type HurtId } from '../../core/care/hurt/cards.ts';
import { NO_TREATMENT } from '../../core/care/hurt/card.ts';
import { urgentCard, type UrgentId } from '../../core/care/urgent/cards.ts';
import { PEOPLE_FIRST } from '../../core/care/urgent/people.ts';
import type { Meant } from '../../core/care/meant-cards.ts';
import type { Reading } from '../../core/language/reading.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer, type NextAction } from '../answer.ts';
import { action } from '../calls.ts';
import { fact } from './facts.ts';
import { hurtAction, hurtGroupAction, isHurt, personAction } from './hurt.ts';
import type { UrgentInput } from './input.ts';
import { hurtOf, shareOf, urgentOf } from './of-reading.ts';

/** One emergency that a message may mean: what comes first in it, and the button that opens it. */
interface Possible {
  readonly label: string;
  readonly first: string;
  readonly open: NextAction;
}

/** What a message says, as options of the card of one emergency. */
type SaidFor = (id: UrgentId) => UrgentInput;

/** From this share of the likeliest card on those near it are shown; below it all of them are asked. Own choices. */
const SHOWN = { tank: 0.3, hurt: 0.5 } as const;

/** Whether a message may as well mean another card than its likeliest. */
export function isEither({ near, share }: Meant<string>, of: keyof typeof SHOWN): boolean {
  return near.length > 1 && share >= SHOWN[of];
}

export function eitherHurt(near: readonly (HurtId | HurtGroupId)[]): Answer {
  const more = { ...personAction(), label: say('urgent.somethingElse') };
  return either(
    'Faint, numb, short of breath or bleeding hard: the emergency number now.',
    near.map(possibleHurt),
    more,
  );
}

/** Where mains may be at the water, or were. */
const ELECTRIC: ReadonlySet<UrgentId> = new Set([
  'fire or sparks',
  'mains fault',
  'flood',
  'burst heater',
  'overheating',
  'cold water',
]);

export function eitherUrgent(near: readonly UrgentId[], saidFor: SaidFor): Answer {
  const safe = near.some((id) => ELECTRIC.has(id))
    ? 'Power off with dry hands before one goes into the water.'
    : 'Stop whatever still goes in, and keep the surface moving.';
  const given = either(
    safe,
    near.map((id) => possibleUrgent(id, saidFor)),
    personAction(),
  );
  return {
    ...given,
    dangers: [PEOPLE_FIRST],
    cautions: [],
    next: [...given.next, action(say('urgent.anotherEmergency'), 'urgent', {})],
  };
}

/**
 * From this part of the probability of a hurt person the tank may be meant as well. Read off 196 messages answered as of a
 * person by older weights that had not seen them: of 22 with this much of the tank 11 were of it and 6 of a person; of 174
 * with less 3 and 160.
 */
const TANK_PERHAPS = 0.25;
/** Cards of the tank beside the one of a person. */
const MOST_OF_TANK = 2;

/** What comes first for a person and for the tank, where a message taken for a person may be of the tank alone. */
export function personOrTank(reading: Reading, saidFor: SaidFor): Answer | undefined {
  if (shareOf(reading, 'urgent-water') < shareOf(reading, 'person-hurt') * TANK_PERHAPS) return undefined;
  const [hurt] = hurtOf(reading).near;
  const tank = urgentOf(reading).near.slice(0, MOST_OF_TANK);
  if (hurt === undefined || tank.length === 0) return undefined;
  const possible = [possibleHurt(hurt), ...tank.map((id) => possibleUrgent(id, saidFor))];
  return {
    ...either('', possible, personAction()),
    headline: say('urgent.personOrTank'),
    next: [
      ...possible.map(({ open }) => open),
      personAction(),
      action(say('urgent.anotherEmergency'), 'urgent', {}),
    ],
  };
}

/** What is safe in all of them, then what comes first in each. */
function either(safe: string, possible: readonly Possible[], more: NextAction): Answer {
  return answer({
    headline: say('urgent.whichDoWhatFits', { safe }),
    tone: 'urgent',
    facts: possible.map(({ label, first }) => fact(label, first)),
    isList: true,
    cautions: [NO_TREATMENT],
    sources: ['practice', 'memory'],
    next: [...possible.map(({ open }) => open), more],
    isMenu: true,
  });
}

function possibleHurt(id: HurtId | HurtGroupId): Possible {
  if (!isHurt(id)) return { label: hurtGroups[id].label, first: GROUP_FIRST, open: hurtGroupAction(id) };
  const { label, first } = hurtCard(id);
  return { label, first, open: hurtAction(id) };
}

/** Before it is said which of a group it was. */
const GROUP_FIRST = 'Short of breath, faint or swelling: the emergency number. Else press what it was.';

function possibleUrgent(id: UrgentId, saidFor: SaidFor): Possible {
  const { label, first } = urgentCard(id);
  return { label, first, open: action(label, 'urgent', { what: id, ...saidFor(id) }) };
}
