import { hurtCard, hurtGroups, type HurtGroupId, type HurtId } from '../../core/care/hurt/cards.ts';
import { NO_TREATMENT } from '../../core/care/hurt/card.ts';
import { urgentCard, type UrgentId } from '../../core/care/urgent/cards.ts';
import { PEOPLE_FIRST } from '../../core/care/urgent/people.ts';
import type { Meant } from '../../core/care/meant-cards.ts';
import { answer, type Answer, type NextAction } from '../answer.ts';
import { action } from '../calls.ts';
import { fact } from './facts.ts';
import { hurtAction, hurtGroupAction, isHurt, personAction } from './hurt.ts';
import type { UrgentInput } from './input.ts';

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
  const more = { ...personAction, label: 'It is something else' };
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
    personAction,
  );
  return { ...given, cautions: [PEOPLE_FIRST], next: [...given.next, action(ANOTHER, 'urgent', {})] };
}

const ANOTHER = 'Another emergency';
/** Cards of the tank beside the one of a person. */
const MOST_OF_TANK = 2;

/** Somebody may be hurt, or it may be the tank alone. */
export function personOrTank(
  hurt: readonly (HurtId | HurtGroupId)[],
  tank: readonly UrgentId[],
  saidFor: SaidFor,
): Answer {
  const possible = [
    ...hurt.slice(0, 1).map(possibleHurt),
    ...tank.slice(0, MOST_OF_TANK).map((id) => possibleUrgent(id, saidFor)),
  ];
  return {
    ...either('', possible, personAction),
    headline:
      'Is somebody hurt or unwell? A person comes first. If it is the tank alone, do what fits of it:',
    next: [...possible.map(({ open }) => open), personAction, action(ANOTHER, 'urgent', {})],
  };
}

/** What is safe in all of them, then what comes first in each. */
function either(safe: string, possible: readonly Possible[], more: NextAction): Answer {
  const [one, two] = possible.map(({ label }) => label);
  return answer({
    headline: `${safe} ${one}, or: ${two}? Do what fits.`,
    facts: possible.map(({ label, first }) => fact(label, first)),
    cautions: [NO_TREATMENT],
    sources: ['practice', 'memory'],
    next: [...possible.map(({ open }) => open), more],
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
