import {
  hurtCard,
  hurtCards,
  hurtGroupIds,
  hurtGroups,
  hurtIds,
  type HurtGroupId,
  type HurtId,
} from '../../core/care/hurt/cards.ts';
import { NO_TREATMENT } from '../../core/care/hurt/card.ts';
import { FOR_EVERY_HURT, HURT_QUESTION, PERSON_HURT } from '../../core/care/hurt/question.ts';
import { say } from '../../core/wording/say.ts';
import { answer, type Answer, type NextAction } from '../answer.ts';

/** What the option takes: every hurt, and the groups behind one button each. */
export const hurtChoices = [...hurtIds, ...hurtGroupIds] as const;

/** What opens the question who is hurt and how. */
export function personAction(): NextAction {
  return { label: say('urgent.personHurt'), command: 'urgent', input: { what: PERSON_HURT } };
}

/** A button that opens one hurt. */
export function hurtAction(id: HurtId): NextAction {
  return choose(hurtCard(id).label, id);
}

/** A button that asks which of a group it was. */
export function hurtGroupAction(id: HurtGroupId): NextAction {
  return choose(hurtGroups[id].label, id);
}

/** The card of one hurt, or the question within a group or among all. */
export function hurtAnswer(choice: HurtId | HurtGroupId | undefined): Answer {
  if (choice === undefined) return question(HURT_QUESTION, menu);
  if (isHurt(choice)) return cardOf(choice);
  const { label, ids } = hurtGroups[choice];
  return question(say('urgent.whichOfGroup', { group: label }), ids.map(hurtAction));
}

function cardOf(id: HurtId): Answer {
  const { first, steps, never, basis, sources } = hurtCard(id);
  return answer({
    headline: first,
    tone: 'urgent',
    steps,
    working: basis,
    dangers: never,
    cautions: [NO_TREATMENT],
    sources,
    next: [{ ...personAction(), label: say('urgent.somethingElse') }],
  });
}

const grouped: ReadonlySet<HurtId> = new Set(Object.values(hurtGroups).flatMap(({ ids }) => [...ids]));
const menu = [
  ...hurtIds.filter((id) => !grouped.has(id)).map(hurtAction),
  ...hurtGroupIds.map(hurtGroupAction),
];

function question(headline: string, next: readonly NextAction[]): Answer {
  return answer({
    headline,
    tone: 'urgent',
    steps: FOR_EVERY_HURT,
    cautions: [NO_TREATMENT],
    sources: ['memory'],
    next,
    isMenu: true,
  });
}

function choose(label: string, hurt: HurtId | HurtGroupId): NextAction {
  return { label, command: 'urgent', input: { what: PERSON_HURT, hurt } };
}

export function isHurt(choice: HurtId | HurtGroupId): choice is HurtId {
  return choice in hurtCards;
}
